shots = { $count ->
    [one] { $count } golpe
   *[other] { $count } golpes
}
span = de { $small } a { $large }{ $unit }
chance-nearly-all = casi todas las sesiones como esta
chance-of-ten = unas { $count } de cada 10 sesiones como esta
chance-under-one-of-thousand = menos de 1 de cada 1000 sesiones como esta
chance-one-of = más o menos 1 de cada { $count } sesiones como esta

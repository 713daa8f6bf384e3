shots = { $count ->
    [one] { $count } golpe
   *[other] { $count } golpes
}
span = entre { $small } y { $large }{ $unit }
chance-nearly-all = casi { $cases ->
    [fittings] todos los fittings como este
   *[sessions] todas las sesiones como esta
}
chance-of-ten = { $cases ->
    [fittings] unos { $count } de cada 10 fittings como este
   *[sessions] unas { $count } de cada 10 sesiones como esta
}
chance-under-one-of-thousand = menos de 1 de cada 1000 { $cases ->
    [fittings] fittings como este
   *[sessions] sesiones como esta
}
chance-one-of = más o menos 1 de cada { $count } { $cases ->
    [fittings] fittings como este
   *[sessions] sesiones como esta
}

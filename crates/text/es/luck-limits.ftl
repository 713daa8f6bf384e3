cannot-show = Aquí no se puede{ $shots ->
    [one] {" "}mostrar 1 golpe
   *[other] n mostrar { $shots } golpes
} de cada palo.
ask-for = Pide { $shots }.
ask-for-between = Pide de { $fewest } a { $most }.
add-single-shots = Añade los golpes sueltos: al menos { $fewest } con cada palo.
no-single-shots = No hay golpes sueltos de esta medida con { $club }.
only-so-many = Solo hay { $shots ->
    [one] 1 golpe
   *[other] { $shots } golpes
} de esta medida con { $club }.
no-usable-number = Un valor con { $club } no es un número válido.
not-for-scatter = Hasta dónde llega el azar se muestra para promedios, no para la dispersión.
not-for-scatter-remedy = Elige otro objetivo para verlo.
no-scatter = Con { $club } todos los golpes tienen el mismo valor de { $measure }, así que el azar no tiene nada que mostrar.

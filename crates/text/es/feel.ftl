no-such-build = No hay un palo número { $build }.
easier = { $club } te pareció más fácil de pegar. Ningún número mide eso; cuenta.
shown = { $club } te pareció { $feeling ->
    [straighter] más recto
   *[longer] más largo
}{ $hint ->
    [yes] ; los golpes apuntan a eso, pero puede influir el calentamiento o el cansancio.
   *[no] , y los golpes lo muestran.
}
opposite = { $club } te pareció { $feeling ->
    [straighter] más recto
   *[longer] más largo
}; { $hint ->
    [yes] los golpes apuntan a lo contrario, pero puede influir el calentamiento o el cansancio.
   *[no] los golpes muestran lo contrario.
}
same = { $club } te pareció { $feeling ->
    [straighter] más recto
   *[longer] más largo
}; según los golpes son iguales para lo que buscas.
not-shown = { $club } te pareció { $feeling ->
    [straighter] más recto
   *[longer] más largo
}; los golpes no lo muestran.
not-measured = { $club } te pareció { $feeling ->
    [straighter] más recto
   *[longer] más largo
}; estos números no pueden mostrarlo.
choose-same = Según los golpes son iguales para lo que buscas: elige por sensaciones, estética o precio.
choose-cannot-tell = Los golpes aún no lo dicen: prueba otra vez.{ $opposite ->
    [yes] {""}
   *[no] {" "}Hasta entonces no hay más guía que lo que sentiste.
}
choose-cannot-tell-bet = Los golpes aún no lo deciden: haz otra prueba. Hasta entonces están lo que sentiste y la apuesta.
choose-too-small = La diferencia es demasiado pequeña para importar: elige por sensaciones, estética o precio.
likes-look = Te gusta el aspecto de { $club }.
likes-sound = Te gusta el sonido de { $club }.
likes-both = Te gustan el aspecto de { $look } y el sonido de { $sound }.

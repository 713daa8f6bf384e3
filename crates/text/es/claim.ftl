no-retest = Lo prometido es { $claimed }. { $hit ->
    [yes] Lo que hay aquí no se puede comparar con eso: la respuesta dice por qué.
   *[no] Todavía no hay golpes nuevos con que compararlo.
}
anything-between = cualquier cosa entre { $low } y { $high }
supported = La promesa se sostiene, dentro de lo que te importa. Lo prometido era { $claimed }; la repetición muestra { $span } (intervalo del { $level }).
promise-too-small = Promesa demasiado pequeña para probarla: { $claimed }, y lo que te importa empieza en { $margin }. La repetición
    deja { $span } (intervalo del { $level }).
no-gain-at-all = La repetición habla en contra de la promesa. Lo prometido era { $claimed }; la repetición no deja nada de eso (intervalo del { $level }).
contradicted = La repetición habla en contra de la promesa. Lo prometido era { $claimed }; la repetición deja como mucho { $high } (intervalo del { $level }).
not-settled = Sin decidir. Lo prometido era { $claimed }; la repetición deja { $span } (intervalo del { $level }).
averages = En la repetición { $candidate } promedió { $candidate-mean } en { $candidate-count } golpes, { $baseline } { $baseline-mean } en { $baseline-count }.
luck-can-mislead-that-far = Una prueba honesta puede engañar así: pocos golpes, y palos que no se alternaron, si no se alternaron.
luck-rarely-misleads-that-far = El azar y el calentamiento rara vez engañan tanto. Otra bola, otro día, otras condiciones o golpes
    apartados sí podrían.
shots-not-said = No se dijo en cuántos golpes se apoyaba la promesa, así que nadie sabe cuánto hay de azar.
luck-alone = Con { $shots ->
    [one] 1 golpe
   *[other] { $shots } golpes
} con cada uno, solo el azar separa dos palos iguales { $size } en promedio, hacia un lado o hacia el otro.
best-of = El mejor de { $clubs } palos iguales llevaría { $size } de ventaja en promedio.
equal-clubs-would-show = Solo por azar, entre palos iguales que se alternan se vería lo prometido, o más, en { $fittings }.
bet = Con una promesa así y nada más, una apuesta y no un veredicto: lo más probable es cerca de { $gap }, y probabilidad de ganar algo: { $gain }.
bet-with-margin = Con una promesa así y nada más, una apuesta y no un veredicto: lo más probable es cerca de { $gap }; probabilidad de ganar algo: { $gain };
    de ganar { $margin } o más: { $of-margin }.
yard = yarda
meter = metro
degree = grado
unit = unidad
no-gain-to-pay-for = La repetición no muestra ninguna ganancia por la que pagar.
costs-at-least = Teniendo en cuenta el azar, cada { $unit } cuesta { $price } o más; no hay un máximo, porque puede no haber ganancia, o haber pérdida.
costs-between = Teniendo en cuenta el azar, cada { $unit } cuesta entre { $least } y { $most }.
next-supported = Lo que vale para ti lo decides tú.
next-supported-not-in-turn = En la repetición los palos no se alternaron, así que apoya la promesa sin probarla: alterna los dos, de tres en tres golpes, antes de decidir.
next-contradicted = La repetición se hizo con un palo después del otro: alterna los dos, de tres en tres golpes, antes de decidir.
next-contradicted-in-turn = En la repetición los palos se alternaron, y eso dice más que una prueba en la que no. Pide al fitter todos los golpes, en el orden en
    que se dieron.
next-contradicted-order-not-known = No se sabe en qué orden se hizo la repetición: alterna los dos palos, de tres en tres golpes, antes de decidir.
next-not-settled = Más golpes alternando los palos reducen la duda{ $told ->
    [yes] .
   *[no] : el plan de una prueba justa dice con cuántos muy probablemente se distinguirían.
}
next-too-small = Para probar una promesa tan pequeña, pon una cifra menor en la diferencia que importa y da muchos más golpes: el plan de una prueba
    justa dice cuántos.
next-no-retest = Planea una prueba justa, alterna los dos palos y vuelve con los golpes.

scatter = Una promesa sobre la dispersión no se puede comprobar con promedios.
scatter-remedy = Elige un objetivo sobre promedios, o lee la respuesta sobre la dispersión.
not-a-number = Una parte de la promesa no es un número.
not-a-number-remedy = Escribe solo números.
averages-needed = «Tanto más recto» no dice desde dónde ni hasta dónde.
averages-needed-remedy = Escribe los dos promedios, la derecha con más y la izquierda con menos.
no-claim = Todavía no hay ninguna promesa.
no-claim-remedy = Escribe los dos promedios, o la ganancia que se prometió.
no-change = La promesa es que no cambia nada.
no-change-remedy = Escribe qué se dijo que cambiaría.
at-least = La repetición muestra al menos lo prometido. Era { $claimed }; la repetición muestra { $span } (intervalo del { $level }).
value-in-doubt = Sin decidir: hay un valor en duda en la repetición. Lo prometido era { $claimed }.
next-to-nothing = Sin decidir: la repetición no dice casi nada. Lo prometido era { $claimed }.
order-unknown = Sin decidir: no se sabe cuánto influyen el calentamiento y el cansancio en { $measure }. Lo prometido era { $claimed }; { $guess ->
    [yes] teniendo en cuenta el azar y, a ojo, el orden, la
   *[no] solo por azar la
}
    repetición admitiría { $span } (intervalo del { $level }).
next-supported-order-not-known = No se sabe si en la repetición los palos se alternaron, así que apoya la promesa sin probarla: alterna los dos, de tres en tres golpes, antes de decidir.
next-supported-not-compared = La repetición no se pudo comparar ciclo a ciclo, así que apoya la promesa sin probarla: haz que se mida en cada golpe antes de decidir: { $measure }.
next-value-in-doubt = Revisa primero el valor dudoso: mientras esté mal, la repetición no dice nada.
next-hit-in-turn = Alterna los dos palos, de tres en tres golpes: así el orden deja de importar.
next-read-every-shot = Haz que se mida en cada golpe, para poder comparar ciclo a ciclo: { $measure }.

differs = El golpe típico: { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}; hay { $span } de diferencia (intervalo del { $level }).
same = El golpe típico: igual, como mucho { $size } de diferencia (intervalo del { $level }).
cannot-tell = El golpe típico: estos golpes no lo deciden. Cualquier cosa entre { $low } y { $high } (intervalo del { $level }).
only-typical = Estos golpes no pueden decir lo mismo del promedio, que cuenta entero cada fallo.
only-average = Los promedios difieren, y los golpes típicos { $same ->
    [yes] son iguales
   *[no] no se distinguen
}{ $bad-shots ->
    [yes] : parte de esa diferencia puede estar en los fallos
   *[no] {""}
}.
opposite = Los promedios quedan al revés: entre los dos está cuántas veces y cuánto se falla con un palo.
one-is-the-same = Solo uno de los dos, el promedio o el golpe típico, queda decidido aquí.
more-and-more-bad = Con { $club } los golpes bien dados van por delante, y { $shots ->
    [one] un golpe más se quedó muy corto
   *[other] más golpes suyos se quedaron muy cortos
}.
mishits = Más de { $below } por debajo del golpe típico: { $candidate } { $candidate-found } de { $candidate-of } (su propia tasa, entre { $candidate-low } y { $candidate-high } de cada 100),
    { $baseline } { $baseline-found } de { $baseline-of } (entre { $baseline-low } y { $baseline-high } de cada 100).
told-apart = Eso es más que azar.
may-be-luck = Recuentos así pueden ser azar.
beside-the-answer = La respuesta trata del promedio y cuenta todos los golpes; esto está a su lado.
nothing-compared = No hay nada que comparar; la respuesta dice por qué.
no-scatter = El golpe típico dice cuánto se alcanza, no cuánto se dispersan los golpes.
no-averages = Los promedios no muestran el golpe típico.
no-value-in-doubt = Mientras haya un valor en duda no se dice nada del golpe típico.
cannot-be-fitted = El golpe típico no se puede calcular aquí: hay muy pocos golpes, demasiados, o demasiados iguales.
differs-in-these-shots = El golpe típico: { $does } en estos golpes, en { $span } (intervalo del { $level }); no se sabe cuánto de eso vino de calentar o cansarse.
cannot-tell-order = El golpe típico: estos golpes no lo deciden, porque no se sabe cuánto influyen el calentamiento y el cansancio en { $measure }. { $guess ->
    [yes] Teniendo en cuenta el azar y, a ojo, eso
   *[no] Solo por azar
}, cualquier cosa entre { $low } y { $high } (intervalo del { $level }).
next-to-nothing = El golpe típico: tan pocos golpes o ciclos no dicen casi nada de él.
same-gap-less-surely = Los golpes típicos muestran más o menos la misma diferencia, con menos seguridad.

does = { $club } { $verb }
measure-of-does = { $club } { $verb } en { $measure }
on-a-side = { $size } { $side }
averages = { $candidate } promedió { $candidate-mean } en { $candidate-shots }, { $baseline } { $baseline-mean } en { $baseline-count }.
averages-compared = Ciclo a ciclo, en los { $rounds } ciclos con golpes de los dos palos, { $candidate } promedió { $candidate-mean } en { $candidate-shots }, { $baseline }
    { $baseline-mean } en { $baseline-count }.
counts = { $baseline }: { $baseline-shots }. { $candidate }: { $candidate-shots }.
luck = Dos palos idénticos{ $hit ->
    [in-this-order] {" "}usados en este orden podrían mostrar
    [in-whatever-order] , en el orden que fuera, podrían mostrar
    [not-compared] , sin comparar ciclo a ciclo, podrían mostrar
    [luck-alone] {" "}mostrarían, solo por azar y sin contar con el orden,
    [same-one-first] , siempre el mismo primero en cada ciclo, podrían mostrar
   *[alike] {" "}mostrarían
} una diferencia al menos así de grande en { $sessions }.
between = { $room ->
    [luck-and-order] Teniendo en cuenta el azar, el calentamiento y el cansancio
    [luck-alone] Contando solo con el azar, sin el orden
    [luck-and-a-guess] Teniendo en cuenta el azar y, a ojo, el calentamiento y el cansancio
    [luck-and-starts] Teniendo en cuenta el azar y el comienzo en frío de cada ciclo
   *[luck] Teniendo en cuenta el azar
}, la diferencia real puede estar en cualquier punto entre { $low } y { $high } (intervalo del { $level }).
cannot-tell-in-short = No se sabe: cualquier cosa entre { $low } y { $high }.
no-difference = ninguna diferencia
last-of-several = { $names } y { $last }
check-the-value-first = Revisa primero el valor dudoso: hasta entonces no se puede decir cuántos golpes hacen falta.
no-limits = Con tan pocos golpes o ciclos la diferencia real queda abierta en más de { $size } a cada lado: no dicen casi nada de ella.
no-limits-in-doubt = Contando el valor dudoso, estos golpes dejan la diferencia real abierta en más de { $size } a cada lado.
in-doubt-in-short = No se sabe: hay un valor dudoso.
no-limits-in-short = No se sabe: muy pocos golpes o ciclos.
gap = { $size } { $way }
shows-at-best = Una sesión así muestra una diferencia de { $size } en 8 de cada 10 casos; las menores piden más golpes.
first-in-turn = Alterna los palos, de tres en tres golpes.
why-in-turn = Si se termina con un palo antes de empezar con el otro, ni con muchos golpes se distingue el palo del calentamiento.
have-it-measured = Haz que se mida { $measure } en cada golpe.
first-read-every-shot = Haz que se mida { $measure } en cada golpe, para poder comparar ciclo a ciclo.
go-on = Sigue: { $rounds ->
    [one] queda { NUMBER($rounds) } ciclo
   *[other] quedan { NUMBER($rounds) } ciclos
} del plan.
more-than-can-be-hit = { $assumed ->
    [yes] Si los golpes se dispersan como se supone,
   *[no] Con esta dispersión
} harían falta más golpes de los que nadie puede dar: piensa si te
    serviría una diferencia mayor.
more-than-a-visit = { $assumed ->
    [yes] Si los golpes se dispersan como se supone,
   *[no] Con esta dispersión
} harían falta unos { $shots } golpes con cada palo para distinguir entre una diferencia de { $gap } y ninguna en 8 de cada 10 pruebas
    así: más de lo que cabe en una visita (unos 60 con cada uno, regla práctica entre golfistas, sin ningún estudio detrás).
other-days = Vuelve otros días y júntalos, confórmate con encontrar solo una diferencia mayor, o mira cuál de los dos agrupa mejor.
another-day = O vuelve otros dos días y junta los tres.
usually-tells = { $same-first ->
    [yes] Esta empezó cada ciclo con el mismo palo. Otra igual que empiece uno de cada dos ciclos con el otro palo muy probablemente distinguiría entre una diferencia de { $gap } y ninguna: así es en 8 de cada 10.
   *[no] 8 de cada 10 pruebas de este tamaño distinguen entre una diferencia de { $gap } y ninguna; esta no. Con otra igual muy probablemente se sabría.
}
would-tell = Con unos { $shots } golpes con cada palo, planeados de antemano y alternando los palos de tres en tres, muy probablemente se distinguiría entre una
    diferencia de { $gap } y ninguna: así es en 8 de cada 10 pruebas.
would-then-tell = { $assumed ->
    [yes] Si los golpes se dispersan como se supone, con
   *[no] Con
} unos { $shots } golpes con cada palo, planeados de antemano, muy probablemente se distinguiría entonces entre una diferencia de { $gap } y ninguna: así es
    en 8 de cada 10 pruebas.
in-turn-would-tell = De ese modo, { $assumed ->
    [yes] y si los golpes se dispersan como se supone, con
   *[no] con
} unos { $shots } golpes con cada palo, planeados de antemano, muy probablemente se distinguiría entre una
    diferencia de { $gap } y ninguna: así es en 8 de cada 10 pruebas.
in-turn-settles-order = Si los palos se alternan, de tres en tres golpes, el orden deja de importar.
plan-says-how-many = El plan de una prueba justa dice cuántos golpes hacen falta.
narrows = Una prueba nueva de { $shots } golpes con cada palo, planeada de antemano y alternando los palos de tres en tres, dejaría la duda en ± { $size } o menos: así
    es en 8 de cada 10 pruebas.
near-it = Si la diferencia real está cerca de { $margin }, ningún número de golpes decide si llega.
hardly-narrows = Ni con 60 golpes con cada palo en otra visita es seguro que la duda se reduzca mucho; varios días juntos sí la reducen.
measured-on = medido en { $count } de { $shots }
would-find = { $assumed ->
    [yes] Si los golpes se dispersan como se supone, una
   *[no] Una
} prueba de este tamaño encontraría entonces una diferencia real de { $size } en 8 de cada 10 casos; las menores piden más golpes.
fixed-would-tell = Con unos { $shots } golpes con cada palo, fijados de antemano y alternando los palos de tres en tres, muy probablemente se distinguiría entre una diferencia de
    { $gap } y ninguna: así es en 8 de cada 10 pruebas. Esta sesión tiene al menos otros tantos, pero decidió un intervalo más exigente, del { $level }.
check-the-value = Revisa primero el valor dudoso: mientras esté mal, esta respuesta no vale nada.
shorter-turns = Cambia de palo cada tres golpes, en lugar de tandas de hasta { $longest }: el mismo número de golpes da entonces muchos ciclos, y son los ciclos los que cuentan.
on-line = { $size } de desvío
# How far shots scatter in a measure, as a thing that is spoken of.
scatter-of = la dispersión en { $measure }
look-at-the-value = Antes que nada, comprueba el valor por el que se pregunta: lo que sigue lo cuenta.

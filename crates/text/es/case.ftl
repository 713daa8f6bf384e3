does = { $club } { $verb }
measure-of-does = { $measure } de { $club } { $verb }
on-a-side = { $size } { $side }
averages = { $candidate } promedió { $candidate-mean } en { $candidate-shots }, { $baseline } { $baseline-mean } en { $baseline-count }.
averages-compared = Ciclo a ciclo, en los { $rounds } que tienen los dos, { $candidate } promedió { $candidate-mean } en { $candidate-shots }, { $baseline }
    { $baseline-mean } en { $baseline-count }.
counts = { $baseline }: { $baseline-shots }. { $candidate }: { $candidate-shots }.
luck = Dos palos idénticos{ $hit ->
    [in-this-order] {" "}usados en este orden podrían mostrar
    [in-whatever-order] , en el orden que fuera, podrían mostrar
    [luck-alone] {" "}mostrarían, solo por azar y haga lo que haga el orden,
   *[alike] {" "}mostrarían
} una diferencia al menos así de grande en { $sessions }.
between = Contando con el azar{ $mixed-up ->
    [yes] , el calentamiento y el cansancio
   *[no] {""}
}, la diferencia real puede estar en cualquier punto entre { $low } y { $high } (intervalo del { $level }).
cannot-tell-in-short = No se sabe: cualquier cosa entre { $low } y { $high }.
no-difference = ninguna diferencia
check-the-value-first = Revisa primero el valor que no puede ser correcto: hasta entonces no se puede decir cuántos golpes hacen falta.
no-limits = Tan pocos golpes o ciclos no ponen límites a la diferencia real.
no-limits-in-short = No se sabe: muy pocos golpes o ciclos.
gap = { $size } { $way }
shows-at-best = Una sesión así muestra una diferencia de { $size } en 8 de cada 10 casos; las menores piden más golpes.
first-in-turn = Alterna los palos, de tres en tres golpes: uno después del otro, ni muchos golpes distinguen el palo del
    calentamiento.
first-read-every-shot = Haz que se lea { $measure } en cada golpe, para poder comparar ciclo a ciclo.
go-on = Sigue: { $rounds ->
    [one] queda { NUMBER($rounds) } ciclo
   *[other] quedan { NUMBER($rounds) } ciclos
} del plan.
more-than-can-be-hit = Con esta dispersión harían falta más golpes de los que nadie puede dar: piensa si te
    serviría una diferencia mayor.
more-than-a-visit = Con esta dispersión harían falta unos { $shots } golpes con cada palo para saberlo en 8 de cada 10 pruebas así: más
    de lo que cabe en una visita (unos 60, regla de golfistas, sin estudio detrás). Vuelve otro día y junta los días,
    busca una diferencia mayor, o mira cuál de los dos agrupa mejor.
another-day = O vuelve otro día y junta los días.
usually-tells = Con 8 de cada 10 pruebas de este tamaño se sabe; con esta no. Con otra igual muy probablemente se sabría.
would-tell = Con unos { $shots } golpes con cada palo, planeados de antemano y en tandas de tres, muy probablemente se sabría: así es en 8 de
    cada 10 pruebas.
would-then-tell = Con unos { $shots } golpes con cada palo, planeados de antemano, muy probablemente se sabría entonces: así es en 8 de cada
    10 pruebas.
in-turn-would-tell = Alternando los palos cada tres golpes, el orden deja de contar: con unos { $shots } golpes con cada palo, planeados de
    antemano, muy probablemente se sabría. Así es en 8 de cada 10 pruebas.
plan-says-how-many = Alternando los palos cada tres golpes, el orden deja de contar. Cuántos golpes hacen falta lo dice el plan de una
    prueba justa.
narrows = Una prueba nueva de { $shots } golpes con cada palo, planeada de antemano y en tandas de tres, dejaría la duda en ± { $size } o menos: así
    es en 8 de cada 10 pruebas. Si la diferencia real está cerca de { $margin }, ningún número de golpes decide si llega.
hardly-narrows = Los golpes de otra visita apenas reducirían la duda; varios días juntos sí. Si la diferencia real está cerca de
    { $margin }, ningún número de golpes decide si llega.

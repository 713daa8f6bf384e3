open = Mira todos los números y prueba con la diferencia que te importe
in-the-file = Los golpes están en el archivo que acompaña a esto.
title = { $measure }: { $candidate } frente a { $baseline }
the-same = igual en estos golpes
scatter = Dispersión: { $ratio }; teniendo en cuenta el azar, de { $low } a { $high } (intervalo del { $level }).
gap = Diferencia: { $gap }; teniendo en cuenta { $room ->
    [luck-and-order] el azar y el orden
    [luck-alone] solo el azar
    [luck-and-a-guess] el azar y, a ojo, el orden
    [luck-and-starts] el azar y el comienzo en frío de cada ciclo
   *[luck] el azar
}, de { $low } a { $high } (intervalo del { $level }).
gap-alone = Diferencia en estos { $averages ->
    [yes] promedios
   *[no] golpes
}: { $gap }.
average-of = { $club }: promedio de { $shots }
average-of-unknown = { $club }: promedio de un número desconocido de golpes
shots-with = { $club }: { $shots }
shots-measured = { $club }: { $shots }, con dato en { $measured }
average-of-best = { $club }: promedio de los mejores { $shots }
hit-in-turn = { $counts }, alternados.
hit-one-after-the-other = { $counts }, un palo tras otro.
hit-somehow = { $counts }; no se sabe en qué orden se dieron.
hit-by-one = { $counts }.
none-left-out = Ninguno está marcado como apartado.
sender-says-fixed = Quien lo envía dice que el número de golpes se fijó de antemano; ni eso ni los números tecleados se pueden comprobar aquí.
sender-says-planned = Quien lo envía dice que los ciclos se planearon de antemano; ni eso ni los números tecleados se pueden comprobar aquí.
cannot-be-checked = Los números tecleados no se pueden comprobar aquí.
no-reason = sin decir por qué
times-reason = { $reason }: { NUMBER($times) }
other-reasons = otros motivos
left-out = Golpes apartados, pero en el enlace: { $shots } ({ $reasons }).

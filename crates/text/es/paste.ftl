open = Mira todos los números y prueba con la diferencia que te importe
in-the-file = Los golpes están en el archivo que acompaña a esto.
title = { $measure }: { $candidate } frente a { $baseline }
the-same = igual
scatter = Dispersión: { $ratio }; contando con el azar, de { $low } a { $high } (intervalo del { $level } %).
gap = Diferencia: { $gap }; contando con el azar{ $mixed-up ->
    [yes] {" "}y el orden
   *[no] {""}
}, de { $low } a { $high } (intervalo del { $level } %).
average-of = { $club } promedio de { $shots }
average-of-unknown = { $club } promedio de no se sabe cuántos golpes
shots-with = { $club } { $shots }
hit-in-turn = { $counts }, por turnos.
hit-one-after-the-other = { $counts }, un palo detrás del otro.
hit-somehow = { $counts }.
none-left-out = No se apartó ningún golpe.
no-reason = sin decir por qué
times-reason = { NUMBER($times) } { $reason }
other-reasons = otros motivos
left-out = Apartados, pero en el enlace: { $shots } ({ $reasons }).

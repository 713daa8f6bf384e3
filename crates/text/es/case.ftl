does = { $club } { $verb }
measure-of-does = { $measure } de { $club } { $verb }
on-a-side = { $size } { $side }
averages = { $candidate } promedió { $candidate-mean } en { $candidate-shots }, { $baseline } { $baseline-mean } en { $baseline-count }.
counts = { $baseline }: { $baseline-shots }. { $candidate }: { $candidate-shots }.
luck = Dos palos idénticos { $mixed-up ->
    [yes] golpeados en este orden podrían mostrar
   *[no] mostrarían
} una diferencia así de grande en { $sessions }.
between = Contando con el azar{ $mixed-up ->
    [yes] , el calentamiento y el cansancio
   *[no] {""}
}, la diferencia real está entre { $low } y { $high }.
cannot-tell-in-short = No se sabe: cualquier cosa entre { $low } y { $high }.
no-difference = ninguna diferencia
gap = { $size } { $way }
shows-at-best = Una sesión así muestra una diferencia de { $size } en 8 de cada 10 casos; las menores piden más golpes.
first-in-turn = Primero golpea los palos por turnos, de tres en tres golpes: uno detrás de otro, ni muchos golpes
    distinguen el palo del calentamiento.
more-than-a-visit = Con esta dispersión harían falta unos { $shots } golpes con cada palo para decidir { $margin }: más de
    lo que cabe en una visita. Si no buscas una diferencia mayor, elige por tacto, aspecto o precio.
usually-settles = La mayoría de las sesiones de este tamaño deciden { $margin }; esta no. Otra igual seguramente lo
    diría.
would-settle = Unos { $shots } golpes con cada palo, planeados de antemano y en turnos de tres, decidirían { $margin }.
would-then-settle = Unos { $shots } golpes con cada palo, planeados de antemano, decidirían entonces { $margin }.

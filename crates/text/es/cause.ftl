ball-speed = Velocidad de bola
launch-angle = Ángulo de salida
spin = Spin
direction = Dirección
curve = Curva
rest = Sin explicar
club-speed = Velocidad de palo
smash = Smash factor
part-of-carry = { $size } de carry ({ $span })
no-clear-part = ninguna parte clara de la diferencia ({ $span })
part-differed = { $gap }: { $worth }.
part = { $worth }.
no-gap = { $candidate } y { $baseline } llegaron igual de lejos, así que no hay diferencia que explicar.
carried-by-rest = { $club } llegó { $gap } { $farther ->
    [yes] más
   *[no] menos
} lejos en estos golpes: unos { $size } están en la bola, el viento, el azar o cómo se midió el carry, no
    en la salida.
carried-by-nothing-clear = { $club } llegó { $gap } { $farther ->
    [yes] más
   *[no] menos
} lejos en estos golpes: nada en la salida de la bola lo explica con claridad.
carried-through = { $club } llegó { $gap } { $farther ->
    [yes] más
   *[no] menos
} lejos en estos golpes: { $most ->
    [more] más que todo eso
    [all] todo eso
   *[largest] la mayor parte clara
}, { $size }, vino de { $through }.
lie-in-rest = Unos { $size } están en la bola, el viento, el azar o cómo se midió el carry, no en la salida.
through-ball-speed = { $up ->
    [yes] más
   *[no] menos
} velocidad de bola
through-launch = una salida más { $up ->
    [yes] alta
   *[no] baja
}
through-spin = { $up ->
    [yes] más
   *[no] menos
} spin
through-direction = dónde empezó la bola
through-curve = cómo curvó la bola
through-club-speed = { $up ->
    [yes] más
   *[no] menos
} velocidad de palo
through-smash = un smash factor { $up ->
    [yes] mejor
   *[no] peor
}
through-rest = lo que el modelo de vuelo no explica
against = En contra actuó { $what }: { $size }.
path = La trayectoria fue más { $outward ->
    [yes] de dentro afuera
   *[no] de fuera adentro
}.
swing-differed = El swing de ese día fue distinto: { $how }
swing-did-not-differ = Nada de lo medido en el swing fue claramente distinto entre los dos.
swing-not-measured = No se midió nada del swing.
belongs-to-both = Del palo y del swing juntos es: { $what }
within-ball-speed = De la parte de la velocidad de bola, { $club } es lo rápido que fue el palo y { $smash } cuánto de eso llegó a la bola.
no-direction = No se midió la dirección de salida o el eje del spin: lo que costó empezar o curvar fuera de línea está en lo que queda sin explicar.
no-club-speed = No se midió la velocidad de palo: diría si la velocidad de bola vino de un swing más rápido o de un impacto mejor.
no-loft = No se midieron el loft y el ángulo de ataque en el impacto: con los dos, un cambio de spin se puede comparar con cómo llegó el palo.
no-strike = No se midió dónde impactó la bola en la cara. Con un driver, 5 mm más arriba son unas 700 rpm menos de spin: sin ese dato ninguna
    diferencia de spin se puede atribuir al palo.
note = Repartido con un modelo del vuelo, golpe frente a golpe del mismo puesto, { $shots } y { $other-shots }; el modelo acierta con un 3 % del
    carry, y con menos que eso en una diferencia.
not-flown = { $shots } sin todos estos números, o que no volaron, no están incluidos.
not-in-turn = Los palos no se golpearon por turnos, así que el calentamiento o el cansancio también están en estas partes.
needs-turns = Dice por qué número vino la diferencia, no que el palo hiciera ese número: para eso hay que golpear los palos por turnos.
bar = { $part }: { $size }, de { $span }.
bars = Barras de la izquierda, más corto, a la derecha, más largo, que suman { $gap } de carry con { $club }. { $parts }
bars-within = Dentro de la velocidad de bola: { $parts }
from-to = { $low } a { $high }
moved = { $measure }: { $size } { $way } ({ $span }).
not-moved = { $measure }: ninguna diferencia clara ({ $span }).
worth = { $size } { $way }, { $measure }: vale unos { $effect } ({ $span }).

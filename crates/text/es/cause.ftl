ball-speed = Velocidad de bola
launch-angle = Ángulo de salida
spin = Spin
direction = Dirección
curve = Curva
rest = Sin explicar
club-speed = Velocidad de palo
smash = Smash factor
part-of-carry = { $size } de carry ({ $span })
no-clear-part = sin un efecto claro en la diferencia, quizá ninguno ({ $span })
part-differed = { $gap } en estos golpes: { $worth }.
part = { $worth }.
no-gap = { $candidate } y { $baseline } llegaron en promedio igual de lejos en estos golpes, así que no hay diferencia que explicar.
carried-by-rest = { $club } { $farther ->
    [yes] llegó { $gap } más lejos
   *[no] se quedó { $gap } más corto
} en estos golpes: alrededor de { $size } están en la bola, el viento, el azar o cómo se midió el carry, no
    en la salida.
carried-by-nothing-clear = { $club } { $farther ->
    [yes] llegó { $gap } más lejos
   *[no] se quedó { $gap } más corto
} en estos golpes: nada en la salida de la bola lo explica con claridad.
carried-through = { $club } { $farther ->
    [yes] llegó { $gap } más lejos
   *[no] se quedó { $gap } más corto
} en estos golpes: { $most ->
    [more] más que todo eso
    [all] todo eso
   *[largest] la mayor parte clara
}, { $size }, vino de { $through }.
lie-in-rest = Alrededor de { $size } están en la bola, el viento, el azar o cómo se midió el carry, no en la salida.
through-ball-speed = { $up ->
    [yes] más
   *[no] menos
} velocidad de bola
through-launch = { $launched ->
    [higher] una salida más alta
    [lower] una salida más baja
   *[somehow] la salida
}
through-spin = { $spun ->
    [more] más spin
    [less] menos spin
   *[somehow] el spin
}
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
within-ball-speed = De lo que valió la velocidad de bola, { $club } viene de lo rápido que fue el palo{ $club-is-clear ->
    [yes] {""}
   *[no] {" "}(quizá nada)
} y { $smash } de lo bien que impactó{ $smash-is-clear ->
    [yes] {""}
   *[no] {" "}(quizá nada)
}.
no-direction = No se midieron a la vez la dirección de salida y el eje de spin: lo que costó que la bola saliera desviada o curvara está en lo que queda sin explicar.
no-club-speed = No se midió la velocidad de palo: diría si la velocidad de bola vino de un swing más rápido o de un impacto mejor.
no-loft = No se midieron el loft y el ángulo de ataque en el impacto: con los dos, un cambio de spin se puede comparar con cómo llegó el palo.
no-strike = No se midió dónde impactó la bola en la cara. Con un driver, un impacto 5 mm más arriba quita unas 700 rpm de spin (regla práctica entre golfistas, sin ningún estudio detrás): sin ese dato ninguna
    diferencia de spin se puede atribuir al palo.
note = Repartido con un modelo del vuelo, golpe frente a golpe del mismo puesto, { $shots } y { $other-shots }; el modelo se equivoca en alrededor de
    un 3 % del carry, y menos cuando se comparan dos. Lo que va entre paréntesis es un intervalo del 99 %, porque se miran varias partes; claro quiere
    decir que el intervalo entero queda a un lado de cero.
not-flown = { $shots } sin todos estos números, o que no volaron, no están incluidos.
not-in-turn = Los palos no se alternaron, así que el calentamiento o el cansancio también están en estas partes.
order-not-known = No se sabe si los palos se alternaron, así que el calentamiento o el cansancio también pueden estar en estas partes.
through-which = Dice a través de qué número vino la diferencia, no que el palo hiciera ese número.
needs-turns = Dice a través de qué número vino la diferencia, no que el palo hiciera ese número: para eso hay que alternar los palos.
bar = { $part }: { $size }, de { $span }.
bars = Barras de la izquierda, más corto, a la derecha, más largo, que sin redondear suman { $gap } de carry con { $club }. { $parts }
bars-within = Dentro de la velocidad de bola: { $parts }
from-to = { $low } a { $high }
moved = { $measure }: { $size } { $way } ({ $span }).
not-moved = { $measure }: ninguna diferencia clara ({ $span }).
worth = { $size } { $way }, { $measure }: vale alrededor de { $effect }{ $is-clear ->
    [yes] {""}
   *[no] , quizá nada
} ({ $span }).
next-club-speed = Siguiente paso: ese día el palo fue a otra velocidad. Alterna los dos otra vez antes de atribuirlo al palo.
next-smash = Siguiente paso: marca la cara y mira dónde impactó cada palo; llévaselo a un profesor antes que nada.
next-ball-speed = Siguiente paso: que midan la velocidad de palo, y marca la cara, para ver si la velocidad de bola vino del swing o del impacto; llévaselo a un profesor.
next-launch-or-spin = Siguiente paso: mira con un profesor, en este orden, la altura del tee, el impacto en la cara y luego el loft.
next-start-or-curve = Siguiente paso: mira con un profesor, en este orden, la puntería, la cara en el impacto y el lie del palo. Una clase puede hacer más que un palo.
long-turns = Se cambió de palo tan pocas veces que el calentamiento o el cansancio también pueden estar en estas partes; los intervalos de aquí cuentan golpes, y la respuesta solo ciclos enteros.
hint-long-turns = Se cambió de palo muy pocas veces para estar seguros.

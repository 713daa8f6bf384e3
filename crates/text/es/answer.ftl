matters = { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}. En promedio, { $span } { $more }; empieza a importar a partir de { $margin }.
may-matter = { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}: en promedio hay { $span } de diferencia. Aún no se sabe si llega a lo que importa ({ $margin }).
too-small = Una diferencia real, pero demasiado pequeña para importar: { $does }; en promedio hay { $span } de diferencia.
different = { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}: en promedio hay { $span } de diferencia.
differs-in-these-shots = { $does } en estos { $averages ->
    [yes] promedios
   *[no] golpes
}: en promedio hay { $span } de diferencia; no se sabe cuánto de eso vino de calentar o cansarse.
differs-in-short = { $does } en estos { $averages ->
    [yes] promedios
   *[no] golpes
}: en promedio hay { $span } de diferencia.
too-small-in-short = { $does }; en promedio hay { $span } de diferencia: demasiado poco para importar.
same = { $measure }: { $candidate } y { $baseline } son iguales para lo que { $theirs ->
    [yes] busca quien lo envió
   *[no] buscas
}, { $size } de diferencia como mucho.
same-in-short = Iguales: { $size } de diferencia como mucho.
more-is-ruled-out = Menos de { $margin } no importaría, y estos { $averages ->
    [yes] promedios
   *[no] golpes
} hablan en contra de que sea más.
nearer-to-zero = En promedio, { $club } queda más cerca de cero.
nearer-not-settled = No está decidido cuál de los dos queda más cerca de cero.
depends = Depende de lo que se apartó.
depends-in-short = Depende de lo que se apartó.
depends-how = Con todos los golpes: { $with-all }. Sin { $shots }: { $without }.
order-could-explain = El orden de los golpes y el azar juntos podrían explicar esta diferencia, así que estos { $averages ->
    [yes] promedios
   *[no] golpes
} no lo deciden.
order-not-allowed-for = No se sabe cuánto influyen el calentamiento y el cansancio en { $measure }, así que estos { $averages ->
    [yes] promedios
   *[no] golpes
} no pueden decir si { $baseline } y { $candidate }
    son iguales.
not-apart = Con estos golpes no se puede distinguir { $baseline } de { $candidate } en { $measure }.
not-apart-not-in-turn = { $baseline } y { $candidate } no se alternaron, y no se pueden distinguir en { $measure }.
not-apart-order-not-known = No se sabe si { $baseline } y { $candidate } se alternaron, y estos golpes no los distinguen en { $measure }.
next-to-nothing = Estos { $averages ->
    [yes] promedios
   *[no] golpes
} no dicen casi nada de { $candidate } frente a { $baseline } en { $measure }.
only-whole-laps = Se cambió de palo tan pocas veces que solo cuentan { $laps } ciclos: { $nothing ->
    [yes] no dicen casi nada de { $candidate } frente a { $baseline }
   *[no] no distinguen { $baseline } de { $candidate }
} en { $measure }.
not-apart-averages = Solo con promedios no se puede distinguir { $baseline } de { $candidate } en { $measure }.

choose-after = { $measure }: este dato no decide entre ellos, pero se diferencian{ $hint ->
    [yes] {" "}en estos golpes
   *[no] {""}
} en { $others }. Mira eso antes de elegir.
choose-not-yet = { $measure }: este dato no decide entre ellos, y { $asked } sigue sin decidir. Aclara eso antes de elegir.
choose-after-the-other-club = { $measure }: este dato no decide entre estos dos. Mira { $club } antes de elegir.
choose-after-a-check = Antes de elegir, compruébalo con una prueba nueva: quitar { $shots ->
    [one] un solo golpe
   *[other] { $shots } golpes bien escogidos
} cambiaría la respuesta sobre { $asked }.
# Where laps of a plan remain they are the check.
choose-after-the-last-laps = Antes de elegir, completa { $rounds ->
    [one] el último ciclo
   *[other] los últimos { NUMBER($rounds) } ciclos
} del plan: quitar { $shots ->
    [one] un solo golpe
   *[other] { $shots } golpes bien escogidos
} cambiaría la respuesta sobre { $asked }.
choose-freely = Elige por sensaciones, estética o precio.
stays-open = Cómo se comparan en { $measure } queda abierto: estos golpes no lo dicen.
hint-no-proof = Se usó un palo después del otro: es un indicio{ $allowed ->
    [yes] {" "}fuerte
   *[no] {""}
}, no una prueba.
hint-order-not-known = No se sabe si los palos se alternaron: es un indicio{ $allowed ->
    [yes] {" "}fuerte
   *[no] {""}
}, no una prueba.
hint-averages = Los promedios no muestran en qué orden se dieron los golpes: es un indicio{ $allowed ->
    [yes] {" "}fuerte
   *[no] {""}
}, no una prueba.
hint-not-compared = Los palos se alternaron, pero { $measure } no se pudo comparar ciclo a ciclo: es un indicio{ $allowed ->
    [yes] {" "}fuerte
   *[no] {""}
}, no una prueba.
between-the-blocks = Lo que cambiara justo entre los dos, el viento, una clase, otra bola, no se distingue del palo.
new-in-the-hand = Si { $club } era nuevo para quien lo usó, eso y el azar juntos podrían explicarlo: aprender un palo puede costar cerca de { $size } de { $measure } en tantos golpes, y estos golpes
    no lo distinguen del palo.
second-day = Un segundo día diría si se mantiene.
holds-here = Vale para estos palos tal como están montados, con { $theirs ->
    [yes] el swing que tenía ese día quien lo envió
   *[no] tu swing de ese día
}.
leave-nothing-out = Cuenta todos los golpes, o haz una prueba planeada sin apartar ninguno.

no-shots = Todavía no hay golpes que comparar.
no-shots-next = Pega los golpes de dos palos, o prueba un ejemplo.
one-club = Aquí hay un solo palo, y nada con que compararlo.
one-club-next = Añade golpes con un segundo palo, y di con qué palo fue cada golpe.
too-few-shots = Hay muy pocos golpes para comparar los palos en { $measure }.
too-few-shots-next = Hacen falta al menos 3 golpes con cada palo para responder algo, 5 para la dispersión. El plan de una prueba justa
    dice con cuántos muy probablemente se sabría.
counts-missing = Los promedios solos no responden: falta saber de cuántos golpes sale al menos uno de ellos.
counts-missing-why = Un promedio de 3 golpes y uno de 30 parecen iguales y dicen cosas muy distintas.
counts-missing-next = Añade de cuántos golpes sale cada promedio.
only-the-best = De { $clubs } solo se ven los mejores golpes, y con ellos no se puede responder.
only-the-best-why = Los mejores golpes de cualquier palo parecen buenos. Lo que cuenta es lo que hace el palo en cada swing.
only-the-best-next = Pide todos los golpes, o el promedio y el número de todos ellos.
spread-missing = Falta cuánto se dispersan los golpes en { $measure }, así que los promedios no se pueden comparar.
spread-missing-next = Añade la desviación estándar junto a cada promedio, o todos los golpes.
only-averages = Los promedios no muestran qué palo agrupa mejor.
only-averages-why = La dispersión está en los golpes; una desviación escrita junto a un promedio es demasiado insegura para decidir.
only-averages-next = Añade todos los golpes.
no-scatter = Con { $clubs }, { $both ->
    [yes] todos los golpes de cada palo tienen un solo valor de { $measure }
   *[no] todos los golpes tienen el mismo valor de { $measure }
}, así que no hay con qué medir el azar.
no-scatter-in-rounds = Todos los ciclos muestran la misma diferencia de { $measure }, sin ninguna dispersión, así que no hay con qué medir el azar.
no-scatter-why = Los golpes reales se dispersan{ $laps ->
    [yes] , y las diferencias de ciclo a ciclo también
   *[no] {""}
}. Los números que no lo hacen se habrán redondeado o copiado.
no-scatter-next = Revisa la columna de { $measure }.
not-measured = { $measure }: no se midió con { $clubs }.
not-measured-next = Elige una medida que tengan los dos, o añade la columna que falta.
one-or-both = un palo o los dos

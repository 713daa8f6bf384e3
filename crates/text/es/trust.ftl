in-turn = Los palos se alternaron, en { $rounds } ciclos.
in-turn-why = El calentamiento, el cansancio y un cambio de viento afectan a todos los palos por igual.
in-turn-next = Sigue alternándolos.
not-compared = Los palos se alternaron, en { $rounds } ciclos, pero { $measure } no se pudo comparar ciclo a ciclo.
not-compared-why = En muy pocos ciclos se midió con los dos palos, así que calentar y cansarse pueden contar como si fuera el palo.
not-compared-next = Haz que se mida en cada golpe.
in-streaks = Los golpes vinieron por rachas: de lo que se desvió uno, cerca del { $percent } % siguió en el siguiente.
in-streaks-why = Golpes así dicen menos que otros tantos sin nada que ver entre sí. Por eso el intervalo de la respuesta es un { $wider } % más ancho.
in-streaks-next = Ayudan más ciclos, y cambiar de palo más a menudo.
in-turn-same-first = Los palos se alternaron en { $rounds } ciclos, siempre con { $club } primero.
in-turn-same-first-why = Lo que pierden los primeros golpes de un ciclo, tras un descanso o un paseo, cayó solo en { $club }.
in-turn-same-first-next = Empieza { $several ->
    [yes] cada ciclo con un palo distinto
   *[no] uno de cada dos ciclos con el otro palo
}.
learning = { $club } fue ganando terreno a { $other } de golpe en golpe: en { $measure }, { $rough ->
    [yes] { $size } o más
   *[no] cerca de { $size }
} desde el primero.
learning-why = Teniendo en cuenta el azar, { $span }. { $baseline ->
    [yes] Puede que el calentamiento cayera sobre todo en él, y su promedio lleva lo que costó. Ya en caliente,
   *[no] Es lo que hace un palo nuevo en las manos, y su promedio lleva lo que costó aprenderlo. Una vez conocido,
}
    frente a { $other } puede quedar en { $gap } (de { $low } a { $high }, intervalo del { $level }).
learning-next = Úsalo hasta que deje de mejorar y repite la prueba.
moved = { $club } cambió él mismo: { $measure } de { $before } con «{ $first }» y de { $after } con «{ $second }».
moved-why = Son { $gap } (de { $low } a { $high }, intervalo del { $level }) con un mismo palo. Lo que cambió ahí, o solo vino con el tiempo, mueve también
    los otros palos: los que se usaron a un lado y a otro no se comparan con justicia.
moved-next = Mira «Antes y después»: qué hizo el cambio y qué hizo el palo.
odd-shot = ¿Es correcto? Golpe { $number }, { $club }: { $measure }, { $value }.
odd-average = ¿Es correcto? Promedio de { $club }: { $measure }, { $value }.
out-of-range = { $measure }: va de { $low } a { $high } si se leyó y se escribió bien{ $others ->
    [0] {""}
    [one] ; hay otro valor fuera
   *[other] ; hay otros { $others } valores fuera
}.
point-slipped = La mayoría de los golpes con { $club } están cerca de { $usual }: este es más o menos { $below ->
    [yes] la décima parte
   *[no] diez veces eso
}, como si se hubiera corrido la coma{ $others ->
    [0] {""}
    [one] ; hay otro valor así
   *[other] ; hay otros { $others } valores así
}.
counts-in-the-answer = Cuenta de todos modos, y mientras esté mal la respuesta no vale nada.
counts-beside-the-answer = Cuenta en lo que se dice sobre { $measure }, que no vale nada mientras esté mal; la respuesta sobre { $asked } no lo usa.
out-of-range-next = Corrígelo o apártalo.
moves-the-answer = Queda lejos de los demás, y él solo mueve la respuesta { $size }, cuando importan { $margin }{ $others ->
    [0] {""}
    [one] ; otro golpe también lo hace
   *[other] ; otros { $others } golpes también lo hacen
}. Cuenta de todos modos.
odd-next = Si es un error, corrígelo o apártalo; si la bola salió así, déjalo.
blocked = { $several ->
    [yes] Se usaron los palos uno tras otro.
   *[no] Se usó un palo después del otro.
}
blocked-why = Todo lo que cambió entre { $several ->
    [yes] uno y el siguiente
   *[no] los dos
}, calentar, cansarse, el viento, un consejo de quien mira, cuenta como si fuera el palo.
blocked-next = La próxima vez altérnalos: tres con uno, tres con el otro, una y otra vez.
order-unknown = No se conoce el orden en que se dieron los golpes.
order-unknown-why = Un palo pudo llevarse los golpes en frío y el otro los golpes en caliente.
order-unknown-next = Si conoces el orden, dilo donde se ven tus golpes.
long-turns = Los palos se usaron en tandas de hasta { $longest } golpes.
long-turns-why = Dentro de una tanda tan larga, calentar y cansarse cuentan como si fuera el palo, de modo que solo los ciclos enteros
    sirven de prueba: la respuesta es mucho menos segura de lo que sugiere el número de golpes.
long-turns-next = Cambia de palo cada tres golpes.
cold-start = { $club } fue el primero, con { $shots } antes que ningún otro palo.
cold-start-why = El calentamiento por sí solo suele dar al palo que va después alrededor de { $size } de { $measure } (regla práctica entre golfistas, sin ningún estudio detrás).{ $allows ->
    [up-to] {" "}Con el cansancio y todo lo demás que cambie con el tiempo, la respuesta cuenta con hasta { $allowed }.
    [nothing] {" "}La respuesta trata de la dispersión y no deja margen para eso.
   *[not-said] {""}
}
first-shots-are-rarely-the-best = Los primeros golpes de una sesión rara vez son los mejores.
cold-start-next = Da unos diez golpes para calentar antes de que cuente ninguno: regla práctica entre golfistas, sin ningún estudio detrás.
unequal = { $more } tiene { $shots }, { $fewer } solo { $count }.
unequal-why = La respuesta solo es tan segura como permite el número menor, y ahí pesa más un fallo.
unequal-next = Da a cada palo el mismo número de golpes.
drift = { $in-turn ->
    [yes] A lo largo de la sesión
   *[no] Dentro de los golpes de cada palo, proyectado a toda la sesión,
} hubo alrededor de { $size } { $up ->
    [yes] más
   *[no] menos
} de { $measure }.
drift-sideways = { $in-turn ->
    [yes] A lo largo de la sesión
   *[no] Dentro de los golpes de cada palo, proyectado a toda la sesión,
} hubo un cambio en { $measure } de alrededor de { $moved }.
drift-why = Teniendo en cuenta el azar, { $span }. { $shared ->
    [alike] Los palos que se alternan lo comparten.
    [in-part] Se cambió de palo tan pocas veces que solo lo comparten en parte.
   *[not-at-all] Los palos que se usan uno después del otro no lo comparten: el error puede ser mayor que el margen que deja la respuesta.
}
drift-pushes = Por sí solo parecería que «{ $does }».
drift-next = { $advice ->
    [warm-up] Calienta antes del primer golpe que cuenta.
    [rest] Descansa entre tandas.
   *[both] Calienta antes del primer golpe que cuenta y descansa entre tandas.
}
numbers-missing = { $missing ->
    [one] Falta 1 golpe: la numeración salta en el número { $first }
   *[other] Faltan { $missing } golpes: la numeración salta, por primera vez en el número { $first }
}.
numbers-missing-why = Si alguien quitó los malos, los promedios son de golpes escogidos.
numbers-missing-next = Pide todos los golpes que se dieron.
average-disagrees = El promedio de { $measure } escrito para { $club } no es el de sus golpes.
printed = Está escrito { $printed }; los { $shots } de aquí promedian { $average }.
printed-over = Está escrito { $printed } en { $claimed }; los { $shots } de aquí promedian { $average }.
average-disagrees-next = Pregunta de qué golpes es el promedio escrito.
left-out = Golpes apartados: { $counts }.
left-out-why = Apartar los dos peores de un solo palo puede hacer que dos palos iguales parezcan distintos en 1 de cada 10
    sesiones. Lo apartado sigue contando en la respuesta.
left-out-next = Quédate con todos los golpes{ $in-doubt ->
    [yes] , salvo que sea un error al anotarlo
   *[no] {""}
}. Un fallo también es del palo.
one-far-shot = { $several ->
    [yes] De los dos palos que aquí se comparan, 1 golpe
   *[no] 1 golpe
} con { $club } queda lejos de los demás.
one-far-shot-why = Cuenta. Uno solo puede mover mucho un promedio.
far-shots = { $several ->
    [yes] De los dos palos que aquí se comparan, { NUMBER($shots) } golpes
   *[no] { NUMBER($shots) } golpes
} quedan lejos de los demás{ $others ->
    [0] { $shots ->
        [2] , los dos con { $club }
       *[other] , todos con { $club }
    }
   *[other] : { NUMBER($count) } con { $club } y { NUMBER($others) } con { $other }
}.
far-shots-why = Cuentan. Si un palo da más golpes así es parte de la pregunta.
far-shots-next = Mira también el golpe típico en los números.
few-decide = Quitar { $shots ->
    [one] un solo golpe
   *[other] { $shots } golpes bien escogidos
} cambiaría la respuesta.
few-decide-why = Una respuesta que unos pocos golpes pueden volver del revés se apoya en poco.
few-decide-next = No apartes ninguno{ $in-doubt ->
    [yes] , salvo que sea un error al anotarlo
   *[no] {""}
}. Antes de decidir, compruébalo con una prueba nueva, con el número de golpes fijado de antemano.
not-fixed = El número de golpes no se fijó de antemano, o se miraron los datos a mitad de la prueba.
fixed-not-said = Nadie dijo si el número de golpes se fijó de antemano.
fixed-not-said-next = Si se fijó antes del primer golpe, dilo.
not-of-the-plan = { $rounds ->
    [0] Ningún ciclo tiene
    [one] 1 ciclo tiene
   *[other] { $rounds } ciclos tienen
} los dos palos; se planearon { $planned }.
not-of-the-plan-next = Detente donde dice el plan.
not-fixed-why = Dos palos iguales que se miran hasta que uno parece mejor parecerán distintos en unas 2 de cada 10 sesiones. Por eso se
    le exige más a la respuesta.
not-fixed-next = Fija el número antes del primer golpe.
planned-looks = Se { $unfinished ->
    [yes] empezaron { $round } de los { $planned } ciclos previstos; el último no está terminado
   *[no] hicieron { $round } de los { $planned } ciclos previstos
}.
planned-looks-why = { $looked ->
    [yes] Mirar los datos a mitad de la prueba estaba previsto, y la respuesta lo tiene en cuenta.
   *[no] Nadie miró los datos antes del final del plan.
}
planned-looks-next = { $done ->
    [yes] El plan está completo.
   *[no] Detente donde dice el plan.
}
no-speed-no-strike = No se midió ni la velocidad de palo ni el punto de impacto.
no-strike = No se midió el punto de impacto en la cara.
no-speed = No se midió la velocidad de palo.
club-or-swing-unknown = Sin { $one-of-them ->
    [yes] ese dato
   *[no] esos datos
} nadie puede decir si la diferencia la hizo el palo o el swing.
no-strike-next = Marca la cara para ver dónde impactó la bola.
no-speed-next = Pide la velocidad de palo.
no-speed-no-strike-next = Pide la velocidad de palo y marca la cara para ver dónde impactó la bola.
averages-only = Aquí solo hay promedios.
averages-only-why = En un promedio no se ven los golpes en frío, los apartados ni el orden.
averages-only-next = Pide todos los golpes.
few-decide-next-go-on = No apartes ninguno{ $in-doubt ->
    [yes] , salvo que sea un error al anotarlo,
   *[no] {""}
} y sigue: { $rounds ->
    [one] queda { NUMBER($rounds) } ciclo
   *[other] quedan { NUMBER($rounds) } ciclos
} del plan.

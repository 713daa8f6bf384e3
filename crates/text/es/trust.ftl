in-turn = Los palos se golpearon por turnos, en { $rounds } rondas.
in-turn-why = El calentamiento, el cansancio y un cambio de viento afectan a todos los palos por igual.
in-turn-next = Sigue golpeándolos por turnos.
blocked = Un palo se golpeó detrás del otro.
blocked-why = Todo lo que cambió entre los dos, calentar, cansarse, un consejo desde fuera, cuenta como si fuera el palo.
blocked-next = La próxima vez golpéalos por turnos: tres con uno, tres con el otro, una y otra vez.
order-unknown = No se conoce el orden en que se dieron los golpes.
order-unknown-why = Un palo pudo llevarse los golpes en frío y el otro los golpes en caliente.
order-unknown-next = Si conoces el orden, dilo donde se ven tus golpes.
long-turns = Los palos solo cambiaron de mano cada { $shots } golpes más o menos.
long-turns-why = Dentro de un turno así, calentar y cansarse cuentan como si fuera el palo, de modo que solo las rondas enteras
    sirven de prueba: la respuesta es mucho menos segura de lo que sugiere el número de golpes.
long-turns-next = Cambia de palo cada tres golpes.
cold-start = { $club } se golpeó primero, con { $shots } antes de que entrara el otro palo.
cold-start-why = Solo el calentamiento suele dar al palo que va después unos { $size } de { $measure }.
first-shots-are-rarely-the-best = Los primeros golpes de una sesión rara vez son los mejores.
cold-start-next = Da unos diez golpes para calentar antes de que cuente ninguno.
unequal = { $more } tiene { $shots }, { $fewer } solo { $count }.
unequal-why = La respuesta solo es tan segura como permite el número menor, y ahí pesa más un golpe malo.
unequal-next = Da a cada palo el mismo número de golpes.
drift = A lo largo de la sesión { $measure } { $up ->
    [yes] subió
   *[no] bajó
} unos { $size }, con cualquiera de los palos.
drift-why = Contando con el azar, { $span }. Los palos golpeados por turnos lo comparten; uno detrás de otro, no.
drift-next = Calienta antes del primer golpe que cuenta y descansa entre tandas.
numbers-missing = { $missing ->
    [one] Falta 1 golpe
   *[other] Faltan { $missing } golpes
}: la numeración salta, por primera vez en el número { $first }.
numbers-missing-why = Si alguien quitó los malos, los promedios son de golpes escogidos.
numbers-missing-next = Pide todos los golpes que se dieron.
average-disagrees = El promedio de { $measure } escrito para { $club } no es el de sus golpes.
printed = Está escrito { $printed }; los { $shots } de aquí promedian { $average }.
printed-over = Está escrito { $printed } en { $claimed }; los { $shots } de aquí promedian { $average }.
average-disagrees-next = Pregunta de qué golpes es el promedio escrito.
of-club = { $count } de { $club }
left-out = Se apartaron golpes: { $counts }.
left-out-why = Apartar los dos peores de un solo palo puede hacer que dos palos iguales parezcan distintos en 1 de cada 10
    sesiones. En la respuesta siguen contando.
left-out-next = Quédate con todos los golpes. Un golpe fallado también es del palo.
one-far-shot = 1 golpe con { $club } queda lejos de los demás.
one-far-shot-why = Cuenta. Uno solo puede mover mucho un promedio.
far-shots = { NUMBER($shots) } golpes quedan lejos de los demás, la mayoría con { $club }.
far-shots-why = Cuentan. Si un palo da más golpes así es parte de la pregunta.
far-shots-next = Mira también el golpe típico en los números.
few-decide = Quitar { $shots ->
    [one] un solo golpe
   *[other] { $shots } golpes bien escogidos
} cambiaría la respuesta.
few-decide-why = Una respuesta que unos pocos golpes pueden volver del revés se apoya en poco.
few-decide-next = No apartes ninguno y da más golpes antes de decidir.
not-fixed = Nadie dijo cuántos golpes estaban previstos.
not-fixed-why = Dos palos iguales que se miran hasta que uno parece mejor saldrán distintos en unas 2 de cada 10 sesiones. Por eso se
    le exige más a la respuesta.
not-fixed-next = Fija el número antes del primer golpe.
planned-looks = Se golpearon { $round } de las { $planned } rondas previstas.
planned-looks-why = Mirar por el camino estaba previsto, y la respuesta lo tiene en cuenta.
planned-looks-next = Para donde dice el plan.
no-speed-no-strike = No se midió ni la velocidad de palo ni el punto de impacto.
no-strike = No se midió el punto de impacto en la cara.
no-speed = No se midió la velocidad de palo.
club-or-swing-unknown = Sin { $one-of-them ->
    [yes] ese dato
   *[no] esos datos
} nadie puede decir si la diferencia la hizo el palo o el swing.
no-speed-no-strike-next = Pide la velocidad de palo y marca la cara para ver dónde impactó la bola.
averages-only = Aquí solo hay promedios.
averages-only-why = En un promedio no se ven los golpes en frío, los apartados ni el orden.
averages-only-next = Pide todos los golpes.

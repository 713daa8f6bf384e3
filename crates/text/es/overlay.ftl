left-out = { $shots ->
    [one] Se apartó 1 golpe.
   *[other] Se apartaron { $shots } golpes.
}
answer-hangs-on-few = Con todos los golpes: { $with-all }. Sin los apartados: { $without }. Una respuesta que depende de unos
    pocos golpes todavía no es una respuesta.
counts-them-too = La respuesta cuenta todos los golpes, también estos; sin ellos sería la misma.
short-different = una diferencia
short-same = iguales para lo que buscas
short-cannot-tell = no se sabe
short-cannot-answer = no hay respuesta posible
clubs-and-time-mixed-up = El palo y el momento están mezclados.
order-unknown = Nadie sabe en qué orden se dieron estos golpes.
one-after-the-other = { $baseline } y { $candidate } se golpearon uno detrás de otro, no por turnos.
order-could-move-unseen = El calentamiento o el cansancio podrían mover { $measure } unos { $size }; estos golpes no lo
    distinguen del palo.
order-could-move = El calentamiento o el cansancio podrían mover { $measure } unos { $size }.
plain-averages-differ = Comparando solo los promedios se habría dicho que hay diferencia.
small-drift-explains = Bastaría una deriva de { $size } de un palo al otro para explicarlo.
drift-would-explain = Haría falta una deriva de { $size } de un palo al otro para explicarlo.
only-averages = Solo hay promedios.
no-single-shots = Aquí no hay golpes sueltos: no se puede comprobar su orden, los malos ni la dispersión.
assumed-to-scatter = No hay desviación, así que se supone que los golpes se dispersan { $size }, lo más alto de lo habitual.
looked-early = Se miró antes de tiempo: ronda { $round } de { $planned }.
early-is-stricter = Una mirada temprana debe convencer más que la última, así que se le exige más a la respuesta. Una
    ventaja vista pronto suele encoger.
not-fixed = El número de golpes no se fijó antes.
open-is-stricter = Parar cuando pinta bien hace que el azar parezca prueba, así que la respuesta debe sostenerse en 99 de cada
    100 casos y no en 95. Si el número se fijó antes del primer golpe, dilo en lo que cuenta.
clubs-held-against = { $clubs ->
    [2] Dos
    [3] Tres
    [4] Cuatro
    [5] Cinco
    [6] Seis
    [7] Siete
   *[other] { $clubs }
} palos se compararon con { $baseline }.
best-of-several = El mejor de varios parece bueno solo por azar, así que cada uno debe convencer más que si fuera el único.
best-by-luck = El mejor de otros tantos palos iguales llevaría unos { $size } de ventaja sin ser mejor.
honest-lead = { $club } muestra una diferencia de { $shown }; quitando ese azar, cuenta con unos { $honest }.
margin-changed = Lo que cuenta se cambió después de ver la respuesta.
margin-first-and-now = Primero era { $first } y ahora es { $now }. Una respuesta vale más con el número que se dijo antes.

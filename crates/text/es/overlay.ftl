part-of-club = { $shots } de los { $all } golpes con { $club }
both-parts = { $one } y { $other }
left-out = Golpes apartados: { $shots }.
result = { $decision }, { $figures }
figures = { $gap } (de { $low } a { $high }, intervalo del { $level })
slips = { NUMBER($slips) } { $slips ->
    [one] valor imposible no cuenta
   *[other] valores imposibles no cuentan
} en ninguna.
answer-hangs-on-few = Una respuesta que depende de unos pocos golpes todavía no es una respuesta.
every-shot = Todos los golpes
without-some = Sin { $left }
counts-them-too = La respuesta cuenta todos los golpes, también lo apartado. De las dos formas: { $decision }. Con todos { $with-all }, sin lo
    apartado { $without }.
counts-them-all-the-same = La respuesta cuenta todos los golpes, también lo apartado; sin ello sería la misma.
short-different = una diferencia
short-same = iguales para lo que { $theirs ->
    [yes] busca quien lo envió
   *[no] buscas
}
short-cannot-tell = no se sabe
short-cannot-answer = no hay respuesta posible
clubs-and-time-mixed-up = El palo y el momento están mezclados.
order-not-known = No se sabe si los palos se alternaron.
order-unknown = Un palo pudo llevarse los golpes en frío y el otro los golpes en caliente.
not-compared-in-turn = { $measure }: no se pudo comparar ciclo a ciclo.
why-not-compared = Los palos se alternaron, pero en muy pocos ciclos se midió { $measure } con los dos.
one-after-the-other = { $baseline } y { $candidate } se usaron uno después del otro, sin alternarlos.
order-could-move-unseen = El calentamiento o el cansancio podrían suponer alrededor de { $size } de diferencia en { $measure }; estos golpes no lo
    distinguen del palo.
order-could-move-unknown = No se sabe cuánto influyen el calentamiento y el cansancio en { $measure }, así que no se deja margen para ellos.
order-guessed = No se sabe cuánto influyen el calentamiento y el cansancio en { $measure }. A ojo, se dejan para ellos tres cuartos de lo que se dispersan sus
    golpes: { $size }.
order-could-move = El calentamiento o el cansancio podrían suponer alrededor de { $size } de diferencia en { $measure }.
plain-averages-differ = Con el 95 % habitual, comparar solo los promedios habría dicho que hay diferencia.
small-drift-explains = { $usual ->
    [yes] Bastaría
   *[no] Con el nivel que se usa aquí, bastaría
} una deriva de { $size } de un palo a otro para que el azar pudiera explicar el resto.
drift-would-explain = { $usual ->
    [yes] Solo
   *[no] Con el nivel que se usa aquí, solo
} con una deriva de { $size } o más de un palo a otro podría el azar explicar el resto.
# The shots of each club drifted by as much as that.
drift-was-found = { $usual ->
    [yes] Con
   *[no] Con el nivel que se usa aquí, con
} una deriva de { $size } o más de un palo a otro, el azar podría explicar el resto, y se encontró una así: llevada de uno
    a otro, los golpes de cada palo derivaron cerca de { $found }.
only-averages = { $assumed ->
    [yes] Solo hay promedios, sin desviación: cuánto se dispersan los golpes se supone.
   *[no] Solo hay promedios.
}
no-single-shots = Aquí no hay golpes sueltos: no se pueden comprobar ni el orden, ni los malos, ni la dispersión.
assumed-to-scatter = No hay desviación estándar, así que se supone que los golpes se dispersan { $size }, lo más alto de lo habitual (regla práctica entre golfistas, sin ningún estudio detrás).
looked-early = Consulta intermedia: ciclo { $round } de { $planned }.
early-is-stricter = Una consulta intermedia debe convencer más que la última, así que se le exige más a la respuesta.{ $differs ->
    [yes] {" "}Una ventaja vista pronto suele encoger.
   *[no] {""}
}
not-fixed = El número de golpes no se fijó de antemano, o se miraron los datos a mitad de la prueba.
not-of-the-plan = { $rounds ->
    [0] Ningún ciclo tiene
    [one] 1 ciclo tiene
   *[other] { $rounds } ciclos tienen
} los dos palos; se planearon { $planned }.
fixed-not-said = { $theirs ->
    [yes] Quien lo envió no dijo
   *[no] No has dicho
} si el número de golpes se fijó antes del primero.
not-said-is-stricter = Parar cuando pinta bien hace que el azar parezca prueba, así que, hasta que { $theirs ->
    [yes] quien lo envió diga
   *[no] digas
} que se fijó, { $held ->
    [together] todos los palos juntos tienen 1 posibilidad de error entre 100 en lugar de 5
    [alike] decide un intervalo del 98 % en lugar de uno del 90 %
   *[alone] decide un intervalo del 99 % en lugar de uno del 95 %
}.
open-is-stricter = Parar cuando pinta bien hace que el azar parezca prueba, así que { $held ->
    [together] todos los palos juntos tienen 1 posibilidad de error entre 100 en lugar de 5
    [alike] decide un intervalo del 98 % en lugar de uno del 90 %
   *[alone] decide un intervalo del 99 % en lugar de uno del 95 %
}.
clubs-held-against = { $clubs ->
    [2] Dos
    [3] Tres
    [4] Cuatro
    [5] Cinco
    [6] Seis
    [7] Siete
   *[other] { $clubs }
} palos se compararon con { $baseline }.
best-of-several = El mejor de varios parece bueno solo por azar, así que, para llamarse diferencia, una ventaja debe convencer más que con un palo solo.
best-by-luck = El mejor de otros tantos palos iguales llevaría alrededor de { $size } de ventaja sin ser mejor.
honest-lead = { $club } muestra una diferencia de { $shown }; { $more ->
    [yes] lo razonable es esperar que queden alrededor de { $honest }
   *[no] no es más de lo que da ese azar
}.
margin-changed = La diferencia que importa se cambió{ $answered ->
    [yes] {" "}después de ver la respuesta
   *[no] {""}
}.
margin-first-and-now = Antes: { $first }; ahora: { $now }. Una respuesta vale más con esa diferencia fijada de antemano.
one-of-several = Entre varios palos siempre destaca alguno solo por azar, así que, para llamarse diferencia, lo que los separa debe convencer más que con un palo solo.
lead-shown = { $club } muestra una diferencia de { $shown }{ $more ->
    [yes] , más que eso
   *[no] , no más que ese azar
}.

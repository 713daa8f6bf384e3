needed = De eso va la prueba: sin ello no hay respuesta.
why = { $measure ->
    [club_speed] Distingue el palo del swing: un palo que ese día va más rápido llega más lejos, lleve la varilla que lleve.
    [ball_speed] Muestra si una diferencia de carry viene de la velocidad o del vuelo.
    [strike_offset] Punta o talón quitan velocidad y curvan la bola; sin esto un impacto mejor parece un palo mejor.
    [strike_height] Alto o bajo en la cara cambia la salida y el spin, más que la mayoría de las varillas según una regla práctica entre golfistas, sin ningún estudio detrás.
    [launch_angle] Con el spin dice qué carry daba de sí esta velocidad de bola.
    [spin_rate] Con la salida dice qué carry daba de sí esta velocidad de bola.
   *[offline] Más lejos no es mejor si también va más torcida.
}
warm-up = Calienta hasta que tu swing sea el de siempre; las primeras bolas no cuentan.
rest = Descansa entre tandas. Un swing cansado pone a prueba tus piernas, no los palos.
stop = Para en cuanto algo duela. Una respuesta puede esperar, una espalda no.
room = Usa un puesto con sitio para el palo más largo y sin nadie al alcance; avisa a los demás antes de cada swing.
alike = Deja todo lo demás igual: la misma bola, la misma altura de tee, alfombra o hierba pero no las dos, y la misma puntería con todos los palos.
of-each-club = Anota de cada palo el loft, la longitud, el lie y el grip. Si se diferencian en más de lo que quieres probar, la respuesta habla de todo
    junto.
outdoors = Al aire libre: nadie delante mientras haces el swing; vete al primer trueno; con calor bebe, busca la sombra y acorta la sesión.
split-over-days = { NUMBER($balls) } bolas en unos { $minutes } minutos son demasiado para un día: repártelas en { $days } días, cada uno de ciclos enteros y con su
    calentamiento. Más de 100 bolas o 90 minutos cansan a la mayoría: regla práctica entre golfistas, sin ningún estudio detrás.

# Lo que aportan muchos ajustes.
# Un conjunto que no dice nada.
too-few = { $sessions ->
    [0] No se leyó ninguna sesión.
    [one] Se leyó una sesión, y { $pooled ->
        [0] no se puede juntar
       *[other] una sola no dice nada de otras
    }.
   *[other] Se leyeron { NUMBER($sessions) } sesiones, y { $pooled ->
        [0] ninguna se puede juntar
       *[other] solo una se puede juntar
    }; hacen falta dos.
}
# Lo que aporta un ajuste aquí.
brings = En promedio, un ajuste aquí aporta entre { $low } y { $high } ({ $measure }, intervalo del { $level }, { NUMBER($pooled) } sesiones).
spread = Los jugadores difieren: dos de cada tres ganancias verdaderas quedan a { $size } de esa media, más o menos (algo entre { $low } y { $high }).
spread-not-shown = Cuánto difieren los jugadores no se puede saber por estas sesiones: lo explican sus propios errores, y dos de cada tres ganancias
    verdaderas pueden quedar hasta a { $high } de esa media.
next = El próximo ajuste como estos aporta de verdad entre { $low } y { $high }, en 95 de cada 100 casos.
enough = Una ganancia de { $margin } o más: { $chance }.
worse = Una pérdida, por pequeña que sea: { $chance }.
room = De cada uno de estos márgenes, { $size } a cada lado es espacio para el calentamiento, que no se compensa donde la mayoría de las sesiones empieza con el
    mismo palo.
# Cuántas ventajas fueron suerte.
found = { $different ->
    [0] De { NUMBER($pooled) } sesiones, ninguna se llama distinta por sí sola.
    [one] De { NUMBER($pooled) } sesiones, una se llama distinta por sí sola ({ NUMBER($better) } mejor, { NUMBER($worse) } peor).
   *[other] De { NUMBER($pooled) } sesiones, { NUMBER($different) } se llaman distintas por sí solas ({ NUMBER($better) } mejor, { NUMBER($worse) } peor).
}
by-luck = Si ningún palo fuera distinto de otro, la sola suerte haría que fueran unas { $luck }.
listed = { $listed ->
    [0] Ninguna destaca tanto como para una lista en la que no más de { $rate } de cada 100 sean suerte.
    [one] Una está en una lista en la que no más de { $rate } de cada 100 son suerte, en promedio.
   *[other] { NUMBER($listed) } están en una lista en la que no más de { $rate } de cada 100 son suerte, en promedio.
}
# Qué fue de lo prometido.
promised = { $claims ->
    [one] Una sesión vino con una promesa: { $promised }. Sus golpes muestran { $found }.
   *[other] { NUMBER($claims) } sesiones vinieron con una promesa, en promedio { $promised }. Sus golpes muestran en promedio { $found }.
}
found-again = De lo prometido se volvió a encontrar de { $low } a { $high } de cada 100 (intervalo del { $level }).
# Cómo llegaron las sesiones.
sent-not-said = Nadie dijo si estas son todas las sesiones que hubo. Si solo se enviaron las buenas, todo esto es demasiado bueno.
sent-picked = Estas sesiones se eligieron por cómo salieron, así que todo esto es demasiado bueno: habla de esta elección, no de los ajustes.
copies = { $copies ->
    [one] Se encontró una copia por lo que contiene, y no se contó otra vez.
   *[other] Se encontraron { NUMBER($copies) } copias por lo que contienen, y no se contaron otra vez.
}
# Lo que se responde solo y no se junta, y qué lo cambiaría.
not-pooled = Sin juntar, { NUMBER($sessions) }: { $why }
one-club = solo se pegó con un palo. Envía también los golpes del palo propio del jugador.
several-clubs = se pegó con varios palos, y nadie dijo cuál es el propio del jugador y cuál el del ajuste. Dilo en una tabla de nombres.
one-after-the-other = se pegó con un palo después del otro, de modo que el calentamiento parece una ganancia. Altérnalos.
order-not-known = nadie sabe en qué orden se dieron. Deja los golpes en su orden, o numera los ciclos.
too-few-rounds = muy pocos ciclos tienen ambos palos. Haz al menos dos ciclos con ambos.
averages-only = solo medias, de las que nadie sabe el orden. Envía los golpes.
counts-missing = medias sin número de golpes. Envía los golpes.
only-the-best = solo los mejores golpes, o elegidos. Envíalos todos.
not-measured = esto no se midió con ambos palos.
too-few-shots = muy pocos golpes con uno de los palos.
no-scatter = los golpes todos iguales probablemente se redondearon o copiaron.
value-in-doubt = un valor no puede ser. Míralo, y envíalo otra vez cuando esté bien.
# Lo que no se puede preguntar.
no-scatter-asked = La dispersión de los golpes no se puede juntar aquí de muchas sesiones.
no-nearer-zero = Qué palo está más cerca de cero no se puede juntar de muchas sesiones: las diferencias a ambos lados no se suman.
ask-average = Elige una medida de la que más o menos sea mejor.
not-a-margin = El margen no es un tamaño.
not-a-margin-remedy = Da un número de cero o más.
not-a-rate = La parte de una lista que puede ser suerte está entre 0 y 1.
not-a-rate-remedy = Da un número como 0.1.
piles-differ = A estos conjuntos se les preguntaron cosas distintas.
piles-differ-remedy = Pregunta a todos la misma medida, el mismo margen y la misma meta.

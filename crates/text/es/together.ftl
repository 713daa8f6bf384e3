how-many-sessions = Para juntar sesiones hacen falta al menos dos, y como mucho 50.
how-many-sessions-remedy = Añade una sesión de otro día con los mismos palos.
no-scatter = Aquí la dispersión no se puede juntar de varios días.
no-scatter-remedy = Elige un objetivo sobre promedios.
too-few-sessions = { $days ->
    [0] Ninguna de estas sesiones sirve para los dos palos
    [one] Solo 1 de estas sesiones sirve para los dos palos
   *[other] Solo { NUMBER($days) } de estas sesiones sirven para los dos palos
}; hacen falta dos.
same-names = Cada una necesita golpes con los dos palos, con los mismos nombres, y que no sean todos iguales.
different = En { NUMBER($days) } días { $club } { $verb }: entre { $low } y { $high } (intervalo del { $level }).
same = En { NUMBER($days) } días son iguales para lo que buscas: entre { $low } y { $high } (intervalo del { $level }).
cannot-tell = Con { NUMBER($days) } días aún no se sabe: entre { $low } y { $high } (intervalo del { $level }).
next-to-nothing = Con { NUMBER($days) } días aún no se sabe: no dicen casi nada de la diferencia real.
days-agree = Los días no difieren más de lo que los separaría el azar.
assumed = Suponemos, porque unos pocos días no bastan para verlo, que de un día a otro la diferencia misma cambia cerca de { $size } o menos.
days-differ = Los días distan más de lo que explican sus golpes, dentro de lo supuesto.
days-far-apart = Los días distan más de lo supuesto, como si la diferencia misma cambiara cerca de { $size }, así que el intervalo es más ancho.
through-control = Los días con solo uno de los dos palos se lo comparó con { $control }, usado también esos días, así que tu propia forma de ese
    día queda fuera.
order-is-the-same = Cada vez empezaste con el mismo palo, así que calentar y cansarse empujan cada día hacia el mismo lado: { $size } a cada lado
    es margen para eso, por muchos días que haya. La próxima vez empieza con el otro, o alterna los dos.
order-changes = Del intervalo, { $size } a cada lado es margen para calentar y cansarse, pues los palos no se compararon por turnos todos los días.
order-guessed = No se sabe cuánto influyen el calentamiento y el cansancio en { $measure }: lo que se deja para ellos es a ojo, según cuánto se dispersan los golpes.
order-is-not-known = No se sabe, en todos los días, hacia qué lado empujan calentar y cansarse, así que { $size } a cada lado es margen para lo peor, por
    muchos días que haya.
one-more-day = Un día más como estos lo estrecharía de cerca de { $now } a cerca de { $then } a cada lado.
one-more-day-hardly = Un día más como estos apenas lo estrecharía.

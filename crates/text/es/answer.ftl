matters = { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}. Espera { $span } { $more }; empieza a importar a partir de { $margin }.
may-matter = { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}: { $span }. Aún no se sabe si llega a los { $margin } que importan.
too-small = Una diferencia real, pero demasiado pequeña para importar: { $does }, { $span }.
different = { $does }{ $mixed-up ->
    [yes] {" "}aquí, más de lo que suelen explicar el calentamiento o el cansancio
   *[no] {""}
}: { $span }.
too-small-in-short = { $does }, { $span }: demasiado poco para importar.
same = Para lo que buscas son iguales: { $size } de diferencia como mucho.
same-in-short = Iguales: { $size } de diferencia como mucho.
more-is-ruled-out = Menos de { $margin } no importaría, y estos golpes descartan más.
nearer-to-zero = De media { $club } es el más cercano a cero.
depends = Depende de los golpes apartados.
depends-in-short = Depende de los golpes apartados.
depends-how = Con todos los golpes la respuesta es una, sin los apartados es otra.
order-could-explain = El orden de los golpes podría explicar esta diferencia, así que estos golpes no lo deciden.
not-apart = Con estos golpes no se puede distinguir { $baseline } de { $candidate } en { $measure }.
not-apart-not-in-turn = { $baseline } y { $candidate } no se golpearon por turnos, y no se pueden distinguir en { $measure }.
not-apart-averages = Solo con promedios no se puede distinguir { $baseline } de { $candidate } en { $measure }.

choose-freely = Elige por tacto, aspecto o precio.
short-test = 5 rondas de 3 golpes con cada uno, por turnos, distinguirían el palo del orden.
hint-no-proof = Los palos no se golpearon por turnos: es un buen indicio, no una prueba.
holds-that-day = Vale para estos palos tal como están montados, con tu swing de ese día. Un segundo día diría si se mantiene.
holds-here = Vale para estos palos tal como están montados, con tu swing de ese día.
leave-nothing-out = Cuenta todos los golpes, o haz una prueba planeada sin apartar ninguno.

no-shots = Todavía no hay golpes que comparar.
no-shots-next = Pega los golpes de dos palos, o prueba un ejemplo.
one-club = Aquí hay un solo palo, y nada con que compararlo.
one-club-next = Añade golpes con un segundo palo, y di con qué palo fue cada golpe.
too-few-shots = Hay muy pocos golpes para comparar en { $measure }.
too-few-shots-next = Hacen falta al menos 3 golpes con cada palo para responder algo (5 para la dispersión), y 15 para que sirva.
counts-missing = Los promedios solos no responden: nadie dijo de cuántos golpes salen.
counts-missing-why = Un promedio de 3 golpes y uno de 30 parecen iguales y dicen cosas muy distintas.
counts-missing-next = Añade de cuántos golpes sale cada promedio.
only-the-best = Solo se ven los mejores golpes, y con ellos no se puede responder.
only-the-best-why = Los mejores golpes de cualquier palo se ven bien. Lo que cuenta es lo que hace el palo en cada swing.
only-the-best-next = Pide todos los golpes, o el promedio y el número de todos ellos.
spread-missing = Falta cuánto se dispersan los golpes en { $measure }, así que los promedios no se pueden comparar.
spread-missing-next = Añade la desviación estándar junto a cada promedio, o todos los golpes.
only-averages = Los promedios no muestran qué palo agrupa mejor.
only-averages-why = La dispersión está en los golpes; una desviación escrita junto a un promedio es demasiado insegura para decidir.
only-averages-next = Añade todos los golpes.
no-scatter = Todos los golpes tienen el mismo valor de { $measure }, así que no hay con qué medir el azar.
no-scatter-why = Los golpes reales se dispersan. Los números que no lo hacen se habrán redondeado o copiado.
no-scatter-next = Revisa la columna de { $measure }.
not-measured = { $measure }: no se anotó con los dos palos.
not-measured-next = Elige una medida que tengan los dos, o añade la columna que falta.

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
wide-open = { NUMBER($days) } días son pocos para decidirlo juntos: { $gap } en promedio, y dos no muestran qué diría un tercero.
too-few-days = { NUMBER($days) } días son pocos para decidirlo juntos: entre { $low } y { $high } (intervalo del { $level }).
cannot-tell = Con { NUMBER($days) } días aún no se sabe: entre { $low } y { $high } (intervalo del { $level }).
days-agree = Los días no difieren más de lo que los separaría el azar.
days-differ = De un día a otro la diferencia real se mueve alrededor de { $size }.
two-days-wide-open = La respuesta de cada día, abajo, vale solo para ese día, y dos días no muestran cuánto cambian los días; un tercer día es lo
    que más reduce la duda.
two-days = Dos días no muestran cuánto cambian los días, así que el intervalo deja mucho margen. Abajo está la respuesta de cada
    día; un tercer día es lo que más reduce la duda.
few-days = Pocos días dicen poco de cuánto cambian los días, así que el intervalo es ancho; otro día es lo que más reduce la duda.

### La tabla para escribir y el formulario de promedios.

entry-club = Palo { $number }
entry-round = Ciclo
heading-shots = Golpes
heading-of-which = Cuáles
heading-average = { $measure }, promedio
heading-deviation = { $measure }, desv. est.
entry-undo = Deshacer
entry-add-club = Añadir un palo
grid-name = Su nombre
grid-typed = Qué se escribe: { $columns }
grid-read = Leer { n-shots }
grid-whose = ¿De qué palo son?
grid-unit-question = { $name }: estos números solo tienen sentido en { $unit }.
grid-unit-take = Leerlos en { $unit }
grid-shot = Golpe
grid-cell = { $name }, golpe { $shot }
grid-next = Celda siguiente
grid-left = Izquierda
grid-right = Derecha
grid-minus = Menos
grid-use = Usar { $suggestion }
grid-wrong = { $name }: { $message }
grid-no-place = { $count ->
    [one] { $count } columna más no encontró sitio: añade arriba lo que contiene
   *[other] { $count } columnas más no encontraron sitio: añade arriba lo que contienen
  } y pega de nuevo.
grid-empty = Escribe primero un golpe.
grid-source = Golpes escritos
columns-entered = Qué se introduce
columns-unit = Unidad de { $name }
columns-leave = Quitar { $name }
columns-add = Añadir una medida
columns-add-short = Añadir …
averages-help = De un informe, una pantalla o una foto. Cuánto se dispersan los golpes puede quedar vacío: entonces se toma la mayor dispersión habitual.
averages-empty = Introduce primero un promedio.
averages-source = Promedios introducidos
averages-read = Leer estos promedios
averages-name = Nombre
averages-shots = Número de golpes
averages-shots-of = Número de golpes de { $name }
averages-meant = Promedios de
averages-meant-of = De qué golpes son los promedios de { $name }
averages-all = todos los golpes
averages-best = solo los mejores
averages-good = los buenos, sin los fallos
averages-measure-of = { $measure } de { $name }
averages-average = Promedio
averages-average-of = Promedio de { $measure } de { $name }
averages-scatter = ± dispersión (DE)
averages-scatter-of = Dispersión de { $measure } de { $name }
averages-no-count = Eso no es un número de golpes.

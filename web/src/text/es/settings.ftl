### Lo que dicen los datos bajo la respuesta, y lo leído, una vez abiertos.

n-more = { $count } más
read-title = Lo que se leyó
rename = Editar
rename-club = Editar el nombre de { $name }
rename-new = Nombre nuevo de { $name }
rename-joins = Si le das el nombre de otro palo, los dos se vuelven uno.
save = Guardar
whose-these = ¿Con qué palo se dieron estos golpes?
whose-in = ¿Con qué palo se dieron los golpes de { $name }?
whose-added = ¿Con qué palo se dieron los golpes que añadiste?
whose-other = U otro palo:
whose-name = Su nombre
whose-take = Ponerlo
were-hit = Orden de los palos
were-hit-how = En qué orden se usaron los palos
numbers-are-what = Qué son los números
columns-unused = { $count ->
    [one] { $count } sin usar
   *[other] { $count } sin usar
}
columns-help = Toca una para corregirla.
column-with-unit = { $name } ({ $unit })
column-n = columna { $number }
please-check = compruébalo
column-holds = Qué contiene «{ $heading }»
column-unit = Unidad de «{ $heading }»
no-unit = sin unidad
back-to-typing = Seguir escribiendo
change-averages = Cambiar los promedios
remove-shots = Quitar estos golpes
start-again = Empezar de nuevo
letters-as-digits = Leer estas letras como cifras
without-club = Las filas sin palo son de
without-club-label = El palo de las filas que no lo dicen
not-known = no se sabe
probably = Seguramente dice { $suggestion }.
line-n = Línea { $line }
text-title = El texto y cómo se leyó
text-of = { $name }: { $rows }
cells-apart = Las celdas se separan con
cells-apart-how = Cómo se separan las celdas
cells-comma = coma
cells-tab = tabulador
cells-semicolon = punto y coma
cells-pipe = barra vertical
cells-spaces = espacios
cells-lines = líneas
decimals-how = Cómo se escriben los decimales
decimals-point = 231.5 (punto)
decimals-comma = 231,5 (coma)
stand-as = Los golpes están como
stand-as-how = Cómo están los golpes en el texto
layout-rows = una fila por golpe
layout-blocks = bloques, cada uno bajo el nombre de su palo
layout-column_per_build = una columna por palo
layout-row_per_build = una fila por palo, con sus golpes
layout-side_by_side = los palos uno al lado del otro
layout-column_after_column = las columnas una debajo de otra
layout-averages = promedios, una fila por palo
layout-measures_down = promedios, las medidas hacia abajo
lines-no-shots = Líneas que no son golpes
line-is = Qué es la línea { $line }
line-shot = un golpe
line-summary = promedios y similares
line-headings = encabezados
line-units = unidades
line-build = el nombre de un palo
line-text = texto
line-problem = sin entender
rows-shots = { $count } { $count ->
    [one] fila con golpes
   *[other] filas con golpes
  }
rows-averages = { $count } { $count ->
    [one] fila de promedios
   *[other] filas de promedios
  }
rows-headings = { $count } { $count ->
    [one] encabezado o texto
   *[other] encabezados o textos
  }
text-too-long = El texto es demasiado largo para mostrarlo aquí.
text-again = Tu texto. Cámbialo y léelo de nuevo
read-again = Leerlo de nuevo
add-other = Añadir los golpes del otro palo
add-more = Añadir más golpes u otro palo
add-label = Golpes que se añaden
add-placeholder = Pégalos o escríbelos aquí
add-these = Añadir estos
add-file = Añadir un archivo
which-yours = ¿Qué palo es el tuyo?
which-theirs = ¿Qué palo es el de quien lo envió?
whichever = El que vaya delante
whichever-now = El que vaya delante ({ $name })
against = Compararlo con
against-label = El palo que se compara con el tuyo
compare = Comparar
compare-label = Qué se compara
better = ¿Qué sería mejor?
margin-label = La menor diferencia que te importaría
margin-less = { $step } { $unit } menos
margin-more = { $step } { $unit } más
margin-none = ninguna
margin-spread = Más o menos dispersión que con tu palo. Lo habitual aquí es criterio nuestro, sin estudio detrás.
margin-own = No hay nada habitual para esta columna. Déjala vacía o di qué importaría.
margin-usual = Lo habitual: { $margin } { $unit }. Cuenta lo que tú digas.
stopping-fixed = Sí, estaba fijado
stopping-not_fixed = No, no estaba fijado
stopping-unknown = No lo sé
stopping-planned = En ciclos planeados (una vez por todos los palos), con consultas por el camino
rounds-planned = Ciclos planeados
looked-after = Consulta tras el ciclo

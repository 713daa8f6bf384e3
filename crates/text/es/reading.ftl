empty-text = Todavía no hay texto.
empty-text-remedy = Pega los golpes, elige un archivo o escríbelos.
no-numbers = No se encontraron golpes: el texto no tiene ninguna columna de números.
no-numbers-remedy = Pega una tabla con una fila por golpe, por ejemplo: Palo, Carry, Desvío.
too-long = El texto es más largo de lo que se puede leer de una vez; el resto no se leyó.
too-long-remedy = Divídelo en partes de 100.000 filas, 3.000.000 de celdas y 10 MB como mucho.
not-a-number = Aquí se esperaba un número.
not-a-number-remedy = Corrige la celda o vacíala. Los demás valores de este golpe cuentan.
letter-for-digit = Hay una letra dentro de un número.
letter-for-digit-remedy = Acepta la sugerencia si es correcta. Mientras tanto el valor queda en blanco.
other-decimal-mark = Este número usa otra marca decimal que su columna.
other-decimal-mark-remedy = Corrige la celda, o elige la marca decimal de la columna.
other-unit = La unidad de este número no encaja con su columna.
other-unit-remedy = Corrige la celda, o di qué contiene la columna.
too-many-cells = Esta fila tiene más celdas que encabezados; las que sobran no se leyeron.
too-many-cells-remedy = Mira si hay una coma decimal en una lista separada por comas.
no-number-in-row = En esta fila no hay ningún número que se pueda leer.
no-number-in-row-remedy = Escribe sus números, o marca la línea como texto.
no-build = Este golpe no dice con qué palo fue.
no-build-remedy = Escribe en la fila el nombre del palo.
uneven-columns = Esta columna tiene otro número de valores que las demás y no se pueden emparejar; no se leyó.
uneven-columns-remedy = Pon un guion por cada valor que falte.
more = Se contaron más problemas como estos, pero no se enumeran.
more-remedy = Corrige los primeros y vuelve a leer.
more-than-1000-cells = más de 1000 celdas
values-not = { $values } valores, no { $usual }

more-notices = Hay { $notices } avisos más que no se enumeran.
measure-guessed = Nada dice qué se midió; se tomó como { $measure }.
own-measure = una medida propia
too-sparse = Las columnas casi sin valores se dejaron fuera para que la sesión no crezca demasiado.
build-column-guessed = Se entendió que «{ $heading }» es la columna que nombra los palos.
column-repeated = Otra columna ya contiene { $measure }; «{ $heading }» se guardó aparte.
column-unsure = «{ $heading }» podría ser { $measure }; se guardó con su propio encabezado.
marked-values = Valores marcados con una estrella: { $values }; se leyeron como los demás.
no-headings = No hay encabezados: di qué contiene cada columna.
heading-in-unit = { $heading } en { $unit }
unit-assumed = No se indica la unidad, así que se tomó la habitual: { $columns }.
unit-question = «{ $heading }» se leyó en { $unit }, pero sus valores solo tienen sentido en { $other }. ¿Cuál es?
implausible = { $measure }: { $value } { $unit } queda fuera de lo habitual, de { $low } a { $high } { $unit }; queda aparte hasta que digas que es correcto.
build-assumed = No se nombra ningún palo, así que se tomó «{ $build }».
build-carried-down = Las filas sin nombre de palo son del último nombre que aparece encima.
letters-read = Celdas en que se leyeron letras como cifras, como pediste: { $cells }.
quotes-ignored = Hay unas comillas que no se cierran; las comillas se leyeron como letras normales.
before-break = antes de «{ $label }»
after-break = después de «{ $label }»
something-changed = «{ $label }» está entre los golpes. ¿Cambió algo ahí? En esa línea se separan el antes y el después.
second-mixed-up = Ningún palo se usó con dos valores de «{ $change }», así que no se puede separar lo que hace el palo de lo que hace ese cambio.

rounds-inferred = Los palos se alternaron; por el orden de las filas son { $rounds } ciclos.
ordered-by-time = Los golpes se ordenaron por su hora.
ordered-by-number = Los golpes se ordenaron por su número.
numbers-repeated = Algunos números de golpe están dos veces.
numbers-from-to = { $first } a { $last }
numbers-missing = { $missing ->
    [one] Falta { $count } número
   *[other] Faltan { $count } números
} de golpe{ $of-a-build ->
    [yes] {" "}de { $build }
   *[no] {""}
}: { $numbers }{ $others ->
    [yes] {" "}y otros
   *[no] {""}
}.

perhaps-averages = Cada palo tiene una sola fila, leída como un golpe. Si las filas son promedios, dilo.
count-missing = Falta el número de golpes de { $builds }: sin él no puede haber veredicto.
chosen-shots = Los promedios de { $builds } son de golpes escogidos: de ellos no puede salir un veredicto.
deviation-missing = No se da la desviación de { $measures }: se tomará la mayor habitual.
deviation-of-some-missing = Falta la desviación de { $measure } de { $builds }: se tomará la mayor habitual. Puedes poner la del otro palo como suposición.
too-many-summaries = Hay más filas de resumen de las que caben; las siguientes no se compararon.
summaries-agree = Las filas de resumen coinciden con los golpes de encima (cifras revisadas: { $figures }).
count-disagrees = El archivo dice { $printed } golpes { $all ->
    [yes] en total
   *[no] con { $build }
}; contiene { $found }.
figure = { $figure ->
    [average] El promedio
    [median] La mediana
    [deviation] La desviación estándar
    [smallest] El valor menor
    [largest] El valor mayor
   *[range] El rango
}{ $of-a-measure ->
    [yes] {" "}de { $measure }
   *[no] {""}
} { $all ->
    [yes] de todos los golpes
   *[no] con { $build }
}
figure-disagrees = { $figure } es { $printed } en el archivo y { $found } según sus { $rows } filas, { $apart } { $more ->
    [yes] más
   *[no] menos
}: corresponde a golpes que no están en el archivo.

first-build = Palo 1
value = Valor
column = Columna { $number }

not-text = Este archivo no contiene texto.
not-text-remedy = Tu teléfono puede leer una foto: selecciona su texto, cópialo y pégalo aquí.

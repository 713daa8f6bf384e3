### Lo que dice la página antes de la primera respuesta y con ella.

## La página

page-title = Straight Answer: ¿de verdad se diferencian estos dos palos?
lead = ¿Rinden distinto dos palos o fue suerte?
promise = Nada sale de este dispositivo.
start-back = Todas las entradas
your-shots = Tus golpes
their-shots = Los golpes de este enlace
opening = Abriendo…
replacing = Se está abriendo un enlace. Hasta entonces están aquí los golpes de antes.
loading = Cargando…
working = Calculando…
fair-title = Una prueba justa
fair-line = Planea, alterna los palos, anota cada golpe
claim-title = Comprueba una promesa o junta varios días
claim-line = ¿Se cumple lo que prometió un fitting?
footer-average = El promedio de unos pocos golpes dice poco. Esta página cuenta cada golpe, y lo dice cuando no bastan para saberlo.
footer-paper = Cómo se encuentra la respuesta: cada golpe cuenta, los palos alternados se comparan ciclo a ciclo, y los intervalos son más anchos que los de un manual donde lo pide el orden de los golpes o la forma de parar. La página de métodos de Straight Answer tiene las fórmulas, sus fuentes y sus tasas de error medidas.
footer-kept = Tus tiros se quedan en esta página y desaparecen al cerrarla; solo lo que guardas y las pruebas que registras quedan en este dispositivo, hasta que las borres.
show-meters = Metros
show-kilometers-an-hour = km/h
show-miles-an-hour = mph
show-yards = Yardas
methods-page = ./methods.es.html
footer-methods = Cómo se encuentra la respuesta: métodos, fuentes, tasas de error (se abre aparte)
version = Versión { $version }.
version-offline = Versión { $version }. Funciona sin conexión.
version-new = Versión { $version }. Hay una versión nueva; se usará la próxima vez que abras la página.
not-loaded = No se pudo cargar esta parte. Comprueba la conexión y recarga la página.
not-loaded-door = No se pudo cargar esta parte. Comprueba la conexión, recarga la página y ábrela de nuevo.
not-loaded-entry = No se pudo cargar esta parte. Comprueba la conexión, vuelve atrás y ábrela de nuevo.
stopped = El cálculo se detuvo en este dispositivo.
stopped-remedy = Recarga la página e inténtalo de nuevo. ({ $why })

## Cantidades

n-shots = { $count } { $count ->
    [one] golpe
   *[other] golpes
  }
n-characters = { $count } { $count ->
    [one] carácter
   *[other] caracteres
  }
n-clubs = { $count } { $count ->
    [one] palo
   *[other] palos
  }
n-rounds = { $count } { $count ->
    [one] ciclo
   *[other] ciclos
  }
n-rows = { $count } { $count ->
    [one] fila
   *[other] filas
  }

## Objetivos, lados, columnas y órdenes

goal-longer = Más largo
goal-faster = Más rápido
goal-higher = Más alto
goal-shorter = Más corto
goal-slower = Más lento
goal-lower = Más bajo
goal-straighter = Más recto
goal-nearer-zero = Más cerca de cero
goal-tighter = Menos dispersión
goal-different = Cualquier diferencia
side-tighter = menos disperso
side-wider = más disperso
side-shorter = más corto
side-longer = más largo
side-slower = más lento
side-faster = más rápido
side-left = más a la izquierda
side-right = más a la derecha
side-lower = más bajo
side-higher = más alto
role-build = Palo
role-round = Ciclo
role-number = Número de golpe
role-time = Hora
role-count = Número de golpes
role-left_out = Apartado
role-second = Qué cambió
role-ignored = No se usa
role-deviation = { $measure }, dispersión
role-low = { $measure }, mínimo
role-high = { $measure }, máximo
role-other = { $measure }, { $kind }
order-interleaved = Alternados
order-blocked = Un palo después del otro
order-unknown = No se sabe
unit-degrees = grados
no-limit = sin límite
ratio-same = igual
ratio-less = { $percent } % menos
ratio-more = { $percent } % más
share-below = menos del 1 %
share-above = más del 99 %
from-to = { $from } a { $to }

## Dar los golpes

give-question = Pega o escribe tus golpes
give-help = Una fila por golpe y una columna que diga qué palo. Vale una tabla copiada, también con encabezados.
give-read = Leer estos golpes
paste = Pegar
choose-file = Elegir un archivo
choose-file-or-photo = Elegir un archivo o una foto
photo-title = Tu foto
try-title = ¿No tienes golpes a mano? Prueba una sesión inventada
type-shots = Escribir los golpes uno a uno
enter-averages = ¿Solo promedios? Introdúcelos
example-fair = Prueba justa, drivers iguales
example-fair-truth = Alternados. En realidad los dos son iguales.
example-twelve = Prueba justa, uno es más largo
example-twelve-truth = Alternados. En realidad uno tiene { $unit ->
    [m] 11 metros
   *[yd] 12 yardas
} más de carry.
example-floor = En la tienda
example-floor-truth = Cinco golpes en frío con el palo viejo y luego treinta con el nuevo. En realidad son iguales.
example-name = Ejemplo inventado: { $title }
sample-mine = Mío
sample-new = Nuevo
sample-columns = palo,carry
text-pasted = Tu texto
text-added = Texto añadido
text-link = El enlace
text-logged = Tu prueba, tal como la anotaste
reading = Leyendo { $names }, { n-characters }…
stop = Parar
says-reading = Leyendo tus golpes.
says-answer = La respuesta: { $headline }
see-answer = Ver la respuesta

## Lo que no se pudo tomar

empty-text = Aquí no hay nada todavía.
empty-text-remedy = Pega los golpes de dos palos, elige un archivo o prueba un ejemplo de abajo.
clipboard-refused = El navegador no dejó leer lo que copiaste.
clipboard-refused-remedy = Mantén el dedo sobre el campo y elige Pegar.
example-not-loaded = No se pudo cargar este ejemplo.
example-not-loaded-remedy = Parece que no tienes conexión. Tus propios golpes sí se pueden leer: pégalos aquí.
file-too-large = Este archivo ocupa más de 50 MB.
file-too-large-remedy = Deja solo las columnas y filas de esta sesión, o pégalas aquí.
workbooks-not-loaded = No se pudo cargar lo que abre los libros de cálculo.
workbooks-not-loaded-remedy = Parece que no tienes conexión. Copia las filas con sus encabezados y pégalas aquí.
workbook-not-opened = Este libro de cálculo no se pudo abrir aquí.
workbook-not-opened-remedy = Comprueba la conexión e inténtalo de nuevo. O ábrelo, copia las filas con sus encabezados y pégalas aquí.
nothing-added = No se añadió nada. { $why }
no-shots = No se encontraron golpes.

## Hojas de un libro de cálculo

sheets-which = ¿Qué hojas de { $name } contienen los golpes?
sheets-each = ¿Una hoja por palo? Elígelas todas: el nombre de cada hoja vale como nombre de su palo.
sheets-none = Elige primero una hoja.
sheets-read = Leer lo elegido
cancel = Cancelar
back = Atrás
entry-grid = Escribe los golpes
entry-averages = Introduce los promedios

## Lo leído

averages-only = solo promedios
averages-of = promedios de { n-shots }
numbers-are = Los números son
columns = Columnas: { $read }
columns-to-check = { $count } { $count ->
    [one] columna
   *[other] columnas
  } por comprobar
read-in-short = { $clubs }, { $shots }
club-unnamed = Palo { $number }
done-opened = abrir otros golpes
done-added = añadir golpes
done-typed = cambiar lo escrito
done-removed = quitar un texto
done-renamed = cambiar el nombre de { $name }
done-left-out = apartar un golpe o recuperarlo
done-started = empezar de nuevo
undo-done = Deshacer: { $done }
redo-done = Rehacer: { $done }
done-corrected = corregir cómo se leyó

## Lo que no se entendió

not-understood = { n-rows } sin entender
look-at-this = Mira esto, por favor

## El texto

decimals = Los decimales se escriben

## Un palo sin nombre

club-letter = Palo { $letter }

## Añadir

## Lo que cuenta

counts-title = Lo que cuenta
fact-margin = { $margin } ya importan
fact-no-margin = No se dijo qué importa
fact-order-interleaved = Palos alternados
fact-order-blocked = Un palo después del otro
fact-order-unknown = Orden desconocido
fact-stopping-fixed = Número de golpes fijado antes
fact-stopping-not_fixed = Número de golpes sin fijar
fact-stopping-unknown = ¿Número de golpes fijado? No se dijo
fact-planned = Planeado: { n-rounds }
fact-yours = El tuyo:
fact-theirs = El de quien lo envió:
stopping = ¿Estaba fijado el número de golpes antes del primero?

## La respuesta

answer-title = La respuesta
standing-matters = Diferentes, y eso importa
standing-may_matter = Diferentes; si importa sigue abierto
standing-too_small = Diferentes, demasiado poco para importar
standing-different = Diferentes
standing-same = Iguales
standing-cannot_tell = No se puede saber
standing-depends = Depende
standing-cannot_answer = Sin respuesta
answer-in-full = Completo, y qué hacer ahora
answer-against = frente a
caution = Antes de pegar más bolas: calienta, descansa entre tandas, para si algo te duele y mira que no haya nadie cerca ni delante.
asks-was-fixed = Estaba fijado
asks-was-not-fixed = No lo estaba
asks-in-turn = Se alternaron
asks-one-after-the-other = Uno después del otro
asks-shot-right = Es correcto
asks-shot-slip = Es un error: apartarlo
asks-shot-confirmed = Has dicho que es correcto.
reason-slip = error al escribir
other-measures = Las otras medidas
numbers-title = Los números detrás de esto
trust-title = ¿Se puede confiar en esta sesión?
picture-below = menos de { $margin }
picture-zone = demasiado poco para importar: { $margin }
picture-no-difference = sin diferencia
picture-caption = La marca es la diferencia en estos golpes. La barra es donde puede estar la diferencia real.
picture-caption-level = La marca es la diferencia en estos golpes. La barra es donde puede estar la diferencia real: el intervalo del { $level }.
picture-caption-ratio = La marca es cuánta más o menos dispersión hubo en estos golpes. La barra es donde puede estar la real.
picture-caption-ratio-level = La marca es cuánta más o menos dispersión hubo en estos golpes. La barra es donde puede estar la real: el intervalo del { $level }.
picture-way = { $name } (intervalo del { $level })
picture-level = intervalo del { $level }
picture-allowance = Sus extremos finos representan el calentamiento y el cansancio.
picture-allowance-laps = Sus extremos finos representan el comienzo en frío de los ciclos.
picture-alternative = { $what }. { $each }
picture-alternative-zone = { $what }. { $each } Demasiado poco para importar: { $margin }.
picture-scatter-of = Dispersión de { $measure }
picture-each-way = { $way }: { $candidate } frente a { $baseline }, { $value } en estos golpes; lo real puede estar entre { $low } y { $high } (intervalo del { $level }).
picture-each = { $candidate } frente a { $baseline }: { $value } en estos golpes; lo real puede estar entre { $low } y { $high } (intervalo del { $level }).

## Las partes cerradas bajo la respuesta

group-how-sure = ¿Hasta qué punto?
group-why = ¿Por qué?
group-what-if = ¿Y si…?
door-bet = ¿Por qué apostarías?
door-bet-line = Qué probable es, y por cuánto: una apuesta, no un veredicto
door-luck = Hasta dónde llega el azar
door-luck-line = Qué mostrarían dos palos idénticos en una sesión así
door-landing = Dónde caen
door-landing-line = Desde arriba: dispersión, calle, puntería
door-cause = ¿Palo o swing?
door-cause-line = De dónde salió la diferencia
door-potential = El carry posible con esta velocidad de bola
door-potential-line = La mejor salida y el mejor spin para cada uno
door-change = Antes y después
door-change-line = Una clase, otra bola, un descanso
change-said = Tus golpes dicen qué cambió: { $name }.
change-asked = ¿Influyó más el palo o ese cambio?
door-weather = El tiempo de ese día
door-weather-line = El carry como en aire estándar
door-share = Guardar y compartir
door-share-line = Un enlace, una imagen, un archivo, papel
door-keep = Ponerlo en el libro
door-keep-line = En este dispositivo, con nombre y fecha
consistency-title = ¿Encajan el carry y la salida?

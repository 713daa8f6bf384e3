# Lo que se pregunta antes de que haya respuesta, donde la lectura de un texto es dudosa; y lo que se puede decir.
many-clubs = Este texto nombra { $clubs } palos, más de los que tiene una sesión. ¿Qué columna nombra los palos?
by-column = «{ $heading }»: { $names }
measure-guessed = Nada dice qué son estos números. ¿Qué se midió?
unknown-heading = ¿Qué hay en la columna «{ $heading }» ({ $unit })?
headed-alike = Dos columnas dicen tener { $measure }, y sus números difieren. ¿Cuál es la buena?
told-apart = Dos columnas se llaman «{ $heading }». La menor se tomó por { $smaller }, la mayor por { $larger }. ¿Es así?
unit = «{ $heading }» se leyó en { $unit }, pero sus valores solo tienen sentido en { $other }. ¿Cuál es?
unit-of-club = { $measure } de { $club }: no cuadra con su velocidad de bola como en los otros palos; en { $other } sí. ¿Cuál es?
units-mixed = { $measure }: unos valores están en { $unit } y otros en { $other }. ¿Es así?
out-of-range = { $cells } { $cells-are ->
    [one] valor de
   *[other] valores de
} { $measure } no { $cells-are ->
    [one] puede ser correcto
   *[other] pueden ser correctos
}: { $values }. { $cells-are ->
    [one] Queda
   *[other] Quedan
} fuera.
point-slipped = { $cells } { $cells-are ->
    [one] valor de
   *[other] valores de
} { $measure } { $cells-are ->
    [one] queda
   *[other] quedan
} unas diez veces por encima o por debajo de los demás, como si se hubiera corrido la coma: { $values }. { $cells-are ->
    [one] Queda fuera.
   *[other] Quedan fuera.
}
above-total = En { $rows } { $rows-are ->
    [one] fila
   *[other] filas
} la bola vuela más lejos que la distancia total. ¿Es así?
plus-minus = ¿Qué es lo que va detrás de ±?
odd-spread = Una dispersión de { $values } en { $measure } no puede ser, en { $clubs }. Queda fuera.
same-name = ¿Son un mismo palo: { $names }?
one-row = Hay un solo golpe con { $club }. ¿De qué palo es?
odd-name = ¿Son palos: { $names }?
left-out-why = { $shots } { $shots-are ->
    [one] golpe está marcado
   *[other] golpes están marcados
} como que no { $shots-are ->
    [one] cuenta
   *[other] cuentan
}, y nada dice por qué. ¿Por qué?

# Lo que se puede decir.
it-is = Es { $measure }
something-else = Otra cosa
first-column = La primera
second-column = La segunda
it-is-right = Es así
in-unit = Está en { $unit }
leave-cells-out = Dejarlo fuera
they-are-right = Son correctos
one-club = Son un mismo palo
belongs-to = Es de { $club }
different-clubs = Son palos distintos
own-club = Es un palo aparte
leave-shot-out = Dejar fuera este golpe
are-clubs = Son palos
are-no-clubs = No son palos
deviation = Cuánto se separan los golpes (desviación estándar)
no-deviation = Otra cosa, o no lo sé
mishits = Fueron fallos
misread = Se midieron mal
mishit = fallo
measured-wrongly = mal medido
count-them = Contarlos de todos modos
named-like-no-club = llamado «{ $name }»
# Un golpe como se leyó, y sus medidas entre comas.
of-a-shot = { $measure } { $value }

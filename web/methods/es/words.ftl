### Lo que dice la página de métodos alrededor de sus secciones y en sus tablas.

description = Cómo decide Straight Answer: cada método con su fórmula, su fuente, su tasa de error medida y lo que no puede hacer.
title = Métodos: cómo decide Straight Answer
heading = Cómo se encuentra la respuesta
opening = Todos los métodos que usa la página: en palabras, su fórmula, de dónde vienen, con qué frecuencia se equivocaron cuando se midió, y lo que no pueden hacer. Los números están en yardas y mph, como en el código.
closing = Las palabras que no conozcas se explican <a href="#glossary">al final</a>.
back = Volver a la página
contents = En esta página

## Menores diferencias

margin-measure = Medida
margin-least = Al menos
margin-why = Por qué

## Tasas de error medidas

not-yet-measured = Las tasas de error aún no se han medido.
not-yet-measured-here = Medido: aún sin medir.
within-all = <strong>{ $within } de { $all }</strong> cifras quedan dentro de su límite, en { $sessions } sesiones inventadas. Un límite es
    la cifra que se midió cuando se eligió el método, más unos tres de sus errores estándar; en los planes es lo prometido, con 3 puntos de más o de menos, y en el número de
    golpes de 77 a 86 de cada 100.
within = Medido: { $within } de { $all } dentro de su límite
figure = Sesiones inventadas, y qué se contó
measured = Medido
standard-error = ± su error estándar
limit = Límite
at-most = { $most } como mucho
from-to = de { $least } a { $most }
is-within = Dentro
yes = sí
no = no

## Junto a otros métodos

not-yet-compared = Aún sin medir frente a otros métodos.
compared = Llamados distintos, por método, en las mismas { $sessions } sesiones inventadas de cada clase (error estándar de { $points } puntos como mucho)
method = Método
method-shots = { $method }, { $each } golpes con cada uno

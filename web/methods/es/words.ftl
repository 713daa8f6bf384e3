### Lo que dice la página de métodos alrededor de sus secciones y en sus tablas.

first-description = Cómo decide Straight Answer si dos palos de golf son de verdad distintos, cuántas veces se equivoca y qué no puede hacer: dos minutos.
first-title = Cómo encuentra Straight Answer su respuesta
first-heading = Cómo se encuentra la respuesta
first-opening = Dos minutos: qué hace esta página con tus golpes, cuántas veces se equivoca y qué no puede hacer.
first-closing = Todos los métodos, fórmulas, fuentes y tasas
full-description = Cómo decide Straight Answer: cada método con su fórmula, su fuente, su tasa de error medida y lo que no puede hacer.
full-title = Métodos: cómo decide Straight Answer
full-heading = Cómo se calcula la respuesta
full-opening = Todos los métodos que usa la página: en palabras, su fórmula, de dónde vienen, cuántas veces se equivocaron cuando se midió, y lo que no pueden hacer. La <a href="./methods.es.html">primera página</a> dice lo principal en dos minutos; las palabras que no conozcas se explican <a href="#glossary">al final</a>. Un ciclo es pasar una vez por todos los palos; una tanda, unos golpes seguidos con uno de ellos. Los números están en yardas y mph, como en el código.
full-closing = La primera página, en dos minutos
back = Volver a la página
contents = En esta página

## Menores diferencias

margin-measure = Medida
margin-least = Al menos
margin-why = Por qué

## Tasas de error medidas

not-yet-measured = Las tasas de error aún no se han medido.
not-yet-measured-here = Medido: aún sin medir.
kept = De { $rates } tasas de error, { $above } pasan de las 5 de cada 100 prometidas. La más alta es de { $most } de cada 100: { $where }. De { $found } probabilidades prometidas de
    encontrar una diferencia, { $below } salieron más bajas, por { $points } puntos como mucho. Todo en { $sessions } sesiones inventadas.
guarded = Además de lo prometido, cada cifra tiene un límite en el código, puesto a partir de su primera medición y unos tres de sus errores estándar. Ese límite
    avisa de que un cambio posterior empeoró algo; que una cifra quede dentro no demuestra nada.
range-wrong = Medido: equivocado en { $least } a { $most } de cada 100, prometido 5 como mucho; { $worse } de { $count } por encima de lo prometido.
range-found = Medido: encontrado en { $least } a { $most } de cada 100; { $worse } de { $count } por debajo de lo prometido.
range-others = { $count ->
    [one] Una cifra
   *[other] { $count } cifras
  } sin promesa.
figure = Sesiones inventadas, y qué se contó
measured = Medido
standard-error = ± su error estándar
promised = Prometido
against-promise = ¿Cumplido?
at-most = { $most } como mucho
from-to = { $least } a { $most }
no-promise = nada
kept-mark = cumplido
above-mark = por encima de lo prometido
below-mark = por debajo de lo prometido
not-counted = (aún sin contar)

## Junto a otros métodos

not-yet-compared = Aún sin medir frente a otros métodos.
compared = Llamados distintos, por método, en las mismas { $sessions } sesiones inventadas de cada clase (error estándar de { $points } puntos como mucho)
method = Método
method-shots = { $method }, { $each } golpes con cada uno

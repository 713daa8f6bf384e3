line = Una apuesta, no un veredicto. Probabilidad de que en promedio se cumpla «{ $does }»: { $chance }.{ $gap }
line-with-margin = Una apuesta, no un veredicto. Probabilidad de que en promedio se cumpla «{ $does }»: { $chance }; por { $margin } o
    más: { $of-margin }.{ $gap }
most-likely = {" "}Lo más probable: cerca de { $gap }.
at-all = { $does } en promedio, por poco que sea: { $chance }.
by-margin = Por { $margin } o más: { $chance }.
pairs = Golpe contra golpe, uno con cada palo: { $does } en { $share } parejas; contando con el azar, { $range }.
dots = Diez puntos, { $chance } de ellos rellenos.
none-of-ten = menos de 1 de 10
all-of-ten = más de 9 de 10
about-of-ten = cerca de { $count } de 10
up-to-of-ten = hasta { $count } de 10
from-of-ten = { $count } de 10 o más
range-of-ten = de { $low } a { $high } de 10
gap = Los golpes muestran { $shown }. A una diferencia que llama la atención suele ayudarla el azar, así que se acerca a lo que suelen
    diferir los palos. Entonces lo más probable es cerca de { $value }, y 95 de cada 100 diferencias así, o más, están entre { $low } y { $high }.
usual = Cuánto suelen diferir los palos en { $measure } lo elegimos nosotros, sin ningún estudio detrás: dos de cada tres diferencias
    reales, menos de { $shaft } con otra varilla en la misma cabeza, de { $head } con otra cabeza, de { $old } frente a un palo viejo.
over-all-three = Nadie ha dicho qué cambia aquí, así que cada probabilidad abarca las tres.
over-what-was-said = Se ha dicho qué cambia aquí, así que cada probabilidad se mueve alrededor de eso.
order-in-it = { $order ->
    [one-after-the-other] Los palos no se alternaron
    [not-known] No se sabe si los palos se alternaron
   *[not-compared] Los palos se alternaron, pero { $measure } no se pudo comparar ciclo a ciclo
}; lo que pueden suponer el calentamiento y el cansancio está incluido.
decides-nothing = Una apuesta dice qué es probable; no decide nada. Solo decide la respuesta de arriba.
nothing-compared = No hay nada por lo que apostar; la respuesta de arriba dice por qué.
no-scatter = Se apuesta por promedios. Por cuánto se dispersan los golpes no se apuesta.
no-nearer-zero = Se apuesta por más o por menos. Por qué palo queda más cerca de cero no se apuesta.
no-averages = Solo con promedios no se apuesta nada: no se conocen su orden ni sus golpes sueltos.
no-order = No se apuesta nada: { $order ->
    [one-after-the-other] los palos no se alternaron
    [not-known] no se sabe si los palos se alternaron
   *[not-compared] { $measure } no se pudo comparar ciclo a ciclo
}, y no se sabe cuánto influyen el calentamiento y el cansancio en
    { $measure }.
no-left-out = No se apuesta nada: dependería de los golpes apartados.
no-value-in-doubt = No se apuesta nada mientras haya un valor en duda.
no-gap = Los golpes no muestran ninguna diferencia. Con lo que suelen diferir los palos, 95 de cada 100 diferencias así, o más, están entre { $low } y { $high }.
any-of-ten = cualquier cosa entre 0 y 10 de 10

line = Una apuesta, no un veredicto. Probabilidad de que en promedio se cumpla «{ $does }»: { $chance }.{ $gap }
line-with-margin = Una apuesta, no un veredicto. Probabilidad de que en promedio se cumpla «{ $does }»: { $chance }; por { $margin } o
    más: { $of-margin }.{ $gap }
most-likely = {" "}Lo más probable: { $none ->
    [yes] que apenas haya diferencia
   *[no] alrededor de { $gap }
}.
at-all = { $does } en promedio, por poco que sea: { $chance }.
by-margin = Por { $margin } o más: { $chance }.
pairs = Golpe contra golpe, uno con cada palo: { $does } en { $share } parejas; teniendo en cuenta el azar, { $range }.
dots = Diez puntos rellenos según la probabilidad: { $chance }.
none-of-ten = menos de 1 de cada 10
all-of-ten = más de 9 de cada 10
about-of-ten = cerca de { $count } de cada 10
up-to-of-ten = hasta { $count } de cada 10
from-of-ten = { $count } de cada 10 o más
range-of-ten = entre { $low } y { $high } de cada 10
gap = En estos golpes: { $shown }. A una diferencia que llama la atención suele ayudarla el azar, así que se acerca a cero, tanto más cuanto
    menos suelen diferir palos así. Entonces lo más probable es { $none ->
    [yes] que apenas haya diferencia
   *[no] alrededor de { $value }
}, y al menos 95 de cada 100 diferencias así están entre { $low } y { $high }.
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
no-scatter = Las apuestas son sobre promedios, no sobre la dispersión.
no-nearer-zero = Las apuestas son sobre más o menos. No se apuesta a qué palo queda más cerca de cero.
no-averages = Solo con promedios no se apuesta nada: no se conocen el orden ni los golpes sueltos.
no-order = No se apuesta nada: { $order ->
    [one-after-the-other] los palos no se alternaron
    [not-known] no se sabe si los palos se alternaron
   *[not-compared] { $measure } no se pudo comparar ciclo a ciclo
}, y no se sabe cuánto influyen el calentamiento y el cansancio en
    { $measure }.
no-left-out = No se apuesta nada: dependería de los golpes apartados.
no-value-in-doubt = No se apuesta nada mientras haya un valor en duda.
no-gap = Los golpes no muestran ninguna diferencia. Con lo que suelen diferir los palos, al menos 95 de cada 100 diferencias así están entre { $low } y { $high }.
any-of-ten = todo es posible, así que no se puede apostar
no-next-to-nothing = No se apuesta nada: tan pocos golpes o ciclos no dicen casi nada de la diferencia.
rests-on = Las probabilidades de una diferencia se apoyan en { $laps ->
    [0] menos golpes de los que se dieron
   *[other] los { $laps } ciclos con golpes de los dos palos
}: { $candidate-shots } con { $candidate }, { $baseline-count } con { $baseline }.
drift-points-there = Los golpes de cada palo cambiaron poco a poco a lo largo de la sesión, y eso por sí solo parece «{ $does }»: parte de la diferencia puede ser eso, y no el palo.

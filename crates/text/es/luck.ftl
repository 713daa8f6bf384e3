headline-in-a-row = De todas las rachas de { NUMBER($shots) } que te podrían haber enseñado, en { $share } sale que { $first } y en
    { $other-share }, que { $second }.
headline-picked = De todas las formas de elegir { NUMBER($shots) } golpes con cada palo, en { $share } sale que { $first } y en
    { $other-share }, que { $second }.
at-least = {" "}con { $margin } o más de diferencia
nearer-to-zero = { $club } queda en promedio más cerca de cero
other-does = lo hace { $club }
other-is = lo hace { $club }
other-has = lo hace { $club }
that-of-other-is = los da { $club }
best = { $extreme ->
    [highest] Los { NUMBER($shots) } más altos
   *[best] Los { NUMBER($shots) } mejores
}{ $in-a-row ->
    [yes] {" "}seguidos
   *[no] {""}
} con { $own } frente a { $extreme ->
    [highest] los { NUMBER($shots) } más bajos
   *[best] los { NUMBER($shots) } peores
} con { $other }: { $gap }. Frente a todos los golpes con { $other }: { $gap-to-all }.
farther-from-zero = { $size } más lejos de cero
nearer-to-zero-by = { $size } más cerca de cero
half = la mitad
by-luck-alone = Comparaciones de { NUMBER($shots) } golpes por palo entre dos palos iguales, con golpes tan dispersos como los tuyos, que salen con
    { $size } o más de diferencia solo por azar: { $share }.
all-shots-of-each = Los { NUMBER($shots) } { $measured ->
    [yes] golpes medidos
   *[no] golpes
} de cada palo
all-shots = { $measured ->
    [yes] Todos los golpes medidos
   *[no] Todos los golpes
}, { NUMBER($candidate) } y { NUMBER($baseline) }
whole = { $shots }: { $gap } con { $club }.
whole-no-difference = { $shots }: ninguna diferencia.
deal = { NUMBER($shots) } golpes de cada uno, repartidos a ciegas: { $gap } con { $club }.
deal-no-difference = { NUMBER($shots) } golpes de cada uno, repartidos a ciegas: ninguna diferencia.
note-in-a-row = Nadie tiene que hacerlo a propósito: basta con parar en un buen momento.
note-picked = Nadie tiene que hacerlo a propósito: basta con apartar los que dieron mala sensación.
note-as-listed = No se conoce el orden de los golpes, así que una racha sigue el orden en que están en la lista.
marked = { $gap } en los { NUMBER($shots) } { $extreme ->
    [highest] más altos
   *[best] mejores
} con { $club }
alternative = Barras amontonadas en torno a cero: las diferencias que da solo el azar entre dos palos iguales, con
    { NUMBER($shots) } golpes cada uno. La mitad son menores que { $usual }, ninguna de las sorteadas es mayor que { $largest }. Las marcas:
    { $gap } con todos los golpes; { $first }; { $second }.
none = ninguna
all = todas
fewer-than-1-of-100 = menos de 1 de cada 100
more-than-99-of-100 = más de 99 de cada 100
of-100 = { $count } de cada 100

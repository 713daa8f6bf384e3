strip = una calle de { $width }
in-the-middle = en el centro
side = { $size } { $right ->
    [yes] a la derecha
   *[no] a la izquierda
}
side-and-shape = { $size } { $right ->
    [yes] a la derecha
   *[no] a la izquierda
}, el lado del { $fade ->
    [yes] fade
   *[no] draw
}
miss = { $side } en promedio{ $part ->
    [yes] {" "}en los { $shots } con ambos datos
   *[no] {""}
}, a { $carry } del tee.
counted = { $landed } de { $shots } { $other-aim ->
    [yes] { $landed ->
        [one] habría caído
       *[other] habrían caído
    }
   *[no] { $landed ->
        [one] cayó
       *[other] cayeron
    }
} en la calle.
too-few-for-a-chance = Son muy pocos golpes para dar una probabilidad.
counted-share = Son { $share } (de { $low } a { $high }, intervalo del 95 %).
dots = unos { $share } (de { $low } a { $high }, intervalo del 95 %)
chance = Una campana de Gauss tan ancha como estos golpes dice { $chance } (de { $low } a { $high }).
no-better-aim = Apuntar a otro sitio no habría ido claramente mejor que apuntar como ese día.
best-at-the-middle = Lo mejor, apuntar al centro: según la campana de Gauss, unos { $chance } (de { $low } a { $high }).
best-aimed = Lo mejor, apuntar { $side }: según la campana de Gauss, unos { $chance } (de { $low } a { $high }).
aim-over-club = Con { $club } fallas { $side } en promedio: apuntar a otro lado arreglaría más que el palo{ $hint ->
    [yes] {" "}en estos golpes
   *[no] {""}
}.
hits-more-often = Apuntando como ese día, { $better } acierta { $strip } más a menudo que { $worse }{ $hint ->
    [yes] {" "}en estos golpes: es un indicio, no una prueba, porque el calentamiento o el cansancio pueden influir
   *[no] {""}
}.
line-counted = Contados, unos { $share } con { $candidate } cayeron en { $strip }, unos { $other-share } con { $baseline }.
line-more-often = Apuntando como ese día, { $better } la acierta más a menudo{ $hint ->
    [yes] {" "}en estos golpes: es un indicio, no una prueba, porque el calentamiento o el cansancio pueden influir
   *[no] {""}
}.
line-not-settled = Estos golpes no deciden cuál de los dos la acierta más a menudo.
not-settled = Estos golpes no deciden cuál de los dos acierta { $strip } más a menudo.
alone = Con { $club } unos { $chance } aciertan { $strip }.
too-few = Son muy pocos golpes para decir cada cuánto se acertaría una calle.
as-aimed = Apuntando como ese día, según la campana de Gauss: unos { $chance } con { $own }, { $other-chance } con { $other }; la diferencia real puede estar entre { $low } y
    { $high } de cada 100 (intervalo del { $level }){ $order ->
    [one-after-the-other] , sin contar con que se usó un palo después del otro
    [not-known] , sin contar con el orden, que no se conoce
    [long-turns] , sin contar con que los palos se cambiaron muy poco
   *[in-turn] {""}
}.
counted-against-the-curve = Contando los golpes, con { $favored } cayó en la calle una parte mayor: unos pocos muy desviados con { $favored }
    ensanchan su campana, o unos pocos con { $other } fallaron por poco. Ninguna de las dos cuentas decide cuál acierta la calle más a menudo.
would-hit = Apuntando { $side }, { $club } acertaría unos { $chance }, según la campana de Gauss.
centers = El centro de los golpes con { $candidate } queda { $carry } más { $longer ->
    [yes] lejos
   *[no] cerca
} y { $level ->
    [yes] en la misma línea que el
   *[no] { $side } del
} de los golpes con { $baseline }.
centers-by-luck = Dos palos idénticos mostrarían centros al menos así de separados en { $sessions }.
order-may-move = Se usó un palo después del otro, así que el calentamiento o el cansancio pueden haber movido un centro.
long-turns-may-move = Los palos se cambiaron tan poco que el calentamiento o el cansancio pueden haber movido un centro.
order-not-known = No se conoce el orden, así que el calentamiento o el cansancio pueden haber movido un centro.
aimed-off = Apuntando { $side } de donde se apuntó ese día.
aimed-as-on-the-day = Apuntando como ese día.
note = Dónde caen las bolas, no hasta dónde ruedan.
note-curve = Primero va lo que se contó; la campana de Gauss de al lado es la de golpes tan dispersos como estos alrededor del mismo centro, y los fallos la
    ensanchan. Los intervalos son donde puede estar la proporción real, con tan pocos golpes.
note-aim = Lo que haría apuntar a otro sitio sale de la campana; el mejor punto al que apuntar supone que el centro de tus golpes sigue donde está.
build-said = { $club }: { $miss } { $chance }
ovals = Óvalos: dónde caerían los próximos golpes si se dispersan como estos, más o menos la mitad en el de dentro y nueve de cada diez en el de fuera.
no-oval = Sin óvalo para { $club }: dónde caerían los próximos golpes no se puede dibujar con { $shots }, solo con { $fewest } o más.
no-scatter-for-ovals = Sin óvalos ni probabilidad por azar: estos golpes no se dispersan en { $measure } como los de verdad.
line-of-landings = Nueve de cada diez de los próximos golpes caerían en una línea de { $long }, porque estos no difieren en la otra dirección.
oval = Nueve de cada diez de los próximos golpes caerían en un óvalo de { $long } por { $wide }.
from-above = Las caídas vistas desde arriba, con el objetivo al frente y { $strip }. { $aimed }
more-or-fewer = { $hundredths } { $more ->
    [yes] más
   *[no] menos
}
no-gain = ninguno

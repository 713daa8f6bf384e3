different = { $who }: { $size } { $way } que { $whom } (de { $low } a { $high }, intervalo del { $level }).
same = { $who } y { $whom }: iguales para lo que buscas (de { $low } a { $high }, intervalo del { $level }).
not-settled = { $who } frente a { $whom }: { $gap } en estos golpes, sin decidir (de { $low } a { $high }, intervalo del { $level }).
next-to-nothing = { $who } frente a { $whom }: { $gap } en estos golpes, que no dicen casi nada de la diferencia real.
hangs-on-left-out = { $who } frente a { $whom }: { $gap } en estos golpes (de { $low } a { $high }, intervalo del { $level }), pero depende de lo que se apartó.
depends = El cambio alteró lo que hace el palo: frente a { $own }, con { $other } fueron { $size } { $way } en «{ $second }» que en «{ $first }».
same-in-both = Lo que hace el palo es casi igual en «{ $first }» y en «{ $second }»: las dos diferencias se separan en menos de lo que te importa.
depends-not-settled = No está decidido si el palo influye más en «{ $second }» que en «{ $first }».
counts = Golpes: { $own } { $in-each }, { $other } { $other-first } y { $other-second }.
in-each = { $shots } en «{ $first }» y { $other-shots } en «{ $second }»
order-allowed-for = Lo que vino después se mezcla con calentar y cansarse; por eso su intervalo es { $size } más ancho por cada lado.
order-not-allowed-for = Lo que vino después se mezcla con calentar y cansarse, y no se sabe cuánto influye eso en { $measure }.
change-hint = Lo que hizo el cambio es por tanto un indicio, no una prueba.
club-hint-one-after-the-other = Se usó un palo después del otro: lo que hizo { $other } es un indicio, no una prueba.
club-hint-order-not-known = No se sabe si los palos se alternaron: lo que hizo { $other } es un indicio, no una prueba.
club-hint-not-compared = Los palos se alternaron, pero { $measure } no se pudo comparar ciclo a ciclo: lo que hizo { $other } es un indicio, no una prueba.
change-moved-more = En { $measure } { $hint ->
    [yes] parece haber influido
   *[no] influyó
} más el cambio a «{ $second }» que { $other }: { $size } frente a { $other-size }.
club-moved-more = En { $measure } { $hint ->
    [yes] parece haber influido
   *[no] influyó
} más { $other } que el cambio a «{ $second }»: { $size } frente a { $other-size }.
both-moved = En { $measure } { $hint ->
    [yes] parece que influyeron
   *[no] influyeron
} los dos, y no está decidido cuál más: { $size } frente a { $other-size }.
change-moved = En { $measure } { $hint ->
    [yes] parece que influyó
   *[no] influyó
} el cambio a «{ $second }»; no está decidido si también { $other }.
club-moved = En { $measure } { $hint ->
    [yes] parece que influyó
   *[no] influyó
} { $other }; no está decidido si también el cambio a «{ $second }».
change-moved-club-same = En { $measure } { $hint ->
    [yes] parece que influyó
   *[no] influyó
} el cambio a «{ $second }»; { $other } y { $own } son iguales para lo que buscas.
club-moved-change-same = En { $measure } { $hint ->
    [yes] parece que influyó
   *[no] influyó
} { $other }; «{ $first }» y «{ $second }» son iguales para lo que buscas.
neither-matters = En { $measure } ni el cambio a «{ $second }» ni { $other } influyeron tanto como para que te importe.
neither-moved = En { $measure } no influyeron claramente ni el cambio a «{ $second }» ni { $other }.
altered = Lo que hace { $other } en { $measure } cambió: frente a { $own }, fueron { $size } { $way } en «{ $second }» que en «{ $first }».
nothing-said = Estos golpes no dicen casi nada de lo que el cambio a «{ $second }» y { $other } hicieron en { $measure }.

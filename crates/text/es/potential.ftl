best-third = Tu mejor tercio
band = salida de { $launch-low } a { $launch-high }, spin de { $spin-low } a { $spin-high }
now = Llega a { $carry } de carry con { $speed }, { $launch } y { $spin } ({ $shots }).
gain-none = nada que ganar
gain-not-named = más; cuánto no se dice
gain-alone = cerca de { $gain } más
gain-both = hasta { $gain } más
gain-range = de { $low } a { $high } más
no-better-launch = Salida: nada que ganar; está a menos de { $flat } de lo mejor.
better-launch = Saliendo a { $launch } con su propio spin: alrededor de { $gain } más.
edge-of-launch = Salida: { $higher ->
    [yes] una más alta
   *[no] una más baja
} llegaría más lejos, hasta { $launch } y quizá más allá, donde esta página no mira; no se dice cuánto.
no-better-spin = Spin: nada que ganar; está a menos de { $flat } de lo mejor.
better-spin = Con { $spin } y su propia salida: alrededor de { $gain } más.
edge-of-spin = Spin: { $more ->
    [yes] con más
   *[no] con menos
} llegaría más lejos, hasta { $spin } y quizá más allá, donde esta página no mira; no se dice cuánto.
already-best = Ya llega tan lejos como da esta velocidad de bola ({ $band }), con { $flat } de margen.
both-at-their-best = Los dos en lo mejor ({ $band }): alrededor de { $gain } más.
edge-of-both = Los dos en lo mejor: eso está donde esta página deja de mirar ({ $band }), así que no se dice ninguna ganancia.
clubs-changed = Los palos de esta sesión cambiaron el carry medio en { $size } como mucho.
nothing-unused = Con { $club } esta velocidad de bola ya llega casi tan lejos como permiten su salida y su spin.
unused = Con { $club } quedan alrededor de { $size } de carry sin usar solo en { $in-launch ->
    [yes] la salida
   *[no] el spin
}.
unused-at-edge = Con { $club } bastaría { $direction ->
    [higher-launch] una salida más alta
    [lower-launch] una salida más baja
    [more-spin] más spin
   *[less-spin] menos spin
} para que la bola llegara más lejos. Lo mejor está donde esta página deja de mirar, así que no se dice ninguna ganancia.
looks-like-an-iron = Parece un hierro o un wedge, donde la altura y la parada cuentan tanto como el carry: léelo como física, no como
    objetivo.
ask-a-coach = La salida y el spin vienen del palo y de cómo llega: la altura del tee, el punto de impacto en la cara, el ángulo de ataque.
    Pregunta a un profesor antes de comprar por esto.
map = Un mapa del carry a { $speed }: la salida de { $launch-low } a { $launch-high } a lo ancho, el spin de { $spin-low } a { $spin-high } hacia arriba.
    Líneas de igual carry hasta { $top }.
group-said = { $group }: { $now } { $launch } { $spin } { $best }
caution-modeled = Calculado con un modelo, con un 3 % de error en el carry: ganar un poco es una dirección, no una promesa.
caution-together = La salida y el spin no cambian solos: más loft da los dos y cuesta algo de velocidad de bola.
caution-flat = Lo mejor es plano: cualquier punto de la banda vale lo mismo.
caution-flattered = El mejor tercio se eligió porque voló lejos, así que su carry de ahora está favorecido.
caution-not-all = Más lejos no lo es todo: un vuelo más alto sufre más con el viento, y con menos spin la bola para más tarde.

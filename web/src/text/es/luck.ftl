### Hasta dónde llega el azar.

luck-help = Con estos mismos golpes: qué habrían dicho unos pocos de ellos, mostrados solos.
luck-shown = Golpes mostrados de cada palo
luck-chosen = Cómo se eligieron
luck-in_a_row = Seguidos, como se dieron
luck-picked = Cualesquiera, escogidos
luck-every = Con todos los golpes
luck-nearer = más cerca de cero
luck-farther = más lejos de cero
luck-all = todos los golpes { $gap }
luck-reach-best = mejores { $count }: { $gap }
luck-reach-highest = { $count } más altos: { $gap }
luck-hill = Colina: con qué frecuencia el azar solo separa tanto dos palos iguales, { n-shots } cada uno.
luck-colored = En color: { $margin } o más, a favor del palo de ese color.
luck-lines-best = Líneas: hasta dónde llegan los { $count } mejores de un palo frente a los { $count } peores del otro.
luck-lines-highest = Líneas: hasta dónde llegan los { $count } más altos de un palo frente a los { $count } más bajos del otro.

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
luck-deal = Repartir { n-shots } de cada uno
luck-deal-again = Repartir otra vez
luck-more = Con { n-shots } de cada uno
luck-hill = Colina: con qué frecuencia el azar solo separa tanto dos palos iguales, con { n-shots } de cada uno; debajo, lo que repartiste y hasta dónde llegan las mejores elecciones.
luck-hill-colored = Colina: con qué frecuencia el azar solo separa tanto dos palos iguales, con { n-shots } de cada uno, en color desde { $margin }; debajo, lo que repartiste y hasta dónde llegan las mejores elecciones.

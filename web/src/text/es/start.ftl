### El comienzo: las entradas y una imagen que se mueve una vez.

start-ways = Entradas
start-shots = Tengo golpes
start-shots-line = Pégalos, una foto, un archivo o tecléalos
start-claim = Me prometieron distancia
start-claim-line = Teclea la cifra: ¿cuánto vale?
start-fair = Quiero probar
start-fair-line = Un plan y cada golpe anotado
start-fitting = Voy a un fitting
fitting-title = Voy a un fitting
fitting-line = Cómo es uno justo, para llevarlo contigo
book-title = El libro
book-line = Personas, visitas y respuestas guardadas aquí
start-try = O mira una sesión inventada:
start-try-fair = drivers iguales
start-try-twelve = uno más largo
start-try-floor = en la tienda
live-first = Cinco golpes con cada uno: { $gap }. ¿Es real?
live-second = Otros cinco con cada uno: { $gap }. ¿Y ahora?
live-all = Los treinta con cada uno: { $gap }. En verdad son iguales.
live-dealing = { $count } con cada uno…
live-invented = Dos palos iguales. Los golpes son inventados.
live-alternative = Golpes inventados de dos palos iguales, repartidos en manos. { $first } { $second } { $all }

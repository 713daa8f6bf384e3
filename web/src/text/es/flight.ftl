### Dónde caen, palo o swing, qué carry cabe, antes y después, el tiempo.

## La mano del golfista

hand = Juegas
hand-right = Como diestro
hand-left = Como zurdo

## Dónde caen

aim = Puntería
aim-day = Apuntando como ese día
aim-left = Apuntando { $size } a la izquierda de aquello
aim-right = Apuntando { $size } a la derecha de aquello
aim-as-on-the-day = Como ese día
aim-best = Lo mejor para { $club }
short-left = { $size } I
short-right = { $size } D
landing-caption = { $unit ->
    [m] Metros
   *[yd] Yardas
} desde el tee y hacia cada lado. Arrastra la línea de puntería, o muévela con las flechas: los golpes se mueven con ella.
fairway-width = Ancho de la calle

## Palo o swing

belongs-swing = El swing de ese día
belongs-both = Palo y swing juntos
belongs-unexplained = Sin explicar
cause-rests = En qué se apoya cada parte
cause-swing = Cómo llegó el palo a la bola
cause-spin = Qué hace eso con el spin y la curva, más o menos
cause-spin-note = Con una cabeza rígida y una bola que rueda, con un error de hasta el 30 %: dice hacia dónde y cuál es mayor, no cuánto.
cause-unmeasured = Lo que no se midió
cause-shorter = { $club } más corto
cause-longer = más largo
cause-caption = { $unit ->
    [m] Metros
   *[yd] Yardas
} de carry. Las partes suman la diferencia; la línea fina es donde puede estar de verdad cada parte.
cause-gap = La diferencia en estos golpes
part-inner = de ello: { $name }

## Qué carry cabe con la velocidad de bola

potential-map = El mapa de salida y spin
gains-caption = Carry en { $unit } que se ganaría con la misma velocidad de bola: la barra llena, cambiando solo la salida o el spin; el extremo fino, los dos.
map-for = El mapa para la velocidad de bola de
potential-before = Antes de cambiar nada
potential-best = A menos de { $size } de lo mejor
potential-caption = Carry en { $unit } con { $speed } de velocidad de bola, según el modelo. Cada marca pequeña es un golpe con su salida y su spin; la grande es el promedio.
axis-launch = Ángulo de salida
axis-spin = Spin, rpm

## Antes y después

before = antes
after = después
change-kind = Qué cambió
change-by-shot = A partir de un golpe
change-as-in-file = Como en el archivo
change-from = De
change-to = A
change-first = Primer golpe tras el cambio
change-called-before = Cómo se llama lo de antes
change-called-after = Cómo se llama lo de después
change-club = El palo
change-condition = De { $before } a { $after }
change-interaction = ¿Influyó el palo más que antes?
change-bars = Barras de { $measure }. { $each }
change-bar = { $name }: { $value }, de { $low } a { $high }.
change-caption = La barra es lo que muestran estos golpes; la línea fina, donde puede estar lo real.

## El tiempo

temperature = Temperatura
temperature-hint = 15 °C si queda vacío
altitude_ft = Altura sobre el mar, { $unit }
altitude_ft-hint = 0 si queda vacío
wind_helping_mph = Viento a favor, { $unit }
wind_helping_mph-hint = con signo menos si es en contra
wind_to_right_mph = Viento hacia la derecha, { $unit }
wind_to_right_mph-hint = con signo menos si es a la izquierda
temperature-in = Temperatura en
weather-answer = La respuesta en aire estándar, según el modelo

## Si encajan el carry y la salida

consistency-note = Cada carry se compara con el vuelo de su propia velocidad de bola, salida y spin, junto a lo habitual en esta sesión.

all-fit = El carry encaja con la velocidad de bola, la salida y el spin en los { $shots }.
fit-each-other = Los carrys encajan entre sí, pero no con sus salidas.
some-do-not-fit = En { $count } de { $shots } el carry no encaja con su propia salida.
is-computed = El carry de este archivo seguramente se calculó y no se vio: sigue la velocidad de bola, la salida y el spin demasiado de
    cerca para una bola vista hasta el suelo. No dice nada de la bola ni del viento que no diga la salida.
nothing-was-changed = No se ha cambiado nada. Comprueba los números en su origen{ $unit ->
    [yes] {" "}y corrige la unidad en «Tus golpes» si se leyó mal
   *[no] {""}
}.
row = Golpe { $number }, { $club }: { $carry } de carry, cuando su propia velocidad, salida y spin dan alrededor de { $expected }.
as-a-whole = En conjunto los carrys son un { $hundredths } % más { $shorter ->
    [yes] cortos
   *[no] largos
} de lo que vuelan sus salidas en aire normal.
speed-and-carry-in = la velocidad de bola está en { $speed } y el carry en { $carry }
speed-in = la velocidad de bola está en { $speed }
carry-in = el carry está en { $carry }
story-or = { $list }, o si { $story }
would-fit = Encajaría si { $stories }.

# Mientras la lectura es dudosa, esto está donde irá la respuesta.
doubt-first = Primero mira esto{ $count ->
    [one] {""}
   *[other] {" "}({ $count } preguntas)
}
doubt-lines = { $count ->
    [one] Línea
   *[other] Líneas
} { $lines } de tu texto.
doubt-read-as = Tus golpes, como se leyeron

kind = { $kind ->
    [mishit] fallo
    [thin] filazo
    [fat] pesado
    [topped] topada
    [shanked] socket
    [skied] globo
    [toe] de punta
    [heel] de talón
    [slip] error al escribir
    [wrong-club] otro palo
    [fault] fallo de la bola o de la medición
   *[other] otra razón
}

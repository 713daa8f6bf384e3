### Lo que llegó por el menú de compartir, o se abrió desde una carpeta.

arrived-title = Ha llegado algo de otra parte
arrived-text = texto compartido
arrived-files = { $more ->
    [0] «{ $name }» ha llegado de otra parte.
    [one] «{ $name }» y un archivo más han llegado de otra parte.
   *[other] «{ $name }» y { $more } archivos más han llegado de otra parte.
  }
arrived-read = Leer sus tiros
arrived-instead = Leerlo en lugar de estos tiros
arrived-add = Añadirlo a estos tiros
arrived-leave = Dejarlo

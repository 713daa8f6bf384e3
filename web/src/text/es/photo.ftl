photo-which = Foto { $number } de { $count }:
photo-loading = Cargando lo que lee las fotos: unos 5 MB, una sola vez.
photo-finding = Buscando números …
photo-reading = Leyendo los números …
photo-stays = La foto no sale de este dispositivo.
photo-doubtful = { $count ->
    [one] Hay que mirar { $count } de { $all } datos. Compáralo con su recorte.
   *[other] Hay que mirar { $count } de { $all } datos. Compara cada uno con su recorte.
  }
photo-no-doubt = Los { $all } datos se leyeron sin dudas. Echar un vistazo a los recortes no está de más.
photo-signs = Los signos se pierden con facilidad. Búscalos aquí: { $heading }
photo-all = Todos los demás datos junto a sus recortes
photo-right = Es correcto
photo-settled = Ya mirado
photo-empty = No hay nada
photo-rather = Mejor { $text }
photo-take = Leer estos números
photo-one-more = Añadir una foto
photo-another = Elegir otra foto
photo-still-open = { $count ->
    [one] Queda { $count } dato por mirar.
   *[other] Quedan { $count } datos por mirar.
  }
photo-mixed = Unas fotos muestran tablas y otras, números grandes sueltos. Usa un solo tipo cada vez.
photo-column = Columna { $number }
photo-place = { $heading }, fila { $row }
photo-club = Palo { $number }
photo-doubt-unsure = Un carácter podría ser otro.
photo-doubt-read_otherwise = Al mirarlo otra vez se leyó otra cosa.
photo-doubt-out_of_line = No encaja en su columna.
photo-doubt-against_another = No encaja con lo que tiene al lado.
photo-doubt-filled = Se leyó solo por sus cifras.
photo-doubt-missing = Aquí hay algo que no se pudo leer.
photo-doubt-sign = Puede haber un signo menos delante.
photo-failed-heic = Este tipo de foto (HEIC) no se puede abrir aquí.
photo-failed-no_photo = Esta imagen es de un tipo que no se puede leer aquí.
photo-failed-animated = Esta imagen es animada.
photo-failed-damaged = Esta imagen está dañada o no se puede abrir aquí.
photo-failed-too_small = Esta imagen es demasiado pequeña para contener una tabla.
photo-failed-too_large = Esta imagen es más grande que cualquier foto.
photo-failed-no_picture = En esta imagen no hay nada que se pueda leer.
photo-failed-no_text = No se encontró texto en esta foto.
photo-failed-no_table = No se encontró una tabla de números en esta foto.
photo-failed-too_much = En esta foto hay más texto del que muestra una pantalla.
photo-failed-too_poor = Demasiado oscura o borrosa: demasiados números serían conjeturas. No se tomó nada.
photo-failed-not_loaded = No se pudo cargar lo que lee las fotos.
photo-failed-failed = Esta foto no se pudo leer en este dispositivo.
photo-failed-old_browser = Este navegador es demasiado antiguo para leer fotos.
photo-remedy-share = Compártela o guárdala como JPEG, o haz una captura de pantalla.
photo-remedy-again = Haz otra: más cerca, de frente, con luz uniforme y el teléfono quieto.
photo-remedy-nearer = Haz una solo de la tabla, de cerca y derecha.
photo-remedy-connection = Comprueba la conexión e inténtalo de nuevo. O escribe los golpes.
photo-remedy-type = Escribe los golpes, o solo los promedios.

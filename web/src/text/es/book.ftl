### El libro: lo que se guardó en este dispositivo, por personas y visitas.

book-who = Quién
book-nobody = Nadie en particular
book-date = Fecha
book-place = Lugar
book-note = Una nota, con tus palabras
book-visit = Esta visita: fecha, lugar, nota
book-mark = Nuevo ese día
visit-nothing-new = nada
visit-lesson = una clase
visit-ball = otra bola
keep-help = No se guarda nada hasta que pulses Guardar. Queda solo en este dispositivo.
keep-button = Guardar
keep-done = Guardado en este dispositivo: { $who }, { $date }.
keep-full = No se ha podido guardar: el almacén de este dispositivo está lleno o bloqueado. Los tiros siguen en la página; guárdalos como archivo en «Guardar y compartir».
keep-open-book = Abrir el libro
book-memory = Este navegador no guarda nada, como en una ventana privada: el libro está solo en esta página y desaparece al cerrarla. Guarda una copia.
book-newer = Una versión más nueva de esta página está abierta en otra pestaña y tiene el libro. Cierra esta pestaña o recárgala.
book-empty = No hay nada guardado en este dispositivo. Aquí estará lo que guardes después de una respuesta y cada prueba que registres.
book-lies = Guardado en este dispositivo: { $all }.
book-size = Unos { $size }.
book-kilobytes = { $size } kB
book-megabytes = { $size } MB
book-under-way = En marcha
book-go-on = Seguir
book-search = Buscar por nombre, fecha, lugar o palo
book-nothing-found = Nada empieza así.
book-more = Mostrar más
book-open-answer = Abrir la respuesta
book-next-visit = Próxima visita: mismos palos y margen
book-all-of = Todo de { $name }
book-everybody = ← Todos
book-delete = Eliminar
book-delete-person = Eliminar a { $name } y todas sus visitas
book-gone = Eliminado: { $what }. Se puede recuperar durante 30 días.
book-take-back = Recuperar
book-taken-back = Está de vuelta.
book-deleted = Eliminado
book-deleted-help = Todo se puede recuperar durante 30 días; después se pierde para siempre.
book-records = { $count ->
    [one] un registro
   *[other] { $count } registros
  }
book-without-answer = No se consultó ninguna respuesta
book-test-over = Prueba, sin consultar:
book-test-waits = Prueba que espera:
book-no-shots = Todavía no tiene tiros.
book-no-plan = No tiene dos palos para los que planificar.
book-damaged = Este registro está dañado y no se puede mostrar. Los demás se abren.
book-damaged-body = Los tiros de este registro están dañados. Se han guardado tal como están, en un archivo.
book-save-raw = Guardarlo tal como está
book-raw-file = registro-dañado
book-not-written = No se ha podido escribir: el almacén de este dispositivo está lleno o bloqueado. Guarda una copia.
book-forgotten = Todo está borrado. No queda nada en este dispositivo.
book-nowhere = El libro está en este dispositivo y en ningún otro sitio: no hay cuenta ni servidor, y nada pasa solo a otro teléfono. Lo que llega allí es una copia que llevas tú, o el enlace de una respuesta.
season-title = { $candidate } junto a { $baseline }, visita a visita
season-together = Todas las visitas juntas
season-caption = Cada barra: la diferencia de una visita y hasta dónde llega.
season-no-difference = ninguna diferencia
season-zone = menos de { $margin } no importa
season-each = { $name }: { $value }, de { $low } a { $high }.
season-one = Con una segunda visita con los mismos dos palos dirá lo que muestran las dos juntas.
book-claim-beside = Lo que se prometió, junto a la última prueba
book-claim-of = Promesa del { $date }: { $said }
book-claim = Promesa: { $said }
copy-title = Copias: todo el libro en un archivo
copy-help = Para otro dispositivo, o contra pérdidas. Se hace aquí y va donde tú lo pongas. { $schema }
copy-schema = Cómo está escrito el archivo.
copy-passphrase = Contraseña, si quieres
copy-passphrase-help = Con ella nadie lee el archivo sin conocerla. Si se pierde, nadie puede recuperarla.
copy-save = Guardar una copia
copy-open = Abrir una copia
copy-file = straight-answer-libro
copy-saved = La copia está guardada.
copy-remind = La visita más reciente no está todavía en ninguna copia.
copy-locked = Su contraseña
copy-wrong = Con esa no se abre.
copy-unlock = Abrir
copy-no_copy = Este archivo no es la copia de un libro.
copy-later_version = Esta copia se guardó con una versión posterior de la página. Recarga la página cuando tengas red.
copy-brings = Trae: { $all }. De aquí no se va nada.
copy-visit = Guardar esta visita como archivo
copy-visit-file = straight-answer-visita
copy-visit-saved = La visita está guardada en un archivo. En otro dispositivo se abre como una copia.
copy-nothing-new = No trae nada nuevo: todo está aquí.
copy-only-changes = No trae ningún registro nuevo, pero dice de nuevo algo de lo que hay aquí.
copy-branches = { $count ->
    [one] Una prueba siguió en los dos sitios: se guardan las dos.
   *[other] { $count } pruebas siguieron en los dos sitios: se guardan las dos de cada una.
  }
copy-unreadable = { $count ->
    [one] Un registro no se puede leer y se queda en el archivo.
   *[other] { $count } registros no se pueden leer y se quedan en el archivo.
  }
copy-changes = { $count ->
    [one] En un punto dice otra cosa que aquí. Vale lo más nuevo:
   *[other] En { $count } puntos dice otra cosa que aquí. Vale lo más nuevo:
  }
copy-change-there = aquí «{ $here }», allí «{ $there }»: se toma de la copia
copy-change-here = aquí «{ $here }», allí «{ $there }»: queda como está aquí
copy-take-over = Añadirlo
copy-leave = Dejarlo
copy-taken-over = Ya está dentro.

### Lo que contiene un enlace, y de quién son los ajustes en pantalla.

sent-title = Alguien compartió esta sesión contigo
sent-note = Venía con esta nota: { $note }
sent-yours = Ahora los ajustes son tuyos, y la respuesta también. El enlace sigue como se envió.
sent-try = Los ajustes son de quien la envió. Cámbialos bajo la respuesta: el enlace sigue como se envió.
sent-back = Volver a los ajustes del envío
cut-stays = Lo que había en esta página sigue como estaba.
cut-left = Lo que hay antes del corte aún se puede leer: { $shots } con { $measures }.
cut-gone = Lo que venía detrás se ha perdido: otras medidas, notas o por qué se dejó fuera un golpe.
cut-open = Leer lo que queda
cut-close = Cerrar
sent-holds = Contiene { $what } con { $clubs } y { $columns }.
n-averages = { $count } { $count ->
    [one] promedio
   *[other] promedios
  }
n-measures = { $count ->
    [one] una medida
   *[other] { $count } medidas
  }
sent-none-out = Ninguno está marcado como apartado.
sent-out = { n-shots } { $count ->
    [one] apartado, que se sigue viendo: tachado
   *[other] apartados, que se siguen viendo: tachados
  } en «Golpes en orden».

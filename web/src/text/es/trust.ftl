### Si se puede confiar en la sesión, y cada golpe en su orden.

weight-serious = Grave
weight-note = Conviene saberlo
weight-good = Bien hecho
trust-setup = Lo que ninguna lista de golpes muestra, pregúntalo o recuérdalo: ¿la misma bola, altura de tee, alfombra o hierba y puntería con todos los palos? ¿Y en qué se diferencian loft, longitud, lie y grip de los palos? Lo que ahí cambió cuenta como el palo.
n-serious = { $count } { $count ->
    [one] aviso grave
   *[other] avisos graves
  }
no-serious = Ningún aviso grave
n-notes = { $count } que conviene saber
n-good = { $count } bien { $count ->
    [one] hecho
   *[other] hechos
  }
shots-title = Golpes en orden: { $measure }
shots-too-many = Hay demasiados golpes para una imagen.
shots-every = Cada golpe, y cómo apartar uno
shots-every-help = Da una razón para apartar un golpe. Sigue a la vista, y la respuesta se calcula con él y sin él.
shots-show-more = Mostrar más de { n-shots }
shots-no-value = Ningún golpe tiene un valor de esta medida.
shots-alternative = { $measure } de cada golpe, en el orden en que se dieron.
shots-alternative-each = { $name }: { n-shots }, { $average } en promedio.
shots-alternative-rounds = Dados en { n-rounds }.
shots-alternative-out = { n-shots } { $count ->
    [one] apartado
   *[other] apartados
  }.
shots-alternative-noted = { n-shots } con una nota del jugador; { $count ->
    [one] cuenta
   *[other] cuentan
  }.
shots-alternative-list = La lista de abajo tiene todos los valores.
shots-average = promedio { $average }
shots-caption = El primer golpe a la izquierda, el último a la derecha. Líneas discontinuas: el promedio de cada palo.
shots-caption-bands = Franjas: ciclos, una vez por todos los palos.
shots-caption-drift = Líneas inclinadas: la deriva, con cualquier palo en la mano.
shots-caption-out = Tachado: apartado.
shots-caption-noted-as = Con un círculo: anotado como «{ $note }»; cuenta.
shots-caption-noted = Con un círculo: anotado por el jugador; cuenta.
shots-column = Golpe
counts-column = ¿Cuenta?
counts-yes = cuenta
counts-back = recuperarlo
shots-left-out = apartado
leave-out = apartar: { $reason }
shot-counts = Si el golpe { $shot } cuenta
reason-mishit = fallo
reason-club = otro palo
reason-fault = fallo de la bola o de la medición
reason-other = otra razón

paper-for = Para: ________________________
paper-for-name = Para: { $name }
paper-printed = Impreso el { $date }
paper-shots = Cada golpe, en el orden en que se dio: { $measure }
paper-shots-out = Cada golpe, en el orden en que se dio: { $measure }. Entre paréntesis: descartado.

### Una prueba justa: planeada, jugada, anotada.

## El plan

fair-waits = Hay una prueba en marcha en este dispositivo. Termínala o bórrala y se abrirá el plan del enlace.
fair-overtaken-shown = Otra pestaña ha seguido con esta prueba. Sus tiros se ven ahora aquí.
fair-overtaken-back = Otra pestaña ha seguido con esta prueba. Sus tiros se ven ahora aquí; tu último número vuelve a estar en tu mano: guárdalo si todavía corresponde.
fair-overtaken-gone = Esta prueba se ha borrado en otra pestaña.
fair-my-driver = Mi driver
fair-new-driver = Driver nuevo
fair-new-driver-n = Driver nuevo { $number }
fair-link-copied = Enlace copiado. Abre este plan en cualquier teléfono, listo para empezar.
fair-link-by-hand = Cópialo a mano: { $address }
fair-share-title = Una prueba justa
fair-not-taken = El dispositivo no lo aceptó. Mejor copia el enlace.
fair-sent = Este plan vino con el enlace.
fair-sent-help = Revísalo y empiézalo en este teléfono.
fair-help = Decide antes de la primera bola qué cuenta. Luego alterna los palos y guarda cada golpe. Un ciclo es pasar una vez por todos los palos, con unos golpes de cada uno.
fair-change = Cambiar el plan
fair-finds = Con qué frecuencia una prueba así encuentra una diferencia
fair-keeps-fair = Lo que la hace justa
fair-offline = Funciona sin conexión.
fair-the-club = El palo
fair-the-clubs = Los palos, el tuyo primero
fair-club-name = Nombre del palo { $number }
fair-club-out = Quitar el palo { $number }
fair-add-club = Añadir un palo
fair-same-club = Un solo palo con dos etiquetas, para ver qué hace el azar
fair-what-counts = Lo que cuenta
fair-better = Qué sería mejor
fair-margin = La menor diferencia que importa
fair-rounds-of = Ciclos de { n-shots } con cada palo
fair-round-less = Un ciclo menos
fair-round-more = Un ciclo más
fair-look = Consultar la respuesta
fair-look-when = Cuándo consultar la respuesta
fair-look-halfway = A mitad y al final
fair-look-at_end = Solo al final
fair-look-every_round = Tras cada ciclo
fair-more = Más opciones
fair-set = Golpes por tanda: seguidos con un palo
fair-set-label = Golpes por tanda
fair-warm = Golpes de calentamiento, no cuentan
fair-warm-label = Golpes de calentamiento
fair-spread = Cuánto se dispersan tus golpes
fair-earlier = Tomar la dispersión de la sesión de esta página
fair-drawn = Sortear el orden en cada ciclo
fair-seed = Número del que parte el sorteo
fair-start = Empezar la prueba en este teléfono
fair-who = ¿Quién pega? (si quieres)
fair-print = Imprimir la hoja
fair-copy-link = Copiar el plan como enlace
fair-share-plan = Compartir el plan…
fair-kept-note = Una vez empezada, cada golpe se guarda en este dispositivo, y solo aquí, hasta que lo borres.
fair-lengths = Con qué frecuencia se encuentra una diferencia real, según la duración de la prueba
fair-lengths-alternative = Encontrada con una diferencia real de { $margin } y de { $double }. { $each }.
fair-lengths-each = { $rounds } ciclos, { $minutes } minutos: { $margin } y { $double }
fair-lengths-tick = { $tenths } de 10
fair-lengths-table = Qué mostrarían pruebas más cortas y más largas
fair-rounds = Ciclos
fair-balls = Bolas
fair-minutes = Minutos
fair-same = Iguales
fair-same-note = Iguales: con qué frecuencia dos palos de verdad iguales se dan por iguales dentro de { $margin }.
fair-this-plan = (este plan)
fair-record = Anotar en cada golpe
fair-looks = Lo que cuesta consultar antes
fair-looks-help = A una consulta temprana se le exige un intervalo más ancho que a la última, para que todas juntas no se equivoquen más que una sola.
fair-after-round = Tras el ciclo
fair-how-sure = Intervalo que decide

## La hoja en papel

sheet-title = Una prueba justa: { $clubs }
sheet-against = frente a
sheet-before = Antes: { $count } golpes de calentamiento, que no cuentan. { $cautions }
sheet-round = Ciclo
sheet-club = Palo
sheet-shot = Golpe { $number }
sheet-look = consultar antes
sheet-cells = En cada casilla: { $measures }. Anota todos los golpes; marca un fallo con una f.
sheet-felt = Antes de calcular ningún promedio: ¿cuál se sintió más recto? ________ ¿más largo? ________ ¿más fácil de pegar? ________ ¿Cuál te gusta más a la vista? ________ ¿al oído? ________

## El registro

log-before = Antes del primer golpe
log-warm-up = Calienta: { $count } { $count ->
    [one] bola
   *[other] bolas
  }
log-warm-up-free = Calienta como quieras
log-warm-up-help = No cuentan. Usa cualquiera de los palos, o todos. Para si algo te duele, mira que no haya nadie cerca ni delante, y vete al primer trueno.
log-warm = Ya he calentado
log-rest = Descansa antes dos minutos. Bebe algo.
log-take = Toma este palo.
log-change = Cambia de palo.
log-undo = Deshacer
log-undo-last = Deshacer el último golpe
log-end-set = Terminar esta tanda
log-whole = Toda la prueba: { $shots } de { $of } golpes.
log-keys = Teclas de números
log-key-back = Borrar la última cifra
log-key-side = Al otro lado de cero
log-key-point = Signo decimal
log-next = Número siguiente
log-sides = I / D
log-left = I
log-right = D
log-mishit = Fallo
log-mishit-counts = cuenta
log-mishit-note = fallo
log-keep = Guardar este golpe
log-set = Esta tanda
log-open = por dar
log-last = Último golpe:
log-odd = { $measure }: { $value } no es lo habitual.
log-odd-help = ¿Es lo que se midió? Entonces se guarda y cuenta.
log-odd-again = Escribirlo otra vez
log-odd-keep = Sí, guardarlo
log-paste = Pegar un golpe o una tanda
log-paste-help = Una fila por golpe: { $order }.
log-paste-here = Pega aquí
log-save-file = Guardar como archivo
log-look = Consultar la respuesta
log-look-early = Consultar ahora de todos modos
log-look-again = Esta consulta ya se hizo; repetirla no cuesta nada.
log-look-now = Consultar ahora
log-kept-plan = El plan queda guardado en este dispositivo, y desde ahora también cada golpe.
log-kept = Guardados en este dispositivo: { $kept } de { n-shots }.
log-not-kept = Este dispositivo no guarda los golpes.
log-not-kept-why = Su almacén está lleno o bloqueado, como en una ventana privada.
log-not-kept-newer = Una versión más nueva de esta página está abierta en otra pestaña y guarda los tiros. Cierra esta.
log-not-kept-help = Siguen en la pantalla: deja esta página abierta y guarda los golpes como archivo cuando termines.
paste-no-room = Son { $count } golpes; en esta tanda caben { $room }.
paste-refused = El navegador no dejó leer lo que copiaste. Pégalo en el campo.
paste-nothing = No hay nada que pegar.
paste-row-has = La fila { $row } tiene { $count } valores; por golpe se anotan { $wanted }, en el orden indicado.
paste-there-are = Hay { $count } valores; por golpe se anotan { $wanted }, en el orden indicado.
paste-no-number = «{ $cell }» no es un número.

## La cara del palo

face-label = Impacto en la cara: { $where }. Toca donde pegó la bola o usa las flechas.
face-toe = Punta
face-heel = Talón
face-tap = toca donde pegó
face-middle = centro
face-mm-toe = { $mm } mm a la punta
face-mm-heel = { $mm } mm al talón
face-middle-height = altura media
face-mm-high = { $mm } mm arriba
face-mm-low = { $mm } mm abajo

## Lo que se sintió

feel-title = Primero, ¿qué sentiste?
feel-help = Se pregunta una vez, antes de mostrar ningún número. Deja en blanco lo que no sepas decir.
feel-straighter = ¿Cuál se sintió más recto?
feel-longer = ¿Cuál se sintió más largo?
feel-easier = ¿Cuál fue más fácil de pegar?
feel-look = ¿Cuál te gusta más a la vista?
feel-sound = ¿Cuál te gusta más al oído?
feel-cannot-say = No sé decirlo
feel-show = Mostrar ahora la respuesta
feel-back = Volver a la prueba

## Después de consultar

after-waits = La prueba espera: van { $hit } de { $of } golpes. { $look }
after-stands = La respuesta está arriba, con { $hit } de { $of } golpes. { $stricter }
after-felt = Lo que sentiste, al lado
after-not-kept = Este dispositivo no guarda los golpes. Guárdalos como archivo antes de irte.
after-go-on = Seguir: van { $count } golpes
after-next-person = Siguiente persona, mismo plan
save-shots = Guardar los golpes como archivo
forget-title = Dejar, guardar o borrar
forget-leave = Dejar la prueba por ahora

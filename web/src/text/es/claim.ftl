### Una promesa frente a una nueva prueba, y varios días juntos.

claim-supported = Se sostiene
claim-at_least = Cumplida entera
claim-too_small = Demasiado pequeña
claim-contradicted = Desmentida
claim-not_settled = Sin resolver
claim-no_retest = Aún sin nueva prueba
claim-help = ¿Qué dijo el fitting? Se compara con la sesión de esta página.
claim-help-no-retest = ¿Qué dijo el fitting? Sin una nueva prueba en esta página aún puedes ver qué mostraría el azar solo.
claim-reach = el azar solo llega a { $size } hacia cada lado
claim-reach-caption = Sombreado: donde caerían unos 95 de cada 100 fittings de dos palos iguales alternados, con los golpes que se dijeron.
claim-reach-caption-order = Sombreado: donde caerían unos 95 de cada 100 fittings de dos palos iguales alternados, con los golpes que se dijeron; sin alternarlos, el calentamiento o el cansancio podrían moverlos { $size } más.
claim-picture-claim = Lo prometido
claim-picture-retest = La repetición (intervalo del { $level })
claim-picture-each = { $name }: { $value }.
claim-promised = Qué se prometió
claim-gain = Mejora prometida
claim-averages = O los promedios de los que salió
claim-before = Con tu palo
claim-after = Con el nuevo
claim-shots_after = Golpes con cada palo
claim-tried = Palos nuevos probados
claim-price = Precio, si quieres
claim-currency = Moneda
claim-keep-title = Guardarla para la nueva prueba
claim-keep-who = De quién es la promesa
claim-keep = Guardar esta promesa
claim-kept = Guardada en el libro de este dispositivo. Allí estará junto a una nueva prueba de la misma persona.
claim-kept-page = Este navegador no guarda nada: desaparece al cerrar la página.
claim-not-kept = No se ha podido guardar: el almacén de este dispositivo está lleno, o lo tiene una página más nueva.
together-title = Los mismos palos otro día
together-help = Pega una sesión de otro día, con los mismos nombres de los palos. Un tercer palo que uses todos los días, como un hierro viejo, suple un día sin uno de los dos.
together-text = Una sesión de otro día
together-add = Añadir este día
together-files = Elegir archivos
together-today = Día 1, en esta página: { n-shots }
together-day = Día { $day }: { n-shots }
together-not-understood = { $count } { $count ->
    [one] cosa
   *[other] cosas
  } sin entender; la primera: { $first }
together-out = Quitar el día { $day }
together-air = El tiempo fue distinto: llevar antes cada día a aire estándar
together-weather = Tiempo del día { $day }
together-day-said = Día { $day }: { $said }
together-weight = Cuenta un { $weight }.
together-through = Tiene uno de los dos palos, comparado con { $control }.
together-not-both = No contiene los dos palos.
day-n = día { $day }
no-session = No hay ninguna sesión.
no-session-remedy = Añade una.

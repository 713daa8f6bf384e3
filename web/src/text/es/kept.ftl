### Lo que hay en este dispositivo, y cómo vaciarlo.

kept-persistent = El navegador ha prometido no borrarlo por su cuenta.
kept-not-persistent = El navegador puede borrarlo si el dispositivo se queda sin espacio: guarda una copia de vez en cuando.
forget-everything = Borrar todo de este dispositivo
forget-all = Se borra esto: { $tests ->
    [one] una prueba
   *[other] { $tests } pruebas
  }, { $sessions ->
    [one] una sesión
   *[other] { $sessions } sesiones
  }, { $visits ->
    [one] una visita
   *[other] { $visits } visitas
  }, { $people ->
    [one] una persona
   *[other] { $people } personas
  }, { $claims ->
    [one] una promesa
   *[other] { $claims } promesas
  }.
forget-help = Nada de esto puede recuperarse, salvo de una copia que hayas guardado.
forget-yes = Sí, borrarlo todo

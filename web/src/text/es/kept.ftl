### Lo que hay en este dispositivo, y cómo vaciarlo.

kept-persistent = El navegador ha prometido no borrarlo por su cuenta.
kept-not-persistent = El navegador puede borrarlo si el dispositivo se queda sin espacio: guarda una copia de vez en cuando.
forget-everything = Borrar todo de este dispositivo
forget-all = Se borra esto: { $all }.
forget-help = Nada de esto puede recuperarse, salvo de una copia que hayas guardado.
forget-yes = Sí, borrarlo todo
kept-people = { $count ->
    [one] una persona
   *[other] { $count } personas
  }
kept-visits = { $count ->
    [one] una visita
   *[other] { $count } visitas
  }
kept-sessions = { $count ->
    [one] una sesión
   *[other] { $count } sesiones
  }
kept-tests = { $count ->
    [one] una prueba
   *[other] { $count } pruebas
  }
kept-claims = { $count ->
    [one] una promesa
   *[other] { $count } promesas
  }
kept-shots = { $count ->
    [one] un tiro registrado
   *[other] { $count } tiros registrados
  }

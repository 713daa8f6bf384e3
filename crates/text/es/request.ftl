unknown-field = Aquí no hay ningún campo llamado { $field }.
unknown-field-remedy = { $nearest ->
    [yes] ¿Querías decir { $known }?
   *[no] Los campos aquí son { $known }.
}
missing-field = Falta el campo { $field }.
missing-field-remedy = Añádelo: las declaraciones dicen qué contiene.
unknown-word = { $word } no es ninguna de las palabras que pueden ir aquí.
unknown-word-remedy = { $nearest ->
    [yes] ¿Querías decir { $known }?
   *[no] Elige una de { $known }.
}
not-of-type = Esto debe ser { $expected ->
    [number] un número
    [count] un número entero, cero o más
    [text] un texto
    [yes-or-no] verdadero o falso
    [list] una lista
   *[object] un objeto con campos con nombre
}.
not-of-type-other = Esto debe ser { $expected }.
not-of-type-remedy = Envía un valor de ese tipo.
not-finite = Esto no es un número finito.
not-finite-remedy = Envía una medida, o deja el campo fuera.
does-not-fit = No encaja: { $why }.
does-not-fit-remedy = Envía un valor que encaje con las declaraciones.
no-such-club = { $named ->
    [yes] Nombra el palo { $club }
   *[no] No nombra ningún palo
}; hay { $clubs ->
    [0] ninguno
    [one] 1, contando desde 0
   *[other] { $clubs }, contando desde 0
}.
second-does-not-fit = Lo que también cambió tiene { $values } valores, de { $most } como mucho, o un golpe nombra uno que no está entre ellos.
shots-twice = Los golpes están uno por uno y también en columnas: envía solo una de las dos cosas.
column-length = Esta columna tiene { $numbers ->
    [one] 1 número
   *[other] { $numbers } números
}; hay { $shots ->
    [one] 1 golpe
   *[other] { $shots } golpes
}.
no-such-shot = Un motivo o una nota es del golpe { $shot }; hay { $shots ->
    [one] 1 golpe
   *[other] { $shots } golpes
}, contando desde 0.
other-version = Esta tabla de un idioma es de otra versión.
other-version-remedy = Usa la que acompaña a este paquete.

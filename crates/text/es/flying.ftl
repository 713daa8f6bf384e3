no-such-build = No hay un palo número { $build }; hay { $builds }, contados desde 0.
no-such-build-remedy = Di un palo que esté en la sesión.
not-conditions = Con ese tiempo esta página no puede calcular el vuelo.
not-conditions-remedy = { $condition ->
    [temperature] Escribe de −50 a 55 °C, o de −58 a 131 °F.
    [humidity] Escribe de 0 a 100.
    [wind] Escribe 67 mph o 108 km/h como mucho.
   *[altitude] Escribe de −1600 a 19 600 pies o de −480 a 5970 metros sobre el nivel del mar.
}
no-conditions = Estas condiciones no se pueden usar.
no-conditions-remedy = Déjalas abiertas para el aire estándar.
no-number = Esto debe ser un número.
no-launch = Con esa salida esta página no puede calcular el vuelo.
no-flight = Una bola que sale así no vuela.
no-launch-remedy = Revisa el número y su unidad.
nothing-to-bring = Ningún golpe tiene { $measures } y carry.
nothing-to-bring-remedy = Añade estas columnas para llevar el carry al aire estándar.
nothing-to-hold = Ningún golpe tiene carry, velocidad de bola, ángulo de salida y spin.
nothing-to-hold-remedy = Añade estas columnas para ver si encajan entre sí.
same-carry = Con un palo todos los golpes tienen el mismo carry, así que no se puede leer nada de él.
same-carry-remedy = Revisa la columna de carry: se habrá redondeado o copiado.
nothing-to-map = Menos de { $least } golpes con tu palo tienen carry, velocidad de bola, ángulo de salida y spin.
add-columns = Añade estas columnas, golpe a golpe.
no-such-group = No hay un grupo número { $group }; hay { $groups }, contados desde 0.
no-such-group-remedy = Di un grupo de la respuesta, o déjalo abierto.
same-build-twice = Un palo no se puede comparar consigo mismo.
same-build-twice-remedy = Elige otro candidato.
too-few-to-split = Menos de { $least } golpes con cada palo tienen carry, velocidad de bola, ángulo de salida y spin.
too-few-to-split-remedy = Añade golpes con los cuatro números.
not-measured = Aquí no se midió: { $measures }. Sin eso nadie puede decir de dónde viene una diferencia de carry.
cannot-be-shown = { $place ->
    [fairway] Una calle así no se puede mostrar.
   *[aim] Un punto de mira así no se puede mostrar.
}
cannot-be-shown-remedy = Pide de { $least } a { $most }.
nothing-landed = No se sabe dónde cayeron estos golpes: ninguno tiene carry y desvío.
nothing-landed-remedy = Añade el desvío lateral de cada golpe junto a su carry.
no-candidate = No se dice qué palo se compara con el primero.
no-candidate-remedy = Di uno de los palos de la sesión que no sea el de referencia.
too-few-on-a-side = Para antes y después hacen falta al menos 3 golpes con cada uno de dos palos a cada lado.
too-few-on-a-side-remedy = Pon el cambio en otro golpe, o pega otra vez con los dos palos después.
no-scatter = Estos valores no se dispersan, así que nada distingue el azar de una causa.
no-scatter-remedy = Revisa la columna, o elige otra medida.

standard-air-carry = Carry modelado en aire estándar
would-carry = En aire estándar (15 °C a nivel del mar, seco, en calma) un golpe medio tuyo { $how ->
    [same] llegaría igual de lejos
    [farther] llegaría cerca de { $size } más lejos
   *[less] se quedaría cerca de { $size } más corto
}.
note = Modelado: solo lo está el cambio de aire, tu propia bola sigue en el número. Una lectura cerca del suelo dice poco del viento
    que la bola encuentra más arriba.

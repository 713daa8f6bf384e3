name = { $id ->
    [carry] carry
    [total] distancia total
    [offline] desvío
    [ball_speed] velocidad de bola
    [club_speed] velocidad de palo
    [launch_angle] ángulo de salida
    [launch_direction] dirección de salida
    [spin_rate] spin
    [spin_axis] eje de spin
    [apex] altura máxima
    [descent_angle] ángulo de caída
    [hang_time] tiempo en el aire
    [smash] smash factor
    [attack_angle] ángulo de ataque
    [club_path] trayectoria del palo
    [face_angle] ángulo de la cara
    [face_to_path] cara respecto a la trayectoria
    [dynamic_loft] loft dinámico
    [spin_loft] spin loft
    [strike_height] altura del impacto
   *[strike_offset] impacto punta-talón
}
the = { $id ->
    [carry] el carry
    [total] la distancia total
    [offline] el desvío
    [ball_speed] la velocidad de bola
    [club_speed] la velocidad de palo
    [launch_angle] el ángulo de salida
    [launch_direction] la dirección de salida
    [spin_rate] el spin
    [spin_axis] el eje de spin
    [apex] la altura máxima
    [descent_angle] el ángulo de caída
    [hang_time] el tiempo en el aire
    [smash] el smash factor
    [attack_angle] el ángulo de ataque
    [club_path] la trayectoria del palo
    [face_angle] el ángulo de la cara
    [face_to_path] la cara respecto a la trayectoria
    [dynamic_loft] el loft dinámico
    [spin_loft] el spin loft
    [strike_height] la altura del impacto
   *[strike_offset] el impacto punta-talón
}
margin-why = { $reason ->
    [club-length] Más o menos medio palo de distancia.
    [quarter-fairway] Una pequeña parte del ancho de una calle.
    [speed] Vale del 1 al 1½ % del carry de un driver.
    [speed-of-club] Vale del 1½ al 2 % del carry de un driver.
    [flight] Apenas se ve en el vuelo.
    [delivery] Más o menos lo que intenta cambiar una clase.
   *[strike] Unos milímetros de impacto mueven el spin y la velocidad.
} Regla práctica entre golfistas, sin ningún estudio detrás.

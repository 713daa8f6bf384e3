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
margin-why = { $reason ->
    [club-length] Más o menos medio palo de distancia.
    [quarter-fairway] Una pequeña parte del ancho de una calle.
    [speed] Vale del 1 al 1½ % del carry de un driver.
    [speed-of-club] Vale del 1½ al 2 % del carry de un driver.
    [flight] Apenas se ve en el vuelo.
    [delivery] Más o menos lo que intenta cambiar una clase.
   *[strike] Unos milímetros de impacto mueven el spin y la velocidad.
} Regla práctica entre golfistas, sin ningún estudio detrás.

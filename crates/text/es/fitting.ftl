# Lo que un fitting puede mostrar y lo que no, según cómo se hizo.
headline = { $gap ->
    [the-clubs] Este fitting puede mostrar lo que hacen los palos, hasta donde llega su número de golpes.
    [something-else-too] Este fitting puede mostrar una diferencia, pero no que la haya hecho el palo.
    [choosing] Este fitting puede mostrar una diferencia, pero una parte puede venir de elegir.
    [both] Este fitting puede mostrar una diferencia, pero no que la haya hecho el palo, y una parte puede venir de elegir.
    [no-own-club] Este fitting no dice nada de una mejora sobre tu propio palo.
    [own-club-not-known] No se sabe si se probó tu propio palo, y sin él no hay mejora que mostrar.
   *[not-all-known] Por ahora nada habla en contra de este fitting, y una parte no se sabe.
}
shows = { $line ->
    [own-club] Tu propio palo se probó ese día: se puede ver la diferencia con él.
    [as-often] Los mismos golpes con cada uno: los dos promedios son igual de seguros.
    [as-warm] Con tu propio palo ya habías calentado como con los demás.
    [in-turn] Los palos se alternaron: el calentamiento, el cansancio y el viento tocaron a todos por igual.
    [alike] Loft, bola, tee y alfombra iguales: ninguno de ellos hizo la diferencia.
    [every-shot] Contó cada golpe: los promedios son de lo que haces en cada swing.
    [number-said] El número de golpes se dijo antes: nadie paró en un buen momento.
    [hit-again] El palo elegido se probó otra vez: lo que muestra esa segunda prueba no le debe nada a la elección.
    [measured] Se midieron la entrega y el impacto: se puede buscar el porqué de una diferencia.
   *[taken-home] Tienes los números de cada golpe: se pueden comprobar.
}
cannot = { $line ->
    [own-club] Tu propio palo no se probó ese día. Los números de otro día, otra bola u otro lugar no se comparan.
    [as-often] Un palo tuvo menos golpes. Su promedio es el menos seguro, y más golpes con el otro no lo arreglan.
    [as-warm] Tu propio palo se llevó los golpes en frío. Parte de una diferencia puede ser calentamiento.
    [in-turn] Los palos se probaron uno tras otro. El calentamiento o el cansancio por sí solos pueden separar dos palos iguales cerca de { $size }.
    [alike] Loft, bola, tee o alfombra no fueron iguales. La diferencia puede ser suya, y tu propio palo podría tenerla también.
    [every-shot] Se quitaron golpes. Los promedios son de los demás, y no dicen nada de cada swing.
    [number-said] El número de golpes no se dijo antes. Quien para cuando pinta bien encuentra diferencias también entre palos iguales.
    [hit-again] El palo elegido no se probó otra vez. El mejor de varios gana un poco solo por suerte.
    [measured] No se midió la entrega o el impacto. No se puede decir por qué un palo llegó más lejos.
   *[taken-home] No tienes los números de cada golpe. Nadie puede comprobar lo que se dijo, y tú tampoco.
}
not-known = { $line ->
    [own-club] si tu propio palo se probó ese día
    [as-often] si cada palo tuvo los mismos golpes
    [as-warm] si con tu propio palo ya habías calentado como con los demás
    [in-turn] si los palos se alternaron
    [alike] si loft, bola, tee y alfombra fueron iguales
    [every-shot] si se guardó cada golpe
    [number-said] si el número de golpes se dijo antes
    [hit-again] si el palo elegido se probó otra vez
    [measured] qué se midió de la entrega y del impacto
   *[taken-home] si tienes los números de cada golpe
}
next = { $next ->
    [read-the-shots] Dale los golpes a esta página: la respuesta dice cuánto se puede confiar en ellos.
    [read-and-test] Dale los golpes a esta página. Después alterna los dos palos: así se distingue el palo de lo demás.
    [test-the-promise] Teclea lo que te prometieron: esta página dice cuánto puede hacer la suerte sola. Después alterna los dos palos.
   *[ask-for-numbers] Pide los números de cada golpe, también los de tu propio palo: son tus golpes.
}

headline = { $rounds } ciclos de { $set ->
    [one] 1 golpe
   *[other] { $set } golpes
} con cada uno de { $clubs } palos: { $each } golpes con cada uno, { NUMBER($balls) } bolas con el calentamiento, unos { $minutes } minutos con calma.
scatter-unknown = Aquí no se sabe cuánto suelen dispersarse los golpes en { $measure }. Di cuánto lo hacen los tuyos y este plan dirá
    qué va a mostrar.
found = { $size } { $often }
found-and = { $list }, una de { $next }
found-and-last = { $list } y una de { $last }
power = Con { $rounds } ciclos de { $set } verás una diferencia real de { $list }.
found-both = { $margin }, { $double }
beside-typical = Golpe típico: { $found }.
beside-visits = Dos visitas así, juntas: { $found }; eso cuenta que la diferencia cambia de un día a otro.
seen = { $size }: { $often }
in-scatter = { $hundredths } % en dispersión
nearly-always = casi siempre
hardly-ever = casi nunca
once-in-10 = 1 vez de cada 10
times-in-10 = { $times } veces de cada 10
same = Si los palos son de verdad iguales, { $often } dirá que lo son (a menos de { $margin }); las demás veces dirá que no se sabe o, como
    mucho 1 vez de cada 20, dirá por error que son diferentes.
spread-given = Como dijiste: unos dos de cada tres golpes con un palo quedan a menos de { $size } de su promedio.
spread-earlier = Como en tu sesión anterior: unos dos de cada tres golpes con un palo quedan a menos de { $size } de su promedio.
spread-usual = Lo habitual entre aficionados (regla práctica entre golfistas, sin ningún estudio detrás): unos dos de cada tres golpes con un palo quedan a menos de { $size } de su promedio. Con
    más dispersión muestra menos.
order-drawn = El orden de cada ciclo se sortea a partir del número { $seed }.
order-balanced = Un ciclo de cada dos va al revés, para que ningún palo sea siempre el primero.
change-after = Cambia de palo cada { $set ->
    [one] golpe
   *[other] { $set } golpes
}: así el calentamiento y el cansancio tocan a todos por igual.
covered-until = La respuesta queda tapada hasta completar los { $rounds } ciclos. Consultarla antes la hace más exigente.
look-after-round = Puedes consultarla tras el ciclo { $round } y parar ahí si la respuesta está clara; lo que eso cuesta ya está contado.
    Consultarla en otro momento hace la respuesta más exigente.
look-after-rounds = Puedes consultarla tras los ciclos { $rounds } y { $last } y parar ahí si la respuesta está clara; lo que eso cuesta ya está
    contado. Consultarla en otro momento hace la respuesta más exigente.
one-club-twice = Las dos etiquetas son el mismo palo, así que la diferencia real es nula.
luck-sets-apart = Solo el azar los separará alrededor de { $size }.
not-called-different = En al menos 19 de cada 20 pruebas así la respuesta no será «diferentes».

no-such-measure = Esta medida no está en la lista.
no-such-measure-remedy = Elige una de la lista.
not-a-margin = La menor diferencia que importa debe ser un número mayor que cero.
look-out-of-range = Se consulta tras los ciclos 2 a { $rounds }.
look-out-of-range-remedy = Quita las consultas anteriores o posteriores.
no-name = Un palo no tiene nombre.
no-name-remedy = Da a cada palo un nombre que reconozcas en el puesto.
how-many-clubs = Una prueba tiene de 2 a { $most } palos, no { $clubs }.
how-many-clubs-remedy = Añade tu palo y otro para compararlo, o usa un solo palo con dos etiquetas.
same-name-twice = Dos palos tienen el mismo nombre.
same-name-twice-remedy = Dales nombres distintos, o elige «el mismo palo dos veces».
not-a-scatter = La dispersión de tus golpes debe ser un número mayor que cero.
not-a-scatter-remedy = Déjala abierta para tomar la habitual.
out-of-range = Un plan tiene de { $least } a { $most } { $part ->
    [set] golpes seguidos
    [rounds] ciclos
   *[warm-up] golpes de calentamiento
}, no { $got }.
out-of-range-remedy = Elige un número entre ellos.

no-such-set = No hay tanda { $set }; el plan tiene { $sets }, contadas desde 0.
no-such-set-remedy = Toma los golpes del registro de este plan.
position = Tanda { $set } de { $sets }, { $club }, golpe { $shot } de { $shots }
all-hit = Los { $rounds } ciclos están dados.
look-is-due = Ahora toca consultar la respuesta. Lo que cuesta ya está contado.
covered-until-all = La respuesta queda tapada hasta completar los { $rounds } ciclos.
covered-until-round = La respuesta queda tapada hasta completar el ciclo { $round }.
over-and-looked = La prueba ha terminado y se ha consultado la respuesta.
over = La prueba ha terminado.
early-planned = El plan no prevé consultarla tras el ciclo { $round }. Puedes hacerlo, y quedará anotado: a esta respuesta y a las siguientes
    se les exigirá más.
early-unplanned = Ningún plan prevé consultarla en este momento. Puedes hacerlo, y quedará anotado: desde ahora a la respuesta se le exige lo
    máximo, como si la hubieras consultado tras cada golpe.
stricter-planned = La consultaste cuando el plan no lo preveía. Por eso se le exige más a la respuesta, para que el azar no pase por un palo.
stricter-unplanned = La consultaste en un momento que ningún plan prevé. Se le exige el nivel de consultar una y otra vez: 99 % en
    lugar de 95 %.
with-club = { $count } con { $club }
mishits = { $shots ->
    [one] 1 golpe anotado como fallo
   *[other] { $shots } golpes anotados como fallo
}: { $counts }. Cuentan: los fallos son parte de lo que hace un palo.
some-club = Palo
labeled = { $club }, etiqueta { $label }

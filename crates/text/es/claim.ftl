no-retest = Lo prometido es { $claimed }. Todavía no se ha vuelto a golpear nada para compararlo.
anything-between = cualquier cosa entre { $low } y { $high }
supported = La promesa se sostiene: se prometieron { $claimed }, la repetición muestra { $span }.
no-gain-at-all = La repetición contradice la promesa: se prometieron { $claimed }, no muestra ninguna ganancia.
contradicted = La repetición contradice la promesa: se prometieron { $claimed }, permite como mucho { $high }.
not-settled = Sin decidir: se prometieron { $claimed }, la repetición permite { $span }.
averages = En la repetición { $candidate } promedió { $candidate-mean } en { $candidate-count } golpes, { $baseline } { $baseline-mean } en { $baseline-count }.
luck-can-mislead-that-far = La promesa no tiene por qué ser inventada: tan pocos golpes, un palo detrás del otro, pueden engañar así.
luck-rarely-misleads-that-far = El azar y el calentamiento rara vez engañan tanto. Otra bola, otro día, otras condiciones o golpes
    apartados sí podrían.
shots-not-said = No se dijo en cuántos golpes se apoyaba la promesa, así que nadie sabe cuánto hay de azar.
luck-alone = Con { $shots ->
    [one] 1 golpe
   *[other] { $shots } golpes
} con cada uno, solo el azar separa dos palos iguales { $size } de media, hacia un lado o hacia el otro.
best-of = El mejor de { $clubs } palos iguales llevaría { $size } de ventaja de media.
equal-clubs-would-show = Entre palos iguales se vería lo prometido, o más, en { $fittings }.
honest = Con una promesa así y nada más, espera aproximadamente { $gap }.
yard = yarda
meter = metro
unit = unidad
no-gain-to-pay-for = A este precio la repetición no muestra ninguna ganancia que pagar.
costs-at-least = Cada { $unit } cuesta al menos { $price }; no hay un máximo, porque la ganancia puede ser nula.
costs-between = Cada { $unit } cuesta entre { $least } y { $most }.
next-supported = Lo que vale para ti lo decides tú.
next-contradicted = Pide golpear los dos palos por turnos, en rondas de tres, antes de decidir.
next-not-settled = Más rondas por turnos lo decidirían: planea una prueba justa.
next-no-retest = Planea una prueba justa, golpea los dos palos por turnos y vuelve con los golpes.

scatter = Una promesa sobre la dispersión no se puede comprobar con promedios.
scatter-remedy = Elige un objetivo sobre promedios, o lee la respuesta sobre la dispersión.
not-a-number = Una parte de la promesa no es un número.
not-a-number-remedy = Escribe solo números.
averages-needed = 'Tanto más recto' no dice desde dónde ni hasta dónde.
averages-needed-remedy = Escribe los dos promedios, la derecha con más y la izquierda con menos.
no-claim = Todavía no hay ninguna promesa.
no-claim-remedy = Escribe los dos promedios, o la ganancia que se prometió.
no-change = La promesa es que no cambia nada.
no-change-remedy = Escribe qué se dijo que cambiaría.

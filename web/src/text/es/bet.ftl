bet-differs = ¿Qué cambia entre los dos?
bet-differs-shaft = La misma cabeza, otra varilla
bet-differs-head = Otra cabeza
bet-differs-old_club = Un palo nuevo frente a uno viejo
bet-differs-unknown = No se ha dicho
bet-dots = Los puntos llenos son lo mínimo; los medio llenos llegan hasta lo máximo.

### Lo que dice el marco en la página de otro alrededor de la página misma.

embed-consent = Qué puede ver el sitio que rodea este marco
embed-agree = Dejar que { $host } vea la respuesta. Tus golpes se quedan en este marco.
embed-shots = Los golpes de esta página
embed-link = Straight Answer (se abre aparte)

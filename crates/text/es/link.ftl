not-a-link = Esto no es un enlace con una sesión o un plan.
not-a-link-remedy = Copia la dirección entera, desde https hasta la última letra.
too-long = Esto es más largo que cualquier enlace.
too-long-remedy = Pide mejor el archivo con los golpes.
later = Este enlace lo hizo una versión más nueva de esta página.
later-remedy = Recarga la página para tener la última versión y vuelve a abrir el enlace.
damaged = Este enlace no está entero: se cortó o cambió por el camino.
damaged-remedy = Copia otra vez la dirección entera de donde se escribió primero, o pídesela de nuevo a quien la envió.
inconsistent = Lo que contiene este enlace no encaja.
inconsistent-remedy = Pide a quien lo envió que lo comparta otra vez.
too-large = Esta sesión es demasiado grande para un enlace.
too-large-remedy = Guárdala como archivo y envía ese.
names-too-long = Los nombres de los palos son demasiado largos para un enlace.
names-too-long-remedy = Acórtalos.
parts-unknown = Este enlace lo hizo una versión más nueva de esta página y lleva algo que esta no conoce. Todo lo demás
    está aquí.
digits-lost = { $measure }: tenía muchas cifras; el enlace guarda siete.

same = Para lo que { $theirs ->
    [yes] busca quien lo envió
   *[no] buscas
}, { $baseline } y { $candidate } se dispersan igual.
same-in-short = Se dispersan igual.
ruled-out = Estos golpes hablan en contra de una diferencia de un { $margin } o más.
cannot-tell = Con estos golpes nadie puede decir si agrupa mejor { $baseline } o { $candidate } en { $measure }.
next-to-nothing = Estos golpes no dicen casi nada de si agrupa mejor { $baseline } o { $candidate } en { $measure }.
no-limits = Tan pocos golpes dejan abierto si uno dispersa muchas veces más que el otro: no dicen casi nada de eso.
cannot-tell-in-short = No se sabe cuál agrupa mejor.
scatters-more = { $club } dispersa más los golpes en { $measure }, entre un { $from } y un { $to } %
is-tighter = { $club } agrupa mejor en { $measure }: sus golpes se dispersan entre un { $from } y un { $to } % menos
line = { $does }.
too-small = Una diferencia real, pero demasiado pequeña para importar: { $does }.
matters = { $does }. Empieza a importar a partir de un { $margin }.
may-matter = { $does }. Aún no se sabe si llega al { $margin } que importa.
deviations = Los golpes se apartan de su promedio { $size } con { $candidate } ({ NUMBER($shots) } golpes) y
    { $other-size } con { $baseline } ({ NUMBER($other-shots) }).
end = un { $hundredths } % { $below ->
    [yes] menos
   *[no] más
}
between = Teniendo en cuenta el azar, los golpes con { $club } pueden dispersarse entre { $low } y { $high } (intervalo del { $level }).
more-than-200 = La dispersión tarda en verse: harían falta más de 200 golpes con cada uno para ver una diferencia de un { $margin } en 8 de
    cada 10 pruebas.
would-show = La dispersión tarda en verse: con unos { NUMBER($shots) } golpes con cada uno, planeados de antemano, una diferencia de
    un { $margin } se ve en 8 de cada 10 pruebas.
size-stays-open = La dispersión tarda en verse: más golpes reducen la duda poco a poco. Si la verdad está cerca de un { $margin }, ningún número de
    golpes decide si llega.
no-limit = sin límite
slow-to-show = La dispersión tarda en verse: pide muchos más golpes que un promedio.

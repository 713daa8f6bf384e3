same = Para lo que buscas, { $baseline } y { $candidate } se dispersan igual.
same-in-short = Se dispersan igual.
ruled-out = Una diferencia de { $margin } o más queda descartada.
cannot-tell = Con estos golpes nadie puede decir si agrupa mejor { $baseline } o { $candidate } en { $measure }.
cannot-tell-in-short = No se sabe cuál agrupa mejor.
scatters-more = { $club } se dispersa más en { $measure }, de un { $from } a un { $to } %
is-tighter = { $club } agrupa mejor en { $measure }: sus golpes se dispersan de un { $from } a un { $to } % menos
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
between = Contando con el azar, { $club } se dispersa entre { $low } y { $high }.
more-than-200 = La dispersión tarda en verse: harían falta más de 200 golpes con cada uno para ver una diferencia de un { $margin }.
would-settle = La dispersión tarda en verse: unos { NUMBER($shots) } golpes con cada uno, planeados de antemano, para ver
    una diferencia de un { $margin }.
slow-to-show = La dispersión tarda en verse: pide muchos más golpes que un promedio.

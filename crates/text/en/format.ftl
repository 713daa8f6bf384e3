shots = { $count ->
    [one] { $count } shot
   *[other] { $count } shots
}
# Two sizes of one unit, which brings its own space: `7 to 15 yd`.
span = { $small } to { $large }{ $unit }
# How often chance does the like.
chance-nearly-all = nearly all { $cases ->
    [fittings] fittings like this
   *[sessions] sessions like this
}
chance-of-ten = about { $count } of 10 { $cases ->
    [fittings] fittings like this
   *[sessions] sessions like this
}
chance-under-one-of-thousand = fewer than 1 of 1,000 { $cases ->
    [fittings] fittings like this
   *[sessions] sessions like this
}
chance-one-of = about 1 of { $count } { $cases ->
    [fittings] fittings like this
   *[sessions] sessions like this
}

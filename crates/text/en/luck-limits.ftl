# How few and how many shots luck can be shown for.
cannot-show = { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
} of each club cannot be shown here.
ask-for = Ask for { $shots }.
ask-for-between = Ask for { $fewest } to { $most }.
add-single-shots = Add the single shots: at least { $fewest } with each club.
no-single-shots = There are no single shots of this measure with { $club }.
only-so-many = There are only { $shots ->
    [one] 1 shot
   *[other] { $shots } shots
} of this measure with { $club }.
no-usable-number = A value with { $club } is no usable number.
not-for-scatter = How far luck reaches is shown for averages, not for scatter.
not-for-scatter-remedy = Choose another goal to see it.
no-scatter = With { $club } every shot has the same { $measure }, so luck has nothing to show.

# What was felt, beside the shots.
no-such-build = There is no club number { $build }.
easier = { $club } felt easier to hit. No number measures that; it counts.
shown = { $club } felt { $feeling ->
    [straighter] straighter
   *[longer] longer
}{ $hint ->
    [yes] ; the shots point that way, but warming up or tiring may play a part.
   *[no] , and the shots show it.
}
opposite = { $club } felt { $feeling ->
    [straighter] straighter
   *[longer] longer
}; { $hint ->
    [yes] the shots point the other way, but warming up or tiring may play a part.
   *[no] the shots show the opposite.
}
same = { $club } felt { $feeling ->
    [straighter] straighter
   *[longer] longer
}; by the shots they are the same for your purpose.
not-shown = { $club } felt { $feeling ->
    [straighter] straighter
   *[longer] longer
}; the shots do not show it.
not-measured = { $club } felt { $feeling ->
    [straighter] straighter
   *[longer] longer
}; these numbers cannot show it.
choose-same = By the shots they are the same for your purpose: choose by feel, look or price.
choose-cannot-tell = The shots cannot tell yet: test again.{ $opposite ->
    [yes] {""}
   *[no] {" "}Until then what you felt is all there is to go by.
}
choose-cannot-tell-bet = The shots cannot tell yet: test again. Until then there is what you felt, and the bet.
choose-too-small = The difference is too small to matter: choose by feel, look or price.
likes-look = You like the look of { $club }.
likes-sound = You like the sound of { $club }.
likes-both = You like the look of { $look } and the sound of { $sound }.

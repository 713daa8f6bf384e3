# What a fitting can show and what it cannot, by how it was done.
headline = { $gap ->
    [the-clubs] This fitting can show what the clubs do, as far as its number of shots goes.
    [something-else-too] This fitting can show a gap, but not that the club made it.
    [choosing] This fitting can show a gap, but part of it may come from choosing.
    [both] This fitting can show a gap, but not that the club made it, and part of it may come from choosing.
    [no-own-club] This fitting says nothing of a gain over your own club.
    [own-club-not-known] Whether your own club was hit is not known, and without it there is no gain to show.
   *[not-all-known] Nothing speaks against this fitting so far, and some of it is not known.
}
shows = { $line ->
    [own-club] Your own club was hit that day: a gap to it can be seen.
    [as-often] As many shots with each: both averages are equally sure.
    [as-warm] Your own club was as warm as the others.
    [in-turn] Hit in turn: warming up, tiring and wind met the clubs alike.
    [alike] Loft, ball, tee and mat alike: none of them made the gap.
    [every-shot] Every shot counted: the averages are of what you do on every swing.
    [number-said] The number of shots was said before: nobody stopped at a lucky moment.
    [hit-again] The chosen club was hit again: what that second try shows owes nothing to the picking.
    [measured] Delivery and strike were measured: a gap can be looked into.
   *[taken-home] You have every shot’s numbers: they can be checked.
}
cannot = { $line ->
    [own-club] Your own club was not hit that day. Numbers of another day, ball or place do not compare.
    [as-often] One club had fewer shots. Its average is the less sure one, and more shots with the other do not mend that.
    [as-warm] Your own club had the cold shots. Part of a gap may be warming up.
    [in-turn] The clubs were hit one after the other. Warming up or tiring alone can set equal clubs about { $size } apart.
    [alike] Loft, ball, tee or mat differed. The gap may be theirs, and open to your own club too.
    [every-shot] Shots were taken out. The averages are of the others, and say nothing of every swing.
    [number-said] The number of shots was not said before. Who stops when it looks good finds gaps between equal clubs too.
    [hit-again] The chosen club was not hit again. The best of several leads a little by luck alone.
    [measured] Delivery or strike were not measured. Why one club went farther cannot be said.
   *[taken-home] You have no numbers of single shots. Nobody can check what was said, nor can you.
}
not-known = { $line ->
    [own-club] whether your own club was hit that day
    [as-often] whether each club had as many shots
    [as-warm] whether your own club was as warm as the others
    [in-turn] whether the clubs were hit in turn
    [alike] whether loft, ball, tee and mat were alike
    [every-shot] whether every shot was kept
    [number-said] whether the number of shots was said before
    [hit-again] whether the chosen club was hit again
    [measured] what was measured of delivery and strike
   *[taken-home] whether you have every shot’s numbers
}
next = { $next ->
    [read-the-shots] Give this page the shots: the answer says how sure they are.
    [read-and-test] Give this page the shots. Then hit both clubs in turn: that tells the club from the rest.
    [test-the-promise] Type in what you were promised: this page says how much of it luck alone can make. Then hit both clubs in turn.
   *[ask-for-numbers] Ask for the numbers of every shot, of your own club too: they are your shots.
}

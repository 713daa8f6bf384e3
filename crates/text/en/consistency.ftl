# Do carry and launch belong together.
all-fit = Carry fits ball speed, launch and spin in all { $shots }.
fit-each-other = The carries fit each other, but not their launches.
some-do-not-fit = In { $count } of { $shots } carry does not fit its own launch.
is-computed = The carry in this file was probably computed, not seen: it follows ball speed, launch and spin too closely for a ball
    that was watched to the ground. It says nothing about ball and wind that the launch does not say.
nothing-was-changed = Nothing was changed. Look the numbers up in the source{ $unit ->
    [yes] , and correct the unit under “Your shots” if it was misread
   *[no] {""}
}.
row = Shot { $number }, { $club }: { $carry } of carry, where its own speed, launch and spin give about { $expected }.
as-a-whole = As a whole the carries are about { $hundredths } % { $shorter ->
    [yes] shorter
   *[no] longer
} than their launches fly in ordinary air.
speed-and-carry-in = ball speed is in { $speed } and carry in { $carry }
speed-in = ball speed is in { $speed }
carry-in = carry is in { $carry }
story-or = { $list }, or if { $story }
would-fit = It would fit if { $stories }.

# What a ball speed could carry.
best-third = Your best third
band = launch { $launch-low } to { $launch-high }, spin { $spin-low } to { $spin-high }
now = Carries { $carry } at { $speed }, { $launch } and { $spin } ({ $shots }).
no-better-launch = Launch: nothing to gain; it is within { $flat } of the best.
better-launch = Launched at { $launch }{ $at-edge ->
    [yes] , as far as this page looks,
   *[no] {""}
} with its own spin: about { $gain } more.
no-better-spin = Spin: nothing to gain; it is within { $flat } of the best.
better-spin = With { $spin }{ $at-edge ->
    [yes] , as far as this page looks,
   *[no] {""}
} at its own launch: about { $gain } more.
already-best = Already as far as this ball speed goes ({ $band }), to { $flat }.
both-at-their-best = Both at their best ({ $band }): about { $gain } more.
clubs-changed = The clubs in this session changed average carry by at most { $size }.
nothing-unused = With { $club } this ball speed already carries about as far as its launch and spin allow.
unused = With { $club } about { $size } of carry lie unused in the { $in-launch ->
    [yes] launch
   *[no] spin
} alone.
looks-like-an-iron = This looks like an iron or a wedge, where height and stopping count as much as carry: read it as physics, not as
    a goal.
ask-a-coach = Launch and spin come from the club and from how it arrives: tee height, where on the face it strikes, attack angle. Ask a
    coach before buying for it.
map = A map of carry at { $speed }: launch from { $launch-low } to { $launch-high } across, spin from { $spin-low } to { $spin-high } upward.
    Lines of equal carry up to { $top }.
group-said = { $group }: { $now } { $launch } { $spin } { $best }
caution-modeled = Modeled, to about 3 % of carry: a small gain is a direction, not a promise.
caution-together = Launch and spin do not change alone: more loft gives both, and costs a little ball speed.
caution-flat = The best is flat: anything in the band is as good.
caution-flattered = The best third were chosen because they flew far, so what they carry now is flattered.
caution-not-all = Farther is not all: a higher flight suffers more in the wind, and less spin stops later.

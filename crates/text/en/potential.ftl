# What a ball speed could carry.
best-third = Your best third
band = launch { $launch-low } to { $launch-high }, spin { $spin-low } to { $spin-high }
now = Carries { $carry } at { $speed }, { $launch } and { $spin } ({ $shots }).
gain-none = nothing to gain
gain-not-named = more; how much is not named
gain-alone = about { $gain } more
gain-both = up to { $gain } more
gain-range = { $low } to { $high } more
no-better-launch = Launch: nothing to gain; it is within { $flat } of the best.
better-launch = Launched at { $launch } with its own spin: about { $gain } more.
edge-of-launch = Launch: { $higher ->
    [yes] a higher one
   *[no] a lower one
} would carry farther, up to { $launch } and perhaps beyond, where this page does not look; by how much is not named.
no-better-spin = Spin: nothing to gain; it is within { $flat } of the best.
better-spin = With { $spin } at its own launch: about { $gain } more.
edge-of-spin = Spin: { $more ->
    [yes] more of it
   *[no] less of it
} would carry farther, up to { $spin } and perhaps beyond, where this page does not look; by how much is not named.
already-best = Already as far as this ball speed goes ({ $band }), to { $flat }.
both-at-their-best = Both at their best ({ $band }): about { $gain } more.
edge-of-both = Both at their best: that lies where this page stops looking ({ $band }), so no gain is named.
clubs-changed = The clubs in this session changed average carry by at most { $size }.
nothing-unused = With { $club } this ball speed already carries about as far as its launch and spin allow.
unused = With { $club } about { $size } of carry lie unused in the { $in-launch ->
    [yes] launch
   *[no] spin
} alone.
unused-at-edge = With { $club } { $direction ->
    [higher-launch] a higher launch
    [lower-launch] a lower launch
    [more-spin] more spin
   *[less-spin] less spin
} alone would carry farther. The best lies where this page stops looking, so no gain is named.
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

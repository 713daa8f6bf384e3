# What to write down for every shot, and why.
needed = The test is about it: without it there is no answer.
why = { $measure ->
    [club_speed] Tells the club from the swing: a club swung faster that day goes farther whatever its shaft.
    [ball_speed] Shows whether a gap in carry comes from speed or from the flight.
    [strike_offset] Toe or heel costs speed and curves the ball; without it a better strike looks like a better club.
    [strike_height] High or low on the face changes launch and spin, more than most shafts do by a golfers’ rule of thumb; no study behind it.
    [launch_angle] With spin it says what this ball speed could have carried.
    [spin_rate] With launch it says what this ball speed could have carried.
   *[offline] Farther is no gain if it is also wilder.
}
# What to mind before swinging.
warm-up = Warm up until you swing as usual; the first balls do not count.
rest = Rest between sets. A tired swing tests your legs, not the clubs.
stop = Stop at once if anything hurts. An answer can wait, a back cannot.
room = Use a bay with room for the longest club and nobody within reach; let others know before you swing.
# What is to be the same with every club.
alike = Keep everything else alike: the same ball, the same tee height, mat or grass and not both, and the same aim with every club.
of-each-club = Write down each club’s loft, length, lie and grip. If they differ in more than what you want to test, the answer is about all of it
    together.
outdoors = Outdoors: nobody down the range while you swing; leave at the first thunder; in the heat drink, keep to the shade and cut the session short.
# When it is too much for one day.
split-over-days = { NUMBER($balls) } balls in about { $minutes } minutes are too much for one day: split them over { $days } days, each of whole laps, warmed up
    anew. More than 100 balls or 90 minutes tire most golfers: a golfers’ rule of thumb, no study behind it.

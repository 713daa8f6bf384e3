# What to write down for every shot, and why.
needed = The test is about it: without it there is no answer.
why = { $measure ->
    [club_speed] Tells the club from the swing: a club swung faster that day goes farther whatever its shaft.
    [ball_speed] Shows whether a gap in carry comes from speed or from the flight.
    [strike_offset] Toe or heel costs speed and curves the ball; without it a better strike looks like a better club.
    [strike_height] High or low on the face changes launch and spin more than most shafts do.
    [launch_angle] With spin it says what this ball speed could have carried.
    [spin_rate] With launch it says what this ball speed could have carried.
   *[offline] Farther is no gain if it is also wilder.
}
# What to mind before swinging.
warm-up = Warm up until you swing as usual; the first balls do not count.
rest = Rest between sets. A tired swing tests your legs, not the clubs.
stop = Stop at once if anything hurts. An answer can wait, a back cannot.
room = Use a bay with room for the longest club and nobody within reach; let others know before you swing.

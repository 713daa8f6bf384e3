### How far luck reaches.

luck-help = With these very shots: what a few of them, shown alone, would have said.
luck-shown = Shots shown with each club
luck-chosen = How they were chosen
luck-in_a_row = In a row, as hit
luck-picked = Any, picked
luck-every = With every shot
luck-nearer = nearer to zero
luck-farther = farther from zero
luck-all = all shots { $gap }
luck-reach-best = best { $count }: { $gap }
luck-reach-highest = highest { $count }: { $gap }
luck-hill = Hill: how often luck alone sets two equal clubs this far apart, { n-shots } each.
luck-colored = Colored: { $margin } or more, for the club of that color.
luck-lines-best = Lines: how far the best { $count } of a club reach against the worst { $count } of the other.
luck-lines-highest = Lines: how far the highest { $count } of a club reach against the lowest { $count } of the other.

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
luck-deal = Deal { n-shots } each
luck-deal-again = Deal again
luck-more = With { n-shots } each
luck-hill = Hill: how often luck alone sets two equal clubs this far apart, { n-shots } each; below it what you dealt, and how far the best choices reach.
luck-hill-colored = Hill: how often luck alone sets two equal clubs this far apart, { n-shots } each, colored from { $margin } on; below it what you dealt, and how far the best choices reach.

### Where they land, club or swing, what could be carried, before and after, the weather.

## The golfer’s hand

hand = You play
hand-right = Right-handed
hand-left = Left-handed

## Where they land

aim = Aim
aim-day = Aimed as on the day
aim-left = Aimed { $size } left of that
aim-right = Aimed { $size } right of that
aim-as-on-the-day = As on the day
aim-best = Best for { $club }
short-left = { $size } L
short-right = { $size } R
landing-caption = { $unit ->
    [m] Meters
   *[yd] Yards
} from the tee and to each side. Drag the aim line, or step it with the arrow keys: the shots move with it.
fairway-width = Width of the fairway

## Club or swing

belongs-swing = The swing that day
belongs-both = Club and swing together
belongs-unexplained = Not explained
cause-rests = What each part rests on
cause-swing = How the club came to the ball
cause-spin = What that does to spin and curve, roughly
cause-spin-note = From a rigid head and a rolling ball, right to about 30 %: it says which way and which is larger, not how much.
cause-unmeasured = What was not measured
cause-shorter = { $club } shorter
cause-longer = longer
cause-caption = { $unit ->
    [m] Meters
   *[yd] Yards
} of carry. The parts add up to the gap; the thin line is where each part may truly lie.
cause-gap = The gap in these shots
part-inner = of it: { $name }

## What the ball speed could carry

potential-map = The map of launch and spin
gains-caption = Carry in { $unit } to be gained at the same ball speed: the full bar with launch or spin alone, the thin end with both.
map-for = The map for the ball speed of
potential-before = Before anything is changed
potential-best = Within { $size } of the best
potential-caption = Carry in { $unit } at { $speed } of ball speed, as modeled. Each small mark is a shot at its own launch and spin, the large one the average.
axis-launch = Launch angle
axis-spin = Spin, rpm

## Before and after

before = before
after = after
change-kind = What changed
change-by-shot = From one shot on
change-as-in-file = As in the file
change-from = From
change-to = To
change-first = First shot after the change
change-called-before = Called before it
change-called-after = Called after it
change-club = The club
change-condition = { $before } to { $after }
change-interaction = Did the club do more after it than before?
change-bars = Bars for { $measure }. { $each }
change-bar = { $name }: { $value }, from { $low } to { $high }.
change-caption = The bar is what these shots show, the thin line where the truth may lie.

## The weather

temperature = Temperature
temperature-hint = 15 °C when empty
altitude_ft = Height above the sea, { $unit }
altitude_ft-hint = 0 when empty
wind_helping_mph = Wind from behind, { $unit }
wind_helping_mph-hint = minus for a wind in the face
wind_to_right_mph = Wind to the right, { $unit }
wind_to_right_mph-hint = minus for a wind to the left
temperature-in = Temperature in
weather-answer = The answer in standard air, modeled

## Whether carry and launch belong together

consistency-note = Each carry is held against the flight of its own ball speed, launch and spin, beside what is usual in this session.

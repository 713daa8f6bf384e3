### The start: the ways in, and a picture that plays once.

start-ways = Ways in
start-shots = I have shots
start-shots-line = Paste them, a photo, a file, or type
start-claim = I was promised distance
start-claim-line = Type the number: what is it worth?
start-fair = I want to test
start-fair-line = A plan, and each shot logged
start-fitting = I am going to a fitting
fitting-title = Going to a fitting
fitting-line = What a fair one looks like, to take along
book-title = The book
book-line = People, visits and answers kept here
start-try = Or look at an invented session:
start-try-fair = equal drivers
start-try-twelve = one longer
start-try-floor = at the shop
live-first = Five shots with each: { $gap }. Real?
live-second = Five others with each: { $gap }. So which?
live-all = All thirty with each: { $gap }. In truth they are equal.
live-dealing = { $count } with each …
live-invented = Two equal clubs. The shots are invented.
live-alternative = Invented shots of two equal clubs, dealt in hands. { $first } { $second } { $all }

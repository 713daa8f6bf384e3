# Between whole digits and the others.
decimal = .
# Between thousands.
thousands = ,
# The shortest number whose thousands are set apart, as an example.
least-digits-grouped = 1000

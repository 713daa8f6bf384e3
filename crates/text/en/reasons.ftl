# Why a shot was left out, where the reason given is one of those that golfers usually name.
kind = { $kind ->
    [mishit] mishit
    [thin] thin
    [fat] fat
    [topped] topped
    [shanked] shanked
    [skied] skied
    [toe] off the toe
    [heel] off the heel
    [slip] slip of the keys
    [wrong-club] wrong club
    [fault] fault of ball or reading
   *[other] other reason
}

### What lies on this device, and emptying it.

kept-persistent = The browser has promised not to clear it by itself.
kept-not-persistent = The browser may clear it when the device runs out of room: save a copy now and then.
forget-everything = Forget everything on this device
forget-all = This goes: { $all }.
forget-help = Nothing of it can be brought back, save from a copy that you saved.
forget-yes = Yes, forget all of it
kept-people = { $count ->
    [one] one person
   *[other] { $count } people
  }
kept-visits = { $count ->
    [one] one visit
   *[other] { $count } visits
  }
kept-sessions = { $count ->
    [one] one session
   *[other] { $count } sessions
  }
kept-tests = { $count ->
    [one] one test
   *[other] { $count } tests
  }
kept-claims = { $count ->
    [one] one claim
   *[other] { $count } claims
  }
kept-shots = { $count ->
    [one] one logged shot
   *[other] { $count } logged shots
  }

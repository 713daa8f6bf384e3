### What lies on this device, and emptying it.

kept-persistent = The browser has promised not to clear it by itself.
kept-not-persistent = The browser may clear it when the device runs out of room: save a copy now and then.
forget-everything = Forget everything on this device
forget-all = This goes: { $tests ->
    [one] one test
   *[other] { $tests } tests
  }, { $sessions ->
    [one] one session
   *[other] { $sessions } sessions
  }, { $visits ->
    [one] one visit
   *[other] { $visits } visits
  }, { $people ->
    [one] one person
   *[other] { $people } people
  }, { $claims ->
    [one] one claim
   *[other] { $claims } claims
  }.
forget-help = Nothing of it can be brought back, save from a copy that you saved.
forget-yes = Yes, forget all of it

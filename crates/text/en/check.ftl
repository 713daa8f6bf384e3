# Why a request cannot be answered, and what to do.
too-many-builds = There are { $builds } clubs; a session can hold at most { $most }.
too-many-builds-remedy = Check which column names the club, or leave some of them out.
no-such-build = There is no club number { $build }; there are { $builds }, counted from 0.
no-such-build-remedy = Name a club that is in the session.
same-build-twice = A club cannot be compared with itself.
same-build-twice-remedy = Choose another candidate, or leave it open.
no-such-measure = There is no measure called { $measure }.
no-such-measure-remedy = Choose a measure that the session has.
not-a-margin = The smallest difference that matters must be a number, zero or more.
not-a-margin-remedy = Enter a size without a sign, or leave it open for the usual one.
not-a-ratio = For the goal “tighter” the margin is a ratio of scatters, and must be above 1.
not-a-ratio-remedy = Enter 1.25 for a quarter, or leave it open for the usual one.
not-a-plan = A plan has 2 to { $most } laps, not { $rounds }.
not-a-plan-remedy = Enter the number of laps that was planned, or say that it was not fixed.

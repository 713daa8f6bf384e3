# Reference values of random effects with a half-normal prior on the deviation between sessions, by adaptive quadrature:
# python3 21_day_to_day.py (numpy, scipy). The effects are those of 15_meta_analysis.json.
import json

import numpy as np
import scipy
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.stats import norm

given = {case["id"]: case for case in json.load(open("15_meta_analysis.json"))["cases"]}
cases = []


def figures(y, v, usual):
    y, v = np.asarray(y, float), np.asarray(v, float)

    def parts(tau):
        w = 1 / (v + tau**2)
        mean = np.sum(w * y) / np.sum(w)
        log = 0.5 * (np.sum(np.log(w)) - np.log(np.sum(w)) - np.sum(w * (y - mean) ** 2)) - 0.5 * (tau / usual) ** 2
        return log, mean, 1 / np.sum(w)

    grid = np.linspace(0, 12 * usual + 4 * np.ptp(y), 20001)
    logs = np.array([parts(t)[0] for t in grid])
    peak, top = grid[np.argmax(logs)], np.max(logs)
    last = grid[np.max(np.nonzero(logs > top - 60))]
    whole = lambda f: sum(
        quad(lambda t: np.exp(parts(t)[0] - top) * f(t), a, b, epsabs=1e-15, epsrel=1e-13, limit=800)[0]
        for a, b in ((0, peak), (peak, (peak + last) / 2), ((peak + last) / 2, last)) if b > a
    )
    mass = whole(lambda t: 1.0)
    mean = lambda f: whole(f) / mass
    sd = lambda t: parts(t)[2] ** 0.5
    ahead = lambda t: (parts(t)[2] + t**2) ** 0.5
    tail = lambda x, s, sign: mean(lambda t: norm.sf(sign * (x - parts(t)[1]) / s(t)))
    wide = 60 * max(np.sqrt(v.max()), usual, np.ptp(y) + 1e-9)
    low, high = y.min() - wide, y.max() + wide
    end = lambda s, sign: brentq(lambda x: tail(x, s, sign) - 0.025, low, high, xtol=1e-13, rtol=1e-14)
    return dict(
        mean=mean(lambda t: parts(t)[1]),
        between=mean(lambda t: t),
        above=tail(0.0, sd, 1),
        interval=[end(sd, -1), end(sd, 1)],
        next_day=[end(ahead, -1), end(ahead, 1)],
    )


def add(name, source, y, v, usual):
    cases.append(
        dict(
            id=name,
            source=source,
            kind="computed-by-reference-library",
            how="tests/reference/stats/21_day_to_day.py: scipy quad over the deviation, brentq for the ends",
            input=dict(effect=list(y), variance=list(v), usual=usual),
            expected=figures(y, v, usual),
            tolerance=dict(rel=1e-8, abs=1e-9),
        )
    )


for name, case in given.items():
    y, v = case["input"]["effect"], case["input"]["variance"]
    add(name, case["source"], y, v, 0.5 * float(np.std(y)) + 0.1)
add("two_days", "the definition, invented effects", [4.0, 11.0], [9.0, 16.0], 5.0)
add("five_days", "the definition, invented effects", [4.0, 11.0, 7.5, 6.0, -1.0], [9.0, 16.0, 9.0, 12.0, 10.0], 5.0)
add("one_day", "the definition, an invented effect", [4.0], [9.0], 5.0)
add("days_far_apart", "the definition, invented effects", [-30.0, 40.0], [4.0, 4.0], 5.0)
json.dump(
    dict(
        method="random effects, half-normal prior on the deviation between sessions",
        conventions=dict(usual="scale of the half-normal", above="chance that the mean lies above 0", interval="equal tails, 95 %"),
        library_versions=dict(numpy=np.__version__, scipy=scipy.__version__),
        cases=cases,
    ),
    open("21_day_to_day.json", "w"),
    indent=1,
)

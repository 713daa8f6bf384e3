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


BOTH, CANDIDATE, BASELINE = [1, 0], [1, 1], [0, 1]


def figures(y, v, usual, weighed=None, rows=None):
    y, v = np.asarray(y, float), np.asarray(v, float)
    weighed = v if weighed is None else np.asarray(weighed, float)
    # Columns: candidate - baseline, and baseline - control where a control is used.
    x = np.asarray(rows or [BOTH] * len(y), float)
    if not x[:, 1].any():
        x = x[:, :1]

    def fit(tau):
        w = 1 / (weighed + tau**2)
        inverse = np.linalg.inv(x.T @ (w[:, None] * x))
        all_counts = inverse @ (x.T * w)
        apart = np.sum(w * (y - x @ (all_counts @ y)) ** 2)
        log = 0.5 * (np.sum(np.log(w)) + np.log(np.linalg.det(inverse)) - apart) - 0.5 * (tau / usual) ** 2
        return log, all_counts[0]

    def parts(tau):
        log, counts = fit(tau)
        return log, np.sum(counts * y), np.sum(counts**2 * (v + tau**2))

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
    own = len(v) / np.sum(1 / v)
    more = lambda t: (1 / (1 / parts(t)[2] + 1 / (own + t**2))) ** 0.5
    end = lambda s, sign: brentq(lambda x: tail(x, s, sign) - 0.025, low, high, xtol=1e-13, rtol=1e-14)
    return dict(
        mean=mean(lambda t: parts(t)[1]),
        between=mean(lambda t: t),
        above=tail(0.0, sd, 1),
        interval=[end(sd, -1), end(sd, 1)],
        next_day=[end(ahead, -1), end(ahead, 1)],
        one_more=[end(more, -1), end(more, 1)],
        counts=[mean(lambda t: fit(t)[1][i]) for i in range(len(y))],
    )


def add(name, source, y, v, usual, weighed=None, between=None):
    rows = [dict(both=BOTH, candidate=CANDIDATE, baseline=BASELINE)[held] for held in between] if between else None
    more = (dict(weighed=list(weighed)) if weighed else {}) | (dict(between=list(between)) if between else {})
    cases.append(
        dict(
            id=name,
            source=source,
            kind="computed-by-reference-library",
            how="tests/reference/stats/21_day_to_day.py: scipy quad over the deviation, brentq for the ends",
            input=dict(effect=list(y), variance=list(v), usual=usual, **more),
            expected=figures(y, v, usual, weighed, rows),
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
add("blocked_days_weigh_less", "the definition, invented effects", [4.0, 11.0, 7.5], [9.0, 16.0, 9.0], 5.0, weighed=[9.0, 50.0, 36.0])
add("a_control", "the definition, invented effects", [84.0, 74.0, 80.0, 77.0], [9.0, 16.0, 9.0, 12.0], 5.0, between=["candidate", "baseline", "candidate", "baseline"])
add("a_control_beside_both", "the definition, invented effects", [84.0, 74.0, 5.0], [9.0, 16.0, 9.0], 5.0, weighed=[9.0, 16.0, 30.0], between=["candidate", "baseline", "both"])
json.dump(
    dict(
        method="random effects, half-normal prior on the deviation between sessions",
        conventions=dict(usual="scale of the half-normal", above="chance that the mean lies above 0", interval="equal tails, 95 %", one_more="the same with one more day, as exact as the harmonic mean of these", weighed="what a session is weighed by instead of its variance", between="which build is held against the control, or both against each other"),
        library_versions=dict(numpy=np.__version__, scipy=scipy.__version__),
        cases=cases,
    ),
    open("21_day_to_day.json", "w"),
    indent=1,
)

"""The same computations by scipy and statsmodels, on the same numbers; run by `cargo xtask bench` in a Python of its own.

Argument: the folder with numbers.json. Prints a JSON object: versions, `times` (milliseconds, the median and the least of
many runs, by name) and `results`. The vectorized form is timed where a package has one: it is the faster.
"""

import json
import pathlib
import platform
import sys
import time

import numpy
import pandas
import scipy
import statsmodels
import statsmodels.api
import statsmodels.formula.api
from scipy import stats

numbers = json.loads((pathlib.Path(sys.argv[1]) / "numbers.json").read_text())
candidate, baseline, y = (numpy.array(numbers[name]) for name in ("candidate", "baseline", "y"))
design = statsmodels.api.add_constant(numpy.array(numbers["columns"]).T)
shots = pandas.DataFrame({"carry": y, "build": numbers["builds"], "round": numbers["rounds"]})
draws, seed = numbers["draws"], numbers["seed"]


def gap(one, other, axis):
    return numpy.mean(one, axis=axis) - numpy.mean(other, axis=axis)


def permutation():
    found = stats.permutation_test((candidate, baseline), gap, vectorized=True, n_resamples=draws, rng=seed)
    return [found.statistic, found.pvalue]


def bootstrap():
    both = (candidate, baseline)
    found = stats.bootstrap(both, gap, vectorized=True, n_resamples=draws, method="BCa", rng=seed)
    interval = found.confidence_interval
    return [gap(candidate, baseline, 0), found.standard_error, interval.low, interval.high]


def welch():
    found = stats.ttest_ind(candidate, baseline, equal_var=False)
    interval = found.confidence_interval()
    return [gap(candidate, baseline, 0), found.pvalue, interval.low, interval.high]


def ols():
    fit = statsmodels.api.OLS(y, design).fit()
    return [value for term in zip(fit.params, fit.bse, fit.pvalues) for value in term]


def ols_formula():
    """As most people write it: the same model from a table of shots."""
    fit = statsmodels.formula.api.ols("carry ~ C(build) + C(round)", shots).fit()
    return [value for term in zip(fit.params, fit.bse, fit.pvalues) for value in term]


def timed(runs, at_once, call):
    call()
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        for _ in range(at_once):
            call()
        times.append((time.perf_counter() - start) * 1000 / at_once)
    times.sort()
    return {"median": times[runs // 2], "least": times[0]}


RUNS = {
    permutation: (9, 1),
    bootstrap: (9, 1),
    welch: (30, 20),
    ols: (30, 20),
    ols_formula: (30, 1),
}
print(
    json.dumps(
        {
            "versions": {
                "Python": platform.python_version(),
                "numpy": numpy.__version__,
                "scipy": scipy.__version__,
                "statsmodels": statsmodels.__version__,
            },
            "times": {call.__name__: timed(runs, at_once, call) for call, (runs, at_once) in RUNS.items()},
            "results": {call.__name__: [float(value) for value in call()] for call in RUNS},
        }
    )
)

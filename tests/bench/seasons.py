# Sessions a second in Python on one core, of a folder of invented files: the package, and a script of pandas, scipy and
# statsmodels that asks each file the same question (the gap within laps and Welch's test) and pools the gaps.
import json
import sys
import time
from pathlib import Path

import numpy as np
import pandas
import statsmodels.api as sm
import straight_answer
from scipy.stats import ttest_ind
from statsmodels.stats.meta_analysis import combine_effects

paths = sorted(Path(sys.argv[1]).iterdir())


def by_hand(path):
    shots = pandas.read_csv(path)
    new = (shots["Club"] == "Driver B").to_numpy(float)
    laps = pandas.get_dummies(shots["Lap"], dtype=float).to_numpy()
    carry = shots["Carry (yd)"].to_numpy()
    fit = sm.OLS(carry, np.column_stack([new, laps])).fit()
    low, high = fit.conf_int()[0]
    welch = ttest_ind(carry[new == 1], carry[new == 0], equal_var=False)
    return fit.params[0], fit.bse[0], low > 0 or high < 0, welch.pvalue


def scripted(paths):
    found = np.array([by_hand(path) for path in paths])
    return combine_effects(found[:, 0], found[:, 1] ** 2, method_re="iterated", use_t=True)


def packaged(paths):
    season = straight_answer.Season()
    season.add_paths(paths, threads=1)
    return season.answer()


def rate(judge, paths):
    judge(paths[:20])
    start = time.perf_counter()
    found = judge(paths)
    return len(paths) / (time.perf_counter() - start), found


package, season = rate(packaged, paths)
script, pooled = rate(scripted, paths[:300])
# The same sessions say about the same: neither is timed on something else.
few = packaged(paths[:300])["brings"]
assert abs(few["mean"]["value"] - pooled.mean_effect_re) < 0.2, (few["mean"], pooled.mean_effect_re)
assert season["sessions"] == len(paths)
print(json.dumps({"package": package, "script": script}))

# Random effects by Paule and Mandel, their Q profile and Hartung-Knapp errors: python3 25_true_effects.py (statsmodels, scipy).
import json

import numpy as np
import scipy
import statsmodels
from scipy.optimize import brentq
from scipy.stats import chi2, norm, t
from statsmodels.stats.meta_analysis import combine_effects

SPREADS, MEANS = 48, 40
HERE = "tests/reference/stats/25_true_effects.py"


def profile(y, v, tau2):
    w = 1 / (v + tau2)
    mu = np.sum(w * y) / np.sum(w)
    return float(np.sum(w * (y - mu) ** 2)), float(mu), float(1 / np.sum(w))


def spread_with(y, v, q):
    if profile(y, v, 0.0)[0] <= q:
        return 0.0
    high = 1.0
    while profile(y, v, high)[0] > q:
        high *= 2
    return brentq(lambda x: profile(y, v, x)[0] - q, 0, high, xtol=1e-15 * high, rtol=1e-15, maxiter=500)


def log_odds_ratios(tables):
    a, b, c, d = np.array(tables, float).T
    return np.log(a * d / (b * c)), 1 / a + 1 / b + 1 / c + 1 / d


def case(name, source, kind, y, v, published=None, notes=None):
    y, v = np.asarray(y, float), np.asarray(v, float)
    df = len(y) - 1
    fit = combine_effects(y, v, method_re="iterated", atol=1e-9, maxiter=2000)
    tau2 = spread_with(y, v, df)
    q, mu, variance = profile(y, v, tau2)
    # statsmodels iterates to the same; where it lets the spread fall below zero ours stays at zero.
    if tau2 > 0:
        assert abs(fit.tau2 / tau2 - 1) < 1e-8, (name, fit.tau2, tau2)
        assert abs(fit.mean_effect_re / mu - 1) < 1e-9
        assert abs(fit.sd_eff_w_re_hksj / np.sqrt(q / df * variance) - 1) < 1e-8
    parts = []
    for i in range(SPREADS):
        x = spread_with(y, v, chi2.isf((i + 0.5) / SPREADS, df))
        parts.append((x, *profile(y, v, x)[1:]))
    x, m, s = np.array(parts).T
    mixture = lambda at: float(np.mean(norm.sf((at - m) / np.sqrt(s + x))))
    wide = 60 * np.sqrt(np.max(s + x))
    end = lambda tail: brentq(lambda at: mixture(at) - tail, np.min(m) - wide, np.max(m) + wide, xtol=1e-13, rtol=1e-14)
    margin = float(np.mean(y)) + 0.3
    z = norm.isf((np.arange(MEANS) + 0.5) / MEANS)
    lead = m[:, None] + np.sqrt(s)[:, None] * z[None, :] - margin
    sd = np.sqrt(x)[:, None] + 0 * lead
    with np.errstate(divide="ignore"):
        shares = np.where(sd > 0, norm.sf(-lead / np.where(sd > 0, sd, 1)), lead > 0).ravel()
    shares.sort()
    out = int(0.025 * len(shares))
    kept = x / (x + v[0])
    pulled = kept * y[0] + (1 - kept) * m
    spread = kept * v[0] + (1 - kept) ** 2 * s
    made = dict(
        id=name,
        source=source,
        kind=kind,
        how=f"{HERE}: statsmodels {statsmodels.__version__} combine_effects(y, v, method_re='iterated', atol=1e-9); profile and parts by scipy",
        input=dict(effect=y.tolist(), variance=v.tolist(), margin=margin),
        expected=dict(
            tau=float(np.sqrt(tau2)),
            mean=mu,
            se=float(np.sqrt(variance)),
            hartung_knapp_se=float(np.sqrt(q / df * variance)),
            tau_interval=[float(np.sqrt(spread_with(y, v, chi2.isf(p, df)))) for p in (0.025, 0.975)],
            next=[end(0.975), end(0.025)],
            share=float(shares.mean()),
            share_interval=[float(shares[out]), float(shares[-1 - out])],
            first_pulled=float(pulled.mean()),
            first_pulled_sd=float(np.sqrt(spread.mean() + pulled.var())),
        ),
        tolerance=dict(rel=1e-8, abs=1e-8),
    )
    if published:
        got = dict(made["expected"], tau2_interval=[e**2 for e in made["expected"]["tau_interval"]])
        for key, (value, digits) in published["values"].items():
            near = np.max(np.abs(np.asarray(got[key]) - np.asarray(value)))
            # One unit of the last digit: roots are printed as exact as the solver left them.
            assert near <= 10.0**-digits, (name, key, got[key], value)
        made["published"] = dict(
            source=published["source"], values={key: value for key, (value, _) in published["values"].items()}
        )
    if notes:
        made["notes"] = notes
    return made


bcg = [
    (4, 119, 11, 128), (6, 300, 29, 274), (3, 228, 11, 209), (62, 13536, 248, 12619), (33, 5036, 47, 5761),
    (180, 1361, 372, 1079), (8, 2537, 10, 619), (505, 87886, 499, 87892), (29, 7470, 45, 7232),
    (17, 1699, 65, 1600), (186, 50448, 141, 27197), (5, 2493, 3, 2338), (27, 16886, 29, 17825),
]
clasp = [
    (a, n1 - a, c, n2 - c)
    for a, n1, c, n2 in zip(
        (5, 5, 12, 69, 9, 313), (156, 303, 565, 1570, 103, 4659), (8, 17, 9, 94, 11, 352), (74, 303, 477, 1565, 105, 4650)
    )
]
diuretics = [
    (14, 117, 14, 122), (21, 364, 17, 117), (14, 43, 24, 24), (6, 32, 18, 22), (12, 999, 35, 725),
    (138, 1232, 175, 1161), (15, 491, 20, 504), (6, 102, 2, 101), (65, 88, 40, 62),
]
cases = [
    case(
        "bcg-vaccine", "Colditz and others, JAMA 271 (1994), 698-702: log odds ratios of 13 trials", "published",
        *log_odds_ratios(bcg),
        dict(
            source="metafor-project.org, analyses:vanhouwelingen2002: confint(res) by the Q-profile method",
            values=dict(tau2_interval=([0.1302, 1.1812], 4)),
        ),
    ),
    case(
        "clasp-aspirin", "DerSimonian and Kacker, Contemporary Clinical Trials 28 (2007), 105-114: log odds ratios of 6 trials",
        "published", *log_odds_ratios(clasp),
        dict(
            source="the same, tables 3 and 4, Paule-Mandel; repeated by metafor's test_analysis_example_dersimonian2007",
            values=dict(tau=(0.3681, 4), mean=(-0.3811, 4), se=(0.2060, 4)),
        ),
    ),
    case(
        "diuretics-in-pregnancy", "Collins, Yusuf and Peto, BMJ 290 (1985), 17-23: log odds ratios of 9 trials", "published",
        *log_odds_ratios(diuretics),
        dict(
            source="Viechtbauer, Statistics in Medicine 26 (2007), 37-52, table II, Q profile; repeated by metafor's test_analysis_example_viechtbauer2007a",
            values=dict(tau2_interval=([0.072, 2.203], 3)),
        ),
    ),
    case(
        "alike", "made-up: five sessions nearer to each other than their errors", "computed-by-reference-library",
        [2.0, 4.0, 5.0, 6.0, 8.0], [9.0, 7.0, 9.0, 12.0, 8.0],
    ),
    case(
        "two", "made-up: two sessions far apart", "computed-by-reference-library", [-3.0, 12.5], [4.0, 9.0],
    ),
]
versions = dict(numpy=np.__version__, scipy=scipy.__version__, statsmodels=statsmodels.__version__)
print(json.dumps(dict(method="random effects over many sessions", library_versions=versions, cases=cases), indent=1))

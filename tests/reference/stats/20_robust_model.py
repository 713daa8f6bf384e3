# Reference values of Huber's M-estimate from statsmodels' RLM: python3 20_robust_model.py (numpy, statsmodels).
# The fit is run to the last bit (tol 1e-14), because the default stops at 1e-8.
import json

import numpy as np
import statsmodels
import statsmodels.api as sm

cases = []


def add(case, source, y, columns):
    y = np.asarray(y, float)
    x = sm.add_constant(np.column_stack([np.asarray(c, float) for c in columns]))
    fit = sm.RLM(y, x, M=sm.robust.norms.HuberT(1.345)).fit(maxiter=5000, tol=1e-14, conv="coefs", cov="H1")
    cases.append(
        dict(
            id=case,
            source=source,
            kind="computed-by-reference-library",
            how="tests/reference/stats/20_robust_model.py: statsmodels RLM, HuberT(1.345), scale by the median absolute deviation, covariance H1",
            input=dict(y=y.tolist(), columns=[list(map(float, c)) for c in columns]),
            expected=dict(coef=fit.params.tolist(), se=fit.bse.tolist(), scale=float(fit.scale), weights=fit.weights.tolist()),
            tolerance=dict(rel=1e-7),
        )
    )


stack = sm.datasets.stackloss.load_pandas().data
add(
    "stackloss",
    "Brownlee (1965), Statistical Theory and Methodology in Science and Engineering: the stack loss data, as in R datasets::stackloss",
    stack["STACKLOSS"],
    [stack["AIRFLOW"], stack["WATERTEMP"], stack["ACIDCONC"]],
)
years = np.arange(50, 74)
calls = [4.4, 4.7, 4.7, 5.9, 6.6, 7.3, 8.1, 8.8, 10.6, 12.0, 13.5, 14.9, 16.1, 21.2, 119.0, 124.0, 142.0, 159.0, 182.0, 212.0, 43.0, 24.0, 27.0, 29.0]
add(
    "belgian_calls",
    "Rousseeuw and Leroy (1987), Robust Regression and Outlier Detection: international calls from Belgium, as in R MASS::phones",
    calls,
    [years],
)
plants = [4.17, 5.58, 5.18, 6.11, 4.50, 4.61, 5.17, 4.53, 5.33, 5.14, 4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69]
add(
    "plant_growth_two_groups",
    "Dobson (1983): plant weights, control and treatment 1, as in R datasets::PlantGrowth",
    plants,
    [[0.0] * 10 + [1.0] * 10],
)
json.dump(
    dict(
        method="robust linear model, Huber",
        conventions=dict(k="1.345", scale="median |r| / 0.6745, center 0", se="H1, residual df n - p"),
        library_versions=dict(numpy=np.__version__, statsmodels=statsmodels.__version__),
        cases=cases,
    ),
    open("20_robust_model.json", "w"),
    indent=1,
)

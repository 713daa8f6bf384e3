//! 05: permutations counted one by one; 14: the deterministic parts of the bootstrap.

use crate::passport::{Case, each_case, numbers};
use serde_json::Value;
use stats::bootstrap::{acceleration, bca_shares, bias_correction, bootstrap};
use stats::describe::mean;
use stats::permutation::{Dealing, Deals, Permutation, Stratum, StratumWeights};
use stats::{Level, points::Points};

fn compare(case: &Case, prefix: &str, name: &str, found: &Permutation) {
    let key = |key: &str| format!("{prefix}{key}");
    assert_eq!(found.dealing, Dealing::Listed);
    case.close(&key(name), found.difference, "p_rel");
    case.exactly(&key("total"), found.deals);
    case.exactly(&key("count_greater_equal"), found.at_least);
    case.exactly(&key("count_less_equal"), found.at_most);
    case.exactly(&key("count_abs_greater_equal"), found.as_far);
    case.close(&key("p_greater"), found.p_greater(), "p_rel");
    case.close(&key("p_less"), found.p_less(), "p_rel");
    case.close(&key("p_two_sided"), found.p_value(), "p_rel");
}

/// Drawing must agree with listing as far as its own chance allows (5 standard errors).
fn draws_agree(deals: &Deals, listed: &Permutation) {
    let draws = 40_000;
    let drawn = deals.draw(draws, 20_260_101);
    assert_eq!(drawn, deals.draw(draws, 20_260_101), "the seed decides");
    let p = listed.p_value();
    let error = (p * (1.0 - p) / f64::from(draws)).sqrt();
    assert!((drawn.p_value() - p).abs() < 5.0 * error, "{} is not {p}", drawn.p_value());
}

#[test]
fn permutations() {
    each_case("05_permutation_exact.json", |case| {
        if case.has("differences") {
            let deals = Deals::of_pairs(&case.numbers("differences")).unwrap();
            compare(case, "", "mean_diff", &deals.list().unwrap());
            draws_agree(&deals, &deals.list().unwrap());
            return;
        }
        if case.has("x") {
            let deals = Deals::of_two(&case.numbers("x"), &case.numbers("y")).unwrap();
            compare(case, "", "diff", &deals.list().unwrap());
            draws_agree(&deals, &deals.list().unwrap());
            return;
        }
        let stratum =
            |block: &Value| Stratum { candidate: numbers(&block["x"]), baseline: numbers(&block["y"]) };
        let strata: Vec<Stratum> = case.input["blocks"].as_array().unwrap().iter().map(stratum).collect();
        for (prefix, weights) in [
            ("ols_block_weights/", StratumWeights::Information),
            ("equal_block_weights/", StratumWeights::Equal),
        ] {
            let deals = Deals::new(&strata, weights).unwrap();
            compare(case, prefix, "stat", &deals.list().unwrap());
            draws_agree(&deals, &deals.list().unwrap());
        }
    });
}

/// A statistic by its name in the file, of rows picked by index.
fn statistic(name: &str, rows: &[Vec<f64>], picked: &[usize]) -> f64 {
    let column = |i: usize| picked.iter().map(|&row| rows[row][i]).collect::<Vec<f64>>();
    match name {
        "mean" => mean(&column(0)),
        "variance with divisor n" => stats::describe::sum_of_squares(&column(0)) / picked.len() as f64,
        "Pearson correlation" => {
            let c = Points::new(&column(0), &column(1)).unwrap().covariance();
            c.xy / (c.xx.sqrt() * c.yy.sqrt())
        }
        other => panic!("nobody knows {other}"),
    }
}

#[test]
fn bootstraps() {
    each_case("14_bootstrap_deterministic.json", |case| {
        if case.has("y") {
            two_samples(case);
            return;
        }
        let rows: Vec<Vec<f64>> = case.input["x"]
            .as_array()
            .unwrap()
            .iter()
            .map(|row| row.as_f64().map_or_else(|| numbers(row), |x| vec![x]))
            .collect();
        let name = case.input["statistic"].as_str().unwrap();
        let all: Vec<usize> = (0..rows.len()).collect();
        let estimate = statistic(name, &rows, &all);
        let without = |gone: &usize| {
            let left: Vec<usize> = all.iter().copied().filter(|row| row != gone).collect();
            statistic(name, &rows, &left)
        };
        let left_out: Vec<f64> = all.iter().map(without).collect();
        let acceleration = acceleration(&[left_out]);
        case.close("acceleration", acceleration, "rel");
        if case.expects("theta_hat") {
            case.close("theta_hat", estimate, "rel");
        }
        if case.expects("n_resamples") {
            every_resample(case, &rows, estimate, acceleration);
        }
    });
}

/// All nⁿ resamples of a mean, one by one.
fn every_resample(case: &Case, rows: &[Vec<f64>], estimate: f64, acceleration: f64) {
    let n = rows.len();
    let total = n.pow(u32::try_from(n).unwrap());
    let resample = |mut number: usize| {
        let mut sum = 0.0;
        for _ in 0..n {
            sum += rows[number % n][0];
            number /= n;
        }
        sum / n as f64
    };
    let mut values: Vec<f64> = (0..total).map(resample).collect();
    values.sort_by(f64::total_cmp);
    let slack = 1e-9 * estimate.abs();
    let below = values.iter().filter(|value| **value < estimate - slack).count() as u64;
    let equal = values.iter().filter(|value| (**value - estimate).abs() <= slack).count() as u64;
    case.exactly("n_resamples", total as u64);
    case.exactly("count_less", below);
    case.exactly("count_equal", equal);
    let z0 = bias_correction(below, equal, total as u64);
    case.close("z0", z0, "rel");
    let level = Level::new(case.number("conf")).unwrap();
    let shares = bca_shares(z0, acceleration, level);
    case.all_close("alpha_levels", &[shares.low, shares.high], "rel");
    let at = |share: f64| values[((share * total as f64).ceil() as usize).max(1) - 1];
    case.all_close("bca_ci", &[at(shares.low), at(shares.high)], "rel");
    case.all_close("percentile_ci", &[at(level.tail()), at(1.0 - level.tail())], "rel");
    let exact_se =
        stats::describe::sum_of_squares(&rows.iter().map(|row| row[0]).collect::<Vec<_>>()).sqrt() / n as f64;
    case.close("exact_bootstrap_se", exact_se, "rel");
    // And the seeded bootstrap must find the same, as far as 20,000 draws can.
    let drawn = &bootstrap(&[n], 20_000, 7, |picked| vec![statistic("mean", rows, &picked[0])])[0];
    assert!((drawn.se() / exact_se - 1.0).abs() < 0.03, "{}", drawn.se());
    assert!((drawn.bias_correction - z0).abs() < 0.05 && (drawn.acceleration - acceleration).abs() < 1e-9);
    // Few different means lie that far out: neighbors are up to 0.2 standard errors apart.
    let interval = drawn.interval(level);
    assert!((interval.low - at(shares.low)).abs() < 0.25 * exact_se, "{interval:?}");
    assert!((interval.high - at(shares.high)).abs() < 0.25 * exact_se, "{interval:?}");
}

fn two_samples(case: &Case) {
    let (x, y) = (case.numbers("x"), case.numbers("y"));
    let estimate = mean(&x) - mean(&y);
    case.close("theta_hat", estimate, "rel");
    let without = |values: &[f64], gone: usize| {
        mean(&values.iter().enumerate().filter(|&(i, _)| i != gone).map(|(_, v)| *v).collect::<Vec<_>>())
    };
    let left_out = [
        (0..x.len()).map(|i| without(&x, i) - mean(&y)).collect(),
        (0..y.len()).map(|i| mean(&x) - without(&y, i)).collect(),
    ];
    case.close("acceleration", acceleration(&left_out), "rel");
    let part =
        |values: &[f64]| stats::describe::sum_of_squares(values) / (values.len() * values.len()) as f64;
    let plug_in = (part(&x) + part(&y)).sqrt();
    case.close("plug_in_se", plug_in, "rel");
    let pick =
        |values: &[f64], picked: &[usize]| mean(&picked.iter().map(|&i| values[i]).collect::<Vec<_>>());
    let drawn = &bootstrap(&[x.len(), y.len()], 20_000, 3, |p| vec![pick(&x, &p[0]) - pick(&y, &p[1])])[0];
    assert!((drawn.se() / plug_in - 1.0).abs() < 0.03, "{}", drawn.se());
    assert!((drawn.acceleration - acceleration(&left_out)).abs() < 1e-12);
}

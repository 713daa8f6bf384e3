//! 13: normal, t, F, chi-square, in both tails.

use crate::passport::{Case, each_case, numbers};
use stats::distributions as d;

#[test]
fn distributions() {
    each_case("13_distributions.json", |case| {
        let ask: fn(&[f64]) -> f64 = match case.id.as_str() {
            "normal_quantile" => |r| -d::normal_upper(r[0]),
            "t_cdf" => |r| d::t_sf(-r[0], r[1]),
            "t_sf" => |r| d::t_sf(r[0], r[1]),
            "t_quantile" => |r| -d::t_upper(r[0], r[1]),
            "f_cdf" => |r| d::f_cdf(r[0], r[1], r[2]),
            "f_sf" => |r| d::f_sf(r[0], r[1], r[2]),
            "f_quantile" => |r| 1.0 / d::f_upper(r[0], r[2], r[1]),
            "chi2_sf" => |r| d::chi_square_sf(r[0], r[1]),
            "chi2_quantile" => |r| d::chi_square_upper(1.0 - r[0], r[1]),
            other => panic!("nobody answers {other}"),
        };
        compare(case, ask);
    });
}

fn compare(case: &Case, ask: fn(&[f64]) -> f64) {
    let rows: Vec<Vec<f64>> = case.input["rows"].as_array().unwrap().iter().map(numbers).collect();
    for (row, expected) in rows.iter().zip(numbers(case.expected("value"))) {
        let absolute = if case.states("abs") { case.tolerance("abs") } else { 0.0 };
        let allowed = (case.tolerance("rel") * expected.abs()).max(absolute);
        case.within(&format!("value at {row:?}"), ask(row), expected, allowed);
    }
}

//! 08: adjusted p-values, all pairs, all against one; analysis of variance on the way.

use crate::passport::{Case, each_case_where, numbers};
use stats::anova::{anova, welch_anova};
use stats::{
    AmongAll, Interval, Level, Sample, TDifference, benjamini_hochberg, bonferroni, dunnett, games_howell,
    holm, tukey,
};

const FILE: &str = "08_multiple_comparisons.json";

#[test]
fn families() {
    each_case_where(
        FILE,
        |case| case.has("p"),
        |case| {
            let p = case.numbers("p");
            case.all_close("holm", &holm(&p), "rel");
            case.all_close("bh", &benjamini_hochberg(&p), "rel");
            case.all_close("bonferroni", &bonferroni(&p), "rel");
            let rejected = |adjusted: Vec<f64>| adjusted.iter().filter(|p| **p < 0.05).count() as u64;
            case.exactly("n_reject_holm_05", rejected(holm(&p)));
            case.exactly("n_reject_bh_05", rejected(benjamini_hochberg(&p)));
        },
    );
}

fn groups(case: &Case, names: &[&str]) -> Vec<Sample> {
    names.iter().map(|name| Sample::new(numbers(&case.input["groups"][name])).unwrap()).collect()
}

/// Ends of the intervals of a list, pair by pair.
fn check_intervals(case: &Case, key: &str, actual: &[Interval]) {
    let expected: Vec<Vec<f64>> = case.expected(key).as_array().unwrap().iter().map(numbers).collect();
    assert_eq!(expected.len(), actual.len());
    for (expected, actual) in expected.iter().zip(actual) {
        // An end near zero is as exact as the interval is wide.
        let allowed = case.tolerance("rel") * expected[1].abs().max(expected[0].abs());
        case.within(key, actual.low, expected[0], allowed);
        case.within(key, actual.high, expected[1], allowed);
    }
}

#[test]
fn all_pairs() {
    each_case_where(
        FILE,
        |case| case.expects("anova_F"),
        |case| {
            let level = Level::new(case.number("conf")).unwrap();
            let pairs: Vec<String> = case
                .expected("pairs")
                .as_array()
                .unwrap()
                .iter()
                .map(|pair| pair.as_str().unwrap().to_owned())
                .collect();
            let pairs: Vec<(&str, &str)> = pairs.iter().map(|pair| pair.split_once('-').unwrap()).collect();
            let mut names: Vec<&str> = pairs.iter().flat_map(|&(a, b)| [a, b]).collect();
            names.sort_unstable();
            names.dedup();
            let groups = groups(case, &names);
            let index = |name| names.iter().position(|other| *other == name).unwrap();
            let ask = |method: fn(&[Sample], usize, usize) -> Result<AmongAll, stats::Refusal>| {
                pairs.iter().map(|&(a, b)| method(&groups, index(a), index(b)).unwrap()).collect::<Vec<_>>()
            };
            let table = anova(&groups).unwrap();
            case.close("df", table.test.df2, "rel");
            case.close("mse", table.mean_square_within(), "rel");
            case.close("anova_F", table.test.f, "rel");
            case.close("anova_p", table.test.p_value(), "p_abs");
            let welch = welch_anova(&groups).unwrap();
            case.close("welch_anova_F", welch.f, "rel");
            case.close("welch_anova_p", welch.p_value(), "p_abs");
            let p = |all: &[AmongAll]| all.iter().map(AmongAll::p_value).collect::<Vec<_>>();
            let of = |all: &[AmongAll], f: fn(&AmongAll) -> f64| all.iter().map(f).collect::<Vec<_>>();
            let intervals =
                |all: &[AmongAll]| all.iter().map(|pair| pair.interval(level)).collect::<Vec<_>>();
            let all = ask(tukey);
            case.all_close("diff", &of(&all, |pair| pair.difference.diff), "rel");
            case.all_close("p_adj", &p(&all), "p_abs");
            check_intervals(case, "ci", &intervals(&all));
            let all = ask(games_howell);
            case.all_close("games_howell/se", &of(&all, |pair| pair.difference.se), "rel");
            case.all_close("games_howell/df", &of(&all, |pair| pair.difference.df), "rel");
            case.all_close("games_howell/t", &of(&all, |pair| pair.difference.t()), "rel");
            case.all_close("games_howell/p_adj", &p(&all), "p_abs");
            check_intervals(case, "games_howell/ci", &intervals(&all));
        },
    );
}

#[test]
fn against_one() {
    each_case_where(
        FILE,
        |case| case.has("control"),
        |case| {
            let level = Level::new(case.number("conf")).unwrap();
            let candidates = groups(case, &["A", "B"]);
            let control = Sample::new(case.numbers("control")).unwrap();
            let table = anova(&[&candidates[..], std::slice::from_ref(&control)].concat()).unwrap();
            let result = dunnett(&candidates, &control).unwrap();
            let of = |f: &dyn Fn(&TDifference) -> f64| result.differences.iter().map(f).collect::<Vec<_>>();
            case.close("df", table.test.df2, "rel");
            case.close("mse", table.mean_square_within(), "rel");
            case.all_close("diff", &of(&|d| d.diff), "rel");
            case.all_close("se", &of(&|d| d.se), "rel");
            case.all_close("t", &of(&TDifference::t), "rel");
            case.all_close("p_adj", &of(&|d| result.p_value(d)), "p_abs");
            let critical = result.critical(level);
            case.close("critical_value", critical, "rel");
            let around = |d: &TDifference| Interval::around(d.diff, critical * d.se, level);
            check_intervals(case, "ci", &result.differences.iter().map(around).collect::<Vec<_>>());
        },
    );
    each_case_where(
        FILE,
        |case| case.has("rho"),
        |case| {
            let lambda = case.number("rho").sqrt();
            for k in case.numbers("k") {
                let lambdas = vec![lambda; k as usize];
                let found = stats::dunnett_upper(case.number("alpha"), &lambdas, case.number("df"));
                case.close(&format!("k{k}"), found, "rel");
            }
        },
    );
}

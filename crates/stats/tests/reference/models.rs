//! 10: least squares, groups as columns of zeros and ones too, NIST StRD among them; 15: sessions combined;
//! 20: the same columns by Huber's M-estimate; 21: sessions with a prior on how much days differ;
//! 22: differences with a prior on how far builds differ; 23: how often a value of one build is above one of the other; 24: counted shares.

use crate::passport::{Case, each_case, numbers};
use stats::combine::{SessionEffect, combine};
use stats::day_to_day::{Between, DayEffect, day_to_day, how_far_apart};
use stats::describe::{mean, sum_of_squares};
use stats::distributions::{normal_sf, normal_upper};
use stats::linear_model::{Intercept, linear_model};
use stats::robust_model::robust_model;
use stats::{
    Counted, Interval, Level, Sample, TDifference, chance_above, counts_differ, pulled, pulled_among,
    pulled_over,
};

#[test]
fn linear_models() {
    each_case("10_linear_model.json", |case| {
        if case.has("groups") {
            one_way(case);
            return;
        }
        let names: Vec<String> = case
            .expected("terms")
            .as_array()
            .unwrap()
            .iter()
            .map(|name| name.as_str().unwrap().to_owned())
            .collect();
        let with_intercept = case.input["intercept"].as_bool().unwrap();
        assert_eq!(with_intercept, names[0] == "(Intercept)");
        let intercept = if with_intercept { Intercept::Fitted } else { Intercept::Zero };
        let columns: Vec<Vec<f64>> = names
            .iter()
            .filter(|name| *name != "(Intercept)")
            .map(|name| numbers(&case.input["x"][name]))
            .collect();
        let model = linear_model(&case.numbers("y"), &columns, intercept).unwrap();
        case.all_close("coef", &model.terms.iter().map(|term| term.diff).collect::<Vec<_>>(), "rel");
        case.all_close("se", &model.terms.iter().map(|term| term.se).collect::<Vec<_>>(), "rel");
        case.close("residual_sd", model.residual_sd(), "rel");
        case.close("rss", model.residual_squares, "rel");
        case.close("df_residual", model.df, "rel");
        let y = case.numbers("y");
        let total = sum_of_squares(&y) + if with_intercept { 0.0 } else { y.len() as f64 * mean(&y).powi(2) };
        let df_model = columns.len() as f64;
        case.close("r_squared", 1.0 - model.residual_squares / total, "rel");
        case.close("df_model", df_model, "rel");
        let explained = (total - model.residual_squares) / df_model;
        case.close("F", explained / (model.residual_squares / model.df), "rel");
    });
}

#[test]
fn sessions_with_what_days_usually_differ_by() {
    each_case("21_day_to_day.json", |case| {
        let found = day_to_day(&days(case), case.number("usual")).unwrap();
        case.close("mean", found.gap.mean(), "rel");
        case.close("between", found.between, "rel");
        case.close("above", found.gap.chance_above(0.0), "rel");
        case.all_close("counts", &found.counts, "rel");
        let mixtures =
            [("interval", &found.gap), ("next_day", &found.next_day), ("one_more", &found.with_one_more)];
        for (key, mixture) in mixtures {
            let ends = mixture.interval(Level::P95);
            case.all_close(key, &[ends.low, ends.high], "rel");
        }
    });
}

#[test]
fn differences_pulled_toward_zero() {
    each_case("22_pulled.json", |case| {
        let found = TDifference::new(case.number("diff"), case.number("se"), case.number("df"), 0.0).unwrap();
        let drift = case.number("drift");
        let believed = match case.input["usual"].as_f64() {
            Some(usual) => pulled(&found, usual, drift).unwrap(),
            None if case.has("others") => {
                pulled_among(&found, &case.numbers("others"), &case.numbers("usual"), drift).unwrap()
            }
            None => pulled_over(&found, &case.numbers("usual"), drift).unwrap(),
        };
        case.close("mean", believed.mean(), "rel");
        case.close("above", believed.chance_above(0.0), "rel");
        case.close("above_margin", believed.chance_above(5.0), "rel");
        let ends = believed.interval(Level::P95);
        case.all_close("interval", &[ends.low, ends.high], "rel");
    });
}

#[test]
fn values_above_those_of_the_other_build() {
    each_case("23_chance_above.json", |case| {
        let sample = |key| Sample::new(case.numbers(key)).unwrap();
        let found = chance_above(&sample("candidate"), &sample("baseline")).unwrap();
        case.close("chance", found.chance, "rel");
        let error = found.error.unwrap();
        case.close("statistic", (found.chance - 0.5) / error.se, "rel");
        case.close("df", error.df, "rel");
        case.close("p", 2.0 * error.p_above(0.5).min(error.p_below(0.5)), "rel");
        let ends = found.interval(Level::P95);
        case.all_close("interval", &[ends.low, ends.high], "rel");
    });
}

#[test]
fn counted_shares() {
    each_case("24_proportions.json", |case| {
        let counted = |pair: Vec<f64>| Counted { found: pair[0] as usize, of: pair[1] as usize };
        if case.expects("p") {
            let (one, other) = (counted(case.numbers("one")), counted(case.numbers("other")));
            case.close("p", counts_differ(one, other), "rel");
        } else {
            let ends = Counted { found: case.count("found"), of: case.count("of") }.interval(Level::P95);
            case.all_close("interval", &[ends.low, ends.high], "rel");
        }
    });
}

/// As the page holds them: what they are weighed by and held against is their own where a case says nothing of it.
fn days(case: &Case) -> Vec<DayEffect> {
    let given = |key| if case.has(key) { case.numbers(key) } else { case.numbers("variance") };
    let held = |at: usize| match case.input["between"][at].as_str() {
        Some("candidate") => Between::CandidateAndControl,
        Some("baseline") => Between::BaselineAndControl,
        _ => Between::Both,
    };
    let each = sessions(case).into_iter().zip(given("weighed")).enumerate();
    each.map(|(at, (SessionEffect { effect, variance }, weighed))| DayEffect {
        effect,
        variance,
        weighed,
        between: held(at),
    })
    .collect()
}

fn sessions(case: &Case) -> Vec<SessionEffect> {
    let each = case.numbers("effect").into_iter().zip(case.numbers("variance"));
    each.map(|(effect, variance)| SessionEffect { effect, variance }).collect()
}

#[test]
fn robust_models() {
    each_case("20_robust_model.json", |case| {
        let columns: Vec<Vec<f64>> = case.input["columns"].as_array().unwrap().iter().map(numbers).collect();
        let model = robust_model(&case.numbers("y"), &columns, Intercept::Fitted).unwrap();
        case.all_close("coef", &model.terms.iter().map(|term| term.diff).collect::<Vec<_>>(), "rel");
        case.all_close("se", &model.terms.iter().map(|term| term.se).collect::<Vec<_>>(), "rel");
        case.close("scale", model.scale, "rel");
        case.all_close("weights", &model.weights, "rel");
    });
}

/// Groups by a column of zeros and ones for each but the first.
fn one_way(case: &Case) {
    let groups = case.input["groups"].as_array().unwrap();
    let groups: Vec<Vec<f64>> = groups.iter().map(numbers).collect();
    let y = groups.concat();
    let column = |own: usize| {
        let ones =
            groups.iter().enumerate().map(|(at, group)| vec![f64::from(u8::from(at == own)); group.len()]);
        ones.collect::<Vec<_>>().concat()
    };
    let columns: Vec<Vec<f64>> = (1..groups.len()).map(column).collect();
    let model = linear_model(&y, &columns, Intercept::Fitted).unwrap();
    let (between, df_between) = (sum_of_squares(&y) - model.residual_squares, columns.len() as f64);
    case.close("df_between", df_between, "rel");
    case.close("df_within", model.df, "rel");
    case.close("ss_between", between, "rel");
    case.close("ss_within", model.residual_squares, "rel");
    case.close("ms_between", between / df_between, "rel");
    case.close("ms_within", model.residual_squares / model.df, "rel");
    case.close("F", between / df_between / (model.residual_squares / model.df), "rel");
    case.close("r_squared", between / sum_of_squares(&y), "rel");
    case.close("residual_sd", model.residual_sd(), "rel");
}

#[test]
fn combined_sessions() {
    each_case("15_meta_analysis.json", |case| {
        let sessions = sessions(case);
        let found = combine(&sessions).unwrap();
        let ends = |interval: Interval| [interval.low, interval.high];
        case.close("fixed_mean", found.fixed.mean, "rel");
        case.close("fixed_se", found.fixed.se, "rel");
        case.close("Q", found.q, "rel");
        case.close("tau2", found.between, "rel");
        let apart = how_far_apart(&days(case)).unwrap();
        case.close("tau2", apart.shown * apart.shown, "rel");
        case.close("I2", found.share_between(), "rel");
        case.close("random_mean", found.random.mean, "rel");
        case.close("random_se", found.random.se, "rel");
        let (half_width, z) = (normal_upper(0.025) * found.random.se, found.random.mean / found.random.se);
        case.all_close(
            "random_ci95",
            &[found.random.mean - half_width, found.random.mean + half_width],
            "rel",
        );
        case.close("z", z, "rel");
        case.close("p", 2.0 * normal_sf(z.abs()), "rel");
        case.close("hksj_se", found.hartung_knapp.se, "rel");
        case.all_close("hksj_ci95", &ends(found.hartung_knapp.interval(Level::P95)), "rel");
        assert!(found.headline().se >= found.random.se && found.headline().se >= found.hartung_knapp.se);
    });
}

//! 10: least squares and analysis of variance, NIST StRD among them; 15: sessions combined.

use crate::passport::{Case, each_case, numbers};
use stats::anova::anova;
use stats::combine::{SessionEffect, combine};
use stats::linear_model::{Intercept, linear_model};
use stats::{Interval, Level, Sample};

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
        case.close("r_squared", model.r_squared(), "rel");
        case.close("F", model.overall().f, "rel");
        case.close("df_model", model.overall().df1, "rel");
    });
}

fn one_way(case: &Case) {
    let groups = case.input["groups"].as_array().unwrap();
    let groups: Vec<Sample> = groups.iter().map(|group| Sample::new(numbers(group)).unwrap()).collect();
    let table = anova(&groups).unwrap();
    case.close("df_between", table.test.df1, "rel");
    case.close("df_within", table.test.df2, "rel");
    case.close("ss_between", table.between, "rel");
    case.close("ss_within", table.within, "rel");
    case.close("ms_between", table.between / table.test.df1, "rel");
    case.close("ms_within", table.mean_square_within(), "rel");
    case.close("F", table.test.f, "rel");
    case.close("r_squared", table.between / (table.between + table.within), "rel");
    case.close("residual_sd", table.mean_square_within().sqrt(), "rel");
}

#[test]
fn combined_sessions() {
    each_case("15_meta_analysis.json", |case| {
        let sessions: Vec<SessionEffect> = case
            .numbers("effect")
            .into_iter()
            .zip(case.numbers("variance"))
            .map(|(effect, variance)| SessionEffect { effect, variance })
            .collect();
        let found = combine(&sessions).unwrap();
        let ends = |interval: Interval| [interval.low, interval.high];
        case.close("fixed_mean", found.fixed.mean, "rel");
        case.close("fixed_se", found.fixed.se, "rel");
        case.close("Q", found.q, "rel");
        case.close("Q_p", found.q_p_value(), "rel");
        case.close("tau2", found.between, "rel");
        case.close("I2", found.share_between(), "rel");
        case.close("random_mean", found.random.mean, "rel");
        case.close("random_se", found.random.se, "rel");
        case.all_close("random_ci95", &ends(found.random.interval(Level::P95)), "rel");
        case.close("z", found.random.z(), "rel");
        case.close("p", found.random.p_value(), "rel");
        case.close("hksj_se", found.hartung_knapp.se, "rel");
        case.all_close("hksj_ci95", &ends(found.hartung_knapp.interval(Level::P95)), "rel");
        assert!(found.headline().se >= found.random.se && found.headline().se >= found.hartung_knapp.se);
    });
}

//! 16 and the t-mixture: bounds for unlimited looking.

use crate::passport::each_case;
use stats::choices::MIXTURE_VARIANCE;
use stats::{Level, NormalMixture, TDifference, Watched, asymptotic_half_width};

#[test]
fn normal_mixture() {
    each_case("16_anytime_valid.json", |case| {
        let level = Level::missing(case.number("alpha")).unwrap();
        let variance = case.number("sigma").powi(2);
        let mixture = match case.input["optimise_at_v"].as_f64() {
            Some(v) => NormalMixture::narrowest_at(v, level),
            None => NormalMixture::new(case.number("rho")),
        };
        let mixture = mixture.unwrap();
        case.close("rho", mixture.rho(), "rel");
        if case.expects("rho_numeric_minimiser_check") {
            let by_search = case.expected("rho_numeric_minimiser_check").as_f64().unwrap();
            case.within("rho by search", mixture.rho(), by_search, 1e-5 * by_search);
        }
        let half_width = |t: &f64| mixture.boundary(t * variance, level) / t;
        case.all_close("half_width", &case.numbers("t").iter().map(half_width).collect::<Vec<_>>(), "rel");
        if case.has("sums") {
            let sums = case.input["sums"].as_array().unwrap().iter().map(crate::passport::numbers);
            let evidence: Vec<f64> = sums.map(|row| mixture.evidence(row[1], row[0] * variance)).collect();
            case.all_close("e_value", &evidence, "rel");
            case.all_close(
                "p_anytime",
                &evidence.iter().map(|e| (1.0 / e).min(1.0)).collect::<Vec<_>>(),
                "rel",
            );
        }
    });
}

/// Critical |t| at 19 df, information 6, g = 1, α = 0.05; as tabled, five decimals.
#[test]
fn t_mixture() {
    let watched = |diff: f64| {
        let difference = TDifference::new(diff, 1.0, 19.0, 1.0).unwrap();
        Watched { difference, information: 6.0, mixture_variance: MIXTURE_VARIANCE }
    };
    let half_width = watched(0.0).interval(Level::P95).unwrap().half_width();
    assert!((half_width - 3.42826).abs() < 5e-6, "{half_width}");
    // At the critical value the evidence is exactly 1/α.
    assert!((watched(half_width).evidence() - 20.0).abs() < 1e-9);
    assert!((watched(half_width).p_value() - 0.05).abs() < 1e-11);
    assert!((watched(0.0).p_value() - 1.0).abs() < 1e-15);
    let short = Watched { information: 0.5, ..watched(0.0) };
    let early = Watched { difference: TDifference::new(0.0, 1.0, 2.0, 1.0).unwrap(), ..short };
    assert_eq!(early.interval(Level::P95), None);
}

/// The asymptotic sequence is Robbins's mixture with the deviation taken as known.
#[test]
fn asymptotic_is_the_normal_mixture() {
    let (se, information, r) = (0.4, 25.0, 0.7);
    let width = asymptotic_half_width(se, information, r, Level::P95).unwrap();
    // In units of the residual deviation s: S = W·d/s, variance W, ρ = 1/r.
    let s = se * f64::sqrt(information);
    let by_mixture = NormalMixture::new(1.0 / r).unwrap().boundary(information, Level::P95) * s / information;
    assert!((width / by_mixture - 1.0).abs() < 1e-12);
}

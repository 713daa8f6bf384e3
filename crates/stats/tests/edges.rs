//! Where an answer turns into a refusal or another answer: the last value on each side.
#![expect(clippy::unwrap_used, clippy::float_cmp, reason = "tests")]

use stats::choices::INTERACTION_P;
use stats::combine::{SessionEffect, combine};
use stats::crossing::{InterimChance, ends_at};
use stats::distributions::normal_sf;
use stats::linear_model::{Intercept, linear_model};
use stats::{
    Interval, Level, LevelError, LooksError, MOST_LOOKS, OrderedShot, Refusal, RoundShot, Rounds, Sample,
    planned_looks, shots_for_ratio, spread_ratio, trend, yuen,
};

fn sample(values: &[f64]) -> Sample {
    Sample::new(values.to_vec()).unwrap()
}

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs())
}

#[test]
fn a_level_lies_strictly_between_a_half_and_one() {
    for (alpha, coverage) in [(0.0, 1.0), (0.5, 0.5), (-0.1, 1.1), (0.7, 1.0 - 0.7)] {
        assert_eq!(Level::missing(alpha), Err(LevelError { got: coverage }), "{alpha}");
    }
    assert!(Level::missing(f64::NAN).is_err());
    assert_eq!(Level::new(0.5), Err(LevelError { got: 0.5 }));
    assert_eq!(Level::new(1.0), Err(LevelError { got: 1.0 }));
    let level = Level::missing(0.2).unwrap();
    assert_eq!((level.alpha(), level.tail(), level.coverage()), (0.2, 0.1, 0.8));
    assert_eq!(Level::missing(1e-14).unwrap().alpha(), 1e-14);
    assert_eq!(Level::new(0.75).unwrap().alpha(), 0.25);
}

#[test]
fn an_interval_that_touches_neither_excludes_nor_lies_inside() {
    let interval = Interval::around(3.0, 2.0, Level::P95);
    assert_eq!((interval.low, interval.high, interval.half_width()), (1.0, 5.0, 2.0));
    for (value, outside) in [(1.0, false), (5.0, false), (3.0, false), (0.999, true), (5.001, true)] {
        assert_eq!(interval.excludes(value), outside, "{value}");
    }
    assert!(interval.inside(0.9, 5.1));
    assert!(!interval.inside(1.0, 6.0) && !interval.inside(0.0, 5.0));
}

#[test]
fn sets_disagree_below_their_p_and_not_at_it() {
    let shot = |round, build, value| RoundShot { round, build, value };
    let shots: Vec<RoundShot> = (0..4)
        .flat_map(|round| {
            [(0, 1.0), (0, 2.0), (1, 3.0 + round as f64), (1, 5.0)].map(|(b, v)| shot(round, b, v))
        })
        .collect();
    let mut found = Rounds::new(&shots).unwrap().compare(1, 0).unwrap();
    for (p, falls_back) in [(INTERACTION_P, false), (INTERACTION_P * (1.0 - 1e-12), true), (1.0, false)] {
        found.interaction.as_mut().unwrap().p = p;
        assert_eq!(found.falls_back(), falls_back, "{p}");
    }
    found.interaction = None;
    assert!(!found.falls_back());
}

#[test]
fn rounds_say_how_many_shots_a_model_needs() {
    let shot = |round, build, value| RoundShot { round, build, value };
    // Three rounds, three linked builds: six shots would leave one degree of freedom.
    let shots = [shot(0, 0, 1.0), shot(0, 1, 2.0), shot(1, 1, 1.5), shot(1, 2, 3.0), shot(2, 0, 1.2)];
    let refused = Rounds::new(&shots).unwrap().compare(1, 0);
    assert_eq!(refused, Err(Refusal::TooFew { got: 5, need: 6 }));
}

#[test]
fn a_plan_of_looks_has_rising_times_and_not_too_many() {
    let count = |got| Err(LooksError::Count { got, most: MOST_LOOKS });
    let times = |n: usize| (1..=n).map(|look| look as f64 / n as f64).collect::<Vec<_>>();
    assert_eq!(planned_looks(Level::P95, &[]), count(0));
    assert_eq!(planned_looks(Level::P95, &times(MOST_LOOKS)).unwrap().len(), MOST_LOOKS);
    assert_eq!(planned_looks(Level::P95, &times(MOST_LOOKS + 1)), count(MOST_LOOKS + 1));
    for (times, index) in
        [([0.5, 0.5], 1), ([0.0, 0.5], 0), ([0.5, 1.1], 1), ([0.6, 0.5], 1), ([f64::NAN, 1.0], 0)]
    {
        let refused = planned_looks(Level::P95, &times);
        assert!(matches!(refused, Err(LooksError::Time { index: at, .. }) if at == index), "{times:?}");
    }
}

#[test]
fn a_look_that_may_spend_nothing_changes_no_other() {
    let usual = planned_looks(Level::P95, &[0.5, 1.0]).unwrap();
    let early = planned_looks(Level::P95, &[1e-6, 0.5, 1.0]).unwrap();
    assert_eq!(early[0].nominal_p, 0.0);
    assert!(early[0].level().is_err());
    for (usual, early) in usual.iter().zip(&early[1..]) {
        assert!(close(usual.z, early.z, 1e-10) && usual.spent == early.spent, "{usual:?} {early:?}");
    }
}

#[test]
fn a_look_that_ends_for_certain_or_never() {
    let ends = |alone: [f64; 2]| {
        ends_at(&[InterimChance { time: 0.4, alone: alone[0] }, InterimChance { time: 1.0, alone: alone[1] }])
    };
    let certain = ends([1.0, 0.5]);
    assert!((certain[0] - 1.0).abs() < 1e-11 && certain[1].abs() < 1e-11, "{certain:?}");
    let never = ends([0.0, 0.5]);
    assert!(never[0].abs() < 1e-11 && (never[1] - 0.5).abs() < 1e-11, "{never:?}");
}

/// Three normal values with these correlations are all below their means in 1/8 + Σ asin ρ/4π of cases.
#[test]
fn three_looks_at_even_chances_end_as_the_orthant_says() {
    for times in [[0.25, 0.5, 1.0], [0.2, 0.7, 0.9], [0.02, 0.5, 1.0]] {
        let looks = times.map(|time| InterimChance { time, alone: 0.5 });
        let correlation = |i: usize, j: usize| libm::asin(f64::sqrt(times[i] / times[j]));
        let sum = correlation(0, 1) + correlation(0, 2) + correlation(1, 2);
        let never = 0.125 + sum / (4.0 * std::f64::consts::PI);
        let ends = ends_at(&looks);
        assert!((ends.iter().sum::<f64>() - (1.0 - never)).abs() < 1e-9, "{times:?}: {ends:?}");
        let first_two = 1.0 - (0.25 + correlation(0, 1) / (2.0 * std::f64::consts::PI));
        assert!((ends[0] + ends[1] - first_two).abs() < 1e-9);
    }
}

#[test]
fn sessions_with_unusable_errors_are_refused() {
    let two = |variance: f64| {
        combine(&[SessionEffect { effect: 1.0, variance: 2.0 }, SessionEffect { effect: 0.5, variance }])
    };
    for unusable in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e-310] {
        assert!(matches!(two(unusable), Err(Refusal::Argument { .. })), "{unusable}");
    }
    assert!(two(1e-300).is_ok() && two(1e300).is_ok());
    // Each weight is a number, their sum is none.
    let exact = SessionEffect { effect: 0.0, variance: 1e-308 };
    assert_eq!(combine(&[exact, exact]).unwrap_err(), Refusal::OutOfRange);
    assert_eq!(combine(&[exact]).unwrap_err(), Refusal::TooFew { got: 1, need: 2 });
}

#[test]
fn sessions_that_agree_share_nothing_between_them() {
    let session = SessionEffect { effect: 2.0, variance: 0.5 };
    let found = combine(&[session; 3]).unwrap();
    assert_eq!((found.q, found.between, found.share_between()), (0.0, 0.0, 0.0));
    assert_eq!(found.headline().se, found.random.se);
}

/// A spread of five values around zero and the same times `ratio`.
fn spreads(ratio: f64) -> stats::SpreadRatio {
    let base = [-2.0, -1.0, 0.0, 1.0, 2.0];
    spread_ratio(&sample(&base.map(|x| ratio * x)), &sample(&base)).unwrap()
}

#[test]
fn spreads_need_five_shots_each_and_more_than_rounding() {
    let of = |n: usize| sample(&(0..n).map(|i| (i * i) as f64).collect::<Vec<_>>());
    assert!(spread_ratio(&of(5), &of(5)).is_ok());
    for few in [2, 3, 4] {
        let refused = Err(Refusal::TooFew { got: few, need: 5 });
        assert_eq!(spread_ratio(&of(few), &of(5)), refused);
        assert_eq!(spread_ratio(&of(5), &of(few)), refused);
    }
    // One unit in the last place around a large common part is no scatter; a thousand are.
    let around = |step: f64| sample(&[0.0, 1.0, 0.0, 1.0, 0.0, 1.0].map(|x| 1e9 + step * x));
    let ulp = 1e9 * f64::EPSILON / 2.0;
    assert_eq!(spread_ratio(&around(ulp), &of(5)), Err(Refusal::NoScatter));
    assert!(spread_ratio(&around(1000.0 * ulp), &of(5)).is_ok());
    let still = sample(&[3.0; 6]);
    assert_eq!(spread_ratio(&still, &of(5)), Err(Refusal::NoScatter));
}

#[test]
fn spreads_as_far_apart_as_their_counts_allow() {
    // |ln of the ratio of variances| in standard errors; counts alike, so nothing corrects it.
    let z = |ratio: f64| {
        let found = spreads(ratio);
        2.0 * found.ratio().ln() / found.se(1.0)
    };
    let (mut low, mut high) = (1.0, 1e6);
    for _ in 0..200 {
        let middle = f64::sqrt(low * high);
        if z(middle) < 4.9 { low = middle } else { high = middle }
    }
    assert!(close(spreads(low).p_value(), 2.0 * normal_sf(4.9), 1e-6), "just below z = n");
    assert!(close(spreads(1.0 / low).p_value(), 2.0 * normal_sf(4.9), 1e-6), "the other way round");
    assert_eq!(spreads(1e9).p_value(), 2.0 * normal_sf(5.0), "no z reaches n");
    let alike = spreads(1.0).p_value();
    assert!((alike - 1.0).abs() < 1e-9, "{alike}");
}

#[test]
fn variances_are_compared_only_where_both_are_some() {
    let summary = |sd| stats::Summary::new(8, 250.0, sd).unwrap();
    let ratio = |one, other| stats::variance_ratio(&summary(one), &summary(other)).map(|found| found.f);
    assert_eq!([ratio(3.0, 2.0), ratio(2.0, 2.0)], [Ok(2.25), Ok(1.0)]);
    for (one, other) in [(0.0, 2.0), (2.0, 0.0), (0.0, 0.0), (1e-200, 2.0), (1e30, 1e-200)] {
        assert_eq!(ratio(one, other), Err(Refusal::NoScatter), "{one} {other}");
    }
}

#[test]
fn a_level_whose_deviate_reaches_the_count_has_no_interval() {
    let at = |z: f64| Level::missing(2.0 * normal_sf(z)).unwrap();
    assert!(spreads(1.5).interval(at(4.99)).is_some());
    assert_eq!(spreads(1.5).interval(at(5.01)), None);
}

#[test]
fn shots_that_cannot_be_planned_for_a_ratio() {
    let shots = |ratio, kurtosis, power| shots_for_ratio(ratio, kurtosis, Level::P95, power);
    assert_eq!(shots(1.5, 1.0, 0.8), None, "values that always lie one deviation away");
    assert_eq!(shots(1.5, 0.5, 0.8), None);
    assert_eq!(shots(1.5, 3.0, 1.0), None);
    assert_eq!(shots(50.0, 3.0, 0.8), Some(5), "never fewer than a comparison of spreads needs");
    assert_eq!(shots(1.0 / 1.5, 3.0, 0.8), shots(1.5, 3.0, 0.8));
}

/// A session with a slope, in an order that starts anywhere, shots not in the order hit.
fn sloping(values: &[f64], start: f64) -> Vec<OrderedShot> {
    let shot = |(i, &value): (usize, &f64)| OrderedShot { at: start + i as f64, build: 3 + i % 2, value };
    let mut shots: Vec<OrderedShot> = values.iter().enumerate().map(shot).collect();
    shots.reverse();
    shots
}

#[test]
fn a_trend_is_the_slope_of_least_squares_with_a_level_for_each_build() {
    let values = [250.0, 261.0, 249.5, 262.5, 252.0, 260.0, 254.5, 266.0, 251.0, 263.5];
    let found = trend(&sloping(&values, 40.0)).unwrap();
    let order: Vec<f64> = (0..values.len()).map(|i| 40.0 + i as f64).collect();
    let second: Vec<f64> = (0..values.len()).map(|i| (i % 2) as f64).collect();
    let model = linear_model(&values, &[second.clone(), order.clone()], Intercept::Fitted).unwrap();
    let slope = model.terms[2];
    assert!(close(found.textbook.diff, slope.diff, 1e-9) && close(found.textbook.se, slope.se, 1e-9));
    assert_eq!((found.textbook.df, slope.df, found.span), (7.0, 7.0, 9.0));
    let fitted = |i: usize| model.terms[0].diff + model.terms[1].diff * second[i] + slope.diff * order[i];
    let left: Vec<f64> = values.iter().enumerate().map(|(i, value)| value - fitted(i)).collect();
    let squares: f64 = left.iter().map(|e| e * e).sum();
    let products: f64 = left.windows(2).map(|pair| pair[0] * pair[1]).sum();
    let (r, n) = (products / squares, values.len() as f64);
    let corrected = r + (2.0 + 4.0 * r) / n;
    assert!((found.autocorrelation - corrected.clamp(0.0, 0.9)).abs() < 1e-9, "{found:?} {corrected}");
}

#[test]
fn what_a_line_leaves_over_may_lean_and_widens_the_slope() {
    // A slow wave on a line: what is left over leans on itself.
    let values: Vec<f64> =
        (0..20).map(|i| 2.0 * i as f64 + [2.0, 3.0, -1.0, 0.0, -3.0, -2.0, 1.0, 0.0][i % 8]).collect();
    let shots = |scale: f64| -> Vec<OrderedShot> {
        values
            .iter()
            .enumerate()
            .map(|(i, &v)| OrderedShot { at: scale * i as f64, build: 0, value: v })
            .collect()
    };
    let found = trend(&shots(1.0)).unwrap();
    let r = found.autocorrelation;
    assert!(r > 0.3 && r < 0.9, "{r}");
    let factor = f64::sqrt((1.0 + r) / (1.0 - r));
    assert!(close(found.slope().se, found.textbook.se * factor, 1e-12));
    assert!(close(found.total().diff, 19.0 * found.textbook.diff, 1e-12));
    assert!(close(found.total().se, 19.0 * found.slope().se, 1e-12));
    // Minutes instead of shots: the slope changes, the change over the session does not.
    let slower = trend(&shots(2.5)).unwrap();
    assert!(close(slower.textbook.diff, found.textbook.diff / 2.5, 1e-9));
    assert!(close(slower.total().diff, found.total().diff, 1e-9) && slower.span == 47.5);
}

#[test]
fn a_trend_needs_two_shots_more_than_builds() {
    let shot = |at, build, value| OrderedShot { at, build, value };
    let four = [shot(0.0, 0, 1.0), shot(1.0, 1, 2.5), shot(2.0, 0, 2.0), shot(3.0, 1, 4.5)];
    assert_eq!(trend(&four).unwrap().textbook.df, 1.0);
    assert_eq!(trend(&four[..3]).unwrap_err(), Refusal::TooFew { got: 3, need: 4 });
    assert_eq!(trend(&four[..2]).unwrap_err(), Refusal::TooFew { got: 2, need: 4 });
    let one_build = four.map(|shot| OrderedShot { build: 7, ..shot });
    assert_eq!(trend(&one_build[..2]).unwrap_err(), Refusal::TooFew { got: 2, need: 3 });
    let at_once = four.map(|shot| OrderedShot { at: 5.0, ..shot });
    assert!(trend(&at_once).is_err(), "all at one place in the order");
    let unusable = [shot(f64::NAN, 0, 1.0), shot(1.0, 0, 2.0), shot(2.0, 0, 5.0)];
    assert!(matches!(trend(&unusable), Err(Refusal::Argument { got }) if got.is_nan()));
    let large = [shot(0.0, 0, 1e38), shot(1.0, 0, 2.0), shot(2.0, 0, 5.0)];
    assert_eq!(trend(&large).unwrap_err(), Refusal::Argument { got: 1e38 });
}

#[test]
fn a_line_with_nothing_left_but_rounding_has_no_error() {
    let line = |noise: f64| -> Vec<OrderedShot> {
        let value = |i: usize| 1e9 + 0.25 * i as f64 + noise * (i % 3) as f64;
        (0..40).map(|i| OrderedShot { at: i as f64, build: 0, value: value(i) }).collect()
    };
    assert_eq!(trend(&line(0.0)).unwrap_err(), Refusal::NoScatter);
    assert_eq!(trend(&line(2e-7)).unwrap_err(), Refusal::NoScatter);
    assert!(trend(&line(1e-4)).is_ok());
}

#[test]
fn trimming_leaves_two_shots_or_refuses() {
    let of = |n: usize| sample(&(0..n).map(|i| (i * i) as f64).collect::<Vec<_>>());
    let kept = |n: usize, trim: f64| {
        yuen(&of(n), &of(9), trim).map(|found| (found.candidate.kept, found.candidate.cut))
    };
    assert_eq!(kept(4, 0.25), Ok((2, 1)));
    assert_eq!(kept(3, 0.4), Err(Refusal::TooFew { got: 1, need: 2 }));
    assert_eq!(kept(2, 0.0), Ok((2, 0)));
    // 0.1 · 30 falls a rounding short of 3.
    assert_eq!(kept(30, 0.1), Ok((24, 3)));
    for trim in [0.5, -0.1, f64::NAN] {
        assert!(matches!(yuen(&of(9), &of(9), trim), Err(Refusal::Argument { .. })), "{trim}");
    }
}

#[test]
fn a_value_may_be_as_large_as_the_largest() {
    let largest = stats::LARGEST_VALUE;
    assert!(Sample::new(vec![largest, -largest]).is_ok());
    let beyond = 1.000_001 * largest;
    let refused = stats::SampleError::TooLarge { index: 1, value: -beyond };
    assert_eq!(Sample::new(vec![1.0, -beyond]), Err(refused));
    assert_eq!(Sample::new(vec![f64::INFINITY, 1.0]), Err(stats::SampleError::NotFinite { index: 0 }));
    let summary = stats::Summary::new;
    assert!(summary(2, largest, largest).is_ok() && summary(1, 0.0, 1.0).is_err());
    assert!(
        summary(2, beyond, 1.0).is_err()
            && summary(2, 0.0, beyond).is_err()
            && summary(2, 0.0, -1e-9).is_err()
    );
}

#[test]
fn subsets_need_something_to_pick_and_gaps_forgive_rounding() {
    use stats::subsets::{Figure, chance_gaps, picks, runs, share_of_pairs};
    let all = sample(&[1.0, 2.0, 4.0, 8.0]);
    let picked = |n, draws| picks(&all, n, Figure::Mean, draws, 1).is_some();
    assert!(picked(1, 1) && picked(4, 1));
    assert!(!picked(0, 9) && !picked(5, 9) && !picked(2, 0) && !picked(0, 0));
    assert!(runs(&all, 0, Figure::Mean).is_none() && runs(&all, 5, Figure::Mean).is_none());
    let gaps = |n, draws| chance_gaps(&all, &all, n, Figure::Mean, draws, 1).is_some();
    assert!(gaps(2, 5) && !gaps(0, 5) && !gaps(2, 0));
    // A millionth apart around a million is rounding, a hundredth is not.
    let one = |value: f64| runs(&sample(&[value, value]), 2, Figure::Mean).unwrap();
    let (above, near, far) = (one(1e6 + 1e-6), one(1e6), one(1e6 - 1e-2));
    assert_eq!([share_of_pairs(&above, &near, 0.0), share_of_pairs(&above, &far, 0.0)], [0.0, 1.0]);
    assert_eq!([share_of_pairs(&above, &far, 1.1e-2), share_of_pairs(&above, &far, 1e-2 + 5e-6)], [1.0, 1.0]);
    assert_eq!(share_of_pairs(&above, &far, 1.3e-2), 0.0);
}

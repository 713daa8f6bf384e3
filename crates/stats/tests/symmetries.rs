//! What no table can test: swapping builds, moving and scaling units, and that no finite input is a trap.
#![expect(clippy::unwrap_used, clippy::disallowed_methods, reason = "tests")]

use proptest::prelude::*;
use stats::bivariate::{BivariateNormal, Stretch};
use stats::combine::{SessionEffect, combine};
use stats::permutation::Deals;
use stats::points::{Point, Points};
use stats::{
    Level, OrderedShot, RoundShot, Rounds, Sample, Summary, TDifference, TRIM, equivalence, planned_looks,
    spread_ratio, trend, variance_ratio, welch, welch_from_summaries, yuen,
};

fn values(least: usize) -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec((-400i32..400).prop_map(|x| f64::from(x) / 4.0), least..25)
}

/// Finite numbers of every size, equal ones among them.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        prop::num::f64::ANY,
        prop::sample::select(vec![0.0, -0.0, 1.0, 5e-324, 1e-160, 1e37, -1e37, 1e300, 0.1 + 0.2, 0.3]),
        -10.0..10.0,
    ]
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * (1.0 + a.abs().max(b.abs()))
}

fn mapped(x: &[f64], scale: f64, shift: f64) -> Sample {
    Sample::new(x.iter().map(|v| v * scale + shift).collect()).unwrap()
}

fn plain(x: &[f64]) -> Sample {
    mapped(x, 1.0, 0.0)
}

fn session(values: &[f64], builds: usize, set: usize) -> Vec<RoundShot> {
    let shot =
        |(i, &value): (usize, &f64)| RoundShot { round: i / (builds * set), build: i / set % builds, value };
    values.iter().enumerate().map(shot).collect()
}

/// Same p, same t, and a half-width that scales.
fn assert_follows(original: &TDifference, changed: &TDifference, sign: f64, scale: f64) {
    assert!(near(original.t() * sign, changed.t()), "{original:?} {changed:?}");
    assert!(near(original.p_value(), changed.p_value()));
    assert!(near(original.diff * sign * scale, changed.diff));
    assert!(near(original.half_width(Level::P95) * scale, changed.half_width(Level::P95)));
}

proptest! {
    #[test]
    fn spreads(x in values(5), y in values(5), scale in 0.01..100.0f64, shift in -1000.0..1000.0f64) {
        let (a, b) = (plain(&x), plain(&y));
        let (c, d) = (mapped(&x, scale, shift), mapped(&y, scale, shift));
        if let Ok(spread) = spread_ratio(&a, &b) {
            let (moved, swapped) = (spread_ratio(&c, &d).unwrap(), spread_ratio(&b, &a).unwrap());
            prop_assert!(near(spread.ratio(), moved.ratio()) && near(spread.ratio(), 1.0 / swapped.ratio()));
            prop_assert!(near(spread.p_value(), moved.p_value()) && near(spread.p_value(), swapped.p_value()));
            for level in [Level::P90, Level::P95, Level::P99] {
                let (Some(here), Some(there)) = (spread.interval(level), moved.interval(level)) else { continue };
                prop_assert!(here.low <= here.high && near(here.low, there.low) && near(here.high, there.high));
                prop_assert!(spread.p_value() >= level.alpha() || here.excludes(1.0));
                // Counts alike, and far from z = n, p and interval tell the same story.
                if x.len() == y.len() && (spread.p_value() / level.alpha() - 1.0).abs() > 1e-6 {
                    prop_assert_eq!(spread.p_value() < level.alpha(), here.excludes(1.0));
                }
            }
        }
        if let Ok(ratio) = variance_ratio(&a.summary(), &b.summary()) {
            let swapped = variance_ratio(&b.summary(), &a.summary()).unwrap();
            prop_assert!(near(ratio.p_value(), swapped.p_value()));
            prop_assert!(near(ratio.interval(Level::P95).low, 1.0 / swapped.interval(Level::P95).high));
        }
    }

    #[test]
    fn a_line_through_the_session(x in values(8), slope in -3.0..3.0f64, builds in 1usize..4) {
        let shots = |extra: f64| -> Vec<OrderedShot> {
            let shot = |(i, &value): (usize, &f64)| {
                let (at, build) = (i as f64, i % builds);
                OrderedShot { at, build, value: value + extra * at + 100.0 * build as f64 }
            };
            x.iter().enumerate().map(shot).collect()
        };
        let (Ok(flat), Ok(tilted)) = (trend(&shots(0.0)), trend(&shots(slope))) else { return Ok(()) };
        prop_assert!(near(flat.textbook.diff + slope, tilted.textbook.diff));
        prop_assert!((flat.textbook.se - tilted.textbook.se).abs() < 1e-7 * (1.0 + flat.textbook.se));
        prop_assert!(flat.slope().se >= flat.textbook.se);
        prop_assert!(near(flat.total().diff, flat.textbook.diff * (x.len() - 1) as f64));
        prop_assert!(near(flat.total().p_value(), flat.slope().p_value()));
    }

    #[test]
    fn dealing(x in prop::collection::vec(-50i32..50, 1..5), y in prop::collection::vec(-50i32..50, 1..5), seed in any::<u64>()) {
        let [x, y] = [x, y].map(|v| v.into_iter().map(f64::from).collect::<Vec<_>>());
        let (here, there) = (Deals::of_two(&x, &y).unwrap(), Deals::of_two(&y, &x).unwrap());
        let (a, b) = (here.list().unwrap(), there.list().unwrap());
        prop_assert_eq!((a.as_far, a.at_least, a.at_most), (b.as_far, b.at_most, b.at_least));
        prop_assert!(a.p_value() > 0.0 && a.at_least + a.at_most >= a.deals);
        let drawn = here.draw(200, seed);
        prop_assert!(drawn.p_value() >= 1.0 / 201.0 && drawn == here.draw(200, seed));
        prop_assert_eq!(here.list_or_draw(1_000_000, seed), a);
    }

    #[test]
    fn combining(effects in prop::collection::vec((wild(), wild()), 0..6)) {
        let sessions: Vec<SessionEffect> =
            effects.into_iter().map(|(effect, variance)| SessionEffect { effect, variance }).collect();
        if let Ok(found) = combine(&sessions) {
            prop_assert!(found.between >= 0.0 && found.headline().se > 0.0, "{:?}", found);
            prop_assert!(!found.headline().p_value().is_nan(), "{:?}", found);
        }
    }

    #[test]
    fn on_the_ground(x in values(4), y in values(4), turn in 0.0..6.3f64, away in 0.0..300.0f64) {
        let n = x.len().min(y.len());
        let turned = |s: f64, c: f64| -> (Vec<f64>, Vec<f64>) {
            x.iter().zip(&y).map(|(x, y)| (c * x - s * y, s * x + c * y)).unzip()
        };
        let points = Points::new(&x, &y).unwrap();
        let (u, v) = turned(turn.sin(), turn.cos());
        let other = Points::new(&u, &v).unwrap();
        prop_assert_eq!(points.n(), n);
        let (a, b) = (points.ellipse(0.9).unwrap(), other.ellipse(0.9).unwrap());
        prop_assert!(near(a.major, b.major) && (a.minor - b.minor).abs() < 1e-6 * (1.0 + a.major));
        if let Some(scatter) = BivariateNormal::new(points.center(), points.covariance()) {
            // A circle turns with the shots, all the ground holds all of them, and more ground never fewer.
            let spot = |p: &Points| Point { x: p.center().x, y: p.center().y };
            let round = scatter.circle(spot(&points), away);
            let turned = BivariateNormal::new(other.center(), other.covariance()).unwrap().circle(spot(&other), away);
            prop_assert!((round - turned).abs() < 1e-8, "{round} {turned}");
            let all = Stretch { low: f64::NEG_INFINITY, high: f64::INFINITY };
            prop_assert!((scatter.rectangle(all, all) - 1.0).abs() < 1e-10);
            let box_ = Stretch { low: points.center().x - away, high: points.center().x + away };
            prop_assert!(scatter.rectangle(box_, all) >= round - 1e-9);
        }
    }

    #[test]
    fn two_samples(x in values(5), y in values(5), scale in 0.01..100.0f64, shift in -1000.0..1000.0f64) {
        let (a, b) = (plain(&x), plain(&y));
        let (c, d) = (mapped(&x, scale, shift), mapped(&y, scale, shift));
        if let Ok(test) = welch(&a, &b) {
            assert_follows(&test, &welch(&b, &a).unwrap(), -1.0, 1.0);
            assert_follows(&test, &welch(&c, &d).unwrap(), 1.0, scale);
            let interval = test.interval(Level::P90);
            let (low, high) = (-3.0, 5.0);
            prop_assert_eq!(equivalence(&test, low, high).holds(0.05), interval.inside(low, high));
            prop_assert_eq!(test.p_value() < 0.05, test.interval(Level::P95).excludes(0.0));
        }
        if let Ok(test) = yuen(&a, &b, TRIM) {
            assert_follows(&test.difference, &yuen(&b, &a, TRIM).unwrap().difference, -1.0, 1.0);
            assert_follows(&test.difference, &yuen(&c, &d, TRIM).unwrap().difference, 1.0, scale);
        }
    }

    #[test]
    fn rounds(x in values(12), builds in 2usize..4, set in 1usize..4, scale in 0.01..100.0f64, drift in -50.0..50.0f64) {
        let shots = session(&x, builds, set);
        let Ok(rounds) = Rounds::new(&shots) else { return Ok(()) };
        let Ok(result) = rounds.compare(1, 0) else { return Ok(()) };
        assert_follows(&result.fixed_effects, &rounds.compare(0, 1).unwrap().fixed_effects, -1.0, 1.0);
        // Whatever moves a whole round moves no difference within rounds.
        let moved: Vec<RoundShot> = shots.iter()
            .map(|shot| RoundShot { value: shot.value * scale + drift * shot.round as f64, ..*shot })
            .collect();
        let moved = Rounds::new(&moved).unwrap().compare(1, 0).unwrap();
        assert_follows(&result.fixed_effects, &moved.fixed_effects, 1.0, scale);
        // The headline only ever widens, and its p and interval tell the same story.
        let headline = result.headline();
        for level in [Level::P90, Level::P95, Level::P99] {
            let textbook = result.fixed_effects.half_width(level);
            prop_assert!(headline.half_width(level) >= 1.0999 * textbook);
            prop_assert_eq!(headline.interval(level).excludes(0.0), headline.p_value() < level.alpha());
        }
        let same = headline.equivalence(-4.0, 4.0).p_value() < 0.05;
        prop_assert_eq!(same, headline.interval(Level::P90).inside(-4.0, 4.0));
    }

    #[test]
    fn two_builds_by_the_closed_form(x in values(12), set in 1usize..4) {
        let shots = session(&x, 2, set);
        let Ok(rounds) = Rounds::new(&shots) else { return Ok(()) };
        let Ok(result) = rounds.compare(1, 0) else { return Ok(()) };
        let (mut weights, mut sum, mut cells) = (0.0, 0.0, Vec::new());
        for round in 0..rounds.count() {
            let of = |build| shots.iter().filter(|s| s.round == round && s.build == build).map(|s| s.value).collect::<Vec<_>>();
            let (a, b) = (of(0), of(1));
            let weight = (a.len() * b.len()) as f64 / (a.len() + b.len()) as f64;
            weights += weight;
            if weight > 0.0 {
                sum += weight * (stats::describe::mean(&b) - stats::describe::mean(&a));
            }
            cells.push([a, b].concat());
        }
        let d = sum / weights;
        let squares: f64 = cells.iter().map(|cell| stats::describe::sum_of_squares(cell)).sum();
        let df = shots.len() as f64 - cells.len() as f64 - 1.0;
        prop_assert!(near(result.fixed_effects.diff, d));
        prop_assert!(near(result.fixed_effects.df, df));
        prop_assert!(near(result.fixed_effects.se, ((squares - d * d * weights) / df / weights).sqrt()));
    }

    #[test]
    fn nothing_finite_is_a_trap(x in prop::collection::vec(wild(), 0..12), y in prop::collection::vec(wild(), 0..12), level in 0.5..1.0f64) {
        let level = Level::new(level).unwrap_or(Level::P95);
        if let Ok(rounds) = Rounds::new(&session(&x, 2, 2)) && let Ok(result) = rounds.compare(0, 1) {
            prop_assert!(!result.headline().half_width(level).is_nan());
            prop_assert!(!result.headline().p_value().is_nan());
        }
        let (Ok(a), Ok(b)) = (Sample::new(x), Sample::new(y)) else { return Ok(()) };
        let found = [welch(&a, &b), yuen(&a, &b, TRIM).map(|yuen| yuen.difference)];
        for test in found.into_iter().flatten() {
            prop_assert!(!test.p_value().is_nan() && !test.half_width(level).is_nan(), "{:?}", test);
        }
        let (median, mad) = (stats::describe::median(a.values()), stats::describe::mad(a.values()));
        prop_assert!(median.is_some_and(f64::is_finite) && mad.is_some_and(f64::is_finite));
        prop_assert!(a.lag1_autocorrelation().is_none_or(f64::is_finite));
    }

    #[test]
    fn summaries_are_checked_at_the_door(n in 0usize..4, mean in wild(), sd in wild()) {
        if let Ok(summary) = Summary::new(n, mean, sd) {
            let other = Summary::new(5, 1.0, 2.0).unwrap();
            if let Ok(test) = welch_from_summaries(&summary, &other) {
                prop_assert!(!test.p_value().is_nan(), "{:?}", test);
            }
        }
    }

    #[test]
    fn planned_looks_are_total(times in prop::collection::vec(0.0..1.2f64, 0..8), alpha in 1e-12..0.499f64, sort in any::<bool>()) {
        let mut times = times;
        if sort {
            times.sort_by(f64::total_cmp);
        }
        if let Ok(looks) = planned_looks(Level::missing(alpha).unwrap(), &times) {
            for look in looks {
                prop_assert!(look.nominal_p >= 0.0 && look.nominal_p <= alpha * 1.000001, "{:?}", look);
            }
        }
    }
}

#[test]
fn builds_linked_through_a_third() {
    // 0 and 2 never share a round; 3 shares with nobody.
    let shot = |round, build, value| RoundShot { round, build, value };
    let shots = [
        shot(0, 0, 1.0),
        shot(0, 0, 2.0),
        shot(0, 1, 4.0),
        shot(0, 1, 6.0),
        shot(1, 1, 5.0),
        shot(1, 1, 4.0),
        shot(1, 2, 8.0),
        shot(1, 2, 9.0),
        shot(2, 3, 7.0),
        shot(2, 3, 9.0),
    ];
    let rounds = Rounds::new(&shots).unwrap();
    let linked = rounds.compare(2, 0).unwrap();
    assert!(near(linked.fixed_effects.diff, 3.5 + 4.0), "{linked:?}");
    assert!(near(linked.fixed_effects.df, 10.0 - 3.0 - 2.0));
    assert_eq!((linked.shared_rounds, linked.paired), (0, None));
    assert_eq!(rounds.compare(3, 0).unwrap_err(), stats::Refusal::NotLinked);
    assert!(rounds.compare(9, 0).is_err() && rounds.compare(0, 0).is_err());
}

#[test]
fn sets_that_disagree_fall_back_to_rounds() {
    let mut shots = Vec::new();
    for (round, lead) in [9.0, -7.0, 8.0, -6.0].into_iter().enumerate() {
        for i in 0..3 {
            shots.push(RoundShot { round, build: 0, value: f64::from(i) });
            shots.push(RoundShot { round, build: 1, value: f64::from(i) + lead });
        }
    }
    let result = Rounds::new(&shots).unwrap().compare(1, 0).unwrap();
    assert!(result.falls_back());
    let paired = result.paired.unwrap();
    assert!(near(result.headline().half_width(Level::P95), paired.half_width(Level::P95)));
    assert!(near(result.headline().p_value(), paired.p_value()));
}

#[test]
fn equal_values_are_refused_whatever_their_digits() {
    let x = Sample::new(vec![0.1; 7]).unwrap();
    let y = Sample::new(vec![0.3; 9]).unwrap();
    assert_eq!(welch(&x, &y), Err(stats::Refusal::NoScatter));
    let shots: Vec<RoundShot> = session(&[251.3; 12], 2, 3);
    assert_eq!(Rounds::new(&shots).unwrap().compare(0, 1), Err(stats::Refusal::NoScatter));
}

#[test]
fn looks_need_not_be_equal_and_alpha_need_not_be_five_percent() {
    let times: Vec<f64> = (2..=6).map(|round| f64::from(round) / 6.0).collect();
    let equal = planned_looks(Level::P90, &times).unwrap();
    let single = planned_looks(Level::P95, &[1.0]).unwrap();
    assert!((single[0].nominal_p - 0.05).abs() < 1e-13);
    assert!(equal.windows(2).all(|pair| pair[0].nominal_p < pair[1].nominal_p));
}

/// Expected largest of k normal values as printed to three decimals (Tippett 1925).
#[test]
fn the_best_of_k_equal_builds() {
    for (k, tabled) in [(2, 0.564), (3, 0.846), (4, 1.029), (5, 1.163), (6, 1.267)] {
        assert!((stats::expected_best(k) - tabled).abs() < 6e-4, "{k}: {}", stats::expected_best(k));
    }
    assert!((stats::expected_best(2) - 1.0 / std::f64::consts::PI.sqrt()).abs() < 1e-13);
    assert!(stats::expected_best(0) == 0.0 && stats::expected_best(1) == 0.0);
}

/// 3.92/ln²1.5 · (kurtosis − 1): offline shots (4.4), normal ones, carry (8).
#[test]
fn shots_to_tell_spreads_apart() {
    for (kurtosis, tabled) in [(4.4, 82), (3.0, 48), (8.0, 168)] {
        assert_eq!(stats::shots_for_ratio(1.5, kurtosis, Level::P95, 0.8), Some(tabled));
    }
    assert_eq!(stats::shots_for_ratio(1.0, 3.0, Level::P95, 0.8), None);
}

//! What a balanced test in turns will show: the chance that its headline excludes zero or lies inside a margin.
//!
//! The headline of [`Rounds`](crate::Rounds) is widened and falls back to whole rounds where sets disagree; both
//! cost power, most of all in few rounds. For independent normal shots the difference and the mean squares
//! behind its error are independent, so the chance is a mean over two or three chi-square variables, without
//! simulation. Differences and margins are in standard deviations of one shot within a build.
//! Limits: equal sets in every round. Source: own construction on normal theory; `cargo xtask calibrate` holds it
//! against invented golf shots (target 17).

use crate::choices::{INTERACTION_P, LONGEST_TURN};
use crate::distributions::{f_upper, normal_cdf, t_upper};
use crate::level::Level;
use crate::quadrature::{Node, Scale};
use crate::real::{exp, ln_1p, square};
use crate::rounds::{planned_widening, turn_widening};

/// Panels of twenty nodes for the mean squares that decide the fallback, whose densities are broad.
const PANELS: usize = 2;

/// A test in turns: every round holds one set of each build.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TurnsDesign {
    /// Builds that are hit in turn.
    pub builds: usize,
    /// Passes through the builds.
    pub rounds: usize,
    /// Shots with one build in a row.
    pub set: usize,
}

/// The three independent parts of the residual: each with its degrees of freedom.
#[derive(Debug, Clone, Copy)]
struct Parts {
    /// How the pair's difference changes from round to round.
    between: f64,
    /// Shots of the pair within their sets.
    within: f64,
    /// What the other builds add to the common residual.
    rest: f64,
}

impl TurnsDesign {
    fn usable(&self) -> bool {
        self.builds >= 2 && self.rounds >= 2 && self.set >= 1
    }

    /// W: the variance of the difference is that of a shot over W.
    fn information(&self) -> f64 {
        (self.rounds * self.set) as f64 / 2.0
    }

    fn parts(&self) -> Parts {
        let (others, rounds, within) =
            ((self.builds - 2) as f64, self.rounds as f64, (self.rounds * (self.set - 1)) as f64);
        Parts { between: rounds - 1.0, within: 2.0 * within, rest: others * (rounds - 1.0 + within) }
    }

    /// Chance that the headline at `level` finds the candidate higher when it truly is by `difference`.
    ///
    /// E[Φ((δ − h)·√W)], h the headline's half-width. Requires: two builds, two rounds, a shot in every set; else
    /// NaN. Accuracy: 1e-3 absolute for two builds; with more, 1.5e-3 from eight rounds on and 5e-3 in five (see
    /// `few_places`).
    #[must_use]
    pub fn detection(&self, difference: f64, level: Level) -> f64 {
        let root = self.information().sqrt();
        self.mean_over_half_widths(level, &|h| normal_cdf((difference - h) * root))
    }

    /// Chance that the headline at `level` lies inside ±`margin` when builds truly differ by `difference`.
    ///
    /// E[Φ((Δ − h − δ)·√W) − Φ((h − Δ − δ)·√W); h < Δ]. Requires and accuracy: as for `detection`.
    #[must_use]
    pub fn equivalence(&self, margin: f64, difference: f64, level: Level) -> f64 {
        let root = self.information().sqrt();
        self.mean_over_half_widths(level, &|h| {
            let inside =
                normal_cdf((margin - h - difference) * root) - normal_cdf((h - margin - difference) * root);
            inside.max(0.0)
        })
    }

    /// Half of the headline's interval at `level` where sets agree and shots lean on each other as usual, in standard
    /// deviations of a shot: factor · t · √(1/W).
    ///
    /// Requires: two builds, two rounds, a shot in every set; else NaN.
    #[must_use]
    pub fn half_width(&self, level: Level) -> f64 {
        if !self.usable() {
            return f64::NAN;
        }
        let Parts { between, within, rest } = self.parts();
        turn_widening(self.set as f64) * t_upper(level.tail(), between + within + rest)
            / self.information().sqrt()
    }

    /// The mean of a function of the headline's half-width, in standard deviations of a shot.
    fn mean_over_half_widths(&self, level: Level, f: &dyn Fn(f64) -> f64) -> f64 {
        if !self.usable() {
            return f64::NAN;
        }
        let (parts, root) = (self.parts(), self.information().sqrt());
        let df = parts.between + parts.within + parts.rest;
        let usual = planned_widening(self.rounds, self.set) * t_upper(level.tail(), df) / root;
        let paired = t_upper(level.tail(), parts.between) / root;
        let always = self.set as f64 > LONGEST_TURN;
        let limit = if parts.within >= 2.0 {
            f_upper(INTERACTION_P, parts.between, parts.within)
        } else {
            f64::INFINITY
        };
        let half_width = |between: f64, others: f64, falls_back: bool| {
            let own = usual * ((square(between) * parts.between + others) / df).sqrt();
            if falls_back { own.max(paired * between) } else { own }
        };
        let Some(scale) = Scale::new(parts.between) else { return f64::NAN };
        let (rests, mut sum, mut mass) = (few_places(parts.rest), 0.0, 0.0);
        for within in places(parts.within) {
            // Where sets begin to disagree by too much for chance: the half-width jumps there.
            let bound = limit.sqrt() * within.at;
            for (from, to, falls_back) in [(0.0, bound, always), (bound, f64::INFINITY, true)] {
                for between in scale.places(from, to, PANELS) {
                    for rest in &rests {
                        let others = square(within.at) * parts.within + square(rest.at) * parts.rest;
                        let weight = within.weight * between.weight * rest.weight;
                        sum += weight * f(half_width(between.at, others, falls_back));
                        mass += weight;
                    }
                }
            }
        }
        sum / mass
    }
}

/// Values of the ratio of an estimated to a true deviation; 1 alone where there is nothing to estimate.
fn places(df: f64) -> Vec<Node> {
    match Scale::new(df) {
        Some(scale) => scale.places(0.0, f64::INFINITY, PANELS),
        None => vec![Node { at: 1.0, weight: 1.0 }],
    }
}

/// The same for the other builds' part, which decides nothing by itself: three places on the normal logarithm of
/// the ratio, whose mean is about −1/(2 df), so that the estimated variance is right on average, and whose variance
/// is about 1/(2 df).
fn few_places(df: f64) -> Vec<Node> {
    if df <= 0.0 {
        return vec![Node { at: 1.0, weight: 1.0 }];
    }
    let (mean, step) = (-0.5 / df, (3.0 / (2.0 * df)).sqrt());
    [(-step, 1.0 / 6.0), (0.0, 2.0 / 3.0), (step, 1.0 / 6.0)]
        .map(|(u, weight)| Node { at: exp(mean + u), weight })
        .into()
}

/// How far the scatter of one session lies from the usual one: factors on a shot's deviation with their chances.
///
/// Shots with heavy tails do not scatter alike every day: a session without a mishit is a quiet one, its error small
/// and known to be small. The variance of a session of n shots varies by (κ − 3)/n beyond the normal's own; it is
/// taken as log-normal with mean 1, on five Gauss–Hermite places. Normal shots (κ = 3 or less) have one: 1.
/// Source: variance of a sample variance by the fourth moment, any textbook; nodes from Abramowitz and Stegun 25.10.
#[must_use]
pub fn session_scales(kurtosis: f64, shots: usize) -> Vec<SessionScale> {
    let variance = (kurtosis - 3.0) / shots.max(1) as f64;
    if variance.is_nan() || variance <= 0.0 {
        return vec![SessionScale { factor: 1.0, chance: 1.0 }];
    }
    let log_variance = ln_1p(variance);
    let place = |(z, chance): (f64, f64)| SessionScale {
        factor: exp(0.5 * (log_variance.sqrt() * z - 0.5 * log_variance)),
        chance,
    };
    [
        (-2.856_970_013_872_806, 0.011_257_411_327_720_69),
        (-1.355_626_179_974_266, 0.222_075_922_005_612_6),
        (0.0, 0.533_333_333_333_333_3),
        (1.355_626_179_974_266, 0.222_075_922_005_612_6),
        (2.856_970_013_872_806, 0.011_257_411_327_720_69),
    ]
    .map(place)
    .into()
}

/// One factor on the deviation of a shot, and how likely a session has it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SessionScale {
    /// Above 1 for a session that scatters more than usual.
    pub factor: f64,
    /// All chances add up to 1.
    pub chance: f64,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::choices::WIDENING;
    use crate::distributions::normal_sf;

    const TWO_BY_THREE: TurnsDesign = TurnsDesign { builds: 2, rounds: 6, set: 3 };

    #[test]
    fn more_difference_more_rounds_and_bigger_sets_never_show_less() {
        let chance = |rounds, set, difference| {
            TurnsDesign { builds: 2, rounds, set }.detection(difference, Level::P95)
        };
        for rounds in 2..12 {
            assert!(chance(rounds + 1, 3, 0.8) > chance(rounds, 3, 0.8), "{rounds} rounds");
            assert!(chance(rounds, 3, 0.9) > chance(rounds, 3, 0.8), "{rounds} rounds");
            assert!(chance(rounds, 4, 0.8) > chance(rounds, 3, 0.8), "{rounds} rounds");
        }
    }

    #[test]
    fn without_the_fallback_it_is_the_noncentral_t() {
        // One shot a set: no test of sets, and the residual has rounds − 1 degrees of freedom.
        let design = TurnsDesign { builds: 2, rounds: 12, set: 1 };
        let critical = WIDENING * t_upper(0.025, 11.0);
        for difference in [0.0, 0.5, 1.5] {
            let delta = difference * 6f64.sqrt();
            let scale = Scale::new(11.0).expect("positive");
            let expected = scale.mean(delta + 8.0, &|s| normal_sf(critical * s - delta));
            let got = design.detection(difference, Level::P95);
            assert!((got - expected).abs() < 1e-3, "{difference}: {got} for {expected}");
        }
    }

    #[test]
    fn equal_builds_are_found_different_less_often_than_promised() {
        for builds in [2, 3, 5] {
            let one_side = TurnsDesign { builds, ..TWO_BY_THREE }.detection(0.0, Level::P95);
            assert!(one_side > 0.01 && one_side < 0.025, "{builds}: {one_side}");
        }
    }

    #[test]
    fn a_wide_margin_is_certified_and_a_narrow_one_is_not() {
        let same = |margin, difference| TWO_BY_THREE.equivalence(margin, difference, Level::P90);
        assert!(same(3.0, 0.0) > 0.999 && same(0.2, 0.0) < 1e-3);
        assert!(same(1.0, 1.0) < 0.05, "at the margin itself");
    }

    #[test]
    fn a_difference_to_either_side_is_the_same_difference() {
        for (margin, difference) in [(1.0, 0.4), (2.0, 1.9), (0.8, 0.1), (0.5, 2.0)] {
            let same = |difference| TWO_BY_THREE.equivalence(margin, difference, Level::P90);
            assert!((same(difference) - same(-difference)).abs() < 1e-12, "{margin} {difference}");
        }
    }

    /// (rounds − 1) of the pair's differences, 2·rounds·(set − 1) within its sets, and as much for each other build.
    #[test]
    #[expect(clippy::float_cmp, reason = "whole numbers")]
    fn the_parts_of_a_residual_have_their_degrees_of_freedom() {
        for (builds, rounds, set) in [(2, 6, 3), (4, 5, 2), (7, 3, 1)] {
            let parts = TurnsDesign { builds, rounds, set }.parts();
            let (others, between, within) = (builds - 2, rounds - 1, rounds * (set - 1));
            let whole = |x: usize| x as f64;
            assert!(parts.between == whole(between) && parts.within == whole(2 * within));
            assert!(parts.rest == whole(others * (between + within)));
            let all = parts.between + parts.within + parts.rest;
            assert!(all == whole(builds * rounds * set - rounds - builds + 1));
        }
    }

    #[test]
    fn three_places_have_the_mean_and_the_variance_of_an_estimated_deviation() {
        for df in [2.0, 9.0, 40.0] {
            let mean = |of: &dyn Fn(f64) -> f64| -> f64 {
                few_places(df).iter().map(|place| place.weight * of(place.at)).sum()
            };
            let off = |u: f64| crate::real::ln(u) + 0.5 / df;
            assert!((mean(&|_| 1.0) - 1.0).abs() < 1e-12 && mean(&off).abs() < 1e-12);
            assert!((mean(&|u| square(off(u))) - 1.0 / (2.0 * df)).abs() < 1e-12, "{df}");
            // An estimated variance is right on average, up to −1/(15 df³) and smaller terms.
            assert!((mean(&square) - 1.0).abs() < 0.1 / (df * df * df), "{df}");
        }
        assert!(few_places(0.0).len() == 1 && (few_places(0.0)[0].at - 1.0).abs() < 1e-15);
    }

    /// Single shots leave nothing to fall back to: the half-width follows one chi-square variable with all of the
    /// residual's degrees of freedom, over which the mean is taken here without its parts.
    #[test]
    fn with_more_builds_the_chance_is_that_of_all_their_degrees_of_freedom() {
        let level = Level::P95;
        for (builds, rounds) in [(3, 5), (3, 8), (3, 20), (4, 8)] {
            let design = TurnsDesign { builds, rounds, set: 1 };
            let root = design.information().sqrt();
            let df = ((builds - 1) * (rounds - 1)) as f64;
            let usual = WIDENING * t_upper(level.tail(), df) / root;
            for difference in [0.4, 0.8, 1.2, 1.7, 2.3] {
                let chance = |ratio: f64| normal_cdf((difference - usual * ratio) * root);
                let exact: f64 = places(df).iter().map(|place| place.weight * chance(place.at)).sum::<f64>()
                    / places(df).iter().map(|place| place.weight).sum::<f64>();
                let found = design.detection(difference, level);
                let accuracy = if rounds == 5 { 5e-3 } else { 1.5e-3 };
                assert!(
                    (found - exact).abs() < accuracy,
                    "{builds} {rounds} {difference}: {found} for {exact}"
                );
            }
        }
    }

    #[test]
    fn sessions_scatter_as_usual_on_average_and_by_their_fourth_moment() {
        for (kurtosis, shots) in [(8.0, 24), (4.5, 60), (3.0, 10), (1.8, 10)] {
            let scales = session_scales(kurtosis, shots);
            let mean =
                |of: &dyn Fn(f64) -> f64| scales.iter().map(|s| s.chance * of(square(s.factor))).sum::<f64>();
            let expected = (kurtosis - 3.0_f64).max(0.0) / shots as f64;
            assert!((mean(&|_| 1.0) - 1.0).abs() < 1e-12);
            assert!((mean(&|v| v) - 1.0).abs() < 1e-4, "{kurtosis}");
            assert!((mean(&|v| square(v - 1.0)) - expected).abs() < 0.01 * expected + 1e-12, "{kurtosis}");
        }
    }

    #[test]
    fn a_design_that_is_none_has_no_chance() {
        for design in [
            TurnsDesign { builds: 1, ..TWO_BY_THREE },
            TurnsDesign { rounds: 1, ..TWO_BY_THREE },
            TurnsDesign { set: 0, ..TWO_BY_THREE },
        ] {
            assert!(design.detection(1.0, Level::P95).is_nan());
        }
    }
}

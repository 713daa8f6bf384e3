//! How many shots a question needs, and what a session of given size can show.
//!
//! All differences and margins are in standard deviations of a single shot; shots are independent and normal
//! ('ideal'). What the cautious comparison needs is `SHOTS_FACTOR` times as much ('tool'), confirmed by
//! simulation on golf-shaped shots.
//! Source: noncentral t as E[Φ(t·s − δ)] with s = χ/√df, integrated directly: unlike the series of Lenth (Algorithm
//! AS 243, Applied Statistics 38 (1989), 185–189) it keeps its digits for every δ; for equivalence, Phillips, J. Pharmacokinetics and Biopharmaceutics 18 (1990), 137–144.

use crate::choices::SHOTS_FACTOR;
use crate::count::whole;
use crate::distributions::{normal_cdf, normal_sf, normal_upper, t_upper};
use crate::level::Level;
use crate::quadrature::Scale;
use crate::real::square;

/// How fast Φ can still be changing, beyond |δ|, where it is not yet 0 or 1.
const NORMAL_REACH: f64 = 8.0;

/// Beyond this many shots with each build the honest answer is that no session will do.
pub const MOST_SHOTS: usize = 10_000_000;

/// Shots with each of two builds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Shots {
    /// For independent normal shots and a textbook interval.
    pub ideal: usize,
    /// For the widened interval: ⌈1.21 · ideal⌉.
    pub tool: usize,
}

/// Shots with the first and the second build; not whole where a formula is solved.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sizes {
    /// Shots with one build.
    pub first: f64,
    /// Shots with the other.
    pub second: f64,
}

impl Sizes {
    /// The same number with both.
    #[must_use]
    pub fn each(n: f64) -> Sizes {
        Sizes { first: n, second: n }
    }

    fn df(self) -> f64 {
        self.first + self.second - 2.0
    }

    /// Standard error of the difference of means, in standard deviations of a shot.
    fn se(self) -> f64 {
        (1.0 / self.first + 1.0 / self.second).sqrt()
    }

    fn usable(self) -> bool {
        self.first >= 1.0 && self.second >= 1.0 && self.df() > 0.0 && self.df().is_finite()
    }
}

/// Chance that the interval at `level` excludes zero when builds truly differ by `difference` SDs.
///
/// P(T' > t) + P(T' < −t), T' noncentral t on n + m − 2 df with δ = difference/√(1/n + 1/m).
/// Requires: two shots in all beyond one each; else NaN. Accuracy: 1e-10 relative against
/// tests/reference/stats/09.
#[must_use]
pub fn detection_power(difference: f64, sizes: Sizes, level: Level) -> f64 {
    if !sizes.usable() {
        return f64::NAN;
    }
    let (df, delta) = (sizes.df(), difference / sizes.se());
    let Some(scale) = Scale::new(df).filter(|_| delta.is_finite()) else { return f64::NAN };
    let critical = t_upper(level.tail(), df);
    scale.mean(delta.abs() + NORMAL_REACH, &|s| {
        normal_sf(critical * s - delta) + normal_sf(critical * s + delta)
    })
}

/// Shots with each build to detect `difference` SDs with chance `power`; `None` beyond `MOST_SHOTS`.
#[must_use]
pub fn shots_to_detect(difference: f64, level: Level, power: f64) -> Option<Shots> {
    if !(proper(power) && difference.abs() > 0.0 && difference.is_finite()) {
        return None;
    }
    fewest_shots(large_sample(difference, level, 1.0 - power), &|n| {
        detection_power(difference, Sizes::each(n), level) >= power
    })
}

/// Chance that the interval at `level` (1 − 2α) lies inside ±`margin` when builds differ by `difference` SDs.
///
/// E[Φ((margin − difference)/e − t·s) − Φ(−(margin + difference)/e + t·s)] over s = χ/√df where positive,
/// e the standard error. Requires: as for `detection_power`, `margin` > 0. Accuracy: 1e-10 absolute.
#[must_use]
pub fn equivalence_power(margin: f64, difference: f64, sizes: Sizes, level: Level) -> f64 {
    if !sizes.usable() || margin.is_nan() || difference.is_nan() {
        return f64::NAN;
    }
    if margin <= 0.0 {
        return 0.0;
    }
    let (df, error) = (sizes.df(), sizes.se());
    let critical = t_upper(level.tail(), df);
    let (above, below) = ((margin - difference) / error, (margin + difference) / error);
    // Beyond this scale the interval is wider than the margins, whatever its center.
    let limit = margin / (error * critical);
    let steepness = above.abs().max(below.abs()).min(critical * 4.0) + 8.0;
    let inside = |s: f64| normal_cdf(above - critical * s) - normal_cdf(critical * s - below);
    Scale::new(df).map_or(f64::NAN, |scale| scale.mean_below(limit, steepness, &inside))
}

/// Shots with each build to show a true difference of `difference` SDs to lie inside ±`margin`.
#[must_use]
pub fn shots_for_equivalence(margin: f64, difference: f64, level: Level, power: f64) -> Option<Shots> {
    let possible = margin > difference.abs() && margin.is_finite();
    if !(possible && proper(power)) {
        return None;
    }
    fewest_shots(large_sample(margin - difference.abs(), level, 0.5 * (1.0 - power)), &|n| {
        equivalence_power(margin, difference, Sizes::each(n), level) >= power
    })
}

/// Chance that a test tells: that the interval at `different` excludes zero or the one at `same` lies inside ±`margin`.
///
/// 1 − E[Φ(t·s − δ) − Φ(m − u·s − δ)] and the same on the other side, over s = χ/√df: neither holds where the estimate
/// lies between the two. δ and m in standard errors, t and u the points of Student's t. Requires: as for
/// `detection_power`, `margin` > 0. Accuracy: 1e-3 absolute, as the two bounds cross at one s.
#[must_use]
pub fn telling_power(margin: f64, difference: f64, sizes: Sizes, different: Level, same: Level) -> f64 {
    if !(sizes.usable() && margin > 0.0 && difference.is_finite()) {
        return f64::NAN;
    }
    let (df, error) = (sizes.df(), sizes.se());
    let (margin, delta) = (margin / error, difference / error);
    let (excludes, lies_inside) = (t_upper(different.tail(), df), t_upper(same.tail(), df));
    let neither = |s: f64| {
        let (outer, inner) = (excludes * s, (margin - lies_inside * s).max(0.0));
        let between = normal_cdf(outer - delta) - normal_cdf(inner - delta) + normal_cdf(-inner - delta)
            - normal_cdf(-outer - delta);
        if outer > inner { between } else { 0.0 }
    };
    let steepness = delta.abs().max(margin) + NORMAL_REACH;
    Scale::new(df).map_or(f64::NAN, |scale| 1.0 - scale.mean(steepness, &neither))
}

/// Shots with each build so that a test tells with chance `power`, whatever the true difference.
///
/// The worst one lies in the middle of the estimates that tell neither: (m + (t − u)·e)/2, e the standard error.
#[must_use]
pub fn shots_to_tell(margin: f64, different: Level, same: Level, power: f64) -> Option<Shots> {
    if !(proper(power) && margin > 0.0 && margin.is_finite()) {
        return None;
    }
    let (excludes, lies_inside) = (normal_upper(different.tail()), normal_upper(same.tail()));
    let room = excludes + lies_inside - 2.0 * normal_upper(0.5 * power);
    fewest_shots(2.0 * square(room / margin), &|n| {
        let sizes = Sizes::each(n);
        let worst = 0.5 * (margin + (excludes - lies_inside) * sizes.se());
        telling_power(margin, worst, sizes, different, same) >= power
    })
}

/// Shots by the normal distribution, where `room` is what error may use up and `missed` the chance that it uses more.
fn large_sample(room: f64, level: Level, missed: f64) -> f64 {
    2.0 * square((normal_upper(level.tail()) + normal_upper(missed)) / room)
}

fn proper(power: f64) -> bool {
    power > 0.0 && power < 1.0
}

/// The smallest number of shots, at least two, that is enough; more must never be less enough.
///
/// Looks outward from `guess` (the large-sample answer) in doubling steps, then halves.
fn fewest_shots(guess: f64, enough: &dyn Fn(f64) -> bool) -> Option<Shots> {
    let (mut too_few, mut plenty) = (1, whole(guess, MOST_SHOTS).max(2));
    let mut step = 2;
    if enough(plenty as f64) {
        while plenty - too_few > step && enough((plenty - step) as f64) {
            plenty -= step;
            step *= 2;
        }
        too_few = too_few.max(plenty.saturating_sub(step));
    } else {
        (too_few, plenty) = (plenty, plenty + step);
        while !enough(plenty as f64) {
            if plenty > MOST_SHOTS {
                return None;
            }
            step *= 2;
            (too_few, plenty) = (plenty, plenty + step);
        }
    }
    while plenty - too_few > 1 {
        let middle = too_few + (plenty - too_few) / 2;
        if enough(middle as f64) { plenty = middle } else { too_few = middle }
    }
    let tool = whole((SHOTS_FACTOR * plenty as f64 * (1.0 - 4.0 * f64::EPSILON)).ceil(), 2 * MOST_SHOTS);
    (plenty <= MOST_SHOTS).then_some(Shots { ideal: plenty, tool })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::cell::Cell;

    #[test]
    fn the_fewest_shots_are_found_from_any_guess_and_soon() {
        for fewest in [2_usize, 3, 4, 7, 50, 51, 1000, 123_457, MOST_SHOTS] {
            let near = [fewest.saturating_sub(1), fewest, fewest + 1, fewest + 2];
            for guess in near.into_iter().chain([0, 1, fewest / 3, 2 * fewest, 10 * fewest]) {
                let asked = Cell::new(0);
                let enough = |n: f64| {
                    asked.set(asked.get() + 1);
                    n >= fewest as f64
                };
                let found = fewest_shots(guess as f64, &enough).map(|shots| shots.ideal);
                assert_eq!(found, Some(fewest), "guess {guess}");
                // Doubling out and halving back, each once over the distance.
                let distance = guess.clamp(2, MOST_SHOTS).abs_diff(fewest) + 2;
                let most = 2 * distance.ilog2() + 4;
                assert!(asked.get() <= most, "{} questions from {guess} to {fewest}", asked.get());
            }
        }
        assert!(fewest_shots(50.0, &|_| false).is_none());
        assert!(fewest_shots(50.0, &|n| n > MOST_SHOTS as f64).is_none());
    }

    /// Where an interval cannot both exclude zero and lie inside the margin, to tell is the one or the other.
    #[test]
    fn to_tell_is_to_find_or_to_show_the_same() {
        let (different, same) = (Level::P95, Level::P90);
        for n in [8.0, 20.0, 60.0] {
            let sizes = Sizes::each(n);
            for margin in [0.5, 1.0, 2.0].map(|errors| errors * sizes.se()) {
                for difference in [0.0, 0.5 * margin, margin, 2.0 * margin] {
                    let told = telling_power(margin, difference, sizes, different, same);
                    let either = detection_power(difference, sizes, different)
                        + equivalence_power(margin, difference, sizes, same);
                    // They overlap only where the deviation comes out at half of what it is, or less.
                    assert!(
                        (told - either).abs() < 5e-3,
                        "{n} {margin} {difference}: {told} is not {either}"
                    );
                }
            }
        }
    }

    #[test]
    fn the_shots_that_tell_do_so_whatever_is_true_and_one_fewer_does_not() {
        for margin in [0.3, 0.6, 1.0, 2.0] {
            for different in [Level::P95, Level::missing(0.0125).unwrap()] {
                let shots = shots_to_tell(margin, different, Level::P90, 0.8).expect("a number").ideal;
                let least = |n: usize| {
                    let told = |at: u32| {
                        let sizes = Sizes::each(n as f64);
                        telling_power(margin, 0.02 * f64::from(at) * margin, sizes, different, Level::P90)
                    };
                    (0..100).map(told).fold(1.0, f64::min)
                };
                assert!(least(shots) > 0.795, "{margin}: {} with {shots}", least(shots));
                assert!(least(shots - 1) < 0.8, "{margin}: {} with one fewer than {shots}", least(shots - 1));
            }
        }
    }

    /// 1.1 · 1.1 is a rounding more than 1.21: hundreds of shots must not cost one more for it.
    #[test]
    fn the_widening_costs_a_fifth_and_no_rounding() {
        for (ideal, tool) in
            [(100, 121), (200, 242), (1000, 1210), (99, 120), (101, 123), (MOST_SHOTS, 12_100_000)]
        {
            let found = fewest_shots(ideal as f64, &|n| n >= ideal as f64);
            assert_eq!(found, Some(Shots { ideal, tool }));
        }
    }

    #[test]
    fn the_first_guess_is_near_where_many_shots_are_needed() {
        for power in [0.5, 0.8, 0.95] {
            let found = shots_to_detect(0.05, Level::P95, power).expect("few enough").ideal as f64;
            assert!((large_sample(0.05, Level::P95, 1.0 - power) / found - 1.0).abs() < 0.005, "{found}");
            let found = shots_for_equivalence(0.05, 0.0, Level::P90, power).expect("few enough").ideal as f64;
            let guess = large_sample(0.05, Level::P90, 0.5 * (1.0 - power));
            assert!((guess / found - 1.0).abs() < 0.005, "{guess} for {found}");
        }
        let off_center = shots_for_equivalence(0.1, 0.05, Level::P90, 0.8).expect("few enough").ideal;
        let other_side = shots_for_equivalence(0.1, -0.05, Level::P90, 0.8).expect("few enough").ideal;
        assert_eq!(off_center, other_side);
    }

    #[test]
    fn questions_without_an_answer_have_none() {
        let detect = |difference, power| shots_to_detect(difference, Level::P95, power).is_none();
        assert!(detect(0.0, 0.8) && detect(f64::NAN, 0.8) && detect(f64::INFINITY, 0.8));
        for power in [0.0, 1.0, -0.1, 1.1, f64::NAN] {
            assert!(detect(1.0, power), "{power}");
            assert!(shots_for_equivalence(1.0, 0.0, Level::P90, power).is_none(), "{power}");
        }
        let same = |margin, difference| shots_for_equivalence(margin, difference, Level::P90, 0.8).is_none();
        assert!(same(1.0, 1.0) && same(1.0, -1.0) && same(0.0, 0.0) && same(f64::INFINITY, 0.0));
        assert!(!detect(-1.0, 0.8) && !same(1.0, 0.5));
    }

    #[test]
    fn a_session_without_a_degree_of_freedom_shows_nothing() {
        let usable = |first, second| Sizes { first, second }.usable();
        assert!(usable(1.0, 2.0) && usable(2.0, 1.0) && usable(1.5, 1.5));
        for (first, second) in [(1.0, 1.0), (0.5, 8.0), (8.0, 0.5), (f64::INFINITY, 2.0), (f64::NAN, 2.0)] {
            assert!(!usable(first, second), "{first} {second}");
            let sizes = Sizes { first, second };
            assert!(detection_power(1.0, sizes, Level::P95).is_nan());
            assert!(equivalence_power(1.0, 0.0, sizes, Level::P95).is_nan());
        }
        assert!(equivalence_power(f64::NAN, 0.0, Sizes::each(9.0), Level::P95).is_nan());
        assert!(equivalence_power(1.0, f64::NAN, Sizes::each(9.0), Level::P95).is_nan());
        assert!(detection_power(f64::INFINITY, Sizes::each(9.0), Level::P95).is_nan());
    }
}

//! How often a balanced test in turns that is hit on two days finds a difference, both days put together.
//!
//! Pairs of invented tests (`turns_paths`), each test with the error of its own shots, stand apart by what a gap does from day to
//! day. What pushes both days of a pair by the same moves the interval as far and is not drawn: given how far the days lie
//! apart, the middle between them is normal, and its chance to cross is worked out. How far they lie apart is taken at even
//! places of its distribution, and every pair counts once more turned around. One set of pairs thus answers for every size.
//! Limits: one side only, no looks on the way, both days as long. Source: own construction; conditional means instead of
//! counts, as in any textbook on simulation.

use crate::day_to_day::{Between, DayEffect};
use crate::distributions::{normal_cdf, normal_upper};
use crate::level::{Interval, Level};
use crate::real::square;
use crate::turns_paths::{InterimAnalysis, TurnsPaths, WholeTest};

/// Pairs of days that are invented, each counted twice: chances come out to about 0.005, one standard error.
const PAIRS: usize = 100;

/// How the two days are hit and put together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct VisitAgain {
    /// Rounds of each day.
    pub rounds: usize,
    /// Level of the interval that must exclude zero.
    pub level: Level,
    /// Standard deviation of a shot.
    pub shot_sd: f64,
    /// Standard deviation of the true gap from day to day.
    pub between: f64,
}

/// What pairs of days would show.
#[derive(Debug, Clone)]
pub struct TwoVisits {
    pairs: Vec<Crossing>,
}

/// One pair of days: the difference from which on it is found is normal.
#[derive(Debug, Clone, Copy)]
struct Crossing {
    from: f64,
    deviation: f64,
}

impl TwoVisits {
    /// Puts pairs of invented tests together by `ends`, the interval of the gap that answers for two days.
    ///
    /// Requires: an interval that moves with its days and turns around with them; pairs without one count as not found.
    pub fn new(
        tests: &TurnsPaths,
        again: VisitAgain,
        ends: impl Fn(&[DayEffect; 2]) -> Option<Interval>,
    ) -> Self {
        let look = InterimAnalysis { round: again.rounds, level: again.level };
        let tests: Vec<WholeTest> = tests.whole(look).take(2 * PAIRS).collect();
        let pairs = tests.chunks_exact(2).enumerate().flat_map(|(at, pair)| {
            let place = normal_upper((at as f64 + 0.5) / PAIRS as f64);
            crossings([pair[0], pair[1]], place, again, &ends)
        });
        Self { pairs: pairs.collect() }
    }

    /// Chance that a true difference, in the unit of `shot_sd`, is found.
    #[must_use]
    pub fn found(&self, difference: f64) -> f64 {
        let chance = |pair: &Crossing| normal_cdf((difference - pair.from) / pair.deviation);
        self.pairs.iter().map(chance).sum::<f64>() / (2 * PAIRS) as f64
    }
}

/// A pair with its days apart by `place` deviations, and the same pair turned around.
fn crossings(
    pair: [WholeTest; 2],
    place: f64,
    again: VisitAgain,
    ends: &impl Fn(&[DayEffect; 2]) -> Option<Interval>,
) -> [Crossing; 2] {
    let never = Crossing { from: f64::INFINITY, deviation: 1.0 };
    // Variances of what pushes the clubs apart on each of the days.
    let [first, second] = pair.map(|test| square(test.deviation * again.shot_sd) + square(again.between));
    let apart = place * (first + second).sqrt();
    // The middle of the two given how far they lie apart.
    let middle = apart * 0.5 * (first - second) / (first + second);
    let deviation = (first * second / (first + second)).sqrt();
    let normal = normal_upper(again.level.tail());
    let day = |test: WholeTest, push: f64| {
        let variance = square(test.half_width * again.shot_sd / normal);
        let effect = test.left * again.shot_sd + push;
        DayEffect { effect, variance, weighed: variance, between: Between::Both }
    };
    let days = [day(pair[0], middle + 0.5 * apart), day(pair[1], middle - 0.5 * apart)];
    ends(&days).map_or([never; 2], |Interval { low, high, .. }| {
        [Crossing { from: -low, deviation }, Crossing { from: high, deviation }]
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::TurnsDesign;
    use crate::day_to_day::day_to_day;

    const DESIGN: TurnsDesign = TurnsDesign { builds: 2, rounds: 8, set: 3 };
    const AGAIN: VisitAgain = VisitAgain { rounds: 8, level: Level::P95, shot_sd: 11.0, between: 3.4 };

    fn tests(kurtosis: f64, seed: u64) -> TurnsPaths {
        TurnsPaths::new(DESIGN, kurtosis, seed).expect("usable")
    }

    /// Both days alike and known to be: one interval around their weighted mean.
    fn pooled(days: &[DayEffect; 2]) -> Option<Interval> {
        let weights = days.map(|day| 1.0 / day.variance);
        let total: f64 = weights.iter().sum();
        let mean = days.iter().zip(weights).map(|(day, weight)| weight * day.effect).sum::<f64>() / total;
        let half = normal_upper(Level::P95.tail()) / total.sqrt();
        Some(Interval { low: mean - half, high: mean + half, level: Level::P95 })
    }

    fn together(days: &[DayEffect; 2]) -> Option<Interval> {
        Some(day_to_day(days, 5.0).ok()?.gap.interval(Level::P95))
    }

    /// Two tests that are known not to differ find what one of twice the length does, but for its degrees of freedom.
    #[test]
    fn days_that_are_known_to_be_alike_find_what_one_test_twice_as_long_does() {
        let alike = TwoVisits::new(&tests(3.0, 1), VisitAgain { between: 0.0, ..AGAIN }, pooled);
        for difference in [5.0, 8.0, 11.0] {
            let long = TurnsDesign { rounds: 16, ..DESIGN }.detection(difference / 11.0, Level::P95);
            let found = alike.found(difference);
            assert!((found - long).abs() < 0.05, "{difference}: {found} for {long}");
        }
    }

    /// Counted one by one with everything drawn, nothing worked out.
    #[test]
    fn what_is_worked_out_is_what_counting_finds() {
        let visits = TwoVisits::new(&tests(8.0, 1), AGAIN, together);
        let (paths, mut chance) = (tests(8.0, 2), crate::chance::Chance::seeded(3));
        let whole: Vec<WholeTest> =
            paths.whole(InterimAnalysis { round: 8, level: Level::P95 }).take(1_200).collect();
        let lows: Vec<f64> = whole
            .chunks_exact(2)
            .map(|pair| {
                let (one, other) = chance.normal_pair();
                let day = |test: WholeTest, deviate: f64| {
                    let push = deviate * (square(test.deviation * 11.0) + square(3.4)).sqrt();
                    let variance = square(test.half_width * 11.0 / normal_upper(0.025));
                    let effect = test.left * 11.0 + push;
                    DayEffect { effect, variance, weighed: variance, between: Between::Both }
                };
                together(&[day(pair[0], one), day(pair[1], other)]).expect("days").low
            })
            .collect();
        for difference in [6.0, 9.0, 12.0, 16.0] {
            let counted =
                lows.iter().filter(|low| difference + **low > 0.0).count() as f64 / lows.len() as f64;
            let found = visits.found(difference);
            // Four standard errors of 600 pairs.
            assert!((found - counted).abs() < 0.08, "{difference}: {found} for {counted}");
        }
    }

    #[test]
    fn another_seed_finds_nearly_the_same() {
        let found = |seed| TwoVisits::new(&tests(8.0, seed), AGAIN, together).found(10.0);
        assert_eq!(found(1).to_bits(), found(1).to_bits());
        assert!((found(1) - found(2)).abs() < 0.03, "{} {}", found(1), found(2));
    }

    #[test]
    fn more_difference_and_days_that_differ_less_never_show_less() {
        let paths = tests(8.0, 1);
        let of = |between| TwoVisits::new(&paths, VisitAgain { between, ..AGAIN }, together);
        let (usual, wild) = (of(3.4), of(8.0));
        assert!(usual.found(12.0) > usual.found(8.0) && usual.found(8.0) > usual.found(4.0));
        assert!(usual.found(12.0) > wild.found(12.0));
        assert!(
            TwoVisits::new(&paths, AGAIN, |_| None).found(50.0) < 1e-12,
            "nothing put together finds nothing"
        );
    }
}

//! How often a balanced test in turns that is hit on two days finds a difference, both days put together.
//!
//! Pairs of invented tests (`turns_paths`), each test with the error of its own shots, stand apart by what a gap does from day to
//! day. What pushes both days of a pair by the same moves the interval as far and is not drawn: given how far the days lie
//! apart, the middle between them is normal, and its chance to cross is worked out. How far they lie apart is taken at even
//! places of its distribution, and every pair counts once more turned around. One set of pairs thus answers for every size.
//! The interval that answers takes long: it is worked out for a few pairs, and for all of them one of the days averaged as if it were
//! known how much they differ, as wide as those few are on average. What the two find apart on the few corrects what the short one
//! finds on all (a control variate).
//! Limits: one side only, no looks on the way, both days as long. Source: own construction; conditional means instead of
//! counts, as in any textbook on simulation.

use crate::day_to_day::{Between, DayEffect};
use crate::distributions::{normal_cdf, normal_upper};
use crate::level::{Interval, Level};
use crate::real::square;
use crate::turns_paths::{InterimAnalysis, TurnsPaths, WholeTest};

/// Every so many pairs the interval that answers is worked out.
const WORKED_OUT: usize = 25;

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
    /// Of all pairs, by the short way.
    all: Vec<Crossing>,
    /// Of a few pairs, by the interval that answers and by the short way.
    few: Vec<[Crossing; 2]>,
}

/// One pair of days: the difference from which on it is found is normal.
#[derive(Debug, Clone, Copy)]
struct Crossing {
    from: f64,
    deviation: f64,
}

/// Two days of a pair, their middle as it is to be expected.
struct Pair {
    days: [DayEffect; 2],
    /// Deviation of the middle.
    deviation: f64,
}

impl TwoVisits {
    /// Puts pairs of invented tests together by `ends`, the interval of the gap that answers for two days; `None` where a pair has none.
    ///
    /// Requires: an interval that moves with its days and turns around with them.
    pub fn new(
        tests: &TurnsPaths,
        again: VisitAgain,
        ends: impl Fn(&[DayEffect; 2]) -> Option<Interval>,
    ) -> Option<Self> {
        let look = InterimAnalysis { round: again.rounds, level: again.level };
        let tests: Vec<WholeTest> = tests.whole(look).collect();
        let count = (tests.len() / 2) as f64;
        let place = |at: usize| normal_upper((at as f64 + 0.5) / count);
        let pairs = tests.chunks_exact(2).enumerate();
        let pairs: Vec<Pair> =
            pairs.map(|(at, pair)| Pair::of([pair[0], pair[1]], place(at), again)).collect();
        let worked_out = || pairs.iter().skip(WORKED_OUT / 2).step_by(WORKED_OUT);
        let few = worked_out().map(|pair| ends(&pair.days)).collect::<Option<Vec<Interval>>>()?;
        let widths = few.iter().zip(worked_out());
        let wider =
            widths.map(|(ends, pair)| 0.5 * (ends.high - ends.low) / pair.known(again).1).sum::<f64>()
                / few.len() as f64;
        let short = |pair: &Pair| {
            let (middle, half) = pair.known(again);
            pair.crossings(middle - wider * half, middle + wider * half)
        };
        let both = |(ends, pair): (&Interval, &Pair)| {
            let ([low, high], [short_low, short_high]) = (pair.crossings(ends.low, ends.high), short(pair));
            [[low, short_low], [high, short_high]]
        };
        Some(Self {
            all: pairs.iter().flat_map(short).collect(),
            few: few.iter().zip(worked_out()).flat_map(both).collect(),
        })
    }

    /// Chance that a true difference, in the unit of `shot_sd`, is found.
    #[must_use]
    pub fn found(&self, difference: f64) -> f64 {
        let chance = |pair: &Crossing| normal_cdf((difference - pair.from) / pair.deviation);
        let short = self.all.iter().map(chance).sum::<f64>() / self.all.len() as f64;
        let apart = self.few.iter().map(|[answers, short]| chance(answers) - chance(short)).sum::<f64>();
        (short + apart / self.few.len() as f64).clamp(0.0, 1.0)
    }
}

impl Pair {
    /// With its days apart by `place` deviations.
    fn of(pair: [WholeTest; 2], place: f64, again: VisitAgain) -> Self {
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
        Self { days: [day(pair[0], middle + 0.5 * apart), day(pair[1], middle - 0.5 * apart)], deviation }
    }

    /// Mean and half-width as if it were known by how much a gap moves from day to day.
    fn known(&self, again: VisitAgain) -> (f64, f64) {
        let weights = self.days.map(|day| 1.0 / (day.variance + square(again.between)));
        let total: f64 = weights.iter().sum();
        let sum: f64 = self.days.iter().zip(weights).map(|(day, weight)| weight * day.effect).sum();
        (sum / total, normal_upper(again.level.tail()) / total.sqrt())
    }

    /// Of the pair and of the same turned around.
    fn crossings(&self, low: f64, high: f64) -> [Crossing; 2] {
        [-low, high].map(|from| Crossing { from, deviation: self.deviation })
    }
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
        let alike =
            TwoVisits::new(&tests(3.0, 1), VisitAgain { between: 0.0, ..AGAIN }, pooled).expect("days");
        for difference in [5.0, 8.0, 11.0] {
            let long = TurnsDesign { rounds: 16, ..DESIGN }.detection(difference / 11.0, Level::P95);
            let found = alike.found(difference);
            assert!((found - long).abs() < 0.05, "{difference}: {found} for {long}");
        }
    }

    /// Counted one by one with everything drawn, nothing worked out.
    #[test]
    fn what_is_worked_out_is_what_counting_finds() {
        let visits = TwoVisits::new(&tests(8.0, 1), AGAIN, together).expect("days");
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
        let found = |seed| TwoVisits::new(&tests(8.0, seed), AGAIN, together).expect("days").found(10.0);
        assert_eq!(found(1).to_bits(), found(1).to_bits());
        assert!((found(1) - found(2)).abs() < 0.025, "{} {}", found(1), found(2));
    }

    #[test]
    fn more_difference_and_days_that_differ_less_never_show_less() {
        let paths = tests(8.0, 1);
        let of = |between| TwoVisits::new(&paths, VisitAgain { between, ..AGAIN }, together).expect("days");
        let (usual, wild) = (of(3.4), of(8.0));
        assert!(usual.found(12.0) > usual.found(8.0) && usual.found(8.0) > usual.found(4.0));
        assert!(usual.found(12.0) > wild.found(12.0));
        assert!(TwoVisits::new(&paths, AGAIN, |_| None).is_none());
    }
}

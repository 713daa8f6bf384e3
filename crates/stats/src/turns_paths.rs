//! When a balanced test in turns that is looked at on the way finds a difference: many such tests, invented round by
//! round from a seed.
//!
//! Looks at one test hang together by its difference and by its scatter, and each has its own luck with the fallback
//! of [`Rounds`](crate::Rounds): no path of one variable holds all that. So every shot of every test is drawn, and each
//! look asks of it what the headline would ask. One direction is not drawn: what pushes all shots of the pair apart by
//! the same is normal given everything else and changes no scatter; its chance to cross is worked out, which leaves
//! little noise. Shots are independent and have the kurtosis that is given: normal ones, whose deviation itself is drawn
//! for each shot. One side only: the chance of stopping on the wrong one is far below a percent where a plan is worth
//! its name. Source: own construction; conditional means instead of counts, as in any textbook on simulation.

use crate::chance::Chance;
use crate::choices::{INTERACTION_P, LONGEST_TURN};
use crate::distributions::{f_upper, normal_cdf, normal_upper, t_upper};
use crate::level::Level;
use crate::real::{exp, ln_1p, square};
use crate::rounds::planned_widening;
use crate::rounds_power::TurnsDesign;

/// Tests that are invented: chances come out to about 0.003, one standard error.
const TESTS: usize = 2_000;

/// An interim analysis of a test in turns.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InterimAnalysis {
    /// It comes when this round is complete; from 2, rising from look to look.
    pub round: usize,
    /// Level of the interval that must exclude zero.
    pub level: Level,
}

/// What a test knows once a round is complete, in variances of one shot.
#[derive(Debug, Clone, Copy, Default)]
struct Known {
    /// Average of the pair's differences.
    average: f64,
    /// How they change from round to round: Σ w (D − average)².
    between: f64,
    /// Shots of the pair around their sets.
    within: f64,
    /// What the other builds add to the common residual.
    rest: f64,
    /// Σ 1/s² over the pair's shots, s² the variance that was drawn for a shot.
    weight: f64,
    /// The difference of the pair as these weights have it: candidate's shots less what they were, and the other way.
    weighted: f64,
}

/// Many tests of one design, round by round.
#[derive(Debug, Clone)]
pub struct TurnsPaths {
    design: TurnsDesign,
    /// The rounds of the first test, then those of the second ...
    known: Vec<Known>,
}

/// The same tests with the interim analyses that are made of them.
#[derive(Debug, Clone)]
pub struct GroupSequentialTests {
    /// Above these an average of all rounds has been found by this look or an earlier one; test by test.
    bounds: Vec<f64>,
    looks: usize,
    /// Deviation of what pushes the pair apart, test by test.
    deviations: Vec<f64>,
}

impl TurnsPaths {
    /// Invents tests of this design with shots of this kurtosis (3 for normal ones); they may be looked at as shorter
    /// ones too.
    ///
    /// Requires: two builds, two rounds, a shot in every set; else `None`.
    #[must_use]
    pub fn new(design: TurnsDesign, kurtosis: f64, seed: u64) -> Option<Self> {
        if design.builds < 2 || design.rounds < 2 || design.set < 1 {
            return None;
        }
        let mut shots = Shots::new(kurtosis, seed);
        let mut known = Vec::with_capacity(TESTS * design.rounds);
        for _ in 0..TESTS {
            one_test(design, &mut shots, &mut known);
        }
        Some(Self { design, known })
    }

    /// The tests cut to so many rounds and looked at like this; looks beyond the rounds are not taken.
    #[must_use]
    pub fn looked_at(&self, rounds: usize, looks: &[InterimAnalysis]) -> GroupSequentialTests {
        let rounds = rounds.clamp(2, self.design.rounds);
        let looks: Vec<Bound> = looks
            .iter()
            .filter(|look| (2..=rounds).contains(&look.round))
            .map(|look| Bound::of(self.design, *look))
            .collect();
        let mut bounds = Vec::with_capacity(looks.len() * TESTS);
        let mut deviations = Vec::with_capacity(TESTS);
        for test in self.known.chunks_exact(self.design.rounds) {
            let Known { weight, weighted, .. } = test[rounds - 1];
            deviations.push(2.0 / weight.sqrt());
            let mut least = f64::INFINITY;
            for look in &looks {
                let now = test[look.round - 1];
                least = least.min(look.half_width(now) - (now.average - weighted));
                bounds.push(least);
            }
        }
        GroupSequentialTests { bounds, looks: looks.len(), deviations }
    }

    /// Each of these tests hit whole, this look its only one.
    pub(crate) fn whole(&self, look: InterimAnalysis) -> impl Iterator<Item = WholeTest> {
        let round = look.round.clamp(2, self.design.rounds);
        let bound = Bound::of(self.design, InterimAnalysis { round, ..look });
        self.known.chunks_exact(self.design.rounds).map(move |test| {
            let now = test[round - 1];
            WholeTest {
                left: now.average - now.weighted,
                half_width: bound.half_width(now),
                deviation: 2.0 / now.weight.sqrt(),
            }
        })
    }
}

/// What one test found, in standard deviations of a shot.
#[derive(Debug, Clone, Copy)]
pub(crate) struct WholeTest {
    /// The difference that it shows, less the truth and what pushes the pair apart.
    pub(crate) left: f64,
    /// Half-width of its headline.
    pub(crate) half_width: f64,
    /// Deviation of what pushes the pair apart; normal given everything else.
    pub(crate) deviation: f64,
}

impl GroupSequentialTests {
    /// Chance that a true difference, in standard deviations of a shot, is found at each look and not before.
    #[must_use]
    pub fn found_at(&self, difference: f64) -> Vec<f64> {
        let mut before = 0.0;
        (0..self.looks)
            .map(|look| {
                let by = self.found_by(look, difference);
                let here = by - before;
                before = by;
                here
            })
            .collect()
    }

    /// Chance that it is found at any look; 0 without one.
    #[must_use]
    pub fn found(&self, difference: f64) -> f64 {
        self.looks.checked_sub(1).map_or(0.0, |last| self.found_by(last, difference))
    }

    fn found_by(&self, look: usize, difference: f64) -> f64 {
        let tests = self.bounds.chunks_exact(self.looks).zip(&self.deviations);
        let sum: f64 =
            tests.map(|(bounds, deviation)| normal_cdf((difference - bounds[look]) / deviation)).sum();
        sum / TESTS as f64
    }
}

/// What a look asks of a test.
struct Bound {
    round: usize,
    usual: f64,
    paired: f64,
    df: f64,
    df_between: f64,
    df_within: f64,
    limit: f64,
}

impl Bound {
    fn of(design: TurnsDesign, InterimAnalysis { round, level }: InterimAnalysis) -> Self {
        let design = TurnsDesign { rounds: round, ..design };
        let (builds, rounds, set) = (design.builds as f64, round as f64, design.set as f64);
        let df_between = rounds - 1.0;
        let df_within = 2.0 * rounds * (set - 1.0);
        let df = (builds - 1.0) * df_between + builds * rounds * (set - 1.0);
        let root = information(design).sqrt();
        let limit = if set > LONGEST_TURN {
            0.0
        } else if df_within >= 2.0 {
            f_upper(INTERACTION_P, df_between, df_within)
        } else {
            f64::INFINITY
        };
        let usual = planned_widening(round, design.set) * t_upper(level.tail(), df) / root;
        Self {
            round,
            usual,
            paired: t_upper(level.tail(), df_between) / root,
            df,
            df_between,
            df_within,
            limit,
        }
    }

    /// Of the headline, in standard deviations of a shot.
    fn half_width(&self, Known { between, within, rest, .. }: Known) -> f64 {
        let usual = self.usual * ((between + within + rest) / self.df).sqrt();
        let mean_square = between / self.df_between;
        let falls_back = mean_square * self.df_within > self.limit * within;
        if falls_back { usual.max(self.paired * mean_square.sqrt()) } else { usual }
    }
}

/// W: the variance of the difference is that of a shot over W.
fn information(design: TurnsDesign) -> f64 {
    (design.rounds * design.set) as f64 / 2.0
}

/// One test, round by round.
fn one_test(design: TurnsDesign, shots: &mut Shots, known: &mut Vec<Known>) {
    let set = design.set as f64;
    let mut now = Known::default();
    // Σ of what was drawn over its variance, candidate's less baseline's; and contrasts of builds around their averages.
    let mut pushed = 0.0;
    let mut averages = vec![0.0; design.builds - 1];
    for round in 1..=design.rounds {
        let n = round as f64;
        let mut sum_of_builds = 0.0;
        for build in 0..design.builds {
            let (mut mean, mut squares) = (0.0, 0.0);
            for shot in 1..=design.set {
                let (value, variance) = shots.next();
                let step = value - mean;
                mean += step / shot as f64;
                squares += step * (value - mean);
                if build < 2 {
                    now.weight += 1.0 / variance;
                    pushed += if build == 0 { -value / variance } else { value / variance };
                }
            }
            if build < 2 {
                now.within += squares
            } else {
                now.rest += squares
            }
            if build > 0 {
                // This build against the mean of those before it, of unit length.
                let before = build as f64;
                let contrast = (mean - sum_of_builds / before) * (before / (before + 1.0)).sqrt();
                let average = &mut averages[build - 1];
                let step = contrast - *average;
                *average += step / n;
                let squares = set * step * (contrast - *average);
                if build == 1 { now.between += squares } else { now.rest += squares }
            }
            sum_of_builds += mean;
        }
        now.average = averages[0] * std::f64::consts::SQRT_2;
        now.weighted = 2.0 * pushed / now.weight;
        known.push(now);
    }
}

/// Shots of one build, one after another: average 0, deviation 1, a given kurtosis.
struct Shots {
    chance: Chance,
    /// The other one of a pair of normal numbers.
    spare: Option<f64>,
    /// Deviations, each as likely as any other.
    deviations: Vec<f64>,
}

impl Shots {
    /// A normal number whose variance is drawn has three times its relative variance as excess kurtosis; log-normal.
    fn new(kurtosis: f64, seed: u64) -> Self {
        const PLACES: u32 = 512;
        let log = ln_1p(((kurtosis - 3.0) / 3.0).max(0.0));
        let place = |at: u32| 0.5 * log.sqrt() * normal_upper((f64::from(at) + 0.5) / f64::from(PLACES));
        let deviations: Vec<f64> = (0..PLACES).map(|at| exp(place(at))).collect();
        let usual = (deviations.iter().map(|d| square(*d)).sum::<f64>() / f64::from(PLACES)).sqrt();
        let deviations = deviations.into_iter().map(|d| d / usual).collect();
        Self { chance: Chance::seeded(seed), spare: None, deviations }
    }

    /// A shot, and the variance that was drawn for it.
    fn next(&mut self) -> (f64, f64) {
        let normal = self.spare.take().unwrap_or_else(|| {
            let (one, other) = self.chance.normal_pair();
            self.spare = Some(other);
            one
        });
        let places = u32::try_from(self.deviations.len()).unwrap_or(1);
        let deviation = self.deviations[self.chance.below(places)];
        (normal * deviation, square(deviation))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const DESIGN: TurnsDesign = TurnsDesign { builds: 2, rounds: 8, set: 3 };
    /// Four standard errors of the invented tests.
    const NOISE: f64 = 0.012;

    fn at_end(design: TurnsDesign, difference: f64) -> f64 {
        let look = InterimAnalysis { round: design.rounds, level: Level::P95 };
        TurnsPaths::new(design, 3.0, 1).expect("usable").looked_at(design.rounds, &[look]).found(difference)
    }

    #[test]
    fn a_single_look_finds_what_the_mean_over_chi_squares_says() {
        for (builds, rounds, set) in [(2, 8, 3), (2, 4, 3), (4, 5, 3), (3, 6, 5), (2, 12, 1), (8, 3, 2)] {
            let design = TurnsDesign { builds, rounds, set };
            for difference in [0.5, 1.0] {
                let (got, expected) = (at_end(design, difference), design.detection(difference, Level::P95));
                assert!((got - expected).abs() < NOISE, "{design:?} {difference}: {got} for {expected}");
            }
        }
    }

    #[test]
    fn a_shorter_test_is_the_beginning_of_a_longer_one() {
        let short = TurnsDesign { rounds: 5, ..DESIGN };
        let look = InterimAnalysis { round: 5, level: Level::P95 };
        let cut = TurnsPaths::new(DESIGN, 3.0, 1).expect("usable").looked_at(5, &[look]).found(0.8);
        assert!((cut - short.detection(0.8, Level::P95)).abs() < NOISE);
    }

    #[test]
    fn more_looks_at_the_same_levels_never_find_less_and_less_than_their_sum() {
        let paths = TurnsPaths::new(DESIGN, 3.0, 1).expect("usable");
        let look = |round| InterimAnalysis { round, level: Level::P99 };
        let found = |rounds: &[usize]| {
            let looks: Vec<InterimAnalysis> = rounds.iter().map(|&round| look(round)).collect();
            paths.looked_at(8, &looks)
        };
        let (one, two, all) = (found(&[8]), found(&[4, 8]), found(&[2, 3, 4, 5, 6, 7, 8]));
        assert!(one.found(0.8) < two.found(0.8) && two.found(0.8) < all.found(0.8));
        assert!(two.found(0.8) < one.found(0.8) + found(&[4]).found(0.8));
        let sum: f64 = all.found_at(0.8).iter().sum();
        assert!((sum - all.found(0.8)).abs() < 1e-12);
    }

    #[test]
    fn the_same_seed_finds_the_same_and_another_one_nearly() {
        let found = |seed| {
            let look = InterimAnalysis { round: 8, level: Level::P95 };
            TurnsPaths::new(DESIGN, 8.0, seed).expect("usable").looked_at(8, &[look]).found(0.8)
        };
        assert_eq!(found(1).to_bits(), found(1).to_bits());
        assert!((found(1) - found(2)).abs() < 2.0 * NOISE);
    }

    /// Weighted by the variances that were drawn, a difference is normal with variance 4/Σ 1/s².
    #[test]
    fn the_weighted_difference_has_the_error_that_its_weights_give() {
        for kurtosis in [3.0, 8.0] {
            let paths = TurnsPaths::new(DESIGN, kurtosis, 1).expect("usable");
            for round in [2, 8] {
                let at = paths.known.iter().skip(round - 1).step_by(DESIGN.rounds);
                let scaled = at.map(|known| square(known.weighted) * known.weight / 4.0);
                let mean = scaled.sum::<f64>() / TESTS as f64;
                // Five standard errors of a mean of squares.
                assert!((mean - 1.0).abs() < 5.0 * (2.0 / TESTS as f64).sqrt(), "{kurtosis} {round}: {mean}");
            }
        }
    }

    #[test]
    fn shots_have_their_deviation_and_their_kurtosis() {
        for kurtosis in [3.0, 5.5, 8.0] {
            let mut shots = Shots::new(kurtosis, 1);
            let all: Vec<f64> = (0..400_000).map(|_| shots.next().0).collect();
            let moment = |power: usize| {
                let powers = all.iter().map(|v| std::iter::repeat_n(v, power).product::<f64>());
                powers.sum::<f64>() / all.len() as f64
            };
            assert!(moment(1).abs() < 0.01 && (moment(2) - 1.0).abs() < 0.02, "{kurtosis}");
            assert!((moment(4) / kurtosis - 1.0).abs() < 0.1, "{kurtosis}: {}", moment(4));
        }
    }

    #[test]
    fn a_design_that_is_none_has_no_tests() {
        for design in [
            TurnsDesign { builds: 1, ..DESIGN },
            TurnsDesign { rounds: 1, ..DESIGN },
            TurnsDesign { set: 0, ..DESIGN },
        ] {
            assert!(TurnsPaths::new(design, 3.0, 1).is_none());
        }
    }
}

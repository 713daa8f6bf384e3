//! Builds hit in turn: the comparison within rounds.
//!
//! A round is one pass through the builds. Its own level (warm-up, tiring, a change of bay) is taken out, so
//! drift over the session does not pass for a club. Shots within a set still lean on each other; the
//! headline therefore widens the result and falls back to whole rounds where sets disagree (`choices`).
//! Source: fixed-effects analysis of variance; the fallback after a preliminary test is our own construction.

use crate::cautious::CautiousDifference;
use crate::choices::{INTERACTION_P, LEANING_COST, LONGEST_TURN, WIDENING, WIDENING_PER_SHOT};
use crate::describe::{mean, sum_of_squares};
use crate::difference::{Refusal, TDifference};
use crate::distributions::f_sf;
use crate::linked::{Linked, link};
use crate::own_scatters::{OwnScatters, Set, own_scatters};
use crate::real::square;
use crate::sample::{SampleError, check_value};

/// Builds beyond this are not a session, and would cost memory by their square.
pub const MOST_BUILDS: usize = 64;

/// One shot as the comparison within rounds needs it; the numbers are names, not counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoundShot {
    /// Which round.
    pub round: usize,
    /// Which build.
    pub build: usize,
    /// Its value.
    pub value: f64,
}

/// Shots of a session sorted into rounds and builds, checked once at the door.
#[derive(Debug, Clone, PartialEq)]
pub struct Rounds {
    /// Names of the builds, ascending.
    builds: Vec<usize>,
    /// Values by round, then by build.
    cells: Vec<Vec<Vec<f64>>>,
    largest: f64,
}

/// Why shots could not be taken as rounds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum RoundsError {
    /// A value is not usable.
    Value(SampleError),
    /// A comparison needs two builds.
    TooFewBuilds {
        /// How many there were.
        got: usize,
    },
    /// More builds than `MOST_BUILDS`.
    TooManyBuilds {
        /// How many there were.
        got: usize,
    },
}

/// The test of whether builds differ by the same amount in every round.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interaction {
    /// Mean square of the rounds' differences over that of shots within sets.
    pub f: f64,
    /// Degrees of freedom between rounds.
    pub df_between: f64,
    /// Degrees of freedom within sets.
    pub df_within: f64,
    /// P(F > f).
    pub p: f64,
}

/// Candidate − baseline within rounds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoundComparison {
    /// The textbook result of the fixed-effects model, unwidened.
    pub fixed_effects: TDifference,
    /// Residual standard deviation of a shot.
    pub residual_sd: f64,
    /// Information W: the standard error is residual SD / √W.
    pub information: f64,
    /// Rounds that hold both builds.
    pub shared_rounds: usize,
    /// Average number of shots with one build in a shared round.
    pub shots_per_turn: f64,
    /// The same difference with whole rounds as the unit; `None` below two shared rounds.
    pub paired: Option<TDifference>,
    /// The same difference with each build's own scatter; `None` where both have about as many shots, or too few for it.
    pub own_scatters: Option<TDifference>,
    /// Whether the difference changes from round to round; `None` where it cannot be tested.
    pub interaction: Option<Interaction>,
}

/// The usual factor for turns of so many shots: that of three, and more for longer ones; beyond the longest whole rounds
/// decide.
#[must_use]
pub fn turn_widening(shots: f64) -> f64 {
    (square(WIDENING) + WIDENING_PER_SHOT * (shots.min(LONGEST_TURN) - 3.0).max(0.0)).sqrt()
}

/// The factor that a planned test of two builds meets on average: the usual one, and what few shots seem to lean.
pub(crate) fn planned_widening(rounds: usize, set: usize) -> f64 {
    turn_widening(set as f64) * leaning_cost(rounds, set)
}

/// By how much what few shots seem to lean on each other widens the interval of a planned test on average.
#[must_use]
pub fn leaning_cost(rounds: usize, set: usize) -> f64 {
    // Single shots in turn show nothing of it.
    if set < 2 { 1.0 } else { 1.0 + LEANING_COST / (rounds * (2 * set - 1)) as f64 }
}

impl RoundComparison {
    /// Whether only whole rounds count as independent: sets disagree too much, or turns are too long.
    #[must_use]
    pub fn falls_back(&self) -> bool {
        self.turns_too_long() || self.interaction.is_some_and(|test| test.p < INTERACTION_P)
    }

    /// Whether the builds were changed so rarely that drift within a round counts as a build.
    #[must_use]
    pub fn turns_too_long(&self) -> bool {
        self.shots_per_turn > LONGEST_TURN
    }

    /// The difference a verdict may rest on: widened, and around whole rounds where sets disagree, or with each build's
    /// own scatter where one of them has far more shots.
    #[must_use]
    pub fn headline(&self) -> CautiousDifference {
        self.headline_of(1.0)
    }

    /// The same, widened by as much as the shots were seen to lean on each other where that is more than usual: `inflation`
    /// is the variance of the difference over that for independent shots (`leaning`).
    #[must_use]
    pub fn headline_of(&self, inflation: f64) -> CautiousDifference {
        let fallback = self.paired.filter(|_| self.falls_back()).or(self.own_scatters);
        let around_same = fallback.map(|other| TDifference { diff: self.fixed_effects.diff, ..other });
        let factor = turn_widening(self.shots_per_turn).max(inflation.sqrt());
        CautiousDifference {
            fallback: around_same,
            ..CautiousDifference::with_factor(&self.fixed_effects, factor, 0.0)
        }
    }
}

impl Rounds {
    /// Sorts shots into rounds and builds, in the order given.
    ///
    /// # Errors
    /// A value that is not finite or too large, fewer than two builds, more than `MOST_BUILDS`.
    pub fn new(shots: &[RoundShot]) -> Result<Rounds, RoundsError> {
        for (index, shot) in shots.iter().enumerate() {
            check_value(index, shot.value).map_err(RoundsError::Value)?;
        }
        let builds = names(shots.iter().map(|shot| shot.build));
        let rounds = names(shots.iter().map(|shot| shot.round));
        if builds.len() < 2 {
            return Err(RoundsError::TooFewBuilds { got: builds.len() });
        }
        if builds.len() > MOST_BUILDS {
            return Err(RoundsError::TooManyBuilds { got: builds.len() });
        }
        let mut cells = vec![vec![Vec::new(); builds.len()]; rounds.len()];
        for shot in shots {
            if let (Ok(round), Ok(build)) =
                (rounds.binary_search(&shot.round), builds.binary_search(&shot.build))
            {
                cells[round][build].push(shot.value);
            }
        }
        let largest = shots.iter().fold(0.0f64, |most, shot| most.max(shot.value.abs()));
        Ok(Rounds { builds, cells, largest })
    }

    /// Number of rounds.
    #[must_use]
    pub fn count(&self) -> usize {
        self.cells.len()
    }

    /// Names of the builds, ascending.
    #[must_use]
    pub fn builds(&self) -> &[usize] {
        &self.builds
    }

    /// Candidate − baseline within rounds, all builds in one model.
    ///
    /// y = round + build + error by least squares; df = shots − rank; se from the residual mean square.
    /// For two builds d = Σ w_r D_r / Σ w_r with w_r = n m/(n + m), D_r the difference of the set means.
    /// Accuracy: 1e-10 relative against tests/reference/stats/11 and the worked session in tests/reference.
    ///
    /// # Errors
    /// Fewer than two rounds with several builds, builds not linked by rounds, no residual degrees of
    /// freedom, no scatter.
    pub fn compare(&self, candidate: usize, baseline: usize) -> Result<RoundComparison, Refusal> {
        self.compare_by(&self.model()?, candidate, baseline)
    }

    /// Solves the model once, for comparing several builds.
    ///
    /// # Errors
    /// As `compare`, as far as they do not hang on the two builds.
    pub fn fit(self) -> Result<FittedRounds, Refusal> {
        Ok(FittedRounds { model: self.model()?, rounds: self })
    }

    fn compare_by(
        &self,
        model: &Model,
        candidate: usize,
        baseline: usize,
    ) -> Result<RoundComparison, Refusal> {
        let (candidate, baseline) = (self.index(candidate)?, self.index(baseline)?);
        let link = model.links.pair(candidate, baseline).ok_or(Refusal::NotLinked)?;
        let se = model.residual_sd * link.variance.sqrt();
        let fixed_effects = TDifference::new(link.difference, se, model.df, self.largest)?;
        let pair = self.pair(candidate, baseline);
        let df_between = pair.shared as f64 - 1.0;
        let between = pair.between / df_between;
        Ok(RoundComparison {
            fixed_effects,
            residual_sd: model.residual_sd,
            information: 1.0 / link.variance,
            shared_rounds: pair.shared,
            shots_per_turn: pair.shots as f64 / (2 * pair.shared) as f64,
            paired: TDifference::new(
                pair.difference,
                (between / pair.information).sqrt(),
                df_between,
                self.largest,
            )
            .ok(),
            own_scatters: own_scatters(&pair.sets, pair.information, pair.difference).and_then(
                |OwnScatters { se, df }| {
                    TDifference::new(pair.difference, se, df.min(model.df), self.largest).ok()
                },
            ),
            interaction: (pair.shared >= 2 && pair.df_within >= 2.0).then(|| {
                let f = between / (pair.within / pair.df_within);
                let f = if f.is_nan() { 0.0 } else { f };
                Interaction {
                    f,
                    df_between,
                    df_within: pair.df_within,
                    p: f_sf(f, df_between, pair.df_within),
                }
            }),
        })
    }

    fn index(&self, build: usize) -> Result<usize, Refusal> {
        self.builds.binary_search(&build).map_err(|_| Refusal::TooFew { got: 0, need: 1 })
    }

    /// The additive model of all builds: its residual scatter and what links the builds.
    fn model(&self) -> Result<Model, Refusal> {
        let mixed = self.cells.iter().filter(|round| held(round) >= 2).count();
        if mixed < 2 {
            return Err(Refusal::TooFewRounds { got: mixed, need: 2 });
        }
        let round_means: Vec<f64> = self.cells.iter().map(|round| mean(&round.concat())).collect();
        let links = link(&self.cells, &round_means).ok_or(Refusal::OutOfRange)?;
        let shots: usize = self.cells.iter().flatten().map(Vec::len).sum();
        let df = shots as f64 - self.count() as f64 - links.parameters() as f64;
        if df < 1.0 {
            return Err(Refusal::TooFew { got: shots, need: self.count() + links.parameters() + 1 });
        }
        let mut squares = 0.0;
        for (round, &center) in self.cells.iter().zip(&round_means) {
            let n: usize = round.iter().map(Vec::len).sum();
            let level: f64 =
                round.iter().zip(links.effects()).map(|(set, effect)| set.len() as f64 * effect).sum();
            for (set, effect) in round.iter().zip(links.effects()) {
                let fitted = effect - level / n as f64;
                squares += set.iter().map(|y| square(y - center - fitted)).sum::<f64>();
            }
        }
        Ok(Model { links, residual_sd: (squares / df).sqrt(), df })
    }

    /// What the pair's own shots say, sets as they are.
    fn pair(&self, candidate: usize, baseline: usize) -> Pair {
        let mut pair = Pair {
            difference: 0.0,
            information: 0.0,
            between: 0.0,
            within: 0.0,
            df_within: 0.0,
            shared: 0,
            shots: 0,
            sets: Vec::new(),
        };
        let mut shared = Vec::new();
        for round in &self.cells {
            let (a, b) = (&round[candidate], &round[baseline]);
            for set in [a, b].into_iter().filter(|set| !set.is_empty()) {
                pair.within += sum_of_squares(set);
                pair.df_within += set.len() as f64 - 1.0;
            }
            if !a.is_empty() && !b.is_empty() {
                let weight = (a.len() * b.len()) as f64 / (a.len() + b.len()) as f64;
                pair.shots += a.len() + b.len();
                pair.sets.push([Set::of(a), Set::of(b)]);
                shared.push((weight, mean(a) - mean(b)));
            }
        }
        pair.shared = shared.len();
        pair.information = shared.iter().map(|(weight, _)| weight).sum();
        pair.difference = shared.iter().map(|(weight, d)| weight * d).sum::<f64>() / pair.information;
        pair.between = shared.iter().map(|(weight, d)| weight * square(d - pair.difference)).sum();
        pair
    }
}

/// Rounds with their model solved: each comparison costs what its two builds cost.
#[derive(Debug)]
pub struct FittedRounds {
    rounds: Rounds,
    model: Model,
}

impl FittedRounds {
    /// As [`Rounds::compare`].
    ///
    /// # Errors
    /// As there.
    pub fn compare(&self, candidate: usize, baseline: usize) -> Result<RoundComparison, Refusal> {
        self.rounds.compare_by(&self.model, candidate, baseline)
    }
}

#[derive(Debug)]
struct Model {
    links: Linked,
    residual_sd: f64,
    df: f64,
}

struct Pair {
    difference: f64,
    information: f64,
    /// Σ w_r (D_r − d)².
    between: f64,
    /// Squared deviations of shots from their set's mean.
    within: f64,
    df_within: f64,
    shared: usize,
    /// In the shared rounds.
    shots: usize,
    /// The same, the candidate's first.
    sets: Vec<[Set; 2]>,
}

fn held(round: &[Vec<f64>]) -> usize {
    round.iter().filter(|set| !set.is_empty()).count()
}

fn names(all: impl Iterator<Item = usize>) -> Vec<usize> {
    crate::arrange::distinct(all)
}

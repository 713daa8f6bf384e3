//! Samples in; estimates, intervals and tests out. Knows no golf, no units, no browser.
//!
//! One file per family of tests. Two samples meet as *candidate* and *baseline*, and a difference is always
//! candidate − baseline. A result is a value that keeps what any further question needs; p-values and
//! intervals are questions to it. Preconditions are types (`Sample`, `Summary`, `Level`, `Rounds`), checked
//! once when they are made; every function is total and says why when it has no answer. Nothing is random
//! without a seed, and the seed is part of the result.
//!
//! ```
//! use stats::{Level, RoundShot, Rounds};
//!
//! // Two builds, hit in turn: A B, B A, A B.
//! let sets = [(0, 0, [251.0, 247.0, 255.0]), (0, 1, [258.0, 262.0, 249.0]), (1, 1, [266.0, 259.0, 261.0]),
//!     (1, 0, [254.0, 250.0, 228.0]), (2, 0, [257.0, 252.0, 260.0]), (2, 1, [263.0, 255.0, 268.0])];
//! let shots: Vec<RoundShot> = sets
//!     .iter()
//!     .flat_map(|&(round, build, values)| values.map(|value| RoundShot { round, build, value }))
//!     .collect();
//! let (candidate, baseline) = (1, 0);
//! let found = Rounds::new(&shots)?.compare(candidate, baseline)?;
//!
//! // As a textbook prints it, and as a verdict may rest on it.
//! assert!(found.fixed_effects.p_value() < 0.05);
//! let headline = found.headline();
//! assert!(headline.half_width(Level::P95) > found.fixed_effects.half_width(Level::P95));
//! // Not shown to be within 5 either way.
//! assert!(!headline.equivalence(-5.0, 5.0).holds(0.05));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

#![warn(clippy::disallowed_methods)]

pub use arrange;

pub mod distributions;

mod autocorrelation;
pub mod bivariate;
pub mod bootstrap;
mod cautious;
mod chance;
mod chance_above;
pub mod choices;
pub mod combine;
mod count;
pub mod crossing;
pub mod day_to_day;
pub mod describe;
mod difference;
mod equivalence;
mod false_discoveries;
pub mod hotelling;
pub mod leaning;
mod level;
pub mod linear_model;
mod linked;
mod looks;
mod messages;
mod normal_mixture;
mod own_scatters;
pub mod permutation;
pub mod points;
pub mod power;
mod proportion;
mod pulled;
mod quadrature;
pub mod ratio_of_means;
mod real;
pub mod robust_model;
mod root;
mod rounds;
mod rounds_power;
mod sample;
mod selection;
mod spread;
pub mod subsets;
mod trend;
pub mod true_effects;
mod turns_paths;
mod two_visits;
mod variance_ratio;
mod welch;
mod yuen;

pub use autocorrelation::blocked_widening;
pub use cautious::CautiousDifference;
pub use chance::drawn_orders;
pub use chance_above::{ChanceAbove, chance_above};
pub use difference::{Refusal, TDifference};
pub use equivalence::{Equivalence, equivalence};
pub use false_discoveries::false_discovery_rates;
pub use level::{Interval, Level, LevelError};
pub use looks::{LookBoundary, LooksError, MOST_LOOKS, planned_looks};
pub use normal_mixture::NormalMixture;
pub use proportion::{Counted, counts_differ};
pub use pulled::{pulled, pulled_among, pulled_over};
pub use rounds::{
    FittedRounds, Interaction, MOST_BUILDS, RoundComparison, RoundShot, Rounds, RoundsError, leaning_cost,
    turn_widening,
};
pub use rounds_power::{SessionScale, TurnsDesign, session_scales};
pub use sample::{LARGEST_VALUE, Sample, SampleError, Summary, SummaryError};
pub use selection::{best_lead_chance, expected_best, usual_prior_sd};
pub use spread::{FEWEST_FOR_SPREAD, SpreadRatio, shots_for_ratio, spread_ratio};
pub use trend::{OrderedShot, Trend, trend};
pub use turns_paths::{GroupSequentialTests, InterimAnalysis, TurnsPaths};
pub use two_visits::{TwoVisits, VisitAgain};
pub use variance_ratio::{VarianceRatio, normal_sd_interval, variance_ratio};
pub use welch::{welch, welch_from_summaries};
pub use yuen::{TRIM, Trimmed, Yuen, yuen};

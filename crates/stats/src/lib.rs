//! Samples in; estimates, intervals and tests out. Knows no golf, no units, no browser.
//!
//! One file per family of tests. Two samples meet as *candidate* and *baseline*, and a difference is always
//! candidate − baseline. A result is a value that keeps what any further question needs; p-values and
//! intervals are questions to it. Preconditions are types (`Sample`, `Summary`, `Level`, `Rounds`), checked
//! once when they are made; every function is total and says why when it has no answer. Nothing is random
//! without a seed, and the seed is part of the result.

pub mod distributions;

mod cautious;
pub mod choices;
mod count;
pub mod describe;
mod difference;
mod equivalence;
mod families;
mod level;
mod linked;
mod looks;
mod noncentral_t;
mod paired;
pub mod power;
mod quadrature;
mod root;
mod rounds;
mod sample;
mod welch;
mod yuen;

pub use cautious::CautiousDifference;
pub use difference::{Refusal, TDifference};
pub use equivalence::{Equivalence, equivalence};
pub use families::{benjamini_hochberg, bonferroni, holm};
pub use level::{Interval, Level, LevelError};
pub use looks::{Look, LooksError, MOST_LOOKS, looks_after_rounds, obrien_fleming_spent, planned_looks};
pub use noncentral_t::{noncentral_t_cdf, noncentral_t_sf};
pub use paired::paired;
pub use rounds::{Interaction, MOST_BUILDS, RoundComparison, RoundShot, Rounds, RoundsError};
pub use sample::{LARGEST_VALUE, Sample, SampleError, Summary, SummaryError};
pub use welch::{welch, welch_from_summaries};
pub use yuen::{TRIM, Trimmed, Yuen, yuen};

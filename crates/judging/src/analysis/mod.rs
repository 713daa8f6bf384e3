//! From shots to a careful difference: which comparison a session allows, and how wide it must be.
//!
//! Builds hit in turn are compared within rounds; everything else by Welch with an allowance for
//! the order; averages by Welch from what was printed. Source of the choices: measured by simulation,
//! see `stats::choices` and [`session::known`].

mod averages;
mod compare;
mod comparison;
mod estimate;
pub mod levels;
mod pair;
mod shot_table;
pub mod warming_up;

pub use compare::compare;
pub use comparison::{Basis, Comparison, whole_turns};
pub use estimate::{Counts, Estimate, Group, Method, Numbers, RatioTest, TextbookTest};
pub use levels::{Levels, Rule, levels};
pub use pair::{Aspect, Pair, Turns};
pub use shot_table::{Include, Measured, ShotTable};

//! From shots to a careful difference: which comparison a session allows, and how wide it must be.
//!
//! Builds hit in turn are compared within rounds; everything else by Welch with an allowance for
//! the order; averages by Welch from what was printed. Source of the choices: measured by simulation,
//! see `stats::choices` and [`session::known`].

mod averages;
mod compare;
mod comparison;
mod estimate;
mod estimating;
pub mod levels;
mod more_shots;
mod nearer;
mod pair;
mod shot_table;
mod typical;
pub mod warming_up;

pub use compare::{compare, order_allowance};
pub use comparison::{Basis, Comparison, in_turns};
pub use estimate::{Counts, Estimate, Group, Method, MoreShots, Numbers, RatioTest, TextbookTest};
pub use estimating::{AskedOf, estimate};
pub use levels::{Levels, Rule, levels};
pub use nearer::nearer;
pub use pair::{Aspect, Compared, Pair, Turns};
pub use shot_table::{Include, Measured, PartOf, ShotTable};
pub use typical::{FarBelow, TypicalGap, typical_can_be_fitted, typical_gap, typical_takes};

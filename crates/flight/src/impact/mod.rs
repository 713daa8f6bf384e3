//! Club meets ball: definitions that are safe to use, and a rigid-body picture of what moves what.
//!
//! [`smash`], [`spin_loft_rad`] and [`face_to_path_rad`] are definitions. [`impact()`] is a model good for the
//! sign and the order of effects only: ±20–30 % on spin. Never infer strike, loft or attack from
//! what the ball did; a low smash may be loft or an off-center strike, a spin change may be the shaft
//! or 2 mm of strike height.

mod definitions;
mod rigid;

pub use definitions::{
    SmashVerdict, face_to_path_rad, judge_smash, plane_spin_loft_rad, smash, spin_loft_rad,
};
pub use rigid::{Delivery, GearSpin, Head, Impact, ImpactError, Strike, gear_spin, impact, smash_cap};

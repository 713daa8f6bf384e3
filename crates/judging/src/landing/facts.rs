//! What is known of where the shots land, as it is told.

use super::chances::{BestAim, HitChance, LandingPair};
use super::hundred::InHundred;
use super::shots::{Landed, Oval, Spot};
use serde::Serialize;
use session::Order;
use session::measure::MeasureId;

/// One build on the ground.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BuildFacts {
    /// Index of the build.
    pub build: usize,
    /// Shots with carry and offline.
    pub n: usize,
    /// Average place, as hit.
    pub center: Spot,
    /// Where the next shots would fall, half of them and nine tenths; empty for too few shots.
    pub ovals: Vec<Oval>,
    /// Shots on the fairway at this aim, counted.
    pub counted: usize,
    /// The same as a share, 0 to 1, with its interval.
    pub counted_share: HitChance,
    /// The same as it is told and drawn, in whole shots of a hundred; null for too few shots.
    pub of_100: Option<InHundred>,
    /// Share counted on the fairway as aimed on the day.
    pub counted_as_aimed: f64,
    /// Chance at this aim; null for too few shots.
    pub at_aim: Option<HitChance>,
    /// Chance as aimed on the day; null for too few shots.
    pub as_aimed: Option<HitChance>,
    /// The aim that would hit most; null for too few shots.
    pub best: Option<BestAim>,
}

/// What can be asked for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LandingLimits {
    /// Narrowest fairway, yd.
    pub narrowest: f64,
    /// Widest fairway, yd.
    pub widest: f64,
    /// Farthest aim to either side, yd.
    pub farthest_aim: f64,
}

/// The shots on the ground, and the two builds asked about.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Ground {
    /// Width of the fairway, yd.
    pub fairway: f64,
    /// Aim, yd right of its middle.
    pub aim: f64,
    /// What can be asked for.
    pub limits: LandingLimits,
    /// Every shot with carry and offline, in the order hit.
    pub shots: Vec<Landed>,
    /// The two builds asked about; null when one of them has too few shots.
    pub pair: Option<LandingPair>,
    /// Level of the intervals of what is gained, by aiming or by the other build: as strict as the answer.
    pub level: f64,
    /// How the two builds were hit: no interval here leaves room for an order that is not in turn.
    pub order: Order,
    /// Whether turns were so long that each is a small block: no interval here leaves room for that either.
    pub long_turns: bool,
    /// Which of the two numbers of these builds shows no scatter: nothing says then where the next shot would fall, nor what
    /// luck does; null where both do.
    pub no_scatter: Option<MeasureId>,
    /// Resamples behind each interval.
    pub draws: u32,
    /// Seed they were drawn from.
    pub seed: u32,
}

/// Where they land.
#[derive(Debug, Clone, PartialEq)]
pub struct LandingFacts {
    /// The shots on the ground, and the two builds asked about.
    pub ground: Ground,
    /// Builds that have such shots.
    pub builds: Vec<BuildFacts>,
}

//! Planned looks: how small p must be after each look so that looking often does not mislead.
//!
//! Lan–DeMets spending of the O'Brien–Fleming type for any overall two-sided α and any look times, by
//! recursion over the density of a Brownian path that has not yet stopped.
//! Sources: Lan and DeMets, Biometrika 70 (1983), 659–663; recursion of Armitage, McPherson and Rowe, J. Royal
//! Statistical Society A 132 (1969), 235–244. Checked against the published five-look boundary.

use crate::count::whole;
use crate::distributions::{normal_density, normal_sf, normal_upper};
use crate::level::{Level, LevelError};
use crate::quadrature::{Node, nodes};
use crate::real::ln;
use crate::root::find_root;

/// More looks than this are not a plan.
pub const MOST_LOOKS: usize = 100;

/// From beyond this many standard deviations a Brownian path adds nothing, even to boundaries of 1e-20.
const NEVER: f64 = 14.0;

/// Width of a quadrature panel in standard deviations of the step to the next look.
const PANEL: f64 = 3.0;

/// Panels kept even when a step is tiny beside the path: below it boundaries lose digits, not safety.
const MOST_PANELS: usize = 12;

/// One look of a plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LookBoundary {
    /// Share of the planned information that is in, above 0 and at most 1.
    pub time: f64,
    /// Error spent up to and with this look.
    pub spent: f64,
    /// Boundary for |z|.
    pub z: f64,
    /// Two-sided p below which this look may stop: 2(1 − Φ(z)), to be applied to the t test's p.
    pub nominal_p: f64,
}

impl LookBoundary {
    /// The level whose interval excludes zero exactly when p is below the nominal one.
    ///
    /// # Errors
    /// A boundary so early that a double cannot hold its p: nothing may stop there.
    pub fn level(&self) -> Result<Level, LevelError> {
        Level::missing(self.nominal_p)
    }
}

/// Why looks could not be planned.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LooksError {
    /// None, or more than `MOST_LOOKS`.
    Count {
        /// How many there were.
        got: usize,
        /// How many there may be.
        most: usize,
    },
    /// Times must rise, lie above 0 and not exceed 1.
    Time {
        /// Which look, counted from 0.
        index: usize,
        /// Its time.
        got: f64,
    },
}

/// The share of an overall two-sided error that may be spent up to `time`.
///
/// α*(t) = 4[1 − Φ(z₁₋α/₄ / √t)], which is α at t = 1.
fn obrien_fleming_spent(overall: Level, time: f64) -> f64 {
    if time <= 0.0 { 0.0 } else { 4.0 * normal_sf(normal_upper(0.25 * overall.alpha()) / time.sqrt()) }
}

/// Boundaries for looks at any rising times.
///
/// With f the density of the path among sessions not yet stopped, each boundary c solves
/// ∫ f(w)·P(|w + step| > c) dw = newly spent; then f is cut at ±c and carried over the next step.
/// Accuracy: 1e-8 relative in p for steps no shorter than 1/100.
///
/// # Errors
/// No looks or too many, times that do not rise within 0 to 1.
pub fn planned_looks(overall: Level, times: &[f64]) -> Result<Vec<LookBoundary>, LooksError> {
    if times.is_empty() || times.len() > MOST_LOOKS {
        return Err(LooksError::Count { got: times.len(), most: MOST_LOOKS });
    }
    let mut before = 0.0;
    for (index, &time) in times.iter().enumerate() {
        if !(time > before && time <= 1.0) {
            return Err(LooksError::Time { index, got: time });
        }
        before = time;
    }
    let mut path = vec![Going { at: 0.0, mass: 0.5 }];
    let (mut looks, mut before, mut spent_before) = (Vec::with_capacity(times.len()), 0.0, 0.0);
    for (index, &time) in times.iter().enumerate() {
        let step = (time - before).sqrt();
        let spent = obrien_fleming_spent(overall, time);
        let bound = boundary(&path, step, spent - spent_before, time.sqrt());
        let z = bound / time.sqrt();
        looks.push(LookBoundary { time, spent, z, nominal_p: 2.0 * normal_sf(z) });
        if let Some(next) = times.get(index + 1) {
            path = carried(&path, step, bound.min(NEVER * time.sqrt()), (next - time).sqrt());
        }
        (before, spent_before) = (time, spent);
    }
    Ok(looks)
}

/// Probability mass of the path near a place; by symmetry only places from 0 up are kept, each for both signs.
struct Going {
    at: f64,
    mass: f64,
}

/// The distance that the path, one step on, exceeds with probability `newly_spent`; infinite if none.
fn boundary(path: &[Going], step: f64, newly_spent: f64, scale: f64) -> f64 {
    let exceeds = |c: f64| {
        let both = |going: &Going| {
            going.mass * (normal_sf((c - going.at) / step) + normal_sf((c + going.at) / step))
        };
        2.0 * path.iter().map(both).sum::<f64>()
    };
    let excess = |c: f64| ln(exceeds(c) / newly_spent).clamp(-1e3, 1e3);
    if newly_spent <= 0.0 {
        return f64::INFINITY;
    }
    find_root(0.0, 40.0 * scale, 1e-13, &excess).unwrap_or(f64::INFINITY)
}

/// The path one step on, among sessions that stayed inside ±`bound`, on nodes fit for the step after it.
fn carried(path: &[Going], step: f64, bound: f64, next_step: f64) -> Vec<Going> {
    let panels = (bound / (PANEL * next_step.min(step))).ceil().clamp(1.0, MOST_PANELS as f64);
    let density = |w: f64| {
        let both = |going: &Going| {
            going.mass * (normal_density((w - going.at) / step) + normal_density((w + going.at) / step))
        };
        path.iter().map(both).sum::<f64>() / step
    };
    let going = |node: &Node| Going { at: node.at, mass: node.weight * density(node.at) };
    nodes(0.0, bound, whole(panels, MOST_PANELS)).iter().map(going).collect()
}

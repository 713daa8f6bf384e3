//! Whether a row's carry can come from its own speed, launch and spin.
//!
//! The bands rest on the model (±3 %), the ball (±4 %) and the device's error of spin and launch.
//! Limits: meters typed as yards (ratio about 0.914) cannot be told on one row; hold the session's
//! median ratio, over five rows or more, against other sessions. When the device computed the carry
//! with a flight model of its own, agreement proves nothing about the ball.

use crate::conditions::Conditions;
use crate::error::{LaunchError, Quantity};
use crate::launch::Launch;
use crate::limits::check_launch;
use crate::normalize::forward_carry_m;
use crate::trajectory::TimeStep;

/// |R − 1| up to here is in order.
pub const OK_BAND: f64 = 0.08;
/// |R − 1| up to here is worth a look; beyond, the numbers do not belong together.
pub const CHECK_BAND: f64 = 0.15;

/// What the ratio of measured to modeled carry says.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// Within 8 %.
    Ok,
    /// 8 to 15 % off.
    Check,
    /// More than 15 % off.
    Inconsistent,
}

/// A row held against the model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plausibility {
    /// R = measured carry/modeled forward carry in the row's air.
    pub ratio: f64,
    /// What it says.
    pub verdict: Verdict,
}

/// One way in which a row could be in other units than was thought.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hypothesis {
    /// Index into the speed factors.
    pub speed: usize,
    /// Index into the carry factors.
    pub carry: usize,
    /// R under this hypothesis.
    pub ratio: f64,
}

impl Hypothesis {
    /// How many units would have to be wrong: prefer the hypothesis with one.
    #[must_use]
    pub fn changes(&self) -> usize {
        usize::from(self.speed > 0) + usize::from(self.carry > 0)
    }
}

/// Holds a measured carry against the flight of the row's own launch.
///
/// # Errors
/// As [`crate::fly`]; a carry outside 0 to 500 m; a modeled carry that is not forward.
pub fn plausibility(
    measured_carry_m: f64,
    launch: &Launch,
    conditions: &Conditions,
    step: TimeStep,
) -> Result<Plausibility, LaunchError> {
    check_launch(Quantity::Carry, measured_carry_m)?;
    let ratio = measured_carry_m / forward_carry_m(launch, conditions, step)?;
    Ok(Plausibility { ratio, verdict: verdict(ratio) })
}

/// Unit mistakes that would bring an inconsistent row within [`OK_BAND`], likeliest first.
///
/// A factor multiplies the value as it was read; entry 0 of each list stands for 'as read' and should
/// be 1. Every pair is tried but the first with the first. Empty when the row is not inconsistent: a
/// row that fits needs no other story. Never correct by this: more than one hypothesis may fit.
/// A hypothesis that leaves the hard limits is dropped.
#[must_use]
pub fn unit_hypotheses(
    measured_carry_m: f64,
    launch: &Launch,
    speed_factors: &[f64],
    carry_factors: &[f64],
    conditions: &Conditions,
    step: TimeStep,
) -> Vec<Hypothesis> {
    let as_read = plausibility(measured_carry_m, launch, conditions, step);
    if as_read.is_ok_and(|row| row.verdict != Verdict::Inconsistent) {
        return Vec::new();
    }
    let mut fitting = Vec::new();
    for (speed, speed_factor) in speed_factors.iter().enumerate() {
        let changed = Launch { speed_mps: launch.speed_mps * speed_factor, ..*launch };
        let Ok(modeled_m) = forward_carry_m(&changed, conditions, step) else { continue };
        for (carry, carry_factor) in carry_factors.iter().enumerate() {
            let carry_m = measured_carry_m * carry_factor;
            let ratio = carry_m / modeled_m;
            let possible = check_launch(Quantity::Carry, carry_m).is_ok();
            if (speed, carry) != (0, 0) && possible && verdict(ratio) == Verdict::Ok {
                fitting.push(Hypothesis { speed, carry, ratio });
            }
        }
    }
    fitting.sort_by(|a, b| {
        let miss = |h: &Hypothesis| (h.ratio - 1.0).abs();
        a.changes().cmp(&b.changes()).then(miss(a).total_cmp(&miss(b)))
    });
    fitting
}

fn verdict(ratio: f64) -> Verdict {
    let miss = (ratio - 1.0).abs();
    if miss <= OK_BAND {
        Verdict::Ok
    } else if miss <= CHECK_BAND {
        Verdict::Check
    } else {
        Verdict::Inconsistent
    }
}

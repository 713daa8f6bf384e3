//! The gap between the typical shots of two builds: Huber's estimate in the model that the averages are compared in.
//!
//! In turn: every round its level, every build its own, over all shots of the session. Otherwise the two builds alone, with
//! the allowance for order. A stray shot weighs less, whichever build it is of. Source: `stats::robust_model`.
//! Limits: it estimates another thing than the average, and says nothing of how often a club is mishit.

use super::estimate::Method;
use super::shot_table::Measured;
use stats::choices::{TYPICAL_WIDENING, WIDENING};
use stats::leaning::leaning;
use stats::linear_model::Intercept;
use stats::robust_model::robust_model;
use stats::{CautiousDifference, Counted, Level};

/// Shots and rounds beyond these are no visit, and the fit costs by their product and more.
const MOST_SHOTS: usize = 600;
const MOST_ROUNDS: usize = 60;

/// A shot that falls short of its typical one by more than so many robust deviations is a mishit. Of normal shots 1 in 160 does;
/// invented mishits, which lose 15 to 50 yd where 7 are a deviation, nearly all do. A choice of ours.
pub const MISHIT_DEVIATIONS: f64 = 2.5;

/// The typical shots of two builds.
#[derive(Debug, Clone, PartialEq)]
pub struct TypicalGap {
    /// Candidate − baseline, widened and with its order allowance.
    pub careful: CautiousDifference,
    /// Shots of the baseline and of the candidate that fall far below their typical one.
    pub far_below: [Counted; 2],
    /// Robust deviation of a shot.
    pub scale: f64,
}

struct Shots {
    values: Vec<f64>,
    builds: Vec<usize>,
    columns: Vec<Vec<f64>>,
    /// Column of the candidate among the terms of the model, the constant counted.
    candidate: usize,
}

/// Compares the typical shots as the averages of the same shots were, by `method` and with the result `plain`. `None` where nothing can be fitted:
/// too many shots for it, too few, or more than half of them exactly on one value.
#[must_use]
pub fn typical_gap(
    measured: &Measured,
    baseline: usize,
    candidate: usize,
    method: Method,
    plain: &CautiousDifference,
) -> Option<TypicalGap> {
    let shots = if method == Method::Rounds {
        in_rounds(measured, baseline, candidate)?
    } else {
        in_blocks(measured, baseline, candidate)
    };
    let model = robust_model(&shots.values, &shots.columns, Intercept::Fitted).ok()?;
    let gap = model.terms.get(shots.candidate)?;
    // Where sets of a build disagree the averages rest on whole rounds; the typical shots are held to as much more.
    let fallback = plain.wider(Level::P95).half_width(Level::P95) / plain.widened.half_width(Level::P95);
    // So where shots lean on each other more than usual.
    let lean = match measured.in_rounds().filter(|_| method == Method::Rounds) {
        Some(shots) => leaning(shots, candidate, baseline).inflation.sqrt() / WIDENING,
        None => 1.0,
    };
    let factor = TYPICAL_WIDENING * fallback.max(1.0) * lean.max(1.0);
    let careful = CautiousDifference::with_factor(gap, factor, plain.allowance);
    let below = -MISHIT_DEVIATIONS * model.scale;
    let coefficients: Vec<f64> = model.terms.iter().map(|term| term.diff).collect();
    let is_far = |at: usize| shots.values[at] - shots.fitted(&coefficients, at) < below;
    let far_below = [baseline, candidate].map(|build| {
        let own = || (0..shots.values.len()).filter(|&at| shots.builds[at] == build);
        Counted { found: own().filter(|&at| is_far(at)).count(), of: own().count() }
    });
    Some(TypicalGap { careful, far_below, scale: model.scale })
}

impl Shots {
    fn fitted(&self, coefficients: &[f64], at: usize) -> f64 {
        let (constant, slopes) =
            coefficients.split_first().map_or((0.0, coefficients), |(a, rest)| (*a, rest));
        constant + self.columns.iter().zip(slopes).map(|(column, slope)| column[at] * slope).sum::<f64>()
    }
}

fn in_rounds(measured: &Measured, baseline: usize, candidate: usize) -> Option<Shots> {
    let shots = measured.in_rounds()?;
    let rounds = arrange::distinct(shots.iter().map(|shot| shot.round));
    let builds = arrange::distinct(shots.iter().map(|shot| shot.build));
    if shots.len() > MOST_SHOTS || rounds.len() > MOST_ROUNDS {
        return None;
    }
    let others: Vec<usize> = builds.into_iter().filter(|&build| build != baseline).collect();
    let is = |yes: bool| f64::from(u8::from(yes));
    let of_build = |build: &usize| shots.iter().map(|shot| is(shot.build == *build)).collect::<Vec<_>>();
    let of_round = |round: &usize| shots.iter().map(|shot| is(shot.round == *round)).collect::<Vec<_>>();
    // The first round is the constant's.
    let columns = others.iter().map(of_build).chain(rounds.iter().skip(1).map(of_round)).collect();
    Some(Shots {
        values: shots.iter().map(|shot| shot.value).collect(),
        builds: shots.iter().map(|shot| shot.build).collect(),
        columns,
        candidate: 1 + others.iter().position(|&build| build == candidate)?,
    })
}

fn in_blocks(measured: &Measured, baseline: usize, candidate: usize) -> Shots {
    let (base, cand) = (measured.values(baseline), measured.values(candidate));
    let column = [vec![0.0; base.len()], vec![1.0; cand.len()]].concat();
    let builds = [vec![baseline; base.len()], vec![candidate; cand.len()]].concat();
    Shots { values: [base, cand].concat(), builds, columns: vec![column], candidate: 1 }
}

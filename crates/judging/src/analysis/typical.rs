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

/// A shot that falls short of its club's own typical one by more than so many robust deviations is a mishit. Of normal shots 1 in 160 does;
/// invented mishits, which lose 15 to 50 yd where 7 are a deviation, nearly all do. A choice of ours.
const MISHIT_DEVIATIONS: f64 = 2.5;

/// The typical shots of two builds.
#[derive(Debug, Clone, PartialEq)]
pub struct TypicalGap {
    /// Candidate − baseline, widened and with its order allowance.
    pub careful: CautiousDifference,
    /// Shots that fall far below the typical one of their club; `None` where their scatter cannot be fitted.
    pub far_below: Option<FarBelow>,
}

/// Shots that fall far below the typical one of their club. They are counted as they were hit: what a round did to all of its
/// shots is part of each, and whoever looks at the shots finds the same number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FarBelow {
    /// Of the baseline and of the candidate.
    pub counted: [Counted; 2],
    /// A shot this far below counts.
    pub below: f64,
}

struct Shots {
    values: Vec<f64>,
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
    let shots = Shots::of(measured, baseline, candidate, method)?;
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
    Some(TypicalGap { careful, far_below: far_below(measured, baseline, candidate) })
}

/// Whether there are neither too few nor too many shots for it, and most of them share their round with another: one that is
/// alone there lies exactly on the fit, which then passes through a pair of the others too. Values that are mostly alike are
/// found by fitting only.
#[must_use]
pub fn typical_can_be_fitted(measured: &Measured, baseline: usize, candidate: usize, method: Method) -> bool {
    let alone = measured.in_rounds().filter(|_| method == Method::Rounds).map_or(0, |shots| {
        let in_its_round = |round: usize| shots.iter().filter(|shot| shot.round == round).count();
        shots.iter().filter(|shot| in_its_round(shot.round) == 1).count()
    });
    Shots::of(measured, baseline, candidate, method).is_some_and(|shots| {
        let terms = 1 + shots.columns.len();
        // A fit may pass through as many shots as it has terms; where that is half of them there is no scale.
        let on_the_fit = if alone > 0 { (alone + 2).max(terms) } else { 0 };
        shots.values.len() > terms && shots.values.len() > 2 * on_the_fit
    })
}

/// Whether that many shots in that many rounds are a visit that it is fitted to.
#[must_use]
pub fn typical_takes(shots: usize, rounds: usize) -> bool {
    shots <= MOST_SHOTS && rounds <= MOST_ROUNDS
}

fn far_below(measured: &Measured, baseline: usize, candidate: usize) -> Option<FarBelow> {
    let shots = in_blocks(measured, baseline, candidate);
    let model = robust_model(&shots.values, &shots.columns, Intercept::Fitted).ok()?;
    let (own, gap) = (model.terms.first()?.diff, model.terms.get(shots.candidate)?.diff);
    let below = MISHIT_DEVIATIONS * model.scale;
    let counted = [(baseline, own), (candidate, own + gap)].map(|(build, typical)| {
        let values = measured.values(build);
        let found = values.iter().filter(|&&value| value < typical - below).count();
        Counted { found, of: values.len() }
    });
    Some(FarBelow { counted, below })
}

impl Shots {
    fn of(measured: &Measured, baseline: usize, candidate: usize, method: Method) -> Option<Self> {
        if method == Method::Rounds {
            in_rounds(measured, baseline, candidate)
        } else {
            Some(in_blocks(measured, baseline, candidate))
        }
    }
}

fn in_rounds(measured: &Measured, baseline: usize, candidate: usize) -> Option<Shots> {
    let shots = measured.in_rounds()?;
    let rounds = arrange::distinct(shots.iter().map(|shot| shot.round));
    let builds = arrange::distinct(shots.iter().map(|shot| shot.build));
    if !typical_takes(shots.len(), rounds.len()) {
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
        columns,
        candidate: 1 + others.iter().position(|&build| build == candidate)?,
    })
}

fn in_blocks(measured: &Measured, baseline: usize, candidate: usize) -> Shots {
    let (base, cand) = (measured.values(baseline), measured.values(candidate));
    let column = [vec![0.0; base.len()], vec![1.0; cand.len()]].concat();
    Shots { values: [base, cand].concat(), columns: vec![column], candidate: 1 }
}

//! Averages without shots: what can still be said, and what cannot.
//!
//! Mean, deviation and number of shots give Welch's comparison. Without a deviation the high end of
//! the usual scatter is taken, so that luck is never understated. Without the number of shots, or when
//! somebody chose the shots, there is no verdict.

use super::comparison::{Basis, Comparison};
use super::estimate::{Counts, Group, Method, Numbers};
use super::pair::{Aspect, Pair, pooled_sd, textbook};
use crate::verdict::Why;
use session::measure::MeasureId;
use session::{Session, SummaryOf};
use stats::{CautiousDifference, Summary, TDifference};

/// Degrees of freedom that stand for a deviation taken as known: Student's t is the normal to 1e-9.
const KNOWN_SD_DF: f64 = 1e9;

/// What is known of one build on one measure, from its averages or its few shots.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Averages<'a> {
    measure: &'a MeasureId,
    n: Option<usize>,
    mean: Option<f64>,
    sd: Option<f64>,
    of: SummaryOf,
}

impl<'a> Averages<'a> {
    /// The build's shots if it has any, else the first of its averages that holds the measure.
    pub(super) fn of(session: &Session, measure: &'a MeasureId, build: usize, shots: &[f64]) -> Self {
        if !shots.is_empty() {
            let n = shots.len();
            let sd = (n >= 2).then(|| (stats::describe::sum_of_squares(shots) / (n - 1) as f64).sqrt());
            let mean = Some(stats::describe::mean(shots));
            return Self { measure, n: Some(n), mean, sd, of: SummaryOf::All };
        }
        let found = session.summaries.iter().filter(|s| s.build == build).find_map(|s| {
            let value = s.values.get(measure)?;
            value.mean.filter(|m| m.is_finite()).map(|mean| Self {
                measure,
                n: s.n.map(|n| n as usize),
                mean: Some(mean),
                sd: value.sd.filter(|sd| sd.is_finite() && *sd >= 0.0),
                of: s.of,
            })
        });
        found.unwrap_or(Self { measure, n: None, mean: None, sd: None, of: SummaryOf::All })
    }

    fn group(&self) -> Option<Group> {
        self.mean.map(|mean| Group { n: self.n.unwrap_or(0), mean, sd: self.sd })
    }
}

/// Compares two builds of which at least one has averages only.
pub(super) fn compare(baseline: &Averages, candidate: &Averages, aspect: Aspect) -> Pair {
    let mut numbers =
        Numbers { baseline: baseline.group(), candidate: candidate.group(), ..Numbers::default() };
    let (Some(base_mean), Some(cand_mean)) = (baseline.mean, candidate.mean) else {
        return pair(numbers, Err(Why::NotMeasured));
    };
    if baseline.of != SummaryOf::All || candidate.of != SummaryOf::All {
        return pair(numbers, Err(Why::OnlyTheBest));
    }
    if aspect == Aspect::Spread {
        return pair(numbers, Err(Why::OnlyAverages));
    }
    let (Some(base_n), Some(cand_n)) = (baseline.n, candidate.n) else {
        return pair(numbers, Err(Why::CountsMissing));
    };
    if base_n < 3 || cand_n < 3 {
        return pair(numbers, Err(Why::TooFewShots));
    }
    let n = Counts { baseline: base_n, candidate: cand_n };
    if let (Some(base_sd), Some(cand_sd)) = (baseline.sd, candidate.sd) {
        let summaries =
            Summary::new(base_n, base_mean, base_sd).ok().zip(Summary::new(cand_n, cand_mean, cand_sd).ok());
        let welch = summaries
            .and_then(|(base, cand)| stats::welch_from_summaries(&cand, &base).ok().map(|w| (w, base, cand)));
        let Some((welch, base, cand)) = welch else {
            return pair(numbers, Err(Why::NoScatter));
        };
        numbers.welch = Some(textbook(&welch));
        let shot_sd = pooled_sd(&base, &cand);
        // Of a measure of the golfer's own nothing is allowed: there are no shots to guess from, and the page says so.
        let allowance = baseline.measure.usual().map_or(0.0, |known| known.facts().order_allowance);
        let comparison = Comparison {
            basis: Basis::Difference(CautiousDifference::new(&welch, allowance)),
            method: Method::SummaryWithAllowance,
            n,
            shot_sd,
            assumed_sd: None,
        };
        return pair(numbers, Ok(comparison));
    }
    pair(numbers, with_assumed_spread(baseline, base_mean, candidate, cand_mean, n))
}

/// Averages know of no rounds.
const fn pair(numbers: Numbers, comparison: Result<Comparison, Why>) -> Pair {
    Pair { numbers, comparison, turns: None, compared: None }
}

/// d ± z·√(s²ₐ/n + s²ᵦ/m), each s the larger of what was given and the high end of what is usual.
fn with_assumed_spread(
    baseline: &Averages,
    base_mean: f64,
    candidate: &Averages,
    cand_mean: f64,
    n: Counts,
) -> Result<Comparison, Why> {
    let allowance = baseline.measure.usual().map_or(0.0, |known| known.facts().order_allowance);
    let assumed = baseline.measure.usual().and_then(|m| m.facts().scatter).ok_or(Why::SpreadMissing)?.high;
    let sd = |given: Option<f64>| given.map_or(assumed, |sd| sd.max(assumed));
    let (base_sd, cand_sd) = (sd(baseline.sd), sd(candidate.sd));
    let se = (base_sd * base_sd / n.baseline as f64 + cand_sd * cand_sd / n.candidate as f64).sqrt();
    let size = base_mean.abs().max(cand_mean.abs());
    let difference =
        TDifference::new(cand_mean - base_mean, se, KNOWN_SD_DF, size).map_err(|_| Why::NoScatter)?;
    // The high deviation is the caution here, measured without further widening.
    Ok(Comparison {
        basis: Basis::Difference(CautiousDifference::taken_as_is(&difference, allowance)),
        method: Method::SummaryAssumedSpread,
        n,
        shot_sd: assumed,
        assumed_sd: Some(assumed),
    })
}

//! Every candidate on every measure, judged: which levels apply, and what was decided.

use crate::analysis::{
    Aspect, Basis, Comparison, Estimate, Include, Levels, Measured, Pair, ShotTable, compare, levels,
};
use crate::families;
use crate::few;
use crate::measure::{self, Better, Measure, MeasureId};
use crate::question::{Goal, Question};
use crate::session::Session;
use crate::verdict::{Decision, DecisionKind, decide, decide_ratio};
use crate::words::reported_unit;

/// One candidate against the baseline on one measure, decided.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Judgment {
    pub(crate) baseline: usize,
    pub(crate) candidate: usize,
    pub(crate) measure: MeasureId,
    pub(crate) goal: Goal,
    pub(crate) margin: Option<f64>,
    pub(crate) pair: Pair,
    pub(crate) levels: Levels,
    /// What stands: the decision on all shots, unless it hangs on those left out.
    pub(crate) decision: Decision,
    /// On every shot.
    pub(crate) with_all: Decision,
    /// On those not set aside.
    pub(crate) without_left_out: Decision,
    /// Shots of the pair that were set aside.
    pub(crate) left_out: usize,
    /// Rounds that hold both builds.
    pub(crate) shared_rounds: u32,
    /// Builds held against the baseline.
    pub(crate) candidates: usize,
    pub(crate) estimate: Option<Estimate>,
}

impl Judgment {
    /// The careful comparison, where there is one.
    pub(crate) fn comparison(&self) -> Option<&Comparison> {
        self.pair.comparison.as_ref().ok()
    }

    /// Whether only the allowance for order keeps the interval from excluding zero.
    pub(crate) fn order_hides_it(&self) -> bool {
        self.decision.kind == DecisionKind::CannotTell && self.drift_to_explain() > 0.0
    }

    /// Whether a comparison of plain averages, blind to order and looks, would have found a difference.
    pub(crate) fn plain_averages_differ(&self) -> bool {
        self.pair.numbers.welch.is_some_and(|w| w.low > 0.0 || w.high < 0.0)
    }

    /// The drift between two blocks that would be enough to explain the lead; 0 when none is needed.
    pub(crate) fn drift_to_explain(&self) -> f64 {
        self.comparison().map_or(0.0, |c| c.drift_to_explain(self.levels.different))
    }
}

/// Judges every candidate on every measure; the measure asked for comes first.
pub(crate) fn judge(session: &Session, question: &Question) -> Vec<Judgment> {
    let table = ShotTable::new(session);
    let candidates: Vec<usize> = (0..session.builds.len()).filter(|&b| b != question.baseline).collect();
    let others = session.measures.iter().filter(|m| **m != question.measure);
    let measures: Vec<&MeasureId> = std::iter::once(&question.measure).chain(others).collect();
    // Candidates that share as many rounds share their levels; planned looks cost milliseconds to work out.
    let mut by_rounds: few::Map<u32, Levels> = few::Map::default();
    let in_candidates: Vec<(u32, Levels)> = candidates
        .iter()
        .map(|&candidate| {
            let shared = table.shared_rounds(question.baseline, candidate);
            (shared, *by_rounds.entry(shared, || levels(&question.stopping, shared)))
        })
        .collect();
    let mut judged = Vec::with_capacity(measures.len() * candidates.len());
    for &measure in &measures {
        let measured = table.measured(measure, Include::All);
        for (&candidate, &(_, levels)) in candidates.iter().zip(&in_candidates) {
            let pair = compare(&measured, question.baseline, candidate, aspect(question, measure));
            judged.push(families::Member { pair, levels });
        }
    }
    let mut asked: Vec<families::Member> = judged[..candidates.len()].to_vec();
    families::divide_all(&mut judged, &mut asked);
    judged.splice(..candidates.len(), asked);
    let some_left_out = session.shots.iter().any(|shot| shot.left_out.is_some());
    let rest: Vec<Option<Measured>> = measures
        .iter()
        .map(|measure| some_left_out.then(|| table.measured(measure, Include::NotLeftOut)))
        .collect();
    let pairs = measures.iter().zip(&rest).flat_map(|(&m, rest)| {
        candidates.iter().zip(&in_candidates).map(move |(&c, &(s, _))| (m, rest, c, s))
    });
    pairs
        .zip(judged)
        .map(|((measure, rest, candidate, shared_rounds), families::Member { pair, levels })| {
            let margin = margin(question, measure);
            let left_out = table.left_out(question.baseline, candidate);
            let with_all = decision(&pair, &levels, margin);
            let without_left_out = rest.as_ref().filter(|_| left_out > 0).map_or(with_all, |rest| {
                let pair = compare(rest, question.baseline, candidate, aspect(question, measure));
                decision(&pair, &levels, margin)
            });
            let unit = match aspect(question, measure) {
                Aspect::Average => reported_unit(measure, session),
                Aspect::Spread => String::new(),
            };
            let estimate = pair.comparison.as_ref().ok();
            Judgment {
                estimate: estimate.map(|c| c.estimate(&levels, &unit, margin, candidates.len())),
                baseline: question.baseline,
                candidate,
                measure: measure.clone(),
                goal: goal(question, measure),
                margin,
                pair,
                levels,
                decision: with_all.unless_it_depends(&without_left_out),
                with_all,
                without_left_out,
                left_out,
                shared_rounds,
                candidates: candidates.len(),
            }
        })
        .collect()
}

pub(crate) fn decision(pair: &Pair, levels: &Levels, margin: Option<f64>) -> Decision {
    match &pair.comparison {
        Ok(comparison) => {
            let (different, same) = (comparison.range(levels.different), comparison.range(levels.same));
            match comparison.basis {
                Basis::Difference(_) => decide(&different, &same, margin),
                Basis::Spread(_) => decide_ratio(&different, &same, margin),
            }
        }
        Err(why) => Decision::cannot_answer(*why),
    }
}

/// Smallest ratio of scatters that usually matters: a quarter more, or a fifth less. Judgement, no source.
pub(crate) const WORTHWHILE_RATIO: f64 = 1.25;

/// The smallest difference that matters: the golfer's own on the measure asked for, else the usual one.
pub(crate) fn margin(question: &Question, id: &MeasureId) -> Option<f64> {
    let own = question.margin.filter(|_| *id == question.measure);
    own.or_else(|| match aspect(question, id) {
        Aspect::Spread => Some(WORTHWHILE_RATIO),
        Aspect::Average => measure::usual(id).map(Measure::usual_margin),
    })
}

/// What of the measure is compared: its scatter only where that was asked for.
fn aspect(question: &Question, id: &MeasureId) -> Aspect {
    if goal(question, id) == Goal::Tighter { Aspect::Spread } else { Aspect::Average }
}

/// What better means: the golfer's own word on the measure asked for, else the usual one.
pub(crate) fn goal(question: &Question, id: &MeasureId) -> Goal {
    question.goal.filter(|_| *id == question.measure).unwrap_or_else(|| {
        match measure::usual(id).map(|m| m.better) {
            Some(Better::Higher) => Goal::Higher,
            Some(Better::Lower) => Goal::Lower,
            Some(Better::NearerZero) => Goal::NearerZero,
            Some(Better::Depends) | None => Goal::Different,
        }
    })
}

/// The candidate farthest toward the goal on the measure asked for; the first candidate when none can be compared.
pub(crate) fn leading<'a>(judgments: &'a [Judgment], measure: &MeasureId) -> Option<&'a Judgment> {
    let toward = |j: &Judgment| -> Option<f64> {
        let value = j.comparison()?.value();
        Some(match j.goal {
            Goal::Higher => value,
            Goal::Lower | Goal::Tighter => -value,
            Goal::NearerZero => -j.pair.numbers.candidate?.mean.abs(),
            Goal::Different => value.abs(),
        })
    };
    let asked = || judgments.iter().filter(|j| j.measure == *measure);
    let mut best: Option<(f64, &Judgment)> = None;
    for judgment in asked() {
        if let Some(value) = toward(judgment)
            && best.is_none_or(|(most, _)| value > most)
        {
            best = Some((value, judgment));
        }
    }
    best.map(|(_, judgment)| judgment).or_else(|| asked().next())
}

//! What is kept of one session in a pile: its own answer, its gap with an honest error, and why it is not pooled if it is not.

use super::content::Content;
use super::not_pooled::NotPooled;
use super::question::ManyQuestion;
use super::roles::{Named, Names, roles};
use crate::analysis::warming_up::warm_up_share;
use crate::analysis::{Basis, order_allowance};
use crate::facts::{HowHit, OrderAllowance, RestsOn};
use crate::interval::Interval;
use crate::judge::{Judgment, judge};
use crate::settle::settle;
use crate::trust::has_value_in_doubt;
use crate::verdict::{Decision, Why};
use serde::{Deserialize, Serialize};
use session::question::{Misfit, Question, Stopping};
use session::{Session, Shot};
use stats::Level;
use stats::describe::mean;

/// A gap with its error, candidate − baseline.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Gap {
    /// The gap.
    pub value: f64,
    /// Its standard error as the answer takes it, with room for shots that lean on each other: the most that it may be.
    pub se: f64,
    /// Its standard error by the textbook: the least.
    pub least_se: f64,
    /// What ordinary warming up adds to it in the order in which these shots were hit. In one session that drowns; over
    /// hundreds that all begin with the same club it does not even out.
    pub push: f64,
    /// What one club first in every lap may add one way, in sessions that have it; 0 in others.
    pub allowance: f64,
    /// The interval that is told.
    pub interval: Interval,
    /// How often equal clubs lie as far apart, as strictly as the session was to be answered: below 0.05 exactly where it is
    /// called different.
    pub p: f64,
}

/// What is kept of a session.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Line {
    /// What the session holds.
    pub content: Content,
    /// Name of the golfer's own club; empty where nobody knows which it is.
    pub baseline: String,
    /// Name of the fitting's club.
    pub candidate: String,
    /// What was decided of the two, as the session alone is answered; `None` where the two are not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub decision: Option<Decision>,
    /// The gap, where one can be estimated.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gap: Option<Gap>,
    /// Why it is not pooled; `None` where it is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub not_pooled: Option<NotPooled>,
    /// The gap that was promised, candidate − baseline.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub claimed: Option<f64>,
    /// Where nobody knows which clubs are meant, the names of all.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub names: Vec<String>,
}

/// Judges a session as one of many. `own` is the question that came with it; of that the two builds and how it was decided
/// when to stop are taken, everything else is the pile's.
///
/// # Errors
/// A [`Misfit`] when the session holds more builds than any, or does not know the measure.
pub fn line(
    session: &Session,
    asked: &ManyQuestion,
    names: &Names,
    own: Option<&Question>,
    claimed: Option<f64>,
) -> Result<Line, Misfit> {
    let stopping = own.map_or_else(Stopping::default, |own| own.stopping.clone());
    let empty = Line {
        content: Content::of(session),
        baseline: String::new(),
        candidate: String::new(),
        decision: None,
        gap: None,
        not_pooled: None,
        claimed: claimed.filter(|claimed| claimed.is_finite()),
        names: Vec::new(),
    };
    let named = match roles(session, names, own) {
        Ok(named) => named,
        Err(why) => {
            // A misfit comes first: sixty clubs are not a question of names.
            asked.asked_of(0, None, stopping).fits(session)?;
            let names = session.builds.iter().map(|build| build.name.clone()).collect();
            return Ok(Line { not_pooled: Some(why), names, ..empty });
        }
    };
    let Named { baseline, candidate } = named;
    let question = asked.asked_of(baseline, Some(candidate), stopping);
    // The other measures have no part in it.
    let only = crate::luck::only(session, &asked.measure);
    let judged = judge(settle(&question, &only)?);
    let name = |build: usize| session.builds[build].name.clone();
    let known = Line { baseline: name(baseline), candidate: name(candidate), ..empty };
    let Some(judgment) = judged.of(candidate) else { return Ok(known) };
    let gap = gap(judgment, &only);
    let in_doubt = has_value_in_doubt(&only, &asked.measure, [baseline, candidate]);
    let not_pooled = not_pooled(judgment).or(in_doubt.then_some(NotPooled::ValueInDoubt));
    // Without a gap nothing is pooled, whatever the reason.
    let not_pooled = not_pooled.or(gap.is_none().then_some(NotPooled::NoScatter));
    Ok(Line { decision: Some(judgment.decision), gap, not_pooled, ..known })
}

fn gap(judgment: &Judgment, session: &Session) -> Option<Gap> {
    let comparison = judgment.comparison()?;
    let Basis::Difference(careful) = comparison.basis else { return None };
    let strictness = Level::P95.alpha() / judgment.levels.different.alpha();
    Some(Gap {
        value: careful.diff(),
        se: careful.wider(Level::P95).se,
        least_se: judgment.pair.numbers.round.map_or(careful.widened.se, |textbook| textbook.se),
        push: push(judgment, session, order_allowance(&judgment.measure, comparison.shot_sd)),
        allowance: careful.allowance,
        interval: judgment.estimate.as_ref()?.decided_by,
        p: (strictness * comparison.p_value()).min(1.0),
    })
}

/// The head start that the candidate has from when its shots were hit: what the baseline's miss on average while the golfer
/// warms up, less what the candidate's do, in the unit of the measure.
fn push(judgment: &Judgment, session: &Session, order_allowance: f64) -> f64 {
    let missed = |build: usize| {
        let is_of = |shot: &Shot| shot.build == build && shot.values.first().is_some_and(Option::is_some);
        let places = session.shots.iter().enumerate().filter(|(_, shot)| is_of(shot));
        mean(&places.map(|(place, _)| warm_up_share(place)).collect::<Vec<_>>())
    };
    order_allowance * (missed(judgment.baseline) - missed(judgment.candidate))
}

fn not_pooled(judgment: &Judgment) -> Option<NotPooled> {
    if let Err(why) = &judgment.pair.comparison {
        return Some(match why {
            Why::OneBuild => NotPooled::OneClub,
            Why::CountsMissing => NotPooled::CountsMissing,
            Why::OnlyTheBest => NotPooled::OnlyTheBest,
            Why::OnlyAverages | Why::SpreadMissing => NotPooled::AveragesOnly,
            Why::NotMeasured => NotPooled::NotMeasured,
            Why::NoScatter | Why::NoScatterInRounds => NotPooled::NoScatter,
            Why::NoShots | Why::TooFewShots | Why::DependsOnLeftOut | Why::OrderNotAllowedFor => {
                NotPooled::TooFewShots
            }
        });
    }
    match (judgment.facts.order_allowance, judgment.facts.order, judgment.facts.rests_on) {
        (.., RestsOn::Averages) => Some(NotPooled::AveragesOnly),
        (OrderAllowance::NotNeeded | OrderAllowance::StartOfLaps, HowHit::InTurn, _) => None,
        (_, HowHit::InTurn | HowHit::InTurnNotCompared, _) => Some(NotPooled::TooFewRounds),
        (_, HowHit::OneAfterTheOther, _) => Some(NotPooled::OneAfterTheOther),
        (_, HowHit::NotKnown, _) => Some(NotPooled::OrderNotKnown),
    }
}

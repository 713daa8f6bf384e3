//! The golfer's own say, asked before any number is shown, set beside what the shots say.
//!
//! Feel is not corrected: where the shots cannot tell or say the same, it is the best reason to choose. What was
//! felt is held only against a measure that was recorded, on the pair of the felt build and the baseline.

use crate::check::{CheckRequest, Refusal, check};
use crate::measure::MeasureId;
use crate::question::Question;
use crate::report::{Finding, Report};
use crate::session::Session;
use crate::verdict::{DecisionKind, Direction, Matters};
use crate::words::{sentences, short_name};
use serde::{Deserialize, Serialize};
use text::feel as words;

/// Which build it was for each question; null where the golfer felt no difference or did not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(default)]
pub struct OwnSay {
    /// Felt straighter.
    pub straighter: Option<usize>,
    /// Felt longer.
    pub longer: Option<usize>,
    /// Felt easier to hit.
    pub easier: Option<usize>,
    /// Its look is liked best.
    pub look: Option<usize>,
    /// Its sound is liked best.
    pub sound: Option<usize>,
}

/// What [`beside`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct FeelRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "crate::session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
    /// What was felt.
    pub say: OwnSay,
}

/// How a feeling and the shots lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Agreement {
    /// The shots show it.
    Shown,
    /// The shots show the opposite.
    Opposite,
    /// The shots say the same for both.
    Same,
    /// The shots cannot tell.
    NotShown,
    /// Nothing was recorded that could show it.
    NotMeasured,
}

/// One feeling beside the shots.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Felt {
    /// The build it was said of.
    pub build: usize,
    /// How it lies with the shots.
    pub agreement: Agreement,
    /// In one sentence.
    pub words: String,
}

/// The golfer's say beside the verdict.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Feel {
    /// One for each thing felt.
    pub felt: Vec<Felt>,
    /// How to choose where the shots leave it open; empty where they do not.
    pub choose: String,
}

const CARRY: [&str; 2] = ["carry", "total"];
const OFFLINE: [&str; 1] = ["offline"];

/// Sets the golfer's say beside what the shots say.
///
/// # Errors
/// A [`Refusal`] for a build that is not there, and for everything that `check` refuses.
pub fn beside(request: &FeelRequest) -> Result<Feel, Refusal> {
    let FeelRequest { session, question, say } = request;
    let report = check(&CheckRequest { session: session.clone(), question: question.clone() })?;
    let said = [say.straighter, say.longer, say.easier, say.look, say.sound];
    if let Some(missing) = said.into_iter().flatten().find(|&build| build >= session.builds.len()) {
        return Err(Refusal {
            kind: "no_such_build".into(),
            place: "say".into(),
            message: words::no_such_build(&missing.to_string()),
            remedy: text::check::no_such_build_remedy(),
        });
    }
    let mut felt = Vec::new();
    if let Some(build) = say.straighter {
        felt.push(held_against(session, question, build, "straighter", &OFFLINE));
    }
    if let Some(build) = say.longer {
        felt.push(held_against(session, question, build, "longer", &CARRY));
    }
    if let Some(build) = say.easier {
        let words = words::easier(&name(session, build));
        felt.push(Felt { build, agreement: Agreement::NotMeasured, words });
    }
    Ok(Feel { felt, choose: choose(session, &report, say) })
}

fn held_against(
    session: &Session,
    question: &Question,
    build: usize,
    feeling: &str,
    measures: &[&str],
) -> Felt {
    let agreement = agreement(session, question, build, measures);
    let name = name(session, build);
    let words = match agreement {
        Agreement::Shown => words::shown(&name, feeling),
        Agreement::Opposite => words::opposite(&name, feeling),
        Agreement::Same => words::same(&name, feeling),
        Agreement::NotShown => words::not_shown(&name, feeling),
        Agreement::NotMeasured => words::not_measured(&name, feeling),
    };
    Felt { build, agreement, words }
}

/// The felt build against every other one: shown if it is for any and opposite for none.
fn agreement(session: &Session, question: &Question, build: usize, measures: &[&str]) -> Agreement {
    let Some(measure) = measures.iter().map(|m| MeasureId::from(*m)).find(|m| session.measures.contains(m))
    else {
        return Agreement::NotMeasured;
    };
    let asked = Question { baseline: build, candidate: None, ..question.clone() };
    let Ok(report) = check(&CheckRequest { session: session.clone(), question: asked }) else {
        return Agreement::NotMeasured;
    };
    let pairs: Vec<Agreement> = report
        .findings
        .iter()
        .filter(|f| f.measure == measure)
        .map(|finding| of_pair(finding, &measure))
        .collect();
    let any = |kind| pairs.contains(&kind);
    match () {
        () if any(Agreement::Opposite) => Agreement::Opposite,
        () if any(Agreement::Shown) => Agreement::Shown,
        () if any(Agreement::NotShown) => Agreement::NotShown,
        () if any(Agreement::Same) => Agreement::Same,
        () => Agreement::NotMeasured,
    }
}

/// One pair with the felt build as its baseline.
fn of_pair(finding: &Finding, measure: &MeasureId) -> Agreement {
    let numbers = finding.numbers.baseline.zip(finding.numbers.candidate);
    match finding.decision.kind {
        DecisionKind::CannotAnswer => Agreement::NotMeasured,
        DecisionKind::CannotTell => Agreement::NotShown,
        DecisionKind::Same => Agreement::Same,
        DecisionKind::Different if finding.decision.matters == Some(Matters::No) => Agreement::Same,
        DecisionKind::Different if OFFLINE.contains(&measure.0.as_str()) => match numbers {
            Some((felt, other)) if felt.mean.abs() < other.mean.abs() => Agreement::Shown,
            _ => Agreement::Opposite,
        },
        DecisionKind::Different if finding.decision.direction == Some(Direction::Lower) => Agreement::Shown,
        DecisionKind::Different => Agreement::Opposite,
    }
}

fn choose(session: &Session, report: &Report, say: &OwnSay) -> String {
    let open = match report.answer.decision.kind {
        DecisionKind::Same => words::choose_same(),
        DecisionKind::CannotTell => words::choose_cannot_tell(),
        DecisionKind::Different if report.answer.decision.matters == Some(Matters::No) => {
            words::choose_too_small()
        }
        DecisionKind::Different | DecisionKind::CannotAnswer => return String::new(),
    };
    let liked = match (say.look, say.sound) {
        (None, None) => return open,
        (Some(look), None) => words::likes_look(&name(session, look)),
        (None, Some(sound)) => words::likes_sound(&name(session, sound)),
        (Some(look), Some(sound)) => words::likes_both(&name(session, look), &name(session, sound)),
    };
    sentences(&[open, liked])
}

fn name(session: &Session, build: usize) -> String {
    short_name(session.builds.get(build).map_or("", |b| b.name.as_str()))
}

//! The question with every gap filled, once: what better means and what matters on every measure, who is held against
//! whom, and how strict each comparison must be.
//!
//! Everything that judges starts here. Margins are in canonical units whatever the units shown, so that the same request
//! gets the same decision in front of every reader.

use crate::analysis::{Aspect, Levels, PartOf, ShotTable, levels};
use session::Session;
use session::few;
use session::measure::{Margin, MeasureId};
use session::question::{Goal, Misfit, Question};

/// What is asked of one measure.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// The measure.
    pub measure: MeasureId,
    /// What better means.
    pub goal: Goal,
    /// The smallest difference that matters; `None` for a column of the golfer's own without one.
    pub margin: Option<Margin>,
}

impl Asked {
    /// What a question asks of a measure.
    #[must_use]
    pub fn of(question: &Question, measure: &MeasureId) -> Self {
        Self {
            measure: measure.clone(),
            goal: question.goal_on(measure),
            margin: question.margin_on(measure),
        }
    }

    /// What of the measure is compared: its scatter only where that was asked for.
    #[must_use]
    pub fn aspect(&self) -> Aspect {
        if self.goal == Goal::Tighter { Aspect::Spread } else { Aspect::Average }
    }
}

/// One build that is held against the baseline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Candidate {
    /// Index of the build.
    pub build: usize,
    /// Rounds that hold both builds.
    pub shared_rounds: u32,
    /// How strict the answer must be before several comparisons share the error.
    pub levels: Levels,
    /// Its shots that were set aside.
    pub left_out: PartOf,
}

/// A question that can be asked of a session, every gap filled.
#[derive(Debug)]
pub struct Settled<'a> {
    /// The shots.
    pub session: &'a Session,
    /// As it was asked.
    pub question: &'a Question,
    /// The shots laid out for comparison.
    pub table: ShotTable<'a>,
    /// The measure asked for first, then every other one of the session.
    pub measures: Vec<Asked>,
    /// Every build but the baseline.
    pub candidates: Vec<Candidate>,
    /// Shots of the baseline that were set aside.
    pub left_out: PartOf,
}

/// Fills every gap of the question.
///
/// # Errors
/// A [`Misfit`] when the question cannot be asked of this session.
pub fn settle<'a>(question: &'a Question, session: &'a Session) -> Result<Settled<'a>, Misfit> {
    question.fits(session)?;
    let table = ShotTable::new(session);
    let others = session.measures.iter().filter(|m| **m != question.measure);
    let measures = std::iter::once(&question.measure).chain(others);
    // Candidates that share as many rounds share their levels; planned looks cost milliseconds to work out.
    let mut by_rounds: few::Map<u32, Levels> = few::Map::default();
    let candidates = (0..session.builds.len())
        .filter(|&build| build != question.baseline)
        .map(|build| {
            let shared_rounds = table.shared_rounds(question.baseline, build);
            Candidate {
                build,
                shared_rounds,
                levels: *by_rounds.entry(shared_rounds, || levels(&question.stopping, shared_rounds)),
                left_out: table.left_out(build),
            }
        })
        .collect();
    Ok(Settled {
        session,
        question,
        measures: measures.map(|measure| Asked::of(question, measure)).collect(),
        candidates,
        left_out: table.left_out(question.baseline),
        table,
    })
}

impl Settled<'_> {
    /// What is asked of the measure that the question names.
    #[must_use]
    pub fn asked(&self) -> Asked {
        Asked::of(self.question, &self.question.measure)
    }
}

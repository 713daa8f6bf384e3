//! The question that a session is asked where nobody says more: as the page asks it.

use crate::open::SessionRead;
use crate::unread::Unread;
use session::Session;
use session::known::Known;
use session::measure::MeasureId;
use session::question::{Goal, Question, Stopping};
use telling::check::{CheckRequest, check};
use telling::measures::measures;
use telling::report::Report;
use text::Voice;
use text::files as say;

/// What is said of the question; what is left open stays as the file says, else as the page begins.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Asking {
    /// Name of the build the others are held against.
    pub baseline: Option<String>,
    /// Name of the build in question.
    pub candidate: Option<String>,
    /// The measure.
    pub measure: Option<MeasureId>,
    /// What better means.
    pub goal: Option<Goal>,
    /// The smallest difference that matters, in canonical units.
    pub margin: Option<f64>,
    /// How it was decided when to stop.
    pub stopping: Option<Stopping>,
}

/// The question of a session, every option heard.
///
/// # Errors
/// An [`Unread`] with the names there are, where one that was asked for is not.
pub fn question(read: &SessionRead, asking: &Asking, voice: &Voice) -> Result<Question, Unread> {
    let session = &read.session;
    let build = |name: &Option<String>| match name {
        None => Ok(None),
        Some(name) => place(session, name).map(Some).ok_or_else(|| {
            let names: Vec<&str> = session.builds.iter().map(|build| build.name.as_str()).collect();
            let (message, remedy) =
                (say::no_such_club(voice, name), say::no_such_club_remedy(voice, &names.join(", ")));
            Unread::new(&read.place, "no_such_club", message, remedy)
        }),
    };
    let (baseline, candidate) = (build(&asking.baseline)?, build(&asking.candidate)?);
    let own = read.question.clone();
    let measure = asking.measure.clone().or_else(|| own.as_ref().map(|own| own.measure.clone()));
    let measure = measure.unwrap_or_else(|| first_measure(session));
    let mut question = own.unwrap_or_else(|| Question {
        baseline: 0,
        candidate: None,
        measure: measure.clone(),
        goal: None,
        margin: None,
        first_margin: None,
        stopping: Stopping::default(),
        differs: None,
    });
    if question.measure != measure {
        // Goal and margin belong to a measure.
        question =
            Question { measure: measure.clone(), goal: None, margin: None, first_margin: None, ..question };
    }
    question.baseline = baseline.unwrap_or(question.baseline);
    question.candidate = candidate.or(question.candidate.filter(|candidate| *candidate != question.baseline));
    question.goal = asking.goal.or(question.goal);
    question.margin = asking.margin.or(question.margin);
    question.stopping = asking.stopping.clone().unwrap_or(question.stopping);
    if question.margin.is_none() && question.goal != Some(Goal::Tighter) {
        // A round margin of the units shown is a choice, made before the question is asked.
        let of_measure = measures(voice).into_iter().find(|known| known.id == measure.as_str());
        question.margin =
            of_measure.filter(|it| (it.offered_margin - it.margin).abs() > 1e-9).map(|it| it.offered_margin);
    }
    Ok(question)
}

/// Answers what was read.
///
/// # Errors
/// An [`Unread`]: a question that cannot be asked of it, and doubts that the answer waits for.
pub fn answer(read: &SessionRead, asking: &Asking, voice: &Voice) -> Result<Report, Unread> {
    let question = question(read, asking, voice)?;
    waits(read, &question.measure, voice)?;
    let request = CheckRequest { session: read.session.clone(), question };
    check(&request, voice).map_err(|refusal| Unread::of(&read.place, refusal))
}

/// Refuses what an answer on a measure waits for.
pub(crate) fn waits(read: &SessionRead, measure: &MeasureId, voice: &Voice) -> Result<(), Unread> {
    let holds = |doubt: &&reading::Doubt| doubt.holds.is_empty() || doubt.holds.contains(measure);
    match read.doubts.iter().find(holds) {
        None => Ok(()),
        Some(doubt) => {
            Err(Unread::new(&read.place, "waits", doubt.question.clone(), say::waits_remedy(voice)))
        }
    }
}

/// Carry where it was recorded, else the first of the trade's list, else a column of the golfer's own.
fn first_measure(session: &Session) -> MeasureId {
    let has = |id: &MeasureId| session.measures.contains(id);
    let usual = MeasureId::from(Known::Carry);
    if has(&usual) {
        return usual;
    }
    let known = Known::ALL.iter().map(|known| MeasureId::from(*known)).find(|id| has(id));
    known.or_else(|| session.measures.first().cloned()).unwrap_or(usual)
}

fn place(session: &Session, name: &str) -> Option<usize> {
    let key = |name: &str| name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    session.builds.iter().position(|build| key(&build.name) == key(name))
}

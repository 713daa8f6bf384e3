//! The section of the question, and that of what differs between the two builds, where somebody said it.

use super::bytes::{Broken, Reader, Writer};
use super::codes::{self, DIFFERS, GOALS};
use super::tag;
use session::MOST_BUILDS;
use session::Session;
use session::measure::{Margin, MeasureId};
use session::question::{Differs, LookedAfter, Question, Stopping, StoppingWord};

/// The margin is the usual one: should that change, the link keeps the one it was made with.
const USUAL: u8 = 1;

/// Stopping rules.
const FIXED: u8 = 0;
const UNKNOWN: u8 = 1;
const PLANNED_EVERY_ROUND: u8 = 2;
const PLANNED_ROUNDS: u8 = 3;
const NOT_FIXED: u8 = 4;

/// More looks than a plan can have rounds tell nothing more.
const MOST_LOOKS: usize = 1_000;

/// Writes the question.
pub(crate) fn write_question(out: &mut Writer, question: &Question, measures: &[MeasureId]) {
    let mut section = Writer::default();
    section.length(question.baseline);
    section.length(question.candidate.map_or(0, |build| build + 1));
    match measures.iter().position(|id| *id == question.measure) {
        Some(at) => section.length(at + 1),
        None => {
            section.length(0);
            section.text(question.measure.as_str());
        }
    }
    section.byte(question.goal.and_then(|goal| codes::code(&GOALS, &goal)).map_or(0, |code| code + 1));
    section.byte(if question.margin.is_none() { USUAL } else { 0 });
    section.maybe_number(settled_margin(question));
    section.maybe_number(question.first_margin);
    write_stopping(&mut section, &question.stopping);
    out.section(tag::QUESTION, section);
    let mut section = Writer::default();
    if let Some(code) = question.differs.and_then(|differs| codes::code(&DIFFERS, &differs)) {
        section.byte(code);
    }
    out.section(tag::DIFFERS, section);
}

fn write_stopping(section: &mut Writer, stopping: &Stopping) {
    match stopping {
        Stopping::Word(StoppingWord::Fixed) => section.byte(FIXED),
        Stopping::Word(StoppingWord::Unknown) => section.byte(UNKNOWN),
        Stopping::Word(StoppingWord::NotFixed) => section.byte(NOT_FIXED),
        Stopping::Planned { planned_rounds, looked_after } => match looked_after {
            LookedAfter::EveryRoundTo(last) => {
                section.byte(PLANNED_EVERY_ROUND);
                section.whole(u64::from(*planned_rounds));
                section.whole(u64::from(*last));
            }
            LookedAfter::Rounds(rounds) => {
                section.byte(PLANNED_ROUNDS);
                section.whole(u64::from(*planned_rounds));
                section.length(rounds.len().min(MOST_LOOKS));
                rounds.iter().take(MOST_LOOKS).for_each(|&round| section.whole(u64::from(round)));
            }
        },
    }
}

/// Reads the question about this session.
pub(crate) fn read_question(input: &mut Reader<'_>, session: &Session) -> Result<Question, Broken> {
    let baseline = input.length(MOST_BUILDS)?;
    let candidate = input.length(MOST_BUILDS)?.checked_sub(1);
    let measure = match input.length(session.measures.len())? {
        0 => MeasureId::from(input.text()?),
        at => session.measures[at - 1].clone(),
    };
    let goal = match usize::from(input.byte()?).checked_sub(1) {
        Some(at) => Some(*GOALS.get(at).ok_or(Broken)?),
        None => None,
    };
    let is_usual = input.byte()? & USUAL != 0;
    let (margin, first_margin) = (input.maybe_number()?, input.maybe_number()?);
    let stopping = read_stopping(input)?;
    let mut question =
        Question { baseline, candidate, measure, goal, margin: None, first_margin, stopping, differs: None };
    let usual_now = settled_margin(&question);
    let still_usual = is_usual && usual_now.map(f64::to_bits) == margin.map(f64::to_bits);
    question.margin = margin.filter(|_| !still_usual);
    Ok(question)
}

/// Reads what differs between the two; a code of a later version says nothing here.
pub(crate) fn read_differs(input: &mut Reader<'_>) -> Result<Option<Differs>, Broken> {
    Ok(DIFFERS.get(usize::from(input.byte()?)).copied())
}

fn read_stopping(input: &mut Reader<'_>) -> Result<Stopping, Broken> {
    let round = |input: &mut Reader<'_>| u32::try_from(input.whole()?).map_err(|_| Broken);
    match input.byte()? {
        FIXED => Ok(Stopping::Word(StoppingWord::Fixed)),
        UNKNOWN => Ok(Stopping::Word(StoppingWord::Unknown)),
        NOT_FIXED => Ok(Stopping::Word(StoppingWord::NotFixed)),
        PLANNED_EVERY_ROUND => {
            let planned_rounds = round(input)?;
            Ok(Stopping::Planned { planned_rounds, looked_after: LookedAfter::EveryRoundTo(round(input)?) })
        }
        PLANNED_ROUNDS => {
            let planned_rounds = round(input)?;
            let mut rounds = Vec::new();
            for _ in 0..input.length(MOST_LOOKS)? {
                rounds.push(round(input)?);
            }
            Ok(Stopping::Planned { planned_rounds, looked_after: LookedAfter::Rounds(rounds) })
        }
        _ => Err(Broken),
    }
}

/// The bare margin that counts: the chosen one, or the usual one in the canonical unit.
fn settled_margin(question: &Question) -> Option<f64> {
    question.margin_on(&question.measure).map(Margin::value)
}

//! A value that is probably a slip, as a question with its row, and why it matters.

use crate::format::Subject;
use crate::phrases::phrase_for;
use crate::words::sentences as sentences_of;
use judging::trust::{Odd, Seen};
use session::Session;
use session::measure::MeasureId;
use session::names::short_name;
use text::trust as say;
use text::{Voice, capital};

/// What was seen, why it matters to the answer on the measure asked for, what to do; `None` for any other finding.
pub(crate) fn sentences(
    session: &Session,
    seen: &Seen,
    asked: &MeasureId,
    voice: &Voice,
) -> Option<[String; 3]> {
    let Seen::OddValue { shot, build, measure, value, because, others } = seen else { return None };
    let subject = Subject::of(measure, session, voice);
    let name = session.builds.get(*build).map_or_else(String::new, |b| short_name(&b.name));
    let printed = match phrase_for(measure, voice).sides {
        Some(sides) if !subject.prints_as_zero(*value) => sides.of(&subject, *value),
        _ => subject.value(*value),
    };
    let what = match shot {
        Some(at) => say::odd_shot(voice, &number_of(session, *at), &name, &subject.name, &printed),
        None => say::odd_average(voice, &name, &subject.name, &printed),
    };
    let counts = || {
        if measure == asked {
            return say::counts_in_the_answer(voice);
        }
        say::counts_beside_the_answer(voice, &subject.the(), &Subject::of(asked, session, voice).the())
    };
    let (why, next) = match because {
        Odd::OutOfRange { low, high } => {
            let (low, high) = (subject.value(*low), subject.value(*high));
            let lies = say::out_of_range(voice, &capital(&subject.name), &low, &high, *others);
            (sentences_of(&[lies, counts()]), say::out_of_range_next(voice))
        }
        Odd::PointSlipped { usual } => {
            let slipped = say::point_slipped(voice, &name, &subject.value(*usual), value < usual, *others);
            (sentences_of(&[slipped, counts()]), say::out_of_range_next(voice))
        }
        Odd::MovesTheAnswer { by, margin } => {
            let moves = say::moves_the_answer(voice, &subject.amount(*by), &subject.chosen(*margin), *others);
            (moves, say::odd_next(voice))
        }
    };
    Some([what, why, next])
}

/// The shot's own number, or its place.
fn number_of(session: &Session, at: usize) -> String {
    let own = session.shots.get(at).and_then(|shot| shot.number);
    own.map_or_else(|| (at + 1).to_string(), |number| number.to_string())
}

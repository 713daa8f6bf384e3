//! What was said to doubts, where it has to be known before cells are taken: as hints.

use crate::doubt::Settled;
use crate::doubts::names;
use crate::hints::Hints;
use crate::outcome::{LineIs, Role};
use session::measure::MeasureId;
use std::borrow::Cow;

/// The hints, with what was said to doubts among them.
pub(crate) fn told(hints: &Hints) -> Cow<'_, Hints> {
    if hints.settled.is_empty() {
        return Cow::Borrowed(hints);
    }
    let mut all = hints.clone();
    for (key, said) in hints.settled.iter() {
        let (kind, rest) = key.split_once(':').unwrap_or((key, ""));
        let mut numbers = rest.split(':').map_while(|part| part.parse::<usize>().ok());
        match (kind, said) {
            ("measure_guessed", Settled::Measure(id)) => all.single_measure = Some(id.clone()),
            ("unknown_heading", Settled::Measure(id)) => {
                put(&mut all, numbers.next(), Role::Measure(id.clone()))
            }
            ("headed_alike", Settled::Second) => {
                let [first, second] = [numbers.next(), numbers.next()];
                let measure = rest.rsplit(':').next().map(MeasureId::from);
                put(&mut all, first, Role::Ignored);
                put(&mut all, second, measure.map_or(Role::Ignored, Role::Measure));
            }
            ("left_out_why", Settled::Count) | ("odd_name", Settled::LeaveOut) => {
                put(&mut all, numbers.next(), Role::Ignored);
            }
            ("unit", Settled::Unit(unit)) => numbers.for_each(|at| all.units.insert(at, unit.clone())),
            ("one_row", Settled::LeaveOut) => {
                if let Some(line) = numbers.next().and_then(|line| u32::try_from(line).ok()) {
                    all.lines.insert(line, LineIs::Text);
                }
            }
            _ => {}
        }
    }
    if let Some(clubs) = names::tried(&hints.settled).last() {
        put(&mut all, Some(*clubs), Role::Build);
    }
    Cow::Owned(all)
}

fn put(hints: &mut Hints, column: Option<usize>, role: Role) {
    if let Some(column) = column {
        hints.columns.insert(column, role);
    }
}

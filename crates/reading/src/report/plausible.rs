//! Values that cannot be: a whole column in another unit is a question, a single value is flagged.
//!
//! Nothing is changed here. The ranges are those of [`session::known`]; the ratios are
//! common practice, no source: a full shot carries between 0.6 and 2.2 yards for each mile per
//! hour of its ball speed, and the ball leaves between 0.7 and 1.6 times as fast as the club.

use crate::outcome::UnitSource;
use crate::remarks::NoticeKind;
use crate::report::agreement::shown;
use crate::take::draft::Draft;
use crate::talk::{Talk, place};
use crate::trim::shortened;
use crate::understand::column::Column;
use session::known::{Facts, Known};
use session::measure::{self, MeasureId};
use session::units::SourceUnit;
use text::names::title;
use text::reading as say;

/// Fewer values than this are no column.
const FEWEST: usize = 3;

/// One measure above another one, and the range of their ratio.
struct Ratio {
    above: Known,
    below: Known,
    low: f64,
    high: f64,
}

const RATIOS: [Ratio; 2] = [
    Ratio { above: Known::Carry, below: Known::BallSpeed, low: 0.6, high: 2.2 },
    Ratio { above: Known::BallSpeed, below: Known::ClubSpeed, low: 0.7, high: 1.6 },
];

/// Measures that only make sense in another unit; single values out of range become notices.
pub(crate) fn question(
    draft: &Draft,
    columns: &[&Column<'_>],
    talk: &mut Talk,
) -> Vec<(MeasureId, SourceUnit)> {
    let mut questions: Vec<(MeasureId, SourceUnit)> = Vec::new();
    for (at, id) in draft.session.measures.iter().enumerate() {
        let Some(known) = measure::known(id) else { continue };
        let column = columns.iter().find(|c| c.measure() == Some(id));
        let unit = column.and_then(|c| c.unit);
        let outside = |v: f64| !(known.plausible.low..=known.plausible.high).contains(&v);
        let values = values(draft, at);
        let odd = values.iter().filter(|v| outside(**v)).count();
        let better =
            unit.filter(|_| values.len() >= FEWEST && odd * 5 >= values.len() * 4).and_then(|unit| {
                others(known, unit).find(|(_, factor)| {
                    values.iter().filter(|v| !outside(**v * factor)).count() * 5 >= values.len() * 4
                })
            });
        match better {
            Some((unit, _)) => questions.push((id.clone(), unit)),
            None if odd > 0 => flag(draft, at, known, talk),
            None => {}
        }
    }
    for ratio in &RATIOS {
        ask_by_ratio(draft, columns, ratio, &mut questions);
    }
    for (id, unit) in &questions {
        let column = columns.iter().find(|c| c.measure() == Some(id));
        let heading = column.map_or("", |c| c.heading.as_str());
        let read_as = column.map_or("", |c| c.unit_label.as_str());
        let message = say::unit_question(talk.voice(), &shortened(heading), read_as, unit.label());
        talk.notice(NoticeKind::UnitQuestion, place(0, heading), message);
    }
    questions
}

fn values(draft: &Draft, at: usize) -> Vec<f64> {
    draft.session.shots.iter().filter_map(|s| s.values.get(at).copied().flatten()).collect()
}

/// The other units of a measure, and by how much a value grows when it was meant in them.
fn others(known: &Facts, unit: SourceUnit) -> impl Iterator<Item = (SourceUnit, f64)> {
    let own = unit.convert(1.0, known.unit).unwrap_or(1.0);
    let canonical = known.unit;
    SourceUnit::choices(canonical)
        .filter(move |other| *other != unit)
        .filter_map(move |other| Some((other, other.convert(1.0, canonical)? / own)))
}

/// Asks for the unit of one of two measures whose ratio cannot be.
fn ask_by_ratio(
    draft: &Draft,
    columns: &[&Column<'_>],
    ratio: &Ratio,
    questions: &mut Vec<(MeasureId, SourceUnit)>,
) {
    let (above, below) = (MeasureId::from(ratio.above), MeasureId::from(ratio.below));
    if questions.iter().any(|(id, _)| *id == above || *id == below) {
        return;
    }
    let session = &draft.session;
    let (Some(top), Some(bottom)) = (session.measure_index(&above), session.measure_index(&below)) else {
        return;
    };
    let mut ratios: Vec<f64> = session
        .shots
        .iter()
        .filter_map(|s| {
            Some((s.values.get(top).copied().flatten()?, s.values.get(bottom).copied().flatten()?))
        })
        .filter(|(_, b)| *b > 0.0)
        .map(|(a, b)| a / b)
        .collect();
    arrange::sort_numbers(&mut ratios);
    let Some(middle) = ratios.get(ratios.len() / 2).copied().filter(|_| ratios.len() >= FEWEST) else {
        return;
    };
    let fits = |ratio_now: f64| (ratio.low..=ratio.high).contains(&ratio_now);
    if fits(middle) {
        return;
    }
    // Only a unit that nothing named is in doubt; the faster quantity is the one misread more often.
    for (id, grows) in [(below, false), (above, true)] {
        let Some(known) = measure::known(&id) else { continue };
        let column = columns.iter().find(|c| c.measure() == Some(&id));
        let Some(unit) = column.filter(|c| c.unit_source == UnitSource::Assumed).and_then(|c| c.unit) else {
            continue;
        };
        let found = others(known, unit).find(|(_, f)| fits(if grows { middle * f } else { middle / f }));
        if let Some((unit, _)) = found {
            questions.push((id, unit));
            return;
        }
    }
}

/// Flags each value out of range, with the range.
fn flag(draft: &Draft, at: usize, known: &Facts, talk: &mut Talk) {
    let (low, high) = (known.plausible.low, known.plausible.high);
    let unit = SourceUnit::canonical(known.unit).map_or("", SourceUnit::label);
    let name = title(known.known, talk.voice());
    for (shot, &line) in draft.session.shots.iter().zip(&draft.lines) {
        let Some(value) = shot.values.get(at).copied().flatten() else { continue };
        if value < low || value > high {
            let message = say::implausible(
                talk.voice(),
                &name,
                &shown(value, talk.voice()),
                unit,
                &shown(low, talk.voice()),
                &shown(high, talk.voice()),
            );
            talk.notice(NoticeKind::Implausible, place(line, &name), message);
        }
    }
}

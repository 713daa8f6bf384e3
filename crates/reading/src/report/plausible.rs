//! Measures whose column only makes sense in another unit, told from the values alone. Nothing is changed here.
//!
//! The ranges are those of [`session::known`]; the ratios are common practice, no source: a full shot carries between
//! 0.6 and 2.2 yards for each mile per hour of its ball speed, and the ball leaves between 0.7 and 1.6 times as fast
//! as the club.

use crate::outcome::UnitSource;
use crate::take::draft::Draft;
use crate::understand::column::Column;
use session::known::{Facts, Known};
use session::measure::{self, MeasureId};
use session::units::SourceUnit;

/// Fewer values than this are no column; averages are few by nature.
const FEWEST: usize = 3;
const FEWEST_AVERAGES: usize = 2;

/// A measure that makes sense in another unit than it was read in.
#[derive(Debug, Clone)]
pub(crate) struct Question {
    pub(crate) measure: MeasureId,
    pub(crate) unit: SourceUnit,
    /// Its values cannot be in the unit they were read in.
    pub(crate) impossible: bool,
}

/// One measure above another one, and the range of their ratio.
pub(crate) struct Ratio {
    pub(crate) above: Known,
    pub(crate) below: Known,
    pub(crate) low: f64,
    pub(crate) high: f64,
}

pub(crate) const RATIOS: [Ratio; 2] = [
    Ratio { above: Known::Carry, below: Known::BallSpeed, low: 0.6, high: 2.2 },
    Ratio { above: Known::BallSpeed, below: Known::ClubSpeed, low: 0.7, high: 1.6 },
];

/// Measures that only make sense in another unit.
pub(crate) fn questions(draft: &Draft, columns: &[&Column<'_>]) -> Vec<Question> {
    let mut questions: Vec<Question> = Vec::new();
    for id in &draft.session.measures {
        let Some(known) = measure::known(id) else { continue };
        let Some(unit) = columns.iter().find(|c| c.measure() == Some(id)).and_then(|c| c.unit) else {
            continue;
        };
        let outside = |v: f64| !(known.plausible.low..=known.plausible.high).contains(&v);
        let values = values(draft, id);
        let odd = values.iter().filter(|v| outside(**v)).count();
        let fewest = if draft.session.shots.is_empty() { FEWEST_AVERAGES } else { FEWEST };
        if values.len() < fewest || odd * 5 < values.len() * 4 {
            continue;
        }
        let better = others(known, unit).find(|(_, factor)| {
            values.iter().filter(|v| !outside(**v * factor)).count() * 5 >= values.len() * 4
        });
        questions.extend(better.map(|(unit, _)| Question { measure: id.clone(), unit, impossible: true }));
    }
    for ratio in &RATIOS {
        ask_by_ratio(draft, columns, ratio, &mut questions);
    }
    questions
}

/// Shots' values; of a session of averages the averages.
fn values(draft: &Draft, id: &MeasureId) -> Vec<f64> {
    let Some(at) = draft.session.measure_index(id) else { return Vec::new() };
    if draft.session.shots.is_empty() {
        return draft.session.summaries.iter().filter_map(|s| s.values.get(id)?.mean).collect();
    }
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
fn ask_by_ratio(draft: &Draft, columns: &[&Column<'_>], ratio: &Ratio, questions: &mut Vec<Question>) {
    let (above, below) = (MeasureId::from(ratio.above), MeasureId::from(ratio.below));
    if questions.iter().any(|q| q.measure == above || q.measure == below) {
        return;
    }
    let mut ratios = ratios(draft, &above, &below);
    arrange::sort_numbers(&mut ratios);
    let fewest = if draft.session.shots.is_empty() { FEWEST_AVERAGES } else { FEWEST };
    let Some(middle) = ratios.get(ratios.len() / 2).copied().filter(|_| ratios.len() >= fewest) else {
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
            questions.push(Question { measure: id, unit, impossible: false });
            return;
        }
    }
}

fn ratios(draft: &Draft, above: &MeasureId, below: &MeasureId) -> Vec<f64> {
    let session = &draft.session;
    let ratio = |(a, b): (f64, f64)| if b > 0.0 { Some(a / b) } else { None };
    let (Some(top), Some(bottom)) = (session.measure_index(above), session.measure_index(below)) else {
        return Vec::new();
    };
    if session.shots.is_empty() {
        let mean = |s: &session::Summary, id: &MeasureId| s.values.get(id)?.mean;
        return session.summaries.iter().filter_map(|s| ratio((mean(s, above)?, mean(s, below)?))).collect();
    }
    let value = |s: &session::Shot, at: usize| s.values.get(at).copied().flatten();
    session.shots.iter().filter_map(|s| ratio((value(s, top)?, value(s, bottom)?))).collect()
}

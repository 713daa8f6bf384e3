//! Doubts about what a column holds: nothing names it, nobody knows its heading, or two say the same.

use crate::cut::shape::Single;
use crate::doubt::{Choice, Doubt, DoubtKind, Settled};
use crate::doubts::asked::{choice, doubt, said};
use crate::lexicon::word::Word;
use crate::outcome::Role;
use crate::take::ctx::Ctx;
use crate::trim::shortened;
use crate::understand::column::Column;
use session::known::{Facts, Known};
use session::measure::MeasureId;
use session::units::SourceUnit;
use text::Voice;
use text::doubts as say;
use text::names::spoken;

/// What a table without headings may hold, the usual ones first.
const USUAL: [Known; 8] = [
    Known::Carry,
    Known::Total,
    Known::BallSpeed,
    Known::ClubSpeed,
    Known::SpinRate,
    Known::Offline,
    Known::LaunchAngle,
    Known::Apex,
];
/// Measures that are offered for one column.
const MOST_OFFERED: usize = 5;

/// Nothing names what was measured.
pub(crate) fn measure_guessed(ctx: &Ctx<'_>, single: &Single, found: &mut Vec<Doubt>) {
    let key = "measure_guessed";
    if said(ctx, key).is_some() {
        return;
    }
    let voice = ctx.talk.voice();
    let values: Vec<f64> =
        ctx.draft.session.shots.iter().filter_map(|s| s.values.first().copied().flatten()).collect();
    let unit = single.unit;
    let fits = |known: &Known| {
        let facts = known.facts();
        single.measure != *known && of_unit(facts, unit) && are_usual(facts, unit, &values)
    };
    let mut choices: Vec<Choice> = Vec::new();
    if let Some(known) = single.measure.known() {
        choices.push(choice(Settled::Right, say::it_is(voice, &spoken(known, voice))));
    }
    let others = USUAL.into_iter().filter(fits).take(MOST_OFFERED);
    choices.extend(others.map(|known| is_measure(known, voice)));
    if choices.is_empty() {
        choices.push(choice(Settled::Right, say::something_else(voice)));
    }
    let asked = doubt(DoubtKind::MeasureGuessed, key.into(), say::measure_guessed(voice), choices);
    found.push(Doubt { measure: Some(single.measure.clone()), ..asked });
}

fn is_measure(known: Known, voice: &Voice) -> Choice {
    choice(Settled::Measure(known.into()), say::it_is(voice, &spoken(known, voice)))
}

fn of_unit(facts: &Facts, unit: Option<SourceUnit>) -> bool {
    unit.is_none_or(|unit| unit.convert(1.0, facts.unit).is_some())
}

/// Whether nearly all values can be of a measure, and are of its usual size.
fn are_usual(facts: &Facts, unit: Option<SourceUnit>, values: &[f64]) -> bool {
    let (low, high) = (facts.plausible.low, facts.plausible.high);
    // A twelfth of the largest plausible value: below it most values are of something smaller.
    let least = if low < 0.0 { f64::NEG_INFINITY } else { high / 12.0 };
    let of_size = |value: f64| low >= 0.0 || value.abs() >= high / 60.0;
    let inside = |value: &&f64| {
        let value = unit.and_then(|unit| unit.convert(**value, facts.unit)).unwrap_or(**value);
        (low..=high).contains(&value) && value >= least
    };
    let largest = values.iter().fold(0.0, |most: f64, value| most.max(value.abs()));
    let largest = unit.and_then(|unit| unit.convert(largest, facts.unit)).unwrap_or(largest);
    !values.is_empty() && of_size(largest) && values.iter().filter(inside).count() * 5 >= values.len() * 4
}

/// A heading that nobody knows over a unit and values of the trade.
pub(crate) fn unknown_headings(ctx: &Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    for column in columns {
        let Role::Measure(id) = &column.role else { continue };
        let Some(unit) = column.understood.unit.or_else(|| SourceUnit::from_text(&column.unit_label)) else {
            continue;
        };
        let key = format!("unknown_heading:{}", column.index);
        let is_own = id.known().is_none() && column.understood.word.is_none() && column.group.is_none();
        let is_hinted = ctx.hints.columns.contains_key(&column.index);
        if !is_own || is_hinted || said(ctx, &key).is_some() {
            continue;
        }
        let Some(at) = ctx.draft.session.measure_index(id) else { continue };
        let values: Vec<f64> =
            ctx.draft.session.shots.iter().filter_map(|s| s.values.get(at).copied().flatten()).collect();
        let taken = |known: Known| columns.iter().any(|c| c.measure() == Some(&known.into()));
        let mut fits: Vec<Known> = Known::ALL
            .into_iter()
            .filter(|&known| !taken(known) && of_unit(known.facts(), Some(unit)))
            .filter(|known| are_usual(known.facts(), Some(unit), &values))
            .collect();
        fits.truncate(MOST_OFFERED);
        if fits.is_empty() {
            continue;
        }
        let voice = ctx.talk.voice();
        let mut choices: Vec<Choice> = fits.into_iter().map(|known| is_measure(known, voice)).collect();
        choices.push(choice(Settled::Right, say::something_else(voice)));
        let question = say::unknown_heading(voice, &shortened(&column.heading), unit.label());
        let asked = doubt(DoubtKind::UnknownHeading, key, question, choices);
        found.push(Doubt { measure: Some(id.clone()), holds: vec![id.clone()], ..asked });
    }
}

/// Two columns of one heading: told apart by their values, or one of them taken.
pub(crate) fn headed_alike(ctx: &Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    for (at, second) in columns.iter().enumerate() {
        let Some(Word::Measure(known)) =
            second.understood.word.filter(|_| second.understood.beside.is_none())
        else {
            continue;
        };
        let claims = |c: &&&Column<'_>| {
            c.understood.word == second.understood.word
                && c.understood.beside.is_none()
                && c.understood.statistic == second.understood.statistic
                && c.understood.plain == second.understood.plain
                && c.group == second.group
                && c.profile.figures > 0
        };
        // Several tables stand one behind the other here, each with its own first column.
        let start =
            columns[..at].iter().rposition(|c| c.index >= second.index).map_or(0, |before| before + 1);
        let Some(first) = columns[start..at].iter().find(claims).filter(|_| claims(&second)) else {
            continue;
        };
        let id = MeasureId::from(known);
        let key = format!("headed_alike:{}:{}:{id}", first.index, second.index);
        let hinted = [first, second].iter().any(|c| ctx.hints.columns.contains_key(&c.index));
        if hinted || said(ctx, &key).is_some() || second.role == Role::Ignored {
            continue;
        }
        let voice = ctx.talk.voice();
        let heading = shortened(&second.heading);
        let asked = match (&first.role, &second.role) {
            (Role::Measure(one), Role::Measure(other))
                if one.known().is_some() && other.known().is_some() =>
            {
                // Names in the order of their sizes: a carry and what rolls on.
                let name = |known: Known| spoken(known, voice);
                let question = say::told_apart(voice, &heading, &name(Known::Carry), &name(Known::Total));
                let right = choice(Settled::Right, say::it_is_right(voice));
                doubt(DoubtKind::HeadedAlike, key, question, vec![right])
            }
            (Role::Measure(one), _) if *one == id => {
                let choices = vec![
                    choice(Settled::Right, say::first_column(voice)),
                    choice(Settled::Second, say::second_column(voice)),
                ];
                doubt(DoubtKind::HeadedAlike, key, say::headed_alike(voice, &spoken(known, voice)), choices)
            }
            _ => continue,
        };
        let measure =
            if known == Known::Total && matches!(&second.role, Role::Measure(id) if id.known().is_some()) {
                MeasureId::from(Known::Carry)
            } else {
                id
            };
        found.push(Doubt { measure: Some(measure), ..asked });
    }
}

//! Doubts about units: a column that makes sense only in another one, one build's values, several units in one column.

use crate::doubt::{Doubt, DoubtKind, Settled};
use crate::doubts::asked::{choice, doubt, first_lines, name_of, said};
use crate::lexicon::number::{Cell, scan};
use crate::outcome::UnitSource;
use crate::remarks::NoticeKind;
use crate::report::plausible::{self, Question};
use crate::take::ctx::Ctx;
use crate::talk::place;
use crate::trim::shortened;
use crate::understand::column::Column;
use session::few::Set;
use session::known::Known;
use session::measure::{self, MeasureId};
use session::units::SourceUnit;
use text::doubts as say;

/// Columns that only make sense in another unit. Values that cannot be in theirs stay out meanwhile.
pub(crate) fn whole_columns(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    for Question { measure: id, unit, impossible } in plausible::questions(&ctx.draft, columns) {
        let own: Vec<&&Column<'_>> = columns.iter().filter(|c| c.measure() == Some(&id)).collect();
        let indexes: Vec<String> = own.iter().map(|c| c.index.to_string()).collect();
        let key = format!("unit:{}", indexes.join(":"));
        if said(ctx, &key).is_some() {
            continue;
        }
        let (heading, read_in) = own
            .first()
            .map_or((String::new(), String::new()), |c| (shortened(&c.heading), c.unit_label.clone()));
        let mut lines = Vec::new();
        if impossible {
            lines = super::values::hold_out(ctx, &id, false).lines;
        }
        let voice = ctx.talk.voice();
        let choices = vec![
            choice(Settled::Unit(unit.label().to_owned()), say::in_unit(voice, unit.label())),
            choice(Settled::Right, say::in_unit(voice, &read_in)),
        ];
        let question = say::unit(voice, &heading, &read_in, unit.label());
        ctx.talk.notice(NoticeKind::UnitQuestion, place(0, &heading), question.clone());
        let asked = doubt(DoubtKind::Unit, key, question, choices);
        found.push(Doubt { measure: Some(id), lines: first_lines(lines.into_iter()), ..asked });
    }
}

/// Fewer shots of a build say nothing of its ratio.
const FEWEST: usize = 4;
/// Ball speeds this close are of the same kind of club.
const ALIKE: f64 = 0.06;

/// A carry that goes with its ball speed as another build's does only in another unit. Asked only where no unit is given.
pub(crate) fn one_club(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    let (carry, ball) = (MeasureId::from(Known::Carry), MeasureId::from(Known::BallSpeed));
    let Some(column) = columns.iter().find(|c| c.measure() == Some(&carry)) else { return };
    let session = &ctx.draft.session;
    let (Some(top), Some(bottom)) = (session.measure_index(&carry), session.measure_index(&ball)) else {
        return;
    };
    let (Some(unit), UnitSource::Assumed) = (column.unit, column.unit_source) else { return };
    let other = if unit == SourceUnit::Meter { SourceUnit::Yard } else { SourceUnit::Meter };
    let yards = Known::Carry.facts().unit;
    let (Some(one), Some(more)) = (unit.convert(1.0, yards), other.convert(1.0, yards)) else { return };
    let factor = more / one;
    let builds: Vec<Option<(f64, f64)>> =
        (0..session.builds.len()).map(|build| middles(ctx, build, top, bottom)).collect();
    let odd = builds.iter().enumerate().find(|(at, middle)| {
        middle.is_some_and(|(ratio, speed)| {
            let mut others =
                builds.iter().enumerate().filter(|(other, _)| other != at).filter_map(|(_, m)| *m);
            others.any(|(there, their_speed)| {
                let same_kind = (speed / their_speed - 1.0).abs() < ALIKE;
                let (apart, then) = ((ratio / there).abs(), (ratio * factor / there).abs());
                // Half the step from one unit to the other, and a third of it after.
                same_kind && apart < 0.95 && (then - 1.0).abs() < 0.03
            })
        })
    });
    let Some((build, _)) = odd else { return };
    let name = session.builds.get(build).map(|b| b.name.clone()).unwrap_or_default();
    let key = format!("unit_of_club:{carry}:{name}");
    match said(ctx, &key) {
        Some(Settled::Unit(_)) => {
            for shot in ctx.draft.session.shots.iter_mut().filter(|shot| shot.build == build) {
                if let Some(Some(value)) = shot.values.get_mut(top) {
                    *value = *value / one * more;
                }
            }
        }
        Some(_) => {}
        None => {
            let voice = ctx.talk.voice();
            let choices = vec![
                choice(Settled::Unit(other.label().to_owned()), say::in_unit(voice, other.label())),
                choice(Settled::Right, say::in_unit(voice, unit.label())),
            ];
            let question =
                say::unit_of_club(voice, &name_of(&carry, voice), &shortened(&name), other.label());
            let asked = doubt(DoubtKind::UnitOfClub, key, question, choices);
            found.push(Doubt { measure: Some(carry), builds: vec![build], ..asked });
        }
    }
}

/// The middle of the ratios of a build's shots, and of its ball speeds.
fn middles(ctx: &Ctx<'_>, build: usize, top: usize, bottom: usize) -> Option<(f64, f64)> {
    let pairs = ctx.draft.session.shots.iter().filter(|shot| shot.build == build).filter_map(|shot| {
        let value = |at: usize| shot.values.get(at).copied().flatten();
        Some((value(top)?, value(bottom).filter(|speed| *speed > 0.0)?))
    });
    let (mut ratios, mut speeds): (Vec<f64>, Vec<f64>) =
        pairs.map(|(carry, speed)| (carry / speed, speed)).unzip();
    arrange::sort_numbers(&mut ratios);
    arrange::sort_numbers(&mut speeds);
    let half = ratios.len() / 2;
    if ratios.len() < FEWEST { None } else { Some((ratios[half], speeds[half])) }
}

/// Values of one column in several units.
pub(crate) fn mixed(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    for column in columns {
        let (Some(id), [(main, _), (other, _), ..]) = (column.measure(), column.profile.units.as_slice())
        else {
            continue;
        };
        let Some(facts) = measure::known(id).filter(|facts| other.convert(1.0, facts.unit).is_some()) else {
            continue;
        };
        let Some(at) = ctx.draft.session.measure_index(id) else { continue };
        let key = format!("units_mixed:{}", column.index);
        let grid = ctx.grid;
        let is_other = |row: usize| matches!(scan(grid.cell(row, column.index)), Cell::Figure(figure) if figure.unit.is_some_and(|unit| unit != *main));
        let lines: Set<u32> =
            (0..grid.len()).filter(|&row| is_other(row)).map(|row| grid.line(row)).collect();
        let draft = &mut ctx.draft;
        let touched =
            || draft.lines.iter().enumerate().filter(|(_, line)| lines.contains(*line)).map(|(shot, _)| shot);
        match ctx.hints.settled.get(&key) {
            Some(Settled::LeaveOut) => {
                let touched: Vec<usize> = touched().collect();
                for shot in touched {
                    if let Some(value) = draft.session.shots[shot].values.get_mut(at) {
                        *value = None;
                    }
                }
            }
            Some(_) => {}
            None => {
                let builds: Set<usize> = touched().map(|shot| draft.session.shots[shot].build).collect();
                let voice = ctx.talk.voice();
                let choices = vec![
                    choice(Settled::Right, say::it_is_right(voice)),
                    choice(Settled::LeaveOut, say::leave_cells_out(voice)),
                ];
                let question = say::units_mixed(
                    voice,
                    &name_of(&facts.known.into(), voice),
                    main.label(),
                    other.label(),
                );
                let asked = doubt(DoubtKind::UnitsMixed, key, question, choices);
                let (builds, lines) = (builds.into_iter().collect(), first_lines(lines.into_iter()));
                found.push(Doubt { measure: Some(id.clone()), builds, lines, ..asked });
            }
        }
    }
}

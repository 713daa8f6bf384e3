//! What the reading is in doubt of: found in what was taken, settled by what the golfer said, asked otherwise.
//!
//! Some of what was said has to be known before cells are taken ([`told`]): it becomes what hints say. The rest changes
//! the draft ([`settle`]): builds become one, cells stay out, values change their unit.

mod asked;
mod averages;
mod columns;
mod names;
mod plain;
mod told;
mod units;
mod values;

use crate::cut::shape::Single;
use crate::doubt::{Doubt, DoubtKind};
use crate::take::ctx::Ctx;
use crate::understand::column::Column;
use session::MOST_BUILDS;
use session::measure::MeasureId;

pub(crate) use told::told;

/// Settles what was said, and gives back what is still to be asked, the most urgent first.
pub(crate) fn settle(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], single: Option<&Single>) -> Vec<Doubt> {
    if plain::is_plain(ctx, columns, single) { Vec::new() } else { thorough(ctx, columns, single) }
}

/// Every search, in the order of their kinds.
#[inline(never)]
fn thorough(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], single: Option<&Single>) -> Vec<Doubt> {
    let mut found = Vec::new();
    if ctx.draft.session.builds.len() > MOST_BUILDS {
        names::too_many(ctx, columns, &mut found);
        return found;
    }
    names::join(ctx);
    if let Some(single) = single.filter(|single| single.guessed) {
        columns::measure_guessed(ctx, single, &mut found);
    }
    columns::unknown_headings(ctx, columns, &mut found);
    columns::headed_alike(ctx, columns, &mut found);
    units::whole_columns(ctx, columns, &mut found);
    units::one_club(ctx, columns, &mut found);
    units::mixed(ctx, columns, &mut found);
    values::out_of_range(ctx, columns, &mut found);
    values::points_slipped(ctx, &mut found);
    values::above_total(ctx, &mut found);
    averages::plus_minus(ctx, columns, &mut found);
    averages::odd_spreads(ctx, &mut found);
    names::same(ctx, &mut found);
    names::one_row(ctx, &mut found);
    names::odd(ctx, columns, &mut found);
    names::left_out(ctx, columns, &mut found);
    if !found.is_empty() {
        let samples = asked::samples(ctx, columns);
        found.iter_mut().for_each(|doubt| doubt.samples.clone_from(&samples));
    }
    found
}

/// Measures that make sense only in another unit, as the columns tell it.
pub(crate) fn unit_questions(found: &[Doubt]) -> Vec<(MeasureId, session::units::SourceUnit)> {
    let asked = found.iter().filter(|doubt| doubt.kind == DoubtKind::Unit);
    asked
        .filter_map(|doubt| {
            let unit = doubt.choices.iter().find_map(|choice| match &choice.says {
                crate::doubt::Settled::Unit(unit) => session::units::SourceUnit::from_text(unit),
                _ => None,
            });
            Some((doubt.measure.clone()?, unit?))
        })
        .collect()
}

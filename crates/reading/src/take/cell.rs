//! One cell of a measure into a value, or into a problem with its place.

use crate::lexicon::figure::{Figure, Value};
use crate::lexicon::number::{Cell, scan, with_letters_read};
use crate::lexicon::side::Side;
use crate::remarks::ProblemKind;
use crate::take::ctx::Ctx;
use crate::talk::place;
use crate::understand::column::Column;
use session::digits::power_of_ten;
use session::known::Known;
use session::measure::{self, Better};

/// A value in the canonical unit with the step it was written in; `Err` when a problem was noted.
pub(crate) fn read_cell(
    ctx: &mut Ctx<'_>,
    row: usize,
    column: &Column<'_>,
) -> Result<Option<(f64, f64)>, ()> {
    read_text(ctx, ctx.grid.cell(row, column.index), row, column)
}

/// The same for a piece of a cell.
pub(crate) fn read_text(
    ctx: &mut Ctx<'_>,
    text: &str,
    row: usize,
    column: &Column<'_>,
) -> Result<Option<(f64, f64)>, ()> {
    let here = || place(ctx.grid.line(row), &column.heading);
    let figure = match scan(text) {
        Cell::Missing => return Ok(None),
        // "l59.8" is no speed to the left, and "12 D" behind a tee no miss downwards.
        Cell::Figure(figure) if figure.side.is_none_or(|side| takes(column, side)) => figure,
        Cell::Figure(_) | Cell::Text => {
            let Some(repaired) = with_letters_read(text) else {
                ctx.talk.problem(ProblemKind::NotANumber, here(), text);
                return Err(());
            };
            let value = match scan(&repaired) {
                Cell::Figure(figure) if ctx.hints.letters_as_digits == Some(true) => {
                    canonical(&figure, column)
                }
                _ => None,
            };
            if value.is_some() {
                ctx.letters_read += 1;
                return Ok(value);
            }
            ctx.talk.suggest(ProblemKind::LetterForDigit, here(), text, Some(repaired));
            return Err(());
        }
    };
    if let Some(value) = canonical(&figure, column) {
        return Ok(Some(value));
    }
    let other = figure.value(column.mark.other());
    if figure.value(column.mark).is_none() && other.is_some() {
        let suggestion = other.map(|v| shown(v, column));
        ctx.talk.suggest(ProblemKind::OtherDecimalMark, here(), text, suggestion);
    } else if figure.value(column.mark).is_none() {
        ctx.talk.problem(ProblemKind::NotANumber, here(), text);
    } else {
        ctx.talk.problem(ProblemKind::OtherUnit, here(), text);
    }
    Err(())
}

/// Whether a measure's values can lie on that side of zero.
fn takes(column: &Column<'_>, side: Side) -> bool {
    let Some(known) = column.measure().and_then(measure::known) else { return true };
    let sideways = known.better == Better::NearerZero && known.known != Known::StrikeHeight;
    known.plausible.low < 0.0 && (!sideways || matches!(side, Side::Left | Side::Right))
}

/// A value as its column would write it.
fn shown(value: Value, column: &Column<'_>) -> String {
    let decimals = usize::try_from(value.decimals).unwrap_or(0).min(9);
    let sign = if value.value < 0.0 { "-" } else { "" };
    let digits = session::digits::rounded(value.value, decimals);
    format!("{sign}{}", digits.replace('.', if column.mark.as_char() == ',' { "," } else { "." }))
}

fn canonical(figure: &Figure<'_>, column: &Column<'_>) -> Option<(f64, f64)> {
    let value = figure.value(column.mark)?;
    let step = 1.0 / power_of_ten(usize::try_from(value.decimals).unwrap_or(0));
    let Some(known) = column.measure().and_then(measure::known) else { return Some((value.value, step)) };
    let Some(unit) = figure.unit.or(column.unit) else { return Some((value.value, step)) };
    let converted = unit.convert(value.value, known.unit).filter(|v| v.is_finite())?;
    Some((converted, unit.convert(step, known.unit)?))
}

/// "7", "#7", "Shot 7", "7.": the one whole number in a cell.
pub(crate) fn whole_number(text: &str) -> Option<u32> {
    let start = text.find(|c: char| c.is_ascii_digit())?;
    let digits = text[start..].bytes().take_while(u8::is_ascii_digit).count();
    let rest = &text[start + digits..];
    let rest = rest.strip_suffix(".0").unwrap_or(rest);
    if rest.bytes().any(|b| b.is_ascii_digit()) || text[..start].contains(['-', '−', '.', ',']) {
        return None;
    }
    text[start..start + digits].parse().ok()
}

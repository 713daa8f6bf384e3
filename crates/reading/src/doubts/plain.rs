//! Whether there is nothing to doubt, told in one look: nearly every reading is like that, and no more is run for it.
//!
//! It may see a doubt where the thorough search finds none, never the other way around.

use crate::cut::shape::Single;
use crate::lexicon::heading::understand;
use crate::lexicon::word::Word;
use crate::outcome::{Role, UnitSource};
use crate::report::plausible::RATIOS;
use crate::take::ctx::Ctx;
use crate::understand::column::Column;
use session::known::Known;
use session::measure::{self, MeasureId};
use session::slipped_point::may_have_slipped;
use session::{MOST_BUILDS, Shot};

/// Averages of the ratio of carry to ball speed this far apart may be two units.
const APART: f64 = 1.03;

/// Whether no search would find a doubt.
pub(crate) fn is_plain(ctx: &Ctx<'_>, columns: &[&Column<'_>], single: Option<&Single>) -> bool {
    let session = &ctx.draft.session;
    ctx.hints.settled.is_empty()
        && ctx.unexplained.is_empty()
        && session.summaries.is_empty()
        && session.builds.len() <= MOST_BUILDS
        && single.is_none_or(|single| !single.guessed)
        && columns.iter().all(|column| is_clear(column))
        && values_can_be(ctx)
        && ratios_can_be(ctx, columns)
        && names_are_clear(ctx)
}

/// A measure of the trade, or one of the golfer's own that no unit speaks of; all its values in one unit.
fn is_clear(column: &Column<'_>) -> bool {
    let Role::Measure(id) = &column.role else { return true };
    let is_known = column.understood.word == id.known().map(Word::Measure);
    let is_unspoken = column.unit_label.is_empty() && column.understood.unit.is_none();
    is_known && column.profile.units.len() < 2 && (id.known().is_some() || is_unspoken)
}

fn values_can_be(ctx: &Ctx<'_>) -> bool {
    let session = &ctx.draft.session;
    session.measures.iter().enumerate().all(|(at, id)| {
        let Some(facts) = measure::known(id) else { return true };
        let range = facts.plausible.low..=facts.plausible.high;
        let values = || session.shots.iter().filter_map(|shot| value(shot, at));
        values().all(|value| range.contains(&value)) && !(facts.keeps_its_size && may_have_slipped(values()))
    })
}

fn value(shot: &Shot, at: usize) -> Option<f64> {
    shot.values.get(at).copied().flatten()
}

/// Ratios within their ranges for more than half of the shots; carries no farther than totals; and the builds alike.
fn ratios_can_be(ctx: &Ctx<'_>, columns: &[&Column<'_>]) -> bool {
    let session = &ctx.draft.session;
    let place = |known: Known| session.measure_index(&MeasureId::from(known));
    for ratio in &RATIOS {
        let (Some(above), Some(below)) = (place(ratio.above), place(ratio.below)) else { continue };
        let mut balance = 0_i32;
        for shot in &session.shots {
            if let (Some(a), Some(b)) = (value(shot, above), value(shot, below)) {
                balance += if (ratio.low * b..=ratio.high * b).contains(&a) { 1 } else { -1 };
            }
        }
        if balance < 0 || balance == 0 && !session.shots.is_empty() {
            return false;
        }
    }
    let Some(carry) = place(Known::Carry) else { return true };
    if let Some(total) = place(Known::Total) {
        let beyond = |shot: &Shot| value(shot, carry) > value(shot, total) && value(shot, total).is_some();
        if session.shots.iter().any(beyond) {
            return false;
        }
    }
    let assumed = |c: &&&Column<'_>| {
        c.role == Role::Measure(Known::Carry.into()) && c.unit_source == UnitSource::Assumed
    };
    match place(Known::BallSpeed) {
        Some(ball) if columns.iter().any(|c| assumed(&c)) => {
            let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
            for build in 0..session.builds.len() {
                let (mut carries, mut speeds) = (0.0, 0.0);
                for shot in session.shots.iter().filter(|shot| shot.build == build) {
                    if let (Some(a), Some(b)) = (value(shot, carry), value(shot, ball)) {
                        carries += a;
                        speeds += b;
                    }
                }
                if speeds > 0.0 {
                    least = least.min(carries / speeds);
                    most = most.max(carries / speeds);
                }
            }
            most <= least * APART
        }
        _ => true,
    }
}

/// Every build has several shots and a name of words that no other one has in another spelling.
fn names_are_clear(ctx: &Ctx<'_>) -> bool {
    let session = &ctx.draft.session;
    let is_clear = |(at, build): (usize, &session::Build)| {
        let is_word = build.name.chars().any(char::is_alphabetic);
        let several = session.shots.iter().filter(|shot| shot.build == at).nth(1).is_some();
        let is_heading = matches!(understand(&build.name).word, Some(Word::Measure(_)));
        let twin = |other: &session::Build| spelled(&other.name).eq(spelled(&build.name));
        let elsewhere = |other: &String| *other != build.name && spelled(other).eq(spelled(&build.name));
        let is_alone = !session.builds[..at].iter().any(twin) && !ctx.hints.others.iter().any(elsewhere);
        is_word && several && !is_heading && is_alone
    };
    session.builds.iter().enumerate().all(is_clear)
}

/// What is left of a name without what says nothing: case, spaces, most signs.
pub(crate) fn spelled(name: &str) -> impl Iterator<Item = char> {
    let says = |c: &char| c.is_alphanumeric() || matches!(c, '+' | '.' | '°');
    name.chars().filter(says).map(|c| c.to_ascii_lowercase())
}

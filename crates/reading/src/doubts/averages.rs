//! Doubts about averages: what stands behind ±, and spreads that no golfer has.

use crate::doubt::{Doubt, DoubtKind, Settled};
use crate::doubts::asked::{choice, doubt, first_lines, name_of, said};
use crate::lexicon::pair::pair;
use crate::report::agreement::shown;
use crate::take::ctx::Ctx;
use crate::trim::shortened;
use crate::understand::column::Column;
use session::few::Set;
use session::measure::{self, MeasureId};
use text::doubts as say;

/// A figure behind ±, taken for a standard deviation.
pub(crate) fn plus_minus(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    let session = &ctx.draft.session;
    if session.summaries.is_empty() || !session.shots.is_empty() {
        return;
    }
    let is_pair = |cell: &str| pair(cell).is_some();
    let Some(id) = columns
        .iter()
        .find(|c| c.profile.distinct.iter().any(|cell| is_pair(cell)))
        .and_then(|c| c.measure().cloned())
        .or_else(|| {
            let any = columns.is_empty() && (0..ctx.grid.len()).any(|row| ctx.grid.cells(row).any(is_pair));
            if any { session.measures.first().cloned() } else { None }
        })
    else {
        return;
    };
    let key = "plus_minus";
    match said(ctx, key) {
        Some(Settled::LeaveOut) => {
            for summary in &mut ctx.draft.session.summaries {
                summary.values = std::mem::take(&mut summary.values)
                    .iter()
                    .map(|(id, value)| (id.clone(), session::SummaryValue { sd: None, ..*value }))
                    .collect();
            }
        }
        Some(_) => {}
        None => {
            let voice = ctx.talk.voice();
            let choices = vec![
                choice(Settled::Right, say::deviation(voice)),
                choice(Settled::LeaveOut, say::no_deviation(voice)),
            ];
            let asked = doubt(DoubtKind::PlusMinus, key.into(), say::plus_minus(voice), choices);
            found.push(Doubt { measure: Some(id), ..asked });
        }
    }
}

/// So many times the scatter of a golfer who scatters much is no golfer's.
const FAR_BEYOND: f64 = 4.0;

/// Spreads of nought, and spreads of a lost decimal point: they stay out until somebody says that they are right.
pub(crate) fn odd_spreads(ctx: &mut Ctx<'_>, found: &mut Vec<Doubt>) {
    for id in ctx.draft.session.measures.clone() {
        let most = most(&id);
        let is_odd = |sd: f64, n: Option<u32>| sd < 0.0 || sd == 0.0 && n != Some(1) || sd > most;
        let key = format!("odd_spread:{id}");
        let told = said(ctx, &key);
        if told == Some(&Settled::Right) {
            continue;
        }
        let mut out: Vec<(usize, f64, u32)> = Vec::new();
        for summary in &mut ctx.draft.session.summaries {
            let Some(mut value) = summary.values.get(&id).copied() else { continue };
            let Some(sd) = value.sd.filter(|&sd| is_odd(sd, summary.n)) else { continue };
            value.sd = None;
            summary.values.insert(id.clone(), value);
            out.push((summary.build, sd, summary.line.unwrap_or(0)));
        }
        if out.is_empty() || told.is_some() {
            continue;
        }
        let voice = ctx.talk.voice();
        let names: Vec<String> = out
            .iter()
            .filter_map(|(build, ..)| ctx.draft.session.builds.get(*build))
            .map(|build| shortened(&build.name))
            .collect();
        let values: Vec<String> = out.iter().map(|(_, sd, _)| shown(*sd, voice)).collect();
        let question = say::odd_spread(voice, &values.join(", "), &name_of(&id, voice), &names.join(", "));
        let choices = vec![
            choice(Settled::LeaveOut, say::leave_cells_out(voice)),
            choice(Settled::Right, say::it_is_right(voice)),
        ];
        let builds: Set<usize> = out.iter().map(|(build, ..)| *build).collect();
        let lines = first_lines(out.iter().map(|(.., line)| *line));
        let asked = doubt(DoubtKind::OddSpread, key, question, choices);
        let builds = builds.into_iter().collect();
        found.push(Doubt { measure: Some(id.clone()), builds, lines, holds: vec![id], ..asked });
    }
}

/// The largest spread that is believed: far beyond the usual one, or a third of all that can be.
fn most(id: &MeasureId) -> f64 {
    let Some(facts) = measure::known(id) else { return f64::INFINITY };
    let range = facts.plausible.high - facts.plausible.low;
    facts.scatter.map_or(range / 3.0, |usual| usual.high * FAR_BEYOND)
}

//! Doubts about single values: outside what can be, or a carry beyond the total.

use crate::doubt::{Doubt, DoubtKind, Settled};
use crate::doubts::asked::{choice, doubt, first_lines, name_of, said};
use crate::remarks::NoticeKind;
use crate::report::agreement::shown;
use crate::take::ctx::Ctx;
use crate::talk::place;
use crate::understand::column::Column;
use session::few::Set;
use session::known::{Facts, Known};
use session::measure::{self, MeasureId};
use session::slipped_point::slipped_points;
use session::units::SourceUnit;
use text::Voice;
use text::doubts as say;

/// Values that were taken out of a draft.
#[derive(Default)]
pub(crate) struct HeldOut {
    pub(crate) values: Vec<f64>,
    pub(crate) lines: Vec<u32>,
    builds: Set<usize>,
}

impl HeldOut {
    /// Takes a shot's value of a measure out, if it has one.
    fn take(&mut self, shot: &mut session::Shot, at: usize, line: u32) {
        if let Some(value) = shot.values.get_mut(at).and_then(Option::take) {
            self.values.push(value);
            self.lines.push(line);
            self.builds.insert(shot.build);
        }
    }

    /// The question whether they are right.
    fn asked(self, kind: DoubtKind, key: String, question: String, id: MeasureId, voice: &Voice) -> Doubt {
        let is_one = self.values.len() == 1;
        let choices = vec![
            choice(Settled::LeaveOut, say::leave_cells_out(voice)),
            choice(Settled::Right, if is_one { say::it_is_right(voice) } else { say::they_are_right(voice) }),
        ];
        let asked = doubt(kind, key, question, choices);
        let (builds, lines) = (self.builds.into_iter().collect(), first_lines(self.lines.into_iter()));
        Doubt { measure: Some(id.clone()), builds, lines, holds: vec![id], ..asked }
    }
}

/// Cells outside what their measure can be stay out until somebody says that they are right.
pub(crate) fn out_of_range(ctx: &mut Ctx<'_>, columns: &[&Column<'_>], found: &mut Vec<Doubt>) {
    let asked_whole = |id: &MeasureId, found: &[Doubt]| {
        found.iter().any(|doubt| doubt.kind == DoubtKind::Unit && doubt.measure.as_ref() == Some(id))
    };
    for id in ctx.draft.session.measures.clone() {
        if measure::known(&id).is_none() || asked_whole(&id, found) || unit_is_right(ctx, columns, &id) {
            continue;
        }
        let key = format!("out_of_range:{id}");
        let told = said(ctx, &key);
        if told == Some(&Settled::Right) {
            continue;
        }
        let out = hold_out(ctx, &id, true);
        if out.lines.is_empty() || told.is_some() {
            continue;
        }
        let voice = ctx.talk.voice();
        let values: Vec<String> = out.values.iter().take(5).map(|value| shown(*value, voice)).collect();
        let (count, name) = (out.values.len(), name_of(&id, voice));
        let question = say::out_of_range(voice, &count.to_string(), count, &name, &values.join(", "));
        found.push(out.asked(DoubtKind::OutOfRange, key, question, id, voice));
    }
}

/// Cells ten times off the others of their build stay out until somebody says that they are right.
pub(crate) fn points_slipped(ctx: &mut Ctx<'_>, found: &mut Vec<Doubt>) {
    for id in ctx.draft.session.measures.clone() {
        let key = format!("point_slipped:{id}");
        let told = said(ctx, &key);
        let asked = found.iter().any(|doubt| doubt.measure.as_ref() == Some(&id));
        if asked || told == Some(&Settled::Right) {
            continue;
        }
        let slipped = slipped(ctx, &id);
        let (Some(at), false) = (ctx.draft.session.measure_index(&id), slipped.is_empty()) else { continue };
        let mut out = HeldOut::default();
        for shot in slipped {
            let line = ctx.draft.lines.get(shot).copied().unwrap_or(0);
            out.take(&mut ctx.draft.session.shots[shot], at, line);
        }
        if told.is_some() {
            continue;
        }
        let voice = ctx.talk.voice();
        let values: Vec<String> = out.values.iter().take(5).map(|value| shown(*value, voice)).collect();
        let (count, name) = (out.values.len(), name_of(&id, voice));
        let question = say::point_slipped(voice, &count.to_string(), count, &name, &values.join(", "));
        found.push(out.asked(DoubtKind::PointSlipped, key, question, id, voice));
    }
}

/// The shots whose value of a measure is ten times off the others of their build.
fn slipped(ctx: &Ctx<'_>, id: &MeasureId) -> Vec<usize> {
    let session = &ctx.draft.session;
    let keeps_its_size = measure::known(id).is_some_and(|facts| facts.keeps_its_size);
    let Some(at) = session.measure_index(id).filter(|_| keeps_its_size) else { return Vec::new() };
    let mut found = Vec::new();
    for build in 0..session.builds.len() {
        let own = session.shots.iter().enumerate().filter(|(_, shot)| shot.build == build);
        let own: Vec<(usize, f64)> =
            own.filter_map(|(place, shot)| Some((place, shot.values.get(at).copied()??))).collect();
        let values: Vec<f64> = own.iter().map(|(_, value)| *value).collect();
        let places = slipped_points(&values).map_or_else(Vec::new, |(_, places)| places);
        found.extend(places.into_iter().map(|place| own[place].0));
    }
    found
}

/// Whether the golfer said that a column's unit is right, whatever its values.
fn unit_is_right(ctx: &Ctx<'_>, columns: &[&Column<'_>], id: &MeasureId) -> bool {
    let own = columns.iter().filter(|c| c.measure() == Some(id)).map(|c| c.index.to_string());
    said(ctx, &format!("unit:{}", own.collect::<Vec<_>>().join(":"))) == Some(&Settled::Right)
}

/// Takes the values out that their measure cannot have, and notes each where they are questioned one by one.
pub(crate) fn hold_out(ctx: &mut Ctx<'_>, id: &MeasureId, one_by_one: bool) -> HeldOut {
    let mut out = HeldOut::default();
    let (Some(facts), Some(at)) = (measure::known(id), ctx.draft.session.measure_index(id)) else {
        return out;
    };
    let is_outside = |value: f64| !(facts.plausible.low..=facts.plausible.high).contains(&value);
    let session = &mut ctx.draft.session;
    for (shot, &line) in session.shots.iter_mut().zip(&ctx.draft.lines) {
        if shot.values.get(at).copied().flatten().is_some_and(is_outside) {
            out.take(shot, at, line);
        }
    }
    for summary in &mut session.summaries {
        let (line, build) = (summary.line.unwrap_or(0), summary.build);
        let mean = summary.values.get(id).and_then(|value| value.mean);
        if let Some(mean) = mean.filter(|mean| is_outside(*mean)) {
            summary.values.remove(id);
            out.values.push(mean);
            out.lines.push(line);
            out.builds.insert(build);
        }
    }
    for (value, line) in out.values.iter().zip(&out.lines).filter(|_| one_by_one) {
        flag(ctx, facts, *value, *line);
    }
    out
}

fn flag(ctx: &mut Ctx<'_>, facts: &Facts, value: f64, line: u32) {
    let (low, high) = (facts.plausible.low, facts.plausible.high);
    let unit = SourceUnit::canonical(facts.unit).map_or("", SourceUnit::label);
    let voice = ctx.talk.voice();
    let name = text::names::title(facts.known, voice);
    let [value, low, high] = [value, low, high].map(|value| shown(value, voice));
    let message = text::reading::implausible(voice, &name, &value, unit, &low, &high);
    ctx.talk.notice(NoticeKind::Implausible, place(line, &name), message);
}

/// How much farther than in all a ball may carry before somebody is asked: what rounding makes.
const ROUNDING: f64 = 1.0;

/// Balls that carry farther than they go.
pub(crate) fn above_total(ctx: &mut Ctx<'_>, found: &mut Vec<Doubt>) {
    let (carry, total) = (MeasureId::from(Known::Carry), MeasureId::from(Known::Total));
    let session = &ctx.draft.session;
    let (Some(at), Some(beyond)) = (session.measure_index(&carry), session.measure_index(&total)) else {
        return;
    };
    let value = |shot: &session::Shot, at: usize| shot.values.get(at).copied().flatten();
    let is_odd = |shot: &session::Shot| {
        value(shot, at).zip(value(shot, beyond)).is_some_and(|(carry, total)| carry > total + ROUNDING)
    };
    let odd: Vec<usize> = (0..session.shots.len()).filter(|&shot| is_odd(&session.shots[shot])).collect();
    if odd.is_empty() {
        return;
    }
    let key = "above_total";
    match said(ctx, key) {
        Some(Settled::LeaveOut) => {
            for shot in odd {
                for at in [at, beyond] {
                    ctx.draft.session.shots[shot].values[at] = None;
                }
            }
        }
        Some(_) => {}
        None => {
            let voice = ctx.talk.voice();
            let question = say::above_total(voice, &odd.len().to_string(), odd.len());
            let choices = vec![
                choice(Settled::LeaveOut, say::leave_cells_out(voice)),
                choice(Settled::Right, say::it_is_right(voice)),
            ];
            let builds: Set<usize> = odd.iter().map(|&shot| ctx.draft.session.shots[shot].build).collect();
            let lines = first_lines(odd.iter().filter_map(|&shot| ctx.draft.lines.get(shot).copied()));
            let asked = doubt(DoubtKind::AboveTotal, key.into(), question, choices);
            let holds = vec![carry.clone(), total];
            found.push(Doubt {
                measure: Some(carry),
                builds: builds.into_iter().collect(),
                lines,
                holds,
                ..asked
            });
        }
    }
}

//! How a doubt is put: its choices, and some shots of each build in words.

use crate::doubt::{Choice, Doubt, DoubtKind, Sample, Settled};
use crate::report::agreement::shown;
use crate::take::ctx::Ctx;
use crate::understand::column::Column;
use session::known::Known;
use session::measure::{self, MeasureId};
use session::units::SourceUnit;
use text::doubts as say;
use text::names::spoken;
use text::phrases;
use text::{Voice, capital};

/// Lines that are told of one doubt.
const MOST_LINES: usize = 20;
/// Shots of each build that are shown, measures of each, and builds.
const MOST_SHOTS: usize = 3;
const MOST_MEASURES: usize = 5;
const MOST_CLUBS: usize = 8;

/// What was said to a doubt.
pub(crate) fn said<'a>(ctx: &Ctx<'a>, key: &str) -> Option<&'a Settled> {
    ctx.hints.settled.get(key)
}

/// A doubt that holds every answer.
pub(crate) fn doubt(kind: DoubtKind, key: String, question: String, choices: Vec<Choice>) -> Doubt {
    let (builds, lines, holds, samples) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    Doubt { key, kind, measure: None, builds, lines, holds, question: capital(&question), choices, samples }
}

/// A button.
pub(crate) fn choice(says: Settled, label: String) -> Choice {
    Choice { says, label: capital(&label) }
}

/// The name of a measure, as in the middle of a sentence.
pub(crate) fn name_of(id: &MeasureId, voice: &Voice) -> String {
    id.known().map_or_else(|| id.to_string(), |known| spoken(known, voice))
}

/// The first lines, each once, in order.
pub(crate) fn first_lines(lines: impl Iterator<Item = u32>) -> Vec<u32> {
    let mut lines = arrange::distinct(lines);
    lines.truncate(MOST_LINES);
    lines
}

/// The first shots of the builds, as they were understood, each measure in its column's unit.
pub(crate) fn samples(ctx: &Ctx<'_>, columns: &[&Column<'_>]) -> Vec<Sample> {
    let session = &ctx.draft.session;
    let voice = ctx.talk.voice();
    let units: Vec<(&MeasureId, &str, f64)> = session
        .measures
        .iter()
        .take(MOST_MEASURES)
        .map(|id| {
            let unit = columns.iter().find(|c| c.measure() == Some(id)).and_then(|c| c.unit);
            let canonical = measure::known(id).map(|facts| facts.unit);
            let unit = unit.or(canonical.and_then(SourceUnit::canonical));
            let factor = unit.zip(canonical).and_then(|(unit, canonical)| unit.convert(1.0, canonical));
            (id, unit.map_or("", SourceUnit::label), factor.unwrap_or(1.0))
        })
        .collect();
    let mut samples: Vec<Sample> = Vec::new();
    for shot in &session.shots {
        if shot.build >= MOST_CLUBS {
            continue;
        }
        let at = samples.iter().position(|sample| sample.build == shot.build).unwrap_or_else(|| {
            samples.push(Sample { build: shot.build, shots: Vec::new() });
            samples.len() - 1
        });
        if samples[at].shots.len() == MOST_SHOTS {
            continue;
        }
        let parts: Vec<String> = units
            .iter()
            .zip(&shot.values)
            .filter_map(|((id, unit, factor), value)| {
                let size = size(id, (*value)? / factor, unit, voice);
                Some(say::of_a_shot(voice, &name_of(id, voice), &size))
            })
            .collect();
        samples[at].shots.push(capital(&parts.join(", ")));
    }
    arrange::sort_by_key(&mut samples, |sample| sample.build);
    samples
}

/// A value with its unit; to which side, where that is what its sign says: `4 yd left`.
fn size(id: &MeasureId, value: f64, unit: &str, voice: &Voice) -> String {
    let is_sided = id.known() == Some(Known::Offline) && value != 0.0;
    let number = shown(if is_sided { value.abs() } else { value }, voice).replace('-', "\u{2212}");
    let size = match unit {
        "" => number,
        "deg" => format!("{number}°"),
        unit => format!("{number}\u{a0}{unit}"),
    };
    match value {
        _ if !is_sided => size,
        right if right > 0.0 => format!("{size} {}", phrases::side_lr_above(voice)),
        _ => format!("{size} {}", phrases::side_lr_below(voice)),
    }
}

//! Measures claimed twice, and the measures of the golfer's own with their ids.

use crate::lexicon::heading;
use crate::lexicon::word::Word;
use crate::outcome::Role;
use crate::understand::column::{Column, unnamed};
use session::few::{Map, Set};
use session::known::Known;
use session::measure::MeasureId;

/// Two columns of one measure: the first has it, the others are kept under their own heading.
pub(crate) fn settle_repeats(columns: &mut [Column<'_>], hinted: &Set<usize>) {
    let mut taken: Set<(Option<usize>, String)> = Set::default();
    let key = |role: &Role| match role {
        Role::Measure(id) if !id.as_str().is_empty() => Some(format!("m{id}")),
        Role::Deviation(id) if !id.as_str().is_empty() => Some(format!("d{id}")),
        Role::Low(id) if !id.as_str().is_empty() => Some(format!("l{id}")),
        Role::High(id) if !id.as_str().is_empty() => Some(format!("h{id}")),
        Role::Round => Some("round".into()),
        Role::Number => Some("number".into()),
        Role::Time => Some("time".into()),
        Role::Count => Some("count".into()),
        _ => None,
    };
    // The golfer's word first, then the better heading, then the order of the columns.
    let rank = |c: &Column<'_>| {
        let plainest =
            Known::ALL.iter().any(|m| c.understood.plain == heading::words(m.facts().name).join(" "));
        (!hinted.contains(&c.index), !plainest, c.index)
    };
    let order = arrange::positions(columns.len(), &|a, b| rank(&columns[a]).cmp(&rank(&columns[b])));
    for at in order {
        let column = &mut columns[at];
        let Some(key) = key(&column.role) else { continue };
        if !taken.insert((column.group, key)) {
            column.alternatives.insert(0, column.role.clone());
            column.sure = false;
            column.role = if matches!(column.role, Role::Measure(_)) && column.profile.mostly_figures() {
                Role::Measure(unnamed())
            } else {
                Role::Ignored
            };
        }
    }
}

/// Gives the golfer's own measures their ids, and offers the trade's measure of a similar name.
pub(crate) fn name_custom(columns: &mut [Column<'_>]) {
    let mut seen: Map<(Option<usize>, String), usize> = Map::default();
    for column in columns.iter_mut() {
        let empty = |id: &MeasureId| id.as_str().is_empty();
        let (is_own, is_value) = match &column.role {
            Role::Measure(id) => (empty(id), true),
            Role::Deviation(id) | Role::Low(id) | Role::High(id) => (empty(id), false),
            _ => (false, false),
        };
        if !is_own {
            continue;
        }
        let statistic = !is_value || column.understood.statistic.is_some();
        let source = if statistic { &column.understood.plain } else { &column.heading };
        let mut id = heading::custom_id(heading_without_unit(source));
        if id.is_empty() {
            id = format!("column_{}", column.index + 1);
        }
        if is_value {
            if Known::of(&id).is_some() {
                id.push_str("_2");
            }
            let count = seen.entry((column.group, id.clone()), || 0);
            *count += 1;
            if *count > 1 {
                id = format!("{id}_{count}");
            }
        }
        let id = MeasureId::from(id);
        column.role = match column.role {
            Role::Deviation(_) => Role::Deviation(id),
            Role::Low(_) => Role::Low(id),
            Role::High(_) => Role::High(id),
            _ => Role::Measure(id),
        };
        offer_nearest(column);
    }
}

fn offer_nearest(column: &mut Column<'_>) {
    let part = match column.understood.word {
        Some(Word::Measure(id)) => Some(id),
        _ => None,
    };
    if let Some(id) = part.or_else(|| heading::nearest(&column.heading)) {
        let role = Role::Measure(id.into());
        if !column.alternatives.contains(&role) {
            column.alternatives.push(role);
        }
        column.sure = false;
    }
}

fn heading_without_unit(heading: &str) -> &str {
    match heading.find(['(', '[']) {
        Some(at) if at > 0 => &heading[..at],
        _ => heading,
    }
}

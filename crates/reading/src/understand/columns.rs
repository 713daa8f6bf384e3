//! What each column of a table holds: from its heading, its cells and what the golfer says.

use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::lexicon::word::Word;
use crate::outcome::{Role, Statistic};
use crate::understand::column::{Column, Profile, unnamed};
use crate::understand::{alike, build_column, formats, layout, own_measures};
use session::few::Set;
use session::known::Known;
use session::measure::MeasureId;

/// Gives every column its role. `averages` says that the rows are averages of builds.
pub(crate) fn assign(columns: &mut [Column<'_>], hints: &Hints, averages: bool, grid: &Grid, rows: &[usize]) {
    let hinted: Set<usize> = hints.columns.keys().copied().collect();
    let grouped = columns.iter().any(|c| c.group.is_some());
    for column in columns.iter_mut() {
        // A column headed by its build has its measure already.
        if column.role == Role::Ignored {
            column.role = by_heading(column, averages);
        }
        if grouped && layout::claims_build(column) {
            column.role = Role::Build;
        }
    }
    let named = columns.iter().any(|c| c.role == Role::Build || c.build.is_some());
    if !named && !hints.columns.values().any(|role| *role == Role::Build) {
        build_column::choose_build(columns, &hinted, averages, grid, rows);
    }
    for column in columns.iter_mut() {
        if let Some(role) = hints.columns.get(&column.index) {
            column.role = role.clone();
            column.sure = true;
        }
    }
    let are_alike = alike::any(columns);
    if are_alike {
        formats::settle_marks(columns, hints);
        alike::tell_apart(columns, &hinted, grid, rows);
    }
    own_measures::settle_repeats(columns, &hinted);
    own_measures::name_custom(columns);
    for column in columns.iter_mut() {
        formats::settle_unit(column, hints);
    }
    formats::settle_marks(columns, hints);
    if are_alike {
        alike::drop_repeats(columns, &hinted, grid, rows);
    }
}

fn by_heading(column: &Column<'_>, averages: bool) -> Role {
    let profile = &column.profile;
    match column.understood.word {
        Some(Word::Measure(id)) if column.understood.beside.is_none() || column.group.is_some() => {
            match column.understood.statistic {
                Some(statistic) if averages => in_averages(statistic, MeasureId::from(id)),
                _ if profile.filled() == 0 || profile.figures > 0 || profile.clocks == 0 => {
                    Role::Measure(id.into())
                }
                _ => Role::Ignored,
            }
        }
        Some(Word::Round)
            if !averages && profile.mostly_counts() || ends_in_digits(profile) && is_round(column) =>
        {
            Role::Round
        }
        Some(Word::Number | Word::Count) if !averages && is_number(column) => Role::Number,
        Some(Word::Count) if averages => Role::Count,
        Some(Word::Time) if profile.mostly_clocks() => Role::Time,
        Some(Word::LeftOut) => Role::LeftOut,
        Some(Word::Build(_) | Word::Remark | Word::Statistic) if !profile.mostly_figures() => Role::Ignored,
        _ if profile.mostly_figures() && !averages && is_sideways(column) => {
            Role::Measure(Known::Offline.into())
        }
        _ if profile.mostly_figures() => own_measure(column, averages),
        _ => Role::Ignored,
    }
}

/// "Desviación": a spread beside averages, and among single shots, where nothing has one, the miss to the side.
fn is_sideways(column: &Column<'_>) -> bool {
    matches!(column.heading.trim().to_lowercase().as_str(), "desviación" | "desviacion")
}

fn in_averages(statistic: Statistic, id: MeasureId) -> Role {
    match statistic {
        Statistic::Mean | Statistic::Median => Role::Measure(id),
        Statistic::Deviation => Role::Deviation(id),
        Statistic::Low => Role::Low(id),
        Statistic::High => Role::High(id),
        Statistic::Count => Role::Count,
        Statistic::Range => Role::Ignored,
    }
}

/// A numeric column that is none of the trade's measures. Its id is settled by `own_measures`.
fn own_measure(column: &Column<'_>, averages: bool) -> Role {
    match column.understood.statistic {
        Some(statistic) if averages => in_averages(statistic, unnamed()),
        _ => Role::Measure(unnamed()),
    }
}

fn is_round(column: &Column<'_>) -> bool {
    column.understood.word == Some(Word::Round)
}

/// "Round 1", "R2": every distinct cell ends in a digit.
fn ends_in_digits(profile: &Profile<'_>) -> bool {
    !profile.distinct.is_empty() && profile.distinct.iter().all(|c| c.ends_with(|c: char| c.is_ascii_digit()))
}

fn is_number(column: &Column<'_>) -> bool {
    let profile = &column.profile;
    // A count of something per group is a measure; only "shots" numbered one by one is a number.
    if column.understood.word == Some(Word::Count) {
        return profile.mostly_counts()
            && profile.counts == profile.filled()
            && matches!(column.understood.plain.as_str(), "shots" | "balls" | "hits" | "swings");
    }
    profile.mostly_counts() || ends_in_digits(profile)
}

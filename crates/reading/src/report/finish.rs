//! What was understood, put together for the golfer's eye.

use crate::cut::blocks::Sorted;
use crate::cut::grid::Grid;
use crate::cut::shape::Single;
use crate::doubt::Doubt;
use crate::lexicon::figure::Mark;
use crate::limits::MAX_LISTED;
use crate::outcome::{
    ColumnReading, Delimiter, Layout, LineIs, LineReading, ReadResult, Reading, Role, RowCounts, SummaryGap,
    UnitSource,
};
use crate::remarks::{NoticeKind, ProblemKind};
use crate::take::ctx::Ctx;
use crate::talk::{Talk, place};
use crate::trim::{named, shortened};
use crate::understand::column::Column;
use session::measure::{self, MeasureId};
use session::units::SourceUnit;
use text::names::spoken;
use text::reading as say;

/// What the report shows beside columns and rows.
pub(crate) struct Shown {
    pub(crate) delimiter: Delimiter,
    pub(crate) layout: Layout,
    pub(crate) single: Option<Single>,
    pub(crate) gaps: Vec<SummaryGap>,
    /// Rows that do what columns do elsewhere.
    pub(crate) measures: Vec<ColumnReading>,
    /// What only the golfer can say.
    pub(crate) doubts: Vec<Doubt>,
    /// Measures that make sense only in another unit.
    pub(crate) questions: Vec<(MeasureId, SourceUnit)>,
}

/// Puts the result together.
pub(crate) fn finish(mut ctx: Ctx<'_>, sorted: &Sorted, columns: &[&Column<'_>], shown: Shown) -> ReadResult {
    if let Some(single) = shown.single.as_ref().filter(|s| s.guessed) {
        let name = single
            .measure
            .known()
            .map_or_else(|| say::own_measure(ctx.talk.voice()), |known| spoken(known, ctx.talk.voice()));
        let message = say::measure_guessed(ctx.talk.voice(), &name);
        ctx.talk.notice(NoticeKind::MeasureGuessed, place(0, ""), message);
    }
    note_columns(columns, &mut ctx.talk);
    note_counts(&mut ctx);
    let grid = ctx.grid;
    let (rows, lines) = count_rows(&ctx, sorted);
    if ctx.draft.drop_sparse() {
        let message = say::too_sparse(ctx.talk.voice());
        ctx.talk.notice(NoticeKind::ColumnTooSparse, place(0, ""), message);
    }
    let session = std::mem::take(&mut ctx.draft).into_session();
    if session.shots.is_empty() && session.summaries.is_empty() && !ctx.talk.has_problems() {
        ctx.talk.problem(ProblemKind::NoNumbers, place(0, ""), "");
    }
    let commas =
        columns.iter().filter(|c| c.profile.votes.any() && c.measure().is_some() && c.mark == Mark::Comma);
    let points =
        columns.iter().filter(|c| c.profile.votes.any() && c.measure().is_some() && c.mark == Mark::Point);
    let decimal_mark = if commas.count() > points.count() { "," } else { "." };
    let questions = shown.questions;
    let reading = Reading {
        delimiter: shown.delimiter,
        decimal_mark: decimal_mark.to_owned(),
        layout: shown.layout,
        columns: columns.iter().map(|c| column_reading(grid, c, &questions)).chain(shown.measures).collect(),
        rows,
        lines,
        single_measure: shown.single.map(|s| s.measure),
    };
    let (problems, notices) = ctx.talk.finish();
    ReadResult {
        session,
        problems,
        notices,
        reading,
        gaps: shown.gaps,
        doubts: shown.doubts,
        form: None,
        question: None,
    }
}

fn column_reading(grid: &Grid, column: &Column<'_>, questions: &[(MeasureId, SourceUnit)]) -> ColumnReading {
    let known = column.measure().and_then(measure::known);
    let units = known.map(|m| SourceUnit::choices(m.unit).map(|u| u.label().to_owned()).collect());
    let asked = questions.iter().find(|(id, _)| column.measure() == Some(id)).map(|(_, unit)| *unit);
    let question = asked.filter(|unit| column.unit != Some(*unit));
    let mut alternatives = column.alternatives.clone();
    if column.role == Role::Ignored && column.profile.filled() > 0 {
        alternatives.push(Role::Build);
    }
    ColumnReading {
        index: column.index,
        heading: named(grid.as_written(&column.heading)),
        role: column.role.clone(),
        unit: column.unit_label.clone(),
        unit_source: column.unit_source,
        decimal_mark: if column.profile.votes.any() {
            column.mark.as_char().to_string()
        } else {
            String::new()
        },
        build: column.build.clone(),
        sure: column.sure && question.is_none(),
        alternatives,
        units: units.unwrap_or_default(),
        unit_question: question.map(|u| u.label().to_owned()),
    }
}

fn note_columns(columns: &[&Column<'_>], talk: &mut Talk) {
    let mut starred = 0;
    for column in columns {
        let here = || place(0, &column.heading);
        let name = shortened(&column.heading);
        starred += column.profile.starred;
        if column.role == Role::Build && !column.sure {
            let message = say::build_column_guessed(talk.voice(), &name);
            talk.notice(NoticeKind::BuildColumnGuessed, here(), message);
        }
        if let Role::Measure(id) = &column.role {
            let offered = column.alternatives.iter().find_map(|role| match role {
                Role::Measure(other) if other != id => other.known(),
                _ => None,
            });
            if let Some(offered) = offered {
                let taken = columns.iter().any(|c| c.role == Role::Measure(offered.into()));
                let (kind, message) = if taken {
                    (
                        NoticeKind::ColumnRepeated,
                        say::column_repeated(talk.voice(), &spoken(offered, talk.voice()), &name),
                    )
                } else {
                    (
                        NoticeKind::ColumnUnsure,
                        say::column_unsure(talk.voice(), &name, &spoken(offered, talk.voice())),
                    )
                };
                talk.notice(kind, here(), message);
            }
        }
    }
    note_units(columns, talk);
    if starred > 0 {
        let message = say::marked_values(talk.voice(), &starred.to_string());
        talk.notice(NoticeKind::MarkedValues, place(0, ""), message);
    }
    if !columns.is_empty() && columns.iter().all(|c| c.heading.is_empty()) {
        talk.notice(NoticeKind::NoHeadings, place(0, ""), say::no_headings(talk.voice()));
    }
}

/// One notice for all columns that name no unit.
fn note_units(columns: &[&Column<'_>], talk: &mut Talk) {
    let mut listed: Vec<String> = Vec::new();
    for column in columns.iter().filter(|c| c.unit_source == UnitSource::Assumed) {
        let entry = say::heading_in_unit(talk.voice(), &shortened(&column.heading), &column.unit_label);
        if !listed.contains(&entry) {
            listed.push(entry);
        }
    }
    if !listed.is_empty() {
        let message = say::unit_assumed(talk.voice(), &listed.join(", "));
        talk.notice(NoticeKind::UnitAssumed, place(0, ""), message);
    }
}

fn note_counts(ctx: &mut Ctx<'_>) {
    if ctx.build_assumed {
        let message = say::build_assumed(ctx.talk.voice(), &say::first_build(ctx.talk.voice()));
        ctx.talk.notice(NoticeKind::BuildAssumed, place(0, ""), message);
    }
    if ctx.too_many_summaries {
        ctx.talk.notice(
            NoticeKind::TooManySummaries,
            place(0, ""),
            say::too_many_summaries(ctx.talk.voice()),
        );
    }
    if ctx.letters_read > 0 {
        let message = say::letters_read(ctx.talk.voice(), &ctx.letters_read.to_string());
        ctx.talk.notice(NoticeKind::LettersRead, place(0, ""), message);
    }
}

/// Counts every row once, and lists the first ones that are no shots.
fn count_rows(ctx: &Ctx<'_>, sorted: &Sorted) -> (RowCounts, Vec<LineReading>) {
    let mut all: Vec<(usize, LineIs)> = sorted.others.iter().chain(&ctx.outcomes).copied().collect();
    for (row, is) in &mut all {
        // A title that named no shot's build is only text; outcomes of receipts keep theirs.
        if *is == LineIs::Build && !ctx.titles_used.contains(row) {
            *is = LineIs::Text;
        }
    }
    arrange::sort_by_key(&mut all, |(row, _)| *row);
    let mut rows = RowCounts::default();
    let mut lines = Vec::new();
    for (row, is) in all {
        match is {
            LineIs::Shot => rows.shots += 1,
            LineIs::Summary => rows.summaries += 1,
            LineIs::Problem => rows.problems += 1,
            LineIs::Headings | LineIs::Units | LineIs::Build | LineIs::Text => rows.headings += 1,
        }
        if is != LineIs::Shot && lines.len() < MAX_LISTED {
            let text: Vec<&str> = ctx.grid.cells(row).filter(|c| !c.is_empty()).take(6).collect();
            lines.push(LineReading { line: ctx.grid.line(row), is, text: shortened(&text.join(" ")) });
        }
    }
    (rows, lines)
}

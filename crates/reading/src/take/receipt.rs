//! Averages with the measures one below the other, as on a receipt or a screen, and builds across.
//!
//! Here a row does what a column does elsewhere: its position among the measures is the key for
//! what the golfer says of its role and unit.

use crate::cut::blocks::{is_name_row, title_name};
use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::lexicon::figure::Mark;
use crate::lexicon::heading::{Heading, custom_id, understand, words};
use crate::lexicon::marks::MarkVotes;
use crate::lexicon::number::{Cell, is_missing, scan};
use crate::lexicon::pair::pair;
use crate::lexicon::vocabulary::{lists, statistic};
use crate::lexicon::word::Word;
use crate::outcome::{ColumnReading, LineIs, Role, Statistic, UnitSource};
use crate::remarks::ProblemKind;
use crate::take::averages::speak_of_averages;
use crate::take::cell::whole_number;
use crate::take::ctx::Ctx;
use crate::take::summary::shots_meant;
use crate::talk::place;
use session::few::Map;
use session::known::Known;
use session::measure::{self, MeasureId};
use session::units::SourceUnit;
use session::{CustomMeasure, Summary, SummaryOf, SummaryValue};

/// What stands over one column of values.
#[derive(Debug, Clone)]
struct Over {
    column: usize,
    build: Option<String>,
    figure: Option<Statistic>,
}

/// What stands over the rows read now.
#[derive(Debug, Default)]
struct Above {
    columns: Vec<Over>,
    title: Option<(usize, String)>,
    around: SummaryOf,
}

struct Receipt<'c, 'g> {
    ctx: &'c mut Ctx<'g>,
    mark: Mark,
    above: Above,
    /// One summary for each build in each stretch of rows.
    open: Map<usize, Summary>,
    measures: Vec<ColumnReading>,
}

/// Reads the whole grid; gives back what each row of a measure was taken for.
pub(crate) fn read(ctx: &mut Ctx<'_>) -> Vec<ColumnReading> {
    let grid = ctx.grid;
    let mark = mark_of(grid, ctx.hints);
    let mut receipt =
        Receipt { ctx, mark, above: Above::default(), open: Map::default(), measures: Vec::new() };
    for row in 0..grid.len() {
        let outcome = receipt.take(row);
        receipt.ctx.outcomes.push((row, outcome));
    }
    receipt.flush();
    receipt.measures
}

fn mark_of(grid: &Grid, hints: &Hints) -> Mark {
    let mut votes = MarkVotes::default();
    for cell in (0..grid.len()).flat_map(|row| grid.cells(row)) {
        let (one, other) = pair(cell).unwrap_or((cell, ""));
        for text in [one, other] {
            if let Cell::Figure(figure) = scan(text) {
                votes.add(figure.mark_sign());
            }
        }
    }
    let said = hints.decimal_mark.as_deref().and_then(Mark::from_text);
    said.or_else(|| votes.sure()).unwrap_or(Mark::Point)
}

fn is_value(text: &str) -> bool {
    matches!(scan(text), Cell::Figure(_)) || pair(text).is_some()
}

impl Receipt<'_, '_> {
    fn take(&mut self, row: usize) -> LineIs {
        let grid = self.ctx.grid;
        let texts: Vec<&str> = grid.cells(row).filter(|c| !c.is_empty()).collect();
        if texts.iter().skip(1).any(|text| is_value(text)) {
            return self.take_measure(row);
        }
        let row_words: Vec<String> = texts.iter().flat_map(|t| words(t)).collect();
        let meant = shots_meant(&row_words);
        if texts.len() > 1 || grid.cell(row, 0).is_empty() {
            self.flush();
            self.take_columns(row);
            return LineIs::Headings;
        }
        if speak_of_averages(&row_words) || meant != SummaryOf::All {
            self.above.around = meant;
            return LineIs::Text;
        }
        if is_name_row(grid, row) && row + 1 < grid.len() {
            self.flush();
            self.above.title = Some((row, title_name(grid, row)));
            self.above.columns.clear();
            return LineIs::Build;
        }
        LineIs::Text
    }

    /// A row over the values: builds, figures, or both.
    fn take_columns(&mut self, row: usize) {
        let grid = self.ctx.grid;
        let mut columns: Vec<Over> = (0..grid.width(row))
            .filter(|&at| !grid.cell(row, at).is_empty())
            .map(|column| over(column, grid.cell(row, column)))
            .collect();
        // "Own driver   Average   Deviation": the first cell names the build of the figures.
        let figures_only = columns.len() > 1 && columns[1..].iter().all(|c| c.build.is_none());
        if figures_only && let Some(name) = columns[0].build.take() {
            let is_label =
                lists("measure metric parameter data value stat measures figure", &name.to_ascii_lowercase());
            if !is_label {
                self.ctx.titles_used.insert(row);
                self.above.title = Some((row, name));
            }
            columns.remove(0);
        }
        self.above.columns = columns;
    }

    fn take_measure(&mut self, row: usize) -> LineIs {
        let grid = self.ctx.grid;
        let filled: Vec<(usize, &str)> =
            (0..grid.width(row)).map(|at| (at, grid.cell(row, at))).filter(|(_, c)| !c.is_empty()).collect();
        let Some(&(first, label)) = filled.first() else { return LineIs::Text };
        let unit_cell = filled.iter().skip(1).find_map(|(_, c)| SourceUnit::from_text(c));
        let values: Vec<(usize, &str)> =
            filled.into_iter().filter(|(at, c)| *at > first && SourceUnit::from_text(c).is_none()).collect();
        let (role, unit, figure) = self.understand(label, unit_cell, &values);
        let mut any = false;
        for (nth, &(at, text)) in values.iter().enumerate() {
            any |= self.take_value(row, label, (&role, unit, figure), (nth, at, values.len()), text);
        }
        match role {
            Role::Ignored => LineIs::Text,
            _ if any => LineIs::Summary,
            _ => LineIs::Problem,
        }
    }

    /// Role, unit and figure of a row, and its entry among the measures shown.
    fn understand(
        &mut self,
        label: &str,
        unit_cell: Option<SourceUnit>,
        values: &[(usize, &str)],
    ) -> (Role, Option<SourceUnit>, Option<Statistic>) {
        let heading = understand(label);
        let known = self.measures.iter().position(|m| m.heading == label);
        let index = known.unwrap_or(self.measures.len());
        let guessed = self.role_of(&heading, label);
        let role = self.ctx.hints.columns.get(&index).cloned().unwrap_or(guessed);
        let behind =
            values.iter().find_map(|(_, text)| match scan(pair(text).map_or(text, |(mean, _)| mean)) {
                Cell::Figure(figure) => figure.unit,
                _ => None,
            });
        let canonical = match &role {
            Role::Measure(id) => measure::known(id).map(|m| m.unit),
            _ => None,
        };
        let told = self.ctx.hints.units.get(&index).and_then(|text| SourceUnit::from_text(text));
        let found = [
            (told, UnitSource::Hint),
            (heading.unit, UnitSource::Heading),
            (unit_cell.or(behind), UnitSource::Values),
            (canonical.and_then(SourceUnit::canonical), UnitSource::Assumed),
        ];
        let fits = |unit: SourceUnit| canonical.is_none_or(|c| unit.convert(1.0, c).is_some());
        let (unit, unit_source) = found
            .into_iter()
            .find_map(|(unit, source)| Some((unit.filter(|u| fits(*u))?, source)))
            .map_or((None, UnitSource::None), |(unit, source)| (Some(unit), source));
        if known.is_none() {
            let units = canonical.map(|c| SourceUnit::choices(c).map(|u| u.label().to_owned()).collect());
            self.measures.push(ColumnReading {
                index,
                heading: label.to_owned(),
                role: role.clone(),
                unit: unit.map_or(String::new(), |u| u.label().to_owned()),
                unit_source,
                decimal_mark: self.mark.as_char().to_string(),
                build: None,
                sure: true,
                alternatives: Vec::new(),
                units: units.unwrap_or_default(),
                unit_question: None,
            });
        }
        (role, unit, heading.statistic)
    }

    /// The measure of a row: the trade's, or one of the golfer's own.
    fn role_of(&mut self, heading: &Heading, label: &str) -> Role {
        match heading.word {
            Some(Word::Measure(id)) if heading.beside.is_none() => Role::Measure(id.into()),
            Some(Word::Count) => Role::Count,
            _ => {
                let mut id = custom_id(label);
                if id.is_empty() || Known::of(&id).is_some() {
                    id.push_str("_2");
                }
                Role::Measure(id.into())
            }
        }
    }

    /// Takes one value; `false` when it is none.
    fn take_value(
        &mut self,
        row: usize,
        label: &str,
        (role, unit, figure): (&Role, Option<SourceUnit>, Option<Statistic>),
        (nth, at, values): (usize, usize, usize),
        text: &str,
    ) -> bool {
        let line = self.ctx.grid.line(row);
        let over = over_value(&self.above.columns, values, nth, at).cloned();
        let id = match role {
            Role::Measure(id) => Some(id.clone()),
            Role::Count => None,
            _ => return false,
        };
        let (mean, sd) = match pair(text) {
            Some((mean, sd)) => (self.number(mean, unit, id.as_ref()), self.number(sd, unit, id.as_ref())),
            None => (self.number(text, unit, id.as_ref()), None),
        };
        let Some(mean) = mean else {
            if !is_missing(text) {
                self.ctx.talk.problem(ProblemKind::NotANumber, place(line, label), text);
            }
            return false;
        };
        let summary = self.summary(line, over.as_ref().and_then(|o| o.build.clone()));
        let figure = figure.or(over.and_then(|o| o.figure)).unwrap_or(Statistic::Mean);
        let Some(id) = id.filter(|_| figure != Statistic::Count) else {
            summary.n = whole_number(text);
            return true;
        };
        let entry: &mut SummaryValue = summary.values.entry(id.clone(), SummaryValue::default);
        match figure {
            Statistic::Deviation => entry.sd = Some(mean),
            Statistic::Low => entry.low = Some(mean),
            Statistic::High => entry.high = Some(mean),
            _ => entry.mean = Some(mean),
        }
        entry.sd = sd.or(entry.sd);
        self.note_custom(id, label);
        true
    }

    /// The open summary of a build.
    fn summary(&mut self, line: u32, over: Option<String>) -> &mut Summary {
        let title = self.above.title.as_ref().filter(|_| over.is_none());
        self.ctx.titles_used.extend(title.map(|(row, _)| *row));
        let name =
            over.or_else(|| title.map(|(_, name)| name.clone())).or_else(|| self.ctx.hints.build.clone());
        self.ctx.build_assumed |= name.is_none();
        let name = name.unwrap_or_else(|| text::reading::first_build(self.ctx.talk.voice()));
        let build = self.ctx.draft.build(&name, self.ctx.hints);
        let of = self.above.around;
        self.open.entry(build, || Summary { build, n: None, of, values: Map::default(), line: Some(line) })
    }

    fn note_custom(&mut self, id: MeasureId, label: &str) {
        let custom = &mut self.ctx.draft.session.custom;
        if measure::known(&id).is_none() && !custom.iter().any(|c| c.id == id) {
            custom.push(CustomMeasure { id, name: label.to_owned(), unit: String::new() });
        }
    }

    fn number(&self, text: &str, unit: Option<SourceUnit>, id: Option<&MeasureId>) -> Option<f64> {
        let Cell::Figure(figure) = scan(text) else { return None };
        let value = figure.value(self.mark).or_else(|| figure.value(self.mark.other()))?.value;
        let Some(known) = id.and_then(measure::known) else { return Some(value) };
        match figure.unit.or(unit) {
            Some(unit) => unit.convert(value, known.unit).filter(|v| v.is_finite()),
            None => Some(value),
        }
    }

    /// Moves the summaries that are complete into the session.
    fn flush(&mut self) {
        let session = &mut self.ctx.draft.session;
        for mut summary in std::mem::take(&mut self.open).into_values() {
            summary.values.retain(|_, value| *value != SummaryValue::default());
            for id in summary.values.keys() {
                if !session.measures.contains(id) {
                    session.measures.push(id.clone());
                }
            }
            if !summary.values.is_empty() || summary.n.is_some() {
                session.summaries.push(summary);
            }
        }
    }
}

fn over(column: usize, cell: &str) -> Over {
    if let Some(figure) = statistic(&words(cell).concat()) {
        return Over { column, build: None, figure: Some(figure) };
    }
    let figure = understand(cell).statistic;
    let kept: Vec<&str> = cell
        .split_whitespace()
        .filter(|w| figure.is_none() || statistic(&words(w).concat()).is_none())
        .collect();
    Over { column, build: Some(kept.join(" ")), figure }
}

/// The heading over a value: one for each value, perhaps with one over the labels, else by position.
fn over_value(columns: &[Over], values: usize, nth: usize, at: usize) -> Option<&Over> {
    if columns.len() == values {
        columns.get(nth)
    } else if columns.len() == values + 1 {
        columns.get(nth + 1)
    } else {
        columns.iter().find(|over| over.column == at)
    }
}

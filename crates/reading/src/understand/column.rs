//! A column of a table: what its cells look like, and what was understood of it.

use crate::cut::blocks::Block;
use crate::cut::grid::Grid;
use crate::lexicon::figure::Mark;
use crate::lexicon::heading::Heading;
use crate::lexicon::marks::MarkVotes;
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::{clock, heading};
use crate::limits::MAX_COLUMNS;
use crate::outcome::{Role, UnitSource};
use session::few::Set;
use session::measure::MeasureId;
use session::units::SourceUnit;

/// Distinct cells remembered of a column.
pub(crate) const MOST_DISTINCT: usize = 64;

/// What the cells of a column look like.
#[derive(Debug, Default)]
pub(crate) struct Profile<'a> {
    pub(crate) figures: usize,
    pub(crate) counts: usize,
    pub(crate) texts: usize,
    pub(crate) missing: usize,
    pub(crate) clocks: usize,
    pub(crate) starred: usize,
    pub(crate) votes: MarkVotes,
    pub(crate) units: Vec<(SourceUnit, usize)>,
    pub(crate) distinct: Set<&'a str>,
    pub(crate) many: bool,
}

/// A column with everything needed to read its cells.
#[derive(Debug)]
pub(crate) struct Column<'a> {
    pub(crate) index: usize,
    pub(crate) heading: String,
    pub(crate) understood: Heading,
    pub(crate) profile: Profile<'a>,
    pub(crate) role: Role,
    pub(crate) unit: Option<SourceUnit>,
    pub(crate) unit_label: String,
    pub(crate) unit_source: UnitSource,
    pub(crate) mark: Mark,
    /// The set of columns it belongs to, where builds have columns of their own.
    pub(crate) group: Option<usize>,
    pub(crate) build: Option<String>,
    /// The heading names the build, not the measure.
    pub(crate) heading_is_build: bool,
    pub(crate) sure: bool,
    pub(crate) alternatives: Vec<Role>,
}

impl Column<'_> {
    /// The measure whose value, average, deviation or extreme this column holds.
    pub(crate) fn measure(&self) -> Option<&MeasureId> {
        match &self.role {
            Role::Measure(id) | Role::Deviation(id) | Role::Low(id) | Role::High(id) => Some(id),
            _ => None,
        }
    }
}

/// Looks at all cells of the blocks that share one row of headings.
pub(crate) fn profile<'a>(grid: &'a Grid, blocks: &[&Block]) -> Vec<Column<'a>> {
    let rows = || blocks.iter().flat_map(|block| block.body.iter().copied());
    let headings = blocks.first().and_then(|block| block.headings);
    let widest = rows().map(|row| grid.width(row)).max().unwrap_or(0);
    let width = headings.map_or(widest, |row| grid.width(row)).min(MAX_COLUMNS);
    let mut columns: Vec<Column<'a>> = (0..width)
        .map(|index| {
            let heading = headings.map_or("", |row| grid.cell(row, index)).to_owned();
            Column {
                index,
                understood: heading::understand(&heading),
                heading,
                profile: Profile::default(),
                role: Role::Ignored,
                unit: None,
                unit_label: String::new(),
                unit_source: UnitSource::None,
                mark: Mark::Point,
                group: None,
                build: None,
                heading_is_build: false,
                sure: true,
                alternatives: Vec::new(),
            }
        })
        .collect();
    for row in rows() {
        for column in &mut columns {
            column.profile.add(grid.cell(row, column.index));
        }
    }
    let units = blocks.first().and_then(|block| block.units);
    for column in &mut columns {
        if let Some(text) = units.map(|row| grid.cell(row, column.index)).filter(|t| !t.is_empty()) {
            let text = text.trim_matches(['(', ')', '[', ']']);
            column.unit_source = UnitSource::UnitsRow;
            column.unit = SourceUnit::from_text(text);
            column.unit_label = text.to_owned();
        }
    }
    columns
}

impl<'a> Profile<'a> {
    fn add(&mut self, cell: &'a str) {
        match scan(cell) {
            Cell::Missing => self.missing += 1,
            Cell::Figure(figure) => {
                self.figures += 1;
                self.counts += usize::from(figure.is_count());
                self.starred += usize::from(figure.starred);
                self.votes.add(figure.mark_sign());
                if let Some(unit) = figure.unit {
                    match self.units.iter_mut().find(|(known, _)| *known == unit) {
                        Some((_, count)) => *count += 1,
                        None => self.units.push((unit, 1)),
                    }
                }
                self.remember(cell);
            }
            Cell::Text => {
                self.texts += 1;
                self.clocks += usize::from(clock::parse(cell).is_some());
                self.remember(cell);
            }
        }
    }

    fn remember(&mut self, cell: &'a str) {
        if self.distinct.len() < MOST_DISTINCT {
            self.distinct.insert(cell);
        } else if !self.many {
            self.many = !self.distinct.contains(cell);
        }
    }

    pub(crate) fn filled(&self) -> usize {
        self.figures + self.texts
    }

    pub(crate) fn mostly_figures(&self) -> bool {
        self.figures > 0 && self.figures >= self.texts
    }

    pub(crate) fn mostly_counts(&self) -> bool {
        self.counts > 0 && self.counts * 2 > self.filled()
    }

    pub(crate) fn mostly_clocks(&self) -> bool {
        self.clocks > 0 && self.clocks * 2 > self.filled()
    }
}

/// The id of a measure of the golfer's own until it is given one.
pub(crate) fn unnamed() -> MeasureId {
    MeasureId::Own(String::new())
}

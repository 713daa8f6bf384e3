//! What each column of a table holds: from its heading, its cells and what the golfer says.

use crate::cut::blocks::Block;
use crate::understand::build_column;
use crate::lexicon::clock;
use crate::understand::formats;
use crate::cut::grid::Grid;
use crate::lexicon::heading::{self, Heading};
use crate::hints::Hints;
use crate::understand::layout;
use crate::limits::MAX_COLUMNS;
use crate::lexicon::number::{Cell, Mark, MarkVotes, scan};
use crate::outcome::{Role, Statistic, UnitSource};
use crate::understand::own_measures;
use crate::lexicon::vocabulary::Word;
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
    own_measures::settle_repeats(columns, &hinted);
    own_measures::name_custom(columns);
    for column in columns.iter_mut() {
        formats::settle_unit(column, hints);
    }
    formats::settle_marks(columns, hints);
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
        _ if profile.mostly_figures() => own_measure(column, averages),
        _ => Role::Ignored,
    }
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

/// A numeric column that is none of the trade's measures. Its id is settled by [`own_measures`].
fn own_measure(column: &Column<'_>, averages: bool) -> Role {
    match column.understood.statistic {
        Some(statistic) if averages => in_averages(statistic, unnamed()),
        _ => Role::Measure(unnamed()),
    }
}

/// The id of a measure of the golfer's own until [`own_measures`] gives it one.
pub(crate) fn unnamed() -> MeasureId {
    MeasureId::Own(String::new())
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

//! Which rows are headings, titles, units and text, and which rows belong together under one heading.

use crate::cut::grid::Grid;
use crate::hints::Hints;
use crate::lexicon::heading::{understand, words};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::vocabulary::{lists, statistic};
use crate::lexicon::word::Word;
use crate::outcome::LineIs;
use crate::trim::trim;
use session::units::SourceUnit;

/// Rows that are looked through for the first headings.
const MOST_ABOVE: usize = 30;

/// What programs print around a table, in several languages.
const PRINTED: &str = "page seite sida pagina página exported export printed created generated file version \
     datum handicap";

/// Rows under one heading, or under none.
#[derive(Debug, Default, Clone)]
pub(crate) struct Block {
    /// The row that names the block's build, perhaps.
    pub(crate) title: Option<usize>,
    /// A row above that names the measure of the whole block.
    pub(crate) caption: Option<usize>,
    /// A row over the headings that names groups of columns.
    pub(crate) over: Option<usize>,
    /// The row of column headings.
    pub(crate) headings: Option<usize>,
    /// The row of units.
    pub(crate) units: Option<usize>,
    /// Rows that may be shots or summaries.
    pub(crate) body: Vec<usize>,
}

/// All rows of a grid, each in exactly one place.
#[derive(Debug, Default)]
pub(crate) struct Sorted {
    pub(crate) blocks: Vec<Block>,
    /// Rows that are no body: what each is.
    pub(crate) others: Vec<(usize, LineIs)>,
}

/// What a row looks like by itself.
#[derive(Debug, Clone, Copy, Default)]
struct Look {
    filled: usize,
    figures: usize,
    /// Cells with the trade's word for a measure, a number, a round, a count.
    known: usize,
    /// Cells that name builds.
    builds: usize,
    units: usize,
}

fn look(grid: &Grid, row: usize) -> Look {
    let mut look = Look::default();
    for cell in grid.cells(row).filter(|c| !c.is_empty()) {
        look.filled += 1;
        look.figures += usize::from(matches!(scan(cell), Cell::Figure(_)));
    }
    // Words cost far more than numbers, and no row of headings has this many numbers.
    if look.figures * 4 > look.filled {
        return look;
    }
    for cell in grid.cells(row).filter(|c| matches!(scan(c), Cell::Text)) {
        look.units += usize::from(is_unit(cell));
        match understand(cell).word {
            Some(Word::Build(_)) => look.builds += 1,
            Some(Word::Statistic | Word::Remark) | None => {}
            Some(_) => look.known += 1,
        }
    }
    look
}

fn is_unit(cell: &str) -> bool {
    SourceUnit::from_text(cell.trim_matches(['(', ')', '[', ']'])).is_some()
}

/// Lines made of dashes, equal signs and the like.
fn is_rule(grid: &Grid, row: usize) -> bool {
    let mut any = false;
    for c in grid.cells(row).flat_map(str::chars) {
        if !matches!(c, '-' | '=' | '+' | '_' | '|' | ':' | '*' | '─' | '━' | '═' | '┼' | ' ') {
            return false;
        }
        any = true;
    }
    // A row of dashes may also be a row of missing values: it is one cell or its dashes come in runs.
    any && grid.cells(row).any(|c| c.chars().count() >= 3)
}

fn same_cells(grid: &Grid, one: usize, other: usize) -> bool {
    let width = grid.width(one).max(grid.width(other));
    (0..width).all(|column| grid.cell(one, column).eq_ignore_ascii_case(grid.cell(other, column)))
}

/// Sorts the rows.
pub(crate) fn sort(grid: &Grid, hints: &Hints) -> Sorted {
    let first_headings = (0..grid.len().min(MOST_ABOVE)).find(|&row| {
        let here = look(grid, row);
        here.figures == 0 && here.known + here.builds > 1 && here.known > 0
    });
    let sorted = Sorted::default();
    let mut walk = Walk { grid, sorted, pending: Vec::new(), text_before: None, first_headings };
    for row in 0..grid.len() {
        let kind = hints.lines.get(&grid.line(row)).copied().unwrap_or_else(|| walk.guess(row));
        walk.take(row, kind);
    }
    walk.finish()
}

struct Walk<'a> {
    grid: &'a Grid,
    sorted: Sorted,
    /// Titles that wait for the rows they stand over.
    pending: Vec<usize>,
    /// A row of several texts just above, which may name groups of columns.
    text_before: Option<usize>,
    /// The first row that can be nothing but headings, near the top.
    first_headings: Option<usize>,
}

impl Walk<'_> {
    fn headings(&self) -> Option<usize> {
        self.sorted.blocks.last().and_then(|block| block.headings)
    }

    fn guess(&self, row: usize) -> LineIs {
        let grid = self.grid;
        if is_rule(grid, row) {
            return LineIs::Text;
        }
        if self.is_beside_the_table(row) {
            return LineIs::Text;
        }
        let here = look(grid, row);
        let clear_headings = here.known >= 2 && here.figures * 3 <= here.known;
        if clear_headings {
            return LineIs::Headings;
        }
        if here.figures > 0 {
            return LineIs::Shot;
        }
        if let Some(headings) = self.headings() {
            if same_cells(grid, headings, row) {
                return LineIs::Headings;
            }
            let block_is_empty =
                self.sorted.blocks.last().is_some_and(|b| b.body.is_empty() && b.units.is_none());
            if block_is_empty && here.units > 0 && here.units * 2 >= here.filled {
                return LineIs::Units;
            }
        }
        if self.headings().is_some() && is_summary(grid, row) {
            return LineIs::Shot;
        }
        if here.filled == 1 && here.known == 1 && names_measure(grid, row) && self.is_over_one_column(row) {
            return LineIs::Headings;
        }
        if here.filled == 1 {
            return if self.repeats_a_neighbor(row) { LineIs::Shot } else { LineIs::Build };
        }
        if here.filled == 2
            && here.builds > 0
            && names_a_build(grid, row).is_some()
            && !self.numbers_follow(row)
        {
            return LineIs::Build;
        }
        if here.known > 0 && here.known + here.builds > 1
            || self.numbers_follow(row) && self.headings().is_none()
        {
            return LineIs::Headings;
        }
        if self.headings().is_some() && self.has_width_of_headings(row) { LineIs::Shot } else { LineIs::Text }
    }

    /// "Shots;16", "Page;1;of;1", "Date;12.05.2031": keys with their values, over the table or below it.
    fn is_beside_the_table(&self, row: usize) -> bool {
        let grid = self.grid;
        let Some(headings) = self.first_headings.filter(|&headings| headings != row) else { return false };
        // Far from both ends there are shots, by the ten thousand.
        if row > headings && row + MOST_ABOVE < grid.len() {
            return false;
        }
        let key = grid.cell(row, 0).trim_end_matches(':');
        let filled = grid.filled(row);
        if !(2..=4).contains(&filled) || key.is_empty() || !matches!(scan(key), Cell::Text) {
            return false;
        }
        let is_key = || {
            let word = words(key).concat();
            lists(PRINTED, &word)
                || matches!(understand(key).word, Some(Word::Remark | Word::Time | Word::Count))
        };
        let differs = filled != grid.filled(headings) || grid.width(row) != grid.width(headings);
        if row > headings {
            return differs && lists(PRINTED, &words(key).concat());
        }
        let has_value = grid.cells(row).skip(1).any(|c| matches!(scan(c), Cell::Figure(_)));
        let is_label = !matches!(understand(key).word, Some(Word::Build(_) | Word::Measure(_)));
        is_key() || has_value && is_label && filled == 2
    }

    /// Whether the row below holds one number and nothing else, in the column of this row's only cell.
    fn is_over_one_column(&self, row: usize) -> bool {
        let column_of = |row: usize| (0..self.grid.width(row)).find(|&c| !self.grid.cell(row, c).is_empty());
        let below = row + 1;
        below < self.grid.len()
            && self.grid.filled(below) == 1
            && column_of(below) == column_of(row)
            && matches!(self.grid.only_cell(below).map(scan), Some(Cell::Figure(_)))
    }

    /// Whether the next row, or the one behind a row of units, has numbers under this row's cells.
    fn numbers_follow(&self, row: usize) -> bool {
        let under = |below: usize| {
            (0..self.grid.width(below)).any(|column| {
                matches!(scan(self.grid.cell(below, column)), Cell::Figure(_))
                    && !self.grid.cell(row, column).is_empty()
            })
        };
        if row + 1 >= self.grid.len() {
            return false;
        }
        let next = look(self.grid, row + 1);
        let skips =
            next.figures == 0 && (is_rule(self.grid, row + 1) || next.units * 2 >= next.filled.max(1));
        under(row + 1) || (skips && row + 2 < self.grid.len() && under(row + 2))
    }

    /// Whether the only cell of a row says the same as the cell above or below it: a shot without numbers.
    fn repeats_a_neighbor(&self, row: usize) -> bool {
        let Some(column) = (0..self.grid.width(row)).find(|&c| !self.grid.cell(row, c).is_empty()) else {
            return false;
        };
        let cell = self.grid.cell(row, column);
        let same = |other: usize| self.grid.filled(other) > 1 && self.grid.cell(other, column) == cell;
        (row > 0 && same(row - 1)) || (row + 1 < self.grid.len() && same(row + 1))
    }

    fn has_width_of_headings(&self, row: usize) -> bool {
        self.headings().is_some_and(|headings| self.grid.width(row) == self.grid.width(headings))
    }

    fn take(&mut self, row: usize, kind: LineIs) {
        let text_before = self.text_before.take();
        match kind {
            LineIs::Headings => self.begin_block(row, text_before),
            LineIs::Units => {
                self.sorted.others.push((row, LineIs::Units));
                if let Some(block) = self.sorted.blocks.last_mut() {
                    block.units = Some(row);
                }
            }
            LineIs::Shot | LineIs::Summary | LineIs::Problem => self.add_to_body(row),
            LineIs::Build => {
                self.pending.push(row);
                self.text_before = Some(row);
            }
            LineIs::Text => {
                self.sorted.others.push((row, LineIs::Text));
                // A rule between a title and its table changes nothing.
                self.text_before = if is_rule(self.grid, row) { text_before } else { Some(row) };
            }
        }
    }

    fn begin_block(&mut self, row: usize, text_before: Option<usize>) {
        self.sorted.others.push((row, LineIs::Headings));
        let repeated = self.headings().is_some_and(|headings| same_cells(self.grid, headings, row));
        if repeated && self.pending.is_empty() {
            return;
        }
        let over = text_before.filter(|&above| has_repeats(self.grid, row) && self.grid.filled(above) > 1);
        let caption = self.take_caption();
        let title = self.take_title();
        self.sorted.blocks.push(Block { title, caption, over, headings: Some(row), ..Block::default() });
    }

    fn add_to_body(&mut self, row: usize) {
        if !self.pending.is_empty() || self.sorted.blocks.is_empty() {
            let before = self.sorted.blocks.last().cloned().unwrap_or_default();
            let title = self.take_title();
            self.sorted.blocks.push(Block { title, body: Vec::new(), ..before });
        }
        if let Some(block) = self.sorted.blocks.last_mut() {
            block.body.push(row);
        }
    }

    /// The waiting title that names a measure.
    fn take_caption(&mut self) -> Option<usize> {
        let at = self.pending.iter().rposition(|&row| names_measure(self.grid, row))?;
        let row = self.pending.remove(at);
        self.sorted.others.push((row, LineIs::Headings));
        Some(row)
    }

    /// The waiting title that names a build; the others are text.
    fn take_title(&mut self) -> Option<usize> {
        let grid = self.grid;
        let named = self.pending.iter().rposition(|&row| names_a_build(grid, row).is_some());
        let chosen = named.or_else(|| self.pending.iter().rposition(|&row| is_name_row(grid, row)));
        let mut title = None;
        for (index, row) in std::mem::take(&mut self.pending).into_iter().enumerate() {
            let is_title = Some(index) == chosen;
            self.sorted.others.push((row, if is_title { LineIs::Build } else { LineIs::Text }));
            if is_title {
                title = Some(row);
            }
        }
        title
    }

    fn finish(mut self) -> Sorted {
        self.sorted.others.extend(self.pending.iter().map(|&row| (row, LineIs::Text)));
        self.sorted
    }
}

/// Whether the only cell of a row names a measure and nothing beside it.
fn names_measure(grid: &Grid, row: usize) -> bool {
    let heading = understand(grid.only_cell(row).unwrap_or_default());
    matches!(heading.word, Some(Word::Measure(_))) && heading.beside.is_none()
}

fn has_repeats(grid: &Grid, row: usize) -> bool {
    let cells: Vec<&str> = grid.cells(row).filter(|c| !c.is_empty()).collect();
    cells.iter().enumerate().any(|(at, cell)| cells[..at].contains(cell))
}

/// Whether a row is labeled as an average, a deviation or the like.
fn is_summary(grid: &Grid, row: usize) -> bool {
    grid.cells(row).take(4).any(|cell| statistic(&words(cell).concat()).is_some())
}

/// The build's name in "Club: Driver A" or in the two cells "Club" and "Driver A".
fn names_a_build(grid: &Grid, row: usize) -> Option<&str> {
    let mut filled = grid.cells(row).filter(|c| !c.is_empty());
    let first = filled.next()?;
    if let Some(second) = filled.next() {
        let key = first.trim_end_matches([':', '=']);
        return is_build_word(key).then_some(second);
    }
    let (key, name) = first.split_once([':', '='])?;
    let name = trim(name);
    (is_build_word(key) && !name.is_empty()).then_some(name)
}

fn is_build_word(text: &str) -> bool {
    matches!(understand(text).word, Some(Word::Build(_)))
}

/// Whether a line by itself can be a build's name rather than prose about the session.
pub(crate) fn is_name_row(grid: &Grid, row: usize) -> bool {
    let Some(cell) = grid.only_cell(row) else { return false };
    if let Some((key, value)) = cell.split_once(':') {
        let other = matches!(understand(key).word, Some(Word::Remark | Word::Time | Word::Measure(_)));
        if other || trim(value).split_whitespace().count() > 6 {
            return false;
        }
    }
    cell.split_whitespace().count() <= 8 && !cell.ends_with(['.', '!', '?', ','])
}

/// The name of the build that a title row stands for.
pub(crate) fn title_name(grid: &Grid, row: usize) -> String {
    let name =
        names_a_build(grid, row).or_else(|| grid.cells(row).find(|c| !c.is_empty())).unwrap_or_default();
    let name = name
        .trim_start_matches(['#', '*', '=', '-', ' ', '>'])
        .trim_end_matches(['*', ':', '=', '-', ' ', '#']);
    trim(name).to_owned()
}

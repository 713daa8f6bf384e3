//! Arrays of plain values in JSON: rows of a table, its columns, or the shots of a club under its name.

use crate::cut::grid::Grid;
use crate::lexicon::heading::understand;
use crate::limits::MAX_COLUMNS;

/// Values of one array.
struct List {
    line: u32,
    /// The name it stands under.
    key: Option<String>,
    values: Vec<String>,
}

/// Every array of plain values, in the order of the text.
#[derive(Default)]
pub(crate) struct Lists {
    done: Vec<List>,
    open: Option<List>,
}

impl Lists {
    /// One more value of the array that is open.
    pub(crate) fn add(&mut self, line: u32, key: Option<&str>, value: String) {
        let open =
            self.open.get_or_insert_with(|| List { line, key: key.map(str::to_owned), values: Vec::new() });
        open.values.push(value);
    }

    /// The array that is open, if any, ends.
    pub(crate) fn end(&mut self) {
        self.done.extend(self.open.take());
    }

    /// The arrays as a table; `None` when they are none.
    pub(crate) fn finish(mut self) -> Option<Grid> {
        self.end();
        let mut grid = Grid::default();
        if self.done.iter().all(|list| list.key.is_none()) {
            for list in &self.done {
                push(&mut grid, list.line, list.values.iter().map(String::as_str));
            }
        } else if self.done.iter().all(|list| list.key.is_some()) {
            let is_column =
                |list: &List| list.key.as_deref().is_some_and(|key| understand(key).word.is_some());
            if self.done.iter().filter(|list| is_column(list)).count() > 1 {
                self.columns(&mut grid);
            } else {
                self.clubs(&mut grid);
            }
        }
        (grid.len() > 0).then_some(grid)
    }

    /// Each array is a column under its name.
    fn columns(&self, grid: &mut Grid) {
        let rows = self.done.iter().map(|list| list.values.len()).max().unwrap_or(0);
        let columns = || self.done.iter().take(MAX_COLUMNS);
        push(grid, 1, columns().map(|list| list.key.as_deref().unwrap_or_default()));
        for at in 0..rows {
            if grid.is_full() {
                return;
            }
            let line = self.done.first().map_or(1, |list| list.line);
            push(grid, line, columns().map(|list| list.values.get(at).map_or("", String::as_str)));
        }
    }

    /// Each array is a club's shots, one behind the other.
    fn clubs(&self, grid: &mut Grid) {
        let shots = self.done.iter().map(|list| list.values.len()).max().unwrap_or(0).min(MAX_COLUMNS - 1);
        let numbers: Vec<String> = (1..=shots).map(|number| number.to_string()).collect();
        push(grid, 1, std::iter::once("Club").chain(numbers.iter().map(String::as_str)));
        for list in &self.done {
            let values = list.values.iter().take(shots).map(String::as_str);
            push(grid, list.line, std::iter::once(list.key.as_deref().unwrap_or_default()).chain(values));
        }
    }
}

fn push<'a>(grid: &mut Grid, line: u32, cells: impl Iterator<Item = &'a str>) {
    grid.begin(line);
    cells.for_each(|cell| grid.push(cell));
    grid.drop_if_blank();
}

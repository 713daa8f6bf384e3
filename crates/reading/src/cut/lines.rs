//! Lines with their numbers, and tables whose cells are set apart by pipes.

use crate::cut::grid::Grid;
use crate::trim::trim;

/// Lines of a text, numbered from 1; LF, CRLF and CR each end one.
pub(crate) fn numbered(text: &str) -> impl Iterator<Item = (u32, &str)> {
    let mut rest = Some(text);
    let mut number = 0;
    std::iter::from_fn(move || {
        let text = rest?;
        number += 1;
        match text.find(['\n', '\r']) {
            None => {
                rest = None;
                Some((number, text))
            }
            Some(end) => {
                let after = &text[end..];
                rest = Some(after.strip_prefix("\r\n").unwrap_or(&after[1..]));
                Some((number, &text[..end]))
            }
        }
    })
}

/// Number of line ends in a text.
pub(crate) fn line_ends(text: &str) -> u32 {
    let bytes = text.as_bytes();
    let ends =
        |(at, byte): (usize, &u8)| *byte == b'\n' || *byte == b'\r' && bytes.get(at + 1) != Some(&b'\n');
    u32::try_from(bytes.iter().enumerate().filter(|found| ends(*found)).count()).unwrap_or(u32::MAX)
}

/// Cells set apart by a mark that never stands inside one. The second value is the line from which on nothing was read.
pub(crate) fn cut(text: &str, mark: char) -> (Grid, Option<u32>) {
    fill(text, |grid, line| line.split(mark).for_each(|cell| grid.push(cell)))
}

/// One cell in each line. The second value is the line from which on nothing was read.
pub(crate) fn whole(text: &str) -> (Grid, Option<u32>) {
    fill(text, |grid, line| grid.push(line))
}

/// Cells set apart by pipes, with or without pipes at the ends, as in Markdown.
pub(crate) fn piped(text: &str) -> (Grid, Option<u32>) {
    fill(text, |grid, line| {
        let line = trim(line);
        let inner = line.strip_prefix('|').unwrap_or(line);
        let inner = inner.strip_suffix('|').filter(|i| !i.ends_with('\\')).unwrap_or(inner);
        let mut from = 0;
        for (at, _) in inner.match_indices('|') {
            // A backslash before it makes the pipe part of the cell.
            if !inner[..at].ends_with('\\') {
                push_unmarked(grid, &inner[from..at]);
                from = at + 1;
            }
        }
        push_unmarked(grid, &inner[from..]);
    })
}

/// Without the marks for bold and code, and without backslashes before pipes.
fn push_unmarked(grid: &mut Grid, cell: &str) {
    let mut cell = trim(cell);
    for mark in ["**", "__", "`", "*"] {
        if let Some(inner) =
            cell.strip_prefix(mark).and_then(|c| c.strip_suffix(mark)).filter(|c| !c.is_empty())
        {
            cell = trim(inner);
        }
    }
    if cell.contains("\\|") { grid.push(&cell.replace("\\|", "|")) } else { grid.push(cell) }
}

/// Begins a row for every line and leaves its cells to `push`, until the grid is full.
pub(crate) fn fill(text: &str, mut push: impl FnMut(&mut Grid, &str)) -> (Grid, Option<u32>) {
    let mut grid = Grid::default();
    for (number, line) in numbered(text) {
        if grid.is_full() {
            return (grid, Some(number));
        }
        grid.begin(number);
        push(&mut grid, line);
        grid.drop_if_blank();
    }
    (grid, None)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_line_end_counts_once() {
        let lines: Vec<_> = numbered("a\r\nb\rc\n\nd\n").collect();
        assert_eq!(lines, [(1, "a"), (2, "b"), (3, "c"), (4, ""), (5, "d"), (6, "")]);
    }

    #[test]
    fn pipes_at_the_ends_make_no_cells() {
        for text in ["| a | **b** | c\\|d |", "a | b | c\\|d", "|a|`b`|c\\|d|"] {
            let (grid, _) = piped(text);
            assert_eq!(grid.cells(0).collect::<Vec<_>>(), ["a", "b", "c|d"], "{text}");
        }
    }
}

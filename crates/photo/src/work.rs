//! Cells on their way to a reading: holes among them, units, what speaks against them, names in one spelling.

use crate::doubts::{against_another, out_of_line};
use crate::layout::Layout;
use crate::number::{Number, number};
use crate::quad::{Quad, Strip, less, sum, times};
use crate::reading::{Column, Doubt};
use crate::tiles::Tile;
use crate::token::Token;

/// What each character must reach to be believed.
pub(crate) const SURE: f32 = 0.9;

/// A cell on its way.
pub(crate) struct Work {
    pub(crate) row: usize,
    pub(crate) column: usize,
    pub(crate) quad: Quad,
    pub(crate) text: String,
    pub(crate) sure: f32,
    pub(crate) other: Option<String>,
    pub(crate) doubts: Vec<Doubt>,
    /// Where its first character stands, as a share of its width.
    pub(crate) first: f32,
}

pub(crate) fn begun(token: &Token, row: usize, column: usize) -> Work {
    let first = token.line.places.first().copied().unwrap_or(0.0);
    let (text, sure, quad) = (token.text().trim(), token.line.sure, token.quad);
    // A mark behind the last digit is the rest of a unit, or dirt.
    let text = if token.is_number() { text.trim_end_matches(['.', ',']) } else { text }.to_owned();
    Work { row, column, quad, text, sure, other: None, doubts: Vec::new(), first }
}

/// A tile; without a number what stands there is still to be read.
pub(crate) fn begun_tile(tokens: &[Token], tile: &Tile, column: usize) -> Work {
    let (text, quad, doubts) = (String::new(), tile.quad, Vec::new());
    let nothing = Work { row: 0, column, quad, text, sure: 0.0, other: None, doubts, first: 0.0 };
    tile.number.map_or(nothing, |at| begun(&tokens[at], 0, column))
}

impl Work {
    /// A name that was found in two boxes is one.
    pub(crate) fn goes_on(&mut self, token: &Token) {
        let (Quad([a, b, c, d]), Quad([e, f, g, h])) = (self.quad, token.quad);
        let is_behind = token.quad.left()[0] > self.quad.left()[0];
        let (one, other) = (self.text.trim(), token.text().trim());
        self.text = if is_behind { format!("{one} {other}") } else { format!("{other} {one}") };
        self.quad = Quad(if is_behind { [a, f, g, d] } else { [e, b, c, h] });
        self.sure = self.sure.min(token.line.sure);
    }
}

pub(crate) fn values(work: &[Work], column: usize, rows: usize) -> Vec<Option<f64>> {
    let mut values = vec![None; rows];
    for it in work.iter().filter(|it| it.column == column) {
        values[it.row] = number(&it.text).and_then(|it| it.value());
    }
    values
}

/// In a column of which so many percent are filled, an empty place is a hole.
const FULL: usize = 60;

/// Where nothing stands in a column that is full elsewhere: as wide as what stands there, as high as its row.
pub(crate) fn holes(
    work: &[Work],
    layout: &Layout,
    is_asked: &dyn Fn(usize) -> bool,
) -> Vec<(usize, usize, Quad)> {
    let mut holes = Vec::new();
    let is_full = |column: usize| {
        work.iter().filter(|it| it.column == column).count() * 100 >= FULL * layout.rows.len()
    };
    for column in (0..layout.columns.len()).filter(|it| is_asked(*it) && is_full(*it)) {
        let span = &layout.columns[column];
        for row in
            (0..layout.rows.len()).filter(|row| !work.iter().any(|it| (it.row, it.column) == (*row, column)))
        {
            // Its neighbor above or below, or in its row, shows how high it stands.
            let near = |it: &&Work| it.row.abs_diff(row) + usize::from(it.column != column) * 2;
            let Some(like) = work.iter().filter(|it| number(&it.text).is_some()).min_by_key(near) else {
                continue;
            };
            let up = times(like.quad.down(), -0.5);
            let (left, right) = (
                layout.frame.point(span.from, layout.rows[row]),
                layout.frame.point(span.to, layout.rows[row]),
            );
            holes.push((row, column, Quad([sum(left, up), sum(right, up), less(right, up), less(left, up)])));
        }
    }
    holes
}

pub(crate) fn is_blank(strip: &Strip) -> bool {
    const FAINTEST: u8 = 45;
    contrast(strip) < FAINTEST
}

/// From the darkest to the lightest of a strip, but for a few pixels.
pub(crate) fn contrast(strip: &Strip) -> u8 {
    let mut greens: Vec<u8> = strip.pixels.as_chunks::<3>().0.iter().map(|it| it[1]).collect();
    greens.sort_unstable();
    let at = |percent: usize| greens[(greens.len() - 1) * percent / 100];
    at(97) - at(3)
}

/// Units that stand in the cells go into the heading.
pub(crate) fn columns(layout: &Layout, numbers: &mut [Work]) -> Vec<Column> {
    let column = |(at, heading): (usize, &String)| {
        let mut units: Vec<String> = Vec::new();
        let (mut count, mut has_signs) = (0, false);
        for work in numbers.iter_mut().filter(|it| it.column == at) {
            has_signs |= number(&work.text).is_some_and(|it| it.sign.is_some() || it.side.is_some());
            units.push(take_unit(work));
            count += 1;
        }
        units.retain(|it| !it.is_empty());
        let unit = if units.len() * 2 > count { units.swap_remove(0) } else { String::new() };
        let is_number = layout.columns[at].is_number;
        Column { heading: with_unit(heading, &unit), is_number, has_signs }
    };
    layout.headings.iter().enumerate().map(column).collect()
}

pub(crate) fn take_unit(work: &mut Work) -> String {
    let Some(found) = number(&work.text).filter(|it| !it.unit.is_empty()) else { return String::new() };
    work.text = work.text.trim().strip_suffix(&found.unit).unwrap_or(&work.text).trim_end().to_owned();
    found.unit
}

pub(crate) fn with_unit(heading: &str, unit: &str) -> String {
    if unit.is_empty() || heading.contains('(') { heading.to_owned() } else { format!("{heading} ({unit})") }
}

pub(crate) fn doubt(numbers: &mut [Work], columns: &[Column], rows: usize) {
    for column in 0..columns.len() {
        let at: Vec<usize> = (0..numbers.len()).filter(|at| numbers[*at].column == column).collect();
        let read: Vec<Number> = at.iter().filter_map(|at| number(&numbers[*at].text)).collect();
        for bad in out_of_line(&read.iter().collect::<Vec<_>>()) {
            numbers[at[bad]].doubts.push(Doubt::OutOfLine);
        }
    }
    let all: Vec<Vec<Option<f64>>> = (0..columns.len()).map(|column| values(numbers, column, rows)).collect();
    for one in 0..columns.len() {
        for other in one + 1..columns.len() {
            for row in against_another(&all[one], &all[other]) {
                let of = |it: &&mut Work| it.row == row && (it.column == one || it.column == other);
                let mut pair: Vec<&mut Work> = numbers.iter_mut().filter(of).collect();
                // What is known to be in doubt explains it.
                if pair.iter().all(|it| it.doubts.is_empty()) {
                    pair.iter_mut().for_each(|it| it.doubts.push(Doubt::AgainstAnother));
                }
            }
        }
    }
}

/// A name by its letters and digits alone.
pub(crate) fn bare(text: &str) -> String {
    text.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_ascii_lowercase()
}

/// Leaves rows away in which nothing stands; how many there are then.
pub(crate) fn without_blank_rows(work: &mut [Work], rows: usize) -> usize {
    let is_used: Vec<bool> = (0..rows).map(|row| work.iter().any(|it| it.row == row)).collect();
    let blank_above = |row: usize| is_used[..row].iter().filter(|it| !**it).count();
    work.iter_mut().for_each(|it| it.row -= blank_above(it.row));
    rows - blank_above(rows)
}

/// What stands in a column of numbers and is none, and names that are unsure or almost those of other rows.
pub(crate) fn doubt_words(words: &mut [Work], layout: &Layout, counting: &[bool]) {
    const UNSURE_NAME: f32 = 0.6;
    // Names that count on, as Club A and Club B do, are rows of their own.
    const RARER: usize = 3;
    let before: Vec<(usize, String)> = words.iter().map(|it| (it.column, it.text.clone())).collect();
    let count = |column: usize, name: &str| before.iter().filter(|it| it.0 == column && it.1 == name).count();
    for word in words.iter_mut().filter(|it| it.doubts.is_empty() && !counting[it.column]) {
        if layout.columns[word.column].is_number {
            word.doubts.push(Doubt::Unsure);
            continue;
        }
        let own = count(word.column, &word.text);
        let others = before.iter().filter(|(column, name)| {
            *column == word.column
                && count(*column, name) >= RARER * own
                && is_almost(&bare(name), &bare(&word.text))
        });
        let nearest = others.max_by_key(|(column, name)| count(*column, name)).map(|it| it.1.clone());
        if nearest.is_some() {
            word.doubts.push(Doubt::OutOfLine);
            word.other = nearest;
        } else if word.sure < UNSURE_NAME {
            word.doubts.push(Doubt::Unsure);
        }
    }
}

/// Whether two names differ by so little that one of them may be misread: by a letter, or by what is missing at an end.
fn is_almost(one: &str, other: &str) -> bool {
    let (short, long) = if one.len() <= other.len() { (one, other) } else { (other, one) };
    if short.is_empty() || short == long {
        return false;
    }
    let same = |short: &mut dyn Iterator<Item = char>, long: &mut dyn Iterator<Item = char>| {
        short.zip(long).take_while(|(one, other)| one == other).count()
    };
    let from_start = same(&mut short.chars(), &mut long.chars());
    let from_end = same(&mut short.chars().rev(), &mut long.chars().rev());
    from_start.max(from_end) == short.len() || from_start + from_end + 1 >= long.len()
}

/// One name read in two spellings is one: where only spaces, case or marks differ, the more frequent counts.
pub(crate) fn one_spelling(words: &mut [Work], layout: &Layout) {
    let before: Vec<(usize, String)> = words.iter().map(|it| (it.column, it.text.clone())).collect();
    for word in words.iter_mut().filter(|it| !layout.columns[it.column].is_number) {
        let alike =
            before.iter().filter(|(column, text)| *column == word.column && bare(text) == bare(&word.text));
        let count =
            |it: &String| before.iter().filter(|(column, text)| *column == word.column && text == it).count();
        if let Some((_, text)) = alike.max_by_key(|(_, text)| (count(text), text.clone())) {
            word.text.clone_from(text);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lines::Frame;
    use crate::places::Span;

    fn layout(is_number: &[bool]) -> Layout {
        let span = |is_number: &bool| Span { from: 0.0, to: 1.0, is_number: *is_number };
        Layout {
            frame: Frame::of(&[], &[], &[], 0.0),
            rows: Vec::new(),
            columns: is_number.iter().map(span).collect(),
            cells: Vec::new(),
            also: Vec::new(),
            headings: Vec::new(),
            above: Vec::new(),
            below: Vec::new(),
        }
    }

    fn word(row: usize, column: usize, text: &str, sure: f32) -> Work {
        let quad = Quad([[0.0, 0.0], [9.0, 0.0], [9.0, 4.0], [0.0, 4.0]]);
        Work { row, column, quad, text: text.into(), sure, other: None, doubts: Vec::new(), first: 0.0 }
    }

    #[test]
    fn a_club_that_is_almost_another_and_a_word_among_numbers_are_doubted() {
        let mut words: Vec<Work> = (0..14).map(|row| word(row, 0, "8i old", 1.0)).collect();
        words.extend((14..24).map(|row| word(row, 0, "8i new", 1.0)));
        for (row, text, sure) in [(3, "Bi old", 1.0), (7, "old", 1.0), (20, "8i new", 0.4)] {
            words[row].text = text.into();
            words[row].sure = sure;
        }
        words.extend([word(2, 1, "SR", 1.0), word(3, 2, "I", 1.0)]);
        doubt_words(&mut words, &layout(&[false, true, true]), &[false, false, true]);
        let doubted: Vec<(usize, usize, &str)> = words
            .iter()
            .filter(|it| !it.doubts.is_empty())
            .map(|it| (it.row, it.column, it.other.as_deref().unwrap_or("")))
            .collect();
        assert_eq!(doubted, [(3, 0, "8i old"), (7, 0, "8i old"), (20, 0, ""), (2, 1, "")]);
    }

    #[test]
    fn clubs_that_count_on_are_not_doubted() {
        let name = |row: usize| if row < 8 { "Club A" } else { "Club B" };
        let mut words: Vec<Work> = (0..15).map(|row| word(row, 0, name(row), 1.0)).collect();
        doubt_words(&mut words, &layout(&[false]), &[false]);
        assert!(words.iter().all(|it| it.doubts.is_empty()));
    }

    #[test]
    fn rows_in_which_nothing_stands_are_left_away() {
        let mut work: Vec<Work> = [0, 1, 3, 3, 5].map(|row| word(row, 0, "1", 1.0)).into();
        assert_eq!(without_blank_rows(&mut work, 7), 4);
        assert_eq!(work.iter().map(|it| it.row).collect::<Vec<_>>(), [0, 1, 2, 2, 3]);
    }
}

//! Delimited text into cells, and how cells are set apart when nobody says.
//!
//! Quoting and the reading itself are the csv crate's. A quote that never closes would swallow
//! the rest of the text, so such a text is read again with quotes as plain characters.

use crate::cut::grid::Grid;
use crate::cut::lines::numbered;
use crate::outcome::Delimiter;
use crate::trim::has;
use std::borrow::Cow;

/// A quoted cell longer than this many lines is taken for a quote that was never closed.
const LONGEST_QUOTED: u32 = 30;

/// Delimiters in one line beyond which the line is not read on.
const MOST_IN_LINE: usize = 1000;

/// Lines looked at to find the delimiter.
const SAMPLE: usize = 400;

/// How a text was cut.
pub(crate) struct Cut {
    pub(crate) grid: Grid,
    /// Quotes that never close were read as plain characters.
    pub(crate) quotes_ignored: bool,
    /// Line from which on the text was not read, because it holds too many rows or cells.
    pub(crate) stopped_at: Option<u32>,
    /// The first line that was not read to its end.
    pub(crate) long_line: Option<u32>,
}

/// Cuts text at a delimiter of one byte.
pub(crate) fn cut(text: &str, delimiter: u8) -> Cut {
    let (text, long_line) = without_long_lines(text, char::from(delimiter));
    let quoted = records(&text, delimiter, true);
    let quotes_ignored = quoted.is_none();
    let (grid, stopped_at) = quoted.or_else(|| records(&text, delimiter, false)).unwrap_or_default();
    Cut { grid, quotes_ignored, stopped_at, long_line }
}

/// The text with overlong lines ended early, and the first line that was.
///
/// No table has so many columns, and a record's bookkeeping would cost many times its text.
fn without_long_lines(text: &str, delimiter: char) -> (Cow<'_, str>, Option<u32>) {
    let too_long = |line: &str| line.len() > MOST_IN_LINE && line.matches(delimiter).count() > MOST_IN_LINE;
    let Some((first, _)) = numbered(text).find(|(_, line)| too_long(line)) else {
        return (Cow::Borrowed(text), None);
    };
    let mut kept = String::with_capacity(text.len());
    for (_, line) in numbered(text) {
        let end = line.match_indices(delimiter).nth(MOST_IN_LINE).map_or(line.len(), |(at, _)| at);
        kept.push_str(&line[..end]);
        kept.push('\n');
    }
    (Cow::Owned(kept), Some(first))
}

/// `None` when a quote seems never to close.
fn records(text: &str, delimiter: u8, quoting: bool) -> Option<(Grid, Option<u32>)> {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .quoting(quoting)
        .delimiter(delimiter)
        .from_reader(text.as_bytes());
    let mut grid = Grid::default();
    let mut record = csv::StringRecord::new();
    let mut lines = Lines::new(text);
    let mut stopped_at = None;
    while let Ok(true) = reader.read_record(&mut record) {
        let start = record.position().map_or(0, csv::Position::byte);
        let line = lines.line_at(start);
        if grid.is_full() {
            stopped_at = Some(line);
            break;
        }
        if quoting && record.iter().any(|cell| line_ends(cell) > LONGEST_QUOTED) {
            return None;
        }
        grid.begin(line);
        let plain = |cell: &str| grid.push(if quoting { cell } else { cell.trim().trim_matches('"') });
        record.iter().for_each(plain);
        grid.drop_if_blank();
    }
    Some((grid, stopped_at))
}

fn line_ends(cell: &str) -> u32 {
    u32::try_from(cell.bytes().filter(|b| matches!(b, b'\n' | b'\r')).count()).unwrap_or(u32::MAX)
}

/// Line numbers of growing byte positions; CR, LF and CRLF each end one line.
pub(crate) struct Lines<'a> {
    bytes: &'a [u8],
    at: usize,
    line: u32,
}

impl<'a> Lines<'a> {
    pub(crate) fn new(text: &'a str) -> Self {
        Self { bytes: text.as_bytes(), at: 0, line: 1 }
    }

    /// The line of the first byte at or behind a position that is no line end.
    pub(crate) fn line_at(&mut self, position: u64) -> u32 {
        let position = usize::try_from(position).unwrap_or(usize::MAX);
        while let Some(&byte) = self.bytes.get(self.at) {
            let ends = match byte {
                b'\n' => true,
                b'\r' => self.bytes.get(self.at + 1) != Some(&b'\n'),
                _ if self.at >= position => break,
                _ => false,
            };
            self.line += u32::from(ends);
            self.at += 1;
        }
        self.line
    }
}

/// What a delimiter finds in a sample of lines.
#[derive(Clone, Copy, Default)]
struct Found {
    /// Lines that hold it, plus lines that hold it as often as most do.
    score: usize,
}

/// The delimiter that cuts most lines into the same number of cells.
pub(crate) fn sniff(text: &str) -> Delimiter {
    let sample: Vec<&str> =
        text.split(['\n', '\r']).filter(|line| !line.trim().is_empty()).take(SAMPLE).collect();
    let candidates = [
        (Delimiter::Tab, '\t'),
        (Delimiter::Semicolon, ';'),
        (Delimiter::Pipe, '|'),
        (Delimiter::Comma, ','),
    ];
    let found = candidates.map(|(delimiter, mark)| {
        let found = look_for(mark, &sample);
        let decimal = delimiter == Delimiter::Comma && commas_are_decimal(&sample);
        (delimiter, if decimal { Found::default() } else { found })
    });
    let best = found.iter().map(|(_, f)| f.score).max().unwrap_or(0);
    // A table has its delimiter in at least two lines, unless there is only one.
    if best < 2 || (best < 4 && sample.len() > 2) {
        return if sample.iter().any(|line| crate::cut::spaces::has_columns(line)) {
            Delimiter::Spaces
        } else {
            Delimiter::Lines
        };
    }
    let good_enough = |f: &Found| f.score * 10 >= best * 8;
    found.iter().find(|(_, f)| good_enough(f)).map_or(Delimiter::Comma, |(delimiter, _)| *delimiter)
}

fn look_for(mark: char, sample: &[&str]) -> Found {
    let counts: Vec<usize> =
        sample.iter().map(|line| outside_quotes(line, mark)).filter(|&n| n > 0).collect();
    let mut sorted = counts.clone();
    arrange::sort(&mut sorted);
    let most = sorted.chunk_by(|a, b| a == b).map(<[usize]>::len).max().unwrap_or(0);
    Found { score: counts.len() + most }
}

fn outside_quotes(line: &str, mark: char) -> usize {
    if !has(line, '"') {
        return line.matches(mark).count();
    }
    let mut inside = false;
    let mut count = 0;
    for c in line.chars() {
        inside ^= c == '"';
        count += usize::from(c == mark && !inside);
    }
    count
}

/// Whether the commas of a text stand inside numbers and nowhere else, as in "251,3  160,2".
fn commas_are_decimal(sample: &[&str]) -> bool {
    let mut inside = 0_usize;
    let mut elsewhere = 0_usize;
    let mut headings_without = false;
    for line in sample {
        let bytes = line.as_bytes();
        let mut any = false;
        for at in bytes.iter().enumerate().filter(|(_, b)| **b == b',').map(|(at, _)| at) {
            any = true;
            let digit = |at: Option<usize>| at.and_then(|at| bytes.get(at)).is_some_and(u8::is_ascii_digit);
            let apart = bytes[at + 1..].iter().take_while(|b| b.is_ascii_digit()).count();
            let closed = !matches!(bytes.get(at + 1 + apart), Some(b','));
            if digit(at.checked_sub(1)) && (1..=3).contains(&apart) && closed {
                inside += 1
            } else {
                elsewhere += 1
            }
        }
        headings_without |= !any && line.chars().any(char::is_alphabetic);
    }
    // Without headings, only numbers that are set apart by something else can tell.
    let apart =
        sample.iter().all(|line| !has(line, ',') || line.matches(',').count() == 1 || has(line.trim(), ' '));
    inside > 0 && elsewhere * 10 <= inside && (headings_without || sample.len() == inside) && apart
}

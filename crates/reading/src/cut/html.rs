//! The rows and cells of HTML tables, and the text around them line by line.
//!
//! Not a browser: tags that set rows and cells apart count, all others are dropped. Nothing of
//! the markup survives; what is left is text.

use crate::cut::grid::Grid;
use crate::cut::lines::line_ends;
use crate::lexicon::number::{Cell, scan};
use crate::trim::trim;

/// Cells one tag may span; more is a mistake or an attack.
const WIDEST: usize = 50;

/// Whether a text holds a table in HTML.
pub(crate) fn has_table(text: &str) -> bool {
    let mut rest = text;
    while let Some(at) = rest.find('<') {
        rest = &rest[at + 1..];
        if ["table", "tr>", "tr ", "td>", "td "].iter().any(|tag| starts_with(rest, tag)) {
            return true;
        }
    }
    false
}

fn starts_with(text: &str, tag: &str) -> bool {
    text.get(..tag.len()).is_some_and(|start| start.eq_ignore_ascii_case(tag))
}

/// Cuts the text. The second value is the line from which on nothing was read.
pub(crate) fn cut(text: &str) -> (Grid, Option<u32>) {
    let mut walk = Walk {
        grid: Grid::default(),
        cell: String::new(),
        in_row: false,
        span: 1,
        rows: 1,
        tall: Vec::new(),
        at: 0,
        line: 1,
    };
    let mut rest = text;
    while !rest.is_empty() {
        if walk.grid.is_full() {
            return (walk.grid, Some(walk.line));
        }
        let Some(open) = rest.find('<') else {
            walk.text(rest);
            break;
        };
        walk.text(&rest[..open]);
        rest = &rest[open..];
        // Comments, scripts and styles are skipped whole; an unclosed one ends the text.
        let skipped = [("<!--", "-->"), ("<script", "</script"), ("<style", "</style"), ("<head", "</head")]
            .into_iter()
            .find(|(start, _)| starts_with(rest, start) && !starts_with(rest, "<header"));
        let end = match skipped {
            Some((_, close)) => find_ignoring_case(rest, close).map(|at| at + close.len() - 1),
            None if rest[1..]
                .starts_with(|c: char| c.is_ascii_alphabetic() || matches!(c, '/' | '!' | '?')) =>
            {
                rest.find('>')
            }
            // A sign, as in "< 5".
            None => {
                walk.text("<");
                rest = &rest[1..];
                continue;
            }
        };
        let Some(end) = end else { break };
        let tag = &rest[..end];
        walk.line += line_ends(tag);
        if skipped.is_none() {
            walk.tag(&tag[1..]);
        }
        rest = rest.get(end + 1..).unwrap_or("");
        if skipped.is_some_and(|(start, _)| start != "<!--") {
            rest = rest.find('>').map_or("", |at| &rest[at + 1..]);
        }
    }
    walk.end_row();
    (walk.grid, None)
}

fn find_ignoring_case(text: &str, what: &str) -> Option<usize> {
    let bytes = what.len();
    text.as_bytes().windows(bytes).position(|w| w.eq_ignore_ascii_case(what.as_bytes()))
}

struct Walk {
    grid: Grid,
    cell: String,
    in_row: bool,
    span: usize,
    /// Rows that the open cell spans.
    rows: usize,
    /// Cells of rows above that reach into this row or further: column, rows to come, text.
    tall: Vec<(usize, usize, String)>,
    /// The column that the next cell of the row stands in.
    at: usize,
    line: u32,
}

impl Walk {
    fn text(&mut self, text: &str) {
        self.line += line_ends(text);
        push_decoded(&mut self.cell, text);
    }

    fn tag(&mut self, tag: &str) {
        let name: String =
            tag.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '/').take(12).collect();
        match name.to_ascii_lowercase().as_str() {
            "tr" => {
                self.end_row();
                self.begin_row();
            }
            "/tr" => self.end_row(),
            "table" | "/table" | "/tbody" | "/thead" => {
                self.end_row();
                self.tall.clear();
            }
            "td" | "th" => {
                if self.in_row {
                    self.end_cell();
                } else {
                    self.end_row();
                    self.begin_row();
                }
                self.cell.clear();
                self.span = spanned(tag, "colspan");
                self.rows = spanned(tag, "rowspan");
            }
            "/td" | "/th" => self.end_cell(),
            "br" | "br/" if self.in_row => self.cell.push(' '),
            "p" | "/p" | "div" | "/div" | "br" | "br/" | "li" | "/li" | "h1" | "h2" | "h3" | "h4" | "/h1"
            | "/h2" | "/h3" | "/h4" | "caption" | "/caption"
                if !self.in_row =>
            {
                self.end_row();
            }
            _ => {}
        }
    }

    fn begin_row(&mut self) {
        self.grid.begin(self.line);
        self.in_row = true;
        self.at = 0;
        self.cell.clear();
    }

    fn end_cell(&mut self) {
        if self.in_row && self.span > 0 {
            self.push_tall();
            let text = trim(&self.cell);
            let text = if text.contains(['\n', '\r', '\t']) {
                text.split_whitespace().collect::<Vec<_>>().join(" ")
            } else {
                text.to_owned()
            };
            self.grid.push(&text);
            (1..self.span).for_each(|_| self.grid.push(""));
            // A name holds for all rows it stands beside; a number is one shot's.
            if self.rows > 1 && self.tall.len() < WIDEST {
                let text = if matches!(scan(&text), Cell::Text) { text } else { String::new() };
                self.tall.push((self.at, self.rows, text));
            }
            self.at += self.span;
        }
        self.span = 0;
        self.cell.clear();
    }

    /// Cells of rows above that stand where the next cell would.
    fn push_tall(&mut self) {
        while let Some((.., text)) = self.tall.iter().find(|(at, ..)| *at == self.at) {
            self.grid.push(text);
            self.at += 1;
        }
    }

    /// Ends a row of the table, or turns the text since the last row into a line of its own.
    fn end_row(&mut self) {
        if self.in_row {
            if !trim(&self.cell).is_empty() {
                self.end_cell();
            }
            self.push_tall();
            for (_, rows, _) in &mut self.tall {
                *rows -= 1;
            }
            self.tall.retain(|(_, rows, _)| *rows > 0);
            self.grid.drop_if_blank();
        } else if !trim(&self.cell).is_empty() {
            let text = self.cell.split_whitespace().collect::<Vec<_>>().join(" ");
            self.grid.begin(self.line);
            self.grid.push(&text);
        }
        self.in_row = false;
        self.span = 0;
        self.cell.clear();
    }
}

/// Columns or rows that a cell's tag spans.
fn spanned(tag: &str, name: &str) -> usize {
    let Some(at) = find_ignoring_case(tag, name) else { return 1 };
    let digits: String = tag[at..]
        .chars()
        .skip_while(|c| !c.is_ascii_digit())
        .take_while(char::is_ascii_digit)
        .take(4)
        .collect();
    digits.parse::<usize>().unwrap_or(1).clamp(1, WIDEST)
}

/// Adds text with its character references resolved.
fn push_decoded(cell: &mut String, text: &str) {
    let mut rest = text;
    while let Some(at) = rest.find('&') {
        cell.push_str(&rest[..at]);
        rest = &rest[at..];
        let end = rest.bytes().take(12).position(|b| b == b';');
        match end.and_then(|end| reference(&rest[1..end]).map(|c| (c, end))) {
            Some((c, end)) => {
                cell.push(c);
                rest = &rest[end + 1..];
            }
            None => {
                cell.push('&');
                rest = &rest[1..];
            }
        }
    }
    cell.push_str(rest);
}

fn reference(name: &str) -> Option<char> {
    if let Some(number) = name.strip_prefix('#') {
        let code = match number.strip_prefix(['x', 'X']) {
            Some(hex) => u32::from_str_radix(hex, 16).ok()?,
            None => number.parse().ok()?,
        };
        return char::from_u32(code);
    }
    Some(match name {
        "amp" => '&',
        "lt" => '<',
        "gt" => '>',
        "quot" => '"',
        "apos" => '\'',
        "nbsp" => '\u{a0}',
        "deg" => '°',
        "minus" => '−',
        "ndash" => '–',
        "mdash" => '—',
        "thinsp" => '\u{2009}',
        "plusmn" => '±',
        _ => return None,
    })
}

//! A JSON array of objects, or objects one after the other, as a table.
//!
//! Forgiving: it takes what it finds until the text makes no sense, and keeps that. Objects
//! inside objects become columns of their own; an array under a name gives its objects that
//! name in a first column, which is how shots stand under their build. No recursion: depth
//! costs no stack.

use crate::cut::grid::Grid;
use crate::cut::json_lists::Lists;
use crate::lexicon::vocabulary::lists;
use crate::limits::MAX_COLUMNS;
use session::few::Map;

/// Deepest nesting that is followed.
const DEEPEST: usize = 32;

/// Heading of the column for the names of arrays.
const NAME: &str = "group";

/// Reads the text as a table; `None` when it holds no object with a value.
pub(crate) fn cut(text: &str) -> Option<(Grid, Option<u32>)> {
    let start = text.trim_start();
    if !start.starts_with(['[', '{']) {
        return None;
    }
    let mut table = Table::default();
    let mut lists = Lists::default();
    let mut stopped_at = None;
    let mut scanner = Scanner { text, at: 0, line: 1 };
    // Where we are: for each level the key it stands under and whether it is an object.
    let mut levels: Vec<Level> = Vec::new();
    let mut key: Option<String> = None;
    while let Some(token) = scanner.next() {
        match token {
            Token::Open { object } => {
                if levels.len() >= DEEPEST || table.grid.is_full() {
                    stopped_at = Some(scanner.line);
                    break;
                }
                let in_array = levels.last().is_none_or(|level| !level.object);
                if object && in_array {
                    table.begin(scanner.line, levels.iter().rev().find_map(|l| l.key.as_deref()));
                }
                levels.push(Level { key: key.take(), object, record: object && in_array });
            }
            Token::Close => {
                lists.end();
                if levels.pop().is_some_and(|level| level.record) {
                    table.end();
                }
                key = None;
            }
            Token::Key(text) => key = Some(text),
            Token::Value(value) => match levels.last() {
                Some(level) if level.object && levels.iter().any(Level::is_units) => {
                    table.units.push((key.take().unwrap_or_default(), value));
                }
                Some(level) if level.object => table.set(&path(&levels, key.take()), value),
                Some(level) => lists.add(scanner.line, level.key.as_deref(), value),
                None => {}
            },
        }
    }
    let grid = match table.finish() {
        Some(grid) => grid,
        None => lists.finish()?,
    };
    Some((grid, stopped_at))
}

struct Level {
    key: Option<String>,
    object: bool,
    /// An object that is a row of its own.
    record: bool,
}

impl Level {
    /// What stands inside says in which units columns are.
    fn is_units(&self) -> bool {
        self.object && self.key.as_deref().is_some_and(|key| lists("unit units", &key.to_ascii_lowercase()))
    }
}

/// The names inside the row's object that lead to a value: the last one says enough.
fn path(levels: &[Level], key: Option<String>) -> String {
    let inside = levels.iter().rev().take_while(|l| !l.record).filter_map(|l| l.key.as_deref());
    let key = key.unwrap_or_default();
    // "values": {"carry": 250} is a column "carry"; "club": {"name": …} is a column "club".
    match inside.last() {
        Some(outer) if matches!(key.as_str(), "name" | "value" | "id") => outer.to_owned(),
        _ => key,
    }
}

/// Names of arrays that say nothing about their objects.
fn says_nothing(name: &str) -> bool {
    lists(
        "shots data rows results items values records session sessions list builds clubs groups",
        &name.to_ascii_lowercase(),
    )
}

/// A row that is still open: an object may hold an array of objects.
struct Open {
    line: u32,
    cells: Vec<(usize, String)>,
    /// Holds rows of its own, so it is none itself.
    container: bool,
}

#[derive(Default)]
struct Table {
    columns: Map<String, usize>,
    headings: Vec<String>,
    /// Units by heading, as a block of their own says them.
    units: Vec<(String, String)>,
    grid: Grid,
    /// Innermost last.
    open: Vec<Open>,
}

impl Table {
    fn begin(&mut self, line: u32, name: Option<&str>) {
        // A row inside a row has what its outer row says as well, such as the build.
        let mut cells = Vec::new();
        if let Some(outer) = self.open.last_mut() {
            outer.container = true;
            cells.extend(outer.cells.iter().filter(|(_, text)| text.len() <= 100).take(8).cloned());
        }
        self.open.push(Open { line, cells, container: false });
        if let Some(name) = name.filter(|name| !says_nothing(name)) {
            self.set(NAME, name.to_owned());
        }
    }

    fn set(&mut self, heading: &str, value: String) {
        let next = self.headings.len();
        let column = match self.columns.get(heading) {
            Some(&column) => column,
            None if next < MAX_COLUMNS => {
                self.columns.insert(heading.to_owned(), next);
                self.headings.push(heading.to_owned());
                next
            }
            None => return,
        };
        if let Some(open) = self.open.last_mut() {
            open.cells.retain(|(at, _)| *at != column);
            open.cells.push((column, value));
        }
    }

    fn end(&mut self) {
        let Some(mut open) = self.open.pop() else { return };
        if open.container || open.cells.is_empty() {
            return;
        }
        arrange::sort_by_key(&mut open.cells, |(at, _)| *at);
        self.grid.begin(open.line);
        let mut next = 0;
        for (column, value) in open.cells {
            (next..column).for_each(|_| self.grid.push(""));
            self.grid.push(&value);
            next = column + 1;
        }
        self.grid.drop_if_blank();
    }

    fn finish(mut self) -> Option<Grid> {
        while !self.open.is_empty() {
            self.end();
        }
        if self.grid.len() == 0 {
            return None;
        }
        let line = self.grid.line(0);
        self.grid.begin(line);
        for heading in &self.headings {
            match self.units.iter().find(|(of, _)| of == heading) {
                Some((_, unit)) => self.grid.push(&format!("{heading} ({unit})")),
                None => self.grid.push(heading),
            }
        }
        self.grid.last_row_first();
        Some(self.grid)
    }
}

enum Token {
    Open { object: bool },
    Close,
    Key(String),
    Value(String),
}

struct Scanner<'a> {
    text: &'a str,
    at: usize,
    line: u32,
}

impl Scanner<'_> {
    fn peek(&self) -> Option<char> {
        self.text[self.at..].chars().next()
    }

    fn skip_between(&mut self) {
        while let Some(c) = self.peek().filter(|c| c.is_whitespace() || matches!(c, ',' | ':' | '\u{feff}')) {
            self.at += c.len_utf8();
            self.line += u32::from(c == '\n' || c == '\r' && !self.text[self.at..].starts_with('\n'));
        }
    }

    fn next(&mut self) -> Option<Token> {
        self.skip_between();
        match self.peek()? {
            open @ ('{' | '[') => {
                self.at += 1;
                Some(Token::Open { object: open == '{' })
            }
            '}' | ']' => {
                self.at += 1;
                Some(Token::Close)
            }
            '"' => {
                let text = self.string();
                let after = self.text[self.at..].trim_start();
                Some(if after.starts_with(':') { Token::Key(text) } else { Token::Value(text) })
            }
            _ => {
                let rest = &self.text[self.at..];
                let end =
                    rest.find(|c: char| c.is_whitespace() || matches!(c, ',' | '}' | ']' | ':' | '{' | '['));
                let end = end.unwrap_or(rest.len());
                self.at += end;
                let word = &rest[..end];
                let after = self.text[self.at..].trim_start();
                if after.starts_with(':') {
                    return Some(Token::Key(word.trim_matches('\'').to_owned()));
                }
                Some(Token::Value(if word == "null" {
                    String::new()
                } else {
                    word.trim_matches('\'').to_owned()
                }))
            }
        }
    }

    /// A string from its opening quote to its closing one, or to the end of the text.
    fn string(&mut self) -> String {
        let mut text = String::new();
        let mut chars = self.text[self.at + 1..].char_indices();
        let start = self.at + 1;
        while let Some((at, c)) = chars.next() {
            match c {
                '"' => {
                    self.at = start + at + 1;
                    return text;
                }
                '\\' => match chars.next() {
                    Some((_, 'n')) => text.push('\n'),
                    Some((_, 't')) => text.push('\t'),
                    Some((_, 'r')) => text.push('\r'),
                    Some((_, 'u')) => {
                        let code: String = chars.by_ref().take(4).map(|(_, c)| c).collect();
                        let code = u32::from_str_radix(&code, 16).ok().and_then(char::from_u32);
                        text.push(code.unwrap_or(char::REPLACEMENT_CHARACTER));
                    }
                    Some((_, other)) => text.push(other),
                    None => break,
                },
                _ => {
                    self.line += u32::from(c == '\n');
                    text.push(c);
                }
            }
        }
        self.at = self.text.len();
        text
    }
}

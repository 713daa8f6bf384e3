//! From text to rows of cells, whatever sets them apart.

use crate::cut::grid::Grid;
use crate::cut::{delimited, html, json, lines, spaces};
use crate::hints::Hints;
use crate::limits::MAX_BYTES;
use crate::outcome::Delimiter;
use crate::remarks::{NoticeKind, ProblemKind};
use crate::talk::{Talk, place};
use crate::trim::prefix;
use text::reading as say;

/// Cuts the text into rows and cells, and says what was not read.
pub(crate) fn cells(whole: &str, hints: &Hints, talk: &mut Talk) -> (Grid, Delimiter) {
    let text = prefix(whole, MAX_BYTES);
    let delimiter = hints.delimiter.unwrap_or_else(|| kind(text));
    let (grid, delimiter, stopped_at) = match delimiter {
        Delimiter::Json => match json::cut(text) {
            Some((grid, stopped_at)) => (grid, Delimiter::Json, stopped_at),
            None => delimited_cells(text, delimited::sniff(text), talk),
        },
        Delimiter::Html => {
            let (grid, stopped_at) = html::cut(text);
            (grid, Delimiter::Html, stopped_at)
        }
        other => delimited_cells(text, other, talk),
    };
    if let Some(line) = stopped_at {
        talk.problem(ProblemKind::TooLong, place(line, ""), "");
    } else if whole.len() > text.len() {
        let line = lines::numbered(text).map(|(number, _)| number).last().unwrap_or(0);
        talk.problem(ProblemKind::TooLong, place(line, ""), "");
    }
    (grid, delimiter)
}

fn kind(text: &str) -> Delimiter {
    let start = text.trim_start();
    let of_arrays = start.strip_prefix('[').is_some_and(|inside| inside.trim_start().starts_with('['));
    if of_arrays || start.starts_with(['[', '{']) && text.contains('}') {
        return Delimiter::Json;
    }
    if html::has_table(text) { Delimiter::Html } else { delimited::sniff(text) }
}

fn delimited_cells(text: &str, delimiter: Delimiter, talk: &mut Talk) -> (Grid, Delimiter, Option<u32>) {
    let byte = match delimiter {
        Delimiter::Tab => b'\t',
        Delimiter::Semicolon => b';',
        Delimiter::Pipe => {
            let (grid, stopped_at) = lines::piped(text);
            return (grid, delimiter, stopped_at);
        }
        Delimiter::Spaces => {
            let (grid, stopped_at) = spaces::cut(text);
            return (grid, delimiter, stopped_at);
        }
        Delimiter::Lines => {
            let (grid, stopped_at) = lines::whole(text);
            return (grid, delimiter, stopped_at);
        }
        Delimiter::Comma | Delimiter::Html | Delimiter::Json => b',',
    };
    let cut = delimited::cut(text, byte);
    if cut.quotes_ignored {
        talk.notice(NoticeKind::QuotesIgnored, place(0, ""), say::quotes_ignored(talk.voice()));
    }
    if let Some(line) = cut.long_line {
        talk.problem(ProblemKind::TooManyCells, place(line, ""), &say::more_than_1000_cells(talk.voice()));
    }
    (cut.grid, delimiter, cut.stopped_at)
}

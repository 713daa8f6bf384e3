//! Headings in another language as the English ones they stand for, and its words for left and right.

use crate::cut::grid::Grid;
use crate::lexicon::heading::understand;
use crate::lexicon::languages::{ALL, Words};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;

/// Rows that are looked through for headings.
const MOST_ABOVE: usize = 30;
/// Most words of a heading that are looked at.
const MOST_WORDS: usize = 6;

/// The grid as if it had been written in English; `None` where all headings are known, or none in any language.
pub(crate) fn translated(grid: &Grid) -> Option<Grid> {
    let top = grid.len().min(MOST_ABOVE);
    let is_wordy = |row: &usize| {
        grid.filled(*row) > 0 && !grid.cells(*row).any(|cell| matches!(scan(cell), Cell::Figure(_)))
    };
    if (0..top).filter(is_wordy).any(|row| is_known(grid, row)) {
        return None;
    }
    let found = |language: &Words| {
        let foreign = |row| grid.cells(row).filter(|cell| heading(language, cell).is_some()).count();
        let known = |row| grid.cells(row).filter(|cell| understand(cell).word.is_some()).count();
        let rows = (0..top).filter(is_wordy).map(|row| (foreign(row), foreign(row) + known(row)));
        rows.filter(|(_, all)| *all > 1).map(|(foreign, _)| foreign).max().unwrap_or(0)
    };
    let counted = ALL.iter().map(|language| (found(language), *language));
    let (_, language) = counted.rev().max_by_key(|(count, _)| *count).filter(|(count, _)| *count > 0)?;
    let mut out = Grid::default();
    let mut sided: Vec<usize> = Vec::new();
    let mut is_headed = false;
    for row in 0..grid.len() {
        out.begin(grid.line(row));
        let is_heading = row < top && is_wordy(&row);
        // Above the headings a key may stand with its value; below them stand clubs.
        let is_key = row < top && !is_headed;
        let mut named = 0;
        for (at, cell) in grid.cells(row).enumerate() {
            let english = if is_heading || is_key { heading(language, cell) } else { None };
            let english = english.filter(|english| {
                is_heading || at == 0 && matches!(english.as_str(), "Date" | "Time" | "Shots" | "Note")
            });
            match english {
                Some(english) => {
                    named += usize::from(is_heading);
                    if is_side(&english) {
                        sided.push(at);
                    }
                    out.push_as(&english, cell);
                }
                None if sided.contains(&at) => out.push(&with_side(language, cell)),
                None => out.push(grid.raw(row, at)),
            }
        }
        is_headed |= named > 1;
    }
    Some(out)
}

/// A row of headings that are all of a language that is known already.
fn is_known(grid: &Grid, row: usize) -> bool {
    let mut measures = 0;
    let known = |cell: &str| {
        let heading = understand(cell);
        measures += usize::from(matches!(heading.word, Some(Word::Measure(_))));
        heading.word.is_some() && heading.beside.is_none()
    };
    grid.cells(row).filter(|cell| !cell.is_empty()).all(known) && measures > 0
}

/// The English heading for a cell: its words together, or the longest runs of them, the others as they are.
fn heading(language: &Words, cell: &str) -> Option<String> {
    if matches!(scan(cell), Cell::Figure(_) | Cell::Missing) || cell.len() > 120 {
        return None;
    }
    let (name, unit) = match cell.find(['(', '[', '（']) {
        Some(at) => cell.split_at(at),
        None => (cell, ""),
    };
    let words: Vec<String> = name
        .split(|c: char| !(c.is_alphanumeric() || c == '°'))
        .filter(|word| !word.is_empty())
        .map(lower)
        .collect();
    if words.len() > MOST_WORDS {
        return None;
    }
    let mut english: Vec<String> = Vec::new();
    let (mut at, mut any) = (0, false);
    while at < words.len() {
        let longest = (1..=words.len() - at)
            .rev()
            .find_map(|count| language.english(&words[at..at + count].concat()).map(|found| (count, found)));
        match longest {
            Some((count, found)) => {
                any = true;
                english.push(found.to_owned());
                at += count;
            }
            None => {
                english.push(words[at].clone());
                at += 1;
            }
        }
    }
    let unit = unit.replace('（', "(").replace('）', ")");
    any.then(|| format!("{} {unit}", english.join(" ")).trim_end().to_owned())
}

/// In lower case, as far as the languages here have capitals: the tables for all of them weigh more than the words.
fn lower(word: &str) -> String {
    let one = |c: char| match c {
        'À'..='Ö' | 'Ø'..='Þ' => char::from_u32(u32::from(c) + 32).unwrap_or(c),
        other => other.to_ascii_lowercase(),
    };
    word.chars().map(one).collect()
}

fn is_side(english: &str) -> bool {
    use session::known::Known;
    matches!(
        understand(english).word,
        Some(Word::Measure(Known::Offline | Known::LaunchDirection | Known::ClubPath | Known::FaceAngle))
    )
}

/// "5 G" and "左5" as "5 L" and "L 5".
fn with_side(language: &Words, cell: &str) -> String {
    let is_letter = |c: char| c.is_alphabetic();
    let (before, after) = (cell.trim_start_matches(is_letter), cell.trim_end_matches(is_letter));
    let lead = &cell[..cell.len() - before.len()];
    let tail = &cell[after.len()..];
    let side = |word: &str| language.side(&lower(word.trim()));
    match (side(lead), side(tail)) {
        (Some(side), _) if !before.is_empty() => format!("{side} {}", before.trim()),
        (_, Some(side)) if !after.is_empty() => format!("{} {side}", after.trim()),
        _ => cell.to_owned(),
    }
}

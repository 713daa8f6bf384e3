//! Shots as people type them: a line for each club, its numbers one behind the other.

use crate::cut::grid::Grid;
use crate::cut::lines::numbered;
use crate::cut::shape::laid::Laid;
use crate::cut::shape::list_line::{Listed, listed, numbers, plain_name, read};
use crate::cut::shape::measure;
use crate::hints::Hints;
use crate::lexicon::heading::understand;
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::word::Word;
use crate::trim::trim;
use session::known::Known;
use session::units::SourceUnit;

/// Longer texts are no typed lists.
const MOST_BYTES: usize = 20_000;

/// A club's shots of one measure.
struct Club<'a> {
    line: u32,
    name: String,
    measure: Option<(Known, Option<SourceUnit>)>,
    listed: Listed<'a>,
}

/// A row for each shot; `None` when the text is no list of that kind.
pub(crate) fn lay_out(text: &str, hints: &Hints) -> Option<Laid> {
    if text.len() > MOST_BYTES {
        return None;
    }
    let mut titles = Vec::new();
    let mut clubs: Vec<Club<'_>> = Vec::new();
    let mut above: Option<(u32, &str)> = None;
    for (line, text) in numbered(text).filter(|(_, text)| !trim(text).is_empty()) {
        let found = listed(text).or_else(|| {
            let (_, name) = above?;
            let shots = numbers(text).filter(|shots| shots.len() > 1)?;
            Some(Listed { name: plain_name(name).trim_end_matches(':'), shots, average: None })
        });
        match found {
            Some(listed) => {
                // The line above was its name, or a title.
                titles.extend(
                    above.take().filter(|(_, name)| plain_name(name).trim_end_matches(':') != listed.name),
                );
                clubs.push(club(line, listed));
            }
            // Behind the first club there are only more clubs.
            None if above.is_some() && !clubs.is_empty() || text.len() > 80 => return None,
            None => {
                titles.extend(above.take());
                // A row of numbers that is no list belongs to a table.
                let is_table = text.contains(['\t', ';', '|']) || !matches!(scan(trim(text)), Cell::Text);
                if is_table {
                    return None;
                }
                above = Some((line, text));
            }
        }
    }
    if above.is_some() || clubs.len() < 2 || !clubs.iter().all(|club| is_name(&club.name)) {
        return None;
    }
    let said = titles.iter().find_map(|(_, text)| measure::in_title(trim(text)));
    if clubs.iter().all(|club| club.measure.is_some()) && said.is_none() {
        return Some(by_measure(&clubs));
    }
    Some(one_measure(&titles, &clubs, said, hints))
}

/// A name of words; what measures can be is no club's.
fn is_name(name: &str) -> bool {
    let heading = understand(name);
    let is_other = matches!(
        heading.word,
        Some(Word::Measure(_) | Word::Number | Word::Count | Word::Round | Word::Time)
    );
    name.chars().any(char::is_alphabetic) && !(is_other && heading.beside.is_none())
}

/// "Old driver carry" is the club and what was measured.
fn club(line: u32, listed: Listed<'_>) -> Club<'_> {
    let heading = understand(listed.name);
    let (name, measure) = match (heading.word, &heading.beside) {
        (Some(Word::Measure(known)), Some(beside)) if fits(known, heading.unit, &listed) => {
            let words = beside.split(' ').count();
            (
                listed.name.split_whitespace().take(words).collect::<Vec<_>>().join(" "),
                Some((known, heading.unit)),
            )
        }
        _ => (listed.name.to_owned(), None),
    };
    Club { line, name, measure, listed }
}

/// Whether most shots can be values of a measure: "High launch" over carries is a club.
fn fits(known: Known, unit: Option<SourceUnit>, listed: &Listed<'_>) -> bool {
    let facts = known.facts();
    let inside = |shot: &&&str| {
        let value = read(shot).map(|(value, own)| {
            own.or(unit).and_then(|unit| unit.convert(value, facts.unit)).unwrap_or(value)
        });
        value.is_some_and(|value| (facts.plausible.low..=facts.plausible.high).contains(&value))
    };
    listed.shots.iter().filter(inside).count() * 2 > listed.shots.len()
}

fn one_measure(
    titles: &[(u32, &str)],
    clubs: &[Club<'_>],
    said: Option<(Known, Option<SourceUnit>)>,
    hints: &Hints,
) -> Laid {
    let read: Vec<(f64, Option<SourceUnit>)> =
        clubs.iter().flat_map(|club| club.listed.shots.iter().filter_map(|shot| read(shot))).collect();
    let unit = read.iter().find_map(|(_, unit)| *unit);
    let mut values: Vec<f64> = read.into_iter().map(|(value, _)| value).collect();
    let single = measure::of(said, hints, unit, &mut values);
    let mut grid = Grid::default();
    for (line, text) in titles.iter().filter(|(_, text)| measure::in_title(trim(text)).is_none()) {
        grid.begin(*line);
        grid.push(trim(text));
    }
    grid.begin(clubs.first().map_or(1, |club| club.line));
    grid.push("Club");
    grid.push(&measure::heading(&single));
    for club in clubs {
        for shot in &club.listed.shots {
            push(&mut grid, club.line, &[&club.name, shot]);
        }
        if let Some(average) = club.listed.average {
            push(&mut grid, club.line, &["Average", average]);
        }
    }
    Laid { grid, single: Some(single) }
}

/// Each club's measures side by side; shots go together by their place.
fn by_measure(clubs: &[Club<'_>]) -> Laid {
    let mut measures: Vec<(Known, Option<SourceUnit>)> = Vec::new();
    let mut names: Vec<&str> = Vec::new();
    for club in clubs {
        if let Some((known, unit)) = club.measure
            && !measures.iter().any(|(other, _)| *other == known)
        {
            measures.push((known, unit));
        }
        if !names.contains(&club.name.as_str()) {
            names.push(&club.name);
        }
    }
    let mut grid = Grid::default();
    grid.begin(clubs.first().map_or(1, |club| club.line));
    grid.push("Club");
    for (known, unit) in &measures {
        let single =
            crate::cut::shape::laid::Single { measure: (*known).into(), unit: *unit, guessed: false };
        grid.push(&measure::heading(&single));
    }
    for name in names {
        let own: Vec<&Club<'_>> = clubs.iter().filter(|club| club.name == name).collect();
        let shots = own.iter().map(|club| club.listed.shots.len()).max().unwrap_or(0);
        for at in 0..shots {
            grid.begin(own.first().map_or(0, |club| club.line));
            grid.push(name);
            for (known, _) in &measures {
                let of = own.iter().find(|club| club.measure.is_some_and(|(other, _)| other == *known));
                grid.push(of.and_then(|club| club.listed.shots.get(at)).copied().unwrap_or_default());
            }
        }
    }
    Laid { grid, single: None }
}

fn push(grid: &mut Grid, line: u32, cells: &[&str]) {
    grid.begin(line);
    cells.iter().for_each(|cell| grid.push(cell));
}

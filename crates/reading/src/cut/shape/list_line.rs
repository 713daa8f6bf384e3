//! One line of a typed list: a name, and numbers behind it.

use crate::lexicon::figure::{Figure, Mark};
use crate::lexicon::heading::{understand, words};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::vocabulary::statistic;
use crate::lexicon::word::Word;
use crate::outcome::Statistic;
use crate::trim::trim;
use session::units::SourceUnit;

/// A name with its shots as they are written.
#[derive(Debug)]
pub(crate) struct Listed<'a> {
    pub(crate) name: &'a str,
    pub(crate) shots: Vec<&'a str>,
    /// An average at the end of the line.
    pub(crate) average: Option<&'a str>,
}

/// A line of a name and at least two numbers.
pub(crate) fn listed(line: &str) -> Option<Listed<'_>> {
    let (name, rest) = named(line)?;
    let (rest, average) = without_average(rest);
    let shots = numbers(rest).filter(|shots| shots.len() > 1)?;
    Some(Listed { name, shots, average })
}

/// The name before a colon, an equals sign, or a dash between spaces.
fn named(line: &str) -> Option<(&str, &str)> {
    let cut = |mark: &str| line.split_once(mark);
    let (name, rest) = cut(":").or_else(|| cut("=")).or_else(|| cut(" - ")).or_else(|| cut(" – "))?;
    let name = plain_name(name);
    let fits = !name.is_empty() && name.len() <= 60 && matches!(scan(name), Cell::Text) && !is_key(name);
    fits.then_some((name, rest))
}

/// What stands before other things than shots: a measure alone, a date, a number of shots.
fn is_key(name: &str) -> bool {
    let heading = understand(name);
    let other = matches!(
        heading.word,
        Some(
            Word::Measure(_)
                | Word::Time
                | Word::Count
                | Word::Number
                | Word::Round
                | Word::Statistic
                | Word::Remark
        )
    );
    other && heading.beside.is_none() || heading.statistic.is_some()
}

/// Without a bullet before it and without the number of shots in brackets behind it.
pub(crate) fn plain_name(name: &str) -> &str {
    let name = trim(trim(name).trim_start_matches(['-', '*', '•', '–', '·', '#', '>']));
    let Some((before, inside)) = name.strip_suffix(')').and_then(|n| n.rsplit_once('(')) else { return name };
    let counts = words(inside).iter().any(|w| w.bytes().all(|b| b.is_ascii_digit()))
        && words(inside).iter().any(|w| matches!(understand(w).word, Some(Word::Count | Word::Number)));
    if counts { trim(before) } else { name }
}

/// The list without an average that is named at its end: "248, 252 avg 250".
fn without_average(rest: &str) -> (&str, Option<&str>) {
    let is_mean = |word: &str| {
        statistic(&words(word).concat()) == Some(Statistic::Mean) && !word.bytes().any(|b| b.is_ascii_digit())
    };
    let word = rest.split_whitespace().find(|word| is_mean(word));
    let found = word.and_then(|word| rest.find(word).map(|at| (at, word.len())));
    let Some((at, length)) = found else { return (rest, None) };
    let figure = trim(rest[at + length..].trim_matches([':', '=', ' ']));
    let is_figure = matches!(scan(figure), Cell::Figure(_));
    (rest[..at].trim_end_matches([',', ';', '(', ' ']), Some(figure).filter(|_| is_figure))
}

/// The numbers of a list, or `None` when something else stands among them.
pub(crate) fn numbers(list: &str) -> Option<Vec<&str>> {
    let list = trim(list).trim_end_matches(['.', ',', ';']);
    let mark = if list.contains(';') {
        ';'
    } else if list.contains('/') && !list.contains("km/h") && !list.contains("m/s") {
        '/'
    } else if list.contains(", ") || list.matches(',').count() > 1 && !list.contains(' ') {
        ','
    } else {
        ' '
    };
    let mut found = Vec::new();
    for piece in list.split(mark).map(trim).filter(|piece| !piece.is_empty()) {
        for piece in around_and(piece) {
            found.push(Some(piece).filter(|piece| matches!(scan(piece), Cell::Figure(_)))?);
        }
    }
    (!found.is_empty()).then_some(found)
}

/// "239 and 255" in two.
fn around_and(piece: &str) -> impl Iterator<Item = &str> {
    let cut = [" and ", " & ", " und ", " et ", " y ", " e ", " och ", " en "]
        .into_iter()
        .find_map(|and| piece.split_once(and));
    let (one, other) = cut.unwrap_or((piece, ""));
    let other = ["and ", "und ", "et ", "y "]
        .into_iter()
        .find_map(|and| one.strip_prefix(and))
        .map_or(other, |_| other);
    let one = ["and ", "und ", "et ", "y "].into_iter().find_map(|and| one.strip_prefix(and)).unwrap_or(one);
    [trim(one), trim(other)].into_iter().filter(|piece| !piece.is_empty())
}

/// The unit behind a number, and its value under the mark it most likely has.
pub(crate) fn read(shot: &str) -> Option<(f64, Option<SourceUnit>)> {
    let Cell::Figure(figure) = scan(shot) else { return None };
    Some((value(&figure)?, figure.unit))
}

fn value(figure: &Figure<'_>) -> Option<f64> {
    figure.value(Mark::Point).or_else(|| figure.value(Mark::Comma)).map(|value| value.value)
}

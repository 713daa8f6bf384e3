//! Sentences with figures in them: never taken for a table, but found for a form that opens filled in.

use crate::cut::lines::numbered;
use crate::form::{AveragesRow, Form, ListRow};
use crate::lexicon::figure::Mark;
use crate::lexicon::heading::{understand, words};
use crate::lexicon::number::{Cell, scan};
use crate::lexicon::vocabulary::lists;
use crate::lexicon::word::Word;
use crate::trim::trim;
use session::few::Map;
use session::known::Known;
use session::measure::MeasureId;
use session::units::SourceUnit;

/// Longer texts are no sentences about a session.
const MOST_BYTES: usize = 2_000;
/// Fewer words than this are a title or a row.
const FEWEST_WORDS: usize = 7;
/// What a club's name ends with.
const CLUBS: &str = "driver wood iron hybrid wedge putter club shaft head";
/// What stands before a club's name.
const BEFORE: &str = "my the a an our his her with and this that";

/// What the text holds, when it is nothing but sentences.
pub(crate) fn form(text: &str) -> Option<Form> {
    if text.len() > MOST_BYTES || !is_prose(text) {
        return None;
    }
    let tokens: Vec<&str> = text.split_whitespace().collect();
    let clubs = clubs(&tokens);
    let figures: Vec<(usize, f64)> =
        tokens.iter().enumerate().filter_map(|(at, token)| Some((at, number(token)?))).collect();
    let (&(first_club, ..), &(first_figure, _)) = (clubs.first()?, figures.first()?);
    let is_before = first_club < first_figure;
    let of_club = |at: usize| {
        let found = if is_before {
            clubs.iter().rposition(|(start, ..)| *start < at)
        } else {
            clubs.iter().position(|(start, ..)| *start > at)
        };
        found.map(|index| clubs[index].1.clone())
    };
    let mut rows: Vec<(String, Vec<(usize, f64)>)> = Vec::new();
    for (at, value) in figures {
        let Some(name) = of_club(at) else { continue };
        match rows.iter_mut().find(|(there, _)| *there == name) {
            Some((_, own)) => own.push((at, value)),
            None => rows.push((name, vec![(at, value)])),
        }
    }
    let speaks_of_averages = tokens
        .iter()
        .any(|token| words(token).iter().any(|w| lists("average averages averaged averaging mean", w)));
    if speaks_of_averages {
        let rows: Vec<AveragesRow> =
            rows.into_iter().map(|(name, own)| averages(name, &own, &tokens)).collect();
        return rows.iter().any(|row| !row.values.is_empty()).then_some(Form::Averages(rows));
    }
    let rows: Vec<ListRow> = rows
        .into_iter()
        .map(|(name, own)| ListRow { name, shots: own.into_iter().map(|(_, value)| value).collect() })
        .collect();
    rows.iter().any(|row| row.shots.len() > 1).then_some(Form::List(rows))
}

/// Every line is a sentence or more: words for the most part, closed as sentences are.
fn is_prose(text: &str) -> bool {
    let lines = || numbered(text).map(|(_, line)| trim(line)).filter(|line| !line.is_empty());
    let is_sentence = |line: &str| {
        let tokens: Vec<&str> = line.split_whitespace().collect();
        let plain = tokens.iter().filter(|token| number(token).is_none()).count();
        tokens.len() >= FEWEST_WORDS && plain * 2 > tokens.len() && line.ends_with(['.', '!', '?'])
    };
    lines().next().is_some() && lines().all(is_sentence) && !text.contains(['\t', ';', '|', ':', '<', '{'])
}

/// The number of a word, a comma or a full stop behind it or not.
fn number(token: &str) -> Option<f64> {
    match scan(token.trim_end_matches([',', '.', '!', '?', ';'])) {
        Cell::Figure(figure) if figure.side.is_none() => figure.value(Mark::Point).map(|value| value.value),
        _ => None,
    }
}

/// Where clubs are named, and how: the words between "my" or "the" and "driver".
fn clubs(tokens: &[&str]) -> Vec<(usize, String)> {
    let word = |at: usize| words(tokens[at]).concat();
    let mut found = Vec::new();
    for at in 0..tokens.len() {
        if !lists(CLUBS, &word(at)) {
            continue;
        }
        let from = (at.saturating_sub(3)..at).rev().find(|&before| lists(BEFORE, &word(before)));
        let start = from.map_or(at, |before| before + 1);
        let name: Vec<&str> =
            tokens[start..=at].iter().map(|t| t.trim_matches([',', '.', '!', '?'])).collect();
        let is_plain =
            tokens[start..at].iter().all(|token| number(token).is_none() && !token.ends_with([',', '.']));
        if is_plain {
            found.push((start, name.join(" ")));
        }
    }
    found
}

/// "248 carry and 2800 spin over 12 shots".
fn averages(name: String, own: &[(usize, f64)], tokens: &[&str]) -> AveragesRow {
    let mut row = AveragesRow { name, n: None, values: Map::default() };
    let carries = tokens.iter().any(|token| words(token).iter().any(|w| lists("carry carries carried", w)));
    for &(at, value) in own {
        let behind = |count: usize| tokens.get(at + 1..at + 1 + count).map(|t| words(&t.join(" ")).concat());
        let word = (1..=2).rev().find_map(|count| understand(&behind(count)?).word);
        let id = match word {
            Some(Word::Count | Word::Number) => {
                row.n = session::digits::rounded(value, 0).parse().ok();
                continue;
            }
            Some(Word::Measure(known)) => MeasureId::from(known),
            _ => match behind(1).and_then(|unit| SourceUnit::from_text(&unit)) {
                Some(SourceUnit::Yard | SourceUnit::Meter) if carries => Known::Carry.into(),
                Some(SourceUnit::RevolutionPerMinute) => Known::SpinRate.into(),
                _ => continue,
            },
        };
        row.values.entry(id, || value);
    }
    row
}

#[cfg(test)]
mod tests {
    use super::form;
    use crate::form::Form;

    #[test]
    fn a_table_and_a_list_are_no_sentences() {
        for text in [
            "Old driver: 248, 252, 239.",
            "Club,Carry\nA,250\n",
            "I hit it well today with both of them.",
            "",
        ] {
            assert_eq!(form(text), None, "{text}");
        }
    }

    #[test]
    fn the_clubs_take_the_figures_on_their_side() {
        let before = form("With my old wedge I hit 98, 101 and 99 on a calm day.");
        let after = form("Today I hit 98, 101 and 99 with my old wedge.");
        assert_eq!(before, after);
        assert!(
            matches!(before, Some(Form::List(rows)) if rows[0].name == "old wedge" && rows[0].shots.len() == 3)
        );
    }
}

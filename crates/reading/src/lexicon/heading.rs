//! One heading: the words of the trade in it, its unit, and which figure of a summary it names.

pub(crate) use crate::lexicon::vocabulary::statistic;
use crate::lexicon::vocabulary::{all_words, lists, look_up};
use crate::lexicon::word::Word;
use crate::outcome::Statistic;
use crate::trim::trim;
use session::known::Known;
use session::units::SourceUnit;

/// A heading as understood.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Heading {
    /// What it stands for, `None` for words that are not the trade's.
    pub(crate) word: Option<Word>,
    /// The unit it gives.
    pub(crate) unit: Option<SourceUnit>,
    /// A unit that is none of ours, as written.
    pub(crate) other_unit: Option<String>,
    /// The figure of a summary it names.
    pub(crate) statistic: Option<Statistic>,
    /// Words beside those understood, such as a build's name in "Driver A carry".
    pub(crate) beside: Option<String>,
    /// The heading without unit and figure.
    pub(crate) plain: String,
}

/// Longest heading that is looked at; longer ones are prose.
const LONGEST: usize = 80;

/// Lower-case words of a text; camel case, underscores and points set words apart.
pub(crate) fn words(text: &str) -> Vec<String> {
    let mut words = Vec::new();
    let mut word = String::new();
    let mut before = ' ';
    // A heading or label says what it says early on.
    for c in text.chars().take(200) {
        let inside = c.is_alphanumeric() || matches!(c, '#' | '°' | '%');
        if (!inside || (before.is_ascii_lowercase() && c.is_ascii_uppercase())) && !word.is_empty() {
            words.push(std::mem::take(&mut word));
        }
        if inside {
            word.push(c.to_ascii_lowercase());
        }
        before = c;
    }
    if !word.is_empty() {
        words.push(word);
    }
    words
}

/// Understands one heading.
pub(crate) fn understand(text: &str) -> Heading {
    let text = trim(text);
    if text.is_empty() || text.len() > LONGEST {
        return Heading::default();
    }
    let mut heading = Heading::default();
    let outside = take_brackets(text, &mut heading);
    let mut all = words(&outside);
    if all.is_empty() {
        return heading;
    }
    let whole = look_up(&all.concat());
    // "Spin rpm" is spin with its unit rather than a word of its own; "rpm" alone stays a word.
    let with_unit = all.clone();
    take_trailing_unit(&mut all, &mut heading);
    heading.word = look_up(&all.concat());
    if heading.word.is_none() && whole.is_some() {
        all = with_unit;
        heading.word = whole;
    }
    if heading.word.is_none() {
        take_statistic(&mut all, &mut heading);
        if heading.statistic.is_some() {
            take_trailing_unit(&mut all, &mut heading);
        }
        heading.word = look_up(&all.concat());
        if heading.word.is_none() && all.is_empty() {
            heading.word = Some(Word::Statistic);
        }
    }
    heading.plain = all.join(" ");
    if heading.word.is_none() {
        take_part(&all, &mut heading);
    }
    heading
}

/// Reads brackets for units, figures and side notes; gives back what stands outside them.
fn take_brackets(text: &str, heading: &mut Heading) -> String {
    let mut outside = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(open) = rest.find(['(', '[', '{']) {
        let Some(length) = rest[open..].find([')', ']', '}']) else { break };
        let inside = trim(&rest[open + 1..open + length]);
        outside.push_str(&rest[..open]);
        outside.push(' ');
        rest = &rest[open + length + 1..];
        read_bracket(inside, heading, &mut outside);
    }
    outside.push_str(rest);
    outside
}

fn read_bracket(inside: &str, heading: &mut Heading, outside: &mut String) {
    if let Some(unit) = SourceUnit::from_text(inside) {
        heading.unit = heading.unit.or(Some(unit));
        return;
    }
    let inner = words(inside);
    // "(L/R)", "(L-/R+)", "(left -, right +)": says how the side is written, which the values do too.
    if inner.iter().all(|w| lists("l r left right up down heel toe minus plus in out", w)) {
        return;
    }
    if let Some(found) = statistic(&inner.concat()) {
        heading.statistic = heading.statistic.or(Some(found));
        return;
    }
    // "(yd, L/R)" and "(total, mph)".
    let unit = inside.split([',', ';', ' ']).find_map(SourceUnit::from_text);
    if unit.is_some() {
        heading.unit = heading.unit.or(unit);
    } else if heading.other_unit.is_none() {
        heading.other_unit = Some(inside.to_owned());
    }
    if unit.is_none() && look_up(&words(outside).concat()).is_none() {
        outside.push_str(inside);
        outside.push(' ');
    }
}

/// Takes a unit off the end of a heading that has other words: "Carry yds", "Ball speed km h".
fn take_trailing_unit(all: &mut Vec<String>, heading: &mut Heading) {
    for count in [2, 1] {
        let Some(start) = all.len().checked_sub(count).filter(|&s| s > 0) else { continue };
        if let Some(unit) = SourceUnit::from_text(&all[start..].concat()) {
            heading.unit = heading.unit.or(Some(unit));
            all.truncate(start);
            return;
        }
    }
}

/// Takes the words for a figure off either end: "Avg carry", "Carry std dev".
fn take_statistic(all: &mut Vec<String>, heading: &mut Heading) {
    for count in [2, 1] {
        if all.len() < count {
            continue;
        }
        let tail = all.len() - count;
        if let Some(found) = statistic(&all[tail..].concat()) {
            heading.statistic = heading.statistic.or(Some(found));
            all.truncate(tail);
            return;
        }
        if let Some(found) = statistic(&all[..count].concat()) {
            heading.statistic = heading.statistic.or(Some(found));
            all.drain(..count);
            return;
        }
    }
}

/// Finds a measure in a part of the heading: the longest run of words at either end.
fn take_part(all: &[String], heading: &mut Heading) {
    for count in (1..all.len()).rev() {
        let tail = all.len() - count;
        let ends = [(&all[tail..], &all[..tail]), (&all[..count], &all[count..])];
        let found = ends.into_iter().find_map(|(part, rest)| {
            // Letters stand for a measure only when they stand alone, and beside a word a single
            // letter is rather a build's: "Driver B speed".
            let lettered = part.iter().any(|w| w.chars().count() == 1);
            let word = part.concat();
            match look_up(&word).filter(|_| word.len() > 2 && !lettered)? {
                measure @ Word::Measure(_) => Some((measure, rest.join(" "))),
                _ => None,
            }
        });
        if let Some((word, beside)) = found {
            heading.word = Some(word);
            heading.beside = Some(beside);
            return;
        }
    }
}

/// The measure whose name looks most like a heading that is none: one or two letters off.
pub(crate) fn nearest(text: &str) -> Option<Known> {
    let word = words(text).concat();
    if word.len() < 4 || word.len() > 24 {
        return None;
    }
    let limit = if word.len() < 7 { 1 } else { 2 };
    let mut best: Option<(usize, Known)> = None;
    let mut consider = |name: &str, known: Known| {
        // The first letter is seldom the wrong one, and "weight" is no misspelt "height".
        let same_start = name.as_bytes().first() == word.as_bytes().first();
        if same_start && name.len() >= 4 && name.len().abs_diff(word.len()) <= limit {
            let distance = edits(name.as_bytes(), word.as_bytes());
            if distance <= limit && best.is_none_or(|(least, _)| distance < least) {
                best = Some((distance, known));
            }
        }
    };
    for known in Known::ALL {
        let name: String =
            known.facts().name.chars().filter(|c| *c != ' ').map(|c| c.to_ascii_lowercase()).collect();
        consider(&name, known);
    }
    for (name, target) in all_words() {
        if let Word::Measure(known) = target {
            consider(name, known);
        }
    }
    best.map(|(_, known)| known)
}

/// Number of single-letter changes between two words.
///
/// Source: V. I. Levenshtein, Soviet Physics Doklady 10 (1966) 707–710.
pub(crate) fn edits(one: &[u8], other: &[u8]) -> usize {
    let mut above: Vec<usize> = (0..=other.len()).collect();
    for (i, a) in one.iter().enumerate() {
        let mut corner = above[0];
        above[0] = i + 1;
        for (j, b) in other.iter().enumerate() {
            let replaced = corner + usize::from(a != b);
            corner = above[j + 1];
            above[j + 1] = replaced.min(above[j] + 1).min(corner + 1);
        }
    }
    above.last().copied().unwrap_or(0)
}

/// An id for a measure of the golfer's own: letters and digits of its heading in lower case.
pub(crate) fn custom_id(heading: &str) -> String {
    let mut id = String::new();
    for word in heading.split(|c: char| !c.is_alphanumeric()).filter(|w| !w.is_empty()).take(12) {
        if !id.is_empty() {
            id.push('_');
        }
        id.extend(word.chars().take(40).map(|c| c.to_ascii_lowercase()));
    }
    id
}

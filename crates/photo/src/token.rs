//! One text of a photo with its place; a box over several columns is cut where its numbers stand apart.

use crate::number::number;
use crate::quad::Quad;
use crate::recognize::Line;

/// A text that was read.
#[derive(Debug, Clone)]
pub(crate) struct Token {
    pub(crate) line: Line,
    pub(crate) quad: Quad,
    /// Cut out of a longer box: it is read again by itself.
    pub(crate) is_cut: bool,
}

/// One word of a text: what it is, and from where to where, as shares of the width.
#[derive(Debug, Clone)]
pub(crate) struct Word {
    pub(crate) text: String,
    pub(crate) from: f32,
    pub(crate) to: f32,
    sure: f32,
}

impl Token {
    pub(crate) fn text(&self) -> &str {
        &self.line.text
    }

    pub(crate) fn is_number(&self) -> bool {
        number(self.text()).is_some()
    }

    /// Its words, set apart by spaces, and by gaps that no space was read in.
    pub(crate) fn words(&self, by_gaps: bool) -> Vec<Word> {
        let characters: Vec<(char, f32)> =
            self.line.text.chars().zip(self.line.places.iter().copied()).collect();
        let wide = if by_gaps { wide_gap(&characters) } else { f32::MAX };
        let half = match (characters.first(), characters.last()) {
            (Some(first), Some(last)) if characters.len() > 1 => {
                0.5 * (last.1 - first.1) / (characters.len() - 1) as f32
            }
            _ => 0.5,
        };
        const MARGIN: f32 = 1.4;
        let mut words: Vec<Word> = Vec::new();
        let mut before: Option<f32> = None;
        for (character, place) in characters {
            if character == ' ' {
                before = None;
                continue;
            }
            let goes_on = before.is_some_and(|before| place - before <= wide);
            before = (character != ')').then_some(place);
            match words.last_mut() {
                Some(word) if goes_on => {
                    word.text.push(character);
                    word.to = (place + MARGIN * half).min(1.0);
                }
                _ => words.push(Word {
                    text: character.into(),
                    from: (place - MARGIN * half).max(0.0),
                    to: (place + MARGIN * half).min(1.0),
                    sure: self.line.sure,
                }),
            }
        }
        words
    }

    /// The numbers of a box that holds several; itself when it holds one, or words.
    pub(crate) fn split(self) -> Vec<Self> {
        let words = joined(self.words(true));
        let is_word = |it: &Word| {
            it.text.chars().take_while(|it| it.is_ascii_alphabetic() || "(/".contains(*it)).count() > 1
        };
        let numbers = words.iter().filter(|it| number(&it.text).is_some()).count();
        if numbers < 2 || words.iter().any(is_word) {
            return vec![self];
        }
        let part = |word: Word| {
            let quad = self.quad.part(word.from, word.to);
            let places = (0..word.text.chars().count()).map(|_| 0.5).collect();
            Self { line: Line { text: word.text, sure: word.sure, places }, quad, is_cut: true }
        };
        words.into_iter().map(part).collect()
    }
}

/// What is wider than this, from one character to the next, is no space between two digits of one number.
fn wide_gap(characters: &[(char, f32)]) -> f32 {
    const WIDE: f32 = 2.4;
    const FEWEST: usize = 5;
    let mut gaps: Vec<f32> = characters.windows(2).map(|it| it[1].1 - it[0].1).collect();
    gaps.sort_by(f32::total_cmp);
    if gaps.len() < FEWEST { f32::MAX } else { WIDE * gaps[gaps.len() / 2] }
}

/// The letter of a side goes with its number.
fn joined(words: Vec<Word>) -> Vec<Word> {
    let is_side = |it: &Word| it.text == "L" || it.text == "R";
    let has_side = |it: &Word| it.text.starts_with(['L', 'R']) || it.text.ends_with(['L', 'R']);
    let has_digit = |it: &Word| it.text.contains(|it: char| it.is_ascii_digit());
    let is_before = words.first().is_some_and(is_side);
    let mut joined: Vec<Word> = Vec::new();
    for word in words {
        let fits = joined.last().is_some_and(|last| {
            if is_before {
                is_side(last) && has_digit(&word)
            } else {
                is_side(&word) && has_digit(last) && !has_side(last)
            }
        });
        match joined.last_mut() {
            Some(last) if fits => {
                last.text = format!("{} {}", last.text, word.text);
                last.to = word.to;
            }
            _ => joined.push(word),
        }
    }
    joined
}

#[cfg(test)]
mod tests {
    use super::*;

    fn token(text: &str) -> Token {
        let count = text.chars().count() as f32;
        let places = (0..text.chars().count()).map(|at| (at as f32 + 0.5) / count).collect();
        let quad = Quad([[0.0, 0.0], [100.0, 0.0], [100.0, 10.0], [0.0, 10.0]]);
        Token { line: Line { text: text.into(), sure: 1.0, places }, quad, is_cut: false }
    }

    #[test]
    fn a_box_over_several_columns_is_cut() {
        let texts =
            |text: &str| token(text).split().iter().map(|it| it.text().to_owned()).collect::<Vec<_>>();
        assert_eq!(texts("231.4 12.5 L 98"), ["231.4", "12.5 L", "98"]);
        assert_eq!(texts("L 4.2 R 0.8"), ["L 4.2", "R 0.8"]);
        assert_eq!(texts("L 4.2"), ["L 4.2"]);
        assert_eq!(texts("7 iron A"), ["7 iron A"]);
        assert_eq!(texts("Ball speed (mph)"), ["Ball speed (mph)"]);
        let cut = token("231.4 12.5").split();
        assert!(cut[0].quad.right()[0] < cut[1].quad.left()[0] && cut[1].is_cut);
    }

    #[test]
    fn a_gap_cuts_where_no_space_was_read() {
        let mut wide = token("231.412.5");
        for (at, place) in wide.line.places.iter_mut().enumerate() {
            *place = if at < 5 { 0.05 + 0.06 * at as f32 } else { 0.66 + 0.06 * at as f32 - 0.3 };
        }
        let texts: Vec<_> = wide.split().iter().map(|it| it.text().to_owned()).collect();
        assert_eq!(texts, ["231.4", "12.5"]);
    }
}

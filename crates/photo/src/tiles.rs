//! Big numbers, each under a small label: averages as a screen shows them.

use crate::lines::median;
use crate::quad::{length, less, times};
use crate::token::Token;

/// A label is at most so high, for its number.
const SMALL: f32 = 0.72;
/// And no farther above it, in heights of the number.
const FAR: f32 = 1.9;
/// This share of the numbers have one.
const ENOUGH: f32 = 0.7;

/// A number with what stands above and behind it.
#[derive(Debug, PartialEq)]
pub(crate) struct Tile {
    pub(crate) number: usize,
    /// Empty when none was found.
    pub(crate) label: String,
    /// Empty when it stands with the number, or in the label.
    pub(crate) unit: String,
}

/// The tiles of a screen, and the lines beside them; nothing when it is no such screen.
pub(crate) fn tiles(tokens: &[Token]) -> Option<(Vec<Tile>, Vec<String>)> {
    let heights: Vec<f32> = tokens.iter().filter(|it| it.is_number()).map(|it| it.quad.height()).collect();
    let tallest = heights.iter().copied().fold(0.0, f32::max);
    // What is as large and has a digit is a number that was not read as one.
    let looks_like_one = |it: &Token| {
        let letters = it.text().chars().filter(char::is_ascii_alphabetic).count();
        letters < 3 && it.text().contains(|it: char| it.is_ascii_digit())
    };
    let is_big = |it: &Token| (it.is_number() || looks_like_one(it)) && it.quad.height() > 0.6 * tallest;
    let big: Vec<usize> = (0..tokens.len()).filter(|at| is_big(&tokens[*at])).collect();
    let height = median(&big.iter().map(|at| tokens[*at].quad.height()).collect::<Vec<_>>());
    let mut used: Vec<usize> = big.clone();
    let mut tiles = Vec::new();
    let mut labeled = 0;
    for at in &big {
        let number = &tokens[*at];
        let seen = |other: &Token| seen_from(number, other, height);
        let is_label = |it: &usize| {
            let other = &tokens[*it];
            let (left, right, y) = seen(other);
            let overlaps = left < number.quad.width() / height + 0.3 && right > -0.3;
            let is_word = other.text().contains(|it: char| it.is_alphabetic());
            is_word && other.quad.height() < SMALL * height && overlaps && (-FAR..-0.3).contains(&y)
        };
        let mut words: Vec<usize> =
            (0..tokens.len()).filter(|it| !used.contains(it) && is_label(it)).collect();
        // Of several lines the nearest is the label.
        let nearest = words.iter().map(|it| seen(&tokens[*it]).2).fold(f32::MIN, f32::max);
        words.retain(|it| seen(&tokens[*it]).2 > nearest - 0.25);
        words.sort_by(|one, other| seen(&tokens[*one]).0.total_cmp(&seen(&tokens[*other]).0));
        labeled += usize::from(!words.is_empty());
        let is_behind = |it: &usize| {
            let (left, _, y) = seen(&tokens[*it]);
            let end = number.quad.width() / height;
            tokens[*it].text().chars().count() <= 4
                && (-0.6..0.6).contains(&y)
                && (end - 0.3..end + 1.0).contains(&left)
        };
        let unit = (0..tokens.len()).find(|it| !used.contains(it) && !words.contains(it) && is_behind(it));
        used.extend(words.iter().copied().chain(unit));
        let label = words.iter().map(|it| tokens[*it].text()).collect::<Vec<_>>().join(" ");
        tiles.push(Tile {
            number: *at,
            label,
            unit: unit.map_or_else(String::new, |it| tokens[it].text().into()),
        });
    }
    const FEWEST: usize = 2;
    let is_screen = labeled >= FEWEST && labeled as f32 >= ENOUGH * big.len() as f32;
    let mut beside: Vec<usize> = (0..tokens.len()).filter(|at| !used.contains(at)).collect();
    beside.sort_by(|one, other| tokens[*one].quad.center()[1].total_cmp(&tokens[*other].quad.center()[1]));
    is_screen.then(|| (tiles, beside.iter().map(|at| tokens[*at].text().to_owned()).collect()))
}

/// From where to where another text reaches, from a number's left, and how far below its middle: in heights of a number.
fn seen_from(number: &Token, other: &Token, height: f32) -> (f32, f32, f32) {
    let along = times(number.quad.across(), 1.0 / length(number.quad.across()).max(1e-6));
    let along_of = |point: [f32; 2]| {
        let from = less(point, number.quad.left());
        (from[0] * along[0] + from[1] * along[1]) / height
    };
    let from = less(other.quad.center(), number.quad.center());
    let down = (from[1] * along[0] - from[0] * along[1]) / height;
    (along_of(other.quad.left()), along_of(other.quad.right()), down)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quad::Quad;
    use crate::recognize::Line;

    fn token(x: f32, y: f32, height: f32, text: &str) -> Token {
        let to = x + 0.5 * height * text.len() as f32;
        let quad = Quad([[x, y], [to, y], [to, y + height], [x, y + height]]);
        Token {
            line: Line { text: text.into(), sure: 1.0, places: vec![0.5; text.len()] },
            quad,
            is_cut: false,
        }
    }

    #[test]
    fn labels_go_with_the_numbers_below_them() {
        let screen = [
            token(0.0, 0.0, 30.0, "7 iron A, average of 9 shots"),
            token(0.0, 60.0, 20.0, "Carry"),
            token(0.0, 90.0, 50.0, "164.2"),
            token(130.0, 112.0, 20.0, "yd"),
            token(300.0, 60.0, 20.0, "Spin rate (rpm)"),
            token(300.0, 90.0, 50.0, "6120"),
        ];
        let (tiles, beside) = tiles(&screen).unwrap();
        let said: Vec<_> = tiles.iter().map(|it| (it.label.as_str(), it.unit.as_str())).collect();
        assert_eq!(said, [("Carry", "yd"), ("Spin rate (rpm)", "")]);
        assert_eq!(beside, ["7 iron A, average of 9 shots"]);
    }

    #[test]
    fn a_table_with_one_row_is_none() {
        let row = [
            token(0.0, 0.0, 18.0, "Carry"),
            token(0.0, 30.0, 20.0, "164.2"),
            token(200.0, 0.0, 18.0, "Spin"),
            token(200.0, 30.0, 20.0, "6120"),
        ];
        assert!(tiles(&row).is_none());
    }
}

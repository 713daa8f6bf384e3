//! Big numbers, each under a small label: averages as a screen shows them.

use crate::lines::median;
use crate::quad::{Point, Quad, length, less, sum, times};
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
    /// The number's text, where one was found.
    pub(crate) number: Option<usize>,
    /// Where it stands, or should.
    pub(crate) quad: Quad,
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
    // The first text of each label, with its number.
    let mut labels: Vec<(usize, usize)> = Vec::new();
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
        labels.extend(words.first().map(|it| (*it, *at)));
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
            number: Some(*at),
            quad: number.quad,
            label,
            unit: unit.map_or_else(String::new, |it| tokens[it].text().into()),
        });
    }
    const FEWEST: usize = 2;
    let is_screen = labeled >= FEWEST && labeled as f32 >= ENOUGH * big.len() as f32;
    for (label, found) in is_screen.then(|| overlooked(tokens, &used, &labels)).into_iter().flatten() {
        let own: Vec<usize> = [label].into_iter().chain(found.number).collect();
        // Two labels may look for theirs at one place: the first one has it.
        if own.iter().any(|it| used.contains(it)) {
            continue;
        }
        used.extend(own);
        tiles.push(found);
    }
    let mut beside: Vec<usize> = (0..tokens.len()).filter(|at| !used.contains(at)).collect();
    beside.sort_by(|one, other| tokens[*one].quad.center()[1].total_cmp(&tokens[*other].quad.center()[1]));
    is_screen.then(|| (tiles, beside.iter().map(|at| tokens[*at].text().to_owned()).collect()))
}

/// Labels without a number below them, where others have theirs: one was overlooked, or read as a word.
fn overlooked(tokens: &[Token], used: &[usize], labels: &[(usize, usize)]) -> Vec<(usize, Tile)> {
    const ALIKE: std::ops::Range<f32> = 0.7..1.4;
    let of = |what: &dyn Fn(&Quad, &Quad) -> f32| {
        median(&labels.iter().map(|it| what(&tokens[it.0].quad, &tokens[it.1].quad)).collect::<Vec<_>>())
    };
    let usual = of(&|label, _| label.height());
    // From a label's left to its number's, straight down, and the number's size: in heights of a label.
    let (down, tall) =
        (of(&|label, number| seen_below(label, number)), of(&|label, it| it.height() / label.height()));
    let wide = of(&|label, number| number.width() / label.height());
    let right = of(&|label, number| along(label, number.left()));
    let is_label = |at: &usize| {
        let it = &tokens[*at];
        let letters = it.text().chars().filter(|it| it.is_alphabetic()).count();
        !used.contains(at) && letters > 2 && ALIKE.contains(&(it.quad.height() / usual.max(1e-6)))
    };
    let tile = |at: usize| {
        let label = &tokens[at].quad;
        let (across, up) = (unit(label.across()), unit(label.down()));
        let size = label.height();
        let left = sum(label.left(), sum(times(across, right * size), times(up, down * size)));
        let (half, wide) = (times(up, 0.5 * tall * size), times(across, wide * size));
        let place = Quad([
            less(left, half),
            less(sum(left, wide), half),
            sum(sum(left, wide), half),
            sum(left, half),
        ]);
        let is_there = |it: &Token| {
            let away = less(it.quad.center(), place.center());
            length(away) < 0.5 * (place.width() + it.quad.width()) && away[1].abs() < 0.5 * place.height()
        };
        let there: Vec<usize> = (0..tokens.len()).filter(|it| is_there(&tokens[*it])).collect();
        let is_tall = |it: &usize| tokens[*it].quad.height() > 0.6 * place.height();
        // Another line of a label that has its number stands over that label.
        if there.iter().any(|it| used.contains(it) || !is_tall(it)) {
            return None;
        }
        let quad = there.first().map_or(place, |it| tokens[*it].quad);
        Some((
            at,
            Tile {
                number: there.first().copied(),
                quad,
                label: tokens[at].text().into(),
                unit: String::new(),
            },
        ))
    };
    (0..tokens.len()).filter(is_label).filter_map(tile).collect()
}

fn unit(direction: Point) -> Point {
    times(direction, 1.0 / length(direction).max(1e-6))
}

/// How far a point lies from a text's left, along it and in its heights.
fn along(text: &Quad, point: Point) -> f32 {
    let (direction, from) = (unit(text.across()), less(point, text.left()));
    (from[0] * direction[0] + from[1] * direction[1]) / text.height().max(1e-6)
}

/// How far a number stands below a label, middle to middle, in heights of the label.
fn seen_below(label: &Quad, number: &Quad) -> f32 {
    let (direction, from) = (unit(label.down()), less(number.center(), label.center()));
    (from[0] * direction[0] + from[1] * direction[1]) / label.height().max(1e-6)
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
    fn a_label_without_a_number_has_its_place_below() {
        let mut screen = Vec::new();
        for place in 0..4_u8 {
            let x = 300.0 * f32::from(place);
            screen.push(token(x, 60.0, 20.0, "Carry (yd)"));
            if place != 2 {
                screen.push(token(x, 90.0, 50.0, "164.2"));
            }
        }
        screen.push(token(0.0, 0.0, 40.0, "7 iron A, average of 9 shots"));
        let (found, beside) = tiles(&screen).unwrap();
        let lost: Vec<&Tile> = found.iter().filter(|it| it.number.is_none()).collect();
        assert_eq!((found.len(), lost.len(), beside.len()), (4, 1, 1));
        let center = lost[0].quad.center();
        assert!((600.0..725.0).contains(&center[0]) && (110.0..120.0).contains(&center[1]), "{center:?}");
        // The same place with a word in it: it is read again as digits.
        screen.push(token(600.0, 90.0, 50.0, "LOG"));
        let (found, _) = tiles(&screen).unwrap();
        assert!(found.iter().any(|it| it.number.is_some_and(|it| screen[it].text() == "LOG")));
    }

    #[test]
    fn a_number_between_two_labels_goes_to_one_of_them() {
        let mut screen = Vec::new();
        for x in [0.0, 300.0] {
            screen.push(token(x, 60.0, 20.0, "Carry (yd)"));
            screen.push(token(x, 90.0, 50.0, "164.2"));
        }
        // Two labels side by side above a text that was read as a word.
        screen.push(token(600.0, 60.0, 20.0, "Carry"));
        screen.push(token(640.0, 62.0, 20.0, "Spin"));
        screen.push(token(600.0, 90.0, 50.0, "LOG"));
        let (found, _) = tiles(&screen).unwrap();
        let of_word = found.iter().filter(|it| it.number == Some(6)).count();
        assert_eq!((found.len(), of_word), (3, 1));
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

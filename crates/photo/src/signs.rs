//! A minus that was not read: a bar left of the first digit, seen in the pixels.

use crate::quad::{LINE, Strip};

/// What is looked at left of the first digit, in heights of the text.
pub(crate) const BEFORE: f32 = 0.7;
/// How dark a bar is at least, beside the digits.
const BAR: f32 = 0.3;

/// Whether something like a minus stands left of the first digit of a strip that was cut with `BEFORE` more on its left.
/// `first` is where that digit stands, as a share of the strip's width.
pub(crate) fn has_bar(strip: &Strip, first: f32) -> bool {
    let Strip { width, .. } = *strip;
    let dark = strip.dark_on_light();
    let ink = |x: usize, y: usize| 255.0 - f32::from(dark.pixels[3 * (y * width + x)]);
    // A digit is about half as wide as it is high; its middle is known.
    let digit = LINE as f32 * 0.32;
    let end = (first * width as f32 - digit).max(0.0) as usize;
    let window = (LINE as f32 * 0.2) as usize;
    if end < window {
        return false;
    }
    let row = |from: usize, y: usize| (from..from + window).map(|x| ink(x, y)).sum::<f32>() / window as f32;
    let middle = LINE * 3 / 8..LINE * 11 / 16;
    let apart = LINE / 5;
    (0..=end - window).any(|from| {
        middle.clone().any(|y| {
            let (bar, above, below) = (row(from, y), row(from, y - apart), row(from, y + apart));
            bar - above.max(below) > BAR * 255.0
        })
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strip(draw: &dyn Fn(usize, usize) -> bool) -> Strip {
        let pixels = (0..LINE * 100).flat_map(|at| [if draw(at % 100, at / 100) { 20 } else { 230 }; 3]);
        Strip { width: 100, pixels: pixels.collect() }
    }

    #[test]
    fn a_bar_before_the_digit_is_seen_and_its_edge_is_not() {
        let digit = |x: usize, y: usize| (60..64).contains(&x) && (6..42).contains(&y);
        assert!(!has_bar(&strip(&digit), 0.62));
        let minus = |x: usize, y: usize| digit(x, y) || ((28..42).contains(&x) && (24..28).contains(&y));
        assert!(has_bar(&strip(&minus), 0.62));
        let rule = |x: usize, y: usize| digit(x, y) || (x < 3);
        assert!(!has_bar(&strip(&rule), 0.62), "a line of the table");
    }
}

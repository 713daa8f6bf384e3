//! What strips say, character by character, with how sure that is.

use crate::models::Models;
use crate::quad::{LINE, Strip};

/// Strips that are read at once.
pub(crate) const TOGETHER: usize = 8;

/// What can stand in a number's cell.
const IN_NUMBERS: &str = "0123456789.,+- LR°";

/// How likely each character is at each step of one strip.
#[derive(Debug, Clone, Default)]
pub(crate) struct Read {
    /// One value for each character, step by step.
    likely: Vec<f32>,
    /// Characters that are known.
    characters: Vec<char>,
    /// Steps as a share of the strip's own width: it was read with an empty margin behind it.
    stretch: f32,
}

/// A text, how sure its least sure character is, and where each stands as a share of the width.
#[derive(Debug, Clone, Default, PartialEq)]
pub(crate) struct Line {
    pub(crate) text: String,
    pub(crate) sure: f32,
    pub(crate) places: Vec<f32>,
}

impl Read {
    /// As it stands there.
    pub(crate) fn line(&self) -> Line {
        self.decoded(|_| true)
    }

    /// As if only what is found in numbers could stand there.
    pub(crate) fn number(&self) -> Line {
        self.decoded(|it| it == '\0' || IN_NUMBERS.contains(it))
    }

    /// The likeliest at each step; the same one twice in a row is one, and what stands between two is none.
    fn decoded(&self, may_be: impl Fn(char) -> bool) -> Line {
        let count = self.characters.len();
        if count == 0 {
            return Line::default();
        }
        let allowed: Vec<usize> = (0..count).filter(|it| may_be(self.characters[*it])).collect();
        let steps = self.likely.len() / count;
        // Character, first and last step, how sure.
        let mut found: Vec<(usize, usize, usize, f32)> = Vec::new();
        let mut before = 0;
        for (step, likely) in self.likely.chunks_exact(count).enumerate() {
            let best = allowed
                .iter()
                .copied()
                .max_by(|one, other| likely[*one].total_cmp(&likely[*other]))
                .unwrap_or(0);
            if best != 0 && best == before {
                if let Some(last) = found.last_mut() {
                    last.2 = step;
                    last.3 = last.3.max(likely[best]);
                }
            } else if best != 0 {
                found.push((best, step, step, likely[best]));
            }
            before = best;
        }
        let sure = found.iter().map(|it| it.3).min_by(f32::total_cmp).unwrap_or(0.0);
        let place = |first: usize, last: usize| (first + last + 1) as f32 / 2.0 / steps as f32 * self.stretch;
        Line {
            text: found.iter().map(|it| self.characters[it.0]).collect(),
            sure,
            places: found.iter().map(|it| place(it.1, it.2)).collect(),
        }
    }
}

/// Reads strips, `TOGETHER` at a time, those of like width together; `done` hears of each batch.
pub(crate) fn read(models: &Models, strips: &[Strip], done: &mut dyn FnMut(usize)) -> Vec<Read> {
    const NARROWEST: usize = 32;
    const STEP: usize = 16;
    let mut order: Vec<usize> = (0..strips.len()).collect();
    order.sort_by_key(|at| strips[*at].width);
    let mut reads = vec![Read::default(); strips.len()];
    for batch in order.chunks(TOGETHER) {
        let widest = batch.iter().map(|at| strips[*at].width).max().unwrap_or(0).max(NARROWEST);
        let width = widest.div_ceil(STEP) * STEP;
        let mut values = vec![0.0_f32; batch.len() * 3 * LINE * width];
        for (at, strip) in batch.iter().map(|at| &strips[*at]).enumerate() {
            for (pixel, colors) in strip.pixels.as_chunks::<3>().0.iter().enumerate() {
                let (x, y) = (pixel % strip.width, pixel / strip.width);
                for (plane, color) in [2, 1, 0].into_iter().enumerate() {
                    values[((at * 3 + plane) * LINE + y) * width + x] =
                        f32::from(colors[color]) / 127.5 - 1.0;
                }
            }
        }
        let likely = models.read(values, batch.len(), LINE, width);
        let each = likely.len() / batch.len();
        let count = models.characters.len();
        for (at, likely) in batch.iter().zip(likely.chunks_exact(each.max(1))) {
            let mut merged = Vec::with_capacity(each / models.places.len().max(1) * count);
            for classes in likely.chunks_exact(models.places.len().max(1)) {
                let from = merged.len();
                merged.resize(from + count, 0.0);
                classes.iter().zip(&models.places).for_each(|(it, place)| merged[from + place] += it);
            }
            let stretch = width as f32 / strips[*at].width.max(1) as f32;
            reads[*at] = Read { likely: merged, characters: models.characters.clone(), stretch };
        }
        done(batch.len());
    }
    reads
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(steps: &[(char, f32)]) -> Read {
        let characters = vec!['\0', '1', '2', 'm'];
        let likely = steps.iter().flat_map(|(character, sure)| {
            characters.iter().map(|it| if it == character { *sure } else { 0.1 }).collect::<Vec<_>>()
        });
        Read { likely: likely.collect(), characters: characters.clone(), stretch: 1.0 }
    }

    #[test]
    fn one_character_over_several_steps_is_one_and_a_gap_makes_two() {
        let line = read(&[('1', 0.9), ('1', 0.7), ('\0', 0.9), ('1', 0.8), ('2', 0.6)]).line();
        assert_eq!((line.text.as_str(), line.sure), ("112", 0.6));
        assert_eq!(line.places, [0.2, 0.7, 0.9]);
    }

    #[test]
    fn a_letter_is_none_where_only_numbers_can_stand() {
        let steps = read(&[('m', 0.9), ('2', 0.8)]);
        assert_eq!(steps.line().text, "m2");
        assert!(steps.number().text.ends_with('2') && !steps.number().text.contains('m'));
    }
}

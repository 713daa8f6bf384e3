//! Words that say on which side of zero a number lies: left and right, heel and toe, down and up.

use crate::trim::trim;

/// The side of zero that a word beside a number names.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Side {
    /// Left, or towards the heel.
    Left,
    /// Right, or towards the toe.
    Right,
    /// Down, or low.
    Down,
    /// Up, or high.
    Up,
}

impl Side {
    /// −1 or 1.
    pub(crate) const fn sign(self) -> f64 {
        match self {
            Self::Left | Self::Down => -1.0,
            Self::Right | Self::Up => 1.0,
        }
    }
}

/// In English and Spanish. `D` alone is "down" to one and "derecha", right, to the other: what is measured decides.
const SIDES: [(Side, &[&str]); 4] = [
    (Side::Left, &["l", "left", "lt", "heel", "izq", "izquierda", "talón", "talon"]),
    (Side::Right, &["r", "right", "rt", "toe", "der", "dcha", "derecha", "punta"]),
    (Side::Down, &["d", "down", "low", "abajo", "bajo"]),
    (Side::Up, &["u", "up", "high", "arriba", "alto"]),
];
/// Bytes of the longest of them.
const LONGEST: usize = 9;

/// The side that a word names.
pub(crate) fn side(word: &str) -> Option<Side> {
    let word = trim(word).trim_end_matches('.');
    // Asked of every cell that is no number: most are names, and longer.
    if word.len() > LONGEST {
        return None;
    }
    let names = |list: &[&str]| list.iter().any(|w| w.eq_ignore_ascii_case(word));
    SIDES.iter().find(|(_, list)| names(list)).map(|(side, _)| *side)
}

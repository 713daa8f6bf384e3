//! From a real number to a count, the one conversion where the language would cut silently.

/// The whole number at or below `x`, within 0 and `most`; 0 for what is not a number.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the cast saturates, and nothing is zero"
)]
pub(crate) fn whole(x: f64, most: usize) -> usize {
    (x as usize).min(most)
}

//! From a real number to a count, the one conversion where the language would cut silently.

/// The whole number at or below `x`, within 0 and `most`; 0 for what is not a number.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped to the range of a count just before"
)]
pub(crate) fn whole(x: f64, most: usize) -> usize {
    x.clamp(0.0, most as f64) as usize
}

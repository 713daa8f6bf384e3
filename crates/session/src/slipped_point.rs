//! A value whose decimal point slipped: ten times, or a tenth of, what the other shots of its build are.
//!
//! A range alone does not show it: 15.4 mph is a chip's ball speed, and a slip among drives. Own construction, no source:
//! three in four values must lie within a factor of two around the middle one, and the value must lie among them once its
//! point is moved by one place.

/// Of fewer values nobody says which of them slipped.
pub const FEWEST: usize = 6;
/// The others lie within this factor of the middle one.
const ALIKE: f64 = 2.0;
/// A value with its point moved lies within this factor of the middle one: a mishit is no slip.
const MOVED: f64 = 1.5;
/// Only values this many times apart are looked at more closely.
const FAR_APART: f64 = 10.0 / MOVED;

/// The middle one of the values, and the places of those whose point slipped; `None` where there are none.
#[must_use]
pub fn slipped_points(values: &[f64]) -> Option<(f64, Vec<usize>)> {
    if values.len() < FEWEST || !may_have_slipped(values.iter().copied()) {
        return None;
    }
    let mut sorted = values.to_vec();
    arrange::sort_numbers(&mut sorted);
    let middle = sorted.get(sorted.len() / 2).copied().filter(|middle| *middle > 0.0)?;
    let is_within = |value: f64, factor: f64| value * factor >= middle && value <= middle * factor;
    let alike = values.iter().filter(|value| is_within(**value, ALIKE)).count();
    if 4 * alike < 3 * values.len() {
        return None;
    }
    let slipped = |value: &f64| is_within(*value * 10.0, MOVED) || is_within(*value / 10.0, MOVED);
    let found: Vec<usize> = (0..values.len()).filter(|&at| slipped(&values[at])).collect();
    (!found.is_empty()).then_some((middle, found))
}

/// Whether any two values are so far apart that one of them may have slipped: one look, for who reads many.
#[must_use]
pub fn may_have_slipped(values: impl Iterator<Item = f64>) -> bool {
    let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
    values.for_each(|value| (least, most) = (least.min(value), most.max(value)));
    most >= FAR_APART * least
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_that_slipped_either_way_is_found() {
        let drives = [154.2, 151.0, 15.4, 156.3, 149.8, 153.0, 152.2];
        assert_eq!(slipped_points(&drives), Some((152.2, vec![2])));
        let chips = [15.1, 16.0, 14.2, 155.0, 15.7, 14.9];
        assert_eq!(slipped_points(&chips).map(|found| found.1), Some(vec![3]));
    }

    #[test]
    fn chips_alone_mishits_and_few_values_are_none() {
        assert_eq!(slipped_points(&[15.1, 16.0, 14.2, 15.5, 15.7, 14.9]), None);
        assert_eq!(slipped_points(&[154.0, 151.0, 60.0, 156.0, 149.0, 153.0]), None, "a topped ball");
        assert_eq!(slipped_points(&[154.0, 151.0, 15.4, 156.0]), None);
        assert_eq!(
            slipped_points(&[154.0, 15.1, 15.4, 156.0, 150.0, 14.9, 152.0]),
            None,
            "two kinds of shot"
        );
        assert_eq!(slipped_points(&[]), None);
        assert_eq!(slipped_points(&[0.0; 8]), None);
    }
}

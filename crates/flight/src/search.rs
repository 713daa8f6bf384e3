//! The highest point of a smooth function of one variable with one hump, and where it has fallen by
//! a given amount.
//!
//! A coarse scan finds the hump, golden sections narrow it; the ends of the range are candidates.
//! Source: J. Kiefer, Proc. Amer. Math. Soc. 4 (1953), 502–506 (golden section, from memory).

/// Points of the coarse scan.
const SCAN: u32 = 8;

/// A place, the value there, and what was made there.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Found<T> {
    pub(crate) at: f64,
    pub(crate) value: f64,
    pub(crate) made: T,
}

/// The highest point of `make` within `low..=high`, to `tolerance` in place.
///
/// `make` gives the value and what belongs to it. Values that are no number never win. Stops after
/// a bounded number of sections whatever the function does.
/// Requires: `low < high`; one hump, or at least one that the scan does not miss.
pub(crate) fn highest<T: Copy, E>(
    low: f64,
    high: f64,
    tolerance: f64,
    mut make: impl FnMut(f64) -> Result<(f64, T), E>,
) -> Result<Found<T>, E> {
    let mut probe = |at: f64| make(at).map(|(value, made)| Found { at, value, made });
    let spacing = (high - low) / f64::from(SCAN - 1);
    let mut best = probe(low)?;
    for index in 1..SCAN {
        let at = if index == SCAN - 1 { high } else { low + spacing * f64::from(index) };
        best = better(best, probe(at)?);
    }
    let (mut left, mut right) = ((best.at - spacing).max(low), (best.at + spacing).min(high));
    let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
    let mut inner_left = probe(right - golden * (right - left))?;
    let mut inner_right = probe(left + golden * (right - left))?;
    best = better(better(best, inner_left), inner_right);
    for _ in 0..60 {
        if right - left <= tolerance {
            break;
        }
        if inner_left.value >= inner_right.value {
            right = inner_right.at;
            inner_right = inner_left;
            inner_left = probe(right - golden * (right - left))?;
            best = better(best, inner_left);
        } else {
            left = inner_left.at;
            inner_left = inner_right;
            inner_right = probe(left + golden * (right - left))?;
            best = better(best, inner_right);
        }
    }
    Ok(best)
}

/// The place nearest to `edge`, on the way from `inside` to `edge`, where `make` still reaches `floor`.
///
/// Sixteen halvings of the distance. Requires: the value at `inside` reaches `floor`, and falls towards `edge`.
pub(crate) fn reach<E>(
    inside: f64,
    edge: f64,
    floor: f64,
    mut make: impl FnMut(f64) -> Result<f64, E>,
) -> Result<f64, E> {
    if make(edge)? >= floor {
        return Ok(edge);
    }
    let (mut good, mut bad) = (inside, edge);
    for _ in 0..16 {
        let middle = 0.5 * (good + bad);
        if make(middle)? >= floor {
            good = middle;
        } else {
            bad = middle;
        }
    }
    Ok(good)
}

fn better<T>(one: Found<T>, other: Found<T>) -> Found<T> {
    if other.value > one.value || one.value.is_nan() { other } else { one }
}

#[cfg(test)]
mod tests {
    use super::{highest, reach};
    use std::convert::Infallible;

    fn top(low: f64, high: f64, f: impl Fn(f64) -> f64) -> f64 {
        highest(low, high, 1e-9, |x| Ok::<_, Infallible>((f(x), ()))).map(|found| found.at).unwrap()
    }

    #[test]
    fn a_hump_is_found_wherever_it_lies() {
        for peak in [-3.0, -2.99, -0.4, 0.0, 1.7, 4.9, 5.0] {
            let found = top(-3.0, 5.0, |x| 7.0 - (x - peak) * (x - peak));
            assert!((found - peak).abs() < 1e-7, "{found} for {peak}");
        }
    }

    #[test]
    fn a_slope_ends_on_the_edge_itself() {
        assert_eq!(top(1.0, 2.0, |x| x).to_bits(), 2.0_f64.to_bits());
        assert_eq!(top(1.0, 2.0, |x| -x).to_bits(), 1.0_f64.to_bits());
    }

    #[test]
    fn no_number_never_wins_and_never_hangs() {
        let found = top(0.0, 1.0, |x| if x < 0.5 { f64::NAN } else { 2.0 - x });
        assert!((found - 0.5).abs() < 0.1);
        assert!(top(0.0, 1.0, |_| f64::NAN).is_finite());
    }

    #[test]
    fn reach_stops_where_the_floor_is_crossed() {
        let f = |x: f64| Ok::<_, Infallible>(1.0 - x * x);
        assert!((reach(0.0, 2.0, 0.75, f).unwrap() - 0.5).abs() < 1e-4);
        assert!((reach(0.0, 0.3, 0.75, f).unwrap() - 0.3).abs() < 1e-15);
    }
}

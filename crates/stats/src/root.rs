//! One bracketing root finder for every equation of this crate that has no closed form.
//!
//! Only for continuous functions of one variable; at most `MOST_STEPS` evaluations, so it always ends.
//! Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997), 145–149.

/// Bisection alone would reach the last bit of any bracket in fewer steps.
const MOST_STEPS: usize = 200;

/// The place between `low` and `high` where `f` changes sign.
///
/// Inverse quadratic interpolation where it is safe, bisection otherwise.
/// Requires: `f(low)` and `f(high)` of opposite sign or zero; `None` if not, or if `f` is not a number there.
/// Accuracy: 4 ulp of the root in the argument, or `absolute` if that is larger.
pub(crate) fn find_root(low: f64, high: f64, absolute: f64, f: &dyn Fn(f64) -> f64) -> Option<f64> {
    let (mut a, mut b) = (low, high);
    let (mut fa, mut fb) = (f(a), f(b));
    if fa.is_nan() || fb.is_nan() {
        return None;
    }
    // An end that is the place itself has no sign to hold against the other one.
    if let Some((end, _)) = [(a, fa), (b, fb)].into_iter().find(|&(_, f)| f == 0.0) {
        return Some(end);
    }
    if (fa > 0.0) == (fb > 0.0) {
        return None;
    }
    let (mut c, mut fc);
    let mut share = 0.5;
    for _ in 0..MOST_STEPS {
        let x = a + share * (b - a);
        let fx = f(x);
        if fx.is_nan() {
            return None;
        }
        if (fx > 0.0) == (fa > 0.0) {
            (c, fc) = (a, fa);
        } else {
            (c, fc) = (b, fb);
            (b, fb) = (a, fa);
        }
        (a, fa) = (x, fx);
        let (best, f_best) = if fa.abs() < fb.abs() { (a, fa) } else { (b, fb) };
        let tolerance = 2.0 * f64::EPSILON * best.abs() + 0.5 * absolute;
        let limit = tolerance / (b - a).abs();
        if limit > 0.5 || f_best == 0.0 || !limit.is_finite() {
            return Some(best);
        }
        // Interpolate only where the three points lie close enough to a monotone parabola.
        let xi = (a - b) / (c - b);
        let phi = (fa - fb) / (fc - fb);
        share = if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
            fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
        } else {
            0.5
        };
        // Not `clamp`: the message it has ready for bounds the wrong way round brings all printing of numbers along.
        share = if share.is_finite() { share.max(limit).min(1.0 - limit) } else { 0.5 };
    }
    Some(if fa.abs() < fb.abs() { a } else { b })
}

#[cfg(test)]
mod tests {
    use super::find_root;
    use std::cell::Cell;

    #[test]
    fn finds_the_cube_root_of_two() {
        let root = find_root(0.0, 10.0, 0.0, &|x| x * x * x - 2.0).expect("bracketed");
        assert!((root - crate::real::cbrt(2.0)).abs() < 1e-15);
    }

    #[test]
    fn refuses_what_is_not_bracketed_or_not_a_number() {
        assert_eq!(find_root(1.0, 2.0, 0.0, &|x| x), None);
        assert_eq!(find_root(-1.0, 1.0, 0.0, &|_| f64::NAN), None);
    }

    #[test]
    fn an_end_that_is_zero_is_the_root() {
        assert_eq!(find_root(0.0, 0.25, 1e-12, &|x| -x), Some(0.0));
        assert_eq!(find_root(-3.0, 0.0, 1e-12, &|x| x), Some(0.0));
        assert_eq!(find_root(1.0, 2.0, 1e-12, &|x| (x - 1.0) * (x - 3.0)), Some(1.0));
    }

    /// What roots cost, in evaluations: a change of the method changes these numbers knowingly.
    #[test]
    fn a_root_costs_what_it_did() {
        let cost = |absolute: f64, f: &dyn Fn(f64, f64) -> f64| {
            let (mut all, mut most) = (0, 0);
            for root in (1..200).map(|place| 0.05 * f64::from(place)) {
                let asked = Cell::new(0);
                let found = find_root(-1.0, 10.0, absolute, &|x| {
                    asked.set(asked.get() + 1);
                    f(x, root)
                });
                let off = (found.expect("bracketed") - root).abs();
                assert!(off <= 0.5 * absolute + 4.0 * f64::EPSILON * root.max(1.0), "{root}: off by {off:e}");
                (all, most) = (all + asked.get(), most.max(asked.get()));
            }
            [all, most]
        };
        let steep = |x: f64, root: f64| crate::real::exp(x) - crate::real::exp(root);
        let flat = |x: f64, root: f64| crate::real::cbrt(x - root);
        let falling = |x: f64, root: f64| (root - x) * (x * x + 1.0);
        let costs = [cost(0.0, &steep), cost(1e-3, &steep), cost(0.0, &flat), cost(1e-9, &falling)];
        assert_eq!(costs, [[2167, 12], [1863, 10], [10147, 59], [2170, 13]]);
    }

    #[test]
    fn ends_on_a_jump() {
        let root = find_root(-1.0, 1.0, 0.0, &|x| if x < 0.3 { -1.0 } else { 1e300 }).expect("bracketed");
        assert!((root - 0.3).abs() < 1e-15);
    }
}

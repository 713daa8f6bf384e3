//! How strict each of several comparisons must be, so that trying many does not find one by luck.
//!
//! Holm's step-down rule, told as a divisor of the error rate for each comparison: an interval at the
//! divided rate excludes zero exactly when Holm's adjusted p-value is below the rate. Trying candidates
//! on the measure named before is one family; every measure of every candidate is another, for the rest.
//! Source: S. Holm, Scandinavian Journal of Statistics 6 (1979), 65–70.

use crate::analysis::{Comparison, Levels, Pair};
use stats::Level;

/// A pair with the levels that its family leaves it.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Member {
    pub(crate) pair: Pair,
    pub(crate) levels: Levels,
}

/// Divides the error rate of 'different' among comparisons, in place. Pairs without a comparison take no part.
/// Says whether any of them passes.
///
/// Comparisons are stepped through from the smallest p. The first that fails stops the steps: its divisor
/// holds for all after it, so that none of them can pass.
pub(crate) fn divide(family: &mut [Member]) -> bool {
    let p = |member: &Member| member.pair.comparison.as_ref().ok().map(Comparison::p_value);
    let mut steps: Vec<(f64, usize)> =
        family.iter().enumerate().filter_map(|(i, member)| Some((p(member)?, i))).collect();
    stats::arrange::sort_by(&mut steps, |a, b| a.0.total_cmp(&b.0));
    let all = steps.len();
    let mut divisor = all;
    let mut stopped = false;
    for (p, i) in steps {
        let levels = &mut family[i].levels;
        let alpha = levels.different.alpha() / divisor.max(1) as f64;
        stopped |= p > alpha;
        if let Ok(level) = Level::missing(alpha) {
            levels.different = level;
        }
        if !stopped {
            divisor -= 1;
        }
    }
    divisor < all
}

/// The measures that were not asked for, beside the one that was: `family` holds every measure of every candidate,
/// `asked` those of the measure asked for, which are divided first and keep the whole error rate.
///
/// As long as none of those passes, the rest share only half of it: the chance of any false 'different' would
/// otherwise add up, and was measured above its limit. Once one passes, nothing has been spent in vain.
pub(crate) fn divide_all(family: &mut [Member], asked: &mut [Member]) {
    if !divide(asked) {
        for member in family.iter_mut() {
            if let Ok(level) = Level::missing(member.levels.different.alpha() / 2.0) {
                member.levels.different = level;
            }
        }
    }
    divide(family);
}

//! How strict each of several comparisons must be, so that trying many does not find one by luck.
//!
//! Holm's step-down rule, told as a divisor of the error rate for each comparison: an interval at the
//! divided rate excludes zero exactly when Holm's adjusted p-value is below the rate. Trying candidates
//! on the measure named before is one family; every measure of every candidate is another, for the rest.
//! Source: S. Holm, Scandinavian Journal of Statistics 6 (1979), 65–70.

use stats::Level;

/// A comparison's p-value, where there is one, and the level that its family leaves it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Member {
    pub(crate) p: Option<f64>,
    pub(crate) level: Level,
}

/// Divides the error rate among comparisons, in place. Those without a p-value take no part. Says whether any passes.
///
/// Comparisons are stepped through from the smallest p. The first that fails stops the steps: its divisor
/// holds for all after it, so that none of them can pass.
pub(crate) fn divide(family: &mut [Member]) -> bool {
    let mut steps: Vec<(f64, usize)> =
        family.iter().enumerate().filter_map(|(i, member)| Some((member.p?, i))).collect();
    arrange::sort_by(&mut steps, |a, b| a.0.total_cmp(&b.0));
    let all = steps.len();
    let mut divisor = all;
    let mut stopped = false;
    for (p, i) in steps {
        let alpha = family[i].level.alpha() / divisor.max(1) as f64;
        stopped |= p > alpha;
        if let Ok(level) = Level::missing(alpha) {
            family[i].level = level;
        }
        if !stopped {
            divisor -= 1;
        }
    }
    divisor < all
}

/// Every measure of every candidate, of which the first `asked` are those of the measure asked for: these are divided
/// first and keep the whole error rate.
///
/// As long as none of those passes, the rest share only half of it: the chance of any false 'different' would
/// otherwise add up, and was measured above its limit. Once one passes, nothing has been spent in vain.
pub(crate) fn divide_all(family: &mut [Member], asked: usize) {
    let mut first = family[..asked].to_vec();
    if !divide(&mut first) {
        for member in family.iter_mut() {
            if let Ok(level) = Level::missing(member.level.alpha() / 2.0) {
                member.level = level;
            }
        }
    }
    divide(family);
    family[..asked].copy_from_slice(&first);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn family(p: &[f64]) -> Vec<Member> {
        p.iter().map(|&p| Member { p: Some(p), level: Level::P95 }).collect()
    }

    fn divisors(family: &[Member]) -> Vec<f64> {
        family.iter().map(|member| (0.05 / member.level.alpha() * 100.0).round() / 100.0).collect()
    }

    #[test]
    fn each_step_that_passes_leaves_more_to_the_next_and_the_first_that_fails_stops_all() {
        let mut passing = family(&[0.01, 0.04, 0.02]);
        assert!(divide(&mut passing));
        assert_eq!(divisors(&passing), [3.0, 1.0, 2.0]);
        let mut failing = family(&[0.01, 0.03, 0.04]);
        assert!(divide(&mut failing));
        assert_eq!(divisors(&failing), [3.0, 2.0, 2.0]);
        assert!(!divide(&mut family(&[0.03, 0.5])));
    }

    #[test]
    fn what_cannot_be_compared_takes_no_part() {
        let mut some = family(&[0.04]);
        some.push(Member { p: None, level: Level::P95 });
        assert!(divide(&mut some));
        assert_eq!(divisors(&some), [1.0, 1.0]);
    }

    #[test]
    fn the_rest_shares_half_until_the_measure_asked_for_passes() {
        let mut unproven = family(&[0.2, 0.001]);
        divide_all(&mut unproven, 1);
        assert_eq!(divisors(&unproven), [1.0, 4.0]);
        let mut proven = family(&[0.01, 0.001]);
        divide_all(&mut proven, 1);
        assert_eq!(divisors(&proven), [1.0, 2.0]);
    }
}

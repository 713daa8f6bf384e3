//! Several sessions of the same builds, days apart, when it is known beforehand about how much a gap varies from day to
//! day: random effects with a half-normal prior on that.
//!
//! Two or three sessions say nearly nothing of how much sessions differ; what is usual says the rest, and days that
//! disagree by more than that widen the answer by themselves.
//! Sources: A. Gelman, Bayesian Analysis 1 (2006), 515–533; C. Röver, Journal of Statistical Software 93 (2020), no. 6,
//! for the half-normal prior and the marginal by quadrature.

use crate::combine::SessionEffect;
use crate::difference::Refusal;
use crate::distributions::{normal_cdf, normal_sf};
use crate::level::{Interval, Level};
use crate::quadrature::nodes;
use crate::real::{exp, ln, square};
use crate::root::find_root;
use crate::sample::check_value;

/// Panels of twenty nodes for the day-to-day deviation: with twice as many no figure changes in its tenth digit.
const PANELS: usize = 24;

/// The prior's density has fallen by e⁻³² here, in units of its scale.
const FARTHEST: f64 = 8.0;

/// What the sessions say together: for each day-to-day deviation that could be, a normal distribution of the gap.
#[derive(Debug, Clone, PartialEq)]
pub struct DayToDay {
    parts: Vec<Part>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Part {
    chance: f64,
    /// Deviation from day to day.
    between: f64,
    mean: f64,
    variance: f64,
}

/// Combines sessions; `usual` is the scale of the half-normal prior on the day-to-day deviation, in the unit of the effects.
///
/// One session is enough: its own error then stands beside what days usually differ by. The gap itself has a flat prior.
/// Accuracy: 1e-8 relative against tests/reference/stats/21.
///
/// # Errors
/// No session, an effect that is not usable, a variance or a scale that is not above zero.
pub fn day_to_day(sessions: &[SessionEffect], usual: f64) -> Result<DayToDay, Refusal> {
    if sessions.is_empty() {
        return Err(Refusal::TooFew { got: 0, need: 1 });
    }
    if !(usual > 0.0 && usual.is_finite()) {
        return Err(Refusal::Argument { got: usual });
    }
    for (index, session) in sessions.iter().enumerate() {
        check_value(index, session.effect).map_err(|_| Refusal::Argument { got: session.effect })?;
        if !(session.variance > 0.0 && (1.0 / session.variance).is_finite()) {
            return Err(Refusal::Argument { got: session.variance });
        }
    }
    let effects = || sessions.iter().map(|session| session.effect);
    let range = effects().fold(f64::MIN, f64::max) - effects().fold(f64::MAX, f64::min);
    let places = nodes(0.0, FARTHEST * usual + 2.0 * range, PANELS);
    let weighed: Vec<(f64, Part)> = places
        .iter()
        .map(|place| {
            let (log, part) = given(sessions, place.at);
            (log - 0.5 * square(place.at / usual) + ln(place.weight), part)
        })
        .collect();
    let largest = weighed.iter().fold(f64::MIN, |most, (log, _)| most.max(*log));
    let total: f64 = weighed.iter().map(|(log, _)| exp(log - largest)).sum();
    if !total.is_finite() || total <= 0.0 {
        return Err(Refusal::OutOfRange);
    }
    let parts = weighed.into_iter().map(|(log, part)| Part { chance: exp(log - largest) / total, ..part });
    Ok(DayToDay { parts: parts.filter(|part| part.chance > 0.0).collect() })
}

/// The logarithm of how likely the sessions are with this day-to-day deviation, and the gap then.
fn given(sessions: &[SessionEffect], between: f64) -> (f64, Part) {
    let weights = || sessions.iter().map(|session| 1.0 / (session.variance + square(between)));
    let total: f64 = weights().sum();
    let mean =
        sessions.iter().zip(weights()).map(|(session, weight)| weight * session.effect).sum::<f64>() / total;
    let apart: f64 =
        sessions.iter().zip(weights()).map(|(session, weight)| weight * square(session.effect - mean)).sum();
    let log = 0.5 * (weights().map(ln).sum::<f64>() - ln(total) - apart);
    (log, Part { chance: 0.0, between, mean, variance: 1.0 / total })
}

impl DayToDay {
    /// The mean of the gap.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.expect(&|part| part.mean)
    }

    /// The mean of the day-to-day deviation.
    #[must_use]
    pub fn between(&self) -> f64 {
        self.expect(&|part| part.between)
    }

    /// Chance that the gap lies above `value`.
    #[must_use]
    pub fn chance_above(&self, value: f64) -> f64 {
        self.expect(&|part| normal_sf((value - part.mean) / part.variance.sqrt()))
    }

    /// Where the gap lies with the chance of the level, as much left out on either side.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        self.ends(level, &|part| part.variance)
    }

    /// Where the gap of one more day lies, before its shots' own error.
    #[must_use]
    pub fn next_day(&self, level: Level) -> Interval {
        self.ends(level, &|part| part.variance + square(part.between))
    }

    fn ends(&self, level: Level, variance: &dyn Fn(&Part) -> f64) -> Interval {
        let reach = |part: &Part| 40.0 * variance(part).sqrt();
        let low = self.parts.iter().fold(f64::MAX, |least, part| least.min(part.mean - reach(part)));
        let high = self.parts.iter().fold(f64::MIN, |most, part| most.max(part.mean + reach(part)));
        let below = |value: f64| self.expect(&|part| normal_cdf((value - part.mean) / variance(part).sqrt()));
        let above = |value: f64| self.expect(&|part| normal_sf((value - part.mean) / variance(part).sqrt()));
        let end = |f: &dyn Fn(f64) -> f64| find_root(low, high, 0.0, f).unwrap_or(f64::NAN);
        Interval {
            low: end(&|value| below(value) - level.tail()),
            high: end(&|value| level.tail() - above(value)),
            level,
        }
    }

    fn expect(&self, of: &dyn Fn(&Part) -> f64) -> f64 {
        self.parts.iter().map(|part| part.chance * of(part)).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn days(effects: &[f64]) -> Vec<SessionEffect> {
        effects.iter().map(|&effect| SessionEffect { effect, variance: 9.0 }).collect()
    }

    #[test]
    fn more_days_that_agree_tell_more_and_days_that_disagree_less() {
        let width = |effects: &[f64]| {
            let ends = day_to_day(&days(effects), 5.0).unwrap().interval(Level::P95);
            ends.high - ends.low
        };
        assert!(width(&[6.0, 6.5]) < width(&[6.0]) && width(&[6.0, 6.5, 5.8]) < width(&[6.0, 6.5]));
        assert!(width(&[-14.0, 26.5]) > 1.5 * width(&[6.0, 6.5]));
    }

    #[test]
    fn what_is_no_session_is_refused() {
        assert_eq!(day_to_day(&[], 5.0), Err(Refusal::TooFew { got: 0, need: 1 }));
        for usual in [0.0, -1.0, f64::INFINITY] {
            assert_eq!(day_to_day(&days(&[1.0]), usual), Err(Refusal::Argument { got: usual }));
        }
        assert!(day_to_day(&days(&[1.0]), f64::NAN).is_err() && day_to_day(&days(&[f64::NAN]), 5.0).is_err());
        let exact = [SessionEffect { effect: 1.0, variance: 0.0 }];
        assert_eq!(day_to_day(&exact, 5.0), Err(Refusal::Argument { got: 0.0 }));
    }

    #[test]
    fn it_follows_the_effects_wherever_they_lie() {
        let here = day_to_day(&days(&[4.0, 11.0, 7.0]), 5.0).unwrap();
        let there = day_to_day(&days(&[-4.0, -11.0, -7.0]), 5.0).unwrap();
        assert!((here.mean() + there.mean()).abs() < 1e-9 && (here.between() - there.between()).abs() < 1e-9);
        assert!((here.chance_above(5.0) + there.chance_above(-5.0) - 1.0).abs() < 1e-9);
        let (one, other) = (here.interval(Level::P95), there.interval(Level::P95));
        assert!((one.low + other.high).abs() < 1e-8 && (one.high + other.low).abs() < 1e-8);
    }
}

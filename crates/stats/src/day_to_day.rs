//! Several sessions of the same builds, days apart, when it is known beforehand about how much a gap varies from day to
//! day: random effects with a half-normal prior on that.
//!
//! Two or three sessions say nearly nothing of how much sessions differ; what is usual says the rest, and days that
//! disagree by more than that widen the answer by themselves.
//! Sources: A. Gelman, Bayesian Analysis 1 (2006), 515–533; C. Röver, Journal of Statistical Software 93 (2020), no. 6,
//! for the half-normal prior and the marginal by quadrature.

use crate::combine::{SessionEffect, check};
use crate::difference::Refusal;
use crate::normal_mixture::{NormalMixture, Part, chances};
use crate::quadrature::{Node, nodes};
use crate::real::{ln, square};

/// Panels of twenty nodes for the day-to-day deviation: with twice as many no figure changes in its tenth digit.
const PANELS: usize = 24;

/// The prior's density has fallen by e⁻³² here, in units of its scale.
const FARTHEST: f64 = 8.0;

/// What the sessions say together: for each day-to-day deviation that could be, a normal distribution of the gap.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct DayToDay {
    /// The gap.
    pub gap: NormalMixture,
    /// The gap of one more day, before its shots' own error.
    pub next_day: NormalMixture,
    /// The mean of the day-to-day deviation.
    pub between: f64,
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
    check(sessions)?;
    let effects = || sessions.iter().map(|session| session.effect);
    let range = effects().fold(f64::MIN, f64::max) - effects().fold(f64::MAX, f64::min);
    let places = nodes(0.0, FARTHEST * usual + 2.0 * range, PANELS);
    let found: Vec<Found> = places.iter().map(|place| given(sessions, place.at)).collect();
    let log = |(found, place): (&Found, &Node)| found.log - 0.5 * square(place.at / usual) + ln(place.weight);
    let logs: Vec<f64> = found.iter().zip(&places).map(log).collect();
    let chances = chances(&logs).ok_or(Refusal::OutOfRange)?;
    let mixture =
        |further: &dyn Fn(&Node) -> f64| {
            NormalMixture::new(chances.iter().zip(&found).zip(&places).map(|((&chance, found), place)| {
                Part { chance, mean: found.mean, variance: found.variance + further(place) }
            }))
        };
    Ok(DayToDay {
        gap: mixture(&|_| 0.0),
        next_day: mixture(&|place| square(place.at)),
        between: chances.iter().zip(&places).map(|(chance, place)| chance * place.at).sum(),
    })
}

/// What sessions say when the deviation between them is known.
struct Found {
    /// Logarithm of how likely they are then.
    log: f64,
    mean: f64,
    variance: f64,
}

fn given(sessions: &[SessionEffect], between: f64) -> Found {
    let weights = || sessions.iter().map(|session| 1.0 / (session.variance + square(between)));
    let total: f64 = weights().sum();
    let mean =
        sessions.iter().zip(weights()).map(|(session, weight)| weight * session.effect).sum::<f64>() / total;
    let apart: f64 =
        sessions.iter().zip(weights()).map(|(session, weight)| weight * square(session.effect - mean)).sum();
    let log = 0.5 * (weights().map(ln).sum::<f64>() - ln(total) - apart);
    Found { log, mean, variance: 1.0 / total }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::level::Level;

    fn days(effects: &[f64]) -> Vec<SessionEffect> {
        effects.iter().map(|&effect| SessionEffect { effect, variance: 9.0 }).collect()
    }

    #[test]
    fn more_days_that_agree_tell_more_and_days_that_disagree_less() {
        let width = |effects: &[f64]| {
            let ends = day_to_day(&days(effects), 5.0).unwrap().gap.interval(Level::P95);
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
        assert!(
            (here.gap.mean() + there.gap.mean()).abs() < 1e-9 && (here.between - there.between).abs() < 1e-9
        );
        assert!((here.gap.chance_above(5.0) + there.gap.chance_above(-5.0) - 1.0).abs() < 1e-9);
        let (one, other) = (here.gap.interval(Level::P95), there.gap.interval(Level::P95));
        assert!((one.low + other.high).abs() < 1e-8 && (one.high + other.low).abs() < 1e-8);
    }
}

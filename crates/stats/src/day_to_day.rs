//! Several sessions of the same builds, days apart, when it is known beforehand about how much a gap varies from day to
//! day: random effects with a half-normal prior on that.
//!
//! Two or three sessions say nearly nothing of how much sessions differ; what is usual says the rest, and days that
//! disagree by more than that widen the answer by themselves. A session that holds only one of the two builds counts where
//! another one, the control, stands in both kinds of session.
//! Sources: A. Gelman, Bayesian Analysis 1 (2006), 515–533; C. Röver, Journal of Statistical Software 93 (2020), no. 6,
//! for the half-normal prior and the marginal by quadrature; the deviation that sessions show by the method of moments,
//! DerSimonian and Laird, Controlled Clinical Trials 7 (1986), 177–188.

use crate::difference::Refusal;
use crate::distributions::chi_square_sf;
use crate::normal_mixture::{NormalMixture, Part, chances};
use crate::quadrature::{Node, nodes};
use crate::real::{ln, square};
use crate::sample::check_value;

/// Panels of twenty nodes for the day-to-day deviation: with ten the ninth digit of sessions that lie far apart is another.
const PANELS: usize = 12;

/// The prior's density has fallen by e⁻³² here, in units of its scale.
const FARTHEST: f64 = 8.0;

/// Which two builds a session's difference is between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Between {
    /// Candidate − baseline.
    Both,
    /// Candidate − control.
    CandidateAndControl,
    /// Baseline − control.
    BaselineAndControl,
}

/// One session's difference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayEffect {
    /// The difference.
    pub effect: f64,
    /// Square of the error that evens out over sessions.
    pub variance: f64,
    /// Square of the error it is weighed by: as much, or more where something in it does not even out.
    pub weighed: f64,
    /// Between which builds.
    pub between: Between,
}

/// What the sessions say together: for each day-to-day deviation that could be, a normal distribution of the gap.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct DayToDay {
    /// The gap, candidate − baseline.
    pub gap: NormalMixture,
    /// The gap of one more day, before its shots' own error.
    pub next_day: NormalMixture,
    /// The gap as it would be known with one more session of both builds, as exact as these.
    pub with_one_more: NormalMixture,
    /// The mean of the day-to-day deviation.
    pub between: f64,
    /// How much each session's difference counts toward the gap: those of both builds add up to 1, with those held against a
    /// control on either side of them.
    pub counts: Vec<f64>,
}

/// Combines sessions; `usual` is the scale of the half-normal prior on the day-to-day deviation, in the unit of the effects.
///
/// One session of both builds is enough: its own error then stands beside what days usually differ by. The gap itself has a
/// flat prior, and so has baseline − control where a control is used.
/// Accuracy: 1e-8 relative against tests/reference/stats/21.
///
/// # Errors
/// No session, or one kind of session against a control alone; an effect that is not usable; a variance or a scale that is
/// not above zero.
pub fn day_to_day(sessions: &[DayEffect], usual: f64) -> Result<DayToDay, Refusal> {
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
    let found = places.iter().map(|place| given(sessions, place.at)).collect::<Result<Vec<_>, _>>()?;
    let log = |(found, place): (&Found, &Node)| found.log - 0.5 * square(place.at / usual) + ln(place.weight);
    let logs: Vec<f64> = found.iter().zip(&places).map(log).collect();
    let chances = chances(&logs).ok_or(Refusal::OutOfRange)?;
    let mixture =
        |variance: &dyn Fn(&Found, &Node) -> f64| {
            NormalMixture::new(chances.iter().zip(&found).zip(&places).map(|((&chance, found), place)| {
                Part { chance, mean: found.mean, variance: variance(found, place) }
            }))
        };
    let usual_variance =
        sessions.len() as f64 / sessions.iter().map(|session| 1.0 / session.variance).sum::<f64>();
    let counts = (0..sessions.len())
        .map(|at| chances.iter().zip(&found).map(|(chance, found)| chance * found.counts[at]).sum())
        .collect();
    Ok(DayToDay {
        gap: mixture(&|found, _| found.variance),
        next_day: mixture(&|found, place| found.variance + square(place.at)),
        with_one_more: mixture(&|found, place| {
            1.0 / (1.0 / found.variance + 1.0 / (usual_variance + square(place.at)))
        }),
        between: chances.iter().zip(&places).map(|(chance, place)| chance * place.at).sum(),
        counts,
    })
}

/// How far apart sessions lie, whatever is usual.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Apart {
    /// The day-to-day deviation that they show: 0 where their own errors are enough.
    pub shown: f64,
    /// Chance that sessions which do not differ lie at least this far apart; 1 where none is left over to tell it.
    pub chance_if_alike: f64,
}

/// How far apart sessions lie.
///
/// Q = Σ w(y − ŷ)², w = 1/v, chi-square on sessions − parameters; τ² = max(0, (Q − df)/(Σw − leverage)).
/// Accuracy: 1e-9 relative against tests/reference/stats/15.
///
/// # Errors
/// As [`day_to_day`].
pub fn how_far_apart(sessions: &[DayEffect]) -> Result<Apart, Refusal> {
    check(sessions)?;
    let alike = given(sessions, 0.0)?;
    let df = sessions.len().saturating_sub(alike.parameters) as f64;
    if df < 1.0 {
        return Ok(Apart { shown: 0.0, chance_if_alike: 1.0 });
    }
    Ok(Apart {
        shown: ((alike.apart - df) / alike.information).max(0.0).sqrt(),
        chance_if_alike: chi_square_sf(alike.apart, df),
    })
}

/// Every effect is usable, every variance above zero and of some weight.
fn check(sessions: &[DayEffect]) -> Result<(), Refusal> {
    for (index, session) in sessions.iter().enumerate() {
        check_value(index, session.effect).map_err(|_| Refusal::Argument { got: session.effect })?;
        for variance in [session.variance, session.weighed] {
            let weight = 1.0 / variance;
            if !(weight > 0.0 && weight.is_finite()) {
                return Err(Refusal::Argument { got: variance });
            }
        }
    }
    Ok(())
}

/// What sessions say when the deviation between them is known.
struct Found {
    /// Logarithm of how likely they are then.
    log: f64,
    mean: f64,
    variance: f64,
    counts: Vec<f64>,
    /// Weighted squared distances from what fits them best.
    apart: f64,
    /// By how much a squared deviation of 1 adds to that on average: the trace of the residuals' weights.
    information: f64,
    parameters: usize,
}

/// Weighted least squares of the gap, and beside it of baseline − control where sessions were held against one.
fn given(sessions: &[DayEffect], between: f64) -> Result<Found, Refusal> {
    // How often the gap and the baseline's lead on the control stand in a session's difference.
    let row = |session: &DayEffect| match session.between {
        Between::Both => (1.0, 0.0),
        Between::CandidateAndControl => (1.0, 1.0),
        Between::BaselineAndControl => (0.0, 1.0),
    };
    let weights: Vec<f64> =
        sessions.iter().map(|session| 1.0 / (session.weighed + square(between))).collect();
    let sum = |of: &dyn Fn(&DayEffect, f64) -> f64| -> f64 {
        sessions.iter().zip(&weights).map(|(session, weight)| of(session, *weight)).sum()
    };
    let gaps = sum(&|session, weight| weight * square(row(session).0));
    let controls = sum(&|session, weight| weight * square(row(session).1));
    let (parameters, cross, controls) = match controls {
        0.0 => (1, 0.0, 1.0),
        _ => (2, sum(&|session, weight| weight * row(session).0 * row(session).1), controls),
    };
    let determinant = gaps * controls - square(cross);
    let mut counts = Vec::with_capacity(sessions.len());
    let mut second = Vec::with_capacity(sessions.len());
    for (session, weight) in sessions.iter().zip(&weights) {
        let (gap, control) = row(session);
        counts.push(weight * (controls * gap - cross * control) / determinant);
        second.push(weight * (gaps * control - cross * gap) / determinant);
    }
    let total = |counts: &[f64]| -> f64 {
        counts.iter().zip(sessions).map(|(count, session)| count * session.effect).sum()
    };
    let (mean, lead) = (total(&counts), total(&second));
    let apart = sum(&|session, weight| {
        weight * square(session.effect - row(session).0 * mean - row(session).1 * lead)
    });
    let leverage: f64 = sessions
        .iter()
        .zip(&weights)
        .zip(counts.iter().zip(&second))
        .map(|((session, weight), (count, other))| weight * (row(session).0 * count + row(session).1 * other))
        .sum();
    let variance = counts
        .iter()
        .zip(sessions)
        .map(|(count, session)| square(*count) * (session.variance + square(between)))
        .sum();
    let log = 0.5 * (weights.iter().map(|weight| ln(*weight)).sum::<f64>() - ln(determinant) - apart);
    let information = weights.iter().sum::<f64>() - leverage;
    let is_known = determinant > 1e-12 * gaps * controls && mean.is_finite() && variance > 0.0;
    let found = Found { log, mean, variance, counts, apart, information, parameters };
    if is_known { Ok(found) } else { Err(Refusal::NotLinked) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::level::Level;

    fn day(effect: f64, variance: f64) -> DayEffect {
        DayEffect { effect, variance, weighed: variance, between: Between::Both }
    }

    fn days(effects: &[f64]) -> Vec<DayEffect> {
        effects.iter().map(|&effect| day(effect, 9.0)).collect()
    }

    fn half_width(gap: &NormalMixture) -> f64 {
        let ends = gap.interval(Level::P95);
        0.5 * (ends.high - ends.low)
    }

    #[test]
    fn more_days_that_agree_tell_more_and_days_that_disagree_less() {
        let width = |effects: &[f64]| half_width(&day_to_day(&days(effects), 5.0).unwrap().gap);
        assert!(width(&[6.0, 6.5]) < width(&[6.0]) && width(&[6.0, 6.5, 5.8]) < width(&[6.0, 6.5]));
        assert!(width(&[-14.0, 26.5]) > 1.5 * width(&[6.0, 6.5]));
    }

    #[test]
    fn one_more_day_is_worth_what_a_day_as_exact_is_where_it_changes_nothing_else() {
        let two = day_to_day(&days(&[6.0, 6.0]), 5.0).unwrap();
        let three = day_to_day(&days(&[6.0; 3]), 5.0).unwrap();
        let (told, found) = (half_width(&two.with_one_more), half_width(&three.gap));
        assert!(told < half_width(&two.gap));
        // A third that agrees also says that days agree: it narrows by somewhat more than is promised.
        assert!(found < told && told < 1.2 * found, "{told} {found}");
    }

    #[test]
    fn two_days_lie_apart_by_half_their_squared_distance_less_their_own_error() {
        let near = how_far_apart(&days(&[6.0, 6.5])).unwrap();
        assert!(near.shown == 0.0 && near.chance_if_alike > 0.5);
        let far = how_far_apart(&days(&[-14.0, 26.0])).unwrap();
        assert!((far.shown - (800.0_f64 - 9.0).sqrt()).abs() < 1e-9 && far.chance_if_alike < 1e-9);
        assert!(how_far_apart(&[]).is_err());
    }

    #[test]
    fn what_does_not_even_out_weighs_a_day_down_and_no_more() {
        let mut uneven = days(&[0.0, 10.0]);
        uneven[1].weighed = 90.0;
        let (even, uneven) =
            (day_to_day(&days(&[0.0, 10.0]), 5.0).unwrap(), day_to_day(&uneven, 5.0).unwrap());
        assert!(uneven.gap.mean() < even.gap.mean() && uneven.counts[1] < even.counts[1]);
        assert!((uneven.counts.iter().sum::<f64>() - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_control_links_days_that_hold_one_build_each() {
        let with = |effect: f64, between: Between| DayEffect { between, ..day(effect, 9.0) };
        let (new, own) = (Between::CandidateAndControl, Between::BaselineAndControl);
        let found = day_to_day(&[with(80.0, new), with(74.0, own)], 5.0).unwrap();
        assert!((found.gap.mean() - 6.0).abs() < 1e-9 && (found.counts[0] + found.counts[1]).abs() < 1e-12);
        let links = [with(80.0, new), with(74.0, own)];
        assert_eq!(how_far_apart(&links), Ok(Apart { shown: 0.0, chance_if_alike: 1.0 }));
        // Two days of both builds tell twice what two days with one each do.
        let both = day_to_day(&days(&[6.0, 6.0]), 5.0).unwrap();
        assert!(half_width(&found.gap) > 1.8 * half_width(&both.gap));
        let all = [with(80.0, new), with(74.0, own), day(6.0, 9.0)];
        assert!(half_width(&day_to_day(&all, 5.0).unwrap().gap) < half_width(&found.gap));
        assert_eq!(day_to_day(&[with(80.0, new), with(82.0, new)], 5.0), Err(Refusal::NotLinked));
        assert_eq!(day_to_day(&[with(80.0, own), with(82.0, own)], 5.0), Err(Refusal::NotLinked));
    }

    #[test]
    fn what_is_no_session_is_refused() {
        assert_eq!(day_to_day(&[], 5.0), Err(Refusal::TooFew { got: 0, need: 1 }));
        for usual in [0.0, -1.0, f64::INFINITY] {
            assert_eq!(day_to_day(&days(&[1.0]), usual), Err(Refusal::Argument { got: usual }));
        }
        assert!(day_to_day(&days(&[1.0]), f64::NAN).is_err() && day_to_day(&days(&[f64::NAN]), 5.0).is_err());
        assert_eq!(day_to_day(&[day(1.0, 0.0)], 5.0), Err(Refusal::Argument { got: 0.0 }));
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

//! One candidate against the baseline on one measure: the careful difference and the textbook ones.

use super::averages::{self, Averages};
use super::comparison::{Basis, Comparison};
use super::estimate::{Counts, Group, Method, Numbers, RatioTest};
use super::pair::{Aspect, Compared, Pair, Streaks, Turns, pooled_sd, textbook};
use super::shot_table::Measured;
use crate::verdict::Why;
use session::measure::MeasureId;
use stats::leaning::leaning;
use stats::{CautiousDifference, FEWEST_FOR_SPREAD, Level, Sample, SpreadRatio};

/// Fewest shots with each build before a verdict is thought of.
const FEWEST_SHOTS: usize = 3;

/// What the order is taken to move a measure of the golfer's own by, in standard deviations of a shot.
///
/// A choice of ours: carry needs about half a deviation, ball speed more than one in the stress test. With this much
/// equal clubs hit one after the other are called different in at most 5 of 100 sessions where the measure drifts like
/// carry, strongly, or like ball speed, typically; where it drifts strongly like ball speed, in up to 16 (target 30).
const OWN_MEASURES_DRIFT: f64 = 0.75;

/// Compares `candidate` with `baseline` on a measure, from shots where there are any, else from averages.
#[must_use]
pub fn compare(measured: &Measured, baseline: usize, candidate: usize, aspect: Aspect) -> Pair {
    let (table, measure) = (measured.table, measured.measure);
    let (base, cand) = (measured.values(baseline), measured.values(candidate));
    if base.is_empty() || cand.is_empty() {
        let averages = |build, shots: &[f64]| Averages::of(table.session(), measure, build, shots);
        return averages::compare(&averages(baseline, &base), &averages(candidate, &cand), aspect);
    }
    let fitted = measured.rounds.as_ref().filter(|_| table.shared_rounds(baseline, candidate) > 0);
    let compared = fitted.map(|fitted| fitted.compare(candidate, baseline));
    // Without scatter within the rounds there is nothing to judge by; blocks would call it the order's doing.
    let same_in_every_round = matches!(compared, Some(Err(stats::Refusal::NoScatter)));
    let rounds = compared.and_then(Result::ok);
    let rounds = rounds.filter(|found| found.shared_rounds >= 2);
    let compared = rounds
        .as_ref()
        .and_then(|found| measured.compared(baseline, candidate, found.headline().diff(), &[&base, &cand]));
    // The laps that hold both may hold fewer shots than any verdict needs, however many lie outside of them.
    let is_enough = compared.is_none_or(|Compared { n, .. }| n.baseline.min(n.candidate) >= FEWEST_SHOTS);
    let (rounds, compared) = if is_enough { (rounds, compared) } else { (None, None) };
    let mut turns =
        rounds.as_ref().map(|found| Turns { are_too_long: found.turns_too_long(), streaks: None });
    let n = Counts { baseline: base.len(), candidate: cand.len() };
    let mut numbers =
        Numbers { baseline: Some(group(&base)), candidate: Some(group(&cand)), ..Numbers::default() };
    let (Ok(base), Ok(cand)) = (Sample::new(base), Sample::new(cand)) else {
        return Pair { numbers, comparison: Err(Why::TooFewShots), turns, compared };
    };
    let welch = stats::welch(&cand, &base).ok();
    numbers.welch = welch.map(|d| textbook(&d));
    let spread = stats::spread_ratio(&cand, &base).ok();
    numbers.spread = spread.as_ref().and_then(ratio_test);
    numbers.round = rounds.as_ref().map(|r| textbook(&r.fixed_effects));
    if n.baseline < FEWEST_SHOTS || n.candidate < FEWEST_SHOTS {
        return Pair { numbers, comparison: Err(Why::TooFewShots), turns, compared };
    }
    let shot_sd =
        rounds.as_ref().map_or_else(|| pooled_sd(&base.summary(), &cand.summary()), |r| r.residual_sd);
    let on = |basis, method| Comparison { basis, method, n, shot_sd, assumed_sd: None };
    let comparison = match (aspect, spread, rounds, welch) {
        (Aspect::Spread, Some(spread), ..) => Ok(on(Basis::Spread(spread), Method::SpreadRatio)),
        (Aspect::Spread, None, ..) if n.baseline.min(n.candidate) < FEWEST_FOR_SPREAD => {
            Err(Why::TooFewShots)
        }
        (Aspect::Average, ..) if same_in_every_round => Err(Why::NoScatterInRounds),
        (Aspect::Average, _, Some(rounds), _) => {
            let shots = measured.in_rounds().unwrap_or_default();
            let share = table.start_of_laps(baseline, candidate);
            let leaning = leaning(shots, candidate, baseline);
            let careful = rounds.headline_of(leaning.inflation);
            if let Some(turns) = turns.as_mut().filter(|turns| !turns.are_too_long) {
                let usual =
                    rounds.fixed_effects.half_width(Level::P95) * stats::turn_widening(rounds.shots_per_turn);
                turns.streaks = Streaks::of(leaning.memory, careful.half_width(Level::P95) / usual);
            }
            let careful = careful.allowing(share * order_allowance(measure, shot_sd));
            Ok(on(Basis::Difference(careful), Method::Rounds))
        }
        (Aspect::Average, _, None, Some(welch)) => {
            let careful = CautiousDifference::new(&welch, order_allowance(measure, shot_sd));
            Ok(on(Basis::Difference(careful), Method::WelchWithAllowance))
        }
        _ => Err(Why::NoScatter),
    };
    Pair { numbers, comparison, turns, compared }
}

/// How far the order alone can move a measure. Of one that nobody knows, so many of its shots' standard deviations.
#[must_use]
pub fn order_allowance(measure: &MeasureId, shot_sd: f64) -> f64 {
    measure.usual().map_or(OWN_MEASURES_DRIFT * shot_sd, |known| known.facts().order_allowance)
}

fn group(values: &[f64]) -> Group {
    let n = values.len();
    let sd = (n >= 2).then(|| (stats::describe::sum_of_squares(values) / (n - 1) as f64).sqrt());
    Group { n, mean: stats::describe::mean(values), sd }
}

fn ratio_test(spread: &SpreadRatio) -> Option<RatioTest> {
    let interval = spread.interval(Level::P95)?;
    Some(RatioTest { ratio: spread.ratio(), p: spread.p_value(), low: interval.low, high: interval.high })
}

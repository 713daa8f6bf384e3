//! Looks for what makes a comparison lie, in the session's own numbers.

use super::seen::{AllowedFor, DriftShared, Pushes, Seen};
use crate::analysis::warming_up::warm_up_deficit_yd;
use crate::analysis::{Aspect, Include};
use crate::facts::{HowHit, NumberOfShots, OrderAllowance};
use crate::judge::Judgment;
use crate::settle::Settled;
use crate::verdict::{Direction, Why};
use session::digits::power_of_ten;
use session::few;
use session::known::Known;
use session::measure::{self, MeasureId};
use session::{Order, Session, Shot, SummaryOf};
use stats::describe::{MAD_TO_SD, mad, mean, median};
use stats::{Level, OrderedShot};

/// A head start from warming up below this many yards of carry is not worth a word.
const SMALLEST_HEAD_START_YD: f64 = 1.0;
/// One build with this many times the shots of the other is worth a word.
const UNEQUAL: f64 = 2.0;
/// Shots farther from their build's median than this many robust deviations are pointed at.
pub(super) const FAR: f64 = 3.5;
/// Of fewer shots with a build none lies far from the rest.
pub(super) const FEWEST_TO_LIE_FAR_FROM: usize = 5;
/// Of the time that the shots of both took, by so much one club was hit later on average to have more of what came with it: of
/// two blocks of one length it is half of that time.
const CLEARLY_LATER: f64 = 0.25;
/// Numbers that miss more than this share of themselves are no count of shots.
const MOST_MISSING: f64 = 2.0;

/// Everything seen, in the order of the session's life.
/// `typical_told`: whether the typical shot is told of the two.
/// `in_doubt`: values that the golfer is asked about; they lie far, and are none of the club's far shots.
pub(super) fn look(
    settled: &Settled<'_>,
    headline: &Judgment,
    in_doubt: &[f64],
    typical_told: bool,
) -> Vec<Seen> {
    let session = settled.session;
    let (baseline, candidate, rounds) = (headline.baseline, headline.candidate, headline.shared_rounds);
    let measure = &headline.measure;
    let of_pair: Vec<(usize, &Shot)> = session
        .shots
        .iter()
        .enumerate()
        .filter(|(_, s)| s.build == baseline || s.build == candidate)
        .collect();
    let count = |build| of_pair.iter().filter(|(_, s)| s.build == build).count();
    let counts = [(baseline, count(baseline)), (candidate, count(candidate))];
    if counts.iter().any(|(_, n)| *n == 0) {
        return vec![Seen::AveragesOnly];
    }
    // As the comparison counts turns: it falls back for them exactly when this is said.
    let long_turns = headline.pair.turns.is_some_and(|turns| turns.are_too_long);
    let mut seen = Vec::new();
    if long_turns {
        seen.push(Seen::LongTurns { longest: settled.table.longest_turn([baseline, candidate]) });
    } else if headline.facts.order == HowHit::InTurnNotCompared && headline.facts.order_is_mixed_up() {
        seen.push(Seen::NotCompared { rounds });
    } else {
        seen.push(Seen::Order {
            order: if rounds > 0 { Order::Interleaved } else { not_in_turn(session.order) },
            rounds,
            always_first: settled.table.always_first(baseline, candidate),
        });
    }
    if let Some(streaks) = headline.pair.turns.and_then(|turns| turns.streaks) {
        seen.push(Seen::InStreaks { memory: streaks.memory, widened: streaks.widened });
    }
    if rounds == 0 && session.order != Order::Unknown {
        let allowed = allowed(headline, settled.asked().aspect());
        seen.extend(cold_start(&of_pair, measure, [baseline, candidate], allowed));
    }
    seen.extend(drift(settled, headline));
    seen.extend(unequal(counts));
    seen.extend(numbers_missing(session));
    seen.extend(summaries_that_disagree(session, baseline, candidate));
    if session.shots.iter().any(|s| s.left_out.is_some()) {
        let left = |build| settled.table.left_out(build);
        seen.push(Seen::LeftOut { by_build: (0..session.builds.len()).map(left).collect() });
    }
    seen.extend(far_shots(settled, measure, [baseline, candidate], in_doubt, typical_told));
    seen.extend(match headline.facts.number {
        NumberOfShots::SaidFixed => None,
        NumberOfShots::SaidNotFixed => Some(Seen::NotFixed),
        NumberOfShots::NotSaid => Some(Seen::FixedNotSaid),
        NumberOfShots::Planned { round, planned } => Some(Seen::PlannedLooks {
            round,
            planned,
            is_unfinished: round < planned && last_is_unfinished(session, [baseline, candidate]),
            looked: round < planned || settled.question.stopping.was_looked_at_before(planned),
        }),
        NumberOfShots::NotOfThePlan { rounds, planned } => Some(Seen::NotOfThePlan { rounds, planned }),
    });
    seen.extend(no_swing_or_strike(session));
    seen
}

/// Whether the last round holds fewer shots with either build than every round before it.
fn last_is_unfinished(session: &Session, builds: [usize; 2]) -> bool {
    let Some(last) = session.shots.iter().filter_map(|shot| shot.round).max() else { return false };
    let hit = |round: u32, build: usize| {
        session.shots.iter().filter(|shot| shot.round == Some(round) && shot.build == build).count()
    };
    builds
        .iter()
        .any(|build| (1..last).map(|round| hit(round, *build)).min().is_some_and(|n| hit(last, *build) < n))
}

/// Interleaved over all builds, but not for this pair, is blocked for this pair.
fn not_in_turn(order: Order) -> Order {
    if order == Order::Interleaved { Order::Blocked } else { order }
}

/// What the interval that decided holds for warming up, and for whatever else changes with time.
fn allowed(headline: &Judgment, aspect: Aspect) -> AllowedFor {
    match (headline.comparison(), headline.facts.order_allowance) {
        (Some(_), _) if aspect == Aspect::Spread => AllowedFor::Nothing,
        (Some(comparison), OrderAllowance::Included) => AllowedFor::UpTo { size: comparison.allowance() },
        _ => AllowedFor::NotSaid,
    }
}

fn cold_start(
    of_pair: &[(usize, &Shot)],
    id: &MeasureId,
    [baseline, candidate]: [usize; 2],
    allowed: AllowedFor,
) -> Option<Seen> {
    let deficit = |build: usize| {
        let deficits: Vec<f64> =
            of_pair.iter().filter(|(_, s)| s.build == build).map(|(i, _)| warm_up_deficit_yd(*i)).collect();
        mean(&deficits)
    };
    let head_start = deficit(baseline) - deficit(candidate);
    if head_start.abs() < SMALLEST_HEAD_START_YD {
        return None;
    }
    let build = if head_start > 0.0 { baseline } else { candidate };
    let shots = of_pair.iter().take_while(|(_, s)| s.build == build).count();
    Some(Seen::ColdStart {
        build,
        shots,
        head_start: id.usual().and_then(|m| m.facts().per_yard_of_carry).map(|rate| rate * head_start.abs()),
        allowed,
    })
}

/// A trend over the order of the shots, each build at its own level, whose interval excludes zero.
pub(super) fn drift(settled: &Settled<'_>, headline: &Judgment) -> Option<Seen> {
    let session = settled.session;
    // Numbers that were rounded or copied until nothing scatters show no trend that could be told from that.
    let no_scatter = matches!(headline.decision.why, Some(Why::NoScatter | Why::NoScatterInRounds));
    if session.order == Order::Unknown || no_scatter {
        return None;
    }
    let index = session.measure_index(&headline.measure)?;
    let shot = |(at, shot): (usize, &Shot)| {
        let is_of_pair = shot.build == headline.baseline || shot.build == headline.candidate;
        let value = settled.table.value(at, index).filter(|_| is_of_pair)?;
        Some(OrderedShot { at: at as f64, build: shot.build, value })
    };
    let shots: Vec<OrderedShot> = session.shots.iter().enumerate().filter_map(shot).collect();
    let total = stats::trend(&shots).ok()?.total();
    let interval = total.interval(Level::P95);
    let shared = match headline.shared_rounds {
        0 => DriftShared::Not,
        _ if headline.pair.turns.is_some_and(|turns| turns.are_too_long) => DriftShared::InPart,
        _ => DriftShared::Alike,
    };
    interval.excludes(0.0).then_some(Seen::Drift {
        change: total.diff,
        low: interval.low,
        high: interval.high,
        shared,
        pushes: pushes(&shots, headline, total.diff).filter(|_| shared == DriftShared::Not),
    })
}

/// Which way a drift pushes the gap: whichever of two clubs was hit later gets what came with time. `None` where their shots
/// lie about as late on average.
fn pushes(shots: &[OrderedShot], headline: &Judgment, change: f64) -> Option<Pushes> {
    let middle = |build: usize| {
        let own = shots.iter().filter(|shot| shot.build == build).map(|shot| shot.at);
        mean(&own.collect::<Vec<_>>())
    };
    let later = middle(headline.candidate) - middle(headline.baseline);
    let span = shots.last()?.at - shots.first()?.at;
    let up = (later > 0.0) == (change > 0.0);
    let toward = if up { Direction::Higher } else { Direction::Lower };
    let by = (change * later / span).abs();
    let needed = headline.drift_to_explain();
    let leaves_luck = headline.decision.direction == Some(toward) && needed > 0.0 && by >= needed;
    (later.abs() > CLEARLY_LATER * span).then_some(Pushes {
        build: headline.candidate,
        toward,
        by,
        leaves_luck,
    })
}

fn unequal(counts: [(usize, usize); 2]) -> Option<Seen> {
    let [mut fewer, mut more] = counts;
    if fewer.1 > more.1 {
        std::mem::swap(&mut fewer, &mut more);
    }
    (more.1 as f64 >= UNEQUAL * fewer.1 as f64).then_some(Seen::UnequalCounts {
        fewer: fewer.0,
        few: fewer.1,
        more: more.0,
        many: more.1,
    })
}

/// Gaps in the shots' own numbers, counted over the session, or build by build where each starts again.
fn numbers_missing(session: &Session) -> Option<Seen> {
    let total = session.shots.iter().filter(|s| s.number.is_some()).count();
    let all = arrange::distinct(session.shots.iter().filter_map(|s| s.number));
    let sequences = if all.len() == total {
        vec![all]
    } else {
        let mut by_build: few::Map<usize, Vec<u32>> = few::Map::default();
        for shot in &session.shots {
            by_build.entry(shot.build, Vec::new).extend(shot.number);
        }
        by_build.into_values().collect()
    };
    let (mut missing, mut first) = (0, None);
    for numbers in sequences {
        let numbers = arrange::distinct(numbers);
        for pair in numbers.windows(2) {
            let gap = (pair[1] - pair[0] - 1) as usize;
            if gap > 0 {
                missing += gap;
                first = first.or(Some(pair[0] + 1));
            }
        }
    }
    let first = first?;
    (missing as f64 <= MOST_MISSING * total as f64).then_some(Seen::NumbersMissing { missing, first })
}

fn summaries_that_disagree(session: &Session, baseline: usize, candidate: usize) -> Vec<Seen> {
    let mut seen = Vec::new();
    for summary in session.summaries.iter().filter(|s| s.of == SummaryOf::All) {
        if summary.build != baseline && summary.build != candidate {
            continue;
        }
        for (id, value) in summary.values.iter() {
            let Some((printed, index)) = value.mean.zip(session.measure_index(id)) else { continue };
            let values: Vec<f64> = session
                .shots
                .iter()
                .filter(|s| s.build == summary.build)
                .filter_map(|s| s.values.get(index).copied().flatten())
                .collect();
            if values.is_empty() {
                continue;
            }
            // Printed averages and printed shots are both rounded: half a unit of the last digit each.
            let digit = 1.0 / power_of_ten(measure::known(id).map_or(2, |m| usize::from(m.decimals)));
            let of_shots = mean(&values);
            if (printed - of_shots).abs() > digit {
                seen.push(Seen::SummaryDisagrees {
                    build: summary.build,
                    measure: id.clone(),
                    printed,
                    of_shots,
                    n: values.len(),
                    claimed: summary.n,
                });
            }
        }
    }
    seen
}

fn far_shots(
    settled: &Settled<'_>,
    id: &MeasureId,
    [baseline, candidate]: [usize; 2],
    in_doubt: &[f64],
    typical_told: bool,
) -> Option<Seen> {
    let index = settled.session.measure_index(id)?;
    let far = |build: usize| -> usize {
        let values = settled.table.values(build, index, Include::All);
        let distance = robust_distance(&values).filter(|_| values.len() >= FEWEST_TO_LIE_FAR_FROM);
        let Some(distance) = distance else { return 0 };
        let is_in_doubt = |value: f64| in_doubt.iter().any(|odd| odd.to_bits() == value.to_bits());
        values.iter().filter(|value| distance(**value) > FAR && !is_in_doubt(**value)).count()
    };
    let (of_baseline, of_candidate) = (far(baseline), far(candidate));
    let count = of_baseline + of_candidate;
    let (build, other, others) = if of_candidate > of_baseline {
        (candidate, baseline, of_baseline)
    } else {
        (baseline, candidate, of_candidate)
    };
    (count > 0).then_some(Seen::FarShots { count, build, others, other, typical_told })
}

/// How far a value lies from the median of these, in robust deviations; `None` where most of them are the same.
pub(super) fn robust_distance(values: &[f64]) -> Option<impl Fn(f64) -> f64> {
    let (middle, spread) = (median(values)?, mad(values)?);
    (spread > 0.0).then_some(move |value: f64| (value - middle).abs() / (MAD_TO_SD * spread))
}

fn no_swing_or_strike(session: &Session) -> Option<Seen> {
    let has = |known: Known| session.measures.iter().any(|m| *m == known);
    let club_speed = has(Known::ClubSpeed);
    let strike = has(Known::StrikeHeight) || has(Known::StrikeOffset);
    (!(club_speed && strike)).then_some(Seen::NoSwingOrStrike { club_speed, strike })
}

//! Trust findings in words: what was seen, why it matters, what to do.

use super::{Seen, TrustFinding, Weight};
use crate::question::Question;
use crate::session::{Order, Session};
use crate::words::{Subject, count_of, short_name, shots};
use text::trust as say;

/// The finding with its sentences.
pub(super) fn say(session: &Session, question: &Question, seen: Seen) -> TrustFinding {
    let weight = weight(&seen);
    let [what, why, next] = sentences(session, &Subject::of(&question.measure, session), &seen);
    TrustFinding { seen, weight, what, why, next }
}

fn weight(seen: &Seen) -> Weight {
    match seen {
        Seen::Order { order: Order::Interleaved, .. } | Seen::PlannedLooks { .. } => Weight::Good,
        Seen::Order { .. }
        | Seen::LongTurns { .. }
        | Seen::ColdStart { .. }
        | Seen::NumbersMissing { .. }
        | Seen::SummaryDisagrees { .. }
        | Seen::AveragesOnly => Weight::Serious,
        Seen::UnequalCounts { .. }
        | Seen::Drift { .. }
        | Seen::LeftOut { .. }
        | Seen::FarShots { .. }
        | Seen::FewShotsDecide { .. }
        | Seen::NotFixed
        | Seen::NoSwingOrStrike { .. } => Weight::Note,
    }
}

/// What was seen, why it matters, what to do.
fn sentences(session: &Session, subject: &Subject, seen: &Seen) -> [String; 3] {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    match seen {
        Seen::Order { order: Order::Interleaved, rounds } => {
            [say::in_turn(&rounds.to_string()), say::in_turn_why(), say::in_turn_next()]
        }
        Seen::Order { order: Order::Blocked, .. } => {
            [say::blocked(), say::blocked_why(), say::blocked_next()]
        }
        Seen::Order { order: Order::Unknown, .. } => {
            [say::order_unknown(), say::order_unknown_why(), say::order_unknown_next()]
        }
        Seen::LongTurns { shots: turn } => [
            say::long_turns(&crate::digits::rounded(*turn, 0)),
            say::long_turns_why(),
            say::long_turns_next(),
        ],
        Seen::ColdStart { build, shots: n, head_start } => [
            say::cold_start(&name(*build), &shots(*n)),
            head_start.map_or_else(say::first_shots_are_rarely_the_best, |gain| {
                say::cold_start_why(&subject.amount(gain), &subject.name)
            }),
            say::cold_start_next(),
        ],
        Seen::UnequalCounts { fewer, few, more, many } => [
            say::unequal(&name(*more), &shots(*many), &name(*fewer), &count_of(*few)),
            say::unequal_why(),
            say::unequal_next(),
        ],
        Seen::Drift { change, low, high } => [
            say::drift(&subject.name, *change > 0.0, &subject.amount(*change)),
            say::drift_why(&subject.span(*low, *high, None)),
            say::drift_next(),
        ],
        Seen::NumbersMissing { missing, first } => [
            say::numbers_missing(*missing, &first.to_string()),
            say::numbers_missing_why(),
            say::numbers_missing_next(),
        ],
        Seen::SummaryDisagrees { build, measure, printed, of_shots, n, claimed } => {
            let subject = Subject::of(measure, session);
            let (printed, of_shots) = (subject.value(*printed), subject.value(*of_shots));
            let here = shots(*n);
            [
                say::average_disagrees(&subject.name, &name(*build)),
                match claimed {
                    Some(claimed) => say::printed_over(&printed, &shots(*claimed as usize), &here, &of_shots),
                    None => say::printed(&printed, &here, &of_shots),
                },
                say::average_disagrees_next(),
            ]
        }
        Seen::LeftOut { by_build } => {
            let counts: Vec<String> = by_build
                .iter()
                .enumerate()
                .filter(|(_, n)| **n > 0)
                .map(|(build, n)| say::of_club(&count_of(*n), &name(build)))
                .collect();
            [say::left_out(&counts.join(", ")), say::left_out_why(), say::left_out_next()]
        }
        Seen::FarShots { count: 1, build } => {
            [say::one_far_shot(&name(*build)), say::one_far_shot_why(), say::far_shots_next()]
        }
        Seen::FarShots { count, build } => {
            [say::far_shots(*count, &name(*build)), say::far_shots_why(), say::far_shots_next()]
        }
        Seen::FewShotsDecide { shots: few } => {
            [say::few_decide(*few), say::few_decide_why(), say::few_decide_next()]
        }
        Seen::NotFixed => [say::not_fixed(), say::not_fixed_why(), say::not_fixed_next()],
        Seen::PlannedLooks { round, planned } => [
            say::planned_looks(&round.to_string(), &planned.to_string()),
            say::planned_looks_why(),
            say::planned_looks_next(),
        ],
        Seen::NoSwingOrStrike { club_speed, strike } => [
            match (club_speed, strike) {
                (false, false) => say::no_speed_no_strike(),
                (true, _) => say::no_strike(),
                (false, true) => say::no_speed(),
            },
            say::club_or_swing_unknown(*club_speed || *strike),
            say::no_speed_no_strike_next(),
        ],
        Seen::AveragesOnly => [say::averages_only(), say::averages_only_why(), say::averages_only_next()],
    }
}

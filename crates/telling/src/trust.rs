//! Trust findings in words: what was seen, why it matters, what to do.

use crate::ends::{Printed, printed_difference};
use crate::format::{Subject, count_of, shots};
use crate::left_out::of_club;
use crate::odd;
use crate::phrases::{does, phrase_for};
use crate::words::sentences as joined;
use judging::trust::{AllowedFor, DriftShared, Seen, Weight};
use serde::Serialize;
use session::measure::{Better, MeasureId};
use session::names::short_name;
use session::{Order, Session};
use text::Voice;
use text::trust as say;

/// One thing worth knowing about the session.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct TrustFinding {
    /// What was seen, with its numbers.
    pub seen: Seen,
    /// How much it speaks against the session.
    pub weight: Weight,
    /// What was seen, in words.
    pub what: String,
    /// Why it matters, in the measure's own unit where that is known.
    pub why: String,
    /// What to do about it.
    pub next: String,
}

/// What a drift calls for: more of what grows with a warm golfer calls for warming up, less of it for rest.
fn drifted(subject: &Subject<'_>, change: f64) -> say::Advice {
    match subject.id.usual().map(|known| known.facts().better) {
        Some(Better::Higher) if change > 0.0 => say::Advice::WarmUp,
        Some(Better::Higher) => say::Advice::Rest,
        _ => say::Advice::Both,
    }
}

/// A finding with its sentences; `measure` is the one asked for, `in_doubt` whether a value of it is asked about.
pub(crate) fn say(
    session: &Session,
    measure: &MeasureId,
    seen: Seen,
    in_doubt: bool,
    voice: &Voice,
) -> TrustFinding {
    let weight = seen.weight();
    let [what, why, next] = sentences(session, &Subject::of(measure, session, voice), &seen, in_doubt);
    TrustFinding { seen, weight, what, why, next }
}

/// What was seen, why it matters, what to do.
pub(crate) fn sentences(
    session: &Session,
    subject: &Subject<'_>,
    seen: &Seen,
    in_doubt: bool,
) -> [String; 3] {
    let voice = subject.voice;
    let several = session.builds.len() > 2;
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    match seen {
        Seen::OddValue { .. } => odd::sentences(session, seen, &subject.id, voice).unwrap_or_default(),
        Seen::Moved { build, names, before, after, change } => {
            let [first, second] = names.each_ref().map(|name| short_name(name));
            let printed = printed_difference(after - before, change, None, subject);
            [
                say::moved(
                    voice,
                    &name(*build),
                    &subject.name,
                    &subject.value(*before),
                    &first,
                    &subject.value(*after),
                    &second,
                ),
                say::moved_why(voice, &printed.value, &printed.low, &printed.high, &printed.level),
                say::moved_next(voice),
            ]
        }
        Seen::Learning { build, other, is_the_baseline, gained, is_rough, low, high, then, then_range } => {
            let printed = printed_difference(*then, then_range, None, subject);
            let (club, other) = (name(*build), name(*other));
            let Printed { value, low: from, high: to, level } = &printed;
            [
                say::learning(
                    voice,
                    &club,
                    &other,
                    &subject.name,
                    *is_rough,
                    &subject.amount(if *is_rough { *low } else { *gained }),
                ),
                say::learning_why(
                    voice,
                    &subject.span(*low, *high, None),
                    *is_the_baseline,
                    &other,
                    value,
                    from,
                    to,
                    level,
                ),
                say::learning_next(voice),
            ]
        }
        Seen::Order { order: Order::Interleaved, rounds, always_first: None } => {
            [say::in_turn(voice, &rounds.to_string()), say::in_turn_why(voice), say::in_turn_next(voice)]
        }
        Seen::Order { order: Order::Interleaved, rounds, always_first: Some(first) } => [
            say::in_turn_same_first(voice, &rounds.to_string(), &name(*first)),
            say::in_turn_same_first_why(voice, &name(*first)),
            say::in_turn_same_first_next(voice, several),
        ],
        Seen::Order { order: Order::Blocked, .. } => {
            [say::blocked(voice, several), say::blocked_why(voice, several), say::blocked_next(voice)]
        }
        Seen::Order { order: Order::Unknown, .. } => {
            [say::order_unknown(voice), say::order_unknown_why(voice), say::order_unknown_next(voice)]
        }
        Seen::NotCompared { rounds } => [
            say::not_compared(voice, &rounds.to_string(), &subject.the()),
            say::not_compared_why(voice),
            say::not_compared_next(voice),
        ],
        Seen::LongTurns { longest } => [
            say::long_turns(voice, &longest.to_string()),
            say::long_turns_why(voice),
            say::long_turns_next(voice),
        ],
        Seen::InStreaks { memory, widened } => [
            say::in_streaks(voice, &whole_percent(*memory)),
            say::in_streaks_why(voice, &whole_percent(widened - 1.0)),
            say::in_streaks_next(voice),
        ],
        Seen::ColdStart { build, shots: n, head_start, allowed } => [
            say::cold_start(voice, &name(*build), &shots(voice, *n)),
            head_start.map_or_else(
                || say::first_shots_are_rarely_the_best(voice),
                |gain| {
                    let (allows, allowed) = match allowed {
                        AllowedFor::UpTo { size } => (say::Allows::UpTo, subject.chosen(*size)),
                        AllowedFor::Nothing => (say::Allows::Nothing, String::new()),
                        AllowedFor::NotSaid => (say::Allows::NotSaid, String::new()),
                    };
                    say::cold_start_why(voice, &subject.amount(gain), &subject.name, allows, &allowed)
                },
            ),
            say::cold_start_next(voice),
        ],
        Seen::UnequalCounts { fewer, few, more, many } => [
            say::unequal(voice, &name(*more), &shots(voice, *many), &name(*fewer), &count_of(voice, *few)),
            say::unequal_why(voice),
            say::unequal_next(voice),
        ],
        Seen::Drift { change, low, high, shared, pushes } => {
            let size = subject.amount(*change);
            let in_turn = *shared != DriftShared::Not;
            [
                match phrase_for(&subject.id, voice).sides {
                    Some(sides) => {
                        say::drift_sideways(voice, in_turn, &subject.the(), &sides.of(subject, *change))
                    }
                    None => say::drift(voice, in_turn, &subject.name, *change > 0.0, &size),
                },
                joined(&[
                    say::drift_why(
                        voice,
                        &subject.span(*low, *high, None),
                        match shared {
                            DriftShared::Alike => say::Shared::Alike,
                            DriftShared::InPart => say::Shared::InPart,
                            DriftShared::Not => say::Shared::NotAtAll,
                        },
                    ),
                    pushes.map_or_else(String::new, |way| {
                        say::drift_pushes(voice, &does(subject, &name(way.build), way.toward))
                    }),
                ]),
                match shared {
                    DriftShared::Alike => say::drift_next(voice, drifted(subject, *change)),
                    DriftShared::InPart => say::long_turns_next(voice),
                    DriftShared::Not => say::blocked_next(voice),
                },
            ]
        }
        Seen::NumbersMissing { missing, first } => [
            say::numbers_missing(voice, *missing, &first.to_string()),
            say::numbers_missing_why(voice),
            say::numbers_missing_next(voice),
        ],
        Seen::SummaryDisagrees { build, measure, printed, of_shots, n, claimed } => {
            let subject = Subject::of(measure, session, voice);
            let (printed, of_shots) = (subject.value(*printed), subject.value(*of_shots));
            let here = shots(voice, *n);
            [
                say::average_disagrees(voice, &subject.name, &name(*build)),
                match claimed {
                    Some(claimed) => {
                        say::printed_over(voice, &printed, &shots(voice, *claimed as usize), &here, &of_shots)
                    }
                    None => say::printed(voice, &printed, &here, &of_shots),
                },
                say::average_disagrees_next(voice),
            ]
        }
        Seen::LeftOut { by_build } => {
            let counts: Vec<String> = by_build
                .iter()
                .enumerate()
                .filter(|(_, part)| part.shots > 0)
                .map(|(build, part)| of_club(voice, &name(build), *part))
                .collect();
            [
                say::left_out(voice, &counts.join(", ")),
                say::left_out_why(voice),
                say::left_out_next(voice, in_doubt),
            ]
        }
        Seen::FarShots { count, build, others, other, typical_told } => {
            let next =
                if *typical_told { say::far_shots_next(voice) } else { say::left_out_next(voice, in_doubt) };
            let [what, why] = if *count == 1 {
                [say::one_far_shot(voice, several, &name(*build)), say::one_far_shot_why(voice)]
            } else {
                [
                    say::far_shots(
                        voice,
                        several,
                        *count,
                        *others,
                        &name(*build),
                        count - others,
                        &name(*other),
                    ),
                    say::far_shots_why(voice),
                ]
            };
            [what, why, next]
        }
        Seen::FewShotsDecide { shots: few, rounds_to_go } => [
            say::few_decide(voice, *few),
            say::few_decide_why(voice),
            match rounds_to_go {
                Some(rounds) => say::few_decide_next_go_on(voice, in_doubt, *rounds as usize),
                None => say::few_decide_next(voice, in_doubt),
            },
        ],
        Seen::NotFixed => [say::not_fixed(voice), say::not_fixed_why(voice), say::not_fixed_next(voice)],
        Seen::FixedNotSaid => {
            [say::fixed_not_said(voice), say::not_fixed_why(voice), say::fixed_not_said_next(voice)]
        }
        Seen::NotOfThePlan { rounds, planned } => [
            say::not_of_the_plan(voice, *rounds as usize, &planned.to_string()),
            say::not_fixed_why(voice),
            say::not_of_the_plan_next(voice),
        ],
        Seen::PlannedLooks { round, planned, is_unfinished, looked } => [
            say::planned_looks(voice, &round.to_string(), &planned.to_string(), *is_unfinished),
            say::planned_looks_why(voice, *looked),
            say::planned_looks_next(voice, round >= planned),
        ],
        Seen::NoSwingOrStrike { club_speed, strike } => [
            match (club_speed, strike) {
                (false, false) => say::no_speed_no_strike(voice),
                (true, _) => say::no_strike(voice),
                (false, true) => say::no_speed(voice),
            },
            say::club_or_swing_unknown(voice, *club_speed || *strike),
            match (club_speed, strike) {
                (false, false) => say::no_speed_no_strike_next(voice),
                (true, _) => say::no_strike_next(voice),
                (false, true) => say::no_speed_next(voice),
            },
        ],
        Seen::AveragesOnly => {
            [say::averages_only(voice), say::averages_only_why(voice), say::averages_only_next(voice)]
        }
    }
}

fn whole_percent(share: f64) -> String {
    format!("{:.0}", 100.0 * share)
}

//! The sentences for the goal 'tighter': scatter in hundredths more or less, never a bare ratio.

use super::Words;
use super::answer::depends_on_left_out;
use super::case::{Case, sentences};
use super::format::number;
use crate::analysis::Estimate;
use crate::verdict::{DecisionKind, Direction, Matters, Why};
use text::answer::{choose_freely, holds_here};
use text::spread as say;

/// The sentences when scatter was asked for and can be compared.
pub(super) fn words(case: &Case, estimate: &Estimate) -> Words {
    let decision = &case.judgment.decision;
    match (decision.kind, decision.direction) {
        (DecisionKind::Different, Some(direction)) => different(case, estimate, direction),
        (DecisionKind::Same, _) => Words {
            headline: say::same(&case.baseline, &case.candidate),
            line: say::same_in_short(),
            detail: sentences(&[deviations(case), say::ruled_out(&margin(case, Direction::Higher))]),
            next: choose_freely(),
        },
        _ if decision.why == Some(Why::DependsOnLeftOut) => depends_on_left_out(case),
        _ => Words {
            headline: say::cannot_tell(&case.baseline, &case.candidate, &case.subject.name),
            line: say::cannot_tell_in_short(),
            detail: sentences(&[deviations(case), case.luck(estimate), between(case, estimate)]),
            next: settle(case, estimate),
        },
    }
}

fn different(case: &Case, estimate: &Estimate, direction: Direction) -> Words {
    let (candidate, name) = (&case.candidate, &case.subject.name);
    let (near, far) = match direction {
        Direction::Higher => (estimate.low, estimate.high),
        Direction::Lower => (estimate.high, estimate.low),
    };
    let (from, to) = (hundredths(near), hundredths(far));
    let does = match direction {
        Direction::Higher => say::scatters_more(candidate, name, &from, &to),
        Direction::Lower => say::is_tighter(candidate, name, &from, &to),
    };
    let margin = margin(case, direction);
    let (headline, next) = match case.judgment.decision.matters {
        Some(Matters::No) => (say::too_small(&does), choose_freely()),
        Some(Matters::Yes) | None => (say::matters(&does, &margin), holds_here()),
        Some(Matters::Maybe) => (say::may_matter(&does, &margin), settle(case, estimate)),
    };
    Words {
        headline,
        line: say::line(&does),
        detail: sentences(&[deviations(case), case.luck(estimate)]),
        next,
    }
}

/// How much more or less than 1 a ratio is, in hundredths.
fn hundredths(ratio: f64) -> String {
    number(((ratio - 1.0) * 100.0).abs(), 0)
}

/// The margin as hundredths, in the direction spoken of: a ratio of 1.25 is 25 % more, or 20 % less.
fn margin(case: &Case, direction: Direction) -> String {
    let ratio = case.judgment.margin.unwrap_or(1.0);
    let toward = if direction == Direction::Higher { ratio } else { 1.0 / ratio };
    format!("{} %", hundredths(toward))
}

/// How far single shots lie from their average, with each club.
fn deviations(case: &Case) -> String {
    let numbers = &case.judgment.pair.numbers;
    let (Some(candidate), Some(baseline)) = (numbers.candidate, numbers.baseline) else {
        return String::new();
    };
    let (Some(candidate_sd), Some(baseline_sd)) = (candidate.sd, baseline.sd) else { return String::new() };
    let amount = |sd: f64| case.subject.amount(sd);
    say::deviations(
        &amount(candidate_sd),
        &case.candidate,
        candidate.n,
        &amount(baseline_sd),
        &case.baseline,
        baseline.n,
    )
}

fn between(case: &Case, estimate: &Estimate) -> String {
    let end = |ratio: f64| say::end(&hundredths(ratio), ratio < 1.0);
    say::between(&case.candidate, &end(estimate.low), &end(estimate.high))
}

fn settle(case: &Case, estimate: &Estimate) -> String {
    let margin = margin(case, Direction::Higher);
    match estimate.shots_to_settle {
        Some(needed) if needed > 200 => say::more_than_200(&margin),
        Some(needed) => say::would_settle(needed as usize, &margin),
        None => say::slow_to_show(),
    }
}

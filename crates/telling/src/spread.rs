//! The sentences for the goal 'tighter': scatter in hundredths more or less, never a bare ratio.

use crate::case::{Case, sentences};
use crate::format::number;
use crate::left_out::depends_on_left_out;
use crate::words::Words;
use judging::analysis::Estimate;
use judging::verdict::{DecisionKind, Direction, Matters, Why};
use session::measure::Margin;
use text::Voice;
use text::answer::{choose_freely, holds_here};
use text::spread as say;

/// The sentences when scatter was asked for and can be compared.
pub(crate) fn words(case: &Case, estimate: &Estimate) -> Words {
    let decision = &case.judgment.decision;
    match (decision.kind, decision.direction) {
        (DecisionKind::Different, Some(direction)) => different(case, estimate, direction),
        (DecisionKind::Same, _) => Words {
            headline: say::same(case.voice, &case.baseline, &case.candidate),
            line: say::same_in_short(case.voice),
            detail: sentences(&[
                deviations(case),
                say::ruled_out(case.voice, &margin(case, Direction::Higher)),
            ]),
            next: choose_freely(case.voice),
        },
        _ if decision.why == Some(Why::DependsOnLeftOut) => depends_on_left_out(case),
        _ => Words {
            headline: say::cannot_tell(case.voice, &case.baseline, &case.candidate, &case.subject.name),
            line: say::cannot_tell_in_short(case.voice),
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
    let (from, to) = (hundredths(case.voice, near), hundredths(case.voice, far));
    let does = match direction {
        Direction::Higher => say::scatters_more(case.voice, candidate, name, &from, &to),
        Direction::Lower => say::is_tighter(case.voice, candidate, name, &from, &to),
    };
    let margin = margin(case, direction);
    let (headline, next) = match case.judgment.decision.matters {
        Some(Matters::No) => (say::too_small(case.voice, &does), choose_freely(case.voice)),
        Some(Matters::Yes) | None => (say::matters(case.voice, &does, &margin), holds_here(case.voice)),
        Some(Matters::Maybe) => (say::may_matter(case.voice, &does, &margin), settle(case, estimate)),
    };
    Words {
        headline,
        line: say::line(case.voice, &does),
        detail: sentences(&[deviations(case), case.luck(estimate)]),
        next,
    }
}

/// How much more or less than 1 a ratio is, in hundredths.
fn hundredths(voice: &Voice, ratio: f64) -> String {
    number(voice, ((ratio - 1.0) * 100.0).abs(), 0)
}

/// The margin as hundredths, in the direction spoken of: a ratio of 1.25 is 25 % more, or 20 % less.
fn margin(case: &Case, direction: Direction) -> String {
    let ratio = case.judgment.margin.map_or(1.0, Margin::value);
    let toward = if direction == Direction::Higher { ratio } else { 1.0 / ratio };
    format!("{} %", hundredths(case.voice, toward))
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
        case.voice,
        &amount(candidate_sd),
        &case.candidate,
        candidate.n,
        &amount(baseline_sd),
        &case.baseline,
        baseline.n,
    )
}

fn between(case: &Case, estimate: &Estimate) -> String {
    let end = |ratio: f64| say::end(case.voice, &hundredths(case.voice, ratio), ratio < 1.0);
    say::between(case.voice, &case.candidate, &end(estimate.low), &end(estimate.high))
}

fn settle(case: &Case, estimate: &Estimate) -> String {
    let margin = margin(case, Direction::Higher);
    match estimate.shots_to_settle {
        Some(needed) if needed > 200 => say::more_than_200(case.voice, &margin),
        Some(needed) => say::would_settle(case.voice, needed as usize, &margin),
        None => say::slow_to_show(case.voice),
    }
}

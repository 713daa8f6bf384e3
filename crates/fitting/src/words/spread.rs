//! The sentences for the goal 'tighter': scatter in hundredths more or less, never a bare ratio.

use super::Words;
use super::answer::{CHOOSE_FREELY, depends_on_left_out};
use super::case::{Case, sentences};
use super::format::{count_of, number};
use crate::analysis::Estimate;
use crate::verdict::{DecisionKind, Direction, Matters, Why};

/// The sentences when scatter was asked for and can be compared.
pub(super) fn words(case: &Case, estimate: &Estimate) -> Words {
    let decision = &case.judgment.decision;
    match (decision.kind, decision.direction) {
        (DecisionKind::Different, Some(direction)) => different(case, estimate, direction),
        (DecisionKind::Same, _) => Words {
            headline: format!("For your purpose {} and {} scatter the same.", case.baseline, case.candidate),
            line: "They scatter the same.".to_owned(),
            detail: sentences(&[
                deviations(case),
                format!("A difference of {} or more is ruled out.", margin(case, Direction::Higher)),
            ]),
            next: CHOOSE_FREELY.to_owned(),
        },
        _ if decision.why == Some(Why::DependsOnLeftOut) => depends_on_left_out(case),
        _ => Words {
            headline: format!(
                "With this many shots nobody can say which of {} and {} is tighter on {}.",
                case.baseline, case.candidate, case.subject.name
            ),
            line: "Cannot tell which is tighter.".to_owned(),
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
        Direction::Higher => format!("{candidate} scatters more on {name}, by {from} to {to} %"),
        Direction::Lower => {
            format!("{candidate} is tighter on {name}: its shots scatter {from} to {to} % less")
        }
    };
    let margin = margin(case, direction);
    let (headline, next) = match case.judgment.decision.matters {
        Some(Matters::No) => {
            (format!("A real difference, too small to matter: {does}."), CHOOSE_FREELY.to_owned())
        }
        Some(Matters::Yes) | None => (
            format!("{does}. It starts to matter at {margin}."),
            "This holds for these clubs as built, with your swing that day.".to_owned(),
        ),
        Some(Matters::Maybe) => (
            format!("{does}. Whether that reaches the {margin} that matter is not settled."),
            settle(case, estimate),
        ),
    };
    Words {
        headline,
        line: format!("{does}."),
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

/// `A single shot with Driver B typically lands 9 yd from its average, with Own driver 12 yd.`
fn deviations(case: &Case) -> String {
    let numbers = &case.judgment.pair.numbers;
    let (Some(candidate), Some(baseline)) = (numbers.candidate, numbers.baseline) else {
        return String::new();
    };
    let (Some(candidate_sd), Some(baseline_sd)) = (candidate.sd, baseline.sd) else { return String::new() };
    format!(
        "Shots scatter around their average by {} with {} ({} shots) and by {} with {} ({}).",
        case.subject.amount(candidate_sd),
        case.candidate,
        count_of(candidate.n),
        case.subject.amount(baseline_sd),
        case.baseline,
        count_of(baseline.n),
    )
}

fn between(case: &Case, estimate: &Estimate) -> String {
    let end = |ratio: f64| {
        let word = if ratio < 1.0 { "less" } else { "more" };
        format!("{} % {word}", hundredths(ratio))
    };
    format!(
        "Allowing for luck, {} scatters anything between {} and {}.",
        case.candidate,
        end(estimate.low),
        end(estimate.high)
    )
}

fn settle(case: &Case, estimate: &Estimate) -> String {
    let margin = margin(case, Direction::Higher);
    match estimate.shots_to_settle {
        Some(needed) if needed > 200 => format!(
            "Scatter is slow to show: it would take more than 200 shots with each to see a difference of {margin}."
        ),
        Some(needed) => format!(
            "Scatter is slow to show: about {} shots with each, planned before, to see a difference of {margin}.",
            count_of(needed as usize)
        ),
        None => "Scatter is slow to show: it takes far more shots than an average.".to_owned(),
    }
}

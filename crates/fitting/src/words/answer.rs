//! The sentences of a verdict. They read the decision; they decide nothing.

use super::Words;
use super::case::{Case, capital, sentences};
use super::format::Subject;
use super::spread;
use crate::analysis::{Estimate, Method};
use crate::judge::Judgment;
use crate::measure::MeasureId;
use crate::question::Goal;
use crate::session::Session;
use crate::verdict::{Decision, DecisionKind, Direction, Matters, Why};
use text::answer as say;

/// The sentences for one pair on one measure.
pub(crate) fn words(session: &Session, judgment: &Judgment) -> Words {
    let case = Case::of(session, judgment);
    if judgment.goal == Goal::Tighter
        && let Some(estimate) = &judgment.estimate
    {
        return spread::words(&case, estimate);
    }
    match (judgment.decision.kind, &judgment.estimate) {
        (DecisionKind::CannotAnswer, _) | (_, None) => {
            cannot_answer(judgment.decision.why, &case.subject, &case.counts())
        }
        (DecisionKind::Different, Some(estimate)) => different(&case, estimate),
        (DecisionKind::Same, Some(estimate)) => same(&case, estimate),
        (DecisionKind::CannotTell, Some(estimate)) => cannot_tell(&case, estimate),
    }
}

/// The sentences when there is nothing to hold against the baseline.
pub(crate) fn without_a_pair(session: &Session, measure: &MeasureId, decision: &Decision) -> Words {
    cannot_answer(decision.why, &Subject::of(measure, session), "")
}

fn different(case: &Case, estimate: &Estimate) -> Words {
    let decision = &case.judgment.decision;
    let direction = decision.direction.unwrap_or(Direction::Higher);
    let (does, more, margin) = (case.does(direction), case.more(direction), case.margin());
    let span = case.subject.span(estimate.low, estimate.high, case.judgment.margin);
    let mixed_up = estimate.order_allowance > 0.0;
    let headline = match decision.matters {
        Some(Matters::Yes) => say::matters(&does, mixed_up, &span, more, &margin),
        Some(Matters::Maybe) => say::may_matter(&does, mixed_up, &span, &margin),
        Some(Matters::No) => say::too_small(&does, &span),
        None => say::different(&does, mixed_up, &span),
    };
    let next = match decision.matters {
        Some(Matters::No) => say::choose_freely(),
        _ if mixed_up => sentences(&[say::hint_no_proof(), say::short_test()]),
        Some(Matters::Maybe) => case.settle(estimate),
        Some(Matters::Yes) | None => say::holds_that_day(),
    };
    let line = match decision.matters {
        Some(Matters::No) => say::too_small_in_short(&does, &span),
        _ => say::different(&does, false, &span),
    };
    Words {
        headline,
        line,
        detail: sentences(&[case.averages(), nearer_the_line(case), case.luck(estimate)]),
        next,
    }
}

/// For a goal of 'straighter': which of the two averages is nearer the line.
fn nearer_the_line(case: &Case) -> String {
    let numbers = &case.judgment.pair.numbers;
    let (Goal::NearerZero, Some(candidate), Some(baseline)) =
        (case.judgment.goal, numbers.candidate, numbers.baseline)
    else {
        return String::new();
    };
    let nearer = if candidate.mean.abs() < baseline.mean.abs() { &case.candidate } else { &case.baseline };
    say::nearer_to_zero(nearer)
}

fn same(case: &Case, estimate: &Estimate) -> Words {
    let margin = case.judgment.margin.unwrap_or(f64::INFINITY);
    let widest = estimate.equivalence.low.abs().max(estimate.equivalence.high.abs());
    let at_most = case.subject.at_most(widest, margin);
    Words {
        headline: say::same(&at_most),
        line: say::same_in_short(&at_most),
        detail: sentences(&[case.averages(), say::more_is_ruled_out(&case.margin())]),
        next: say::choose_freely(),
    }
}

/// When the answer changes with the shots that were set aside.
pub(super) fn depends_on_left_out(case: &Case) -> Words {
    Words {
        headline: say::depends(),
        line: say::depends_in_short(),
        detail: sentences(&[case.averages(), say::depends_how()]),
        next: say::leave_nothing_out(),
    }
}

fn cannot_tell(case: &Case, estimate: &Estimate) -> Words {
    if case.judgment.decision.why == Some(Why::DependsOnLeftOut) {
        return depends_on_left_out(case);
    }
    if case.judgment.order_hides_it() {
        return Words {
            headline: say::order_could_explain(),
            line: case.cannot_tell_in_short(estimate),
            detail: sentences(&[case.averages(), case.between(estimate)]),
            next: say::short_test(),
        };
    }
    let (baseline, candidate, name) = (&case.baseline, &case.candidate, &case.subject.name);
    let headline = match estimate.method {
        Method::Rounds | Method::SpreadRatio => say::not_apart(baseline, candidate, name),
        Method::WelchWithAllowance => say::not_apart_not_in_turn(baseline, candidate, name),
        Method::SummaryWithAllowance | Method::SummaryAssumedSpread => {
            say::not_apart_averages(baseline, candidate, name)
        }
    };
    Words {
        headline,
        line: case.cannot_tell_in_short(estimate),
        detail: sentences(&[case.averages(), case.luck(estimate), case.between(estimate)]),
        next: case.settle(estimate),
    }
}

fn cannot_answer(why: Option<Why>, subject: &Subject, counts: &str) -> Words {
    let name = &subject.name;
    let (headline, detail, next) = match why {
        Some(Why::NoShots) => (say::no_shots(), String::new(), say::no_shots_next()),
        Some(Why::OneBuild) => (say::one_club(), String::new(), say::one_club_next()),
        Some(Why::TooFewShots) => (say::too_few_shots(name), counts.to_owned(), say::too_few_shots_next()),
        Some(Why::CountsMissing) => {
            (say::counts_missing(), say::counts_missing_why(), say::counts_missing_next())
        }
        Some(Why::OnlyTheBest) => (say::only_the_best(), say::only_the_best_why(), say::only_the_best_next()),
        Some(Why::SpreadMissing) => (say::spread_missing(name), String::new(), say::spread_missing_next()),
        Some(Why::OnlyAverages) => {
            (say::only_averages(), say::only_averages_why(), say::only_averages_next())
        }
        Some(Why::NoScatter) => (say::no_scatter(name), say::no_scatter_why(), say::no_scatter_next(name)),
        Some(Why::NotMeasured | Why::DependsOnLeftOut) | None => {
            (say::not_measured(&capital(name)), counts.to_owned(), say::not_measured_next())
        }
    };
    Words { line: headline.clone(), headline, detail, next }
}

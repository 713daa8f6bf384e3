//! The sentences of a verdict. They read the decision; they decide nothing.

use crate::case::{Case, sentences};
use crate::format::Subject;
use crate::left_out::depends_on_left_out;
use crate::spread;
use crate::words::Words;
use judging::Judgment;
use judging::analysis::{Estimate, Method};
use judging::verdict::{Decision, DecisionKind, Direction, Matters, Why};
use session::Session;
use session::measure::{Margin, MeasureId};
use session::question::Goal;
use text::answer as say;
use text::{Voice, capital};

/// The sentences for one pair on one measure.
pub(crate) fn words(session: &Session, judgment: &Judgment, voice: &Voice) -> Words {
    let case = Case::of(session, judgment, voice);
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
pub(crate) fn without_a_pair(
    session: &Session,
    measure: &MeasureId,
    decision: &Decision,
    voice: &Voice,
) -> Words {
    cannot_answer(decision.why, &Subject::of(measure, session, voice), "")
}

fn different(case: &Case, estimate: &Estimate) -> Words {
    let decision = &case.judgment.decision;
    let direction = decision.direction.unwrap_or(Direction::Higher);
    let (does, more, margin) = (case.does(direction), case.more(direction), case.margin());
    let span = case.subject.span(estimate.low, estimate.high, case.judgment.margin.map(Margin::value));
    let mixed_up = estimate.order_allowance > 0.0;
    let headline = match decision.matters {
        Some(Matters::Yes) => say::matters(case.voice, &does, mixed_up, &span, more, &margin),
        Some(Matters::Maybe) => say::may_matter(case.voice, &does, mixed_up, &span, &margin),
        Some(Matters::No) => say::too_small(case.voice, &does, &span),
        None => say::different(case.voice, &does, mixed_up, &span),
    };
    let next = match decision.matters {
        Some(Matters::No) => say::choose_freely(case.voice),
        _ if mixed_up => sentences(&[say::hint_no_proof(case.voice), say::short_test(case.voice)]),
        Some(Matters::Maybe) => case.settle(estimate),
        Some(Matters::Yes) | None => say::holds_that_day(case.voice),
    };
    let line = match decision.matters {
        Some(Matters::No) => say::too_small_in_short(case.voice, &does, &span),
        _ => say::different(case.voice, &does, false, &span),
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
    say::nearer_to_zero(case.voice, nearer)
}

fn same(case: &Case, estimate: &Estimate) -> Words {
    let margin = case.judgment.margin.map_or(f64::INFINITY, Margin::value);
    let widest = estimate.equivalence.low.abs().max(estimate.equivalence.high.abs());
    let at_most = case.subject.at_most(widest, margin);
    Words {
        headline: say::same(case.voice, &at_most),
        line: say::same_in_short(case.voice, &at_most),
        detail: sentences(&[case.averages(), say::more_is_ruled_out(case.voice, &case.margin())]),
        next: say::choose_freely(case.voice),
    }
}

fn cannot_tell(case: &Case, estimate: &Estimate) -> Words {
    if case.judgment.decision.why == Some(Why::DependsOnLeftOut) {
        return depends_on_left_out(case);
    }
    if case.judgment.order_hides_it() {
        return Words {
            headline: say::order_could_explain(case.voice),
            line: case.cannot_tell_in_short(estimate),
            detail: sentences(&[case.averages(), case.between(estimate)]),
            next: say::short_test(case.voice),
        };
    }
    let (baseline, candidate, name) = (&case.baseline, &case.candidate, &case.subject.name);
    let headline = match estimate.method {
        Method::Rounds | Method::SpreadRatio => say::not_apart(case.voice, baseline, candidate, name),
        Method::WelchWithAllowance => say::not_apart_not_in_turn(case.voice, baseline, candidate, name),
        Method::SummaryWithAllowance | Method::SummaryAssumedSpread => {
            say::not_apart_averages(case.voice, baseline, candidate, name)
        }
    };
    Words {
        headline,
        line: case.cannot_tell_in_short(estimate),
        detail: sentences(&[case.averages(), case.luck(estimate), case.between(estimate)]),
        next: case.settle(estimate),
    }
}

fn cannot_answer(why: Option<Why>, subject: &Subject<'_>, counts: &str) -> Words {
    let (name, voice) = (&subject.name, subject.voice);
    let (headline, detail, next) = match why {
        Some(Why::NoShots) => (say::no_shots(voice), String::new(), say::no_shots_next(voice)),
        Some(Why::OneBuild) => (say::one_club(voice), String::new(), say::one_club_next(voice)),
        Some(Why::TooFewShots) => {
            (say::too_few_shots(voice, name), counts.to_owned(), say::too_few_shots_next(voice))
        }
        Some(Why::CountsMissing) => {
            (say::counts_missing(voice), say::counts_missing_why(voice), say::counts_missing_next(voice))
        }
        Some(Why::OnlyTheBest) => {
            (say::only_the_best(voice), say::only_the_best_why(voice), say::only_the_best_next(voice))
        }
        Some(Why::SpreadMissing) => {
            (say::spread_missing(voice, name), String::new(), say::spread_missing_next(voice))
        }
        Some(Why::OnlyAverages) => {
            (say::only_averages(voice), say::only_averages_why(voice), say::only_averages_next(voice))
        }
        Some(Why::NoScatter) => {
            (say::no_scatter(voice, name), say::no_scatter_why(voice), say::no_scatter_next(voice, name))
        }
        Some(Why::NotMeasured | Why::DependsOnLeftOut) | None => {
            (say::not_measured(voice, &capital(name)), counts.to_owned(), say::not_measured_next(voice))
        }
    };
    Words { line: headline.clone(), headline, detail, next }
}

//! The sentences of a verdict. They read the decision; they decide nothing.

use crate::case::{Case, listed};
use crate::ends::lines;
use crate::format::Subject;
use crate::hints::{between_the_blocks, hint_no_proof};
use crate::left_out::depends_on_left_out;
use crate::spread;
use crate::words::{Next, Words, sentences};
use judging::Judgment;
use judging::analysis::Estimate;
use judging::choice::Choice;
use judging::facts::{HowHit, RestsOn};
use judging::verdict::{Decision, DecisionKind, Direction, Matters, Nearer, Why};
use session::measure::{Margin, MeasureId};
use session::question::Goal;
use session::{Order, Session};
use text::answer as say;
use text::{Voice, capital};

/// The sentences for one pair on one measure, and for what that leaves to choose by.
pub(crate) fn words(session: &Session, judgment: &Judgment, choice: Option<&Choice>, voice: &Voice) -> Words {
    let case = Case::of(session, judgment, voice);
    let choose = || choice.map_or_else(String::new, |choice| case.choose(choice));
    if judgment.goal == Goal::Tighter
        && let Some(estimate) = &judgment.estimate
    {
        return spread::words(&case, estimate, choose);
    }
    match (judgment.decision.kind, &judgment.estimate) {
        (DecisionKind::CannotAnswer, _) | (_, None)
            if judgment.decision.why == Some(Why::TooFewShots) && case.is_half_unread() =>
        {
            let headline = say::too_few_shots(voice, &case.subject.name);
            let next = Next::step(text::case::have_it_measured(voice, &case.subject.the()));
            Words::new(headline.clone(), headline, "", &[case.counts()], &next)
        }
        (DecisionKind::CannotAnswer, _) | (_, None) => {
            let why = judgment.decision.why;
            cannot_answer(why, &case.subject, &case.counts(), &case.lacking(why), judgment.shared_rounds > 0)
        }
        (DecisionKind::Different, Some(estimate)) => different(&case, estimate, choose),
        (DecisionKind::Same, Some(estimate)) => same(&case, estimate, choose()),
        (DecisionKind::CannotTell, Some(estimate)) => cannot_tell(&case, estimate).after(choose()),
    }
}

/// The sentences when there is nothing to hold against the baseline.
pub(crate) fn without_a_pair(
    session: &Session,
    measure: &MeasureId,
    decision: &Decision,
    voice: &Voice,
) -> Words {
    let laps = session.order == Order::Interleaved;
    cannot_answer(decision.why, &Subject::of(measure, session, voice), "", &[], laps)
}

fn different(case: &Case, estimate: &Estimate, choose: impl Fn() -> String) -> Words {
    let decision = &case.judgment.decision;
    let direction = decision.direction.unwrap_or(Direction::Higher);
    let (does, more, margin) = (case.does(direction), case.more(direction), case.margin());
    let (low, high) = (estimate.decided_by.low, estimate.decided_by.high);
    let span = case.subject.span(low, high, case.judgment.margin.map(Margin::value));
    let allowed = case.order_is_allowed_for();
    let guessed = case.a_guess_is_allowed_for_order();
    let averages = case.is_of_averages();
    let headline = match decision.matters {
        _ if guessed => say::differs_in_these_shots(case.voice, &does, averages, &span),
        Some(Matters::Yes) => say::matters(case.voice, &does, allowed, &span, more, &margin),
        Some(Matters::Maybe) => say::may_matter(case.voice, &does, allowed, &span, &margin),
        Some(Matters::No) => say::too_small(case.voice, &does, &span),
        None => say::different(case.voice, &does, allowed, &span),
    };
    let hint = case.judgment.facts.order_is_mixed_up();
    let next = match decision.matters {
        Some(Matters::No) => Next::step(choose()),
        _ if case.has_a_slip() => Next::step(text::case::check_the_value(case.voice)),
        _ if hint => case.shots_in_turn(estimate),
        Some(Matters::Maybe) => case.more_shots(estimate),
        Some(Matters::Yes) | None => match choose() {
            // What hangs on a few shots does not hold.
            check if !check.is_empty() => Next::step(check),
            _ => Next::default()
                .and(say::holds_here(case.voice, case.voice.is_of_the_sender()))
                .and_step(say::second_day(case.voice)),
        },
    };
    let line = match decision.matters {
        _ if guessed => say::differs_in_short(case.voice, &does, averages, &span),
        Some(Matters::No) => say::too_small_in_short(case.voice, &does, &span),
        _ if hint => say::differs_in_short(case.voice, &does, averages, &span),
        _ => say::different(case.voice, &does, false, &span),
    };
    let headline = sentences(&[headline, nearer_to_zero(case)]);
    let (averages, luck) = (case.averages(), case.luck(estimate));
    let new_in_the_hand = new_in_the_hand(case);
    if hint && decision.matters != Some(Matters::No) {
        let (hint, between) = (hint_no_proof(case), between_the_blocks(case));
        let detail = [averages, luck, hint.clone(), between, new_in_the_hand];
        return Words::new(headline, line, &hint, &detail, &next);
    }
    Words::new(headline, line, &averages, &[averages.clone(), luck, new_in_the_hand], &next)
}

/// Whether learning a club could have cost so much.
fn new_in_the_hand(case: &Case) -> String {
    case.judgment.facts.learning_costs.map_or_else(String::new, |cost| {
        say::new_in_the_hand(case.voice, &case.candidate, &case.subject.amount(cost), &case.subject.name)
    })
}

/// For a goal of 'straighter': which of the two is, or that it is not settled.
fn nearer_to_zero(case: &Case) -> String {
    match case.judgment.decision.nearer {
        None => String::new(),
        Some(Nearer::Candidate) => say::nearer_to_zero(case.voice, &case.candidate),
        Some(Nearer::Baseline) => say::nearer_to_zero(case.voice, &case.baseline),
        Some(Nearer::NotSettled) => say::nearer_not_settled(case.voice),
    }
}

fn same(case: &Case, estimate: &Estimate, next: String) -> Words {
    let margin = case.judgment.margin.map_or(f64::INFINITY, Margin::value);
    let widest = estimate.equivalence.low.abs().max(estimate.equivalence.high.abs());
    // As the ends of the interval are printed.
    let at_most = case.subject.end_amount(widest, &lines(Some(margin)));
    let ruled_out = say::more_is_ruled_out(case.voice, &case.margin(), case.is_of_averages());
    let averages = case.averages();
    let headline = say::same(
        case.voice,
        &capital(&case.subject.name),
        &case.candidate,
        &case.baseline,
        case.voice.is_of_the_sender(),
        &at_most,
    );
    let line = say::same_in_short(case.voice, &at_most);
    Words::new(headline, line, &averages, &[averages.clone(), ruled_out], &Next::step(next))
}

fn cannot_tell(case: &Case, estimate: &Estimate) -> Words {
    if case.judgment.decision.why == Some(Why::DependsOnLeftOut) {
        return depends_on_left_out(case);
    }
    let (averages, between) = (case.averages(), case.between(estimate));
    let line = case.cannot_tell_in_short(estimate);
    let of_averages = case.is_of_averages();
    if let Some(headline) = next_to_nothing(case) {
        let detail = [averages, case.luck(estimate), between.clone()];
        return Words::new(headline, line, &between, &detail, &case.more_shots(estimate));
    }
    if case.judgment.decision.why == Some(Why::OrderNotAllowedFor) {
        let (name, baseline, candidate) = (&case.subject.the(), &case.baseline, &case.candidate);
        let headline = say::order_not_allowed_for(case.voice, name, of_averages, baseline, candidate);
        return Words::new(
            headline,
            line,
            &between,
            &[averages, between.clone()],
            &case.shots_in_turn(estimate),
        );
    }
    if case.judgment.order_hides_it() {
        let headline = say::order_could_explain(case.voice, of_averages);
        let next = case.shots_in_turn(estimate);
        return Words::new(headline, line, &between, &[averages, between.clone()], &next);
    }
    let (baseline, candidate, name) = (&case.baseline, &case.candidate, &case.subject.name);
    let headline = match (case.judgment.facts.rests_on, case.judgment.facts.order) {
        (RestsOn::Averages, _) => say::not_apart_averages(case.voice, baseline, candidate, name),
        (RestsOn::Shots, HowHit::OneAfterTheOther) => {
            say::not_apart_not_in_turn(case.voice, baseline, candidate, name)
        }
        (RestsOn::Shots, HowHit::NotKnown) => {
            say::not_apart_order_not_known(case.voice, baseline, candidate, name)
        }
        (RestsOn::Shots, HowHit::InTurn | HowHit::InTurnNotCompared) => {
            say::not_apart(case.voice, baseline, candidate, name)
        }
    };
    let detail = [averages, case.luck(estimate), between.clone()];
    Words::new(headline, line, &between, &detail, &case.more_shots(estimate))
}

/// The headline of laps so few, or an interval so wide, that no number of its ends says anything.
fn next_to_nothing(case: &Case) -> Option<String> {
    let (baseline, candidate, name) = (&case.baseline, &case.candidate, &case.subject.name);
    let little = case.says_next_to_nothing();
    match case.judgment.facts.only_whole_laps.filter(|_| !case.has_a_slip()) {
        Some(few) => {
            let laps = few.laps.to_string();
            Some(say::only_whole_laps(case.voice, &laps, little, candidate, baseline, name))
        }
        None if little => {
            Some(say::next_to_nothing(case.voice, case.is_of_averages(), candidate, baseline, name))
        }
        None => None,
    }
}

/// `lacking` names the clubs that it is the fault of; empty where that is not known.
fn cannot_answer(
    why: Option<Why>,
    subject: &Subject<'_>,
    counts: &str,
    lacking: &[String],
    laps: bool,
) -> Words {
    let (name, voice) = (&subject.name, subject.voice);
    let clubs = if lacking.is_empty() { say::one_or_both(voice) } else { listed(voice, lacking) };
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
            (say::only_the_best(voice, &clubs), say::only_the_best_why(voice), say::only_the_best_next(voice))
        }
        Some(Why::SpreadMissing) => {
            (say::spread_missing(voice, name), String::new(), say::spread_missing_next(voice))
        }
        Some(Why::OnlyAverages) => {
            (say::only_averages(voice), say::only_averages_why(voice), say::only_averages_next(voice))
        }
        Some(Why::NoScatter) => (
            say::no_scatter(voice, &clubs, lacking.len() > 1, name),
            say::no_scatter_why(voice, laps),
            say::no_scatter_next(voice, name),
        ),
        Some(Why::NoScatterInRounds) => (
            say::no_scatter_in_rounds(voice, name),
            say::no_scatter_why(voice, true),
            say::no_scatter_next(voice, name),
        ),
        Some(Why::NotMeasured | Why::DependsOnLeftOut | Why::OrderNotAllowedFor) | None => {
            let headline = say::not_measured(voice, &capital(name), &clubs);
            (headline, counts.to_owned(), say::not_measured_next(voice))
        }
    };
    Words::new(headline.clone(), headline, "", &[detail], &Next::step(next))
}

//! The sentences for the goal 'tighter': scatter in hundredths more or less, never a bare ratio.

use crate::case::Case;
use crate::ends::{self, level_text, more_or_less, ratio_lines};
use crate::hints::{between_the_blocks, hint_no_proof};
use crate::left_out::depends_on_left_out;
use crate::words::{Next, Words};
use judging::analysis::{Estimate, MoreShots};
use judging::verdict::{DecisionKind, Direction, Matters, Why};
use session::measure::Margin;
use text::Voice;
use text::answer::holds_here;
use text::spread as say;

/// The sentences when scatter was asked for and can be compared.
pub(crate) fn words(case: &Case, estimate: &Estimate, choose: impl Fn() -> String) -> Words {
    let decision = &case.judgment.decision;
    match (decision.kind, decision.direction) {
        (DecisionKind::Different, Some(direction)) => different(case, estimate, direction, choose),
        (DecisionKind::Same, _) => {
            let headline =
                say::same(case.voice, case.voice.is_of_the_sender(), &case.baseline, &case.candidate);
            let ruled_out = say::ruled_out(case.voice, &margin(case, Direction::Higher));
            let deviations = deviations(case);
            let detail = [deviations.clone(), ruled_out];
            let line = say::same_in_short(case.voice);
            Words::new(headline, line, &deviations, &detail, &Next::step(choose()))
        }
        _ if decision.why == Some(Why::DependsOnLeftOut) => depends_on_left_out(case),
        _ => {
            let (baseline, candidate, name) = (&case.baseline, &case.candidate, &case.subject.name);
            let headline = if case.says_next_to_nothing() {
                say::next_to_nothing(case.voice, baseline, candidate, name)
            } else {
                say::cannot_tell(case.voice, baseline, candidate, name)
            };
            let between = between(case, estimate);
            let detail = [deviations(case), case.luck(estimate), between.clone()];
            let next = Next::step(more_shots(case, estimate, Direction::Higher));
            Words::new(headline, say::cannot_tell_in_short(case.voice), &between, &detail, &next)
        }
    }
}

fn different(case: &Case, estimate: &Estimate, direction: Direction, choose: impl Fn() -> String) -> Words {
    let (candidate, name) = (&case.candidate, &case.subject.the());
    let (low, high) = (estimate.decided_by.low, estimate.decided_by.high);
    let (near, far) = match direction {
        Direction::Higher => (low, high),
        Direction::Lower => (high, low),
    };
    let lines = ratio_lines(case.judgment.margin);
    let (from, to) = (hundredths(case.voice, near, &lines), hundredths(case.voice, far, &lines));
    let does = match direction {
        Direction::Higher => say::scatters_more(case.voice, candidate, name, &from, &to),
        Direction::Lower => say::is_tighter(case.voice, candidate, name, &from, &to),
    };
    let (voice, margin, matters) = (case.voice, margin(case, direction), case.judgment.decision.matters);
    let is_hint = case.judgment.facts.is_a_hint() && matters != Some(Matters::No);
    let headline = match matters {
        Some(Matters::No) => say::too_small(voice, &does),
        Some(Matters::Yes) | None => say::matters(voice, &does, &margin),
        Some(Matters::Maybe) => say::may_matter(voice, &does, &margin),
    };
    let next = match matters {
        Some(Matters::No) => Next::step(choose()),
        Some(Matters::Yes) | None if case.has_a_slip() => Next::step(text::case::check_the_value(case.voice)),
        _ if is_hint => in_turn(case),
        Some(Matters::Yes) | None => Next::step(holds_here(voice, voice.is_of_the_sender())),
        Some(Matters::Maybe) => Next::step(more_shots(case, estimate, direction)),
    };
    let (line, deviations, luck) = (say::line(voice, &does), deviations(case), case.luck(estimate));
    if is_hint {
        let hint = hint_no_proof(case);
        return Words::new(
            headline,
            line,
            &hint,
            &[deviations, luck, hint.clone(), between_the_blocks(case)],
            &next,
        );
    }
    Words::new(headline, line, &deviations, &[deviations.clone(), luck], &next)
}

/// What makes proof of a hint: the clubs hit in turn.
fn in_turn(case: &Case) -> Next {
    match case.judgment.facts.rounds_to_go() {
        Some(rounds) => Next::step(text::case::go_on(case.voice, rounds as usize)),
        None => Next::step(text::case::first_in_turn(case.voice)),
    }
}

/// How much more or less than 1 a ratio is, in hundredths; in words without a limit.
fn hundredths(voice: &Voice, ratio: f64, lines: &[f64]) -> String {
    ends::hundredths(voice, ratio, lines).unwrap_or_else(|| say::no_limit(voice))
}

/// The margin as hundredths, in the direction spoken of: a ratio of 1.25 is 25 % more, or 20 % less.
fn margin(case: &Case, direction: Direction) -> String {
    let ratio = case.judgment.margin.map_or(1.0, Margin::value);
    let toward = if direction == Direction::Higher { ratio } else { 1.0 / ratio };
    format!("{} %", hundredths(case.voice, toward, &[]))
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
    if case.says_next_to_nothing() {
        return say::no_limits(case.voice);
    }
    let lines = ratio_lines(case.judgment.margin);
    let end = |ratio: f64| more_or_less(case.voice, ratio, &lines);
    let judging::interval::Interval { low, high, level } = estimate.decided_by;
    say::between(case.voice, &case.candidate, &end(low), &end(high), &level_text(case.voice, level))
}

fn more_shots(case: &Case, estimate: &Estimate, direction: Direction) -> String {
    let (voice, margin) = (case.voice, margin(case, direction));
    if case.has_a_slip() {
        return text::case::check_the_value_first(voice);
    }
    if let Some(rounds) = case.judgment.facts.rounds_to_go() {
        return text::case::go_on(voice, rounds as usize);
    }
    match estimate.more_shots {
        Some(MoreShots::Tell { shots }) => say::would_show(voice, shots as usize, &margin),
        Some(MoreShots::TooMany { .. }) => say::more_than_200(voice, &margin),
        Some(MoreShots::HardlyNarrow) => say::size_stays_open(voice, &margin),
        Some(MoreShots::WereHit | MoreShots::WereHitNotFixed { .. } | MoreShots::Narrow { .. }) | None => {
            say::slow_to_show(voice)
        }
    }
}

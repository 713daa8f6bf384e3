//! Targets about what sentences promise: how many more shots tell, how far they narrow a size, which claim
//! holds up, and which of two clubs is nearer to the line.
//!
//! The advice of one session is followed in a second one, so that the first one's own scatter is in what is measured.

use super::effort::{Effort, seed, sessions};
use super::rate::{ERROR, Limit, Rate, Row, rate, values};
use super::sessions::{CARRY, Kind, OFFLINE, answer, fixed};
use crate::simulate::model::TYPICAL;
use judging::analysis::MoreShots;
use judging::claim::{ClaimKind, Claimed};
use judging::verdict::{DecisionKind, Nearer};
use session::question::{Goal, Question};
use stats::choices::PLANNED_POWER;
use telling::claim::{ClaimRequest, claim};
use telling::report::Answer;
use text::Voice;

/// 'In 8 of 10 such tests': from here it rounds to eight.
const EIGHT_OF_TEN: f64 = 0.75;
/// The margin that the advice is measured at, yd: at five, one visit rarely holds what it takes.
const MARGIN: f64 = 10.0;

/// How far right invented shots average, yd.
const RIGHT: f64 = 4.0;

/// Target 18: 'about so many shots with each would most likely tell', and 'would narrow it to ± so much or less'.
pub(super) fn more_shots(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    for (i, gap) in [0.0, 5.0, 7.5, 10.0, 15.0].into_iter().enumerate() {
        let first = Kind::in_turn(TYPICAL, 12, seed(18, i)).with_shift(CARRY, gap);
        rows.push(advice(18, "12 each in turn cannot tell", &first, gap, i, effort));
    }
    for (i, each) in [12, 24].into_iter().enumerate() {
        let first = Kind::in_turn(TYPICAL, each, seed(18, 500 + 2 * i)).with_shift(CARRY, 12.0);
        let narrower = values(sessions(8_000, effort), |number| {
            let Some(MoreShots::Narrow { shots, half_width }) = more(&asked(&first, number)) else {
                return None;
            };
            let then = asked(&followed(&first, shots, 501 + 2 * i), number).estimate?;
            Some(0.5 * (then.high - then.low) <= half_width)
        });
        let found = Rate::of(narrower.iter().filter(|held| **held).count() as u64, narrower.len() as u64);
        let what = format!(
            "{MARGIN} yd asked, size open after {each} each: as narrow after the shots named as was said"
        );
        let row = Row::of_rate(18, what, found, Limit::Between(EIGHT_OF_TEN, 1.0), effort);
        rows.push(row.promised_found(PLANNED_POWER));
    }
    rows
}

/// Target 19: what was hit one club after the other, hit again in turn with as many shots as named.
pub(super) fn after_blocks(effort: Effort) -> Vec<Row> {
    let row = |(i, gap): (usize, f64)| {
        let first = Kind::blocked(TYPICAL, &[15, 15], seed(19, i)).with_shift(CARRY, gap);
        advice(19, "15 then 15 sent to turns", &first, gap, i, effort)
    };
    [0.0, 5.0, 8.0, 10.0, 20.0].into_iter().enumerate().map(row).collect()
}

/// Target 20: a claim 'holds up' only where there is a gain, and is contradicted only where it falls short.
pub(super) fn claims(effort: Effort) -> Vec<Row> {
    let cases = [
        (2.0, 0.0, ClaimKind::Supported, "holds up", 0.0),
        (6.0, 0.0, ClaimKind::Supported, "holds up", 0.035),
        (8.0, 0.0, ClaimKind::Supported, "holds up", 0.035),
        (8.0, 3.0, ClaimKind::Supported, "holds up", 0.06),
        (12.0, 7.0, ClaimKind::Supported, "holds up", 0.06),
        (8.0, 8.0, ClaimKind::Contradicted, "contradicted", 0.035),
        (12.0, 12.0, ClaimKind::Contradicted, "contradicted", 0.035),
    ];
    let row = |(i, (promised, gain, wrong, word, limit)): (usize, (f64, f64, ClaimKind, &str, f64))| {
        let kind = Kind::in_turn(TYPICAL, 60, seed(20, i)).with_shift(CARRY, gain);
        let found = rate(sessions(4_000, effort), |number| held(promised, &kind, number) == wrong);
        let what = format!("{promised} yd promised, retest of 60 each, truly {gain} yd: claim {word}");
        Row::of_rate(20, what, found, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR)
    };
    cases.into_iter().enumerate().map(row).collect()
}

/// Target 21: of two clubs that miss equally far on either side, or are the same, none is called the nearer to the line.
pub(super) fn nearer(effort: Effort) -> Vec<Row> {
    let row = |(i, each): (usize, usize)| {
        // Shots average 4 yd right, so that the second club averages as far left.
        let kind = Kind::in_turn(TYPICAL, each, seed(21, i)).with_shift(OFFLINE, -2.0 * RIGHT);
        let found = rate(sessions(8_000, effort), |number| {
            let question = Question { goal: Some(Goal::NearerZero), ..fixed(OFFLINE) };
            let decision = answer(kind.session(number, &[OFFLINE]), question).answer.decision;
            matches!(decision.nearer, Some(Nearer::Candidate | Nearer::Baseline))
        });
        let what = format!(
            "{RIGHT} yd right against {RIGHT} yd left, {each} each: one called the nearer to the line"
        );
        // As for 'different' in such sessions (target 2).
        Row::of_rate(21, what, found, Limit::AtMost(0.060), effort).promised_wrong_at_most(ERROR)
    };
    [15, 60, 120].into_iter().enumerate().map(row).collect()
}

/// Of the sessions that name a number of shots, how many tests of that number tell.
fn advice(target: u32, first_said: &str, first: &Kind, gap: f64, row: usize, effort: Effort) -> Row {
    let told = values(sessions(8_000, effort), |number| {
        let before = asked(first, number);
        let shots = match more(&before)? {
            MoreShots::Tell { shots } | MoreShots::TooMany { shots } => shots,
            _ => return None,
        };
        let after = asked(&followed(first, shots, 100 + row), number);
        Some(after.decision.kind != DecisionKind::CannotTell)
    });
    let found = Rate::of(told.iter().filter(|told| **told).count() as u64, told.len() as u64);
    let what = format!("{first_said}, truly {gap} yd, {MARGIN} yd asked: the shots named tell");
    Row::of_rate(target, what, found, Limit::Between(EIGHT_OF_TEN, 1.0), effort).promised_found(PLANNED_POWER)
}

/// The same clubs and golfer in turn, with as many shots as were named.
fn followed(first: &Kind, shots: u32, row: usize) -> Kind {
    let Kind { effects, level, .. } = first.clone();
    Kind { effects, ..Kind::in_turn(level, shots as usize, seed(18, 1_000 + row)) }
}

fn asked(kind: &Kind, number: u64) -> Answer {
    let question = Question { margin: Some(MARGIN), ..fixed(CARRY) };
    answer(kind.session(number, &[CARRY]), question).answer
}

fn more(answer: &Answer) -> Option<MoreShots> {
    answer.estimate.as_ref()?.more_shots
}

fn held(promised: f64, kind: &Kind, number: u64) -> ClaimKind {
    let claimed = Claimed { gain: Some(promised), ..Claimed::default() };
    let request = ClaimRequest { claimed, session: kind.session(number, &[CARRY]), question: fixed(CARRY) };
    match claim(&request, &Voice::english()) {
        Ok(report) => report.facts.kind,
        Err(refusal) => unreachable!("an invented claim was refused: {refusal:?}"),
    }
}

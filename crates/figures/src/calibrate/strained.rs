//! Target 30: equal clubs in sessions that strain the promise, each for a reason of its own.

use super::effort::{Effort, seed, sessions};
use super::rate::{ERROR, Limit, Rate, Row, rate};
use super::sessions::{BALL_SPEED, CARRY, Design, Kind, OFFLINE, answer, differs, fixed};
use crate::simulate::model::{NONE, Parameters, STRONG, TYPICAL};
use crate::simulate::{Effects, Turns};
use judging::verdict::DecisionKind;
use session::CustomMeasure;
use session::measure::MeasureId;
use session::question::Question;

/// How often equal clubs may be called different where the page answers at all.
const MOST: f64 = 0.06;

/// Names of the measures that rates are measured on here.
const NAMED: [(usize, &str); 3] = [(CARRY, "carry"), (OFFLINE, "offline"), (BALL_SPEED, "ball speed")];

pub(super) fn rows(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    own_measure(&mut rows, effort);
    let in_threes = |turns, laps| Design::Laps { sets: [3, 3], laps, turns };
    let cold = Parameters { round_cold: 5.0, ..TYPICAL };
    for (what, design) in [
        (
            "the same club first in every lap of 3 + 3, laps begun 5 yd cold, 30 each",
            in_threes(Turns::Fixed, 10),
        ),
        ("the same, 15 each", in_threes(Turns::Fixed, 5)),
        ("the same, laps of 1 + 1, 30 each", Design::Laps { sets: [1, 1], laps: 30, turns: Turns::Fixed }),
        ("begun by either club in turn, laps begun 5 yd cold, 30 each", in_threes(Turns::Reversed, 10)),
    ] {
        count(&mut rows, what, &design, cold, [1.0; 2], effort);
    }
    let plain = Parameters { mishits: 0.0, ..NONE };
    for (what, each, level) in [
        ("shots lean on each other by 0.4, 15 each", 15, Parameters { memory: 0.4, ..plain }),
        ("shots lean on each other by 0.4, 30 each", 30, Parameters { memory: 0.4, ..plain }),
        ("shots lean on each other by 0.6, 15 each", 15, Parameters { memory: 0.6, ..plain }),
        ("shots lean on each other by 0.6, 30 each", 30, Parameters { memory: 0.6, ..plain }),
        ("every pick-up of a club differs by 8 yd, 15 each", 15, Parameters { pick_up_sd: 8.0, ..NONE }),
        ("every pick-up of a club differs by 8 yd, 30 each", 30, Parameters { pick_up_sd: 8.0, ..NONE }),
        ("strong drift, 9 each", 9, STRONG),
        ("strong drift, 30 each", 30, STRONG),
    ] {
        count(&mut rows, what, &in_threes(Turns::Reversed, each / 3), level, [1.0; 2], effort);
    }
    for (what, laps) in [("strong drift, turns of 5, 10 each", 2), ("strong drift, turns of 5, 20 each", 4)] {
        let design = Design::Laps { sets: [5, 5], laps, turns: Turns::Reversed };
        count(&mut rows, what, &design, STRONG, [1.0; 2], effort);
    }
    for (what, sets, laps) in [
        ("5 with the one, which scatters 1.7 times as far, 30 with the other", [1, 6], 5),
        ("10 with the one, which scatters 1.7 times as far, 30 with the other", [1, 3], 10),
    ] {
        let design = Design::Laps { sets, laps, turns: Turns::Reversed };
        count(&mut rows, what, &design, NONE, [1.73, 1.0], effort);
    }
    rows
}

/// A row for each of the measures.
fn count(
    rows: &mut Vec<Row>,
    what: &str,
    design: &Design,
    level: Parameters,
    spread: [f64; 2],
    effort: Effort,
) {
    for (measure, name) in NAMED {
        let effects = spread.map(|times| {
            let mut effects = Effects::default();
            effects.spread[measure] = times;
            effects
        });
        let kind =
            Kind { design: design.clone(), level, effects: effects.into(), seed: seed(30, rows.len()) };
        let found = rate(sessions(8_000, effort), |number| differs(&kind, number, measure));
        push(rows, format!("equal clubs, {what}: {name} called different"), found, effort);
    }
}

/// A column of the golfer's own, of which nobody knows how far the order moves it, that behaves like carry and like ball speed.
fn own_measure(rows: &mut Vec<Row>, effort: Effort) {
    for (level_name, level) in [("typical", TYPICAL), ("strong", STRONG)] {
        for counts in [[10, 10], [30, 30], [5, 30]] {
            for (like, name) in [(CARRY, "carry"), (BALL_SPEED, "ball speed")] {
                let kind = Kind::blocked(level, &counts, seed(30, rows.len()));
                let found = rate(sessions(8_000, effort), |number| {
                    let mut session = kind.session(number, &[like]);
                    let id = MeasureId::from("own".to_owned());
                    session.custom =
                        vec![CustomMeasure { id: id.clone(), name: "Own".into(), unit: String::new() }];
                    session.measures = vec![id.clone()];
                    let question = Question { measure: id, ..fixed(like) };
                    answer(session, question).answer.decision.kind == DecisionKind::Different
                });
                let what = format!(
                    "equal clubs, {} then {}, {level_name}, a measure of one's own that drifts like {name}: called different",
                    counts[0], counts[1]
                );
                push(rows, what, found, effort);
            }
        }
    }
}

fn push(rows: &mut Vec<Row>, what: String, found: Rate, effort: Effort) {
    rows.push(Row::of_rate(30, what, found, Limit::AtMost(MOST), effort).promised_wrong_at_most(ERROR));
}

//! Target 30: equal clubs in sessions that strain the promise, each for a reason of its own.
//!
//! Most are held to 6 in 100. Where a session cannot show what is wrong with it, the limit is what was measured and three
//! standard errors, and the page says in words what it cannot know.

use super::effort::{Effort, seed, sessions};
use super::rate::{ERROR, Limit, Rate, Row, rate};
use super::sessions::{BALL_SPEED, CARRY, Design, Kind, OFFLINE, answer, differs, fixed};
use crate::simulate::model::{NONE, Parameters, STRONG, TYPICAL};
use crate::simulate::{Effects, MEASURES, Turns};
use judging::verdict::DecisionKind;
use session::CustomMeasure;
use session::measure::MeasureId;
use session::question::Question;

/// How often equal clubs may be called different where the page answers at all.
const MOST: f64 = 0.06;

/// The measures that rates are measured on here.
const NAMED: [(usize, &str); 3] = [(CARRY, "carry"), (OFFLINE, "offline"), (BALL_SPEED, "ball speed")];

/// Turns of three, the clubs changing about.
const fn in_threes(each: usize) -> Design {
    Design::Laps { sets: [3, 3], laps: each / 3, turns: Turns::Reversed }
}

pub(super) fn rows(effort: Effort) -> Vec<Row> {
    let mut rows = Rows { effort, rows: Vec::new() };
    own_measure(&mut rows);
    always_first(&mut rows);
    leaning(&mut rows);
    unequal(&mut rows);
    learning(&mut rows);
    between_the_blocks(&mut rows);
    rows.rows
}

struct Rows {
    effort: Effort,
    rows: Vec<Row>,
}

impl Rows {
    /// A row for each of the measures: equal clubs called different.
    fn count(&mut self, what: &str, design: &Design, level: Parameters, spread: [f64; 2], most: f64) {
        for (measure, name) in NAMED {
            let effects = spread.map(|times| {
                let mut effects = Effects::default();
                effects.spread[measure] = times;
                effects
            });
            let kind = Kind { design: design.clone(), level, effects: effects.into(), seed: self.seed() };
            let found = rate(self.sessions(), |number| differs(&kind, number, measure));
            self.push(format!("equal clubs, {what}: {name} called different"), found, most);
        }
    }

    fn push(&mut self, what: String, found: Rate, most: f64) {
        let row = Row::of_rate(30, what, found, Limit::AtMost(most), self.effort);
        self.rows.push(row.promised_wrong_at_most(ERROR));
    }

    /// Of a kind for which the page promises nothing: it says what it cannot know.
    fn push_unpromised(&mut self, what: String, found: Rate, most: f64) {
        let what = format!("for comparison, {what}");
        self.rows.push(Row::of_rate(30, what, found, Limit::AtMost(most), self.effort));
    }

    fn seed(&self) -> u64 {
        seed(30, self.rows.len())
    }

    fn sessions(&self) -> u64 {
        sessions(8_000, self.effort)
    }
}

/// A column of the golfer's own, of which nobody knows how far the order moves it: like carry, and like ball speed, whose
/// drift is twice as large beside its scatter. The page allows a guess and calls the answer a hint.
fn own_measure(rows: &mut Rows) {
    for (level_name, level, most) in [("typical", TYPICAL, [MOST; 2]), ("strong", STRONG, [MOST, 0.17])] {
        for counts in [[10, 10], [30, 30], [5, 30]] {
            for ((like, name), most) in [(CARRY, "carry"), (BALL_SPEED, "ball speed")].into_iter().zip(most) {
                let kind = Kind::blocked(level, &counts, rows.seed());
                let found = rate(rows.sessions(), |number| {
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
                rows.push(what, found, most);
            }
        }
    }
}

/// Laps that begin cold, and who begins them.
fn always_first(rows: &mut Rows) {
    let cold = Parameters { round_cold: 5.0, ..TYPICAL };
    let fixed = |set, laps| Design::Laps { sets: [set, set], laps, turns: Turns::Fixed };
    for (what, design) in [
        ("one club first in every lap, each begun 5 yd cold, turns of 3, 30 each", fixed(3, 10)),
        ("one club first in every lap, each begun 5 yd cold, turns of 3, 15 each", fixed(3, 5)),
        ("one club first in every lap, each begun 5 yd cold, turns of 1, 30 each", fixed(1, 30)),
        ("laps begun by either club, each 5 yd cold, turns of 3, 30 each", in_threes(30)),
    ] {
        rows.count(what, &design, cold, [1.0; 2], MOST);
    }
}

/// Shots that lean on each other: what the session shows of it widens the answer, what it does not show cannot.
fn leaning(rows: &mut Rows) {
    let memory = |memory| Parameters { memory, mishits: 0.0, ..NONE };
    let picked_up = Parameters { pick_up_sd: 8.0, ..NONE };
    for (what, each, level, most) in [
        ("shots leaning on each other by 0.4, 15 each", 15, memory(0.4), 0.075),
        ("shots leaning on each other by 0.4, 30 each", 30, memory(0.4), 0.065),
        ("shots leaning on each other by 0.6, 15 each", 15, memory(0.6), 0.09),
        ("shots leaning on each other by 0.6, 30 each", 30, memory(0.6), 0.08),
        ("every pick-up of a club differing by 8 yd, 15 each", 15, picked_up, 0.08),
        ("every pick-up of a club differing by 8 yd, 30 each", 30, picked_up, 0.07),
        ("strong drift, turns of 3, 9 each", 9, STRONG, MOST),
        ("strong drift, turns of 3, 30 each", 30, STRONG, MOST),
    ] {
        rows.count(what, &in_threes(each), level, [1.0; 2], most);
    }
    for (what, laps) in [("strong drift, turns of 5, 10 each", 2), ("strong drift, turns of 5, 20 each", 4)] {
        let design = Design::Laps { sets: [5, 5], laps, turns: Turns::Reversed };
        rows.count(what, &design, STRONG, [1.0; 2], 0.075);
    }
}

/// Far more shots with one club, and those of the other scatter more.
fn unequal(rows: &mut Rows) {
    for (what, sets, laps) in [
        ("5 with one that scatters 1.7 times as far, 30 with the other, in turn", [1, 6], 5),
        ("10 with one that scatters 1.7 times as far, 30 with the other, in turn", [1, 3], 10),
    ] {
        let design = Design::Laps { sets, laps, turns: Turns::Reversed };
        rows.count(what, &design, TYPICAL, [1.73, 1.0], MOST);
    }
}

/// A club new in the hand, 10 yd short at first: its average is lower indeed. What counts is whether the page says why.
fn learning(rows: &mut Rows) {
    for each in [9, 30] {
        let new = Effects { unlearned: 10.0, ..Effects::default() };
        let kind = Kind {
            design: in_threes(each),
            level: TYPICAL,
            effects: vec![Effects::default(), new],
            seed: rows.seed(),
        };
        let called = |number: u64| {
            let answer = answer(kind.session(number, &[CARRY]), fixed(CARRY)).answer;
            let told = answer.facts.is_some_and(|facts| facts.learning_costs.is_some());
            (answer.decision.kind == DecisionKind::Different, told)
        };
        let any = rate(rows.sessions(), |number| called(number).0);
        let untold = rate(rows.sessions(), |number| called(number) == (true, false));
        let what = format!(
            "equal clubs, one new in the hand, 10 yd short at first, {each} each in turn: {}",
            MEASURES[CARRY]
        );
        rows.push_unpromised(format!("{what} called different"), any, if each < 15 { 0.16 } else { 0.09 });
        rows.push(
            format!("{what} called different, and not told that learning it may explain that"),
            untold,
            MOST,
        );
    }
}

/// Nothing in the shots shows what changed just between two blocks: the page says so wherever it compares blocks.
fn between_the_blocks(rows: &mut Rows) {
    for each in [15, 30] {
        let kind = Kind::blocked(TYPICAL, &[each, each], rows.seed()).with_shift(CARRY, 10.0);
        let found = rate(rows.sessions(), |number| differs(&kind, number, CARRY));
        let what = format!(
            "equal clubs, {each} then {each}, typical, 10 yd of wind beginning just between them: carry called different"
        );
        rows.push_unpromised(what, found, 0.40);
    }
}

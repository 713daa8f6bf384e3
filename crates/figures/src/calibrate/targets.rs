//! The error rates and the power that the verdicts promise, target by target.

use super::beside;
use super::bets;
use super::days;
use super::effort::{Effort, seed, sessions};
use super::more;
use super::piles;
use super::plans::{self, Planned, Wanted, every_round};
use super::prose;
use super::rate::{ERROR, Limit, Row, rate};
use super::said;
use super::sessions::{
    BALL_SPEED, CARRY, Design, Kind, MEASURED, OFFLINE, SPIN_RATE, answer, averages_only, differs, fixed,
};
use super::strained;
use super::typical;
use crate::simulate::model::{NONE, Parameters, STRONG, TYPICAL};
use judging::analysis::in_turns;
use judging::verdict::DecisionKind;
use session::plan::LookWord;
use session::question::Question;

/// What measures a target: the numbers of the targets it holds, and the run.
pub(crate) type Target = (&'static [u32], fn(Effort) -> Vec<Row>);

/// Every target, in the order of their numbers. The fifteenth, that the same input gives the same figures to the
/// last digit, is a test of the worked session in `stats`.
pub(crate) const ALL: [Target; 25] = [
    (&[1, 2, 3], in_turn),
    (&[4], pick_ups),
    (&[5], blocked),
    (&[6], same_at_the_margin),
    (&[7], power),
    (&[8], planned_looks),
    (&[9], open_looks),
    (&[10], open_looks_same),
    (&[11], more::scatter),
    (&[12], families),
    (&[13], averages),
    (&[14], more::honest_leads),
    (&[16], more::long_sets),
    (&[17], plans::promises),
    (&[18], said::more_shots),
    (&[19], said::after_blocks),
    (&[20], said::claims),
    (&[21], said::nearer),
    (&[22], prose::sentences),
    (&[23], bets::bets),
    (&[24], typical::shots),
    (&[27], days::together_over),
    (&[30], strained::rows),
    (&[31], beside::rows),
    (&[32], piles::rows),
];

const SIZES: [usize; 5] = [6, 9, 15, 20, 30];

/// Targets 1 to 3: equal builds hit in turn are rarely called different.
fn in_turn(effort: Effort) -> Vec<Row> {
    let levels: [(u32, &str, Parameters, f64, f64); 3] = [
        (1, "no drift", NONE, 0.035, 0.040),
        (2, "typical", TYPICAL, 0.060, 0.060),
        (3, "strong", STRONG, 0.070, 0.090),
    ];
    let mut rows = Vec::new();
    for (target, name, level, carry, others) in levels {
        for (measure, measure_name) in MEASURED {
            for each in SIZES {
                let kind = Kind::in_turn(level, each, seed(target, rows.len()));
                let limit = Limit::AtMost(if measure == CARRY { carry } else { others });
                let found = rate(sessions(8_000, effort), |number| differs(&kind, number, measure));
                let what =
                    format!("equal clubs in turn, {name}, {each} each: {measure_name} called different");
                rows.push(Row::of_rate(target, what, found, limit, effort).promised_wrong_at_most(ERROR));
            }
        }
    }
    rows
}

/// Target 4: sets of one club that differ far more than shots within them.
fn pick_ups(effort: Effort) -> Vec<Row> {
    let level = Parameters { pick_up_sd: 4.0, ..NONE };
    let row = |(i, each)| {
        let kind = Kind::in_turn(level, each, seed(4, i));
        let found = rate(sessions(8_000, effort), |number| differs(&kind, number, CARRY));
        let what = format!("every pick-up of a club differs by 4 yd, {each} each: carry called different");
        Row::of_rate(4, what, found, Limit::AtMost(0.065), effort).promised_wrong_at_most(ERROR)
    };
    [9, 15, 30].into_iter().enumerate().map(row).collect()
}

/// Target 5: one build after the other, with what the plain comparison would have said.
fn blocked(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    let designs: [(&str, &[usize]); 6] = [
        ("5 then 5", &[5, 5]),
        ("10 then 10", &[10, 10]),
        ("15 then 15", &[15, 15]),
        ("20 then 20", &[20, 20]),
        ("30 then 30", &[30, 30]),
        ("5 cold then 30", &[5, 30]),
    ];
    for (name, level, limits) in
        [("typical", TYPICAL, [0.02, 0.025, 0.02, 0.025]), ("strong", STRONG, [0.06, 0.085, 0.065, 0.12])]
    {
        for (design, counts) in designs {
            let cold = counts[0] != counts[1];
            for (measure, measure_name, limit) in [
                (CARRY, "carry", limits[usize::from(cold) * 2]),
                (BALL_SPEED, "ball speed", limits[usize::from(cold) * 2 + 1]),
            ] {
                let kind = Kind::blocked(level, counts, seed(5, rows.len()));
                let found = rate(sessions(8_000, effort), |number| differs(&kind, number, measure));
                let what = format!("equal clubs, {design}, {name}: {measure_name} called different");
                rows.push(
                    Row::of_rate(5, what, found, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR),
                );
            }
        }
    }
    let kind = Kind::blocked(TYPICAL, &[20, 20], seed(5, 900));
    let plain = rate(sessions(8_000, effort), |number| {
        let report = answer(kind.session(number, &[CARRY]), fixed(CARRY));
        report.findings[0].numbers.welch.is_some_and(|w| w.p < 0.05)
    });
    let what = "for comparison, plain Welch on 20 then 20, typical: carry called different".to_owned();
    rows.push(Row::of_rate(5, what, plain, Limit::Between(0.14, 0.17), effort));
    rows
}

/// Target 6: builds that differ by just the margin are rarely called the same.
fn same_at_the_margin(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    for (name, level, limit) in [("typical", TYPICAL, 0.060), ("strong", STRONG, 0.080)] {
        for each in [15, 30, 60, 90] {
            let kind = Kind::in_turn(level, each, seed(6, rows.len())).with_shift(CARRY, 5.0);
            let found = rate(sessions(4_000, effort), |number| {
                let decision = answer(kind.session(number, &[CARRY]), fixed(CARRY)).answer.decision;
                decision.kind == DecisionKind::Same
            });
            let what = format!("5 yd apart, {name}, {each} each: called the same within 5 yd");
            rows.push(
                Row::of_rate(6, what, found, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR),
            );
        }
    }
    rows
}

/// Target 7: the number of shots that the tool names is the number it takes, for 'different' and for 'the same'.
fn power(effort: Effort) -> Vec<Row> {
    use stats::choices::PLANNED_POWER;
    use stats::{Level, power};
    // Standard deviations of the invented shots, as `cargo xtask simulate --level none` prints them.
    let cases = [
        (CARRY, "carry", "yd", 11.48, [5.0, 8.0, 10.0]),
        (OFFLINE, "offline", "yd", 15.65, [8.0, 10.0, 12.0]),
        (BALL_SPEED, "ball speed", "mph", 3.0, [1.5, 2.0, 3.0]),
        (SPIN_RATE, "spin rate", "rpm", 382.0, [250.0, 350.0, 500.0]),
    ];
    let mut rows = Vec::new();
    for (measure, name, unit, sd, margins) in cases {
        for margin in margins {
            let size = margin / sd;
            let detect =
                power::shots_to_detect(size, Level::P95, PLANNED_POWER).map_or(0, |n| in_turns(n.tool));
            let same = power::shots_for_equivalence(size, 0.0, Level::P90, PLANNED_POWER)
                .map_or(0, |n| in_turns(n.tool));
            for (each, shift, wanted, word) in [
                (detect, margin, DecisionKind::Different, "called different"),
                (same, 0.0, DecisionKind::Same, "called the same"),
            ] {
                let kind = Kind::in_turn(TYPICAL, each, seed(7, rows.len())).with_shift(measure, shift);
                let found = rate(sessions(10_000, effort), |number| {
                    let question = Question { margin: Some(margin), ..fixed(measure) };
                    let decision = answer(kind.session(number, &[measure]), question).answer.decision;
                    // 'Different, too small to matter' also shows that they are the same for the purpose.
                    let no = decision.matters == Some(judging::verdict::Matters::No);
                    decision.kind == wanted || (wanted == DecisionKind::Same && no)
                });
                let what = format!("{name} {margin} {unit}, {each} each, truly {shift} {unit} apart: {word}");
                // Whole turns are more than is needed, the more so the fewer they are.
                let most = if each < 20 { 0.90 } else { 0.86 };
                let row = Row::of_rate(7, what, found, Limit::Between(0.77, most), effort);
                rows.push(row.promised_found(PLANNED_POWER));
            }
        }
    }
    rows
}

/// A test of two builds in rounds of three, as the planner lays it out.
fn planned(measure: usize, rounds: u32, level: Parameters, seed: u64) -> Planned {
    let wanted = Wanted {
        builds: 2,
        measure,
        rounds,
        set: 3,
        looks: LookWord::EveryRound,
        spread: None,
        margin: None,
    };
    Planned::new(&wanted, level, seed)
}

/// Target 8: looking after every round of a plan.
fn planned_looks(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    for (name, level, limit) in
        [("no drift", NONE, 0.035), ("typical", TYPICAL, 0.050), ("strong", STRONG, 0.075)]
    {
        for rounds in [5, 10] {
            let test = planned(CARRY, rounds, level, seed(8, rows.len()));
            let found = rate(sessions(8_000, effort), |number| {
                test.ever(number, &every_round(rounds), false, DecisionKind::Different)
            });
            let what =
                format!("{rounds} planned laps, looked at after each, {name}: carry ever called different");
            rows.push(
                Row::of_rate(8, what, found, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR),
            );
        }
    }
    rows
}

/// Target 9: looking after every round without a plan.
fn open_looks(effort: Effort) -> Vec<Row> {
    let cases = [
        (CARRY, "carry", "no drift", NONE, 0.025, 0.035),
        (CARRY, "carry", "typical", TYPICAL, 0.035, 0.050),
        (CARRY, "carry", "strong", STRONG, 0.060, 0.080),
        (OFFLINE, "offline", "typical", TYPICAL, 0.050, 0.070),
        (SPIN_RATE, "spin rate", "typical", TYPICAL, 0.050, 0.070),
    ];
    let mut rows = Vec::new();
    for (measure, measure_name, name, level, to_ten, to_twenty) in cases {
        for (rounds, limit) in [(10, to_ten), (20, to_twenty)] {
            let test = planned(measure, rounds, level, seed(9, rows.len()));
            let found = rate(sessions(8_000, effort), |number| {
                test.ever(number, &every_round(rounds), true, DecisionKind::Different)
            });
            let what = format!(
                "no plan, looked at after each of {rounds} laps, {name}: {measure_name} ever different"
            );
            rows.push(
                Row::of_rate(9, what, found, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR),
            );
        }
    }
    rows
}

/// Target 10: the same for 'the same', when the builds differ by just the margin.
fn open_looks_same(effort: Effort) -> Vec<Row> {
    let row = |(i, (name, level, limit)): (usize, (&str, Parameters, f64))| {
        let test = planned(CARRY, 20, level, seed(10, i)).with_shift(5.0);
        let found = rate(sessions(8_000, effort), |number| {
            test.ever(number, &every_round(20), true, DecisionKind::Same)
        });
        let what =
            format!("5 yd apart, no plan, looked at after each of 20 laps, {name}: ever called the same");
        Row::of_rate(10, what, found, Limit::AtMost(limit), effort).promised_wrong_at_most(ERROR)
    };
    let levels = [("no drift", NONE, 0.045), ("typical", TYPICAL, 0.045), ("strong", STRONG, 0.070)];
    levels.into_iter().enumerate().map(row).collect()
}

/// Target 12: several equal builds, and several measures.
fn families(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    for (name, level, primary, everything) in
        [("typical", TYPICAL, 0.060, 0.060), ("strong", STRONG, 0.075, 0.110)]
    {
        for builds in [2, 3, 4] {
            for each in [9, 15, 30] {
                let kind = Kind {
                    design: Design::InTurn { builds, each, set: 3 },
                    ..Kind::in_turn(level, each, seed(12, rows.len()))
                };
                let called = |number: u64, only_asked: bool| {
                    let measures = MEASURED.map(|m| m.0);
                    let report = answer(kind.session(number, &measures), fixed(CARRY));
                    let asked = report.asked.measure.clone();
                    report.findings.iter().any(|f| {
                        f.decision.kind == DecisionKind::Different && (!only_asked || f.measure == asked)
                    })
                };
                for (only_asked, limit, word) in
                    [(true, primary, "carry"), (false, everything, "any of 4 measures")]
                {
                    let found = rate(sessions(4_000, effort), |number| called(number, only_asked));
                    let what =
                        format!("{builds} equal clubs, {each} each, {name}: {word} called different for any");
                    rows.push(
                        Row::of_rate(12, what, found, Limit::AtMost(limit), effort)
                            .promised_wrong_at_most(ERROR),
                    );
                }
            }
        }
    }
    rows
}

/// Target 13: averages without a deviation.
fn averages(effort: Effort) -> Vec<Row> {
    let row = |(i, each)| {
        let kind = Kind::blocked(NONE, &[each, each], seed(13, i));
        let found = rate(sessions(8_000, effort), |number| {
            let session = averages_only(&kind.session(number, &[CARRY]));
            answer(session, fixed(CARRY)).answer.decision.kind == DecisionKind::Different
        });
        let what = format!("averages of {each} each without a deviation, no drift: carry called different");
        Row::of_rate(13, what, found, Limit::AtMost(0.03), effort).promised_wrong_at_most(ERROR)
    };
    [5, 10, 20].into_iter().enumerate().map(row).collect()
}

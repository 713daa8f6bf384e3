//! Averages are those of what was compared, and a club that moved where something changed is said to have.

use crate::made::{around, noise, rounds};
use crate::support::{answer, asking, empty, in_turn, push};
use judging::trust::{Seen, Weight};
use session::question::Question;
use session::{Order, SecondFactor, Session};
use telling::report::{OverlayKind, Report};
use text::Voice;

/// The first club in all six rounds, the second in the last three alone; the whole session drifts up by so much a round.
fn joined_late(drift: f64) -> Session {
    let set = |r: usize| {
        let level = 240.0 + drift * r as f64;
        let late = if r < 3 { Vec::new() } else { around(level + 3.0, 4.0, 3, 5 * r + 3) };
        vec![around(level, 4.0, 3, 5 * r), late, around(level + 1.0, 4.0, 3, 5 * r + 7)]
    };
    rounds("carry", &(0..6).map(set).collect::<Vec<_>>())
}

#[test]
fn the_averages_printed_are_those_of_what_was_compared() {
    let report = answer(joined_late(4.0), Question { candidate: Some(1), ..asking("carry") });
    let found = report.answer.estimate.as_ref().expect("an estimate").value;
    let detail = &report.answer.words.detail;
    assert!(detail.starts_with("Lap by lap, over the 3 laps that hold both, Driver B averaged "), "{detail}");
    let printed: Vec<f64> = detail
        .split_whitespace()
        .filter_map(|word| word.trim_end_matches(|c: char| !c.is_ascii_digit()).parse().ok())
        .filter(|number: &f64| *number > 200.0)
        .collect();
    assert_eq!(printed.len(), 2, "{detail}");
    assert!((printed[0] - printed[1] - found).abs() <= 1.0, "{detail} beside {found}");
    // The plain averages lie another gap apart: they are those of other rounds.
    let plain = report.findings[0].numbers.welch.expect("shots").diff;
    assert!((plain - found).abs() > 3.0, "{plain} {found}");
    // Where all shots are compared they are told as before.
    let whole = answer(in_turn("carry", 6, &[250.0, 252.0], 5.0), asking("carry")).answer.words.detail;
    assert!(whole.starts_with("Driver B averaged"), "{whole}");
}

/// The own driver before and after a lesson, the other after it alone.
fn lesson(gain: f64) -> Session {
    let mut session = empty("carry", 2);
    session.order = Order::Blocked;
    for (build, at, level) in [(0, 0, 238.0), (0, 12, 238.0 + gain), (1, 24, 249.0)] {
        (at..at + 12).for_each(|i| push(&mut session, build, None, level + 4.0 * noise(i)));
    }
    session.second = Some(SecondFactor {
        name: "lesson".into(),
        values: ["before the lesson", "after it"].map(Into::into).to_vec(),
    });
    session.shots.iter_mut().enumerate().for_each(|(at, shot)| shot.second = Some(u32::from(at >= 12)));
    session
}

fn moved(report: &Report) -> Option<&Seen> {
    report.trust.iter().map(|f| &f.seen).find(|seen| matches!(seen, Seen::Moved { .. }))
}

#[test]
fn a_club_that_moved_by_itself_is_the_first_thing_said() {
    let report = answer(lesson(10.0), asking("carry"));
    assert!(matches!(moved(&report), Some(Seen::Moved { build: 0, .. })), "{:?}", report.trust);
    assert_eq!(report.trust[0].weight, Weight::Serious);
    let told = report.overlays.first().expect("a warning at the top");
    assert_eq!(told.kind, OverlayKind::Moved);
    assert!(
        told.headline
            .starts_with("Own driver itself moved: carry 238\u{a0}yd with “before the lesson”, 248\u{a0}yd"),
        "{}",
        told.headline
    );
    assert!(
        told.detail.contains("95\u{a0}% interval") || told.detail.contains("95 % interval"),
        "{}",
        told.detail
    );
    assert!(
        moved(&answer(lesson(0.0), asking("carry"))).is_none(),
        "one that did not move is not said to have"
    );
    let plain = Session { second: None, ..lesson(10.0) };
    assert!(moved(&answer(plain, asking("carry"))).is_none());
}

#[test]
fn a_line_between_the_shots_asks_whether_something_changed_and_tells_before_from_after() {
    let shots = |from: usize, level: f64| -> String {
        (from..from + 12)
            .map(|i| format!("{},{:.0}\n", ["Mine", "New"][i % 2], level + 4.0 * noise(i / 2)))
            .collect()
    };
    let read = |line: &str| {
        let text = format!("Club,Carry\n{}{line}{}", shots(0, 238.0), shots(12, 248.0));
        reading::read(&text, &reading::Hints::default(), &Voice::english())
    };
    let result = read("--- lesson ---\n");
    let second = result.session.second.as_ref().expect("what changed");
    assert_eq!(second.values, ["before “lesson”", "after “lesson”"]);
    let sides: Vec<Option<u32>> = result.session.shots.iter().map(|shot| shot.second).collect();
    assert_eq!(sides, [[Some(0); 12], [Some(1); 12]].concat());
    assert!(result.notices.iter().any(|notice| notice.message.contains("Did something change there?")));
    assert!(moved(&answer(result.session, asking("carry"))).is_some());
    for no_change in ["", "------\n", "the weather was fine\n"] {
        assert!(read(no_change).session.second.is_none(), "{no_change}");
    }
}

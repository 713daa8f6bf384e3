//! What the session's own numbers give away.

use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::trust::{Seen, Weight};
use session::few::Map;
use session::{Order, Session, Summary, SummaryOf, SummaryValue};
use telling::trust::TrustFinding;

fn findings(session: Session) -> Vec<TrustFinding> {
    answer(session, asking("carry")).trust
}

fn kinds(session: Session) -> Vec<String> {
    let name =
        |f: &TrustFinding| format!("{:?}", f.seen).split([' ', '{']).next().unwrap_or_default().to_owned();
    findings(session).iter().map(name).collect()
}

#[test]
fn a_fair_session_has_little_to_answer_for() {
    assert_eq!(kinds(in_turn("carry", 5, &[250.0, 255.0], 5.0)), ["NoSwingOrStrike", "Order"]);
    assert_eq!(findings(in_turn("carry", 5, &[250.0, 255.0], 5.0))[1].weight, Weight::Good);
}

#[test]
fn five_cold_then_thirty_warm_is_seen_three_ways_and_sized() {
    let session = one_after_the_other("carry", &[5, 30], &[245.0, 252.0], 5.0);
    assert_eq!(kinds(session.clone()), ["Order", "ColdStart", "UnequalCounts", "NoSwingOrStrike"]);
    let cold = findings(session).into_iter().find_map(|f| match f.seen {
        Seen::ColdStart { build, shots, head_start, .. } => Some((build, shots, head_start)),
        _ => None,
    });
    let (build, shots, head_start) = cold.expect("a cold start");
    assert_eq!((build, shots), (0, 5));
    // 6·mean(e^(−t/8)) over shots 0 to 4, less the same over shots 5 to 34: 4.73 − 0.89.
    let expected = {
        let mean = |range: std::ops::Range<u32>| {
            let n = f64::from(range.end - range.start);
            range.map(|t| 6.0 * (-f64::from(t) / 8.0).exp()).sum::<f64>() / n
        };
        mean(0..5) - mean(5..35)
    };
    assert!((head_start.expect("known for carry") - expected).abs() < 1e-9);
}

#[test]
fn jumps_in_the_numbers_are_counted_once() {
    let mut session = one_after_the_other("carry", &[5, 5], &[250.0, 255.0], 5.0);
    // Numbered through: 4, 5 and 9 are missing.
    for (shot, number) in session.shots.iter_mut().zip([1, 2, 3, 6, 7, 8, 10, 11, 12, 13]) {
        shot.number = Some(number);
    }
    assert!(
        findings(session.clone()).iter().any(|f| f.seen == Seen::NumbersMissing { missing: 3, first: 4 })
    );
    // Numbered for each club anew: 3 is missing of the first.
    for (shot, number) in session.shots.iter_mut().zip([1, 2, 4, 5, 6, 1, 2, 3, 4, 5]) {
        shot.number = Some(number);
    }
    assert!(
        findings(session.clone()).iter().any(|f| f.seen == Seen::NumbersMissing { missing: 1, first: 3 })
    );
    // Numbers that count something else.
    for (i, shot) in session.shots.iter_mut().enumerate() {
        shot.number = Some(4_000_000_000 - 100_000 * u32::try_from(i).unwrap_or(0));
    }
    assert!(!kinds(session).contains(&"NumbersMissing".to_owned()));
}

#[test]
fn an_average_that_is_not_of_these_shots_is_named_with_its_size() {
    let mut session = one_after_the_other("carry", &[6, 6], &[250.0, 255.0], 5.0);
    let value = |mean| SummaryValue { mean: Some(mean), ..SummaryValue::default() };
    let of_shots = session.shots[..6].iter().filter_map(|s| s.values[0]).sum::<f64>() / 6.0;
    let summary = |mean| Summary {
        build: 0,
        n: Some(6),
        of: SummaryOf::All,
        values: Map::from([("carry".into(), value(mean))]),
        line: Some(8),
    };
    session.summaries = vec![summary(of_shots.round())];
    assert!(!kinds(session.clone()).contains(&"SummaryDisagrees".to_owned()), "rounding is no disagreement");
    session.summaries = vec![summary(of_shots + 4.0)];
    assert!(kinds(session).contains(&"SummaryDisagrees".to_owned()));
}

#[test]
fn far_shots_are_pointed_at_and_counted_in() {
    let mut session = in_turn("carry", 5, &[250.0, 255.0], 5.0);
    session.shots[4].values[0] = Some(190.0);
    let build = session.shots[4].build;
    let report = answer(session, asking("carry"));
    assert!(
        report
            .trust
            .iter()
            .any(|f| matches!(f.seen, Seen::FarShots { count: 1, build: of, others: 0, .. } if of == build))
    );
    assert_eq!(report.answer.estimate.expect("an estimate").n.candidate, 15);
}

#[test]
fn words_for_every_finding() {
    let mut session = one_after_the_other("carry", &[5, 30], &[245.0, 252.0], 5.0);
    for (i, shot) in session.shots.iter_mut().enumerate() {
        shot.number = u32::try_from(if i < 20 { i + 1 } else { i + 4 }).ok();
    }
    session.shots[30].values[0] = Some(180.0);
    session.shots[30].left_out = Some("mishit".into());
    let value = SummaryValue { mean: Some(256.0), ..SummaryValue::default() };
    session.summaries = vec![Summary {
        build: 1,
        n: Some(30),
        of: SummaryOf::All,
        values: Map::from([("carry".into(), value)]),
        line: None,
    }];
    let unknown = Session { order: Order::Unknown, ..session.clone() };
    let fair = in_turn("carry", 5, &[250.0, 255.0], 5.0);
    let mut text = String::new();
    for session in [session, unknown, fair] {
        for f in findings(session) {
            text.push_str(&format!("[{:?}] {}\n    {}\n    {}\n", f.weight, f.what, f.why, f.next));
        }
        text.push('\n');
    }
    insta::assert_snapshot!("findings", text);
}

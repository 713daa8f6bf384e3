//! Days put together, against published and computed values of random effects.

use judging::together::together;
use session::question::{Question, Stopping, StoppingWord};
use session::{Build, Session, Summary, SummaryOf, SummaryValue};

/// A session whose careful difference is `effect` with this squared error: so many shots that Student's t is the
/// normal, in a column of the golfer's own, which has no allowance for order.
fn with_error(effect: f64, variance: f64) -> Session {
    const SHOTS: u32 = 4_000_000_000;
    let sd = (variance * f64::from(SHOTS) / 2.0).sqrt() / stats::choices::WIDENING;
    let builds = ["Own driver", "Driver B"].map(|name| Build { name: name.into() }).into();
    let mut session = Session { builds, measures: vec!["own".into()], ..Session::default() };
    for (build, mean) in [(0, 0.0), (1, effect)] {
        let value = SummaryValue { mean: Some(mean), sd: Some(sd), ..SummaryValue::default() };
        session.summaries.push(Summary {
            build,
            n: Some(SHOTS),
            of: SummaryOf::All,
            values: [("own".into(), value)].into(),
            line: None,
        });
    }
    session
}

#[test]
fn days_are_combined_as_the_reference_has_it() {
    let text = std::fs::read_to_string(concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../tests/reference/stats/15_meta_analysis.json"
    ))
    .expect("the reference file");
    let file: serde_json::Value = serde_json::from_str(&text).expect("JSON");
    let cases = file["cases"].as_array().expect("cases");
    let question = Question {
        baseline: 0,
        candidate: None,
        measure: "own".into(),
        goal: None,
        margin: Some(1.0),
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
        differs: None,
    };
    let mut held = 0;
    for case in cases {
        let numbers = |key: &str| -> Vec<f64> {
            case["input"][key].as_array().expect(key).iter().filter_map(serde_json::Value::as_f64).collect()
        };
        let expected = |key: &str| case["expected"][key].as_f64().expect(key);
        let sessions: Vec<Session> =
            numbers("effect").into_iter().zip(numbers("variance")).map(|(e, v)| with_error(e, v)).collect();
        let pair = together(&sessions, &question).expect("days").remove(0);
        let combined = pair.combined.expect("combined");
        let close = |got: f64, want: f64, what: &str| {
            assert!(
                (got - want).abs() <= 1e-6 * want.abs().max(1e-3),
                "{} {what}: {got}, not {want}",
                case["id"]
            );
        };
        close(combined.value, expected("random_mean"), "mean");
        close(combined.between.powi(2), expected("tau2"), "between");
        close(combined.if_equal, expected("fixed_mean"), "fixed");
        close(combined.if_equal_se, expected("fixed_se"), "fixed error");
        close(combined.share_between, expected("I2"), "share");
        assert!((pair.days.iter().map(|day| day.weight).sum::<f64>() - 1.0).abs() < 1e-12);
        held += 1;
    }
    assert!(held > 0);
}

fn asked(candidate: Option<usize>, margin: f64) -> Question {
    Question { candidate, margin: Some(margin), ..crate::support::asking("own") }
}

fn third(mut session: Session, effect: f64) -> Session {
    session.builds.push(Build { name: "Driver C".into() });
    let mut summary = session.summaries[1].clone();
    summary.build = 2;
    summary.values =
        [("own".into(), SummaryValue { mean: Some(effect), sd: Some(1.0), ..SummaryValue::default() })]
            .into();
    session.summaries.push(summary);
    session
}

#[test]
fn the_club_asked_for_is_told_alone_and_found_wherever_a_day_has_it() {
    let days = [with_error(3.0, 1.0), with_error(4.0, 1.0)].map(|day| third(day, 9.0));
    let of = |candidate| together(&days, &asked(candidate, 1.0)).expect("days");
    assert_eq!(of(None).iter().map(|pair| pair.candidate).collect::<Vec<_>>(), [1, 2]);
    assert_eq!(of(Some(2)).iter().map(|pair| pair.candidate).collect::<Vec<_>>(), [2]);
    // On the second day the candidate stands first.
    let mut turned = with_error(4.0, 1.0);
    turned.builds.reverse();
    turned.summaries.iter_mut().for_each(|summary| summary.build = 1 - summary.build);
    let pair = together(&[with_error(3.0, 1.0), turned], &asked(Some(1), 1.0)).expect("days").remove(0);
    assert_eq!(pair.usable, 2);
    assert!((pair.combined.expect("combined").value - 3.5).abs() < 1e-6);
}

#[test]
fn several_clubs_share_the_error_over_days_too() {
    let days = [with_error(3.0, 1.0), with_error(4.0, 1.0)];
    let level = |days: &[Session]| {
        together(days, &asked(None, 1.0)).expect("days")[0]
            .combined
            .as_ref()
            .expect("combined")
            .different
            .level
    };
    assert!((level(&days) - 0.95).abs() < 1e-12);
    assert!((level(&days.map(|day| third(day, 0.0))) - 0.975).abs() < 1e-12);
}

#[test]
fn two_days_that_reach_over_ten_margins_to_either_side_are_wide_open() {
    let wide = |effects: &[f64], margin: f64| {
        let days: Vec<Session> = effects.iter().map(|&effect| with_error(effect, 1.0)).collect();
        let pair = together(&days, &asked(None, margin)).expect("days").remove(0);
        let different = pair.combined.expect("combined").different;
        (pair.wide_open, different.high.max(-different.low))
    };
    for effects in [[-2.0, 6.0], [-6.0, 2.0]] {
        let (_, reach) = wide(&effects, 1.0);
        assert!(wide(&effects, 0.099 * reach).0, "{effects:?}");
        assert!(!wide(&effects, 0.101 * reach).0, "{effects:?}");
        assert!(!wide(&[effects[0], effects[1], effects[0]], 0.001 * reach).0, "three days say something");
    }
}

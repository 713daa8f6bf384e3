//! A club new in the hand: seen where the shots show it, and told wherever it may explain what they show.

use crate::made::{around, blocks, rounds};
use crate::support::{answer, asking};
use judging::trust::{Seen, Weight};
use session::Session;
use telling::report::Report;

/// Fifteen rounds of three, the second club by `lost` yards short at first and as long as the other once it is known.
fn learned(lost: f64) -> Session {
    let short = |k: usize| lost * (-(k as f64) / 6.0).exp();
    let set = |r: usize| {
        let own = around(250.0, 3.0, 3, 5 * r + 3).into_iter().enumerate();
        vec![around(250.0, 3.0, 3, 5 * r), own.map(|(i, value)| value - short(3 * r + i)).collect()]
    };
    rounds("carry", &(0..15).map(set).collect::<Vec<_>>())
}

fn seen(report: &Report) -> Option<&telling::trust::TrustFinding> {
    report.trust.iter().find(|found| matches!(found.seen, Seen::Learning { .. }))
}

#[test]
fn a_club_that_gained_on_the_other_is_said_to_have_and_where_it_may_stand_then() {
    let report = answer(learned(20.0), asking("carry"));
    let found = seen(&report).expect("it gained by far");
    let Seen::Learning { build, other, gained, low, high, then, then_range, .. } = found.seen else {
        unreachable!()
    };
    assert_eq!((build, other, found.weight), (1, 0, Weight::Serious));
    assert!(low > 0.0 && (low..high).contains(&20.0) && (gained - 20.0).abs() < 8.0, "{gained} {low} {high}");
    assert!(then.abs() < 2.0 && then_range.low < 0.0 && then_range.high > 0.0, "{then} {then_range:?}");
    assert!(found.what.contains("Driver B gained on Own driver"), "{}", found.what);
    // A club that only lies behind has learned nothing.
    assert!(seen(&answer(learned(0.0), asking("carry"))).is_none());
}

#[test]
fn a_club_found_shorter_by_less_than_learning_costs_is_said_to_be_perhaps_only_new() {
    let told = |gap: f64| {
        let session = blocks("carry", &[around(250.0, 2.0, 12, 0), around(250.0 + gap, 2.0, 12, 5)]);
        let report = answer(session, asking("carry"));
        let facts = report.answer.facts.clone().expect("facts");
        (facts.learning_costs, report.answer.words.detail.contains("was new in the hand"))
    };
    // Twelve shots: 10 yd at first and a third of that six shots later are 4.7 on average.
    let (cost, said) = told(-10.0);
    assert!(said && (cost.expect("it may explain it") - 4.7).abs() < 0.05, "{cost:?}");
    assert_eq!(told(-30.0), (None, false), "far more than learning costs");
    assert_eq!(told(10.0), (None, false), "a longer club has nothing to explain");
    assert_eq!(told(0.0), (None, false), "nothing was found");
}

//! A promise holds up only where the retest shows a gain, and what is printed of it crosses no line.

use crate::claims::{claimed, held, retest};
use crate::support::in_turn;
use judging::claim::ClaimKind;

#[test]
fn a_promise_within_the_margin_is_not_held_up_by_no_gain_at_all() {
    for said in [1.0, 2.0, 3.0, 4.0, 5.0] {
        let report = held(claimed(said), in_turn("carry", 20, &[240.0, 240.0], 7.0));
        assert_ne!(report.facts.kind, ClaimKind::Supported, "{}", report.words.headline);
    }
    for said in [1.0, 2.0] {
        let report = held(claimed(said), in_turn("carry", 20, &[240.0, 240.0], 7.0));
        assert_eq!(report.facts.kind, ClaimKind::TooSmall, "{}", report.words.headline);
        let headline = &report.words.headline;
        assert!(
            headline.starts_with("Too small a promise to test") && !headline.contains("holds up"),
            "{headline}"
        );
        assert!(headline.contains("5\u{a0}yd that matter to you"), "{headline}");
    }
    // What goes the other way by more than would matter contradicts any promise.
    assert_eq!(held(claimed(2.0), retest(-12.0, 3.0)).facts.kind, ClaimKind::Contradicted);
}

#[test]
fn what_holds_up_excludes_no_gain_and_what_does_not_is_not_said_to() {
    let mut seen = Vec::new();
    for (gap, scatter) in (0..60).flat_map(|gap| [(gap, 5.0), (gap, 15.0)]) {
        let report = held(claimed(6.0), retest(0.25 * f64::from(gap), scatter));
        let retest = report.facts.retest.expect("a retest");
        if report.facts.kind == ClaimKind::Supported {
            assert!(retest.low > 0.0 && 6.0 - retest.low < 5.0, "{}", report.words.headline);
            assert!(report.words.headline.contains("95\u{a0}% interval"), "{}", report.words.headline);
        }
        seen.push(report.facts.kind);
    }
    for kind in [ClaimKind::Supported, ClaimKind::NotSettled] {
        assert!(seen.contains(&kind), "{kind:?} is never said: {seen:?}");
    }
}

#[test]
fn a_contradicted_claim_prints_no_end_that_reaches_the_promise() {
    let shown = held(claimed(12.0), retest(4.0, 6.0)).facts.retest.expect("a retest").high;
    // A promise just above what the retest allows, which both round to.
    let promise = shown + 0.2;
    let report = held(claimed(promise), retest(4.0, 6.0));
    assert_eq!(report.facts.kind, ClaimKind::Contradicted);
    let told = report.words.headline.split("at most ").nth(1).expect("an end").to_owned();
    let end: f64 = told.split('\u{a0}').next().and_then(|end| end.parse().ok()).expect("a number");
    assert!(end < promise, "{end} of {promise}: {}", report.words.headline);
}

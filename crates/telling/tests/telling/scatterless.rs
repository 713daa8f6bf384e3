//! Shots without scatter: what is said of them is true, and nothing is put down to the order.

use crate::made::rounds;
use crate::support::{answer, asking, one_after_the_other};
use judging::verdict::Why;

#[test]
fn two_clubs_of_one_value_each_are_not_said_to_have_the_same() {
    let told = answer(one_after_the_other("carry", &[5, 5], &[250.0, 260.0], 0.0), asking("carry")).answer;
    assert_eq!(told.decision.why, Some(Why::NoScatter));
    assert!(
        told.words.headline.contains("all shots of either club have one value of carry"),
        "{}",
        told.words.headline
    );
}

#[test]
fn the_same_gap_in_every_round_is_not_put_down_to_the_order() {
    for shots in [1, 3] {
        let sets: Vec<Vec<Vec<f64>>> = [250.0, 245.0, 255.0, 250.0, 240.0]
            .map(|own| vec![vec![own; shots], vec![own + 10.0; shots]])
            .to_vec();
        let report = answer(rounds("carry", &sets), asking("carry"));
        assert_eq!(
            report.answer.decision.why,
            Some(Why::NoScatterInRounds),
            "{}",
            report.answer.words.headline
        );
        let headline = &report.answer.words.headline;
        assert!(headline.starts_with("Every lap shows the same gap in carry"), "{headline}");
        let overlays: Vec<&str> = report.overlays.iter().map(|overlay| overlay.headline.as_str()).collect();
        assert!(!overlays.contains(&"Clubs and time are mixed up."), "{overlays:?}");
    }
}

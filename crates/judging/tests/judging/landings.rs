//! What was counted on the ground.

use crate::support::{also, blocks};
use judging::landing::{LandingRefused, Strip, landing};
use session::question::Stopping;

#[test]
fn what_was_counted_as_aimed_is_a_share_of_the_shots() {
    let mut session = blocks("carry", &[vec![250.0; 8], vec![255.0; 8]]);
    let offline = [-20.0, -15.0, -10.0, -5.0, 0.0, 5.0, 15.1, 40.0];
    also(&mut session, "offline", |at, _| Some(offline[at % 8]));
    let found = landing(&session, 0, Some(1), Strip { fairway: 30.0, aim: 10.0 }, &Stopping::default())
        .expect("shots");
    let build = found.build(0).expect("the baseline");
    // An edge is in; ten yards to the right the strip holds those from -25 to 5.
    assert!((build.counted_as_aimed - 5.0 / 8.0).abs() < 1e-12);
    assert_eq!((build.counted, build.n), (6, 8));
    assert!((build.counted_share.value - 6.0 / 8.0).abs() < 1e-12);
}

#[test]
fn the_widest_and_the_narrowest_strip_can_be_asked_for() {
    let mut session = blocks("carry", &[vec![250.0; 4]]);
    also(&mut session, "offline", |at, _| Some(at as f64));
    let ask = |fairway, aim| landing(&session, 0, None, Strip { fairway, aim }, &Stopping::default());
    for (fairway, aim) in [(5.0, -60.0), (100.0, 60.0)] {
        assert!(ask(fairway, aim).is_ok(), "{fairway} {aim}");
    }
    for (fairway, aim) in [(4.9, 0.0), (100.1, 0.0), (30.0, -60.1), (30.0, 60.1), (f64::NAN, 0.0)] {
        assert!(matches!(ask(fairway, aim), Err(LandingRefused::Outside { .. })), "{fairway} {aim}");
    }
}

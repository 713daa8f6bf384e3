//! Carry against its own launch: misread units are told, computed carries recognized, and honest ones left alone.

use crate::dice::Dice;
use crate::support::empty;
use judging::consistency::{CarryUnit, Fit, SpeedUnit};
use judging::flying::{Launch, fly};
use session::refusal::Refusal;
use session::{Conditions, Session, Shot};
use telling::consistency::{Consistency, ConsistencyRequest};
use text::Voice;

fn consistency(request: &ConsistencyRequest) -> Result<Consistency, Refusal> {
    telling::consistency::consistency(request, &Voice::english())
}

/// Shots of one golfer; `carry` makes what stands in the row from the model's carry.
fn session(seed: u64, n: usize, carry: impl Fn(&mut Dice, &Launch, f64) -> f64) -> Session {
    let mut dice = Dice::seeded(seed);
    let mut session = empty("carry", 2);
    session.measures = ["carry", "ball_speed", "launch_angle", "spin_rate"].map(Into::into).to_vec();
    for shot in 0..n {
        let launch = Launch {
            ball_speed: 158.0 + 3.0 * dice.normal(),
            launch_angle: (13.0 + 1.6 * dice.normal()).max(3.0),
            spin_rate: (2_800.0 + 350.0 * dice.normal()).max(1_200.0),
            launch_direction: 0.0,
            spin_axis: 0.0,
        };
        let flown = fly(&launch, &Conditions::default()).expect("a driver flies").carry;
        let carry = carry(&mut dice, &launch, flown);
        let values = [carry, launch.ball_speed, launch.launch_angle, launch.spin_rate].map(Some).to_vec();
        session.shots.push(Shot { build: shot % 2, round: None, number: None, values, ..Shot::default() });
    }
    session
}

/// A ball seen to land: ball and device of its own, one percent and a half of error.
fn seen(dice: &mut Dice, _: &Launch, flown: f64) -> f64 {
    0.97 * flown * (1.0 + 0.015 * dice.normal())
}

fn held(session: &Session) -> Consistency {
    consistency(&ConsistencyRequest { session: session.clone() }).expect("rows to look at")
}

#[test]
fn carries_that_were_seen_are_left_alone() {
    for seed in 0..100 {
        let found = held(&session(seed, 30, seen));
        assert_eq!(
            (found.whole.fit, found.doubts.len(), found.whole.is_computed),
            (Fit::Fits, 0, false),
            "{seed}"
        );
        assert!((found.whole.middle_ratio - 0.97).abs() < 0.015);
        assert!(found.words.next.is_empty() && found.words.computed.is_empty());
    }
}

/// Another model than ours, rounded to a yard as files have it: ours does not fit it, yet it is too smooth to be seen.
#[test]
fn computed_carries_are_recognized() {
    let computed = |_: &mut Dice, launch: &Launch, flown: f64| {
        let other =
            0.95 * flown + 0.12 * launch.ball_speed - 0.6 * launch.launch_angle + 0.002 * launch.spin_rate;
        other.round()
    };
    for seed in 0..100 {
        let found = held(&session(seed, 20, computed));
        assert!(found.whole.is_computed, "{seed}");
        assert!(found.words.computed.contains("probably computed, not seen"));
    }
    assert!(!held(&session(1, 8, computed)).whole.is_computed, "eight rows say nothing");
}

#[test]
fn a_row_in_another_unit_is_told_and_never_changed() {
    let mut session = session(3, 24, seen);
    let before = session.shots[7].values[0].unwrap();
    // Typed in feet among yards.
    session.shots[7].values[0] = Some(before * 3.0);
    let found = held(&session);
    assert_eq!(found.doubts.len(), 1);
    let doubt = &found.doubts[0];
    assert_eq!((doubt.facts.shot, doubt.facts.fit), (7, Fit::DoesNotFit));
    assert!((doubt.facts.carry - before * 3.0).abs() < 1e-9, "as read");
    assert!((doubt.facts.expected - before).abs() < 0.06 * before);
    assert_eq!(doubt.facts.stories[0].carry, Some(CarryUnit::Feet));
    assert!(doubt.words.contains("It would fit if carry is in feet"), "{}", doubt.words);
    assert!(found.words.next.contains("Nothing was changed"));
}

#[test]
fn a_whole_session_in_another_unit_is_told() {
    // Speeds in m/s that were read as mph: the launches fly nowhere near the carry.
    let mut speeds = session(4, 20, seen);
    speeds.shots.iter_mut().for_each(|shot| shot.values[1] = shot.values[1].map(|mph| mph * 0.447_04));
    let found = held(&speeds);
    assert_eq!(found.whole.fit, Fit::DoesNotFit);
    assert!(
        found
            .whole
            .stories
            .iter()
            .any(|story| story.speed == Some(SpeedUnit::MetersPerSecond) && story.carry.is_none())
    );
    // Meters read as yards are within what balls and devices do: said as possible, from a session on.
    let meters = session(5, 20, |_, _, flown| 0.9 * flown);
    let found = held(&meters);
    assert_eq!(found.whole.fit, Fit::Doubtful);
    assert_eq!(found.whole.stories[0].carry, Some(CarryUnit::Meters));
    assert!(found.words.session.contains("10\u{a0}% shorter"), "{}", found.words.session);
}

#[test]
fn without_launches_there_is_a_refusal() {
    let refusal = consistency(&ConsistencyRequest { session: empty("carry", 2) }).unwrap_err();
    assert_eq!(refusal.kind, "cannot_fly");
}

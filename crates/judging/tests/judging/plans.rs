//! What a plan promises, held against other plans.

use judging::plan::{Planned, plan};
use session::plan::{LookAfter, LookWord, PlanRequest};
use session::question::Goal;

fn request(rounds: u32, margin: f64) -> PlanRequest {
    let builds = ["Own driver", "Driver B"].map(str::to_owned).into();
    PlanRequest { rounds: Some(rounds), margin: Some(margin), ..PlanRequest::of(builds, "carry".into()) }
}

fn planned(request: &PlanRequest) -> Planned {
    plan(request).expect("a plan")
}

#[test]
fn what_can_be_detected_is_found_in_eight_of_ten_tests() {
    let tighter = PlanRequest { goal: Some(Goal::Tighter), margin: Some(1.3), ..request(8, 5.0) };
    for asked in [request(8, 5.0), request(8, 30.0), tighter] {
        let detectable = planned(&asked).power.expect("spread").facts.detectable.expect("of some sense");
        let power =
            planned(&PlanRequest { margin: Some(detectable), ..asked.clone() }).power.expect("spread");
        assert!((power.seen[0].chance - 0.8).abs() < 0.005, "{:?} {detectable}", power.seen);
    }
    // Nothing of any sense: more than sixty-four times what matters.
    assert_eq!(planned(&request(8, 0.05)).power.expect("spread").facts.detectable, None);
}

#[test]
fn a_longer_test_promises_what_a_plan_of_that_length_promises() {
    for looks in [LookAfter::Word(LookWord::EveryRound), LookAfter::default()] {
        let asked = |rounds| PlanRequest { looks: Some(looks.clone()), ..request(rounds, 6.0) };
        let own = planned(&asked(8));
        for rounds in [4, 8, 16] {
            let length = own.facts.lengths.iter().find(|length| length.rounds == rounds).expect("shown");
            let other = planned(&asked(rounds));
            let power = other.power.expect("spread");
            assert!((length.margin_found.expect("spread") - power.seen[0].chance).abs() < 0.02, "{rounds}");
            assert!((length.double_found.expect("spread") - power.seen[1].chance).abs() < 0.02, "{rounds}");
            assert!((length.same.expect("spread") - power.facts.same.expect("spread")).abs() < 1e-9);
            assert_eq!((length.balls, length.minutes), (other.facts.balls, other.facts.minutes));
            assert_eq!(length.is_plan, rounds == 8);
        }
    }
}

#[test]
fn a_difference_that_nobody_can_miss_ends_the_test_at_its_first_look() {
    let looks = Some(LookAfter::Rounds(vec![3, 6]));
    let average = |margin| {
        let asked = PlanRequest { looks: looks.clone(), ..request(8, margin) };
        planned(&asked).power.expect("spread").facts.average_rounds
    };
    // Three rounds leave the widest interval, which a few tests of a hundred still cannot end on.
    assert!((3.0..3.2).contains(&average(200.0)), "{}", average(200.0));
    // Of a difference as good as none a few tests in a hundred end early by luck.
    assert!((7.7..8.0).contains(&average(0.001)), "{}", average(0.001));
}

#[test]
fn equal_builds_are_called_the_same_the_more_often_the_more_they_may_differ_and_the_longer_it_takes() {
    let same =
        |rounds, margin| planned(&request(rounds, margin)).power.expect("spread").facts.same.expect("spread");
    assert!(same(8, 0.5) < 0.01 && same(8, 60.0) > 0.999);
    assert!(same(8, 8.0) < same(8, 10.0) && same(8, 10.0) < same(16, 10.0));
}

//! Equal builds by the thousand: as many are called the same as a plan promises.

use crate::dice::Dice;
use crate::support::{asking, empty, judged, push};
use judging::plan::plan;
use judging::verdict::DecisionKind;
use session::plan::{LookAfter, LookWord, PlanRequest};
use session::question::Question;
use session::{Order, Session};

/// A shot with the tails of carry: Student's t of 5 degrees of freedom, kurtosis 9, of deviation 1.
fn shot(dice: &mut Dice) -> f64 {
    const DF: usize = 5;
    let squares: f64 = (0..DF).map(|_| dice.normal().powi(2)).sum::<f64>() / DF as f64;
    dice.normal() / squares.sqrt() * (3.0_f64 / 5.0).sqrt()
}

/// Four rounds, where it counts how many shots tell a quiet session from a wild one; the looks are a plan's own matter.
#[test]
fn equal_builds_are_called_the_same_as_often_as_promised() {
    let (rounds, margin, sessions) = (4, 12.0, 6_000);
    let builds = ["Own driver", "Driver B"].map(str::to_owned).into();
    let looks = Some(LookAfter::Word(LookWord::AtEnd));
    let asked = PlanRequest::of(builds, "carry".into());
    let asked = PlanRequest { rounds: Some(rounds), margin: Some(margin), looks, ..asked };
    let promised = plan(&asked).expect("a plan").power.expect("spread").facts.same.expect("known");
    let question = Question { margin: Some(margin), ..asking("carry") };
    let (mut dice, mut same) = (Dice::seeded(7), 0);
    for _ in 0..sessions {
        let mut session = Session { order: Order::Interleaved, ..empty("carry", 2) };
        for at in 0..6 * rounds {
            let build = ((at / 3).div_ceil(2) % 2) as usize;
            push(&mut session, build, Some(at / 6 + 1), 250.0 + 11.0 * shot(&mut dice));
        }
        let judged = judged(&session, &question);
        same += u32::from(judged.headline().expect("a pair").decision.kind == DecisionKind::Same);
    }
    let called = f64::from(same) / f64::from(sessions);
    assert!((called - promised).abs() < 0.025, "promised {promised}, called {called}");
}

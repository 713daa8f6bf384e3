//! Boundaries of decisions, each held from both sides.

use crate::support::{asking, averages, judged};
use judging::facts::HowHit;
use session::{Order, Session};

#[test]
fn of_averages_nobody_knows_the_order() {
    for order in [Order::Interleaved, Order::Blocked, Order::Unknown] {
        let session = Session {
            order,
            ..averages("carry", &[(Some(20), 250.0, Some(9.0)), (Some(20), 260.0, Some(9.0))])
        };
        let question = asking("carry");
        assert_eq!(judged(&session, &question).headline().expect("a pair").facts.order, HowHit::NotKnown);
    }
}

//! What readers of generated answers found false, put back as the facts that it asserted: each is caught by its own rule.

use super::intervals;
use super::put_back::{is, judged, number, pair_breaks, passes, said, sizes_break};
use judging::verdict::DecisionKind;

#[test]
fn what_readers_found_false() {
    // A club that is called nearer to zero and is not, by the shots.
    pair_breaks(8, "nearer_club | is.nearer_club", &[said("nearer_club", "B"), is("is.nearer_club", "none")]);
    passes(vec![said("nearer_club", "B"), is("is.nearer_club", "B")], None);
    // The same, where nothing is allowed for the order.
    pair_breaks(
        14,
        "decision=same | is.order_size=not_known",
        &[said("decision", "same"), is("is.decision", "same"), is("is.order_size", "not_known")],
    );
    // 'Meets all alike' beside 'could not be compared lap by lap'.
    pair_breaks(
        14,
        "alike=all_clubs | is.asked_compared=not_in_turn",
        &[said("alike", "all_clubs"), is("is.asked_compared", "not_in_turn")],
    );
    // 'Choose by feel' while the question is open, and by an answer that a shot less would change.
    for (key, value) in [("is.question", "open"), ("is.hangs", "on_few_shots")] {
        pair_breaks(
            22,
            &format!("advice=choose_freely | {key}={value}"),
            &[said("advice", "choose_freely"), is(key, value)],
        );
    }
    passes(
        vec![said("advice", "choose_freely"), is("is.question", "settled"), is("is.hangs", "on_many")],
        None,
    );
    // Chances of a fairway that know of luck alone, with the clubs hit one after the other.
    pair_breaks(
        10,
        "landing_order | is.landing_order",
        &[said("landing_order", "in-turn"), is("is.landing_order", "one-after-the-other")],
    );
    pair_breaks(
        10,
        "landing_hint=no | is.landing_order=!in-turn",
        &[said("landing_hint", "no"), is("is.landing_order", "not-known")],
    );
    // A number of shots for another gap than the one asked for.
    let open = || judged(DecisionKind::CannotTell, (-4.0, 10.0, 0.95), (-3.0, 9.0, 0.9));
    sizes_break(6, intervals::MARGIN, &[number("power_gap", "8")], open());
    passes(vec![number("power_gap", "5")], open());
}

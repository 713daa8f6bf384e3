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

/// What one reader found in sessions 7100 to 7500.
#[test]
fn what_was_decided_in_the_wrong_place() {
    for (left, right) in [
        // 'Felt longer, and the shots show it', by the scatter of a club that is shorter.
        (("felt", "shown"), ("is.felt_club", "shorter")),
        (("felt", "opposite"), ("is.felt_club", "longer")),
        // Not in turn, of clubs of which nobody knows it.
        (("claim", "too_small"), ("is.promise", "shown_whole")),
        (("claim", "contradicted"), ("is.order_size", "not_known")),
        (("claim", "supported"), ("is.doubt", "yes")),
        (("bet", "made"), ("is.doubt", "yes")),
        (("holds", "here"), ("is.doubt", "yes")),
        (("tells", "apart"), ("is.doubt", "yes")),
        (("advice", "ask_bigger"), ("is.doubt", "yes")),
        (("bad_shots", "cost_the_average"), ("is.bad_shots", "by_luck")),
        (("better", "by_the_goal"), ("is.better", "not_said")),
        (("guess", "honest_lead"), ("is.bet", "made")),
        (("shared", "alike"), ("is.turns", "long")),
        (("club", "not_clear"), ("is.interaction", "different")),
        (("change", "same"), ("is.interaction", "different")),
    ] {
        let rule = format!("{}={} | {}={}", left.0, left.1, right.0, right.1);
        pair_breaks(26, &rule, &[said(left.0, left.1), is(right.0, right.1)]);
    }
    let never = |rule: &str, left: (&'static str, &str), right: (&'static str, &str)| {
        pair_breaks(26, rule, &[said(left.0, left.1), is(right.0, right.1)]);
    };
    never("gain=* | is.doubt=yes", ("gain", "some"), ("is.doubt", "yes"));
    never("gain=* | is.order_size=not_known", ("gain", "some"), ("is.order_size", "not_known"));
    never("typical=!none | is.doubt=yes", ("typical", "same"), ("is.doubt", "yes"));
    never("typical_told | is.typical_told", ("typical_told", "yes"), ("is.typical_told", "no"));
    never("could_move=* | is.room=none", ("could_move", "6"), ("is.room", "none"));
    never("order | is.order", ("order", "one_after_the_other"), ("is.order", "not_known"));
    passes(vec![said("felt", "shown"), is("is.felt_club", "longer")], None);
    passes(vec![said("typical", "none"), is("is.doubt", "yes")], None);
}

/// Said of intervals that nobody can use, of scatter that nobody saw, and of a bet that leaves out what speaks against it.
#[test]
fn what_says_nothing_and_what_is_left_out() {
    // 'Anything between 135 yd less and 130 yd more', a bet on it, and a claim held against it.
    let little = || is("is.says_little", "yes");
    pair_breaks(29, "interval=* | is.says_little=yes", &[said("interval", "any"), little()]);
    pair_breaks(29, "bet=made | is.says_little=yes", &[said("bet", "made"), little()]);
    pair_breaks(29, "gain=* | is.says_little=yes", &[said("gain", "some"), little()]);
    for claim in ["supported", "at_least", "too_small", "contradicted"] {
        let rule = format!("claim={claim} | is.says_little=yes");
        pair_breaks(29, &rule, &[said("claim", claim), is("is.claim", claim), little()]);
    }
    pair_breaks(
        29,
        "is.asked_says_little=yes | needs says=next_to_nothing on page, share, card",
        &[is("is.asked_says_little", "yes"), said("says", "next_to_nothing")],
    );
    pair_breaks(
        29,
        "says=next_to_nothing | is.decision=different",
        &[said("says", "next_to_nothing"), is("is.decision", "different")],
    );
    // 'About 69 shots with each' of two laps of fifteen.
    pair_breaks(
        33,
        "is.asked_only_whole_laps=yes | needs why_open=only_whole_laps on page, share, card",
        &[is("is.asked_only_whole_laps", "yes")],
    );
    pair_breaks(
        33,
        "tells=apart | is.only_whole_laps=yes",
        &[said("tells", "apart"), is("is.only_whole_laps", "yes")],
    );
    // 'With this much scatter' and 'these shots' of averages without a deviation.
    let assumed = || is("is.taken_scatter", "assumed");
    pair_breaks(32, "taken_scatter | is.taken_scatter", &[said("taken_scatter", "seen"), assumed()]);
    pair_breaks(
        32,
        "is.asked_taken_scatter=assumed | needs scatter=assumed on page, share, card",
        &[is("is.asked_taken_scatter", "assumed")],
    );
    pair_breaks(32, "shots=shots | is.shots=averages", &[said("shots", "shots"), is("is.shots", "averages")]);
    passes(vec![said("taken_scatter", "assumed"), assumed()], None);
    // 'No shots have been hit again yet' beside averages; 'all there is to go by' beside a bet.
    pair_breaks(36, "hit_again | is.hit_again", &[said("hit_again", "no"), is("is.hit_again", "yes")]);
    pair_breaks(40, "only=felt | is.bet=made", &[said("only", "felt"), is("is.bet", "made")]);
    pair_breaks(
        42,
        "is.drift=behind_the_bet | needs drift=named on bet",
        &[is("is.drift", "behind_the_bet"), said("drift", "named")],
    );
}

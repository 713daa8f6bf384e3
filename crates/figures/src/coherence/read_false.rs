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

/// What five readers found in sessions 8000 to 8499.
#[test]
fn what_five_readers_found() {
    // A new test, and so many shots, while a lap of the plan remained.
    pair_breaks(
        17,
        "advice=new_test | is.plan=under_way",
        &[said("advice", "new_test"), is("is.plan", "under_way")],
    );
    passes(vec![said("advice", "go_on"), is("is.plan", "under_way")], None);
    // Scatter of clubs hit one after the other, told as proof.
    pair_breaks(14, "is.proof=not_in_turn | needs hint=no_proof on page", &[is("is.proof", "not_in_turn")]);
    // 'Choose by feel', and nothing of the side that no shot told.
    pair_breaks(
        22,
        "is.leaves_open=direction | needs stays_open=direction on page, share",
        &[is("is.leaves_open", "direction"), said("advice", "choose_freely")],
    );
    // 'This holds' of what a shot less would change.
    pair_breaks(
        22,
        "holds=here | is.asked_hangs=on_few_shots",
        &[said("holds", "here"), is("is.asked_hangs", "on_few_shots")],
    );
    passes(vec![said("holds", "here"), is("is.hangs", "on_few_shots")], None);
    // 'More shots than anybody can hit', of a topped or mistyped shot.
    pair_breaks(
        21,
        "is.asked_about=yes | needs advice=look_at_the_value on page, share",
        &[is("is.asked_about", "yes"), said("advice", "ask_bigger")],
    );
    pair_breaks(
        21,
        "set_aside=never | is.slip=asked_about",
        &[said("set_aside", "never"), is("is.slip", "asked_about")],
    );
    // 'Only with a drift of 14 yd' beside one of 17.
    pair_breaks(
        14,
        "is.drift_found=as_luck_needs | needs drift_found=yes on page",
        &[is("is.drift_found", "as_luck_needs")],
    );
    pair_breaks(
        14,
        "drift_only=yes | is.drift_found=as_luck_needs",
        &[said("drift_only", "yes"), is("is.drift_found", "as_luck_needs")],
    );
    // 'What you felt is all there is to go by' of what the shots show the opposite of.
    pair_breaks(25, "only=felt | is.felt=opposite", &[said("only", "felt"), is("is.felt", "opposite")]);
    // 'Made a difference' of what came later, or of the other club after it.
    pair_breaks(
        14,
        "change_flat=yes | is.change_in_turn=no",
        &[said("change_flat", "yes"), is("is.change_in_turn", "no")],
    );
    pair_breaks(
        14,
        "club_flat=yes | is.club_in_turn=no",
        &[said("club_flat", "yes"), is("is.club_in_turn", "no")],
    );
    // A guess of ours, of carry.
    pair_breaks(
        14,
        "days_guess=yes | is.asked_drifts=known",
        &[said("days_guess", "yes"), is("is.asked_drifts", "known")],
    );
}

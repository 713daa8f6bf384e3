//! Links of plans: what was asked comes back, damage is noticed, and a choice stays open only while what is usual for it
//! is what it was.

use crate::any_session::{characters, letter, letters, name};
use proptest::option;
use proptest::prelude::*;
use reading::link::{
    LinkError, LinkNotice, PLAN_PREFIX, PackRequest, PlanToShare, SharedPlan, TooLarge, pack, pack_plan,
    unpack, unpack_plan,
};
use session::known::Known;
use session::measure::MeasureId;
use session::plan::{LookAfter, LookWord, MOST_PLANNED_BUILDS, PlanRequest};
use session::question::{Goal, View};
use text::Voice;

/// What stands in for an open choice: today's figures, and those of some later day.
fn written_out(asked: &PlanRequest, rounds: u32, margin: f64) -> Option<PlanRequest> {
    (asked.builds.len() > 1 || asked.same_club).then(|| PlanRequest {
        goal: asked.goal.or(Some(Goal::Higher)),
        margin: asked.margin.or(Some(margin)),
        spread: asked.spread.or(Some(11.0)),
        earlier: None,
        set: asked.set.or(Some(3)),
        // Fewer rounds for a wide margin: one open choice hangs on another.
        rounds: asked.rounds.or(Some(if asked.margin.unwrap_or(margin) > 7.0 { 2 } else { rounds })),
        warm_up: asked.warm_up.or(Some(8)),
        looks: asked.looks.clone().or_else(|| Some(LookAfter::default())),
        ..asked.clone()
    })
}

fn today(asked: &PlanRequest) -> Option<PlanRequest> {
    written_out(asked, 6, 5.0)
}

fn packed(request: &PlanToShare) -> Option<String> {
    pack_plan(request, &today(&request.plan)?).ok()
}

fn opened(text: &str) -> Result<SharedPlan, LinkError> {
    unpack_plan(text, &today, &Voice::english())
}

fn looks() -> impl Strategy<Value = LookAfter> {
    prop_oneof![
        prop::sample::select(vec![LookWord::AtEnd, LookWord::Halfway, LookWord::EveryRound])
            .prop_map(LookAfter::Word),
        prop::collection::vec(2_u32..9, 0..4).prop_map(LookAfter::Rounds),
    ]
}

prop_compose! {
    fn request()(
        builds in prop::collection::vec(name(), 2..=MOST_PLANNED_BUILDS),
        measure in prop::sample::select(Known::ALL.to_vec()),
        goal in option::of(prop::sample::select(vec![Goal::Higher, Goal::Lower, Goal::Tighter])),
        (margin, spread) in (option::of(1.01..900.0_f64), option::of(0.1..900.0_f64)),
        (set, rounds, seed, warm_up) in (option::of(1_u32..6), option::of(2_u32..61), option::of(any::<u32>()), option::of(0_u32..101)),
        looks in option::of(looks()),
        same_club in any::<bool>(),
        record in prop::collection::vec(prop_oneof![Just("carry".to_owned()), Just("smash".to_owned()), name()], 0..5),
    ) -> PlanToShare {
        let asked = PlanRequest { goal, margin, spread, set, rounds, seed, warm_up, looks, same_club, ..PlanRequest::of(builds, measure.into()) };
        PlanToShare { plan: asked, record: record.into_iter().map(MeasureId::from).collect() }
    }
}

fn two_builds() -> PlanRequest {
    PlanRequest::of(vec!["A".into(), "B".into()], Known::Carry.into())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn what_was_asked_comes_back(request in request()) {
        let Some(text) = packed(&request) else { return Ok(()) };
        prop_assert!(text.starts_with(PLAN_PREFIX));
        prop_assert!(text[PLAN_PREFIX.len()..].bytes().all(|b| b.is_ascii_alphanumeric() || matches!(b, b'.' | b'-' | b'_')));
        let back = opened(&text).expect("a link just made opens");
        prop_assert_eq!(&back.plan, &request.plan);
        prop_assert_eq!(&back.record, &request.record);
        prop_assert_eq!(back.notices, Vec::<LinkNotice>::new());
    }

    #[test]
    fn it_means_the_same_when_something_else_is_usual(request in request(), rounds in 2_u32..12, margin in 1.5..9.0_f64) {
        let Some(text) = packed(&request) else { return Ok(()) };
        let later = |asked: &PlanRequest| written_out(asked, rounds, margin);
        let back = unpack_plan(&text, &later, &Voice::english()).expect("a link just made opens").plan;
        prop_assert_eq!(later(&back), today(&request.plan));
    }

    #[test]
    fn a_changed_letter_or_a_cut_is_noticed(request in request(), at in any::<prop::sample::Index>(), letter in letter()) {
        let Some(text) = packed(&request) else { return Ok(()) };
        let first = PLAN_PREFIX.len() + 2;
        let at = first + at.index(text.len() - first);
        prop_assert_eq!(opened(&text[..at]), Err(LinkError::Damaged), "cut after {}", at);
        let changed = format!("{}{letter}{}", &text[..at], &text[at + 1..]);
        if changed != text {
            prop_assert_eq!(opened(&changed), Err(LinkError::Damaged));
        }
    }

    #[test]
    fn any_text_is_a_plan_or_an_error(text in characters(300), link in letters(0..300)) {
        for text in [text, format!("plan=1.{link}"), format!("plan={link}")] {
            if let Ok(opened) = opened(&text) {
                prop_assert!(today(&opened.plan).is_some());
            }
        }
    }
}

#[test]
fn only_the_open_choice_whose_usual_figure_changed_is_closed() {
    let text = packed(&PlanToShare { plan: two_builds(), record: Vec::new() }).expect("small");
    let later = |asked: &PlanRequest| written_out(asked, 9, 5.0);
    let back = unpack_plan(&text, &later, &Voice::english()).expect("it opens").plan;
    assert_eq!(back, PlanRequest { rounds: Some(6), ..two_builds() });
}

#[test]
fn a_plan_that_is_none_does_not_open() {
    let alone = PlanRequest::of(vec!["A".into()], Known::Carry.into());
    let text = pack_plan(&PlanToShare { plan: alone.clone(), record: Vec::new() }, &alone).expect("small");
    assert_eq!(opened(&text), Err(LinkError::Inconsistent));
}

#[test]
fn names_that_no_address_holds_are_refused() {
    let plan = PlanRequest::of(vec!["x".repeat(60_000), "B".into()], Known::Carry.into());
    let written = today(&plan).expect("a plan");
    assert_eq!(pack_plan(&PlanToShare { plan, record: Vec::new() }, &written), Err(TooLarge::Names));
}

#[test]
fn a_session_is_no_plan_and_a_plan_no_session() {
    let voice = Voice::english();
    let plan = packed(&PlanToShare { plan: two_builds(), record: vec![Known::Carry.into()] }).expect("small");
    assert_eq!(unpack(&plan, &voice), Err(LinkError::NotALink));
    assert_eq!(unpack(&plan[PLAN_PREFIX.len()..], &voice), Err(LinkError::Inconsistent));
    let session = crate::support::in_turn("carry", 5, &[250.0, 252.0], 8.0);
    let request = PackRequest { session, question: crate::support::asking("carry"), view: View::default() };
    let session = pack(&request).expect("small");
    assert_eq!(opened(&session), Err(LinkError::NotALink));
    assert_eq!(opened(&format!("plan={session}")), Err(LinkError::Inconsistent));
    for (text, error) in [
        ("", LinkError::NotALink),
        ("plan=", LinkError::NotALink),
        ("plan=2.AA", LinkError::Later),
        ("plan=1.", LinkError::Damaged),
    ] {
        assert_eq!(opened(text), Err(error), "{text}");
    }
}

//! Links of plans: every plan comes back as the same test, damage is noticed, no text does harm, and links once made
//! open forever as the test they were made from.

use proptest::option;
use proptest::prelude::*;
use reading::link::{LinkError, PLAN_PREFIX, PackRequest, PlanToShare, SharedPlan, unpack};
use session::known::Known;
use session::measure::MeasureId;
use session::plan::{LookAfter, LookWord, MOST_PLANNED_BUILDS, PlanRequest};
use session::question::{Goal, View};
use session::refusal::Refusal;
use straight_answer::whole;
use telling::plan::Plan;
use text::Voice;

#[path = "../../reading/tests/reading/any_session/mod.rs"]
mod any_session;
#[path = "../../telling/tests/telling/support/mod.rs"]
mod support;

use any_session::{characters, letter, letters, name};

fn looks() -> impl Strategy<Value = LookAfter> {
    prop_oneof![
        prop::sample::select(vec![LookWord::AtEnd, LookWord::Halfway, LookWord::EveryRound])
            .prop_map(LookAfter::Word),
        prop::collection::vec(2_u32..9, 0..4).prop_map(LookAfter::Rounds),
    ]
}

prop_compose! {
    fn request()(
        builds in prop::collection::vec(name(), 1..=MOST_PLANNED_BUILDS),
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

fn plan(request: &PlanRequest) -> Result<Plan, Refusal> {
    telling::plan::plan(request, &Voice::english())
}

fn pack_plan(request: &PlanToShare) -> Result<String, Refusal> {
    whole::pack_plan(request, &Voice::english())
}

fn unpack_plan(text: &str) -> Result<SharedPlan, LinkError> {
    let write_out = |plan: &PlanRequest| judging::plan::written_out(plan).ok();
    reading::link::unpack_plan(text, &write_out, &Voice::english())
}

fn pack(request: &PackRequest) -> Result<String, Refusal> {
    whole::pack(request, &Voice::english())
}

/// What a golfer would notice of a plan: all of it.
fn made(request: &PlanRequest) -> Plan {
    plan(request).expect("a plan")
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, ..ProptestConfig::default() })]

    #[test]
    fn any_plan_comes_back(request in request()) {
        let text = match pack_plan(&request) {
            Ok(text) => text,
            Err(refusal) => {
                prop_assert!(plan(&request.plan).is_err() || refusal.kind == "too_large_for_a_link", "{:?}", refusal);
                return Ok(());
            }
        };
        prop_assert!(text.starts_with(PLAN_PREFIX));
        prop_assert!(text[PLAN_PREFIX.len()..].bytes().all(|b| b.is_ascii_alphanumeric() || matches!(b, b'.' | b'-' | b'_')));
        let back = unpack_plan(&text).expect("a link just made opens");
        let names = request.plan.builds.iter().map(|name| name.trim().to_owned()).collect();
        let sent = PlanRequest { builds: names, ..request.plan };
        prop_assert_eq!(&back.plan, &sent);
        prop_assert_eq!(&back.record, &request.record);
        prop_assert!(back.notices.is_empty());
    }

    #[test]
    fn a_changed_letter_or_a_cut_is_noticed(request in request(), at in any::<prop::sample::Index>(), letter in letter()) {
        let Ok(text) = pack_plan(&request) else { return Ok(()) };
        let first = PLAN_PREFIX.len() + 2;
        let at = first + at.index(text.len() - first);
        prop_assert_eq!(unpack_plan(&text[..at]), Err(LinkError::Damaged), "cut after {}", at);
        let changed = format!("{}{letter}{}", &text[..at], &text[at + 1..]);
        if changed != text {
            prop_assert_eq!(unpack_plan(&changed), Err(LinkError::Damaged));
        }
    }

    #[test]
    fn any_text_is_a_plan_or_an_error(text in characters(300), link in letters(0..300)) {
        for text in [text, format!("plan=1.{link}"), format!("plan={link}")] {
            if let Ok(opened) = unpack_plan(&text) {
                prop_assert!(plan(&opened.plan).is_ok());
            }
        }
    }
}

#[test]
fn the_scatter_of_an_earlier_session_goes_along_and_its_shots_stay_behind() {
    let session = support::in_turn("carry", 6, &[250.0, 252.0], 8.0);
    let asked = PlanRequest {
        earlier: Some(session),
        ..PlanRequest::of(vec!["A".into(), "B".into()], "carry".into())
    };
    let text = pack_plan(&PlanToShare { plan: asked.clone(), record: vec![] }).expect("small");
    let back = unpack_plan(&text).expect("it opens").plan;
    assert_eq!(back.earlier, None);
    let (sent, there) = (made(&asked), made(&back));
    assert_eq!(sent.facts.spread.map(|spread| spread.value), there.facts.spread.map(|spread| spread.value));
    assert_eq!(
        (sent.facts.turns, sent.facts.looks, sent.power),
        (there.facts.turns, there.facts.looks, there.power)
    );
}

#[test]
fn a_session_is_no_plan_and_a_plan_no_session() {
    let asked = PlanRequest::of(vec!["A".into(), "B".into()], "carry".into());
    let plan = pack_plan(&PlanToShare { plan: asked, record: vec!["carry".into()] }).expect("small");
    assert_eq!(unpack(&plan, &Voice::english()), Err(LinkError::NotALink));
    assert_eq!(unpack(&plan[PLAN_PREFIX.len()..], &Voice::english()), Err(LinkError::Inconsistent));
    let session = support::in_turn("carry", 5, &[250.0, 252.0], 8.0);
    let request = PackRequest { session, question: support::asking("carry"), view: View::default() };
    let session = pack(&request).expect("small");
    assert_eq!(unpack_plan(&session), Err(LinkError::NotALink));
    assert_eq!(unpack_plan(&format!("plan={session}")), Err(LinkError::Inconsistent));
    for (text, error) in [
        ("", LinkError::NotALink),
        ("plan=", LinkError::NotALink),
        ("plan=2.AA", LinkError::Later),
        ("plan=1.", LinkError::Damaged),
    ] {
        assert_eq!(unpack_plan(text), Err(error), "{text}");
    }
}

/// `tests/links/plans` holds one file for each link: the link, what it must open as, and the test that must come of it.
#[test]
fn links_of_plans_once_made_open_forever() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/links/plans");
    let mut seen = 0;
    for entry in std::fs::read_dir(folder).expect("tests/links/plans is there") {
        let path = entry.expect("an entry").path();
        let file = std::fs::read_to_string(&path).expect("text");
        let case: serde_json::Value = serde_json::from_str(&file).expect("JSON");
        let address = format!("https://example.org/club/#{}", case["link"].as_str().expect("a link"));
        let opened = unpack_plan(&address).expect("it must open forever");
        let made = made(&opened.plan);
        let order: Vec<usize> = made.facts.turns.iter().map(|turn| turn.build).collect();
        let looks: Vec<u32> = made.facts.looks.iter().map(|look| look.after_round).collect();
        let opened = serde_json::to_value(opened).expect("plain data");
        for part in ["plan", "record"] {
            assert_eq!(opened[part], case["holds"][part], "{part} of {}", path.display());
        }
        assert_eq!(serde_json::json!(order), case["order"], "{}", path.display());
        assert_eq!(serde_json::json!(looks), case["looks"], "{}", path.display());
        seen += 1;
    }
    assert!(seen >= 3, "{seen} links");
}

//! Sentences about chance that promise no more than was worked out, in both languages.

use crate::support::{answer, asking, in_turn, one_after_the_other};
use judging::verdict::DecisionKind;
use session::plan::PlanRequest;
use session::question::{Question, Stopping, StoppingWord};
use telling::check::{CheckRequest, check};
use text::{Language, SPANISH, Units, Voice};

fn spanish() -> Voice {
    Voice::new(Language::from_table(SPANISH).expect("of this version"), Units::Yards)
}

#[test]
fn an_interval_of_averages_is_not_what_the_next_shot_does() {
    let request =
        CheckRequest { session: in_turn("carry", 5, &[250.0, 264.0], 6.0), question: asking("carry") };
    let english = check(&request, &Voice::english()).expect("a report").answer.words.headline;
    assert!(english.contains("On average ") && !english.contains("Expect"), "{english}");
    let spanish = check(&request, &spanish()).expect("a report").answer.words.headline;
    assert!(spanish.contains("En promedio, ") && !spanish.contains("Espera"), "{spanish}");
}

#[test]
fn luck_shows_a_gap_of_at_least_that_size() {
    let told = answer(in_turn("carry", 4, &[250.0, 251.0], 9.0), asking("carry")).answer;
    assert!(told.words.detail.contains("a gap at least this big in"), "{}", told.words.detail);
}

#[test]
fn plain_averages_would_have_called_it_so_only_where_the_answer_does_not() {
    for (lead, kind) in [(9.0, DecisionKind::CannotTell), (30.0, DecisionKind::Different)] {
        let report =
            answer(one_after_the_other("carry", &[15, 15], &[250.0, 250.0 + lead], 6.0), asking("carry"));
        assert_eq!(report.answer.decision.kind, kind);
        let told = &report.overlays[0].detail;
        let says_so = told.contains("would have called this a difference");
        assert_eq!(says_so, kind == DecisionKind::CannotTell, "{told}");
    }
}

#[test]
fn equal_clubs_that_are_watched_look_different_and_are_not() {
    let question = Question { stopping: Stopping::Word(StoppingWord::Unknown), ..asking("carry") };
    let report = answer(in_turn("carry", 5, &[250.0, 254.0], 6.0), question);
    let told: Vec<&str> = report.trust.iter().map(|finding| finding.why.as_str()).collect();
    assert!(told.iter().any(|why| why.contains("will look different in about 2 of 10 sessions")), "{told:?}");
}

#[test]
fn a_plan_tells_that_equal_clubs_may_be_called_different() {
    let builds = ["Own driver", "Driver B"].map(str::to_owned).to_vec();
    let request = PlanRequest::of(builds, "carry".into());
    let plan = telling::plan::plan(&request, &Voice::english()).expect("a plan");
    assert!(
        plan.words.same.contains("up to once in 20, wrongly calls them different"),
        "{}",
        plan.words.same
    );
}

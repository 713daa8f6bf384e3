//! Links: every session comes back, no text does harm, links once made open forever, and lengths keep their promise.

use crate::any_session::{characters, letter, letters, session};
use crate::support::fitting_session::{Shape, fitting_session};
use proptest::option;
use proptest::prelude::*;
use reading::link::{LinkError, LinkNotice, PackError, PackRequest, TooLarge, left_of, pack, unpack};
use session::Session;
use session::measure::MeasureId;
use session::question::{
    BuildPlace, Differs, Goal, LookedAfter, Misfit, Question, Stopping, StoppingWord, View,
};
use std::time::{Duration, Instant};
use text::Voice;

/// What the values of a column with more digits than anybody measures keep: seven digits of the largest.
const KEPT: f64 = 1e-6;
/// What arithmetic leaves behind is no digit that anybody gave.
const LAST_BITS: f64 = 1e-13;

fn stopping() -> impl Strategy<Value = Stopping> {
    prop_oneof![
        Just(Stopping::Word(StoppingWord::Fixed)),
        Just(Stopping::Word(StoppingWord::Unknown)),
        Just(Stopping::Word(StoppingWord::NotFixed)),
        (2_u32..60, any::<u32>()).prop_map(|(planned_rounds, last)| Stopping::Planned {
            planned_rounds,
            looked_after: LookedAfter::EveryRoundTo(last)
        }),
        (2_u32..60, prop::collection::vec(any::<u32>(), 0..9)).prop_map(|(planned_rounds, rounds)| {
            Stopping::Planned { planned_rounds, looked_after: LookedAfter::Rounds(rounds) }
        }),
    ]
}

prop_compose! {
    fn request()(
        session in session(),
        goal in option::of(prop::sample::select(vec![Goal::Higher, Goal::Lower, Goal::NearerZero, Goal::Different])),
        margin in option::of(0.0..1e6_f64),
        first_margin in option::of(0.0..20.0_f64),
        stopping in stopping(),
        differs in option::of(prop::sample::select(vec![Differs::Shaft, Differs::Head, Differs::OldClub])),
        note in option::of(letters(1..40)),
        any in any::<prop::sample::Index>(),
        open in any::<bool>(),
    ) -> PackRequest {
        let baseline = any.index(session.builds.len());
        let candidate = (!open && session.builds.len() > 1).then(|| (baseline + 1) % session.builds.len());
        let measure = if session.measures.is_empty() { "carry".into() } else { any.get(&session.measures).clone() };
        let question = Question { baseline, candidate, measure, goal, margin, first_margin, stopping, differs };
        PackRequest { session, question, view: View { note } }
    }
}

/// The session with every column at the precision that its link keeps, and whether that is another one.
fn assert_same(back: &Session, sent: &Session, notices: &[LinkNotice]) -> Result<(), TestCaseError> {
    let is_rounded = |id: &MeasureId| {
        notices.iter().any(|n| matches!(n, LinkNotice::Rounded { measure, .. } if measure == id))
    };
    let mut level = back.clone();
    for (at, id) in sent.measures.iter().enumerate() {
        let kept = if is_rounded(id) { KEPT } else { LAST_BITS };
        let all = sent.shots.iter().filter_map(|shot| shot.values[at]);
        let largest = all.fold(0.0_f64, |largest, value| largest.max(value.abs()));
        for (shot, there) in level.shots.iter_mut().zip(&sent.shots) {
            prop_assert_eq!(shot.values[at].is_some(), there.values[at].is_some());
            if let (Some(value), Some(given)) = (&mut shot.values[at], there.values[at]) {
                prop_assert!((*value - given).abs() <= kept * largest, "{} {given} is {value}", id);
                *value = given;
            }
        }
    }
    prop_assert_eq!(&level, sent);
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, ..ProptestConfig::default() })]

    #[test]
    fn any_session_and_question_come_back(request in request()) {
        let text = match pack(&request) {
            Ok(text) => text,
            Err(error) => {
                prop_assert_eq!(error, PackError::TooLarge(TooLarge::Session));
                return Ok(());
            }
        };
        prop_assert!(text.bytes().all(|b| b.is_ascii_alphanumeric() || matches!(b, b'.' | b'-' | b'_')));
        let back = unpack(&text, &Voice::english()).expect("a link just made opens");
        assert_same(&back.session, &request.session, &back.notices)?;
        prop_assert_eq!(&back.question, &request.question);
        prop_assert_eq!(&back.view, &request.view);
        // What came back is kept whole from then on.
        let again = PackRequest { session: back.session, question: back.question, view: back.view };
        let back = unpack(&pack(&again).expect("as large as before"), &Voice::english()).expect("a link just made opens");
        prop_assert_eq!(&back.session, &again.session);
    }

    #[test]
    fn what_is_left_of_a_cut_link_are_columns_as_they_were(request in request(), at in any::<prop::sample::Index>(), letter in letter()) {
        let Ok(text) = pack(&request) else { return Ok(()) };
        prop_assert_eq!(left_of(&text), None, "of a whole link");
        let whole = unpack(&text, &Voice::english()).expect("a link just made opens").session;
        let at = 2 + at.index(text.len() - 2);
        if let Some(left) = left_of(&text[..at]) {
            prop_assert_eq!(&left.builds, &whole.builds);
            prop_assert_eq!(&left.measures[..], &whole.measures[..left.measures.len()]);
            prop_assert_eq!(left.shots.len(), whole.shots.len());
            for (left, whole) in left.shots.iter().zip(&whole.shots) {
                prop_assert_eq!(left.build, whole.build);
                prop_assert_eq!((left.round, left.number), (whole.round, whole.number));
                prop_assert_eq!(&left.values[..], &whole.values[..left.values.len()]);
            }
        }
        // A letter that is another may stand in any value: whatever could be read is not offered as it was.
        let changed = format!("{}{letter}{}", &text[..at], &text[at + 1..]);
        let _ = left_of(&changed);
    }

    #[test]
    fn a_changed_letter_or_a_cut_is_noticed(request in request(), at in any::<prop::sample::Index>(), letter in letter()) {
        let Ok(text) = pack(&request) else { return Ok(()) };
        let at = 2 + at.index(text.len() - 2);
        prop_assert_eq!(unpack(&text[..at], &Voice::english()), Err(LinkError::Damaged), "cut after {}", at);
        let changed = format!("{}{letter}{}", &text[..at], &text[at + 1..]);
        if changed != text {
            prop_assert_eq!(unpack(&changed, &Voice::english()), Err(LinkError::Damaged));
        }
    }

    #[test]
    fn any_text_is_a_session_or_an_error(text in characters(400), link in letters(0..400)) {
        for text in [text, format!("1.{link}"), link] {
            if let Ok(opened) = unpack(&text, &Voice::english()) {
                prop_assert!(opened.session.shots.iter().all(|shot| shot.build < opened.session.builds.len()));
            }
        }
    }
}

#[test]
fn a_link_that_lost_its_end_still_holds_its_first_columns() {
    let mut session = crate::support::in_turn("carry", 5, &[250.0, 252.0], 8.0);
    session.measures.push("offline".into());
    for (at, shot) in session.shots.iter_mut().enumerate() {
        shot.values.push(Some(f64::from(u32::try_from(at * 7919 % 200).expect("small")) / 10.0));
    }
    let question = crate::support::asking("carry");
    let text =
        pack(&PackRequest { session: session.clone(), question, view: View::default() }).expect("small");
    let all = left_of(&text[..text.len() - 3]).expect("only the end is gone");
    assert_eq!(all.shots, session.shots);
    let some = (0..text.len()).filter_map(|at| left_of(&text[..at])).find(|left| left.measures.len() == 1);
    let carries = |session: &Session| session.shots.iter().map(|shot| shot.values[0]).collect::<Vec<_>>();
    let some = some.expect("a cut behind the first column");
    assert_eq!(carries(&some), carries(&session));
    assert!(some.shots.iter().all(|shot| shot.values.len() == 1));
    // Whole in its length, and a letter is another: nothing of it can be believed.
    let at = text.len() / 2;
    let other = if &text[at..=at] == "A" { "B" } else { "A" };
    assert_eq!(left_of(&format!("{}{other}{}", &text[..at], &text[at + 1..])), None);
    assert!(["", "1.", "example=fair", "1.AAAA", "2.AAAA"].iter().all(|text| left_of(text).is_none()));
}

#[test]
fn mail_and_people_wrap_links_and_copy_whole_addresses() {
    let request = PackRequest {
        session: crate::support::in_turn("carry", 5, &[250.0, 252.0], 8.0),
        question: crate::support::asking("carry"),
        view: View { note: Some("Saturday".into()) },
    };
    let text = pack(&request).expect("small");
    let wrapped: String =
        text.chars().flat_map(|c| if c == 'A' { vec!['\r', '\n', ' ', c] } else { vec![c] }).collect();
    for text in [format!("https://example.org/some/club/#{text}"), format!("  {wrapped}\n")] {
        assert_eq!(
            unpack(&text, &Voice::english()).map(|u| u.session),
            Ok(request.session.clone()),
            "{text}"
        );
    }
    for behind in [
        ".",
        ")",
        ").",
        ",",
        "…",
        ">",
        "&utm_source=forum",
        "?x=1",
        "\")",
        "]",
        "» and more words",
        "_",
        "__",
        "_.",
        "-",
        "--",
        "_-_)",
    ] {
        let opened = unpack(&format!("https://example.org/#{text}{behind}"), &Voice::english());
        assert_eq!(opened.map(|u| u.session), Ok(request.session.clone()), "{behind}");
        let cut = format!("https://example.org/#{}{behind}", &text[..text.len() - 3]);
        assert_eq!(unpack(&cut, &Voice::english()), Err(LinkError::Damaged), "{behind}");
    }
    for (text, error) in [
        ("", LinkError::NotALink),
        ("https://example.org/", LinkError::NotALink),
        ("example=fair", LinkError::NotALink),
        ("2.AAAA", LinkError::Later),
        ("1.", LinkError::Damaged),
        ("1.AAAA", LinkError::Damaged),
        ("1.<script>", LinkError::Damaged),
    ] {
        assert_eq!(unpack(text, &Voice::english()), Err(error), "{text}");
    }
    assert_eq!(unpack(&"1".repeat(10_000_000), &Voice::english()), Err(LinkError::TooLong));
}

#[test]
fn a_question_that_does_not_belong_to_the_session_is_refused() {
    let session = crate::support::in_turn("carry", 5, &[250.0, 252.0], 8.0);
    let question = Question { baseline: 7, ..crate::support::asking("carry") };
    let error = pack(&PackRequest { session, question, view: View::default() }).expect_err("no build 7");
    let misfit = Misfit::NoSuchBuild { place: BuildPlace::Baseline, got: 7, builds: 2 };
    assert_eq!(error, PackError::DoesNotFit(misfit));
}

#[test]
fn lengths_keep_their_promise() {
    for (shots, measures, most) in [(60, 6, 2_000), (200, 8, 8_000)] {
        for metric in [false, true] {
            let session = fitting_session(Shape { shots, measures, metric, seed: 1 });
            let request =
                PackRequest { session, question: crate::support::asking("carry"), view: View::default() };
            let text = pack(&request).expect("small");
            assert!(text.len() < most, "{shots} shots on {measures} measures: {} characters", text.len());
            assert_eq!(
                unpack(&text, &Voice::english()).map(|u| u.session),
                Ok(request.session),
                "exact in the unit it was given in"
            );
        }
    }
}

#[test]
fn a_session_at_the_limit_opens_in_time_and_beyond_it_is_refused() {
    let session = fitting_session(Shape { shots: 5_000, measures: 12, metric: true, seed: 1 });
    let mut request =
        PackRequest { session, question: crate::support::asking("carry"), view: View::default() };
    assert_eq!(pack(&request), Err(PackError::TooLarge(TooLarge::Session)));
    request.session.shots.truncate(1_100);
    let text = pack(&request).expect("the longest links");
    let start = Instant::now();
    assert!(unpack(&text, &Voice::english()).is_ok());
    // Twenty times what it takes: a test asserts no time, but this one promises to end.
    assert!(start.elapsed() < Duration::from_secs(1));
}

/// `tests/links` holds one file for each link: the link, and what it must open as, forever.
#[test]
fn links_once_made_open_forever() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/links");
    let mut seen = 0;
    for entry in std::fs::read_dir(folder).expect("tests/links is there") {
        let path = entry.expect("an entry").path();
        if path.extension().is_none_or(|ending| ending != "json") {
            continue;
        }
        let file = std::fs::read_to_string(&path).expect("text");
        let case: serde_json::Value = serde_json::from_str(&file).expect("JSON");
        let opened =
            unpack(case["link"].as_str().expect("a link"), &Voice::english()).expect("it must open forever");
        let opened = serde_json::to_value(opened).expect("plain data");
        for part in ["session", "question", "view"] {
            assert_eq!(opened[part], case["holds"][part], "{part} of {}", path.display());
        }
        seen += 1;
    }
    assert!(seen >= 6, "{seen} links");
}

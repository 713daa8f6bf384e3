//! What is shared speaks of who sent it, and advice on one measure reads the others.

use crate::made::{also, noise};
use crate::support::{answer, asking, in_turn};
use session::Session;
use session::question::{Question, Stopping, View};
use telling::check::{CheckRequest, check};
use telling::share::{ShareRequest, share};
use text::Voice;

fn shared(session: &Session, question: &Question) -> String {
    let request = ShareRequest {
        session: session.clone(),
        question: question.clone(),
        view: View::default(),
        address: "https://example.org/".into(),
    };
    let shared = share(&request, Some("x"), &Voice::english()).expect("shared");
    format!("{}\n{}", shared.words.plain, shared.card.alternative)
}

fn same() -> Session {
    in_turn("carry", 8, &[250.0, 250.5], 3.0)
}

#[test]
fn what_is_shared_speaks_of_the_sender() {
    let open = || Question { stopping: Stopping::default(), ..asking("carry") };
    let sessions =
        [same(), in_turn("carry", 8, &[250.0, 270.0], 3.0), in_turn("carry", 2, &[250.0, 252.0], 9.0)];
    for session in sessions {
        for question in [asking("carry"), open()] {
            let said = shared(&session, &question);
            let theirs = said.to_lowercase();
            assert!(!theirs.contains("your purpose") && !theirs.contains("your swing"), "{said}");
            assert!(!theirs.contains("you didn’t"), "{said}");
        }
    }
    assert!(shared(&same(), &asking("carry")).contains("for the sender’s purpose"));
    assert!(shared(&same(), &open()).contains("The sender didn’t say"));
}

#[test]
fn what_is_shared_says_who_says_that_the_number_was_fixed_and_that_nobody_can_check_it() {
    let said = shared(&same(), &asking("carry"));
    assert!(
        said.contains(
            "The sender says that the number of shots was fixed beforehand; neither that nor typed"
        ),
        "{said}"
    );
    let open = shared(&same(), &Question { stopping: Stopping::default(), ..asking("carry") });
    assert!(!open.contains("The sender says") && open.contains("cannot be checked here"), "{open}");
}

#[test]
fn a_session_that_was_opened_is_told_as_the_senders_and_decided_alike() {
    let request = CheckRequest { session: same(), question: asking("carry") };
    let own = check(&request, &Voice::english()).expect("a report");
    let theirs = check(&request, &Voice::english().of_the_sender()).expect("a report");
    assert!(own.answer.words.headline.contains("your purpose"), "{}", own.answer.words.headline);
    assert!(
        theirs.answer.words.headline.contains("the sender’s purpose"),
        "{}",
        theirs.answer.words.headline
    );
    assert_eq!((own.answer.decision, own.answer.estimate), (theirs.answer.decision, theirs.answer.estimate));
}

#[test]
fn the_same_names_its_clubs_and_its_measure_and_does_not_send_past_another_difference() {
    let mut session = same();
    let plain = answer(session.clone(), asking("carry")).answer.words;
    assert!(plain.headline.starts_with("Carry: Driver B and Own driver are the same"), "{}", plain.headline);
    assert_eq!(plain.next, "Choose by feel, look or price.");
    also(&mut session, "offline", |at, shot| Some(if shot.build == 1 { 19.0 } else { 0.0 } + noise(at)));
    let words = answer(session, asking("carry")).answer.words;
    assert!(!words.next.contains("by feel"), "{}", words.next);
    assert!(words.next.contains("they differ in direction"), "{}", words.next);
}

#[test]
fn who_cannot_tell_may_come_again_another_day() {
    let words = answer(in_turn("carry", 4, &[250.0, 252.0], 6.0), asking("carry")).answer.words;
    assert!(words.next.contains("on two other days"), "{}", words.next);
    let wide = answer(in_turn("carry", 4, &[250.0, 252.0], 20.0), asking("carry")).answer.words;
    assert!(
        wide.next.contains("on other days and put them together") && !wide.next.contains("by feel"),
        "{}",
        wide.next
    );
}

//! The typical shot: decided beside the average, never in its place, with the mishits of both clubs counted.

use crate::made::{close, with_goal, with_margin};
use crate::support::{answer, asking, averages, in_turn, one_after_the_other};
use judging::typical::{Beside, MoreMishits, NoTypical, TypicalFacts};
use judging::verdict::{DecisionKind, Direction};
use session::question::{Goal, Question, View};
use session::{Session, SummaryOf};
use telling::check::CheckRequest;
use telling::share::{ShareRequest, share};
use telling::typical::{Typical, typical};
use text::{Language, Units, Voice};

fn told(session: &Session, question: &Question) -> Typical {
    let request = CheckRequest { session: session.clone(), question: question.clone() };
    typical(&request, &Voice::english()).expect("a usable request")
}

fn facts(session: &Session, question: &Question) -> TypicalFacts {
    told(session, question).facts.expect("something to say")
}

/// Good shots of the second club longer, and every sixth one of them far short.
fn longer_with_bad_ones() -> Session {
    let mut session = in_turn("carry", 6, &[250.0, 262.0], 6.0);
    let candidate = session.shots.iter_mut().filter(|shot| shot.build == 1);
    candidate.step_by(6).for_each(|shot| shot.values[0] = shot.values[0].map(|carry| carry - 55.0));
    session
}

#[test]
fn words_of_every_way_it_stands_to_the_average() {
    let cases = [
        ("good shots longer, more bad ones", longer_with_bad_ones(), asking("carry")),
        ("both differ", in_turn("carry", 6, &[250.0, 270.0], 8.0), asking("carry")),
        ("neither", in_turn("carry", 5, &[250.0, 252.0], 11.0), asking("carry")),
        ("the same", in_turn("carry", 8, &[250.0, 250.4], 3.0), with_margin("carry", 6.0)),
        (
            "one after the other",
            one_after_the_other("carry", &[15, 15], &[250.0, 275.0], 8.0),
            asking("carry"),
        ),
        ("spin", in_turn("spin_rate", 6, &[2900.0, 2300.0], 300.0), asking("spin_rate")),
        ("scatter", longer_with_bad_ones(), with_goal("carry", Goal::Tighter)),
    ];
    let said: Vec<String> = cases
        .iter()
        .map(|(what, session, question)| format!("# {what}\n{:#?}", told(session, question).words))
        .collect();
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn mishits_hide_a_gap_from_the_average_and_not_from_the_typical_shot() {
    let session = longer_with_bad_ones();
    let average = answer(session.clone(), asking("carry")).answer.decision;
    let found = facts(&session, &asking("carry"));
    assert_eq!(average.kind, DecisionKind::CannotTell);
    assert_eq!(found.decision.kind, DecisionKind::Different);
    assert_eq!((found.decision.direction, found.beside), (Some(Direction::Higher), Beside::OnlyTypical));
    let mishits = found.mishits.expect("more carry is wanted");
    assert_eq!((mishits.candidate.found, mishits.baseline.found, mishits.candidate.of), (3, 0, 18));
    assert_eq!((mishits.more, mishits.told_apart), (MoreMishits::Candidate, false));
    assert_eq!(found.longer_with_more_mishits(), Some(MoreMishits::Candidate));
}

#[test]
fn swapping_the_clubs_turns_the_typical_shot_around() {
    let session = longer_with_bad_ones();
    let (there, back) =
        (facts(&session, &asking("carry")), facts(&session, &Question { baseline: 1, ..asking("carry") }));
    close(there.estimate.value, -back.estimate.value, 1e-9);
    close(there.estimate.decided_by.low, -back.estimate.decided_by.high, 1e-9);
    assert_eq!(there.decision.kind, back.decision.kind);
    assert_eq!(back.longer_with_more_mishits(), Some(MoreMishits::Baseline));
}

#[test]
fn the_typical_shot_leaves_room_for_the_order_too() {
    let blocked = one_after_the_other("carry", &[15, 15], &[250.0, 262.0], 8.0);
    let found = facts(&blocked, &asking("carry"));
    assert!(found.estimate.order_allowance > 0.0);
    let interval = found.estimate.decided_by;
    assert!(interval.high - interval.low > 2.0 * found.estimate.order_allowance);
}

#[test]
fn a_mishit_explains_nothing_where_both_say_the_same() {
    let mut session = in_turn("carry", 6, &[250.0, 275.0], 6.0);
    session.shots[4].values[0] = Some(245.0);
    let found = facts(&session, &asking("carry"));
    let mishits = found.mishits.expect("more carry is wanted");
    assert_eq!((found.beside, mishits.more), (Beside::Agree, MoreMishits::Candidate));
    assert_eq!(found.longer_with_more_mishits(), None);
    assert_eq!(told(&session, &asking("carry")).words.beside, "");
}

#[test]
fn mishits_are_counted_only_where_more_is_wanted() {
    let spin = in_turn("spin_rate", 6, &[2900.0, 2300.0], 300.0);
    assert!(facts(&spin, &asking("spin_rate")).mishits.is_none());
    assert!(facts(&longer_with_bad_ones(), &with_goal("carry", Goal::Lower)).mishits.is_none());
}

#[test]
fn where_it_cannot_be_said_the_words_say_why() {
    let mut slip = longer_with_bad_ones();
    slip.shots[4].values[0] = Some(2500.0);
    let mut copied = in_turn("carry", 4, &[250.0, 256.0], 0.0);
    copied.shots[3].values[0] = Some(257.0);
    copied.shots[9].values[0] = Some(251.0);
    let cases = [
        (longer_with_bad_ones(), with_goal("carry", Goal::Tighter), NoTypical::Scatter),
        (averages(SummaryOf::All, Some(12), Some(8.0), [230.0, 238.0]), asking("carry"), NoTypical::Averages),
        (slip, asking("carry"), NoTypical::ValueInDoubt),
        (copied, asking("carry"), NoTypical::CannotBeFitted),
        (in_turn("carry", 3, &[250.0], 8.0), asking("carry"), NoTypical::NothingCompared),
    ];
    for (session, question, why) in cases {
        let typical = told(&session, &question);
        assert_eq!(typical.why, Some(why));
        assert!(typical.words.headline.is_empty() && !typical.words.note.is_empty());
    }
}

#[test]
fn the_file_holds_it_and_the_answer_does_not_read_it() {
    let request = ShareRequest {
        session: longer_with_bad_ones(),
        question: asking("carry"),
        view: View::default(),
        address: String::new(),
    };
    let shared = share(&request, None, &Voice::english()).expect("a usable request");
    assert_eq!(shared.file.typical, told(&request.session, &request.question));
    assert_eq!(shared.file.report, answer(request.session, request.question));
}

#[test]
fn whoever_gets_the_answer_reads_where_the_typical_shot_says_something_else() {
    let pasted = |session: Session| {
        let (question, view) = (asking("carry"), View::default());
        let address = "https://example.org/".to_owned();
        let request = ShareRequest { session, question, view, address };
        let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Yards);
        [Voice::english(), spanish].map(|voice| share(&request, None, &voice).expect("usable").words.plain)
    };
    let [english, spanish] = pasted(longer_with_bad_ones());
    assert!(english.contains("The typical shot: "), "{english}");
    assert!(english.contains("cannot say the same of the average"), "{english}");
    assert!(spanish.contains("El golpe típico: ") && spanish.contains("lo mismo del promedio"), "{spanish}");
    let [english, spanish] = pasted(in_turn("carry", 6, &[250.0, 270.0], 8.0));
    assert!(!english.contains("typical shot") && !spanish.contains("golpe típico"), "{english}\n{spanish}");
}

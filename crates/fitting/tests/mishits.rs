//! A mishit that was noted in the bay goes along in file and link, and changes no number.

mod support;

use judging::plan::{FollowRequest, LoggedShot};
use reading::link::{pack, unpack};
use reading::read::{Hints, read};
use reading::write::write_csv;
use session::Session;
use session::plan::PlanRequest;
use telling::check::{CheckRequest, check};
use telling::plan::{Plan, Progress, follow, plan};
use text::Voice;

/// A note goes wherever the shot goes, and the answer is the one it would be without it.
#[test]
fn a_mishit_noted_reaches_file_and_link_and_changes_no_number() {
    let asked = PlanRequest { rounds: Some(4), ..request(2) };
    let plan = planned(&asked);
    let mut shots = hit(&plan, 24, 6.0);
    let without = where_it_stands(&asked, shots.clone(), Vec::new());
    shots[4].note = Some("mishit".into());
    shots[9].note = Some("=2, wind".into());
    let Progress { session, question, .. } = where_it_stands(&asked, shots, Vec::new());
    let answer = |session: &Session| {
        let request = CheckRequest { session: session.clone(), question: question.clone() };
        serde_json::to_string(&check(&request, &Voice::english()).expect("a report")).expect("JSON")
    };
    assert_eq!(answer(&session), answer(&without.session));
    assert_eq!(read(&write_csv(&session), &Hints::default()).session, session);
    assert!(!write_csv(&without.session).contains("note"), "a file without notes is as it was");
    let link = |session: &Session| {
        let view = View::default();
        pack(&PackRequest { session: session.clone(), question: question.clone(), view }).expect("a link")
    };
    let back = unpack(&link(&session)).expect("a session").session;
    let notes = |session: &Session| session.shots.iter().map(|shot| shot.note.clone()).collect::<Vec<_>>();
    assert_eq!(notes(&back), notes(&session));
    assert!(link(&session).len() > link(&without.session).len());
}


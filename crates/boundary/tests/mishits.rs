//! A mishit that was noted in the bay goes along in file and link, and changes no number.

use judging::plan::{FollowRequest, LoggedShot};
use reading::link::{PackRequest, pack, unpack};
use reading::{Hints, read, write_csv};
use session::Session;
use session::known::Known;
use session::plan::PlanRequest;
use session::question::View;
use telling::check::{CheckRequest, check};
use telling::plan::{Progress, follow, plan};
use text::Voice;

/// A note goes wherever the shot goes, and the answer is the one it would be without it.
#[test]
fn a_mishit_noted_reaches_file_and_link_and_changes_no_number() {
    let voice = Voice::english();
    let clubs = vec!["Club 0".into(), "Club 1".into()];
    let asked = PlanRequest { rounds: Some(4), ..PlanRequest::of(clubs, Known::Carry.into()) };
    let hit_with = |notes: &[(usize, &str)]| {
        let request = FollowRequest {
            plan: asked.clone(),
            shots: hit(&asked, notes),
            ended: Vec::new(),
            looks: Vec::new(),
        };
        follow(&request, &voice).expect("a test under way")
    };
    let without = hit_with(&[]).session;
    let Progress { session, facts, .. } = hit_with(&[(4, "mishit"), (9, "=2, wind")]);
    let answer = |session: &Session| {
        let request = CheckRequest { session: session.clone(), question: facts.question.clone() };
        serde_json::to_string(&check(&request, &voice).expect("a report")).expect("JSON")
    };
    assert_eq!(answer(&session), answer(&without));
    assert_eq!(read(&write_csv(&session), &Hints::default(), &voice).session, session);
    assert!(!write_csv(&without).contains("note"), "a file without notes is as it was");
    let link = |session: &Session| {
        let (question, view) = (facts.question.clone(), View::default());
        pack(&PackRequest { session: session.clone(), question, view }).expect("a link")
    };
    let back = unpack(&link(&session), &voice).expect("a session").session;
    let notes = |session: &Session| session.shots.iter().map(|shot| shot.note.clone()).collect::<Vec<_>>();
    assert_eq!(notes(&back), notes(&session));
    assert!(link(&session).len() > link(&without).len());
}

/// All shots of a plan, the second club six yards longer, with an invented scatter; some of them noted.
fn hit(asked: &PlanRequest, notes: &[(usize, &str)]) -> Vec<LoggedShot> {
    let plan = plan(asked, &Voice::english()).expect("a plan");
    let sets = plan.facts.turns.iter().enumerate();
    sets.flat_map(|(turn, set)| (0..set.shots).map(move |_| (turn, set.build)))
        .enumerate()
        .map(|(i, (turn, build))| {
            let carry = 250.0 + 6.0 * build as f64 + [0.4, -1.1, 0.9, -0.6, 1.3, -0.9, 0.0][i % 7];
            let note = notes.iter().find(|(at, _)| *at == i).map(|(_, note)| (*note).to_owned());
            LoggedShot { turn, values: [(Known::Carry.into(), Some(carry))].into(), note }
        })
        .collect()
}

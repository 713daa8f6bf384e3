//! Plans and tests under way: what a plan holds, what it promises, and what a look costs.

mod support;

use fitting::check::{CheckRequest, check};
use fitting::link::{PackRequest, View, pack, unpack};
use fitting::plan::{
    FollowRequest, LoggedShot, LookAfter, LookTaken, LookWord, MOST_BUILDS, Plan, PlanRequest, Progress,
    SpreadFrom, follow, plan,
};
use fitting::question::{Goal, LookedAfter, Stopping, StoppingWord};
use fitting::read::{Hints, read};
use fitting::session::{Order, Session};
use fitting::verdict::DecisionKind;
use fitting::write::write_csv;
use proptest::prelude::*;

fn request(builds: usize) -> PlanRequest {
    PlanRequest::of((0..builds).map(|b| format!("Club {b}")).collect(), "carry".into())
}

fn planned(request: &PlanRequest) -> Plan {
    plan(request).expect("a plan")
}

/// The first shots of a plan, each build a yard apart from the last, with an invented scatter.
fn hit(plan: &Plan, shots: usize, gap: f64) -> Vec<LoggedShot> {
    let sets = plan.turns.iter().enumerate();
    let all = sets.flat_map(|(turn, set)| (0..set.shots).map(move |_| (turn, set.build)));
    all.take(shots)
        .enumerate()
        .map(|(i, (turn, build))| {
            let carry = 250.0 + gap * build as f64 + [0.4, -1.1, 0.9, -0.6, 1.3, -0.9, 0.0][i % 7];
            LoggedShot { turn, values: [("carry".into(), Some(carry))].into(), note: None }
        })
        .collect()
}

fn where_it_stands(request: &PlanRequest, shots: Vec<LoggedShot>, looks: Vec<LookTaken>) -> Progress {
    follow(&FollowRequest { plan: request.clone(), shots, ended: Vec::new(), looks })
        .expect("a test under way")
}

#[test]
fn two_clubs_and_nothing_else_make_a_plan_of_about_an_hour() {
    let plan = planned(&request(2));
    assert_eq!((plan.set, plan.rounds, plan.warm_up, plan.balls, plan.minutes), (3, 10, 10, 70, 60));
    assert_eq!(plan.looks.iter().map(|look| look.after_round).collect::<Vec<_>>(), [5, 10]);
    let order: Vec<usize> = plan.turns.iter().map(|turn| turn.build).take(8).collect();
    assert_eq!(order, [0, 1, 1, 0, 0, 1, 1, 0]);
    assert_eq!(plan.spread.map(|s| s.from), Some(SpreadFrom::Usual));
    assert!(plan.record[0].needed && plan.record.iter().any(|r| r.measure == "club_speed".into()));
}

#[test]
fn the_words_of_a_plan() {
    let asked = PlanRequest { rounds: Some(6), margin: Some(5.0), spread: Some(11.5), ..request(2) };
    let with_three =
        PlanRequest { seed: Some(7), looks: Some(LookAfter::Word(LookWord::AtEnd)), ..request(3) };
    let same = PlanRequest { same_club: true, ..request(1) };
    let tighter = PlanRequest { measure: "offline".into(), goal: Some(Goal::Tighter), ..request(2) };
    let unknown = PlanRequest { measure: "hang_time".into(), ..request(2) };
    let requests =
        [("six rounds", asked), ("three drawn", with_three), ("same club", same), ("tighter", tighter)];
    let mut text = String::new();
    for (name, request) in requests.into_iter().chain([("no usual spread", unknown)]) {
        let plan = planned(&request);
        let words = plan.words;
        text += &format!("# {name}\n");
        for line in
            [words.headline, words.power, words.same, words.spread, words.order, words.looks, words.same_club]
        {
            text += &format!("{line}\n");
        }
        for seen in plan.power.iter().flat_map(|power| &power.seen) {
            text += &format!("  {}\n", seen.words);
        }
    }
    insta::assert_snapshot!("plans", text);
}

#[test]
fn what_is_no_plan_is_refused_with_its_place() {
    let good = request(2);
    let bad = [
        ("builds", request(1)),
        ("builds", request(MOST_BUILDS + 1)),
        ("builds.1", PlanRequest { builds: vec!["A".into(), " ".into()], ..request(2) }),
        ("builds", PlanRequest { builds: vec!["A".into(), "A ".into()], ..request(2) }),
        ("measure", PlanRequest { measure: "luck".into(), ..request(2) }),
        ("set", PlanRequest { set: Some(6), ..request(2) }),
        ("rounds", PlanRequest { rounds: Some(1), ..request(2) }),
        ("rounds", PlanRequest { rounds: Some(u32::MAX), ..request(2) }),
        ("warm_up", PlanRequest { warm_up: Some(1000), ..request(2) }),
        ("margin", PlanRequest { margin: Some(0.0), ..request(2) }),
        ("margin", PlanRequest { margin: Some(1.0), goal: Some(Goal::Tighter), ..request(2) }),
        ("spread", PlanRequest { spread: Some(f64::NAN), ..request(2) }),
        ("looks", PlanRequest { looks: Some(LookAfter::Rounds(vec![1])), ..request(2) }),
    ];
    assert!(plan(&good).is_ok());
    for (place, request) in bad {
        let refusal = plan(&request).expect_err(place);
        assert_eq!(refusal.place, place, "{refusal:?}");
        assert!(!refusal.message.is_empty() && !refusal.remedy.is_empty());
    }
}

#[test]
fn an_earlier_session_says_how_far_shots_scatter() {
    let earlier = support::in_turn("carry", 5, &[250.0, 255.0], 8.0);
    let plan = planned(&PlanRequest { earlier: Some(earlier), ..request(2) });
    let spread = plan.spread.expect("a spread");
    assert_eq!(spread.from, SpreadFrom::Earlier);
    assert!((4.0..12.0).contains(&spread.value), "{}", spread.value);
    let short = support::in_turn("carry", 2, &[250.0, 255.0], 8.0);
    let few = fitting::session::Session { shots: short.shots[..6].to_vec(), ..short };
    let usual = planned(&PlanRequest { earlier: Some(few), ..request(2) });
    assert_eq!(usual.spread.map(|s| s.from), Some(SpreadFrom::Usual), "six shots say too little");
}

#[test]
fn tests_of_scatter_promise_what_was_measured() {
    // Shares of sessions in which Bonett's interval calls a ratio of 1.5 or 2, offline, measured by simulation when
    // the method was chosen; the formula behind a plan is only asymptotic.
    for (each, one_and_a_half, two) in [(15, 0.22, 0.52), (20, 0.29, 0.67), (30, 0.43, 0.83)] {
        let chance = |margin| {
            let request = PlanRequest {
                measure: "offline".into(),
                goal: Some(Goal::Tighter),
                margin: Some(margin),
                rounds: Some(each / 5),
                set: Some(5),
                looks: Some(LookAfter::Word(LookWord::AtEnd)),
                ..request(2)
            };
            planned(&request).power.expect("known").seen[0].chance
        };
        let (got, also) = (chance(1.5), chance(2.0));
        assert!((got - one_and_a_half).abs() < 0.12 && (also - two).abs() < 0.2, "{each}: {got} {also}");
    }
}

#[test]
fn shots_are_followed_to_the_end_and_become_a_session_that_answers() {
    let asked = PlanRequest { rounds: Some(4), ..request(2) };
    let plan = planned(&asked);
    let start = where_it_stands(&asked, Vec::new(), Vec::new());
    assert_eq!((start.hit, start.of), (0, 24));
    assert_eq!(start.words.place, "Round 1 of 4, shot 1 of 3");
    assert!(start.turn.is_some_and(|turn| turn.change && !turn.rest));
    let under_way = where_it_stands(&asked, hit(&plan, 7, 6.0), Vec::new());
    let turn = under_way.turn.clone().expect("not over");
    assert_eq!((turn.build, turn.round, turn.shot), (1, 2, 2));
    assert_eq!(under_way.session.order, Order::Interleaved);
    let end = where_it_stands(&asked, hit(&plan, 24, 6.0), Vec::new());
    assert!(end.turn.is_none() && end.look_due);
    assert_eq!((end.by_build.clone(), end.rounds_complete), (vec![12, 12], 4));
    let report = check(&CheckRequest { session: end.session, question: end.question }).expect("a report");
    assert_eq!(report.answer.decision.kind, DecisionKind::Different);
    let estimate = report.answer.estimate.expect("an estimate");
    assert!((estimate.level - 0.95).abs() < 1e-9, "a plan that was kept costs nothing: {}", estimate.level);
}

#[test]
fn a_look_is_due_once_and_an_early_one_makes_the_answer_stricter() {
    let asked = PlanRequest { rounds: Some(6), ..request(2) };
    let plan = planned(&asked);
    let look = |after_round, within_a_round| LookTaken { after_round, within_a_round };
    let halfway = where_it_stands(&asked, hit(&plan, 18, 6.0), Vec::new());
    assert!(halfway.look_due && halfway.next_look == Some(3) && !halfway.looked_early);
    assert_eq!(halfway.look_now, look(3, false));
    let taken = where_it_stands(&asked, hit(&plan, 18, 6.0), vec![look(3, false)]);
    assert!(!taken.look_due && taken.next_look == Some(6) && taken.words.stricter.is_empty());
    let level = |looks: &[LookTaken]| {
        let progress = where_it_stands(&asked, hit(&plan, 36, 6.0), looks.to_vec());
        let report =
            check(&CheckRequest { session: progress.session, question: progress.question }).expect("report");
        (report.answer.estimate.expect("estimate").level, progress.looked_early)
    };
    let (kept, early) = (level(&[look(3, false)]), level(&[look(2, false), look(3, false), look(5, false)]));
    assert!(!kept.1 && early.1 && early.0 > kept.0 && kept.0 > 0.95, "{kept:?} {early:?}");
    let uncovered = level(&[look(3, true)]);
    assert!((uncovered.0 - 0.99).abs() < 1e-12);
    let question = where_it_stands(&asked, hit(&plan, 20, 6.0), vec![look(3, true)]).question;
    assert_eq!(question.stopping, Stopping::Word(StoppingWord::Unknown));
    let planned_rounds = Stopping::Planned { planned_rounds: 6, looked_after: LookedAfter::Rounds(vec![3]) };
    assert_eq!(taken.question.stopping, planned_rounds);
}

#[test]
fn a_set_can_end_early_and_a_mishit_still_counts() {
    let asked = PlanRequest { rounds: Some(2), ..request(2) };
    let plan = planned(&asked);
    let mut shots = hit(&plan, 2, 0.0);
    shots[1].note = Some("mishit".into());
    let request = FollowRequest { plan: asked.clone(), shots, ended: vec![0], looks: Vec::new() };
    let progress = follow(&request).expect("under way");
    assert_eq!(progress.turn.map(|turn| (turn.index, turn.build, turn.shot)), Some((1, 1, 1)));
    assert_eq!(progress.session.shots.len(), 2);
    assert!(progress.session.shots.iter().all(|shot| shot.left_out.is_none()));
    let noted: Vec<_> = progress.session.shots.iter().map(|shot| shot.note.as_deref()).collect();
    assert_eq!(noted, [None, Some("mishit")]);
    assert!(progress.words.notes.contains("1 with Club 0, 0 with Club 1"), "{}", progress.words.notes);
    let stray = FollowRequest { ended: vec![99], ..request };
    assert_eq!(follow(&stray).expect_err("no such set").place, "ended.0");
}

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
        serde_json::to_string(&check(&request).expect("a report")).expect("JSON")
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

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn any_plan_adds_up(builds in 2_usize..=8, set in 1_u32..=5, rounds in 2_u32..=12, seed in proptest::option::of(0_u32..9)) {
        let asked = PlanRequest { set: Some(set), rounds: Some(rounds), seed, ..request(builds) };
        let plan = planned(&asked);
        prop_assert_eq!(plan.turns.len(), builds * rounds as usize);
        for build in 0..builds {
            let own: u32 = plan.turns.iter().filter(|turn| turn.build == build).map(|turn| turn.shots).sum();
            prop_assert_eq!(own, set * rounds);
        }
        let power = plan.power.clone().expect("carry has a usual spread");
        let chances: Vec<f64> = power.seen.iter().map(|seen| seen.chance).collect();
        prop_assert!(chances.windows(2).all(|pair| pair[0] <= pair[1] + 1e-9), "{chances:?}");
        prop_assert!(chances.iter().all(|chance| (0.0..=1.0).contains(chance)));
        prop_assert!(power.average_rounds <= f64::from(rounds) + 1e-9);
        let longer: Vec<f64> = plan.lengths.iter().filter_map(|length| length.margin_found).collect();
        prop_assert!(longer.windows(2).all(|pair| pair[0] <= pair[1] + 0.01), "{longer:?}");
        for shots in [0, 1, builds * set as usize, plan.turns.len()] {
            let progress = where_it_stands(&asked, hit(&plan, shots, 1.0), Vec::new());
            prop_assert_eq!(progress.session.shots.len(), progress.hit);
            prop_assert_eq!(progress.by_build.iter().sum::<usize>(), progress.hit);
        }
    }
}

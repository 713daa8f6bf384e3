//! Plans and tests under way: what a plan holds, what it promises, and what a look costs.

use judging::plan::{FollowRequest, LeastAndMost, LoggedShot, LookTaken, SpreadFrom};
use judging::verdict::DecisionKind;
use proptest::prelude::*;
use session::Order;
use session::known::Known;
use session::plan::{LookAfter, LookWord, MOST_PLANNED_BUILDS, PlanRequest};
use session::question::{Goal, LookedAfter, Stopping, StoppingWord};
use session::refusal::Refusal;
use telling::plan::{Plan, Progress};
use text::{Language, Units, Voice};

fn request(builds: usize) -> PlanRequest {
    PlanRequest::of((0..builds).map(|b| format!("Club {b}")).collect(), "carry".into())
}

fn plan(request: &PlanRequest) -> Result<Plan, Refusal> {
    telling::plan::plan(request, &Voice::english())
}

fn follow(request: &FollowRequest) -> Result<Progress, Refusal> {
    telling::plan::follow(request, &Voice::english())
}

fn planned(request: &PlanRequest) -> Plan {
    plan(request).expect("a plan")
}

/// The first shots of a plan, each build a yard apart from the last, with an invented scatter.
fn hit(plan: &Plan, shots: usize, gap: f64) -> Vec<LoggedShot> {
    let sets = plan.facts.turns.iter().enumerate();
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
    assert_eq!(
        (plan.facts.set, plan.facts.rounds, plan.facts.warm_up, plan.facts.balls, plan.facts.minutes),
        (3, 10, 10, 70, 60)
    );
    assert_eq!(plan.facts.looks.iter().map(|look| look.after_round).collect::<Vec<_>>(), [5, 10]);
    let order: Vec<usize> = plan.facts.turns.iter().map(|turn| turn.build).take(8).collect();
    assert_eq!(order, [0, 1, 1, 0, 0, 1, 1, 0]);
    assert_eq!(plan.facts.spread.map(|s| s.from), Some(SpreadFrom::Usual));
    assert!(plan.record[0].needed && plan.record.iter().any(|r| r.measure == Known::ClubSpeed));
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
fn beside_the_average_a_plan_speaks_of_the_typical_shot_and_of_two_visits() {
    let said = planned(&request(2)).words.beside.replace('\u{a0}', " ");
    assert!(said.starts_with("Typical shot: 5 yd "), "{said}");
    assert!(said.contains("Two such visits put together: 5 yd "), "{said}");
    let three = planned(&request(3)).words.beside;
    assert!(three.starts_with("Two such visits"), "the page tells the typical shot of one pair: {three}");
    let scatter = planned(&PlanRequest { goal: Some(Goal::Tighter), ..request(2) }).words.beside;
    assert_eq!(scatter, "");
}

#[test]
fn a_plan_says_what_to_keep_alike_what_to_mind_and_when_it_is_too_much_for_a_day() {
    let usual = planned(&request(2));
    let said = usual.cautions.join(" ");
    for asked in ["same ball", "tee height", "mat or grass", "aim", "loft, length, lie and grip"] {
        assert!(said.contains(asked), "{asked}: {said}");
    }
    for minded in ["Warm up", "hurts", "down the range", "thunder", "heat"] {
        assert!(said.contains(minded), "{minded}: {said}");
    }
    assert!(usual.facts.balls <= 100 && usual.facts.minutes <= 90);
    assert!(!said.contains("days"), "{said}");
    let long = planned(&PlanRequest { rounds: Some(60), set: Some(5), ..request(2) });
    assert_eq!((long.facts.balls, long.cautions.len()), (610, usual.cautions.len() + 1));
    assert!(long.cautions[0].starts_with("610 balls in about 525 minutes"), "{}", long.cautions[0]);
    assert!(long.cautions[0].contains("over 7 days"), "{}", long.cautions[0]);
}

#[test]
fn what_is_no_plan_is_refused_with_its_place() {
    let good = request(2);
    let bad = [
        ("builds", request(1)),
        ("builds", request(MOST_PLANNED_BUILDS + 1)),
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
    let earlier = crate::support::in_turn("carry", 5, &[250.0, 255.0], 8.0);
    let plan = planned(&PlanRequest { earlier: Some(earlier), ..request(2) });
    let spread = plan.facts.spread.expect("a spread");
    assert_eq!(spread.from, SpreadFrom::Earlier);
    assert!((4.0..12.0).contains(&spread.value), "{}", spread.value);
    let short = crate::support::in_turn("carry", 2, &[250.0, 255.0], 8.0);
    let few = session::Session { shots: short.shots[..6].to_vec(), ..short };
    let usual = planned(&PlanRequest { earlier: Some(few), ..request(2) });
    assert_eq!(usual.facts.spread.map(|s| s.from), Some(SpreadFrom::Usual), "six shots say too little");
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
            planned(&request).power.expect("known").seen[0].facts.chance
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
    assert_eq!((start.facts.hit, start.facts.of), (0, 24));
    assert_eq!(start.words.place, "Set 1 of 8, Club 0, shot 1 of 3");
    assert!(start.facts.turn.is_some_and(|turn| turn.change && !turn.rest));
    let under_way = where_it_stands(&asked, hit(&plan, 7, 6.0), Vec::new());
    let turn = under_way.facts.turn.clone().expect("not over");
    assert_eq!((turn.build, turn.round, turn.shot), (1, 2, 2));
    assert_eq!(under_way.session.order, Order::Interleaved);
    let end = where_it_stands(&asked, hit(&plan, 24, 6.0), Vec::new());
    assert!(end.facts.turn.is_none() && end.facts.look_due);
    assert_eq!((end.facts.by_build.clone(), end.facts.rounds_complete), (vec![12, 12], 4));
    let report = crate::support::answer(end.session, end.facts.question);
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
    assert!(halfway.facts.look_due && halfway.facts.next_look == Some(3) && !halfway.facts.looked_early);
    assert_eq!(halfway.facts.look_now, look(3, false));
    let taken = where_it_stands(&asked, hit(&plan, 18, 6.0), vec![look(3, false)]);
    assert!(!taken.facts.look_due && taken.facts.next_look == Some(6) && taken.words.stricter.is_empty());
    let level = |looks: &[LookTaken]| {
        let progress = where_it_stands(&asked, hit(&plan, 36, 6.0), looks.to_vec());
        let report = crate::support::answer(progress.session, progress.facts.question);
        (report.answer.estimate.expect("estimate").level, progress.facts.looked_early)
    };
    let (kept, early) = (level(&[look(3, false)]), level(&[look(2, false), look(3, false), look(5, false)]));
    assert!(!kept.1 && early.1 && early.0 > kept.0 && kept.0 > 0.95, "{kept:?} {early:?}");
    let uncovered = level(&[look(3, true)]);
    assert!((uncovered.0 - 0.99).abs() < 1e-12);
    let question = where_it_stands(&asked, hit(&plan, 20, 6.0), vec![look(3, true)]).facts.question;
    assert_eq!(question.stopping, Stopping::Word(StoppingWord::NotFixed));
    let planned_rounds = Stopping::Planned { planned_rounds: 6, looked_after: LookedAfter::Rounds(vec![3]) };
    assert_eq!(taken.facts.question.stopping, planned_rounds);
}

#[test]
fn a_set_can_end_early_and_a_mishit_still_counts() {
    let asked = PlanRequest { rounds: Some(2), ..request(2) };
    let plan = planned(&asked);
    let mut shots = hit(&plan, 2, 0.0);
    shots[1].note = Some("mishit".into());
    let request = FollowRequest { plan: asked.clone(), shots, ended: vec![0], looks: Vec::new() };
    let progress = follow(&request).expect("under way");
    assert_eq!(progress.facts.turn.map(|turn| (turn.index, turn.build, turn.shot)), Some((1, 1, 1)));
    assert_eq!(progress.session.shots.len(), 2);
    assert!(progress.session.shots.iter().all(|shot| shot.left_out.is_none()));
    let noted: Vec<_> = progress.session.shots.iter().map(|shot| shot.note.as_deref()).collect();
    assert_eq!(noted, [None, Some("mishit")]);
    assert!(progress.words.notes.contains("1 with Club 0, 0 with Club 1"), "{}", progress.words.notes);
    let stray = FollowRequest { ended: vec![99], ..request };
    assert_eq!(follow(&stray).expect_err("no such set").place, "ended.0");
}

/// What matters is settled in canonical units: for a reader in yards and one in meters it is one plan.
#[test]
fn a_plan_is_the_same_in_every_unit() {
    let meters = Voice::new(Language::english(), Units::Meters);
    for known in Known::ALL {
        let request = PlanRequest { rounds: Some(4), measure: known.into(), ..request(2) };
        let (here, there) = (planned(&request), telling::plan::plan(&request, &meters).expect("a plan"));
        assert_eq!(here.facts, there.facts, "{known:?}");
        assert_eq!(here.facts.margin.to_bits(), known.facts().margin.to_bits());
        assert_eq!(here.power.map(|power| power.facts), there.power.map(|power| power.facts));
    }
}

#[test]
fn the_limits_are_those_that_refuse() {
    let limits = telling::plan::plan_limits();
    let with = |part: &str, n: u32| match part {
        "builds" => request(n as usize),
        "rounds" => PlanRequest { rounds: Some(n), ..request(2) },
        "set" => PlanRequest { set: Some(n), ..request(2) },
        _ => PlanRequest { warm_up: Some(n), ..request(2) },
    };
    let all = [
        ("builds", limits.builds),
        ("rounds", limits.rounds),
        ("set", limits.set),
        ("warm_up", limits.warm_up),
    ];
    for (part, LeastAndMost { least, most }) in all {
        for inside in [least, most] {
            assert!(judging::plan::settle_plan(&with(part, inside)).is_ok(), "{inside} {part}");
        }
        for outside in least.checked_sub(1).into_iter().chain([most + 1]) {
            let refusal = plan(&with(part, outside)).expect_err(part);
            assert_eq!(refusal.place, part, "{outside}");
        }
    }
    let usual = planned(&request(2)).facts;
    assert_eq!((usual.set, usual.warm_up), (limits.usual_set, limits.usual_warm_up));
}

#[test]
fn a_plan_written_out_is_the_same_plan() {
    let earlier = crate::support::in_turn("carry", 5, &[250.0, 255.0], 8.0);
    let requests = [
        request(3),
        PlanRequest { earlier: Some(earlier), ..request(2) },
        PlanRequest { measure: Known::Offline.into(), goal: Some(Goal::Tighter), ..request(2) },
        PlanRequest { same_club: true, ..request(1) },
    ];
    for request in requests {
        let written = judging::plan::written_out(&request).expect("a plan");
        let (asked, again) = (planned(&request), planned(&written));
        assert!(written.margin.is_some() && written.rounds.is_some() && written.earlier.is_none());
        assert_eq!((asked.builds, asked.facts.turns), (again.builds, again.facts.turns));
        assert_eq!(asked.facts.lengths, again.facts.lengths);
        let without = judging::plan::without_session(&request);
        assert_eq!(without.earlier, None);
        assert_eq!(judging::plan::written_out(&without), Ok(written));
    }
}

#[test]
fn a_field_that_a_log_does_not_have_is_refused() {
    let plan = r#""plan":{"builds":["A","B"],"measure":"carry"}"#;
    for (fields, is_a_log) in [
        (r#""shots":[{"turn":0,"values":{"carry":250}}],"looks":[{"after_round":2}]"#, true),
        (r#""shot":[]"#, false),
        (r#""shots":[{"turn":0,"values":{},"note":"mishit","club":1}]"#, false),
        (r#""looks":[{"after_round":2,"within_round":true}]"#, false),
    ] {
        let request = serde_json::from_str::<FollowRequest>(&format!("{{{plan},{fields}}}"));
        assert_eq!(request.is_ok(), is_a_log, "{fields}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    #[test]
    fn any_plan_adds_up(builds in 2_usize..=8, set in 1_u32..=5, rounds in 2_u32..=12, seed in proptest::option::of(0_u32..9)) {
        let asked = PlanRequest { set: Some(set), rounds: Some(rounds), seed, ..request(builds) };
        let plan = planned(&asked);
        prop_assert_eq!(plan.facts.turns.len(), builds * rounds as usize);
        for build in 0..builds {
            let own: u32 = plan.facts.turns.iter().filter(|turn| turn.build == build).map(|turn| turn.shots).sum();
            prop_assert_eq!(own, set * rounds);
        }
        let power = plan.power.clone().expect("carry has a usual spread");
        let chances: Vec<f64> = power.seen.iter().map(|seen| seen.facts.chance).collect();
        prop_assert!(chances.windows(2).all(|pair| pair[0] <= pair[1] + 1e-9), "{chances:?}");
        prop_assert!(chances.iter().all(|chance| (0.0..=1.0).contains(chance)));
        prop_assert!(power.facts.average_rounds <= f64::from(rounds) + 1e-9);
        let longer: Vec<f64> = plan.facts.lengths.iter().filter_map(|length| length.margin_found).collect();
        prop_assert!(longer.windows(2).all(|pair| pair[0] <= pair[1] + 0.01), "{longer:?}");
        for shots in [0, 1, builds * set as usize, plan.facts.turns.len()] {
            let progress = where_it_stands(&asked, hit(&plan, shots, 1.0), Vec::new());
            prop_assert_eq!(progress.session.shots.len(), progress.facts.hit);
            prop_assert_eq!(progress.facts.by_build.iter().sum::<usize>(), progress.facts.hit);
        }
    }
}

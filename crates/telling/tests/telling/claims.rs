//! Claims against retests, days together, and what was felt beside what was shown.

use crate::support::{empty, in_turn};
use judging::claim::{ClaimKind, Claimed};
use judging::feel::{Agreement, OwnSay};
use judging::verdict::DecisionKind;
use serde::{Serialize, de::DeserializeOwned};
use serde_json::Value;
use session::known::Known;
use session::question::{Goal, Question, Stopping, StoppingWord};
use session::refusal::Refusal;
use session::{Order, Session};
use telling::claim::{ClaimReport, ClaimRequest};
use telling::feel::{Feel, FeelRequest};
use telling::together::{TogetherPair, TogetherRequest};
use text::{Language, Units, Voice};

fn claim(request: &ClaimRequest) -> Result<ClaimReport, Refusal> {
    telling::claim::claim(request, &Voice::english())
}

fn together(request: &TogetherRequest) -> Result<Vec<TogetherPair>, Refusal> {
    telling::together::together(request, &Voice::english())
}

fn feel(request: &FeelRequest) -> Result<Feel, Refusal> {
    telling::feel::feel(request, &Voice::english())
}

fn question(measure: &str) -> Question {
    Question {
        baseline: 0,
        candidate: None,
        measure: measure.into(),
        goal: None,
        margin: None,
        first_margin: None,
        stopping: Stopping::Word(StoppingWord::Fixed),
        differs: None,
    }
}

pub(crate) fn claimed(gain: f64) -> Claimed {
    Claimed { gain: Some(gain), shots_before: Some(5), shots_after: Some(5), ..Claimed::default() }
}

pub(crate) fn held(claimed: Claimed, session: Session) -> ClaimReport {
    claim(&ClaimRequest { claimed, session, question: question("carry") }).expect("a claim")
}

/// A retest with this true gap and this scatter.
pub(crate) fn retest(gap: f64, scatter: f64) -> Session {
    in_turn("carry", 6, &[240.0, 240.0 + gap], scatter)
}

#[test]
fn a_claim_is_supported_contradicted_or_not_settled_by_its_distance_to_the_retest() {
    let rows = [
        (12.0, 12.0, 3.0, ClaimKind::Supported),
        (12.0, 1.0, 3.0, ClaimKind::Contradicted),
        (12.0, -8.0, 3.0, ClaimKind::Contradicted),
        (12.0, 6.0, 12.0, ClaimKind::NotSettled),
        // More than was promised is no contradiction.
        (12.0, 30.0, 3.0, ClaimKind::Supported),
    ];
    for (said, gap, scatter, kind) in rows {
        let report = held(claimed(said), retest(gap, scatter));
        assert_eq!(report.facts.kind, kind, "{said} claimed, {gap} true: {}", report.words.headline);
        let (retest, difference) =
            (report.facts.retest.expect("a retest"), report.facts.difference.expect("a difference"));
        assert!((difference.low - (said - retest.high)).abs() < 1e-9);
        assert!((difference.high - (said - retest.low)).abs() < 1e-9);
    }
}

#[test]
fn swapping_every_sign_changes_no_outcome() {
    for (said, gap) in [(300.0, 20.0), (300.0, 290.0)] {
        let report = |goal, sign: f64| {
            let session = in_turn("spin_rate", 6, &[2600.0, 2600.0 + sign * gap], 60.0);
            let question = Question { goal: Some(goal), ..question("spin_rate") };
            claim(&ClaimRequest { claimed: claimed(said), session, question }).expect("a claim")
        };
        let (up, down) = (report(Goal::Higher, 1.0), report(Goal::Lower, -1.0));
        assert_eq!(up.facts.kind, down.facts.kind);
        assert!(down.facts.claimed < 0.0 && up.facts.claimed > 0.0);
    }
}

#[test]
fn averages_and_a_gain_make_the_same_claim() {
    let by_averages = Claimed { before: Some(231.0), after: Some(243.0), gain: None, ..claimed(0.0) };
    let (one, other) = (held(by_averages, retest(1.0, 3.0)), held(claimed(12.0), retest(1.0, 3.0)));
    assert_eq!((one.facts.kind, one.facts.claimed), (other.facts.kind, other.facts.claimed));
}

#[test]
fn luck_and_picking_grow_with_fewer_shots_and_more_clubs() {
    let luck = |shots, tried| {
        let said = Claimed {
            shots_before: Some(shots),
            shots_after: Some(shots),
            tried: Some(tried),
            ..claimed(10.0)
        };
        held(said, retest(0.0, 9.0)).facts.luck.expect("luck")
    };
    assert!(luck(5, 1).usual_gap > luck(20, 1).usual_gap);
    assert!(luck(5, 4).best_of > luck(5, 2).best_of && luck(5, 1).best_of == 0.0);
    assert!(luck(5, 4).chance > luck(5, 1).chance);
    let expected = |shots| luck(shots, 1).bet.expect("a bet").gap.value;
    assert!(expected(5) < expected(20) && expected(20) < 10.0);
    let unknown = Claimed { gain: Some(10.0), ..Claimed::default() };
    assert!(held(unknown, retest(0.0, 9.0)).facts.luck.is_none(), "how many shots was not said");
}

#[test]
fn without_a_retest_there_is_luck_but_no_outcome() {
    let report = held(claimed(12.0), Session::default());
    assert_eq!(report.facts.kind, ClaimKind::NoRetest);
    assert!(report.facts.retest.is_none() && report.facts.luck.is_some_and(|luck| !luck.from_retest));
}

#[test]
fn a_yard_has_a_price_only_where_there_is_a_gain() {
    let priced = |gap, scatter| {
        let said = Claimed { price: Some(480.0), currency: Some("€".into()), ..claimed(12.0) };
        held(said, retest(gap, scatter))
    };
    let sure = priced(12.0, 3.0).facts.price.expect("a price");
    let (least, most) = (sure.least.expect("a gain"), sure.most.expect("a sure gain"));
    assert!(least < 40.0 && 40.0 < most);
    let perhaps = priced(2.0, 12.0).facts.price.expect("a price");
    assert!(perhaps.least.is_some() && perhaps.most.is_none());
    assert!(priced(-12.0, 3.0).facts.price.expect("a price").least.is_none());
}

/// A meter is more than a yard, and costs more.
#[test]
fn what_a_yard_costs_is_said_for_a_meter_where_meters_are_shown() {
    let said = Claimed { price: Some(480_000.0), ..claimed(12.0) };
    let request = ClaimRequest { claimed: said, session: retest(12.0, 3.0), question: question("carry") };
    let costs = |units| {
        let report =
            telling::claim::claim(&request, &Voice::new(Language::english(), units)).expect("a claim");
        let words: String = report.words.price.chars().filter(|c| *c != ',').collect();
        let digits = |word: &str| word.trim_matches(|c: char| !c.is_ascii_digit()).parse::<f64>().ok();
        let said: Vec<f64> = words.split([' ', '\u{a0}', '\u{202f}']).filter_map(digits).collect();
        (said, report.facts.price.and_then(|price| price.least).expect("a gain"))
    };
    let ((yards, least), (meters, same)) = (costs(Units::Yards), costs(Units::Meters));
    assert!((least - same).abs() < 1e-9 && yards.len() == 2 && meters.len() == 2, "{yards:?} {meters:?}");
    for (yard, meter) in yards.iter().zip(&meters) {
        assert!((yard / 0.9144 - meter).abs() <= 1.0, "{yard} a yard, {meter} a meter");
    }
    assert!((yards[0] - least).abs() <= 0.5);
}

#[test]
fn what_is_no_claim_is_refused() {
    let refused = |claimed, question| {
        let request = ClaimRequest { claimed, session: retest(1.0, 3.0), question };
        claim(&request).expect_err("no claim").place
    };
    assert_eq!(refused(Claimed::default(), question("carry")), "claimed");
    assert_eq!(refused(claimed(0.0), question("carry")), "claimed");
    assert_eq!(refused(claimed(f64::NAN), question("carry")), "claimed");
    let straighter = Question { goal: Some(Goal::NearerZero), ..question("carry") };
    assert_eq!(refused(claimed(3.0), straighter), "claimed.gain");
    let tighter = Question { goal: Some(Goal::Tighter), ..question("carry") };
    assert_eq!(refused(claimed(3.0), tighter), "question.goal");
}

#[test]
fn the_words_of_claims() {
    let said =
        |gain| Claimed { tried: Some(3), price: Some(480.0), currency: Some("€".into()), ..claimed(gain) };
    let sessions =
        [retest(12.0, 3.0), retest(1.0, 3.0), retest(-8.0, 3.0), retest(6.0, 12.0), Session::default()];
    let mut text = String::new();
    for session in sessions {
        let words = held(said(12.0), session).words;
        text += &format!("# {}\n", words.headline);
        for line in [words.detail, words.luck, words.price, words.next] {
            text += &format!("{line}\n");
        }
    }
    insta::assert_snapshot!("claims", text);
}

fn days(sessions: Vec<Session>, question: Question) -> TogetherPair {
    together(&TogetherRequest { sessions, question }).expect("days").remove(0)
}

#[test]
fn each_day_keeps_its_own_answer_and_names_find_each_other() {
    let mut other = in_turn("carry", 6, &[241.0, 252.0], 4.0);
    other.builds.swap(0, 1);
    other.builds[0].name = "driver  b".into();
    for shot in &mut other.shots {
        shot.build = 1 - shot.build;
    }
    let sessions = vec![retest(12.0, 4.0), other.clone(), in_turn("carry", 6, &[239.0, 250.0], 4.0)];
    let pair = days(sessions.clone(), question("carry"));
    let own = crate::support::answer(sessions[0].clone(), question("carry"));
    assert_eq!(pair.days[0].answer, Some(own.answer));
    let second = pair.days[1].answer.as_ref().and_then(|a| a.estimate.clone()).expect("the second day");
    assert!(second.value > 0.0, "the club is found by its name: {}", second.value);
    assert_eq!(pair.decision.map(|d| d.kind), Some(DecisionKind::Different));
    let stranger = empty("carry", 1);
    let alone = days(vec![retest(12.0, 4.0), stranger], question("carry"));
    assert!(alone.combined.is_none() && alone.headline.starts_with("Only 1"));
}

#[test]
fn days_say_what_is_assumed_how_far_apart_they_lie_and_what_one_more_would_add() {
    let two = days(vec![retest(8.0, 6.0), retest(8.5, 6.0)], question("carry"));
    let five = days((0..5).map(|d| retest(8.0 + 0.2 * f64::from(d), 6.0)).collect(), question("carry"));
    let width = |pair: &TogetherPair| pair.combined.as_ref().map(|c| c.different.high - c.different.low);
    assert!(width(&two) > width(&five));
    assert_eq!(five.decision.map(|d| d.kind), Some(DecisionKind::Different));
    for pair in [&two, &five] {
        assert!(pair.detail.starts_with("We assume, since a few days cannot show it"), "{}", pair.detail);
        assert!(
            pair.detail.contains("by about 5\u{a0}yd or less. The days differ no more than luck"),
            "{}",
            pair.detail
        );
        let combined = pair.combined.as_ref().expect("combined");
        let (now, then) = (combined.half_width, combined.with_one_more);
        // A digit more where whole numbers would be the same.
        let digits = usize::from(format!("{now:.0}") == format!("{then:.0}"));
        let said =
            format!("from about {now:.digits$}\u{a0}yd to about {then:.digits$}\u{a0}yd to either side");
        assert!(
            pair.detail.ends_with(&format!("One more day like these would narrow it {said}.")),
            "{}",
            pair.detail
        );
    }
    let apart = days(vec![retest(-20.0, 6.0), retest(24.0, 6.0)], question("carry"));
    assert!(apart.headline.starts_with("Over 2 days it cannot be told"), "{}", apart.headline);
    assert!(
        apart
            .detail
            .contains("lie farther apart than is assumed, as if the gap itself moved by about 31\u{a0}yd")
    );
    assert!(!apart.detail.contains("no more than luck"), "{}", apart.detail);
    assert!(
        together(&TogetherRequest { sessions: vec![retest(1.0, 1.0)], question: question("carry") }).is_err()
    );
}

#[test]
fn the_same_club_first_every_day_is_told_and_so_is_the_club_that_links_two_days() {
    let first = |session: Session| Session { order: Order::Blocked, ..session };
    let block = || {
        let mut session = retest(8.0, 6.0);
        session.shots.sort_by_key(|shot| shot.build);
        session.shots.iter_mut().for_each(|shot| shot.round = None);
        first(session)
    };
    let same = days(vec![block(), block(), block()], question("carry"));
    assert!(same.detail.contains("The same club was hit first each time"), "{}", same.detail);
    assert!(same.detail.contains("6\u{a0}yd to either side is room for that"), "{}", same.detail);
    let named = |name: &str| {
        let mut session = retest(80.0, 6.0);
        session.builds[0].name = "7 iron".into();
        session.builds[1].name = name.into();
        session
    };
    let request = TogetherRequest {
        sessions: vec![named("Own driver"), named("Driver B")],
        question: Question { baseline: 1, ..question("carry") },
    };
    let pairs = together(&request).expect("days");
    let pair = pairs.iter().find(|pair| pair.name == "Driver B").expect("the club of the second day");
    assert!(pair.detail.contains("held against 7 iron, hit on those days as well"), "{}", pair.detail);
    assert!(!pair.detail.contains("agree") && !pair.detail.contains("apart"), "{}", pair.detail);
    for day in &pair.days {
        assert!(day.answer.is_none() && day.through.as_deref() == Some("7 iron"));
    }
}

fn felt(gap: f64, offline: (f64, f64), say: OwnSay) -> Feel {
    let mut session = in_turn("carry", 6, &[240.0, 240.0 + gap], 9.0);
    session.measures.push("offline".into());
    for (i, shot) in session.shots.iter_mut().enumerate() {
        let side = if shot.build == 0 { offline.0 } else { offline.1 };
        shot.values.push(Some(side + [0.6, -0.9, 0.3, 0.0, -0.4][i % 5]));
    }
    feel(&FeelRequest { session, question: question("carry"), say }).expect("a say")
}

#[test]
fn what_was_felt_is_shown_or_not() {
    let straighter = |own, new| {
        let say = OwnSay { straighter: Some(1), ..OwnSay::default() };
        felt(0.0, (own, new), say).felt[0].agreement
    };
    assert_eq!(straighter(15.0, 2.0), Agreement::Shown);
    assert_eq!(straighter(2.0, 15.0), Agreement::Opposite);
    // 15 left against 15.5 right: which is nearer to zero is not settled.
    assert_eq!(straighter(-15.0, 15.5), Agreement::NotShown);
    assert_eq!(straighter(2.0, 2.1), Agreement::Same);
    let longer = |gap| felt(gap, (0.0, 0.0), OwnSay { longer: Some(1), ..OwnSay::default() }).felt[0].clone();
    assert_eq!(longer(14.0).agreement, Agreement::Shown);
    assert_eq!(longer(-14.0).agreement, Agreement::Opposite);
    assert_eq!(longer(3.0).agreement, Agreement::NotShown);
    assert_eq!(longer(3.0).words, "Driver B felt longer; the shots do not show it.");
}

/// Whichever build is held against the others, what was felt of one is the same to the shots.
#[test]
fn what_was_felt_of_a_build_does_not_hang_on_the_baseline() {
    let sessions =
        [[-14.0, 0.0].as_slice(), &[3.0, 0.0], &[14.0, 0.0], &[0.0, 12.0, 24.0], &[0.0, 2.0, -15.0]];
    for gaps in sessions {
        let averages: Vec<f64> = gaps.iter().map(|gap| 240.0 + gap).collect();
        let mut session = in_turn("carry", 6, &averages, 9.0);
        session.measures.push(Known::Offline.into());
        for (i, shot) in session.shots.iter_mut().enumerate() {
            let side = [2.0, 15.0, 9.0][shot.build];
            shot.values.push(Some(side + [0.6, -0.9, 0.3, 0.0, -0.4][i % 5]));
        }
        for felt in 0..gaps.len() {
            let say = OwnSay { straighter: Some(felt), longer: Some(felt), ..OwnSay::default() };
            let with_baseline = |baseline| {
                let question = Question { baseline, ..question("carry") };
                feel(&FeelRequest { session: session.clone(), question, say }).expect("a say").felt
            };
            for baseline in 1..gaps.len() {
                assert_eq!(with_baseline(baseline), with_baseline(0), "{gaps:?}: {felt}, {baseline}");
            }
        }
    }
}

#[test]
fn claims_days_and_feel_are_the_same_in_every_unit() {
    let meters = Voice::new(Language::english(), Units::Meters);
    for gap in (0..9).map(f64::from) {
        let (session, question) = (retest(gap, 4.0), question("carry"));
        let said =
            ClaimRequest { claimed: claimed(9.0), session: session.clone(), question: question.clone() };
        let there = telling::claim::claim(&said, &meters).expect("a claim");
        assert_eq!(claim(&said).expect("a claim").facts, there.facts);
        let sessions = vec![session.clone(), retest(gap + 1.0, 3.0)];
        let days = TogetherRequest { sessions, question: question.clone() };
        let there = telling::together::together(&days, &meters).expect("days").remove(0);
        let here = together(&days).expect("days").remove(0);
        assert_eq!((here.combined, here.decision), (there.combined, there.decision));
        let say = OwnSay { longer: Some(1), ..OwnSay::default() };
        let felt = FeelRequest { session, question, say };
        let there = telling::feel::feel(&felt, &meters).expect("a say");
        assert_eq!(feel(&felt).expect("a say"), there);
    }
}

#[test]
fn where_the_shots_leave_it_open_feel_may_choose() {
    let say = OwnSay { look: Some(1), sound: Some(0), easier: Some(1), ..OwnSay::default() };
    let same = in_turn("carry", 6, &[240.0, 240.0], 1.0);
    let same = feel(&FeelRequest { session: same, question: question("carry"), say }).expect("a say");
    assert!(same.choose.contains("choose by feel, look or price"), "{}", same.choose);
    let open = felt(0.5, (0.0, 0.0), say);
    assert!(open.choose.contains("test again"), "nothing is settled: {}", open.choose);
    assert!(open.choose.contains("the look of Driver B and the sound of Own driver"), "{}", open.choose);
    assert!(felt(20.0, (0.0, 0.0), say).choose.is_empty());
    let session = in_turn("carry", 2, &[240.0, 241.0], 4.0);
    let stray = FeelRequest { session, question: question("carry"), say: OwnSay { look: Some(9), ..say } };
    assert_eq!(feel(&stray).expect_err("no such build").place, "say");
}

/// A field that a request does not have is a slip of whoever wrote it, and none that passes in silence.
#[test]
fn a_field_that_no_request_has_is_refused() {
    let (session, question) = (retest(1.0, 3.0), question("carry"));
    let said = ClaimRequest { claimed: claimed(9.0), session: session.clone(), question: question.clone() };
    let days = TogetherRequest { sessions: vec![session.clone()], question: question.clone() };
    let felt = FeelRequest { session, question, say: OwnSay::default() };
    assert!(takes_only_its_fields(&said, &["", "/claimed", "/question"]));
    assert!(takes_only_its_fields(&days, &["", "/sessions/0", "/question"]));
    assert!(takes_only_its_fields(&felt, &["", "/say", "/question"]));
}

/// Whether a request reads back as it is, and with one field more at any of these places does not.
fn takes_only_its_fields<Q: Serialize + DeserializeOwned>(request: &Q, places: &[&str]) -> bool {
    let plain = serde_json::to_value(request).expect("JSON");
    let refuses = |place: &&str| {
        let mut more = plain.clone();
        let object = more.pointer_mut(place).and_then(Value::as_object_mut).expect("an object");
        object.insert("margn".into(), 99.into());
        serde_json::from_value::<Q>(more).is_err()
    };
    serde_json::from_value::<Q>(plain.clone()).is_ok() && places.iter().all(refuses)
}

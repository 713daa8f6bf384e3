//! Many sessions: what is kept of each, and what piles put together say.

use crate::support::{also, around, averages, blocks, empty, in_turn, push};
use judging::many::{
    Line, ManyQuestion, ManyRefused, Names, NotPooled, Pile, PilesDiffer, RoleOfName, line, many, roles,
};
use judging::verdict::{DecisionKind, Direction};
use judging::{judge, settle};
use session::measure::MeasureId;
use session::question::{Goal, Question, Stopping, StoppingWord};
use session::{Order, Session, Shot, SummaryOf};
use std::collections::BTreeMap;

fn asked() -> ManyQuestion {
    ManyQuestion { margin: Some(5.0), ..ManyQuestion::of("carry".into()) }
}

fn fixed() -> Question {
    asked().asked_of(0, None, Stopping::Word(StoppingWord::Fixed))
}

fn of(session: &Session) -> Line {
    line(session, &asked(), &Names::default(), Some(&fixed()), None).expect("fits")
}

/// A session of a golfer of this number, whose gap is about this.
fn golfer(number: u32, gap: f64) -> Session {
    let base = 230.0 + f64::from(number);
    in_turn("carry", 5 + number % 3, &[base, base + gap], 6.0 + f64::from(number % 4))
}

fn season() -> Vec<(String, Line)> {
    let gaps = [4.0, -3.0, 9.0, 12.0, 1.0, 6.0, 20.0, -8.0, 5.0, 3.0, 7.0];
    let numbered = (0u32..).zip(gaps);
    numbered.map(|(number, gap)| (format!("{number:02}.csv"), of(&golfer(number, gap)))).collect()
}

fn pile(lines: &[(String, Line)]) -> Pile {
    let mut pile = Pile::new(asked());
    lines.iter().for_each(|(place, line)| pile.add(place, line.clone()));
    pile
}

fn told(pile: &Pile) -> String {
    serde_json::to_string(&many(pile)).expect("plain data")
}

#[test]
fn piles_put_together_in_any_order_and_twice_are_one_pile_to_the_last_bit() {
    let lines = season();
    let whole = told(&pile(&lines));
    let parts: Vec<Pile> = lines.chunks(3).map(pile).collect();
    let merged = |order: &[usize]| {
        let mut all = Pile::new(asked());
        for &at in order {
            all.merge(parts[at].clone()).expect("one question");
        }
        told(&all)
    };
    assert_eq!(merged(&[0, 1, 2, 3]), whole);
    assert_eq!(merged(&[3, 1, 0, 2]), whole);
    assert_eq!(merged(&[2, 2, 0, 3, 1, 0]), whole, "a part handed in twice");
    // In twos first, then together.
    let (mut one, mut other) = (parts[3].clone(), parts[1].clone());
    one.merge(parts[0].clone()).expect("one question");
    other.merge(parts[2].clone()).expect("one question");
    one.merge(other).expect("one question");
    assert_eq!(told(&one), whole);
    // As text and back.
    let text = serde_json::to_string(&one).expect("plain data");
    assert_eq!(told(&serde_json::from_str(&text).expect("a pile")), whole);
}

#[test]
fn piles_of_other_questions_are_not_put_together() {
    let mut pile = pile(&season());
    let other = Pile::new(ManyQuestion { margin: Some(3.0), ..asked() });
    assert_eq!(pile.merge(other), Err(PilesDiffer));
}

#[test]
fn a_copy_is_found_by_what_it_holds_and_counted_once() {
    let mut lines = season();
    let alone = many(&pile(&lines));
    let mut copy = golfer(2, 9.0);
    copy.builds[0].name = " OWN  driver".into();
    lines.push(("copy of 02.csv".into(), of(&copy)));
    let with_copy = many(&pile(&lines));
    assert_eq!((with_copy.sessions, with_copy.copies), (alone.sessions, 1));
    assert_eq!(with_copy.brings, alone.brings);
    assert_eq!(with_copy.each[2].places, ["02.csv", "copy of 02.csv"]);
    // One value more, and it is another session.
    push(&mut copy, 0, Some(1), 231.0);
    lines.push(("other.csv".into(), of(&copy)));
    assert_eq!(many(&pile(&lines)).sessions, alone.sessions + 1);
}

#[test]
fn a_promise_is_kept_whichever_copy_came_with_it() {
    let session = golfer(1, 6.0);
    let promised = line(&session, &asked(), &Names::default(), Some(&fixed()), Some(10.0)).expect("fits");
    for order in [[0, 1], [1, 0]] {
        let both = [of(&session), promised.clone()];
        let mut pile = Pile::new(asked());
        order.iter().for_each(|&at| pile.add(&at.to_string(), both[at].clone()));
        let claims = many(&pile).claims.expect("a promise");
        assert_eq!((claims.claims, claims.interval), (1, None));
    }
}

#[test]
fn every_session_is_answered_as_it_is_alone_with_all_its_measures() {
    for (number, gap) in (0u32..).zip([0.0, 4.0, 9.0, -12.0, 15.0]) {
        let mut session = golfer(number, gap);
        also(&mut session, "spin_rate", |at, _| Some(2500.0 + 40.0 * (at % 7) as f64));
        let (question, kept) = (fixed(), of(&session));
        let judged = judge(settle(&question, &session).expect("fits"));
        let alone = judged.of(1).expect("a candidate");
        let estimate = alone.estimate.as_ref().expect("an estimate");
        assert_eq!(kept.decision, Some(alone.decision));
        let gap = kept.gap.expect("a gap");
        assert_eq!((gap.value, gap.interval), (estimate.value, estimate.decided_by));
        assert!(gap.least_se > 0.0 && gap.least_se < gap.se);
        assert_eq!(gap.p < 0.05, alone.decision.kind == DecisionKind::Different, "{number}");
        // Whose number of shots nobody fixed is held to more, in its p as well.
        let open = asked().asked_of(0, None, Stopping::default());
        let open = line(&session, &asked(), &Names::default(), Some(&open), None).expect("fits");
        let different = open.decision.map(|decision| decision.kind) == Some(DecisionKind::Different);
        assert_eq!(open.gap.expect("a gap").p < 0.05, different, "{number}");
    }
}

#[test]
fn what_is_not_pooled_is_counted_with_its_reason() {
    use NotPooled as No;
    let values = |average: f64| around(average, 6.0, 12, 0);
    let of_averages = |n: Option<u32>, of: SummaryOf| {
        let mut session = averages("carry", &[(n, 240.0, Some(7.0)), (n, 250.0, Some(7.0))]);
        session.summaries.iter_mut().for_each(|summary| summary.of = of);
        session
    };
    let mut doubtful = golfer(0, 5.0);
    doubtful.shots[0].values[0] = Some(2_400.0);
    let mut few_rounds = golfer(0, 5.0);
    let late = |shot: &&mut Shot| shot.build == 0 && shot.round > Some(1);
    few_rounds.shots.iter_mut().filter(late).for_each(|shot| shot.values[0] = None);
    let mut one_club = empty("carry", 1);
    values(240.0).into_iter().for_each(|value| push(&mut one_club, 0, Some(1), value));
    let mut two_shots = in_turn("carry", 2, &[240.0, 250.0], 5.0);
    two_shots.shots.retain(|shot| shot.build == 0 || shot.round == Some(1));
    two_shots.shots.truncate(4);
    let flat = in_turn("carry", 4, &[240.0, 250.0], 0.0);
    let cases = [
        (blocks("carry", &[values(240.0), values(250.0)]), No::OneAfterTheOther),
        (
            Session { order: Order::Unknown, ..blocks("carry", &[values(240.0), values(250.0)]) },
            No::OrderNotKnown,
        ),
        (few_rounds, No::TooFewRounds),
        (of_averages(Some(12), SummaryOf::All), No::AveragesOnly),
        (of_averages(None, SummaryOf::All), No::CountsMissing),
        (of_averages(Some(3), SummaryOf::Best), No::OnlyTheBest),
        (in_turn("spin_rate", 5, &[2_500.0, 2_700.0], 90.0), No::NotMeasured),
        (one_club, No::OneClub),
        (in_turn("carry", 5, &[240.0, 245.0, 250.0], 6.0), No::SeveralClubs),
        (two_shots, No::TooFewShots),
        (flat, No::NoScatter),
        (doubtful, No::ValueInDoubt),
    ];
    let mut lines = season();
    let alone = many(&pile(&lines));
    for (at, (session, why)) in cases.iter().enumerate() {
        let line = of(session);
        assert_eq!(line.not_pooled, Some(*why));
        lines.push((format!("no {at}"), line));
    }
    let all = many(&pile(&lines));
    assert_eq!((all.brings, all.pooled), (alone.brings, alone.pooled), "none of them moves what is pooled");
    assert_eq!(all.not_pooled.len(), cases.len());
    assert!(all.not_pooled.iter().all(|count| count.sessions == 1));
    assert_eq!(all.names.len(), 3, "asked once: {:?}", all.names);
}

#[test]
fn a_table_of_names_settles_which_clubs_are_meant() {
    let session = in_turn("carry", 6, &[240.0, 245.0, 252.0], 5.0);
    let names: BTreeMap<String, RoleOfName> =
        [("own driver".to_owned(), RoleOfName::Own), ("DRIVER C".to_owned(), RoleOfName::New)].into();
    let names = Names::from(names);
    let found = line(&session, &asked(), &names, None, None).expect("fits");
    assert_eq!((found.baseline.as_str(), found.candidate.as_str()), ("Own driver", "Driver C"));
    assert_eq!(found.not_pooled, None);
    assert_eq!(roles(&session, &names, None).map(|named| named.candidate), Ok(2));
}

#[test]
fn turned_around_a_pile_says_the_same_the_other_way() {
    let turned = |session: &Session| {
        let mut session = session.clone();
        session.builds.swap(0, 1);
        session.shots.iter_mut().for_each(|shot| shot.build = 1 - shot.build);
        session
    };
    let gaps = [4.0, -3.0, 9.0, 12.0, 1.0];
    let sessions: Vec<Session> = (0u32..).zip(gaps).map(|(number, gap)| golfer(number, gap)).collect();
    let asked = |goal: Goal| ManyQuestion { goal: Some(goal), ..asked() };
    let made = |goal: Goal, turn: bool| {
        let mut pile = Pile::new(asked(goal));
        for (at, session) in sessions.iter().enumerate() {
            let session = if turn { turned(session) } else { session.clone() };
            let line = line(&session, &asked(goal), &Names::default(), Some(&fixed()), None).expect("fits");
            pile.add(&at.to_string(), line);
        }
        many(&pile)
    };
    let (up, down) = (made(Goal::Higher, false), made(Goal::Lower, true));
    assert_eq!((up.toward, down.toward), (Direction::Higher, Direction::Lower));
    let (brings, other) = (up.brings.expect("pooled"), down.brings.expect("pooled"));
    let close = |one: f64, other: f64| (one - other).abs() < 1e-9;
    assert!(close(brings.mean.value, -other.mean.value) && close(brings.next.low, -other.next.high));
    assert!(close(brings.spread.value, other.spread.value));
    let (enough, same) = (brings.enough.expect("a margin"), other.enough.expect("a margin"));
    assert!(close(enough.value, same.value) && close(enough.interval.low, same.interval.low));
    assert!(close(brings.worse.value, other.worse.value));
    assert_eq!((up.findings.better, up.findings.worse), (down.findings.better, down.findings.worse));
}

#[test]
fn sessions_that_all_begin_with_one_club_leave_room_for_it_and_others_even_it_out() {
    let begun_with = |own_first: bool| {
        let mut lines = Vec::new();
        for number in 0..8u32 {
            let mut session = golfer(number, 5.0);
            if !own_first && number % 2 == 1 {
                // The laps the other way round.
                session.shots =
                    session.shots.chunks(6).flat_map(|lap| [&lap[3..], &lap[..3]].concat()).collect();
            }
            lines.push((number.to_string(), of(&session)));
        }
        many(&pile(&lines)).brings.expect("pooled").allowance
    };
    let (always, mixed) = (begun_with(true), begun_with(false));
    assert!(always > 0.1 && mixed < 0.3 * always, "{always} {mixed}");
}

#[test]
fn what_cannot_be_asked_of_many_is_refused() {
    let goal = |goal| ManyQuestion { goal: Some(goal), ..asked() }.fits();
    assert_eq!(goal(Goal::Tighter), Err(ManyRefused::Scatter));
    assert_eq!(goal(Goal::NearerZero), Err(ManyRefused::NearerZero));
    assert_eq!(ManyQuestion::of(MeasureId::from("offline")).fits(), Err(ManyRefused::NearerZero));
    let margin = ManyQuestion { margin: Some(-1.0), ..asked() };
    assert_eq!(margin.fits(), Err(ManyRefused::NotAMargin { got: -1.0 }));
    let rate = ManyQuestion { rate: 1.0, ..asked() };
    assert_eq!(rate.fits(), Err(ManyRefused::NotARate { got: 1.0 }));
    assert_eq!(asked().fits(), Ok(()));
    let nothing = many(&Pile::new(asked()));
    assert_eq!((nothing.brings, nothing.claims, nothing.sessions), (None, None, 0));
}

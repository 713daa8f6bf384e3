//! Many sessions in words, in both languages.

use crate::dice::Dice;
use judging::many::{ManyQuestion, Names, Pile, Sent, line};
use session::question::{Stopping, StoppingWord};
use session::{Build, Order, Session, Shot};
use telling::many::{ManyWords, many};
use text::{Language, Units, Voice};

/// A golfer of this number: laps of three shots each, AB BA, with a gap.
fn golfer(number: u32, gap: f64, order: Order) -> Session {
    let mut dice = Dice::seeded(u64::from(number));
    let mut session = Session {
        builds: ["Own driver", "Driver B"].map(|name| Build { name: name.into() }).to_vec(),
        measures: vec!["carry".into()],
        order,
        ..Session::default()
    };
    for round in 0..6_u32 {
        for turn in 0..2 {
            let build = if round % 2 == 0 { turn } else { 1 - turn };
            for _ in 0..3 {
                let carry = 240.0 + gap * build as f64 + 7.0 * dice.normal();
                let values = vec![Some(carry)];
                session.shots.push(Shot { build, round: Some(round + 1), values, ..Shot::default() });
            }
        }
    }
    session
}

fn told(sessions: &[(Session, Option<f64>)], sent: Sent, voice: &Voice) -> ManyWords {
    let asked = ManyQuestion { sent, margin: Some(5.0), ..ManyQuestion::of("carry".into()) };
    let own = asked.asked_of(0, None, Stopping::Word(StoppingWord::Fixed));
    let mut pile = Pile::new(asked.clone());
    for (at, (session, claimed)) in sessions.iter().enumerate() {
        let line = line(session, &asked, &Names::default(), Some(&own), *claimed).expect("fits");
        pile.add(&format!("{at:03}"), line);
    }
    many(&pile, voice).words
}

fn season() -> Vec<(Session, Option<f64>)> {
    let gaps = [8.0, 3.0, -4.0, 15.0, 6.0, 1.0, 11.0, -2.0, 9.0, 5.0, 20.0, 0.0];
    let mut all: Vec<(Session, Option<f64>)> = (1..)
        .zip(gaps)
        .map(|(number, gap)| {
            (golfer(number, gap, Order::Interleaved), (number % 2 == 0).then_some(12.0 + gap / 2.0))
        })
        .collect();
    let mut blocked = golfer(40, 8.0, Order::Blocked);
    blocked.shots.sort_by_key(|shot| shot.build);
    blocked.shots.iter_mut().for_each(|shot| shot.round = None);
    all.push((blocked, None));
    all.push(all[3].clone());
    all
}

#[test]
fn a_season_is_told() {
    let words = told(&season(), Sent::NotSaid, &Voice::english());
    insta::assert_debug_snapshot!("season", words);
    let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Meters);
    insta::assert_debug_snapshot!("season_in_spanish_and_meters", told(&season(), Sent::Picked, &spanish));
}

#[test]
fn a_pile_that_says_nothing_says_so() {
    let voice = Voice::english();
    assert_eq!(told(&[], Sent::All, &voice).headline, "No session was read.");
    let one = told(&season()[..1], Sent::All, &voice);
    assert_eq!(one.headline, "One session was read, and one alone says nothing of others.");
    assert_eq!((one.brings.as_str(), one.sent.as_str()), ("", ""));
    let blocked = told(&season()[12..13], Sent::All, &voice);
    assert_eq!(blocked.headline, "One session was read, and it cannot be pooled.");
    assert_eq!(blocked.not_pooled.len(), 1);
}

/// What is said of a loss in words and what the numbers say go the same way.
#[test]
fn sessions_that_lie_near_each_other_show_no_spread() {
    let alike: Vec<(Session, Option<f64>)> =
        (1..5).map(|number| (golfer(number, 2.0, Order::Interleaved), None)).collect();
    let words = told(&alike, Sent::All, &Voice::english());
    assert!(words.brings.starts_with("How far golfers differ cannot be told"), "{}", words.brings);
    assert_eq!(words.promised, "");
}

//! What to bet: the line below the verdict, its chances as ranges, and why nothing is bet. It decides nothing.

use crate::made::{also, around, blocks, close, set_aside, with_goal, with_margin};
use crate::support::{asking, averages, check, in_turn, one_after_the_other};
use judging::bet::{BetFacts, NoBet};
use judging::verdict::Direction;
use session::known::Known;
use session::question::{Differs, Goal, Question, View};
use session::{Session, SummaryOf};
use telling::bet::{Bet, bet};
use telling::check::CheckRequest;
use telling::report::Report;
use telling::share::{ShareRequest, share};
use text::{Language, Units, Voice};

fn told(session: &Session, question: &Question) -> Bet {
    let request = CheckRequest { session: session.clone(), question: question.clone() };
    bet(&request, &Voice::english()).expect("a usable request")
}

fn facts(session: &Session, question: &Question) -> BetFacts {
    told(session, question).facts.expect("something to bet on")
}

/// Shots that cannot tell, and lean to the second club.
fn leaning() -> Session {
    in_turn("carry", 5, &[250.0, 256.0], 11.0)
}

#[test]
fn words_of_every_kind_of_bet() {
    let swapped = Question { baseline: 1, ..asking("carry") };
    let spin = in_turn("spin_rate", 5, &[2900.0, 2600.0], 300.0);
    let blocked = one_after_the_other("carry", &[15, 15], &[250.0, 258.0], 8.0);
    let mut own = leaning();
    also(&mut own, "tempo", |at, shot| Some(3.0 + 0.2 * shot.build as f64 + 0.1 * (at % 7) as f64));
    let bets = [
        ("nobody said what differs", leaning(), asking("carry")),
        ("another shaft", leaning(), Question { differs: Some(Differs::Shaft), ..asking("carry") }),
        ("the other way round", leaning(), swapped),
        ("a small margin", leaning(), with_margin("carry", 0.5)),
        ("no margin", leaning(), with_margin("carry", 0.0)),
        ("any difference of spin", spin, asking("spin_rate")),
        ("one after the other", blocked, asking("carry")),
        ("a clear difference", in_turn("carry", 6, &[250.0, 270.0], 8.0), asking("carry")),
        ("a column of one's own", own, asking("tempo")),
        ("scatter", leaning(), with_goal("carry", Goal::Tighter)),
    ];
    let said: Vec<String> = bets
        .iter()
        .map(|(what, session, question)| format!("# {what}\n{:#?}", told(session, question).words))
        .collect();
    insta::assert_snapshot!(said.join("\n"));
}

#[test]
fn the_pulled_gap_lies_between_none_and_the_one_shown() {
    for (session, name) in [(leaning(), "leaning"), (in_turn("carry", 6, &[250.0, 270.0], 8.0), "clear")] {
        let facts = facts(&session, &asking("carry"));
        assert!(0.0 < facts.gap.value && facts.gap.value < facts.gap.shown, "{name}: {facts:?}");
        assert!(facts.gap.interval.low < facts.gap.value && facts.gap.value < facts.gap.interval.high);
        let margin = facts.by_margin.expect("a margin");
        assert!(
            margin.chance.low <= facts.at_all.chance.low && margin.chance.high <= facts.at_all.chance.high
        );
    }
}

#[test]
fn what_was_said_to_differ_narrows_every_chance() {
    let width = |differs| {
        let chance = facts(&leaning(), &Question { differs, ..asking("carry") }).at_all.chance;
        chance.high - chance.low
    };
    let gap = |differs| facts(&leaning(), &Question { differs: Some(differs), ..asking("carry") }).gap.value;
    for differs in [Differs::Shaft, Differs::Head, Differs::OldClub] {
        assert!(width(Some(differs)) < width(None), "{differs:?}");
    }
    assert!(gap(Differs::Shaft) < gap(Differs::Head) && gap(Differs::Head) < gap(Differs::OldClub));
}

#[test]
fn swapping_the_clubs_turns_the_bet_around() {
    let back = Question { baseline: 1, ..asking("carry") };
    let (there, back) = (facts(&leaning(), &asking("carry")), facts(&leaning(), &back));
    close(there.gap.value, -back.gap.value, 1e-9);
    // Both are told the way that the shots point.
    assert_eq!((there.toward, back.toward), (Direction::Higher, Direction::Lower));
    close(there.at_all.chance.low, back.at_all.chance.low, 1e-9);
    close(there.pairs.share, back.pairs.share, 1e-12);
    close(there.pairs.interval.low, back.pairs.interval.low, 1e-9);
}

#[test]
fn chances_are_counted_the_way_that_the_shots_point() {
    for goal in [Goal::Higher, Goal::Lower, Goal::Different] {
        let found = facts(&leaning(), &with_goal("carry", goal));
        assert_eq!(found.toward, Direction::Higher, "{goal:?}");
        assert!(found.at_all.chance.low > 0.5 && found.pairs.share > 0.5, "{found:?}");
    }
    // A club that falls short is not told by how seldom it would be the longer one.
    let shorter = in_turn("carry", 5, &[256.0, 250.0], 11.0);
    let told = told(&shorter, &asking("carry"));
    assert!(told.words.line.contains("Driver B carries shorter on average"), "{}", told.words.line);
    let spin = in_turn("spin_rate", 5, &[2900.0, 2600.0], 300.0);
    assert_eq!(facts(&spin, &asking("spin_rate")).toward, Direction::Lower);
}

#[test]
fn an_order_that_may_have_helped_widens_every_part_of_a_bet() {
    let builds = [around(250.0, 8.0, 12, 0), around(258.0, 8.0, 12, 5)];
    let blocked = blocks("carry", &builds);
    let mut turned = in_turn("carry", 4, &[0.0, 0.0], 1.0);
    // The same values, hit in turn.
    for (build, values) in builds.iter().enumerate() {
        let places = turned.shots.iter_mut().filter(|shot| shot.build == build);
        places.zip(values).for_each(|(shot, value)| shot.values = vec![Some(*value)]);
    }
    let (blocked, turned) = (facts(&blocked, &asking("carry")), facts(&turned, &asking("carry")));
    assert!(blocked.order_in_it && !turned.order_in_it);
    assert!(blocked.at_all.chance.low < turned.at_all.chance.low);
    assert!(blocked.gap.interval.low < turned.gap.interval.low);
    assert!(blocked.pairs.interval.low < turned.pairs.interval.low);
    assert!(blocked.pairs.interval.high > turned.pairs.interval.high);
    close(blocked.pairs.share, turned.pairs.share, 1e-12);
}

#[test]
fn where_a_bet_would_say_too_much_nothing_is_bet_and_the_words_say_why() {
    let mut left_out = in_turn("carry", 5, &[250.0, 258.0], 6.0);
    set_aside(&mut left_out, |_, shot| shot.build == 0 && shot.values[0] < Some(252.0));
    let mut own = one_after_the_other("tempo", &[9, 9], &[3.0, 3.4], 0.2);
    own.builds[0].name = "Old".into();
    let mut slip = leaning();
    slip.shots[4].values[0] = Some(2500.0);
    let one_build = in_turn("carry", 3, &[250.0], 8.0);
    let cases = [
        (leaning(), with_goal("carry", Goal::Tighter), NoBet::Scatter),
        (leaning(), with_goal("carry", Goal::NearerZero), NoBet::NearerZero),
        (averages(SummaryOf::All, Some(12), Some(8.0), [230.0, 238.0]), asking("carry"), NoBet::Averages),
        (own, asking("tempo"), NoBet::OrderUnknown),
        (left_out, asking("carry"), NoBet::DependsOnLeftOut),
        (slip, asking("carry"), NoBet::ValueInDoubt),
        (one_build, asking("carry"), NoBet::NothingCompared),
        (leaning(), asking("ball_speed"), NoBet::NothingCompared),
    ];
    for (session, question, why) in cases {
        let bet = told(&session, &question);
        assert_eq!(bet.why, Some(why));
        assert!(bet.facts.is_none() && bet.words.line.is_empty() && !bet.words.note.is_empty());
    }
}

#[test]
fn a_bet_is_the_same_with_other_measures_beside_it_and_changes_no_answer() {
    let (question, session) = (asking("carry"), leaning());
    let mut more = session.clone();
    also(&mut more, "ball_speed", |at, shot| Some(150.0 + shot.build as f64 + 0.3 * (at % 5) as f64));
    assert_eq!(told(&more, &question).facts, told(&session, &question).facts);
    let said = |differs| {
        let question = Question { differs, ..question.clone() };
        check(&CheckRequest { session: more.clone(), question }).expect("a usable request")
    };
    let (unsaid, old_club) = (said(None), said(Some(Differs::OldClub)));
    // The honest lead is the bet's own, and no part of the answer.
    assert!(unsaid.honest_lead.expect("a lead").honest < old_club.honest_lead.expect("a lead").honest);
    let without = |report: Report| Report { honest_lead: None, ..report };
    assert_eq!(without(unsaid), without(old_club));
}

#[test]
fn the_bet_goes_with_the_text_and_with_the_file() {
    let request = ShareRequest {
        session: leaning(),
        question: Question { differs: Some(Differs::Head), ..asking("carry") },
        view: View::default(),
        address: "https://example.org/".into(),
    };
    let shared = share(&request, None, &Voice::english()).expect("a usable request");
    let bet = told(&request.session, &request.question);
    assert!(!bet.words.line.is_empty());
    for style in [&shared.words.plain, &shared.words.brackets] {
        assert!(style.contains(&bet.words.line), "{style}");
    }
    assert_eq!(shared.file.bet, bet);
}

#[test]
fn where_no_gap_is_likely_it_is_not_said_to_be_about_none() {
    let session = in_turn("carry", 8, &[250.0, 250.0], 6.0);
    let request = CheckRequest { session, question: asking("carry") };
    let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Yards);
    let rows = [
        (
            Voice::english(),
            "Most likely: hardly any difference.",
            "Then hardly any difference is most likely",
        ),
        (spanish, "Lo más probable: que apenas haya diferencia.", "es que apenas haya diferencia, y"),
    ];
    for (voice, line, gap) in rows {
        let words = bet(&request, &voice).expect("a usable request").words;
        assert!(words.line.ends_with(line), "{}", words.line);
        assert!(words.gap.contains(gap), "{}", words.gap);
    }
}

#[test]
fn in_spanish_a_measure_that_is_spoken_of_has_its_article() {
    let spanish = Voice::new(Language::from_table(text::SPANISH).expect("this version"), Units::Yards);
    for known in Known::ALL {
        let the = text::names::the(known, &spanish);
        let name = the.strip_prefix("el ").or_else(|| the.strip_prefix("la ")).expect("an article");
        assert_eq!(name, text::names::spoken(known, &spanish));
        // English has none, and one word more that is no thing.
        let (the, name) =
            (text::names::the(known, &Voice::english()), text::names::spoken(known, &Voice::english()));
        assert_eq!(the == name, known != Known::Offline, "{the}, {name}");
    }
    let request = CheckRequest { session: leaning(), question: asking("carry") };
    let usual = bet(&request, &spanish).expect("a usable request").words.usual;
    assert!(usual.contains("los palos en el carry"), "{usual}");
}

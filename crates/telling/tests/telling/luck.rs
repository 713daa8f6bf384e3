//! How far luck reaches, held against counting by hand, theory and the check beside it.

use crate::support::{asking, check, empty, in_turn, one_after_the_other, push};
use judging::luck::{Compared, Showing};
use judging::verdict::Direction;
use session::question::{Goal, Question};
use session::refusal::Refusal;
use session::{Order, Session};
use telling::check::CheckRequest;
use telling::luck::{Luck, LuckRequest};

fn luck(request: &LuckRequest) -> Result<Luck, Refusal> {
    telling::luck::luck(request, &text::Voice::english())
}

fn request(session: &Session, question: &Question, shown: u32, showing: Showing) -> LuckRequest {
    LuckRequest { session: session.clone(), question: question.clone(), shown: Some(shown), showing }
}

fn shown(session: &Session, question: &Question, n: u32, showing: Showing) -> Luck {
    luck(&request(session, question, n, showing)).expect("can be shown")
}

fn averages_of_runs(session: &Session, build: usize, n: usize) -> Vec<f64> {
    let values: Vec<f64> =
        session.shots.iter().filter(|s| s.build == build).filter_map(|s| s.values[0]).collect();
    values.windows(n).map(|run| run.iter().sum::<f64>() / n as f64).collect()
}

fn extreme(values: &[f64], pick: fn(f64, f64) -> f64) -> f64 {
    values.iter().copied().reduce(pick).expect("not empty")
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

#[test]
fn runs_are_counted_as_by_hand() {
    let session = in_turn("carry", 6, &[250.0, 252.0], 8.0);
    for n in [3, 5, 15] {
        let luck = shown(&session, &asking("carry"), n, Showing::InARow);
        let (base, cand) =
            (averages_of_runs(&session, 0, n as usize), averages_of_runs(&session, 1, n as usize));
        let gaps: Vec<f64> = cand.iter().flat_map(|c| base.iter().map(move |b| c - b)).collect();
        let share = |reached: &dyn Fn(f64) -> bool| {
            gaps.iter().filter(|gap| reached(**gap)).count() as f64 / gaps.len() as f64
        };
        assert!(near(luck.facts.for_candidate.share, share(&|gap| gap >= 5.0 - 1e-9)), "{n}");
        assert!(near(luck.facts.for_baseline.share, share(&|gap| gap <= -5.0 + 1e-9)), "{n}");
        assert!(near(luck.facts.for_candidate.best, extreme(&gaps, f64::max)));
        assert!(near(luck.facts.for_baseline.best, extreme(&gaps, f64::min)));
        let all = |build| {
            let values = averages_of_runs(&session, build, 1);
            values.iter().sum::<f64>() / values.len() as f64
        };
        assert!(near(luck.facts.for_candidate.against_all, extreme(&cand, f64::max) - all(0)));
        assert!(near(luck.facts.for_baseline.against_all, all(1) - extreme(&base, f64::max)));
        assert!(near(luck.facts.gap, all(1) - all(0)));
        assert_eq!((luck.facts.pairs.baseline, luck.facts.pairs.candidate), (base.len(), cand.len()));
        assert!(luck.facts.pairs.all);
    }
}

#[test]
fn the_whole_session_reaches_no_farther_than_its_gap() {
    let session = one_after_the_other("carry", &[9, 9], &[250.0, 257.0], 8.0);
    for showing in [Showing::InARow, Showing::Picked] {
        let luck = shown(&session, &asking("carry"), 9, showing);
        assert!(
            near(luck.facts.for_candidate.best, luck.facts.gap)
                && near(luck.facts.for_baseline.best, luck.facts.gap)
        );
        assert!(near(luck.facts.for_candidate.share, 1.0) && near(luck.facts.for_baseline.share, 0.0));
    }
}

#[test]
fn any_picks_reach_at_least_as_far_as_runs() {
    let session = in_turn("carry", 8, &[250.0, 252.0], 8.0);
    for n in 3..=15 {
        let picked = shown(&session, &asking("carry"), n, Showing::Picked);
        let in_a_row = shown(&session, &asking("carry"), n, Showing::InARow);
        assert!(picked.facts.for_candidate.best >= in_a_row.facts.for_candidate.best - 1e-9);
        assert!(picked.facts.for_baseline.best <= in_a_row.facts.for_baseline.best + 1e-9);
        assert_eq!(picked.facts.chance, in_a_row.facts.chance, "chance does not choose");
    }
}

#[test]
fn swapping_the_roles_turns_everything_around() {
    for (measure, goal) in [
        ("carry", None),
        ("spin_rate", Some(Goal::Lower)),
        ("offline", None),
        ("offline", Some(Goal::Different)),
    ] {
        let session = in_turn(measure, 5, &[2.0, -5.0], 9.0);
        let ask = |baseline| Question { baseline, goal, ..asking(measure) };
        for showing in [Showing::InARow, Showing::Picked] {
            let there = shown(&session, &ask(0), 5, showing);
            let back = shown(&session, &ask(1), 5, showing);
            assert_eq!(there.facts.chance, back.facts.chance, "{measure}");
            assert!(
                near(there.facts.for_candidate.share, back.facts.for_baseline.share),
                "{measure} {showing:?}"
            );
            assert!(near(there.facts.for_baseline.share, back.facts.for_candidate.share));
            assert!(near(there.facts.for_candidate.best, -back.facts.for_baseline.best));
            assert!(near(there.facts.for_baseline.against_all, -back.facts.for_candidate.against_all));
            assert!(near(there.facts.gap, -back.facts.gap));
            let turned: Vec<f64> = back.facts.deals.iter().map(|gap| -gap).collect();
            assert_eq!(there.facts.deals, turned, "the same shots are dealt");
            assert_eq!(there.words.deals.len(), there.facts.deals.len());
        }
    }
}

#[test]
fn lower_is_better_speaks_for_the_lower() {
    let session = in_turn("spin_rate", 5, &[2900.0, 2500.0], 150.0);
    let lower = Question { goal: Some(Goal::Lower), ..asking("spin_rate") };
    let luck = shown(&session, &lower, 5, Showing::InARow);
    assert_eq!(luck.facts.toward, Direction::Lower);
    assert!(luck.facts.for_candidate.share > 0.8 && luck.facts.for_candidate.best < luck.facts.gap);
    assert!(luck.facts.for_baseline.share < 0.01 && luck.facts.for_baseline.best > luck.facts.gap);
    let higher = Question { goal: Some(Goal::Higher), ..asking("spin_rate") };
    let turned = shown(&session, &higher, 5, Showing::InARow);
    assert!(near(turned.facts.for_candidate.share, luck.facts.for_baseline.share));
    assert!(near(turned.facts.for_candidate.best, luck.facts.for_baseline.best));
}

#[test]
fn straighter_is_nearer_to_zero_on_either_side() {
    let (mut one, mut turned) = (empty("offline", 2), empty("offline", 2));
    for session in [&mut one, &mut turned] {
        session.order = Order::Blocked;
    }
    for (build, values) in [(0, [9.0, 14.0, 12.0, 20.0]), (1, [-3.0, 2.0, -4.0, 1.0])] {
        for value in values {
            push(&mut one, build, None, value);
            push(&mut turned, build, None, -value);
        }
    }
    let here = shown(&one, &asking("offline"), 3, Showing::InARow);
    let there = shown(&turned, &asking("offline"), 3, Showing::InARow);
    assert_eq!((here.facts.compared, here.facts.toward), (Compared::DistanceFromZero, Direction::Lower));
    assert!(near(here.facts.for_candidate.share, 1.0) && near(here.facts.for_baseline.share, 0.0));
    assert!(
        near(here.facts.gap, there.facts.gap)
            && near(here.facts.for_candidate.best, there.facts.for_candidate.best)
    );
    // |(2 − 4 + 1)/3| against (14 + 12 + 20)/3.
    assert!(near(here.facts.for_candidate.best, 1.0 / 3.0 - 46.0 / 3.0), "{}", here.facts.for_candidate.best);
}

#[test]
fn the_answer_beside_it_is_that_of_the_check() {
    let mut session = in_turn("carry", 5, &[250.0, 256.0, 251.0], 6.0);
    session.measures.push("ball_speed".into());
    for (i, shot) in session.shots.iter_mut().enumerate() {
        shot.values.push((i % 4 > 0).then_some(150.0 + (i % 7) as f64));
    }
    for measure in ["carry", "ball_speed"] {
        let question = asking(measure);
        let report =
            check(&CheckRequest { session: session.clone(), question: question.clone() }).expect("usable");
        let luck = shown(&session, &question, 4, Showing::InARow);
        assert_eq!(luck.answer, report.answer, "{measure}");
        assert_eq!(Some(luck.facts.candidate), report.asked.candidate);
    }
}

#[test]
fn the_same_request_gives_the_same_picture() {
    let session = in_turn("carry", 10, &[250.0, 252.0], 8.0);
    for showing in [Showing::InARow, Showing::Picked] {
        let again = || shown(&session, &asking("carry"), 7, showing);
        assert_eq!(again(), again());
    }
    let luck = shown(&session, &asking("carry"), 7, Showing::Picked);
    assert!(!luck.facts.pairs.all && luck.facts.chance.histogram.total == 2 * luck.facts.chance.draws);
}

#[test]
fn the_bars_beyond_the_margin_are_the_share_that_is_told() {
    let session = in_turn("carry", 5, &[250.0, 252.0], 12.0);
    let luck = shown(&session, &asking("carry"), 5, Showing::InARow);
    let bins = &luck.facts.chance.histogram.bins;
    let beyond: u32 =
        bins.iter().filter(|b| b.low >= 5.0 - 1e-9 || b.high <= -5.0 + 1e-9).map(|b| b.count).sum();
    let share = f64::from(beyond) / f64::from(luck.facts.chance.histogram.total);
    assert!(near(share, luck.facts.chance.beyond_margin.expect("carry has a margin")), "{share}");
}

#[test]
fn what_cannot_be_shown_is_refused_with_a_remedy() {
    let kind = |session: &Session, question: &Question, shown| {
        luck(&request(session, question, shown, Showing::Picked)).expect_err("refused").kind
    };
    let few = one_after_the_other("carry", &[4, 20], &[250.0, 255.0], 6.0);
    let carry = asking("carry");
    for shown in [0, 1, 2, 5, 16, u32::MAX] {
        assert_eq!(kind(&few, &carry, shown), "cannot_show_as_many", "{shown}");
    }
    let many = one_after_the_other("carry", &[20, 20], &[250.0, 255.0], 6.0);
    assert_eq!(kind(&many, &carry, 16), "cannot_show_as_many");
    assert_eq!(
        kind(&one_after_the_other("carry", &[2, 20], &[250.0, 255.0], 6.0), &carry, 3),
        "too_few_shots"
    );
    assert_eq!(kind(&one_after_the_other("carry", &[20], &[250.0], 6.0), &carry, 3), "one_build");
    assert_eq!(kind(&empty("carry", 2), &carry, 3), "too_few_shots");
    assert_eq!(kind(&many, &asking("spin_rate"), 3), "too_few_shots");
    assert_eq!(kind(&many, &Question { goal: Some(Goal::Tighter), ..carry.clone() }, 3), "scatter_not_shown");
    assert_eq!(kind(&many, &Question { baseline: 9, ..carry.clone() }, 3), "no_such_build");
    let message = luck(&request(&few, &carry, 9, Showing::InARow)).expect_err("refused");
    assert_eq!(message.remedy, "Ask for 3 to 4.");
}

#[test]
fn left_open_five_are_shown_or_as_many_as_there_are() {
    for (each, expected) in [(3, 3), (4, 4), (5, 5), (30, 5)] {
        let session = one_after_the_other("carry", &[each, 30], &[250.0, 255.0], 6.0);
        let open = LuckRequest { shown: None, ..request(&session, &asking("carry"), 0, Showing::InARow) };
        let luck = luck(&open).expect("can be shown");
        assert_eq!(
            (luck.facts.shown, luck.facts.limits.most),
            (expected, u32::try_from(each.min(15)).expect("small"))
        );
    }
}

#[test]
fn columns_without_a_margin_are_shown_too() {
    let session = one_after_the_other("my column", &[6, 6], &[1.0, 2.0], 1.0);
    let luck = shown(&session, &asking("my column"), 4, Showing::Picked);
    assert_eq!((luck.facts.margin, luck.facts.chance.beyond_margin), (None, None));
    assert!(luck.facts.for_candidate.share + luck.facts.for_baseline.share <= 1.0 + 1e-12);
    assert!(luck.words.headline.contains("that it is with Own driver"), "{}", luck.words.headline);
}

#[test]
fn the_words_are_short_calm_and_concrete() {
    let session = in_turn("carry", 5, &[250.0, 252.0], 8.0);
    insta::assert_snapshot!("luck_in_a_row", said(&shown(&session, &asking("carry"), 5, Showing::InARow)));
    let mut unknown = in_turn("offline", 5, &[6.0, -2.0], 14.0);
    unknown.order = Order::Unknown;
    insta::assert_snapshot!(
        "luck_picked_offline",
        said(&shown(&unknown, &asking("offline"), 6, Showing::Picked))
    );
    insta::assert_snapshot!(
        "luck_listed_offline",
        said(&shown(&unknown, &asking("offline"), 6, Showing::InARow))
    );
    let spin = in_turn("spin_rate", 5, &[2900.0, 2700.0], 300.0);
    let lower = Question { goal: Some(Goal::Lower), ..asking("spin_rate") };
    let different = Question { goal: Some(Goal::Different), ..asking("spin_rate") };
    insta::assert_snapshot!("luck_spin_either_way", said(&shown(&spin, &different, 3, Showing::Picked)));
    insta::assert_snapshot!("luck_spin", said(&shown(&spin, &lower, 3, Showing::InARow)));
}

fn said(luck: &Luck) -> String {
    let words = &luck.words;
    let all = [
        &words.headline,
        &words.for_candidate,
        &words.for_baseline,
        &words.chance,
        &words.whole,
        &words.note,
        &words.alternative,
    ];
    all.map(String::as_str).join("\n")
}

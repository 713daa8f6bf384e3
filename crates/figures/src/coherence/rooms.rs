//! The parts of the page beside the answer, told of the same session; and what is true of each.

use super::fact::{Fact, Scope};
use super::halfway::{self, answered, changed_halfway};
use super::intervals::{Decided, Sizes};
use super::sessions::{self, Asked, Kind};
use super::told::Telling;
use super::truth::decision_word;
use judging::Judged;
use judging::analysis::Estimate;
use judging::bet::NoBet;
use judging::claim::{ClaimKind, Claimed, claim, toward};
use judging::feel::OwnSay;
use judging::interval::Interval;
use judging::luck::Showing;
use judging::plan::{FollowRequest, LoggedShot};
use judging::typical::Beside;
use judging::verdict::DecisionKind;
use serde_json::json;
use session::measure::Margin;
use session::plan::PlanRequest;
use session::{Order, Session};
use std::collections::BTreeSet;
use telling::bet::bet;
use telling::cause::{CauseRequest, cause};
use telling::check::CheckRequest;
use telling::claim::ClaimRequest;
use telling::consistency::{ConsistencyRequest, consistency};
use telling::feel::{FeelRequest, feel};
use telling::landing::{LandingRequest, landing};
use telling::luck::{LuckRequest, luck};
use telling::plan::{follow, plan};
use telling::potential::{PotentialRequest, potential};
use telling::second::second;
use telling::together::{TogetherRequest, together};
use telling::typical::typical;
use text::Voice;

/// Every how many sessions a part is told: what costs more is told less often.
const EVERY: Every = Every {
    bet: 2,
    typical: 2,
    claim: 3,
    feel: 5,
    second: 4,
    together: 7,
    luck: 11,
    landing: 11,
    cause: 11,
    consistency: 11,
    plan: 47,
    potential: 101,
};

struct Every {
    bet: u64,
    typical: u64,
    claim: u64,
    feel: u64,
    second: u64,
    together: u64,
    luck: u64,
    landing: u64,
    cause: u64,
    consistency: u64,
    plan: u64,
    potential: u64,
}

/// Tells every part that has something to say of a session.
pub(crate) fn tell(number: u64, asked: &Asked, judged: &Judged<'_>, telling: &mut Telling<'_>) {
    let due = |every: u64| due(number, every);
    let (session, question) = (&asked.session, &asked.question);
    let headline = judged.headline().map_or(Scope::Session, |judgment| Scope::Pair(judgment.candidate, 0));
    let candidate = judged.headline().map_or(1, |judgment| judgment.candidate);
    let baseline = question.baseline;
    if due(EVERY.bet) {
        let request = CheckRequest { session: session.clone(), question: question.clone() };
        telling.part("bet", &headline, |voice| bet(&request, voice).ok().map(|told| told.words));
    }
    if due(EVERY.typical) {
        let request = CheckRequest { session: session.clone(), question: question.clone() };
        telling.part("typical", &headline, |voice| typical(&request, voice).ok().map(|told| told.words));
    }
    if due(EVERY.claim) {
        let request =
            ClaimRequest { claimed: claimed(number), session: session.clone(), question: question.clone() };
        telling.part("claim", &headline, |voice| {
            telling::claim::claim(&request, voice).ok().map(|told| told.words)
        });
    }
    if due(EVERY.feel) {
        let say = OwnSay { straighter: Some(baseline), longer: Some(candidate), ..OwnSay::default() };
        let request = FeelRequest { session: session.clone(), question: question.clone(), say };
        telling.part("feel", &headline, |voice| feel(&request, voice).ok());
    }
    if due(EVERY.second) {
        let request = changed_halfway(asked, judged);
        telling.part("second", &Scope::Session, |voice| second(&request, voice).ok());
    }
    if due(EVERY.together) {
        let request = TogetherRequest { sessions: days(number, session), question: question.clone() };
        telling.part("together", &Scope::Session, |voice| {
            let pair = together(&request, voice).ok()?.into_iter().next()?;
            Some(json!({ "days": { "headline": pair.headline, "detail": pair.detail } }))
        });
    }
    if due(EVERY.luck) {
        let showing = if number.is_multiple_of(2) { Showing::InARow } else { Showing::Picked };
        let request =
            LuckRequest { session: session.clone(), question: question.clone(), shown: None, showing };
        telling.part("luck", &headline, |voice| luck(&request, voice).ok().map(|told| told.words));
    }
    if due(EVERY.landing) {
        let (session, candidate) = (session.clone(), Some(candidate));
        let request = LandingRequest {
            session,
            baseline,
            candidate,
            fairway: None,
            aim: None,
            stopping: Some(question.stopping.clone()),
            hand: None,
        };
        telling.part("landing", &Scope::Session, |voice| landing(&request, voice).ok());
    }
    if due(EVERY.cause) {
        let request = CauseRequest { session: session.clone(), baseline, candidate, hand: None };
        telling.part("cause", &Scope::Session, |voice| cause(&request, voice).ok());
    }
    if due(EVERY.consistency) {
        let request = ConsistencyRequest { session: session.clone() };
        telling.part("consistency", &Scope::Session, |voice| consistency(&request, voice).ok());
    }
    if due(EVERY.potential) {
        let request = PotentialRequest { session: session.clone(), baseline, map_for: None };
        telling.part("potential", &Scope::Session, |voice| potential(&request, voice).ok());
    }
    if due(EVERY.plan) {
        let request = a_plan(number, asked);
        telling.part("plan", &Scope::Session, |voice| plan(&request, voice).ok());
        if let Some(request) = under_way(number, request) {
            telling.part("log", &Scope::Session, |voice| {
                follow(&request, voice).ok().map(|told| json!({ "words": told.words }))
            });
        }
    }
}

/// What is true of the parts.
pub(crate) fn truths(number: u64, asked: &Asked, judged: &Judged<'_>) -> Vec<Fact> {
    let mut facts = Vec::new();
    let headline = judged.headline().map_or(Scope::Session, |judgment| Scope::Pair(judgment.candidate, 0));
    let mut add = |scope: &Scope, key, value: &str| facts.push(Fact::truth(scope.clone(), key, value));
    match judging::bet::bet(judged) {
        Ok(bet) => {
            add(&headline, "is.bet", "made");
            let over = if bet.differs.is_some() { "what_was_said" } else { "all_three" };
            add(&headline, "is.bet_over", over);
            if bet.drift_points_there && due(number, EVERY.bet) {
                add(&Scope::Session, "is.drift", "behind_the_bet");
            }
        }
        Err(why) => {
            add(&headline, "is.bet", "none");
            add(&headline, "is.bet_why", no_bet_word(why));
        }
    }
    match judging::typical::typical(judged) {
        Ok(typical) => {
            add(&headline, "is.typical", decision_word(typical.decision.kind));
            add(&headline, "is.typical_beside", beside_word(typical.beside));
            add(&Scope::Session, "is.typical_told", "yes");
            if typical.mishits.is_some_and(|mishits| !mishits.told_apart) {
                add(&headline, "is.bad_shots", "by_luck");
            }
        }
        Err(_) => {
            add(&headline, "is.typical", "none");
            add(&Scope::Session, "is.typical_told", "no");
        }
    }
    if let Ok(claim) = claim(&claimed(number), judged) {
        add(
            &headline,
            "is.claim",
            match claim.kind {
                ClaimKind::Supported => "supported",
                ClaimKind::AtLeast => "at_least",
                ClaimKind::TooSmall => "too_small",
                ClaimKind::Contradicted => "contradicted",
                ClaimKind::NotSettled => "not_settled",
                ClaimKind::NoRetest => "no_retest",
            },
        );
        add(&headline, "is.hit_again", if is_hit_again(&asked.session) { "yes" } else { "no" });
        let margin = judged.headline().and_then(|judgment| judgment.margin).map(|margin| margin.value());
        if margin.is_some_and(|margin| claim.claimed.abs() <= margin) {
            add(&headline, "is.claim_size", "below_the_margin");
        }
        if let Some(retest) = claim.retest {
            let toward = toward(&retest, claim.claimed);
            add(&headline, "is.gain", if toward.low > 0.0 { "some" } else { "perhaps_none" });
            if toward.low >= claim.claimed.abs() {
                add(&headline, "is.promise", "shown_whole");
            }
        }
    }
    facts.extend(halfway::truths(asked, judged));
    if due(number, EVERY.landing) {
        facts.extend(landing_compared(asked, judged));
    }
    facts
}

/// Whether two clubs are there, in shots or in averages.
fn is_hit_again(session: &Session) -> bool {
    let of_shots = session.shots.iter().map(|shot| shot.build);
    let of_averages = session.summaries.iter().map(|average| average.build);
    of_shots.chain(of_averages).collect::<BTreeSet<_>>().len() > 1
}

fn beside_word(beside: Beside) -> &'static str {
    match beside {
        Beside::Agree => "agree",
        Beside::OnlyTypical => "only_typical",
        Beside::OnlyAverage => "only_average",
        Beside::Opposite => "opposite",
        Beside::SameGapLessSurely => "same_gap_less_surely",
        Beside::OneIsTheSame => "one_is_the_same",
    }
}

fn no_bet_word(why: NoBet) -> &'static str {
    match why {
        NoBet::NothingCompared => "nothing_compared",
        NoBet::Scatter => "scatter",
        NoBet::NearerZero => "nearer_zero",
        NoBet::Averages => "averages",
        NoBet::OrderUnknown => "order_unknown",
        NoBet::DependsOnLeftOut => "depends_on_left_out",
        NoBet::ValueInDoubt => "value_in_doubt",
        NoBet::NextToNothing => "next_to_nothing",
    }
}

/// Which of the clubs told of a sentence compares: their places among the landings.
fn landing_compared(asked: &Asked, judged: &Judged<'_>) -> Vec<Fact> {
    let candidate = judged.headline().map(|judgment| judgment.candidate);
    let strip = judging::landing::Strip { fairway: 30.0, aim: 0.0 };
    let told = judging::landing::landing(
        &asked.session,
        asked.question.baseline,
        candidate,
        strip,
        &asked.question.stopping,
    );
    let Some((facts, pair)) = told.ok().and_then(|facts| facts.ground.pair.map(|pair| (facts, pair))) else {
        return Vec::new();
    };
    let rounds = |build: usize| -> Vec<u32> {
        let own = asked.session.shots.iter().filter(move |shot| shot.build == build);
        own.filter_map(|shot| shot.round).collect()
    };
    let shared = rounds(pair.baseline).iter().filter(|round| rounds(pair.candidate).contains(round)).count();
    let order = match asked.session.order {
        Order::Unknown => "not-known",
        Order::Interleaved if facts.ground.long_turns => "long-turns",
        Order::Interleaved if shared > 0 => "in-turn",
        Order::Interleaved | Order::Blocked => "one-after-the-other",
    };
    let of_pair = |build: usize| build == pair.baseline || build == pair.candidate;
    let places = facts.builds.iter().enumerate().filter(|(_, one)| of_pair(one.build));
    let order = Fact::truth(Scope::Session, "is.landing_order", order);
    places
        .map(|(at, _)| Fact::truth(Scope::Part(format!("builds[{at}]")), "is.landing_compared", "yes"))
        .chain([order])
        .collect()
}

/// The sizes behind what is said of the parts.
pub(crate) fn sizes(number: u64, asked: &Asked, judged: &Judged<'_>, voice: &Voice) -> Vec<(Scope, Sizes)> {
    let measure = &asked.question.measure;
    // Where scatter was asked for, its margin is a ratio and says nothing of averages: the usual one stands in.
    let usual = || measure.usual().map(|known| Margin::Difference(known.facts().margin));
    let of_averages = |margin: &Margin| matches!(margin, Margin::Difference(_));
    let margin = asked.question.margin_on(measure).filter(of_averages).or_else(usual);
    let decided = |kind, gap, different: &Interval, same: &Interval| {
        let (different, same) = (*different, *same);
        let decided_by_same = kind == DecisionKind::Same;
        Sizes::of(
            &Decided { measure, kind, gap, different, same, decided_by_same, margin, is_ratio: false },
            voice,
        )
    };
    let mut sizes = Vec::new();
    if let Ok(told) = judging::second::second(&changed_halfway(asked, judged)) {
        let of_model = |effect: &judging::second::Effect| {
            decided(effect.decision.kind, effect.value, &effect.range, &effect.range)
        };
        let of_answer = answered(judged).and_then(|judgment| judgment.estimate.as_ref());
        let of_club = of_answer.map_or_else(
            || of_model(&told.build),
            |estimate| {
                let Estimate { value, decided_by, .. } = estimate;
                decided(told.build.decision.kind, *value, decided_by, decided_by)
            },
        );
        sizes.push((Scope::Part("build".into()), of_club));
        sizes.push((Scope::Part("condition".into()), of_model(&told.condition)));
        sizes.push((Scope::Part("interaction".into()), of_model(&told.interaction)));
    }
    if due(number, EVERY.together) {
        let pairs =
            judging::together::together(&days(number, &asked.session), &asked.question).unwrap_or_default();
        let first = pairs.first().and_then(|pair| Some((pair.combined.as_ref()?, pair.decision?)));
        sizes.extend(first.map(|(days, decision)| {
            // Inside the margin by the interval that says so.
            let by = if decision.is_inside_the_margin() { &days.same } else { &days.different };
            (Scope::Part("days".into()), decided(decision.kind, days.value, by, &days.same))
        }));
    }
    sizes
}

fn due(number: u64, every: u64) -> bool {
    (number / Kind::ALL.len() as u64).is_multiple_of(every)
}

/// A promise of 1 to 20, with or without what it rested on.
fn claimed(number: u64) -> Claimed {
    let turn = number / Kind::ALL.len() as u64;
    let shots = (!turn.is_multiple_of(3)).then_some(5);
    Claimed {
        gain: Some(1.0 + (turn % 20) as f64),
        shots_before: shots,
        shots_after: shots,
        price: turn.is_multiple_of(2).then_some(500.0),
        ..Claimed::default()
    }
}

/// The session and one or two others of its kind.
fn days(number: u64, session: &Session) -> Vec<Session> {
    let kinds = Kind::ALL.len() as u64;
    let others =
        (1..=1 + number / kinds % 2).map(|day| sessions::asked(number + kinds * (1_000 + day)).session);
    std::iter::once(session.clone()).chain(others).collect()
}

fn a_plan(number: u64, asked: &Asked) -> PlanRequest {
    let names = asked.session.builds.iter().map(|build| build.name.clone()).collect();
    let rounds = u32::try_from(number / 18 % 12 + 2).ok();
    PlanRequest { rounds, ..PlanRequest::of(names, asked.session.measures[0].clone()) }
}

/// A plan of which some sets are hit.
fn under_way(number: u64, plan: PlanRequest) -> Option<FollowRequest> {
    let planned = judging::plan::plan(&plan).ok()?;
    let sets = planned.facts.turns.iter().enumerate();
    let all = sets.flat_map(|(turn, set)| (0..set.shots).map(move |_| turn));
    let all: Vec<usize> = all.collect();
    let hit = usize::try_from(number / 18 * 7).ok()? % (all.len() + 1);
    let shot = |turn: &usize| LoggedShot { turn: *turn, values: Default::default(), note: None };
    Some(FollowRequest {
        shots: all[..hit].iter().map(shot).collect(),
        ended: Vec::new(),
        looks: Vec::new(),
        plan,
    })
}

//! What is true of a session and of what was judged of it, worked out from both and from no word.

use super::fact::Value;
use super::fact::{Fact, Scope};
use super::number::Printed;
use judging::analysis::{Method, Rule};
use judging::trust::{Odd, Seen, Weight, has_value_in_doubt, trust};
use judging::verdict::{DecisionKind, Direction, Matters, Nearer, Why};
use judging::{Judged, Judgment};
use session::known::Known;
use session::measure::MeasureId;
use session::names::short_name;
use session::question::{Goal, Stopping, StoppingWord};
use session::{Order, Session};
use std::collections::BTreeSet;

/// Everything that is held against the words.
pub(crate) fn truths(judged: &Judged<'_>) -> Vec<Fact> {
    let mut facts = of_session(judged);
    for (at, judgment) in judged.judgments.iter().enumerate() {
        let scope = scope(judged, at);
        let mut add = |key, value: &str| facts.push(Fact::truth(scope.clone(), key, value));
        of_judgment(judged.settled.session, judgment, &mut add);
        if let Some(needed) = judgment.estimate.as_ref().and_then(|estimate| estimate.shots_to_settle) {
            let needed = Value::Number(Printed::whole(f64::from(needed)));
            facts.push(Fact { value: needed, ..Fact::truth(scope, "is.shots_to_settle", "") });
        }
    }
    facts
}

/// What the judgment at a place is of.
pub(crate) fn scope(judged: &Judged<'_>, at: usize) -> Scope {
    let per_measure = judged.settled.candidates.len().max(1);
    Scope::Pair(judged.judgments[at].candidate, at / per_measure)
}

fn of_session(judged: &Judged<'_>) -> Vec<Fact> {
    let session = judged.settled.session;
    let mut facts = Vec::new();
    let mut add = |key, value: &str| facts.push(Fact::truth(Scope::Session, key, value));
    let measured = |known: Known| session.measure_index(&known.into()).is_some();
    add("is.club_speed", if measured(Known::ClubSpeed) { "measured" } else { "not_measured" });
    let strike = measured(Known::StrikeHeight) || measured(Known::StrikeOffset);
    add("is.strike", if strike { "measured" } else { "not_measured" });
    let some_out = session.shots.iter().any(|shot| shot.left_out.is_some());
    add("is.left_out", if some_out { "some" } else { "none" });
    add(
        "is.number_fixed",
        match judged.settled.question.stopping {
            Stopping::Word(StoppingWord::Fixed) => "said",
            Stopping::Word(StoppingWord::NotFixed) => "said_not",
            Stopping::Word(StoppingWord::Unknown) => "not_said",
            Stopping::Planned { .. } => "planned",
        },
    );
    add("is.clubs_tried", if judged.settled.candidates.len() > 1 { "several" } else { "one" });
    add("is.values", if has_wild_value(session) { "implausible" } else { "plausible" });
    let Some(headline) = judged.headline() else { return facts };
    add("is.first_in_rounds", if one_club_first(session, headline) { "always_one_club" } else { "both" });
    add(
        "is.plan",
        match headline.levels.rule {
            Rule::Planned { round, planned } if round < planned => "under_way",
            Rule::Planned { .. } => "finished",
            Rule::Open if matches!(judged.settled.question.stopping, Stopping::Planned { .. }) => "not_kept",
            Rule::Fixed | Rule::Open => "none",
        },
    );
    if let Rule::Planned { round, planned } = headline.levels.rule {
        // A look that decides ends the test.
        if round < planned && headline.decision.kind == DecisionKind::CannotTell {
            add("is.next", "go_on");
        }
        let left = Value::Number(Printed::whole(f64::from(planned - round)));
        facts.push(Fact { value: left, ..Fact::truth(Scope::Session, "is.rounds_left", "") });
    }
    let mut add = |key, value: &str| facts.push(Fact::truth(Scope::Session, key, value));
    let pair = [headline.baseline, headline.candidate];
    let in_doubt = has_value_in_doubt(session, &headline.measure, pair);
    if headline.facts.says_next_to_nothing && !in_doubt {
        add("is.asked_says_little", "yes");
    }
    let cannot_tell = headline.decision.kind == DecisionKind::CannotTell;
    if cannot_tell && headline.facts.only_whole_laps.is_some() && !in_doubt {
        add("is.asked_only_whole_laps", "yes");
    }
    if headline.facts.scatter_is_assumed {
        add("is.asked_taken_scatter", "assumed");
    }
    let is_big =
        headline.decision.kind == DecisionKind::Different && headline.decision.matters != Some(Matters::No);
    let method = headline.estimate.as_ref().map(|estimate| estimate.method);
    // Scatter that was hit in turn is compared as it lies, and otherwise is a hint as averages are.
    let is_scatter_in_blocks = method == Some(Method::SpreadRatio) && headline.shared_rounds == 0;
    if is_big
        && (is_scatter_in_blocks || !matches!(method, None | Some(Method::Rounds | Method::SpreadRatio)))
    {
        add("is.proof", "not_in_turn");
    }
    // A club that is worse leaves nothing open for the choice between the others.
    let is_settled = headline.decision.kind == DecisionKind::Same
        || headline.decision.matters == Some(Matters::No)
        || is_worse(headline);
    add("is.question", if is_settled { "settled" } else { "open" });
    let by_laps = matches!(method, Some(Method::Rounds | Method::SpreadRatio) | None);
    add("is.asked_compared", if by_laps { "as_hit" } else { "not_in_turn" });
    let removals = judging::fragile::removals_to_flip(judged);
    add("is.hangs", if removals.is_some() { "on_few_shots" } else { "on_many" });
    let seen = trust(judged, removals);
    let serious = seen.iter().any(|one| one.weight() == Weight::Serious);
    add("is.serious", if serious { "some" } else { "none" });
    if !seen.iter().any(|one| matches!(one, Seen::Moved { .. })) {
        add("is.moved", "no");
    }
    if !seen.iter().any(|one| matches!(one, Seen::OddValue { .. })) {
        add("is.odd", "none");
    }
    let in_doubt = |one: &Seen| {
        let Seen::OddValue { measure, because, .. } = one else { return false };
        *measure == headline.measure && !matches!(because, Odd::MovesTheAnswer { .. })
    };
    if seen.iter().any(in_doubt) {
        let asked = Scope::Pair(headline.candidate, 0);
        facts.push(Fact::truth(asked, "is.doubt", "yes"));
    }
    let mut add = |key, value: &str| facts.push(Fact::truth(Scope::Session, key, value));
    if let Some(gap) = mean_carry_gap(judged, headline) {
        add("is.felt_club", if gap > 0.0 { "longer" } else { "shorter" });
    }
    if matches!(headline.goal, Goal::Different | Goal::NearerZero) {
        add("is.better", "not_said");
    }
    if headline.goal == Goal::Tighter {
        add("is.room", "none");
    }
    for one in &seen {
        match one {
            Seen::NumbersMissing { .. } => add("is.numbers", "missing"),
            Seen::ColdStart { .. } => add("is.cold_start", "yes"),
            Seen::LongTurns { .. } => add("is.turns", "long"),
            Seen::InStreaks { .. } => add("is.turns", "in_streaks"),
            Seen::SummaryDisagrees { .. } => add("is.printed_average", "disagrees"),
            Seen::FewShotsDecide { .. } => add("is.few_decide", "yes"),
            Seen::Moved { .. } => add("is.moved", "yes"),
            _ => {}
        }
    }
    facts
}

/// By how much the candidate carries farther than the baseline, of two clubs, by plain averages.
fn mean_carry_gap(judged: &Judged<'_>, headline: &Judgment) -> Option<f64> {
    let session = judged.settled.session;
    let carry = session.measure_index(&Known::Carry.into()).filter(|_| session.builds.len() == 2)?;
    let mean = |build: usize| {
        let own = session.shots.iter().filter(|shot| shot.build == build);
        let values: Vec<f64> = own.filter_map(|shot| shot.values.get(carry).copied().flatten()).collect();
        (!values.is_empty()).then(|| values.iter().sum::<f64>() / values.len() as f64)
    };
    let gap = mean(headline.candidate)? - mean(headline.baseline)?;
    // Averages within laps may lie the other way by a little.
    (gap.abs() > 4.0).then_some(gap)
}

fn is_worse(judgment: &Judgment) -> bool {
    let worse = match judgment.goal {
        Goal::Higher => Direction::Lower,
        Goal::Lower | Goal::Tighter => Direction::Higher,
        Goal::NearerZero => return judgment.decision.nearer == Some(Nearer::Baseline),
        Goal::Different => return false,
    };
    judgment.decision.direction == Some(worse)
}

fn of_judgment(session: &Session, judgment: &Judgment, add: &mut impl FnMut(&'static str, &str)) {
    let decision = &judgment.decision;
    add("is.decision", decision_word(decision.kind));
    let how_far = [Known::Carry, Known::Total].iter().any(|known| judgment.measure == *known);
    if how_far && decision.kind == DecisionKind::CannotTell {
        add("is.how_far", "open");
    }
    if let Some(matters) = decision.matters {
        add(
            "is.matters",
            match matters {
                Matters::Yes => "yes",
                Matters::Maybe => "maybe",
                Matters::No => "no",
            },
        );
    }
    if let Some(direction) = decision.direction {
        add("is.direction", if direction == Direction::Higher { "higher" } else { "lower" });
    }
    if let Some(why) = decision.why {
        add("is.why", why_word(why));
    }
    if judgment.facts.says_next_to_nothing
        && !has_value_in_doubt(session, &judgment.measure, [judgment.baseline, judgment.candidate])
    {
        add("is.says_little", "yes");
    }
    if judgment.facts.only_whole_laps.is_some() {
        add("is.only_whole_laps", "yes");
    }
    add("is.taken_scatter", if judgment.facts.scatter_is_assumed { "assumed" } else { "seen" });
    let has_shots = |build| session.shots.iter().any(|shot| shot.build == build);
    let only_averages = !has_shots(judgment.baseline) || !has_shots(judgment.candidate);
    add("is.shots", if only_averages { "averages" } else { "shots" });
    add(
        "is.order",
        match session.order {
            _ if only_averages => "not_known",
            _ if judgment.shared_rounds > 0 => "in_turn",
            Order::Unknown => "not_known",
            Order::Blocked | Order::Interleaved => "one_after_the_other",
        },
    );
    if let Some(aside) = &judgment.facts.set_aside {
        let depends = aside.with_all.disagrees_with(&aside.without);
        add("is.depends", if depends { "yes" } else { "no" });
    }
    if !only_averages {
        let some_or_none = |scatters| if scatters { "some" } else { "none" };
        let pair = [judgment.baseline, judgment.candidate];
        add("is.scatter", some_or_none(scatters(session, &judgment.measure, &pair)));
        let of_each = pair.iter().all(|club| scatters(session, &judgment.measure, &[*club]));
        add("is.scatter_of_each", some_or_none(of_each));
    }
    // A measure of the golfer's own, and clubs that were not compared within laps: nobody knows what the order did.
    let is_own = judgment.measure.usual().is_none();
    let method = judgment.estimate.as_ref().map(|estimate| estimate.method);
    if is_own && !matches!(method, None | Some(Method::Rounds | Method::SpreadRatio)) {
        add("is.order_size", "not_known");
    }
    if let Some(estimate) = judgment.estimate.as_ref().filter(|_| judgment.goal != Goal::Tighter) {
        let in_turn = estimate.method == Method::Rounds;
        add("is.compared", if in_turn { "in_turn" } else { "not_in_turn" });
    }
    if judgment.goal == Goal::NearerZero {
        add(
            "is.nearer",
            match decision.nearer {
                None => "not_asked",
                Some(Nearer::NotSettled) => "open",
                Some(Nearer::Candidate | Nearer::Baseline) => "settled",
            },
        );
        if let Some(club) = nearer_by_shots(session, judgment) {
            add("is.nearer_club", &club);
        }
    }
}

/// Which of the two averages lies nearer to zero, worked out anew from the shots: |candidate| − |baseline| with a plain
/// interval of 95 %, by the scatter within laps where clubs share them. `none` where it holds zero; nothing without shots.
fn nearer_by_shots(session: &Session, judgment: &Judgment) -> Option<String> {
    const USUAL_95: f64 = 1.96;
    let column = session.measure_index(&judgment.measure)?;
    let of = |club: usize| {
        let own = session.shots.iter().filter(|shot| shot.build == club);
        let in_laps = own.filter_map(|shot| Some((shot.round, shot.values.get(column).copied()??)));
        let shots: Vec<(Option<u32>, f64)> = in_laps.collect();
        let mean = |of: &[f64]| of.iter().sum::<f64>() / of.len() as f64;
        let values: Vec<f64> = shots.iter().map(|(_, value)| *value).collect();
        let (mut squares, mut freedom) = (0.0, 0_usize);
        let laps: BTreeSet<Option<u32>> = shots.iter().map(|(lap, _)| *lap).collect();
        for lap in &laps {
            let set: Vec<f64> = shots.iter().filter(|(of, _)| of == lap).map(|(_, value)| *value).collect();
            squares += set.iter().map(|value| (value - mean(&set)).powi(2)).sum::<f64>();
            freedom += set.len() - 1;
        }
        (freedom > 1).then(|| (mean(&values).abs(), squares / freedom as f64 / values.len() as f64))
    };
    let ((baseline, one), (candidate, other)) = (of(judgment.baseline)?, of(judgment.candidate)?);
    let (apart, half_width) = (candidate - baseline, USUAL_95 * (one + other).sqrt());
    let nearer = match apart {
        _ if apart.abs() <= half_width => return Some("none".into()),
        ..0.0 => judgment.candidate,
        _ => judgment.baseline,
    };
    session.builds.get(nearer).map(|club| short_name(&club.name))
}

/// How the list of pairs calls a decision.
pub(crate) const fn decision_word(kind: DecisionKind) -> &'static str {
    match kind {
        DecisionKind::Different => "different",
        DecisionKind::Same => "same",
        DecisionKind::CannotTell => "cannot_tell",
        DecisionKind::CannotAnswer => "cannot_answer",
    }
}

const fn why_word(why: Why) -> &'static str {
    match why {
        Why::OrderNotAllowedFor => "order_not_allowed_for",
        Why::NoShots => "no_shots",
        Why::OneBuild => "one_build",
        Why::TooFewShots => "too_few_shots",
        Why::NotMeasured => "not_measured",
        Why::CountsMissing => "counts_missing",
        Why::OnlyTheBest => "only_the_best",
        Why::SpreadMissing => "spread_missing",
        Why::OnlyAverages => "only_averages",
        Why::NoScatter => "no_scatter",
        Why::NoScatterInRounds => "no_scatter_in_rounds",
        Why::DependsOnLeftOut => "depends_on_left_out",
    }
}

/// Whether the shots of these clubs have more than one value between them.
fn scatters(session: &Session, measure: &MeasureId, clubs: &[usize]) -> bool {
    let Some(column) = session.measure_index(measure) else { return false };
    let of_clubs = session.shots.iter().filter(|shot| clubs.contains(&shot.build));
    let mut values = of_clubs.filter_map(|shot| shot.values.get(column).copied().flatten());
    let Some(first) = values.next() else { return false };
    values.any(|value| (value - first).abs() > 1e-9)
}

/// Whether the same club began every shared round, of which there are several.
fn one_club_first(session: &Session, judgment: &Judgment) -> bool {
    let pair = [judgment.baseline, judgment.candidate];
    let rounds: Vec<u32> = session.shots.iter().filter_map(|shot| shot.round).collect();
    let last = rounds.iter().copied().max().unwrap_or(0);
    let first_of = |round| {
        let of_round = session.shots.iter().filter(|s| s.round == Some(round) && pair.contains(&s.build));
        let clubs: Vec<usize> = of_round.map(|shot| shot.build).collect();
        let holds_both = pair.iter().all(|club| clubs.contains(club));
        clubs.first().copied().filter(|_| holds_both)
    };
    let firsts: Vec<usize> = (1..=last).filter_map(first_of).collect();
    firsts.len() > 1 && firsts.iter().all(|first| *first == firsts[0])
}

/// Whether some value lies where no shot does.
fn has_wild_value(session: &Session) -> bool {
    session.measures.iter().enumerate().any(|(column, measure)| {
        let Some(known) = measure.known() else { return false };
        let plausible = known.facts().plausible;
        let values = session.shots.iter().filter_map(|shot| shot.values.get(column).copied().flatten());
        values.into_iter().any(|value| value < plausible.low || value > plausible.high)
    })
}

//! What stands over a verdict, in words: each warning says what was seen, what it is worth in the
//! measure's own unit, and what to do.

use crate::both_ways::{figures, in_short};
use crate::case::Case;
use crate::format::number;
use crate::hints::between_the_blocks;
use crate::report::{Ask, Overlay, OverlayKind};
use crate::words::sentences;
use crate::{left_out, odd, trust};
use judging::Judgment;
use judging::analysis::Estimate;
use judging::facts::{HowHit, NumberOfShots, OrderAllowance, RestsOn, SetAside};
use judging::honest_lead::HonestLead;
use judging::trust::Seen;
use judging::verdict::DecisionKind;
use session::Session;
use session::measure::MeasureId;
use session::question::{Goal, Question};
use text::overlay as say;
use text::{Voice, capital};

/// Every warning that applies to the headline, the weightiest first.
pub(crate) fn overlays(
    session: &Session,
    question: &Question,
    judgment: &Judgment,
    lead: Option<&HonestLead>,
    seen: &[Seen],
    bet_is_made: bool,
    voice: &Voice,
) -> Vec<Overlay> {
    let case = Case::of(session, judgment, voice);
    let mut overlays: Vec<Overlay> =
        seen.iter().filter_map(|seen| odd_value(session, seen, &judgment.measure, voice)).collect();
    overlays.extend(seen.iter().filter_map(|seen| moved(&case, session, seen)));
    overlays.extend(left_out(&case));
    if judgment.estimate.is_some() {
        overlays.extend(order_mixed_up(&case, seen));
        overlays.extend(averages_only(&case));
        overlays.extend(looked_at_before(&case));
        overlays.extend(several_builds(&case, lead, bet_is_made));
    }
    overlays.extend(margin_changed(&case, question));
    overlays
}

fn overlay(kind: OverlayKind, headline: String, detail: String) -> Option<Overlay> {
    Some(Overlay { kind, headline, detail, asks: None })
}

fn asking(asks: Ask, overlay: Option<Overlay>) -> Option<Overlay> {
    overlay.map(|overlay| Overlay { asks: Some(asks), ..overlay })
}

fn odd_value(session: &Session, seen: &Seen, asked: &MeasureId, voice: &Voice) -> Option<Overlay> {
    let Seen::OddValue { shot, .. } = seen else { return None };
    let [what, why, next] = odd::sentences(session, seen, asked, voice)?;
    let asks = shot.map(|shot| Ask::Shot { shot });
    Some(Overlay { kind: OverlayKind::OddValue, headline: what, detail: sentences(&[why, next]), asks })
}

fn moved(case: &Case, session: &Session, seen: &Seen) -> Option<Overlay> {
    let Seen::Moved { .. } = seen else { return None };
    let [what, why, next] = trust::sentences(session, &case.subject, seen, case.has_a_slip());
    overlay(OverlayKind::Moved, what, sentences(&[why, next]))
}

fn left_out(case: &Case) -> Option<Overlay> {
    let (voice, set_aside) = (case.voice, case.judgment.facts.set_aside.as_ref()?);
    let counted = left_out::of_both(case, set_aside);
    let SetAside { with_all, without, .. } = set_aside;
    let detail = match (&case.judgment.estimate, &set_aside.estimate_without) {
        // Both answers stand in the detail of one that depends on them.
        _ if with_all.disagrees_with(without) => say::answer_hangs_on_few(voice),
        // Ends that say next to nothing are not printed.
        _ if case.says_next_to_nothing() => say::counts_them_all_the_same(voice),
        (Some(every), Some(rest)) => {
            let (every, rest) = (figures(case, every), figures(case, rest));
            say::counts_them_too(voice, &in_short(voice, with_all), &every, &rest)
        }
        _ => say::counts_them_all_the_same(voice),
    };
    let slips = match set_aside.slips {
        0 => String::new(),
        slips => say::slips(voice, slips),
    };
    overlay(OverlayKind::LeftOut, say::left_out(voice, &counted), sentences(&[detail, slips]))
}

fn order_mixed_up(case: &Case, trust: &[Seen]) -> Option<Overlay> {
    let (voice, name, facts) = (case.voice, &case.subject.name, &case.judgment.facts);
    if !facts.order_is_mixed_up() || facts.rests_on == RestsOn::Averages {
        return None;
    }
    let (headline, seen) = match facts.order {
        HowHit::InTurn | HowHit::InTurnNotCompared => {
            (say::not_compared_in_turn(voice, &capital(name)), say::why_not_compared(voice, name))
        }
        HowHit::OneAfterTheOther => (
            say::clubs_and_time_mixed_up(voice),
            say::one_after_the_other(voice, &case.baseline, &case.candidate),
        ),
        HowHit::NotKnown => (say::order_not_known(voice), say::order_unknown(voice)),
    };
    let mut detail = vec![seen, between_the_blocks(case)];
    match (facts.order_allowance, case.judgment.estimate.as_ref()) {
        (OrderAllowance::Included, Some(estimate)) => {
            let allowance = case.subject.chosen(estimate.order_allowance);
            // A gap that stands beyond the allowance was told from the order as far as that goes.
            detail.push(if case.judgment.decision.kind == DecisionKind::Different {
                say::order_could_move(voice, &case.subject.the(), &allowance)
            } else {
                say::order_could_move_unseen(voice, &case.subject.the(), &allowance)
            });
        }
        (_, Some(estimate)) if estimate.order_allowance > 0.0 => detail.push(order_guessed(case, estimate)),
        _ => detail.push(say::order_could_move_unknown(voice, &case.subject.the())),
    }
    let is_allowed_for = facts.order_allowance == OrderAllowance::Included;
    if is_allowed_for && case.judgment.plain_averages_differ() && facts.order != HowHit::InTurnNotCompared {
        let (drift, allowance) = (case.judgment.drift_to_explain(), case.judgment.order_allowance());
        let usual = case.judgment.levels.is_usual();
        if case.judgment.decision.kind != DecisionKind::Different {
            detail.push(say::plain_averages_differ(case.voice));
        }
        if case.judgment.order_hides_it() {
            // A drift that is enough is not said smaller than it is, nor as large as what is allowed for where it is less.
            let size = case.subject.at_most_beside(drift, allowance);
            detail.push(say::small_drift_explains(case.voice, usual, &size));
        } else if drift > 0.0 {
            let size = case.subject.at_least_beside(drift, allowance);
            let found = trust.iter().find_map(|seen| match seen {
                Seen::Drift { pushes: Some(pushes), .. } if pushes.leaves_luck => Some(pushes.by),
                _ => None,
            });
            detail.push(match found {
                Some(found) => {
                    let found = case.subject.at_least_beside(found, drift);
                    say::drift_was_found(case.voice, usual, &size, &found)
                }
                None => say::drift_would_explain(case.voice, usual, &size),
            });
        }
    }
    let told = overlay(OverlayKind::OrderMixedUp, headline, sentences(&detail));
    if facts.order == HowHit::NotKnown { asking(Ask::Order, told) } else { told }
}

/// Of a measure that nobody knows the drift of.
fn order_guessed(case: &Case, estimate: &Estimate) -> String {
    say::order_guessed(case.voice, &case.subject.the(), &case.subject.amount(estimate.order_allowance))
}

fn averages_only(case: &Case) -> Option<Overlay> {
    let facts = &case.judgment.facts;
    if facts.rests_on != RestsOn::Averages {
        return None;
    }
    let voice = case.voice;
    let mut detail = vec![say::no_single_shots(voice)];
    if let Some(sd) = case.judgment.comparison().and_then(|c| c.assumed_sd) {
        detail.push(say::assumed_to_scatter(voice, &case.subject.chosen(sd)));
    }
    match (facts.order_allowance, case.judgment.estimate.as_ref()) {
        (OrderAllowance::Included, Some(estimate)) => {
            detail.push(say::order_could_move(
                voice,
                &case.subject.the(),
                &case.subject.chosen(estimate.order_allowance),
            ));
        }
        _ => detail.push(say::order_could_move_unknown(voice, &case.subject.the())),
    }
    overlay(
        OverlayKind::AveragesOnly,
        say::only_averages(voice, facts.scatter_is_assumed),
        sentences(&detail),
    )
}

fn looked_at_before(case: &Case) -> Option<Overlay> {
    let (kind, voice) = (OverlayKind::LookedAtBefore, case.voice);
    let theirs = voice.is_of_the_sender();
    let held = match (case.judgment.candidates, case.judgment.decision.kind) {
        (2.., _) => say::Held::Together,
        (_, DecisionKind::Same) => say::Held::Alike,
        _ => say::Held::Alone,
    };
    match case.judgment.facts.number {
        NumberOfShots::SaidFixed => None,
        NumberOfShots::Planned { round, planned } if round >= planned => None,
        NumberOfShots::Planned { round, planned } => overlay(
            kind,
            say::looked_early(voice, &round.to_string(), &planned.to_string()),
            say::early_is_stricter(voice, case.judgment.decision.kind != DecisionKind::Same),
        ),
        NumberOfShots::SaidNotFixed => {
            overlay(kind, say::not_fixed(voice), say::open_is_stricter(voice, held))
        }
        NumberOfShots::NotSaid => asking(
            Ask::NumberOfShots,
            overlay(kind, say::fixed_not_said(voice, theirs), say::not_said_is_stricter(voice, theirs, held)),
        ),
        NumberOfShots::NotOfThePlan { rounds, planned } => overlay(
            kind,
            say::not_of_the_plan(voice, rounds as usize, &planned.to_string()),
            say::open_is_stricter(voice, held),
        ),
    }
}

/// What picking among several does. What is left of a lead is guessed once: by the bet, where there is one.
fn several_builds(case: &Case, lead: Option<&HonestLead>, bet_is_made: bool) -> Option<Overlay> {
    let tried = case.judgment.candidates;
    if tried < 2 {
        return None;
    }
    let amount = |size: f64| case.subject.amount(size);
    let guess = |lead: &HonestLead| {
        let (shown, honest, more) = (amount(lead.shown), amount(lead.honest), is_beyond_luck(lead));
        say::honest_lead(case.voice, &case.candidate, &shown, more, &honest)
    };
    let mut detail = Vec::new();
    // Where any difference counts none is the best, and where nearer to zero is better a gap is no lead: nobody leads.
    if matches!(case.judgment.goal, Goal::Different | Goal::NearerZero) {
        detail.push(say::one_of_several(case.voice));
        detail.extend(lead.filter(|lead| !bet_is_made && is_beyond_luck(lead)).map(guess));
    } else {
        detail.push(say::best_of_several(case.voice));
        if let Some(lead) = lead {
            detail.push(say::best_by_luck(case.voice, &amount(lead.by_luck)));
            detail.push(if bet_is_made {
                say::lead_shown(case.voice, &case.candidate, &amount(lead.shown), is_beyond_luck(lead))
            } else {
                guess(lead)
            });
        }
    }
    let headline = say::clubs_held_against(case.voice, tried, &case.baseline);
    overlay(OverlayKind::SeveralBuilds, headline, sentences(&detail))
}

fn is_beyond_luck(lead: &HonestLead) -> bool {
    lead.shown.abs() > lead.by_luck
}

fn margin_changed(case: &Case, question: &Question) -> Option<Overlay> {
    let (first, now) = (question.first_margin?, case.judgment.margin?.value());
    if (first - now).abs() < 1e-9 {
        return None;
    }
    // A margin of scatter is a ratio, and set in hundredths more.
    let told = |margin: f64| match case.judgment.goal {
        Goal::Tighter => format!("{} %", number(case.voice, (margin - 1.0) * 100.0, 0)),
        _ => case.subject.chosen(margin),
    };
    let detail = say::margin_first_and_now(case.voice, &told(first), &told(now));
    // Where these shots give no answer none was seen before.
    let answered = case.judgment.estimate.is_some();
    overlay(OverlayKind::MarginChanged, say::margin_changed(case.voice, answered), detail)
}

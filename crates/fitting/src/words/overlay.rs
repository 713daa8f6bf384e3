//! What stands over a verdict, in words: each warning says what was seen, what it is worth in the
//! measure's own unit, and what to do.

use super::case::{Case, sentences};
use super::format::number;
use crate::analysis::{Estimate, Method, Rule};
use crate::honest_lead::HonestLead;
use crate::judge::Judgment;
use crate::question::{Goal, Question};
use crate::report::{Overlay, OverlayKind};
use crate::session::{Order, Session};
use crate::verdict::{Decision, DecisionKind};
use text::overlay as say;

/// Every warning that applies to the headline, the weightiest first.
pub(crate) fn overlays(
    session: &Session,
    question: &Question,
    judgment: &Judgment,
    lead: Option<&HonestLead>,
) -> Vec<Overlay> {
    let case = Case::of(session, judgment);
    let mut overlays = Vec::new();
    overlays.extend(left_out(&case));
    if let Some(estimate) = &judgment.estimate {
        overlays.extend(order_mixed_up(&case, session.order, estimate));
        overlays.extend(averages_only(&case, estimate));
        overlays.extend(looked_at_before(&case));
        overlays.extend(several_builds(&case, lead));
    }
    overlays.extend(margin_changed(&case, question));
    overlays
}

fn overlay(kind: OverlayKind, headline: String, detail: String) -> Option<Overlay> {
    Some(Overlay { kind, headline, detail })
}

fn left_out(case: &Case) -> Option<Overlay> {
    let judgment = case.judgment;
    if judgment.left_out == 0 {
        return None;
    }
    let detail = if judgment.with_all.disagrees_with(&judgment.without_left_out) {
        say::answer_hangs_on_few(&in_short(&judgment.with_all), &in_short(&judgment.without_left_out))
    } else {
        say::counts_them_too()
    };
    overlay(OverlayKind::LeftOut, say::left_out(judgment.left_out), detail)
}

/// A decision for the middle of a sentence.
fn in_short(decision: &Decision) -> String {
    match decision.kind {
        DecisionKind::Different => say::short_different(),
        DecisionKind::Same => say::short_same(),
        DecisionKind::CannotTell => say::short_cannot_tell(),
        DecisionKind::CannotAnswer => say::short_cannot_answer(),
    }
}

fn order_mixed_up(case: &Case, order: Order, estimate: &Estimate) -> Option<Overlay> {
    if estimate.method != Method::WelchWithAllowance {
        return None;
    }
    let mut detail = vec![if order == Order::Unknown {
        say::order_unknown()
    } else {
        say::one_after_the_other(&case.baseline, &case.candidate)
    }];
    if estimate.order_allowance > 0.0 {
        let allowance = case.subject.chosen(estimate.order_allowance);
        detail.push(say::order_could_move_unseen(&case.subject.name, &allowance));
    }
    if case.judgment.plain_averages_differ() {
        let drift = case.judgment.drift_to_explain();
        let size = case.subject.amount(drift);
        detail.push(say::plain_averages_differ());
        if case.judgment.order_hides_it() {
            detail.push(say::small_drift_explains(&size));
        } else if drift > 0.0 {
            detail.push(say::drift_would_explain(&size));
        }
    }
    overlay(OverlayKind::OrderMixedUp, say::clubs_and_time_mixed_up(), sentences(&detail))
}

fn averages_only(case: &Case, estimate: &Estimate) -> Option<Overlay> {
    if !matches!(estimate.method, Method::SummaryWithAllowance | Method::SummaryAssumedSpread) {
        return None;
    }
    let mut detail = vec![say::no_single_shots()];
    if let Some(sd) = case.judgment.comparison().and_then(|c| c.assumed_sd) {
        detail.push(say::assumed_to_scatter(&case.subject.chosen(sd)));
    }
    if estimate.order_allowance > 0.0 {
        let allowance = case.subject.chosen(estimate.order_allowance);
        detail.push(say::order_could_move(&case.subject.name, &allowance));
    }
    overlay(OverlayKind::AveragesOnly, say::only_averages(), sentences(&detail))
}

fn looked_at_before(case: &Case) -> Option<Overlay> {
    let kind = OverlayKind::LookedAtBefore;
    match case.judgment.levels.rule {
        Rule::Planned { round, planned } if round < planned => overlay(
            kind,
            say::looked_early(&round.to_string(), &planned.to_string()),
            say::early_is_stricter(),
        ),
        Rule::Fixed | Rule::Planned { .. } => None,
        Rule::Open => overlay(kind, say::not_fixed(), say::open_is_stricter()),
    }
}

fn several_builds(case: &Case, lead: Option<&HonestLead>) -> Option<Overlay> {
    let tried = case.judgment.candidates;
    if tried < 2 {
        return None;
    }
    let mut detail = vec![say::best_of_several()];
    if let Some(lead) = lead {
        let amount = |size: f64| case.subject.amount(size);
        detail.push(say::best_by_luck(&amount(lead.by_luck)));
        detail.push(say::honest_lead(&case.candidate, &amount(lead.shown), &amount(lead.honest)));
    }
    let headline = say::clubs_held_against(tried, &case.baseline);
    overlay(OverlayKind::SeveralBuilds, headline, sentences(&detail))
}

fn margin_changed(case: &Case, question: &Question) -> Option<Overlay> {
    let (first, now) = (question.first_margin?, case.judgment.margin?);
    if (first - now).abs() < 1e-9 {
        return None;
    }
    // A margin of scatter is a ratio, and set in hundredths more.
    let told = |margin: f64| match case.judgment.goal {
        Goal::Tighter => format!("{} %", number((margin - 1.0) * 100.0, 0)),
        _ => case.subject.chosen(margin),
    };
    let detail = say::margin_first_and_now(&told(first), &told(now));
    overlay(OverlayKind::MarginChanged, say::margin_changed(), detail)
}

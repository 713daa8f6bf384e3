//! What stands over a verdict, in words: each warning says what was seen, what it is worth in the
//! measure's own unit, and what to do.

use crate::case::{Case, sentences};
use crate::format::number;
use crate::report::{Overlay, OverlayKind};
use judging::Judgment;
use judging::analysis::{Estimate, Method, Rule};
use judging::honest_lead::HonestLead;
use judging::verdict::{Decision, DecisionKind};
use session::question::{Goal, Question};
use session::{Order, Session};
use text::Voice;
use text::overlay as say;

/// Every warning that applies to the headline, the weightiest first.
pub(crate) fn overlays(
    session: &Session,
    question: &Question,
    judgment: &Judgment,
    lead: Option<&HonestLead>,
    voice: &Voice,
) -> Vec<Overlay> {
    let case = Case::of(session, judgment, voice);
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
    let (judgment, voice) = (case.judgment, case.voice);
    if judgment.left_out == 0 {
        return None;
    }
    let detail = if judgment.with_all.disagrees_with(&judgment.without_left_out) {
        say::answer_hangs_on_few(
            voice,
            &in_short(voice, &judgment.with_all),
            &in_short(voice, &judgment.without_left_out),
        )
    } else {
        say::counts_them_too(voice)
    };
    overlay(OverlayKind::LeftOut, say::left_out(voice, judgment.left_out), detail)
}

/// A decision for the middle of a sentence.
fn in_short(voice: &Voice, decision: &Decision) -> String {
    match decision.kind {
        DecisionKind::Different => say::short_different(voice),
        DecisionKind::Same => say::short_same(voice),
        DecisionKind::CannotTell => say::short_cannot_tell(voice),
        DecisionKind::CannotAnswer => say::short_cannot_answer(voice),
    }
}

fn order_mixed_up(case: &Case, order: Order, estimate: &Estimate) -> Option<Overlay> {
    if estimate.method != Method::WelchWithAllowance {
        return None;
    }
    let mut detail = vec![if order == Order::Unknown {
        say::order_unknown(case.voice)
    } else {
        say::one_after_the_other(case.voice, &case.baseline, &case.candidate)
    }];
    if estimate.order_allowance > 0.0 {
        let allowance = case.subject.chosen(estimate.order_allowance);
        detail.push(say::order_could_move_unseen(case.voice, &case.subject.name, &allowance));
    }
    if case.judgment.plain_averages_differ() {
        let drift = case.judgment.drift_to_explain();
        let size = case.subject.amount(drift);
        detail.push(say::plain_averages_differ(case.voice));
        if case.judgment.order_hides_it() {
            detail.push(say::small_drift_explains(case.voice, &size));
        } else if drift > 0.0 {
            detail.push(say::drift_would_explain(case.voice, &size));
        }
    }
    overlay(OverlayKind::OrderMixedUp, say::clubs_and_time_mixed_up(case.voice), sentences(&detail))
}

fn averages_only(case: &Case, estimate: &Estimate) -> Option<Overlay> {
    if !matches!(estimate.method, Method::SummaryWithAllowance | Method::SummaryAssumedSpread) {
        return None;
    }
    let mut detail = vec![say::no_single_shots(case.voice)];
    if let Some(sd) = case.judgment.comparison().and_then(|c| c.assumed_sd) {
        detail.push(say::assumed_to_scatter(case.voice, &case.subject.chosen(sd)));
    }
    if estimate.order_allowance > 0.0 {
        let allowance = case.subject.chosen(estimate.order_allowance);
        detail.push(say::order_could_move(case.voice, &case.subject.name, &allowance));
    }
    overlay(OverlayKind::AveragesOnly, say::only_averages(case.voice), sentences(&detail))
}

fn looked_at_before(case: &Case) -> Option<Overlay> {
    let kind = OverlayKind::LookedAtBefore;
    match case.judgment.levels.rule {
        Rule::Planned { round, planned } if round < planned => overlay(
            kind,
            say::looked_early(case.voice, &round.to_string(), &planned.to_string()),
            say::early_is_stricter(case.voice),
        ),
        Rule::Fixed | Rule::Planned { .. } => None,
        Rule::Open => overlay(kind, say::not_fixed(case.voice), say::open_is_stricter(case.voice)),
    }
}

fn several_builds(case: &Case, lead: Option<&HonestLead>) -> Option<Overlay> {
    let tried = case.judgment.candidates;
    if tried < 2 {
        return None;
    }
    let mut detail = vec![say::best_of_several(case.voice)];
    if let Some(lead) = lead {
        let amount = |size: f64| case.subject.amount(size);
        detail.push(say::best_by_luck(case.voice, &amount(lead.by_luck)));
        detail.push(say::honest_lead(case.voice, &case.candidate, &amount(lead.shown), &amount(lead.honest)));
    }
    let headline = say::clubs_held_against(case.voice, tried, &case.baseline);
    overlay(OverlayKind::SeveralBuilds, headline, sentences(&detail))
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
    overlay(OverlayKind::MarginChanged, say::margin_changed(case.voice), detail)
}

//! What stands over a verdict, in words: each warning says what was seen, what it is worth in the
//! measure's own unit, and what to do.

use super::case::Case;
use super::format::{count_of, number, shots};
use crate::analysis::{Estimate, Method, Rule};
use crate::honest_lead::HonestLead;
use crate::judge::Judgment;
use crate::question::{Goal, Question};
use crate::report::{Overlay, OverlayKind};
use crate::session::{Order, Session};
use crate::verdict::{Decision, DecisionKind};

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

fn overlay(kind: OverlayKind, headline: impl Into<String>, detail: impl Into<String>) -> Option<Overlay> {
    Some(Overlay { kind, headline: headline.into(), detail: detail.into() })
}

fn left_out(case: &Case) -> Option<Overlay> {
    let judgment = case.judgment;
    if judgment.left_out == 0 {
        return None;
    }
    let were = if judgment.left_out == 1 { "was" } else { "were" };
    let headline = format!("{} {were} left out.", shots(judgment.left_out));
    let detail = if judgment.with_all.disagrees_with(&judgment.without_left_out) {
        format!(
            "With every shot: {}. Without the shots left out: {}. An answer that hangs on a few shots is no answer \
             yet.",
            in_short(&judgment.with_all),
            in_short(&judgment.without_left_out)
        )
    } else {
        "The answer counts every shot, these too; without them it would be the same.".to_owned()
    };
    overlay(OverlayKind::LeftOut, headline, detail)
}

/// A decision for the middle of a sentence.
fn in_short(decision: &Decision) -> &'static str {
    match decision.kind {
        DecisionKind::Different => "a difference",
        DecisionKind::Same => "the same for your purpose",
        DecisionKind::CannotTell => "cannot tell",
        DecisionKind::CannotAnswer => "no answer possible",
    }
}

fn order_mixed_up(case: &Case, order: Order, estimate: &Estimate) -> Option<Overlay> {
    if estimate.method != Method::WelchWithAllowance {
        return None;
    }
    let mut detail = if order == Order::Unknown {
        "Nobody knows in which order these shots were hit.".to_owned()
    } else {
        format!("{} and {} were hit one after the other, not in turn.", case.baseline, case.candidate)
    };
    if estimate.order_allowance > 0.0 {
        detail.push_str(&format!(
            " Warming up or tiring could move {} by about {}; these shots cannot tell that from the club.",
            case.subject.name,
            case.subject.chosen(estimate.order_allowance)
        ));
    }
    if case.judgment.plain_averages_differ() {
        let drift = case.judgment.drift_to_explain();
        detail.push_str(" Comparing the plain averages would have called this a difference.");
        let size = case.subject.amount(drift);
        if case.judgment.order_hides_it() {
            detail
                .push_str(&format!(" A drift of only {size} from one club to the other would explain that."));
        } else if drift > 0.0 {
            detail.push_str(&format!(
                " It would take a drift of {size} from one club to the other to explain that."
            ));
        }
    }
    overlay(OverlayKind::OrderMixedUp, "Clubs and time are mixed up.", detail)
}

fn averages_only(case: &Case, estimate: &Estimate) -> Option<Overlay> {
    if !matches!(estimate.method, Method::SummaryWithAllowance | Method::SummaryAssumedSpread) {
        return None;
    }
    let mut detail =
        "There are no single shots here, so their order, the bad ones and the scatter cannot be checked."
            .to_owned();
    if let Some(sd) = case.judgment.comparison().and_then(|c| c.assumed_sd) {
        detail.push_str(&format!(
            " No deviation was given, so single shots are taken to scatter by {}, the high end of what is usual.",
            case.subject.chosen(sd)
        ));
    }
    if estimate.order_allowance > 0.0 {
        detail.push_str(&format!(
            " Warming up or tiring could move {} by about {}.",
            case.subject.name,
            case.subject.chosen(estimate.order_allowance)
        ));
    }
    overlay(OverlayKind::AveragesOnly, "Only averages were given.", detail)
}

fn looked_at_before(case: &Case) -> Option<Overlay> {
    match case.judgment.levels.rule {
        Rule::Planned { round, planned } if round < planned => overlay(
            OverlayKind::LookedAtBefore,
            format!("Looked at early: round {round} of {planned}."),
            "An early look must be more convincing than the last one, so the answer is held to a stricter level. A \
             lead seen early usually shrinks.",
        ),
        Rule::Fixed | Rule::Planned { .. } => None,
        Rule::Open => overlay(
            OverlayKind::LookedAtBefore,
            "The number of shots was not fixed before.",
            "Stopping when it looks good makes luck look like proof, so the answer must hold up at 99 in 100 instead \
             of 95. If the number was fixed before the first shot, say so under what counts.",
        ),
    }
}

fn several_builds(case: &Case, lead: Option<&HonestLead>) -> Option<Overlay> {
    let tried = case.judgment.candidates;
    if tried < 2 {
        return None;
    }
    let number = match tried {
        2 => "Two".to_owned(),
        3 => "Three".to_owned(),
        4 => "Four".to_owned(),
        5 => "Five".to_owned(),
        6 => "Six".to_owned(),
        7 => "Seven".to_owned(),
        _ => count_of(tried),
    };
    let mut detail =
        "The best of several looks good by luck alone, so each must be more convincing than if it were the \
                      only one."
            .to_owned();
    if let Some(lead) = lead {
        detail.push_str(&format!(
            " The best of as many equal clubs would lead by about {} without being better.",
            case.subject.amount(lead.by_luck)
        ));
        detail.push_str(&format!(
            " {} shows a gap of {}; with that luck taken out, expect about {}.",
            case.candidate,
            case.subject.amount(lead.shown),
            case.subject.amount(lead.honest)
        ));
    }
    overlay(
        OverlayKind::SeveralBuilds,
        format!("{number} clubs were held against {}.", case.baseline),
        detail,
    )
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
    overlay(
        OverlayKind::MarginChanged,
        "What counts was changed after the answer was seen.",
        format!(
            "It was {} first and is {} now. An answer is worth most under the number that was named before.",
            told(first),
            told(now)
        ),
    )
}

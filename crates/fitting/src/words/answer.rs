//! The sentences of a verdict. They read the decision; they decide nothing.

use super::Words;
use super::case::{Case, capital, sentences};
use super::format::Subject;
use super::spread;
use crate::analysis::{Estimate, Method};
use crate::judge::Judgment;
use crate::measure::MeasureId;
use crate::question::Goal;
use crate::session::Session;
use crate::verdict::{Decision, DecisionKind, Direction, Matters, Why};

pub(super) const CHOOSE_FREELY: &str = "Choose by feel, look or price.";
const SHORT_TEST: &str = "5 rounds of 3 shots with each, hit in turn, would tell club from order.";

/// The sentences for one pair on one measure.
pub(crate) fn words(session: &Session, judgment: &Judgment) -> Words {
    let case = Case::of(session, judgment);
    if judgment.goal == Goal::Tighter
        && let Some(estimate) = &judgment.estimate
    {
        return spread::words(&case, estimate);
    }
    match (judgment.decision.kind, &judgment.estimate) {
        (DecisionKind::CannotAnswer, _) | (_, None) => {
            cannot_answer(judgment.decision.why, &case.subject, &case.counts())
        }
        (DecisionKind::Different, Some(estimate)) => different(&case, estimate),
        (DecisionKind::Same, Some(estimate)) => same(&case, estimate),
        (DecisionKind::CannotTell, Some(estimate)) => cannot_tell(&case, estimate),
    }
}

/// The sentences when there is nothing to hold against the baseline.
pub(crate) fn without_a_pair(session: &Session, measure: &MeasureId, decision: &Decision) -> Words {
    cannot_answer(decision.why, &Subject::of(measure, session), "")
}

fn different(case: &Case, estimate: &Estimate) -> Words {
    let decision = &case.judgment.decision;
    let direction = decision.direction.unwrap_or(Direction::Higher);
    let (does, more, margin) = (case.does(direction), case.more(direction), case.margin());
    let span = case.subject.span(estimate.low, estimate.high, case.judgment.margin);
    let mixed_up = estimate.order_allowance > 0.0;
    let here = if mixed_up { " here, beyond what warming up or tiring usually explains" } else { "" };
    let headline = match decision.matters {
        Some(Matters::Yes) => format!("{does}{here}. Expect {span} {more}; it starts to matter at {margin}."),
        Some(Matters::Maybe) => {
            format!("{does}{here}, by {span}. Whether that reaches the {margin} that matter is not settled.")
        }
        Some(Matters::No) => format!("A real difference, too small to matter: {does}, by {span}."),
        None => format!("{does}{here}, by {span}."),
    };
    let next = match decision.matters {
        Some(Matters::No) => CHOOSE_FREELY.to_owned(),
        _ if mixed_up => {
            format!("The clubs were not hit in turn, so this is a strong hint and no proof. {SHORT_TEST}")
        }
        Some(Matters::Maybe) => case.settle(estimate),
        Some(Matters::Yes) | None => {
            "This holds for these clubs as built, with your swing that day. A second day would show whether \
             it lasts."
                .to_owned()
        }
    };
    let line = match decision.matters {
        Some(Matters::No) => format!("{does}, by {span}: too small to matter."),
        _ => format!("{does}, by {span}."),
    };
    Words {
        headline,
        line,
        detail: sentences(&[case.averages(), nearer_the_line(case), case.luck(estimate)]),
        next,
    }
}

/// For a goal of 'straighter': which of the two averages is nearer the line.
fn nearer_the_line(case: &Case) -> String {
    let numbers = &case.judgment.pair.numbers;
    let (Goal::NearerZero, Some(candidate), Some(baseline)) =
        (case.judgment.goal, numbers.candidate, numbers.baseline)
    else {
        return String::new();
    };
    let nearer = if candidate.mean.abs() < baseline.mean.abs() { &case.candidate } else { &case.baseline };
    format!("On average {nearer} is the nearer to zero.")
}

fn same(case: &Case, estimate: &Estimate) -> Words {
    let margin = case.judgment.margin.unwrap_or(f64::INFINITY);
    let widest = estimate.equivalence.low.abs().max(estimate.equivalence.high.abs());
    let at_most = case.subject.at_most(widest, margin);
    Words {
        headline: format!("For your purpose the same: at most {at_most} apart."),
        line: format!("The same: at most {at_most} apart."),
        detail: sentences(&[
            case.averages(),
            format!("Anything below {} would not matter, and these shots rule out more.", case.margin()),
        ]),
        next: CHOOSE_FREELY.to_owned(),
    }
}

/// When the answer changes with the shots that were set aside.
pub(super) fn depends_on_left_out(case: &Case) -> Words {
    Words {
        headline: "It depends on the shots left out.".to_owned(),
        line: "Depends on the shots left out.".to_owned(),
        detail: sentences(&[
            case.averages(),
            "With every shot the answer is one thing, without those set aside another.".to_owned(),
        ]),
        next: "Count every shot, or hit a planned test and leave nothing out.".to_owned(),
    }
}

fn cannot_tell(case: &Case, estimate: &Estimate) -> Words {
    if case.judgment.decision.why == Some(Why::DependsOnLeftOut) {
        return depends_on_left_out(case);
    }
    if case.judgment.order_hides_it() {
        return Words {
            headline: "The order of hitting could explain this gap, so these shots cannot tell.".to_owned(),
            line: case.cannot_tell_in_short(estimate),
            detail: sentences(&[case.averages(), case.between(estimate)]),
            next: SHORT_TEST.to_owned(),
        };
    }
    let (baseline, candidate, name) = (&case.baseline, &case.candidate, &case.subject.name);
    let apart = format!("cannot be told apart on {name}.");
    let headline = match estimate.method {
        Method::Rounds | Method::SpreadRatio => {
            format!("With this many shots, {baseline} and {candidate} {apart}")
        }
        Method::WelchWithAllowance => format!("{baseline} and {candidate} were not hit in turn, and {apart}"),
        Method::SummaryWithAllowance | Method::SummaryAssumedSpread => {
            format!("From averages alone, {baseline} and {candidate} {apart}")
        }
    };
    Words {
        headline,
        line: case.cannot_tell_in_short(estimate),
        detail: sentences(&[case.averages(), case.luck(estimate), case.between(estimate)]),
        next: case.settle(estimate),
    }
}

fn cannot_answer(why: Option<Why>, subject: &Subject, counts: &str) -> Words {
    let name = &subject.name;
    let say = |headline: &str, detail: &str, next: &str| Words {
        headline: headline.to_owned(),
        line: headline.to_owned(),
        detail: detail.to_owned(),
        next: next.to_owned(),
    };
    match why {
        Some(Why::NoShots) => {
            say("There are no shots to compare yet.", "", "Paste the shots of two clubs, or try an example.")
        }
        Some(Why::OneBuild) => say(
            "There is only one club here, and nothing to hold it against.",
            "",
            "Add shots with a second club, and name the club of each shot.",
        ),
        Some(Why::TooFewShots) => say(
            &format!("There are too few shots to compare on {name}."),
            counts,
            "At least 3 shots with each club are needed for any answer (5 for scatter), and 15 for a useful one.",
        ),
        Some(Why::CountsMissing) => say(
            "Averages alone cannot answer this: nobody said how many shots they come from.",
            "An average of 3 shots and an average of 30 look the same and mean very different things.",
            "Add the number of shots behind each average.",
        ),
        Some(Why::OnlyTheBest) => say(
            "Only the best shots are shown, and they cannot answer this.",
            "The best few of any club look good. What counts is what the club does on every swing.",
            "Ask for every shot, or for the average and the number of all of them.",
        ),
        Some(Why::SpreadMissing) => say(
            &format!(
                "How much single shots scatter in {name} is missing, so the averages cannot be compared."
            ),
            "",
            "Add the standard deviation beside each average, or every shot.",
        ),
        Some(Why::OnlyAverages) => say(
            "Averages do not show which club is tighter.",
            "Scatter lies in the single shots; a deviation printed beside an average is too unsure to decide on.",
            "Add every shot.",
        ),
        Some(Why::NoScatter) => say(
            &format!("Every shot has the same {name}, so there is nothing to judge luck by."),
            "Real shots scatter. Numbers that do not were probably rounded or copied.",
            &format!("Check the {name} column."),
        ),
        Some(Why::NotMeasured | Why::DependsOnLeftOut) | None => say(
            &format!("{} was not recorded for both clubs.", capital(name)),
            counts,
            "Choose a measure that both have, or add the missing column.",
        ),
    }
}

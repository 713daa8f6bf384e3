//! What the sizes of sentences may say: which interval, at which level, on which side of which line, and that averages and
//! gap are of the same shots. Each check has its name and its reason; what they look for are numbers that were printed.

use super::fact::{Fact, Scope, Value};
use super::number::Printed;
use super::pairs::Fault;
use super::truth::scope;
use judging::analysis::Method;
use judging::interval::Interval;
use judging::verdict::{DecisionKind, Matters};
use judging::{Judged, Judgment};
use session::measure::{Margin, MeasureId};
use std::collections::BTreeMap;
use telling::units::shown;
use text::Voice;

/// More shots than anybody hits: said in words, not in digits.
const MOST_SHOTS_NAMED: f64 = 500.0;

pub(super) const DECIDED: [&str; 2] = [
    "the interval printed is the one that decided",
    "A decision made by one interval beside the ends of another reads as a contradiction; one interval decides and is shown everywhere.",
];
pub(super) const DENIED: [&str; 2] = [
    "the interval printed beside a decision bears it out",
    "'The same' beside an end beyond the margin, or 'different' beside one that holds zero, is denied by its own numbers.",
];
pub(super) const LANDED: [&str; 2] = [
    "chances of a fairway come in the order of the shots counted on it",
    "Three mishits widen a bell curve and turn 22 of 30 above 23 of 30; then the reason is said, and what the curve is.",
];
pub(super) const INSIDE: [&str; 2] = [
    "a share of shots is that of the shots counted, and inside its range",
    "23 of 30 are 77 of 100, and a range that does not hold what it is of is none.",
];
pub(super) const CLEAR: [&str; 2] = [
    "no part is clear beside the sentence that none is",
    "An interval of 95 beside a finding of 99 in 100 excludes zero where the finding does not, and nothing says so.",
];
pub(super) const LINES: [&str; 2] = [
    "no printed end crosses a line that the end does not cross",
    "4.7 printed as 5 where 5 is the margin, or 0.3 printed as 0, denies the decision.",
];
pub(super) const LEVEL: [&str; 2] = [
    "the level printed is the interval's",
    "99.96 printed as 100, or 95 beside an interval of 90, is false.",
];
pub(super) const AVERAGES: [&str; 2] = [
    "the averages printed are of what was compared",
    "Averages over all shots beside a gap within rounds do not differ by that gap.",
];
pub(super) const WITHIN: [&str; 2] = [
    "'at most' is the farther end of the interval as it is printed, and inside the margin",
    "It is the equivalence interval, rounded as its ends are: two sizes of one end on one card contradict each other.",
];
pub(super) const GAP: [&str; 2] =
    ["the gap printed is the gap", "A size that is printed is a rounded size and no other."];
pub(super) const MARGIN: [&str; 2] = [
    "the margin printed is the margin",
    "What starts to matter is one size: the one that the decision was held to.",
];
pub(super) const ENOUGH: [&str; 2] = [
    "the number of shots named as enough is enough",
    "5 rounds of 3 tell what 43 shots would tell only by luck.",
];
pub(super) const COUNTABLE: [&str; 2] = [
    "a number of shots is one that can be hit",
    "98,982 shots is no advice; more than can be hit is said in words.",
];

/// Names of all checks, with their reasons.
pub(crate) const ALL: [[&str; 2]; 13] =
    [DECIDED, DENIED, LANDED, INSIDE, CLEAR, LINES, LEVEL, AVERAGES, WITHIN, GAP, MARGIN, ENOUGH, COUNTABLE];

/// The judged sizes of one candidate on one measure, in the unit printed.
#[derive(Debug, Clone)]
pub(crate) struct Sizes {
    pub(crate) kind: DecisionKind,
    pub(crate) gap: f64,
    pub(crate) different: Interval,
    pub(crate) same: Interval,
    /// A difference that is too small to matter, as what is the same: the interval that keeps inside the margin decided.
    pub(crate) decided_by_same: bool,
    /// Of a higher value, and of a lower one.
    pub(crate) margins: Option<[f64; 2]>,
    pub(crate) is_ratio: bool,
}

/// What was decided of something, in the measure's own unit.
pub(crate) struct Decided<'a> {
    pub(crate) measure: &'a MeasureId,
    pub(crate) kind: DecisionKind,
    pub(crate) gap: f64,
    pub(crate) different: Interval,
    pub(crate) same: Interval,
    pub(crate) decided_by_same: bool,
    pub(crate) margin: Option<Margin>,
    pub(crate) is_ratio: bool,
}

impl Sizes {
    pub(crate) fn of(decided: &Decided<'_>, voice: &Voice) -> Self {
        let scale = decided.measure.known().map_or(1.0, |known| shown(known.facts().unit, voice).1);
        // Scatter is printed in hundredths more or less.
        let printed = |x: f64| if decided.is_ratio { (x - 1.0) * 100.0 } else { x * scale };
        let ends = |interval: &Interval| Interval {
            low: printed(interval.low),
            high: printed(interval.high),
            level: interval.level,
        };
        Self {
            kind: decided.kind,
            gap: printed(decided.gap),
            different: ends(&decided.different),
            same: ends(&decided.same),
            decided_by_same: decided.decided_by_same,
            margins: decided.margin.map(|margin| match margin {
                Margin::Ratio(ratio) => [printed(ratio), printed(1.0 / ratio)],
                Margin::Difference(size) => [size * scale, -size * scale],
            }),
            is_ratio: decided.is_ratio,
        }
    }

    fn of_judgment(judgment: &Judgment, voice: &Voice) -> Option<Self> {
        let estimate = judgment.estimate.as_ref()?;
        let decided = Decided {
            measure: &judgment.measure,
            kind: judgment.decision.kind,
            gap: estimate.value,
            different: Interval { low: estimate.low, high: estimate.high, level: estimate.level },
            same: estimate.equivalence,
            decided_by_same: judgment.decision.kind == DecisionKind::Same
                || judgment.decision.matters == Some(Matters::No),
            margin: judgment.margin,
            is_ratio: estimate.method == Method::SpreadRatio,
        };
        Some(Self::of(&decided, voice))
    }

    /// The interval that the decision rests on.
    fn decided(&self) -> &Interval {
        if self.decided_by_same { &self.same } else { &self.different }
    }
}

/// The sizes behind every judgment.
pub(crate) fn sizes(judged: &Judged<'_>, voice: &Voice) -> BTreeMap<Scope, Sizes> {
    let all = judged.judgments.iter().enumerate();
    all.filter_map(|(at, judgment)| Some((scope(judged, at), Sizes::of_judgment(judgment, voice)?))).collect()
}

/// Every size that is not what it should be.
pub(crate) fn search(sizes: &BTreeMap<Scope, Sizes>, facts: &[Fact]) -> Vec<Fault> {
    let mut faults = landed(facts);
    faults.extend(facts.iter().filter_map(|fact| outside(fact, facts)));
    faults.extend(none_clear(facts));
    for fact in facts.iter().filter(|fact| fact.surface().is_some()) {
        match (fact.key, &fact.value) {
            ("shots_named", Value::Number(shots)) if shots.value > MOST_SHOTS_NAMED => {
                faults.push(fault(COUNTABLE, fact, String::new()));
            }
            ("enough", _) => faults.extend(not_enough(fact, facts)),
            _ => {}
        }
        let Some(sizes) = sizes.get(&fact.scope) else { continue };
        match (fact.key, &fact.value) {
            ("interval", Value::Ends(low, high)) => faults.extend(interval(fact, sizes, *low, *high)),
            ("level_of_either", Value::Number(level)) => faults.extend(level_of_either(fact, sizes, *level)),
            ("margin" | "power_gap", Value::Number(margin)) if !is_margin(*margin, sizes) => {
                faults.push(fault(MARGIN, fact, format!("it is {:?}", sizes.margins)));
            }
            ("level", Value::Number(level)) => faults.extend(level_of(fact, facts, sizes, *level)),
            ("averages", Value::Ends(candidate, baseline)) if !sizes.is_ratio => {
                let apart = candidate.value - baseline.value;
                if (apart - sizes.gap).abs() > candidate.step().max(baseline.step()) + 1e-6 {
                    faults.push(fault(
                        AVERAGES,
                        fact,
                        format!("{apart:.3} apart, the gap is {:.3}", sizes.gap),
                    ));
                }
            }
            ("within", Value::Number(most)) => {
                let widest = sizes.same.low.abs().max(sizes.same.high.abs());
                let outside = sizes.margins.is_some_and(|[margin, _]| most.value >= margin);
                if !is_near(*most, widest) || outside {
                    faults.push(fault(WITHIN, fact, format!("it is {widest:.3} of {:?}", sizes.margins)));
                }
            }
            ("gap", Value::Number(gap)) if !is_near(*gap, sizes.gap) => {
                faults.push(fault(GAP, fact, format!("it is {:.3}", sizes.gap)));
            }
            _ => {}
        }
    }
    faults
}

fn interval(fact: &Fact, sizes: &Sizes, low: Printed, high: Printed) -> Vec<Fault> {
    let decided = sizes.decided();
    let truth = || {
        format!(
            "{:.3} to {:.3} at {:.5}, margins {:?}",
            decided.low, decided.high, decided.level, sizes.margins
        )
    };
    let beyond = |[high_margin, low_margin]: [f64; 2]| low.value <= low_margin || high.value >= high_margin;
    let denied = match sizes.kind {
        DecisionKind::Same => sizes.margins.is_some_and(beyond),
        DecisionKind::Different => low.value <= 0.0 && high.value >= 0.0,
        DecisionKind::CannotTell | DecisionKind::CannotAnswer => false,
    };
    if denied {
        return vec![fault(DENIED, fact, truth())];
    }
    if !is_near(low, decided.low) || !is_near(high, decided.high) {
        return vec![fault(DECIDED, fact, truth())];
    }
    let margins = sizes.margins.into_iter().flatten();
    let lines: Vec<f64> = margins.chain([0.0]).collect();
    let crosses =
        |printed: Printed, end: f64| lines.iter().any(|line| side(printed.value, *line) != side(end, *line));
    if crosses(low, decided.low) || crosses(high, decided.high) {
        return vec![fault(LINES, fact, truth())];
    }
    Vec::new()
}

/// On which side of a line a size lies. An end at the margin lies beyond it, as the decision takes it; one at zero
/// on neither side.
fn side(x: f64, line: f64) -> i8 {
    const NEAR: f64 = 1e-9;
    match x - line {
        apart if apart > NEAR => 1,
        apart if apart < -NEAR => -1,
        _ if line > 0.0 => 1,
        _ if line < 0.0 => -1,
        _ => 0,
    }
}

/// Rounded to its last digit, either way.
fn is_near(printed: Printed, size: f64) -> bool {
    (printed.value - size).abs() < printed.step() + 1e-6 || !size.is_finite()
}

fn level_of(fact: &Fact, facts: &[Fact], sizes: &Sizes, level: Printed) -> Option<Fault> {
    let beside = |other: &&Fact| {
        other.key == "interval" && other.surface() == fact.surface() && other.scope == fact.scope
    };
    facts.iter().find(beside)?;
    let truth = sizes.decided().level * 100.0;
    let is_false = level.value >= 100.0 || (level.value - truth).abs() > level.step();
    is_false.then(|| fault(LEVEL, fact, format!("it is {truth:.5}")))
}

/// Clubs whose chances of a fairway are in the other order than the shots counted on it.
fn landed(facts: &[Fact]) -> Vec<Fault> {
    let says = |key| facts.iter().any(|fact: &Fact| fact.key == key);
    // Beside the sentence that compares two of them the reason is said; of others what widens a curve.
    let (of_pair, of_others) = (says("landing_reason"), says("landing_reason") || says("landing_note"));
    let is_compared =
        |one: &Fact| facts.iter().any(|fact| fact.key == "is.landing_compared" && fact.scope == one.scope);
    let number = |scope: &Scope, key: &str| {
        let found = facts.iter().find(|fact| fact.key == key && fact.scope == *scope)?;
        if let Value::Number(printed) = &found.value { Some(printed.value) } else { None }
    };
    let chances = facts.iter().filter(|fact| fact.key == "landing_chance");
    let clubs: Vec<(f64, f64, &Fact)> = chances
        .filter_map(|fact| {
            // In hundredths, as it is told.
            let share =
                (100.0 * number(&fact.scope, "counted")? / number(&fact.scope, "counted_of")?).round();
            Some((number(&fact.scope, "landing_chance")?, share, fact))
        })
        .collect();
    let mut faults = Vec::new();
    for (at, (chance, share, fact)) in clubs.iter().enumerate() {
        for (other_chance, other_share, other) in &clubs[at + 1..] {
            let both_compared = is_compared(fact) && is_compared(other);
            let is_said = if both_compared { of_pair } else { of_others };
            if !is_said && (chance - other_chance) * (share - other_share) < 0.0 {
                faults.push(Fault { right: Some((*other).clone()), ..fault(LANDED, fact, String::new()) });
            }
        }
    }
    faults
}

/// A share or a chance outside its own range, or a share that is not that of the shots counted.
fn outside(fact: &Fact, facts: &[Fact]) -> Option<Fault> {
    let range = match fact.key {
        "counted_share" => "counted_range",
        "landing_chance" => "landing_range",
        _ => return None,
    };
    // What is told of all at once stands in one place for several clubs.
    let (Scope::Part(_), Value::Number(printed)) = (&fact.scope, &fact.value) else { return None };
    let beside = |key| facts.iter().find(|other| other.key == key && other.scope == fact.scope);
    if let Some(Value::Ends(low, high)) = beside(range).map(|range| &range.value)
        && (printed.value < low.value || printed.value > high.value)
    {
        return Some(fault(INSIDE, fact, format!("{} to {}", low.value, high.value)));
    }
    let number = |key| {
        beside(key).and_then(|one| if let Value::Number(n) = &one.value { Some(n.value) } else { None })
    };
    let (counted, of) = number("counted").zip(number("counted_of"))?;
    let share = (100.0 * counted / of).clamp(1.0, 99.0);
    let is_off = fact.key == "counted_share" && (share - printed.value).abs() > 0.5 + 1e-6;
    is_off.then(|| fault(INSIDE, fact, format!("{counted} of {of} are {share:.1} of 100")))
}

/// Parts whose printed intervals lie beyond zero on the gap's side, beside the sentence that nothing clear accounts for it.
fn none_clear(facts: &[Fact]) -> Vec<Fault> {
    let Some(says) = facts.iter().find(|fact| fact.key == "cause" && fact.value.word() == "nothing_clear")
    else {
        return Vec::new();
    };
    let up = facts.iter().find(|fact| fact.key == "gap_is_up").map(|fact| fact.value.word() == "yes");
    let is_clear = |fact: &&Fact| match &fact.value {
        Value::Ends(low, high) if fact.key == "part_interval" => {
            low.value > 0.0 && up != Some(false) || high.value < 0.0 && up != Some(true)
        }
        Value::Ends(..) => false,
        Value::Word(_) | Value::Number(_) => false,
    };
    let clear = facts.iter().filter(is_clear);
    clear.map(|part| Fault { right: Some(part.clone()), ..fault(CLEAR, says, String::new()) }).collect()
}

fn is_margin(margin: Printed, sizes: &Sizes) -> bool {
    sizes.margins.is_none_or(|[high, low]| is_near(margin, high) || is_near(margin, low.abs()))
}

fn level_of_either(fact: &Fact, sizes: &Sizes, level: Printed) -> Option<Fault> {
    let is = |truth: f64| level.value < 100.0 && (level.value - truth * 100.0).abs() <= level.step();
    let neither = !is(sizes.different.level) && !is(sizes.same.level);
    neither.then(|| fault(LEVEL, fact, format!("{:.6} and {:.6}", sizes.different.level, sizes.same.level)))
}

fn not_enough(fact: &Fact, facts: &[Fact]) -> Option<Fault> {
    let Value::Word(named) = &fact.value else { return None };
    let named: f64 = named.parse().ok()?;
    let needed = |other: &&Fact| other.key == "is.shots_to_settle" && other.scope == fact.scope;
    let Value::Number(needed) = facts.iter().find(needed)?.value else { return None };
    (needed.value > named).then(|| fault(ENOUGH, fact, format!("it takes {}", needed.value)))
}

fn fault([name, reason]: [&str; 2], fact: &Fact, note: String) -> Fault {
    Fault { rule: name.to_owned(), reason: reason.to_owned(), left: fact.clone(), right: None, note }
}

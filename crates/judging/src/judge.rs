//! Every candidate on every measure, judged: which levels apply, and what was decided.

use crate::analysis::warming_up::learning_cost_yd;
use crate::analysis::{
    AskedOf, Aspect, Basis, Comparison, Estimate, Include, Levels, Method, Pair, PartOf, ShotTable, compare,
    estimate, nearer,
};
use crate::facts::{HowHit, OnlyWholeLaps, OrderAllowance, PairFacts, SetAside};
use crate::holm::{self, Member};
use crate::next_to_nothing::says_next_to_nothing;
use crate::settle::{Asked, Candidate, Settled};
use crate::trust::Moving;
use crate::verdict::{Decision, DecisionKind, Direction, Matters, decide, decide_ratio};
use session::Session;
use session::measure::{Margin, MeasureId};
use session::names::short_name;
use session::question::Goal;
use std::cell::OnceCell;

/// Of shots of a measure of which nothing is known.
const NORMAL_KURTOSIS: f64 = 3.0;

/// One candidate against the baseline on one measure, decided.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgment {
    /// Index of the build the candidate is held against.
    pub baseline: usize,
    /// Index of the build in question.
    pub candidate: usize,
    /// The measure.
    pub measure: MeasureId,
    /// What better means on it.
    pub goal: Goal,
    /// The smallest difference that matters on it.
    pub margin: Option<Margin>,
    /// Textbook results and the careful comparison.
    pub pair: Pair,
    /// How strict the answer had to be.
    pub levels: Levels,
    /// What stands: the decision on all shots, unless it hangs on those left out.
    pub decision: Decision,
    /// On every shot.
    pub with_all: Decision,
    /// On those not set aside.
    pub without_left_out: Decision,
    /// Rounds that hold both builds.
    pub shared_rounds: u32,
    /// Builds held against the baseline.
    pub candidates: usize,
    /// Size and uncertainty, where something can be estimated.
    pub estimate: Option<Estimate>,
    /// What is known of how it came about.
    pub facts: PairFacts,
}

impl Judgment {
    /// The careful comparison, where there is one.
    #[must_use]
    pub fn comparison(&self) -> Option<&Comparison> {
        self.pair.comparison.as_ref().ok()
    }

    /// What these intervals decide of the two, by what is known of their order.
    #[must_use]
    pub fn decided_on(&self, pair: &Pair) -> Decision {
        let decided = decision(pair, &self.levels, self.margin);
        match self.facts.order_allowance {
            OrderAllowance::SizeNotKnown => decided.with_nothing_allowed_for_order(),
            OrderAllowance::NotNeeded | OrderAllowance::Included | OrderAllowance::StartOfLaps => decided,
        }
    }

    /// Whether only the allowance for order keeps the interval of all shots from excluding zero. An answer that hangs on
    /// shots left out cannot be told either, and that is not the order's doing.
    #[must_use]
    pub fn order_hides_it(&self) -> bool {
        let in_turn = matches!(self.facts.order, HowHit::InTurn | HowHit::InTurnNotCompared);
        self.with_all.kind == DecisionKind::CannotTell && !in_turn && self.drift_to_explain() > 0.0
    }

    /// What a candidate that was new in the hand can have lost over these shots, where it was found to be lower on a measure
    /// that a swing not yet used to it lowers, and the interval does not lie beyond that.
    fn learning_costs(&self) -> Option<f64> {
        let is_lower =
            self.decision.direction == Some(Direction::Lower) && !self.decision.is_inside_the_margin();
        let per_yard = self.measure.usual()?.facts().per_yard_of_carry.filter(|_| is_lower)?;
        let estimate = self.estimate.as_ref().filter(|estimate| estimate.method != Method::SpreadRatio)?;
        let cost = per_yard * learning_cost_yd(estimate.n.candidate);
        (-estimate.decided_by.high < cost).then_some(cost)
    }

    /// The laps, where turns are so long that nothing but whole laps counts: shorter turns would give many more of them.
    fn only_whole_laps(&self, table: &ShotTable<'_>) -> Option<OnlyWholeLaps> {
        let are_too_long = self.pair.turns.is_some_and(|turns| turns.are_too_long);
        let laps = self.pair.compared.map_or(self.shared_rounds, |compared| compared.rounds);
        let by_laps = self.estimate.as_ref().is_some_and(|estimate| estimate.method == Method::Rounds);
        let longest_turn = table.longest_turn([self.baseline, self.candidate]);
        (by_laps && are_too_long).then_some(OnlyWholeLaps { laps, longest_turn })
    }

    /// Whether a comparison of plain averages, blind to order and looks, would have found a difference.
    #[must_use]
    pub fn plain_averages_differ(&self) -> bool {
        self.pair.numbers.welch.is_some_and(|w| w.low > 0.0 || w.high < 0.0)
    }

    /// Part of each half-width that stands for warming up and tiring.
    #[must_use]
    pub fn order_allowance(&self) -> f64 {
        self.comparison().map_or(0.0, Comparison::allowance)
    }

    /// The drift between two blocks that would be enough to explain the lead; 0 when none is needed.
    #[must_use]
    pub fn drift_to_explain(&self) -> f64 {
        self.comparison().map_or(0.0, |c| c.drift_to_explain(self.levels.different))
    }
}

/// A question answered from a session: every judgment, and which of them the headline speaks of.
#[derive(Debug)]
pub struct Judged<'a> {
    /// What was asked, every gap filled.
    pub settled: Settled<'a>,
    /// Every candidate on every measure; those of the measure asked for come first.
    pub judgments: Vec<Judgment>,
    /// Position of the headline among them; `None` when there is nobody to hold against the baseline.
    headline: Option<usize>,
    /// The fewest shots whose removal would change the headline, once somebody asked: see [`crate::fragile`].
    pub(crate) removals: OnceCell<Option<usize>>,
    /// The shot that the golfer is asked about, since it alone moves the headline by more than matters: see [`crate::trust`].
    pub(crate) moved_by: OnceCell<Option<Moving>>,
}

impl Judged<'_> {
    /// The judgment that the headline speaks of: of the candidate asked for, or of the one that leads toward the goal.
    #[must_use]
    pub fn headline(&self) -> Option<&Judgment> {
        self.headline.map(|at| &self.judgments[at])
    }

    /// The judgment of a candidate on the measure asked for.
    #[must_use]
    pub fn of(&self, candidate: usize) -> Option<&Judgment> {
        self.asked().find(|judgment| judgment.candidate == candidate)
    }

    /// The judgments of the measure asked for.
    pub fn asked(&self) -> impl Iterator<Item = &Judgment> {
        self.judgments[..self.settled.candidates.len()].iter()
    }
}

/// Judges every candidate on every measure: first compares, then settles how strict each comparison must be, then decides.
#[must_use]
pub fn judge(settled: Settled<'_>) -> Judged<'_> {
    let mut judgments = compared(&settled);
    let mut family: Vec<Member> = judgments
        .iter()
        .map(|j| Member { p: j.comparison().map(Comparison::p_value), level: j.levels.different })
        .collect();
    holm::divide_all(&mut family, settled.candidates.len());
    for (judgment, member) in judgments.iter_mut().zip(family) {
        judgment.levels.different = member.level;
    }
    decided(&settled, &mut judgments);
    let per_measure = settled.candidates.len();
    note_other_differences(per_measure, &mut judgments);
    let asked = &judgments[..settled.candidates.len()];
    let headline = match settled.question.candidate {
        Some(chosen) => asked.iter().position(|judgment| judgment.candidate == chosen),
        None => leading(asked),
    };
    Judged { settled, judgments, headline, removals: OnceCell::new(), moved_by: OnceCell::new() }
}

/// Every candidate on every measure, compared on all shots; nothing is decided yet.
fn compared(settled: &Settled<'_>) -> Vec<Judgment> {
    let candidates = settled.candidates.len();
    let mut judgments = Vec::with_capacity(settled.measures.len() * candidates);
    for asked in &settled.measures {
        let measured = settled.table.measured(&asked.measure, Include::All);
        for candidate in &settled.candidates {
            let pair = compare(&measured, settled.question.baseline, candidate.build, asked.aspect());
            judgments.push(undecided(settled, asked, candidate, pair));
        }
    }
    judgments
}

fn undecided(settled: &Settled<'_>, asked: &Asked, candidate: &Candidate, pair: Pair) -> Judgment {
    let undecided = Decision::undecided();
    let (stopping, rounds) = (&settled.question.stopping, candidate.shared_rounds);
    let facts = PairFacts::of(settled.session, stopping, candidate.levels.rule, rounds, &pair, asked);
    Judgment {
        baseline: settled.question.baseline,
        candidate: candidate.build,
        measure: asked.measure.clone(),
        goal: asked.goal,
        margin: asked.margin,
        pair,
        levels: candidate.levels,
        decision: undecided,
        with_all: undecided,
        without_left_out: undecided,
        shared_rounds: candidate.shared_rounds,
        candidates: settled.candidates.len(),
        estimate: None,
        facts,
    }
}

/// Decides each, on all shots and on those that were not set aside.
fn decided(settled: &Settled<'_>, judgments: &mut [Judgment]) {
    let per_measure = settled.candidates.len().max(1);
    for (asked, of_measure) in settled.measures.iter().zip(judgments.chunks_mut(per_measure)) {
        let parts: Vec<PartOf> = settled.candidates.iter().map(|candidate| candidate.left_out).collect();
        let some_left_out = parts.iter().chain([&settled.left_out]).any(|part| part.shots > 0);
        let rest = some_left_out.then(|| settled.table.measured(&asked.measure, Include::NotLeftOut));
        let unit = match asked.aspect() {
            Aspect::Average => reported_unit(&asked.measure, settled.session),
            Aspect::Spread => String::new(),
        };
        let kurtosis = asked.measure.usual().map_or(NORMAL_KURTOSIS, |known| known.facts().kurtosis);
        for (judgment, part) in of_measure.iter_mut().zip(parts) {
            judgment.with_all = judgment.decided_on(&judgment.pair);
            judgment.without_left_out = judgment.with_all;
            let (levels, margin, candidates) = (judgment.levels, judgment.margin, judgment.candidates);
            let asked_of = AskedOf { levels: &levels, unit: &unit, margin, candidates, kurtosis };
            let estimated = |pair: &Pair, decided: &Decision| {
                Some(estimate(pair.comparison.as_ref().ok()?, decided, &asked_of))
            };
            if let Some(rest) = rest.as_ref().filter(|_| part.shots + settled.left_out.shots > 0) {
                let pair = compare(rest, judgment.baseline, judgment.candidate, asked.aspect());
                judgment.without_left_out = judgment.decided_on(&pair);
                judgment.facts.set_aside = Some(SetAside {
                    baseline: settled.left_out,
                    candidate: part,
                    slips: settled.table.slips(&judgment.measure, [judgment.baseline, judgment.candidate]),
                    with_all: judgment.with_all,
                    without: judgment.without_left_out,
                    estimate_without: estimated(&pair, &judgment.without_left_out),
                });
            }
            judgment.decision = judgment.with_all.unless_it_depends(&judgment.without_left_out);
            if judgment.goal == Goal::NearerZero {
                judgment.decision.nearer = nearer(&judgment.decision, &judgment.pair.numbers, &levels);
            }
            judgment.estimate = estimated(&judgment.pair, &judgment.decision);
            judgment.facts.learning_costs = judgment.learning_costs();
            judgment.facts.says_next_to_nothing = judgment.estimate.as_ref().is_some_and(|estimate| {
                says_next_to_nothing(&judgment.decision, &estimate.decided_by, &asked.measure, asked.aspect())
            });
            judgment.facts.only_whole_laps = judgment.only_whole_laps(&settled.table);
        }
    }
}

/// To each judgment, on which other measures its two builds differ: advice on one measure reads all.
fn note_other_differences(per_measure: usize, judgments: &mut [Judgment]) {
    let differs =
        |j: &Judgment| j.decision.kind == DecisionKind::Different && j.decision.matters != Some(Matters::No);
    let found: Vec<Option<MeasureId>> =
        judgments.iter().map(|j| differs(j).then(|| j.measure.clone())).collect();
    for (at, judgment) in judgments.iter_mut().enumerate() {
        let of_the_same = found.iter().enumerate().filter(|(other, _)| {
            *other != at && other.checked_rem(per_measure) == at.checked_rem(per_measure)
        });
        judgment.facts.differs_on = of_the_same.filter_map(|(_, measure)| measure.clone()).collect();
    }
}

/// The unit of a measure's numbers in a report, canonical however they are shown; empty for a plain ratio.
#[must_use]
pub fn reported_unit(measure: &MeasureId, session: &Session) -> String {
    let label = match measure.known() {
        Some(known) => known.facts().unit.label(),
        None => session.custom(measure).map_or("", |c| c.unit.as_str()),
    };
    short_name(if label == "deg" { "°" } else { label })
}

/// What two intervals at these levels decide.
fn decision(pair: &Pair, levels: &Levels, margin: Option<Margin>) -> Decision {
    match &pair.comparison {
        Ok(comparison) => {
            let (different, same) = (comparison.interval(levels.different), comparison.interval(levels.same));
            match (comparison.basis, margin) {
                (Basis::Difference(_), Some(Margin::Difference(size))) => {
                    decide(&different, &same, Some(size))
                }
                (Basis::Spread(_), Some(Margin::Ratio(ratio))) => {
                    decide_ratio(&different, &same, Some(ratio))
                }
                // A margin of the other kind is none: yards say nothing about a ratio of scatters.
                (Basis::Difference(_), _) => decide(&different, &same, None),
                (Basis::Spread(_), _) => decide_ratio(&different, &same, None),
            }
        }
        Err(why) => Decision::cannot_answer(*why),
    }
}

/// The candidate farthest toward the goal; the first one when none can be compared, `None` without any.
fn leading(asked: &[Judgment]) -> Option<usize> {
    let mut best: Option<(f64, usize)> = None;
    for (at, judgment) in asked.iter().enumerate() {
        if let Some(value) = toward_the_goal(judgment)
            && best.is_none_or(|(most, _)| value > most)
        {
            best = Some((value, at));
        }
    }
    best.map(|(_, at)| at).or_else(|| (!asked.is_empty()).then_some(0))
}

/// How far a candidate lies toward the goal, for putting several in order.
fn toward_the_goal(judgment: &Judgment) -> Option<f64> {
    let value = judgment.comparison()?.value();
    Some(match judgment.goal {
        Goal::Higher => value,
        Goal::Lower | Goal::Tighter => -value,
        Goal::NearerZero => -judgment.pair.numbers.candidate?.mean.abs(),
        Goal::Different => value.abs(),
    })
}

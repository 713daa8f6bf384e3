//! The parts that sentences are made of: names, values, sizes, chances, all from one judgment.

use crate::format::{Subject, chance, count_of, shots};
use crate::phrases::{Phrase, phrase_for};
use judging::Judgment;
use judging::analysis::{Estimate, Group, Method, Rule};
use judging::verdict::Direction;
use session::Session;
use session::measure::Margin;
use session::names::short_name;
use text::case as say;
use text::{Voice, capital};

/// Above this many shots with each build nobody is sent to the range.
const MOST_SHOTS_ASKED: u32 = 60;

/// One judgment with the names that its sentences use.
#[derive(Debug)]
pub(crate) struct Case<'a> {
    pub(crate) voice: &'a Voice,
    pub(crate) judgment: &'a Judgment,
    pub(crate) subject: Subject<'a>,
    /// Shortened.
    pub(crate) baseline: String,
    /// Shortened.
    pub(crate) candidate: String,
    phrase: Phrase,
}

impl<'a> Case<'a> {
    pub(crate) fn of(session: &Session, judgment: &'a Judgment, voice: &'a Voice) -> Self {
        let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
        Self {
            voice,
            judgment,
            subject: Subject::of(&judgment.measure, session, voice),
            baseline: name(judgment.baseline),
            candidate: name(judgment.candidate),
            phrase: phrase_for(&judgment.measure, voice),
        }
    }

    /// `Driver B carries farther`, or `Weight of trt2 is higher` for a column of the golfer's own.
    pub(crate) fn does(&self, direction: Direction) -> String {
        let verb = if direction == Direction::Higher { &self.phrase.higher } else { &self.phrase.lower };
        if self.subject.id.known().is_some() {
            say::does(self.voice, &self.candidate, verb)
        } else {
            say::measure_of_does(self.voice, &capital(&self.subject.name), &self.candidate, verb)
        }
    }

    /// `more` or `less`, `farther right` or `farther left`.
    pub(crate) fn more(&self, direction: Direction) -> &str {
        if direction == Direction::Higher { &self.phrase.more } else { &self.phrase.less }
    }

    /// A value with its side where the measure has sides: `4 yd right`.
    fn value(&self, x: f64) -> String {
        match &self.phrase.sides {
            Some(_) if self.subject.prints_as_zero(x) => self.subject.amount(0.0),
            Some(sides) => {
                let side = if x > 0.0 { &sides.above } else { &sides.below };
                say::on_a_side(self.voice, &self.subject.amount(x), side)
            }
            None => self.subject.value(x),
        }
    }

    /// `Driver B averaged 262 yd over 15 shots, Own driver 254 yd over 15.`
    pub(crate) fn averages(&self) -> String {
        let numbers = &self.judgment.pair.numbers;
        let (Some(candidate), Some(baseline)) = (numbers.candidate, numbers.baseline) else {
            return String::new();
        };
        say::averages(
            self.voice,
            &self.candidate,
            &self.value(candidate.mean),
            &shots(self.voice, candidate.n),
            &self.baseline,
            &self.value(baseline.mean),
            &count_of(self.voice, baseline.n),
        )
    }

    /// How many shots each build has.
    pub(crate) fn counts(&self) -> String {
        let n = |group: Option<Group>| group.map_or(0, |g| g.n);
        let numbers = &self.judgment.pair.numbers;
        let (baseline, candidate) =
            (shots(self.voice, n(numbers.baseline)), shots(self.voice, n(numbers.candidate)));
        say::counts(self.voice, &self.baseline, &baseline, &self.candidate, &candidate)
    }

    /// How often luck alone does this.
    pub(crate) fn luck(&self, estimate: &Estimate) -> String {
        say::luck(self.voice, estimate.order_allowance > 0.0, &chance(self.voice, estimate.chance_if_same))
    }

    /// `Allowing for luck, the true difference lies between 5 yd less and 11 yd more.`
    pub(crate) fn between(&self, estimate: &Estimate) -> String {
        let (low, high) = (self.signed(estimate.low), self.signed(estimate.high));
        say::between(self.voice, estimate.order_allowance > 0.0, &low, &high)
    }

    /// `Cannot tell: anything between 5 yd less and 11 yd more.`
    pub(crate) fn cannot_tell_in_short(&self, estimate: &Estimate) -> String {
        let (low, high) = (self.signed(estimate.low), self.signed(estimate.high));
        say::cannot_tell_in_short(self.voice, &low, &high)
    }

    fn signed(&self, x: f64) -> String {
        if self.subject.prints_as_zero(x) {
            return say::no_difference(self.voice);
        }
        let direction = if x > 0.0 { Direction::Higher } else { Direction::Lower };
        say::gap(self.voice, &self.subject.amount(x), self.more(direction))
    }

    /// What a better test would need.
    pub(crate) fn settle(&self, estimate: &Estimate) -> String {
        let (Some(needed), Some(Margin::Difference(margin))) =
            (estimate.shots_to_settle, self.judgment.margin)
        else {
            return say::shows_at_best(self.voice, &self.subject.amount(estimate.detectable));
        };
        let (margin, each) = (self.subject.chosen(margin), count_of(self.voice, needed as usize));
        let mixed_up = estimate.order_allowance > 0.0;
        let fewest = estimate.n.baseline.min(estimate.n.candidate);
        if needed > MOST_SHOTS_ASKED {
            let settled = say::more_than_a_visit(self.voice, &each, &margin);
            return if mixed_up { sentences(&[say::first_in_turn(self.voice), settled]) } else { settled };
        }
        if estimate.method == Method::Rounds
            && self.judgment.levels.rule == Rule::Fixed
            && fewest >= needed as usize
        {
            return say::usually_settles(self.voice, &margin);
        }
        if mixed_up {
            return sentences(&[
                say::first_in_turn(self.voice),
                say::would_then_settle(self.voice, &each, &margin),
            ]);
        }
        say::would_settle(self.voice, &each, &margin)
    }

    /// The margin in words, empty without one.
    pub(crate) fn margin(&self) -> String {
        self.judgment.margin.map(|m| self.subject.chosen(m.value())).unwrap_or_default()
    }
}

/// Sentences one after the other, empty ones passed over.
pub(crate) fn sentences(parts: &[String]) -> String {
    parts.iter().filter(|s| !s.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" ")
}

//! The parts that sentences are made of: names, values, sizes, chances, all from one judgment.

use super::format::{Subject, chance, count_of, short_name, shots};
use super::phrases::{Phrase, phrase_for};
use crate::analysis::{Estimate, Group, Method, Rule};
use crate::judge::Judgment;
use crate::measure;
use crate::session::Session;
use crate::verdict::Direction;

/// Above this many shots with each build nobody is sent to the range.
const MOST_SHOTS_ASKED: u32 = 60;

/// One judgment with the names that its sentences use.
#[derive(Debug)]
pub(crate) struct Case<'a> {
    pub(crate) judgment: &'a Judgment,
    pub(crate) subject: Subject,
    /// Shortened.
    pub(crate) baseline: String,
    /// Shortened.
    pub(crate) candidate: String,
    phrase: Phrase,
}

impl<'a> Case<'a> {
    pub(crate) fn of(session: &Session, judgment: &'a Judgment) -> Self {
        let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
        Self {
            judgment,
            subject: Subject::of(&judgment.measure, session),
            baseline: name(judgment.baseline),
            candidate: name(judgment.candidate),
            phrase: phrase_for(&judgment.measure),
        }
    }

    /// `Driver B carries farther`, or `Weight of trt2 is higher` for a column of the golfer's own.
    pub(crate) fn does(&self, direction: Direction) -> String {
        let verb = if direction == Direction::Higher { self.phrase.higher } else { self.phrase.lower };
        if measure::known(&self.subject.id).is_some() {
            format!("{} {verb}", self.candidate)
        } else {
            format!("{} of {} {verb}", capital(&self.subject.name), self.candidate)
        }
    }

    /// `more` or `less`, `farther right` or `farther left`.
    pub(crate) fn more(&self, direction: Direction) -> &'static str {
        if direction == Direction::Higher { self.phrase.more } else { self.phrase.less }
    }

    /// A value with its side where the measure has sides: `4 yd right`.
    fn value(&self, x: f64) -> String {
        match self.phrase.sides {
            Some(_) if self.subject.prints_as_zero(x) => self.subject.amount(0.0),
            Some(sides) => {
                format!("{} {}", self.subject.amount(x), if x > 0.0 { sides.above } else { sides.below })
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
        format!(
            "{} averaged {} over {}, {} {} over {}.",
            self.candidate,
            self.value(candidate.mean),
            shots(candidate.n),
            self.baseline,
            self.value(baseline.mean),
            count_of(baseline.n),
        )
    }

    /// How many shots each build has.
    pub(crate) fn counts(&self) -> String {
        let n = |group: Option<Group>| group.map_or(0, |g| g.n);
        let numbers = &self.judgment.pair.numbers;
        format!(
            "{}: {}. {}: {}.",
            self.baseline,
            shots(n(numbers.baseline)),
            self.candidate,
            shots(n(numbers.candidate))
        )
    }

    /// How often luck alone does this.
    pub(crate) fn luck(&self, estimate: &Estimate) -> String {
        let would = if estimate.order_allowance > 0.0 { "hit in this order could" } else { "would" };
        format!("Two identical clubs {would} show a gap this big in {}.", chance(estimate.chance_if_same))
    }

    /// `Allowing for luck, the true difference lies between 5 yd less and 11 yd more.`
    pub(crate) fn between(&self, estimate: &Estimate) -> String {
        let allowing = if estimate.order_allowance > 0.0 {
            "Allowing for luck, warming up and tiring"
        } else {
            "Allowing for luck"
        };
        let (low, high) = (self.signed(estimate.low), self.signed(estimate.high));
        format!("{allowing}, the true difference lies between {low} and {high}.")
    }

    /// `Cannot tell: anything between 5 yd less and 11 yd more.`
    pub(crate) fn cannot_tell_in_short(&self, estimate: &Estimate) -> String {
        let (low, high) = (self.signed(estimate.low), self.signed(estimate.high));
        format!("Cannot tell: anything between {low} and {high}.")
    }

    fn signed(&self, x: f64) -> String {
        if self.subject.prints_as_zero(x) {
            return "no difference".to_owned();
        }
        let direction = if x > 0.0 { Direction::Higher } else { Direction::Lower };
        format!("{} {}", self.subject.amount(x), self.more(direction))
    }

    /// What a better test would need.
    pub(crate) fn settle(&self, estimate: &Estimate) -> String {
        let (Some(needed), Some(margin)) = (estimate.shots_to_settle, self.judgment.margin) else {
            return format!(
                "A session like this shows a difference of {} in 8 of 10 cases; smaller ones need more shots.",
                self.subject.amount(estimate.detectable)
            );
        };
        let (margin, each) = (self.subject.chosen(margin), count_of(needed as usize));
        let in_turn = if estimate.order_allowance > 0.0 {
            "First hit the clubs in turn, three shots at a time: one after the other, even many shots cannot tell the \
             club from warming up. "
        } else {
            ""
        };
        if needed > MOST_SHOTS_ASKED {
            return format!(
                "{in_turn}With this much scatter it would take about {each} shots with each to settle {margin}: more \
                 than one visit holds. Unless a bigger gap is what you are after, choose by feel, look or price."
            );
        }
        let fewest = estimate.n.baseline.min(estimate.n.candidate);
        if estimate.method == Method::Rounds
            && self.judgment.levels.rule == Rule::Fixed
            && fewest >= needed as usize
        {
            return format!(
                "Most sessions of this size settle {margin}; this one did not. A second one like it would most likely \
                 tell."
            );
        }
        if in_turn.is_empty() {
            return format!(
                "About {each} shots with each, planned before and hit in turns of three, would settle {margin}."
            );
        }
        format!("{in_turn}About {each} shots with each, planned before, would then settle {margin}.")
    }

    /// The margin in words, empty without one.
    pub(crate) fn margin(&self) -> String {
        self.judgment.margin.map(|m| self.subject.chosen(m)).unwrap_or_default()
    }
}

/// The text with its first letter as a capital.
pub(crate) fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map_or_else(String::new, |first| std::iter::once(first.to_ascii_uppercase()).chain(chars).collect())
}

/// Sentences one after the other, empty ones passed over.
pub(crate) fn sentences(parts: &[String]) -> String {
    parts.iter().filter(|s| !s.is_empty()).map(String::as_str).collect::<Vec<_>>().join(" ")
}

//! A pile of lines: a set by content, so that piles put together in any order, and some of them twice, are one and the same.

use super::content::Content;
use super::line::Line;
use super::question::ManyQuestion;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::collections::BTreeMap;

/// A line with every place that its session was found at.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Kept {
    /// What was judged.
    pub line: Line,
    /// Where the session was found, in the order of the alphabet; more than one for copies.
    pub places: Vec<String>,
}

/// Lines of one question.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(from = "Packed", into = "Packed")]
pub struct Pile {
    question: ManyQuestion,
    kept: BTreeMap<Content, Kept>,
}

/// Two piles answer different questions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PilesDiffer;

/// The same as plain data.
#[derive(Clone, Serialize, Deserialize)]
struct Packed {
    question: ManyQuestion,
    kept: Vec<Kept>,
}

impl From<Pile> for Packed {
    fn from(Pile { question, kept }: Pile) -> Self {
        Self { question, kept: kept.into_values().collect() }
    }
}

impl From<Packed> for Pile {
    fn from(Packed { question, kept }: Packed) -> Self {
        let mut pile = Self::new(question);
        kept.into_iter().for_each(|kept| pile.take(kept));
        pile
    }
}

impl Pile {
    /// An empty one.
    #[must_use]
    pub fn new(question: ManyQuestion) -> Self {
        Self { question, kept: BTreeMap::new() }
    }

    /// What it was asked.
    #[must_use]
    pub fn question(&self) -> &ManyQuestion {
        &self.question
    }

    /// Puts in a session found at a place.
    pub fn add(&mut self, place: &str, line: Line) {
        self.take(Kept { line, places: vec![place.to_owned()] });
    }

    /// Puts in all of another one.
    ///
    /// # Errors
    /// [`PilesDiffer`], when they were asked different things.
    pub fn merge(&mut self, other: Self) -> Result<(), PilesDiffer> {
        if self.question != other.question {
            return Err(PilesDiffer);
        }
        other.kept.into_values().for_each(|kept| self.take(kept));
        Ok(())
    }

    /// Sessions, copies counted once, in the order of their content: whatever is added up over them has the same last bit.
    pub fn kept(&self) -> impl Iterator<Item = &Kept> {
        self.kept.values()
    }

    /// How many there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.kept.len()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.kept.is_empty()
    }

    fn take(&mut self, new: Kept) {
        let Some(there) = self.kept.get_mut(&new.line.content) else {
            self.kept.insert(new.line.content, new);
            return;
        };
        for place in new.places {
            if let Err(at) = there.places.binary_search(&place) {
                there.places.insert(at, place);
            }
        }
        // Copies may have come with other promises or names: the same one is kept whichever came first.
        if before(&new.line, &there.line) == Ordering::Less {
            there.line = new.line;
        }
    }
}

/// Which of two lines of one session is kept: the one that knows more, and of two that know as much any, but always the same.
fn before(one: &Line, other: &Line) -> Ordering {
    let rank = |line: &Line| (line.not_pooled.is_some(), line.decision.is_none(), line.claimed.is_none());
    let bits = |line: &Line| {
        let gap = line.gap.map_or([0; 3], |gap| [gap.value, gap.p, gap.interval.low].map(f64::to_bits));
        (line.claimed.map_or(0, f64::to_bits), gap)
    };
    rank(one)
        .cmp(&rank(other))
        .then_with(|| (&one.baseline, &one.candidate).cmp(&(&other.baseline, &other.candidate)))
        .then_with(|| bits(one).cmp(&bits(other)))
        .then_with(|| one.not_pooled.cmp(&other.not_pooled))
        .then_with(|| one.names.cmp(&other.names))
}

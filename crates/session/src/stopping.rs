//! How it was decided when to stop, and how that reads and writes itself: a word, or a plan with its looks.

use serde::de::{Deserializer, Error, MapAccess, SeqAccess, Unexpected, Visitor};
use serde::{Deserialize, Serialize};
use std::fmt;

/// Plain stopping rules, without a plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum StoppingWord {
    /// The number of shots was fixed before the first one.
    Fixed,
    /// It was not fixed, or the numbers were looked at on the way without a plan.
    NotFixed,
    /// Nobody knows why it stopped there; taken as looked at again and again.
    Unknown,
}

/// When the numbers were looked at on the way.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum LookedAfter {
    /// After every round from the second up to this one.
    EveryRoundTo(u32),
    /// After exactly these rounds.
    Rounds(Vec<u32>),
}

/// How it was decided when to stop.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(untagged)]
pub enum Stopping {
    /// Without a plan of looks.
    Word(StoppingWord),
    /// A number of rounds was planned, and looked at on the way.
    Planned {
        /// The largest number of rounds, fixed before the first shot.
        planned_rounds: u32,
        /// The looks taken so far.
        looked_after: LookedAfter,
    },
}

impl Stopping {
    /// Whether a planned test was looked at before this round.
    #[must_use]
    pub fn was_looked_at_before(&self, round: u32) -> bool {
        match self {
            Self::Word(_) => false,
            // The first look is after the second round.
            Self::Planned { looked_after: LookedAfter::EveryRoundTo(last), .. } => *last >= 2 && round > 2,
            Self::Planned { looked_after: LookedAfter::Rounds(rounds), .. } => {
                rounds.iter().any(|r| *r < round)
            }
        }
    }
}

/// Reads a plan's looks: a number of rounds, or a list of them.
struct LookedAfterVisitor;

impl<'de> Visitor<'de> for LookedAfterVisitor {
    type Value = LookedAfter;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the round looked after last, or a list of rounds")
    }

    fn visit_u64<E: Error>(self, round: u64) -> Result<LookedAfter, E> {
        u32::try_from(round)
            .map(LookedAfter::EveryRoundTo)
            .map_err(|_| E::invalid_value(Unexpected::Unsigned(round), &self))
    }

    fn visit_i64<E: Error>(self, round: i64) -> Result<LookedAfter, E> {
        u64::try_from(round)
            .map_err(|_| E::invalid_value(Unexpected::Signed(round), &self))
            .and_then(|round| self.visit_u64(round))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut rounds: A) -> Result<LookedAfter, A::Error> {
        let mut all = Vec::new();
        while let Some(round) = rounds.next_element()? {
            all.push(round);
        }
        Ok(LookedAfter::Rounds(all))
    }
}

impl<'de> Deserialize<'de> for LookedAfter {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(LookedAfterVisitor)
    }
}

/// Reads a stopping rule: a word or a plan.
struct StoppingVisitor;

impl<'de> Visitor<'de> for StoppingVisitor {
    type Value = Stopping;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("\"fixed\", \"not_fixed\", \"unknown\" or a plan { planned_rounds, looked_after }")
    }

    fn visit_str<E: Error>(self, word: &str) -> Result<Stopping, E> {
        match word {
            "fixed" => Ok(Stopping::Word(StoppingWord::Fixed)),
            "not_fixed" => Ok(Stopping::Word(StoppingWord::NotFixed)),
            "unknown" => Ok(Stopping::Word(StoppingWord::Unknown)),
            _ => Err(E::invalid_value(Unexpected::Str(word), &self)),
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, mut plan: A) -> Result<Stopping, A::Error> {
        let (mut rounds, mut looks) = (None, None);
        while let Some(key) = plan.next_key::<String>()? {
            match key.as_str() {
                "planned_rounds" => rounds = Some(plan.next_value()?),
                "looked_after" => looks = Some(plan.next_value()?),
                other => return Err(A::Error::unknown_field(other, &["planned_rounds", "looked_after"])),
            }
        }
        Ok(Stopping::Planned {
            planned_rounds: rounds.ok_or_else(|| A::Error::missing_field("planned_rounds"))?,
            looked_after: looks.ok_or_else(|| A::Error::missing_field("looked_after"))?,
        })
    }
}

impl<'de> Deserialize<'de> for Stopping {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(StoppingVisitor)
    }
}

impl Default for Stopping {
    fn default() -> Self {
        Self::Word(StoppingWord::Unknown)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<Stopping, String> {
        serde_json::from_str(text).map_err(|e| e.to_string())
    }

    #[test]
    fn a_stopping_rule_is_a_word_or_a_plan_and_reads_back() {
        for text in [
            r#""fixed""#,
            r#""not_fixed""#,
            r#""unknown""#,
            r#"{"planned_rounds":6,"looked_after":3}"#,
            r#"{"planned_rounds":6,"looked_after":[2,4]}"#,
        ] {
            let stopping = read(text).expect("a rule");
            assert_eq!(serde_json::to_string(&stopping).expect("JSON"), text);
        }
    }

    #[test]
    fn what_is_no_rule_is_refused_with_what_a_rule_is() {
        assert!(read(r#""tired""#).is_err_and(|said| said.contains("tired") && said.contains("fixed")));
        assert!(read("7").is_err_and(|said| said.contains("plan")));
        assert!(read(r#"{"looked_after":2}"#).is_err_and(|said| said.contains("planned_rounds")));
        assert!(read(r#"{"planned_rounds":6,"looked_after":-1}"#).is_err_and(|said| said.contains("round")));
    }
}

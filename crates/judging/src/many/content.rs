//! What a session holds as one number, so that two copies of it are one, whatever file, name or form they came in.
//!
//! Source: G. Fowler, L. C. Noll, K.-P. Vo and D. Eastlake, FNV-1a of 128 bits (IETF draft-eastlake-fnv). Not made to withstand
//! somebody who looks for two sessions with one number.

use super::roles::key;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use session::{Order, Session, SummaryOf};
use std::fmt;

/// A session's content.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Content(u128);

const OFFSET: u128 = 0x6c62_272e_07bb_0142_62b8_2175_6295_c58d;
const PRIME: u128 = 0x0000_0000_0100_0000_0000_0000_0000_013b;

impl Content {
    /// Of the names of the builds, the order of hitting, and every shot and average with all its measures.
    #[must_use]
    pub fn of(session: &Session) -> Self {
        let mut hash = Hash(OFFSET);
        for build in &session.builds {
            hash.text(&key(&build.name));
        }
        hash.number(match session.order {
            Order::Interleaved => 1,
            Order::Blocked => 2,
            Order::Unknown => 3,
        });
        // By name: the same columns may stand in another order.
        let mut measures: Vec<(&str, usize)> =
            session.measures.iter().enumerate().map(|(at, id)| (id.as_str(), at)).collect();
        arrange::sort(&mut measures);
        for shot in &session.shots {
            hash.number(shot.build as u64);
            hash.number(u64::from(shot.round.unwrap_or(0)));
            hash.number(u64::from(shot.left_out.is_some()));
            for (id, at) in &measures {
                if let Some(value) = shot.values.get(*at).copied().flatten() {
                    hash.text(id);
                    hash.value(value);
                }
            }
        }
        for summary in &session.summaries {
            hash.number(summary.build as u64);
            hash.number(u64::from(summary.n.unwrap_or(0)));
            hash.number(match summary.of {
                SummaryOf::All => 1,
                SummaryOf::Best => 2,
                SummaryOf::Chosen => 3,
            });
            for (id, value) in summary.values.iter() {
                hash.text(id.as_str());
                for figure in [value.mean, value.sd, value.low, value.high] {
                    hash.number(u64::from(figure.is_some()));
                    hash.value(figure.unwrap_or(0.0));
                }
            }
        }
        Self(hash.0)
    }
}

struct Hash(u128);

impl Hash {
    fn bytes(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u128::from(*byte)).wrapping_mul(PRIME);
        }
    }

    fn number(&mut self, number: u64) {
        self.bytes(&number.to_le_bytes());
    }

    /// Zero has one sign.
    fn value(&mut self, value: f64) {
        self.number((value + 0.0).to_bits());
    }

    /// With its length, so that neighbors do not run into each other.
    fn text(&mut self, text: &str) {
        self.number(text.len() as u64);
        self.bytes(text.as_bytes());
    }
}

impl fmt::Display for Content {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:032x}", self.0)
    }
}

impl Serialize for Content {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Content {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        u128::from_str_radix(&text, 16).map(Self).map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hash_is_the_published_one() {
        // Of nothing, of `a` and of `foobar`: the draft's test values.
        let of = |text: &str| {
            let mut hash = Hash(OFFSET);
            hash.bytes(text.as_bytes());
            format!("{:032x}", hash.0)
        };
        assert_eq!(of(""), "6c62272e07bb014262b821756295c58d");
        assert_eq!(of("a"), "d228cb696f1a8caf78912b704e4a8964");
        assert_eq!(of("foobar"), "343e1662793c64bf6f0d3597ba446f18");
    }
}

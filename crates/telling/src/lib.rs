//! What was judged, in plain words: decisions and numbers in, sentences out, in the language and the units of a voice.
//!
//! Every sentence a golfer reads is made here, by reading a decision and its numbers. Nothing here compares a number with
//! a threshold to find out what is true; only how it is said. [`check::check`] goes the whole way from a session and a
//! question to a report.
//!
//! ```
//! use session::known::Known;
//! use session::question::Question;
//! use session::{Build, Order, Session, Shot};
//! use telling::check::{CheckRequest, check};
//! use text::Voice;
//!
//! let mut session = Session {
//!     builds: ["Own driver", "Driver B"].map(|name| Build { name: name.into() }).to_vec(),
//!     measures: vec![Known::Carry.into()],
//!     order: Order::Interleaved,
//!     ..Session::default()
//! };
//! // Two shots with each club in every round, the other club first in every second one.
//! for (round, carries) in (1..).zip([[251., 247., 263., 259.], [256., 266., 244., 252.], [249., 250., 262., 261.]]) {
//!     for (at, carry) in (0u32..).zip(carries) {
//!         let (build, values) = (((at / 2 + round + 1) % 2) as usize, vec![Some(carry)]);
//!         session.shots.push(Shot { build, round: Some(round), values, ..Shot::default() });
//!     }
//! }
//! let question: Question =
//!     serde_json::from_str(r#"{"baseline": 0, "measure": "carry", "margin": 5, "stopping": "fixed"}"#)?;
//! let report = check(&CheckRequest { session, question }, &Voice::english()).expect("a question that fits");
//! assert_eq!(
//!     report.answer.words.headline,
//!     "Driver B carries farther. On average 7 to 18\u{a0}yd more; it starts to matter at 5\u{a0}yd."
//! );
//! # Ok::<(), serde_json::Error>(())
//! ```

#![warn(clippy::disallowed_methods)]

mod answer;
pub mod bet;
mod both_ways;
mod case;
pub mod cause;
pub mod check;
pub mod claim;
pub mod consistency;
mod ends;
pub mod feel;
pub mod fitting;
pub mod flying;
mod format;
pub mod hand;
mod hints;
mod lacking;
pub mod landing;
mod left_out;
pub mod luck;
pub mod many;
pub mod measures;
mod odd;
mod overlay;
mod paste;
mod phrases;
pub mod plan;
pub mod potential;
mod reasons;
pub mod refusals;
pub mod report;
pub mod second;
pub mod share;
mod spread;
pub mod together;
pub mod trust;
pub mod typical;
pub mod units;
pub mod ways;
mod words;

pub use paste::{CardWords, PasteWords};
pub use words::Words;

//! A session and a question in; what was decided, how sure, and why, out. Numbers and decisions only: no sentence, no
//! language, no unit of display.
//!
//! One way through: [`settle`](settle::settle) fills every gap of the question once, [`judge`](judge::judge) compares and
//! decides once; everything beside the verdict (trust, honest lead, what a few shots less would change) takes what was
//! judged and never judges again. Knows no clocks, no random devices and no browser.
//!
//! ```
//! use judging::verdict::{DecisionKind, Direction, Matters};
//! use judging::{judge, settle};
//! use session::known::Known;
//! use session::question::Question;
//! use session::{Build, Order, Session, Shot};
//!
//! let mut session = Session {
//!     builds: ["Own driver", "Driver B"].map(|name| Build { name: name.into() }).to_vec(),
//!     measures: vec![Known::Carry.into()],
//!     order: Order::Interleaved,
//!     ..Session::default()
//! };
//! // Two shots with each club in every round.
//! for (round, carries) in (1..).zip([[251., 247., 263., 259.], [244., 252., 256., 266.], [249., 250., 262., 261.]]) {
//!     for (at, carry) in carries.into_iter().enumerate() {
//!         let (build, values) = (at / 2, vec![Some(carry)]);
//!         session.shots.push(Shot { build, round: Some(round), values, ..Shot::default() });
//!     }
//! }
//! let question: Question =
//!     serde_json::from_str(r#"{"baseline": 0, "measure": "carry", "margin": 5, "stopping": "fixed"}"#)?;
//! let judged = judge(settle(&question, &session).expect("a question that fits"));
//! let decision = judged.headline().expect("a candidate").decision;
//! assert_eq!((decision.kind, decision.direction), (DecisionKind::Different, Some(Direction::Higher)));
//! assert_eq!(decision.matters, Some(Matters::Yes));
//! # Ok::<(), serde_json::Error>(())
//! ```

#![warn(clippy::disallowed_methods)]

pub mod analysis;
pub mod bet;
pub mod cause;
pub mod choice;
pub mod claim;
pub mod consistency;
pub mod facts;
pub mod feel;
pub mod fitting;
pub mod flying;
pub mod fragile;
mod holm;
pub mod honest_lead;
pub mod interval;
pub mod judge;
pub mod landing;
pub mod luck;
pub mod many;
pub mod next_to_nothing;
pub mod plan;
pub mod potential;
pub mod second;
pub mod settle;
pub mod together;
pub mod trust;
pub mod typical;
pub mod verdict;

pub use judge::{Judged, Judgment, judge};
pub use settle::{Asked, Settled, settle};

//! Files and folders in; sessions, answers and piles out: what the terminal and Python share. Nothing is decided or told
//! here, and nothing stops a pile: what is refused is listed with its place and a remedy.
//!
//! ```
//! use files::{Asking, answer, session_of};
//! use text::Voice;
//!
//! let voice = Voice::english();
//! let text = "Club,Carry\nOwn,250\nOwn,244\nOwn,252\nB,256\nB,262\nB,259\n";
//! let read = session_of(text, "shots.csv", None, &voice).expect("a table of shots");
//! let report = answer(&read, &Asking::default(), &voice).expect("a question that fits");
//! assert_eq!(report.asked.measure.as_str(), "carry");
//! assert!(session_of("", "empty.csv", None, &voice).is_err());
//! ```

mod asking;
mod open;
mod season;
mod tables;
mod unread;
mod walk;

pub use asking::{Asking, answer, question};
pub use open::{MOST_BYTES, SessionRead, read_bytes, read_file, session_of};
pub use season::{AboutSeason, Season, SeasonAnswered};
pub use tables::{Claims, claims_of, names_of};
pub use unread::Unread;
pub use walk::walk;

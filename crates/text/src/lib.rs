//! What the core says, in one catalogue per language.
//!
//! `en/` and `es/` hold the same messages, in the syntax of Fluent; the build makes a module of each file, a typed
//! function of each message, and an enum of the words that a message chooses by. Every function is told in which
//! [`Voice`] to speak; nothing is remembered from one call to the next. English is compiled in, message by message where
//! it is used. Another language is one text that the host fetches, for [`Language::from_table`].
//!
//! ```
//! use text::{feel, format};
//! use text::{Language, Units, Voice};
//!
//! let english = Voice::english();
//! let spanish = Voice::new(Language::from_table(text::SPANISH)?, Units::Meters);
//! assert_eq!(format::shots(&english, 2), "2 shots");
//! assert_eq!(format::shots(&spanish, 2), "2 golpes");
//! assert_eq!(
//!     feel::same(&english, "Driver B", feel::Feeling::Longer),
//!     "Driver B felt longer; by the shots they are the same for your purpose."
//! );
//! # Ok::<(), text::NotOfThisVersion>(())
//! ```
//!
//! A word that no message knows does not build:
//!
//! ```compile_fail,E0599
//! # let english = text::Voice::english();
//! text::feel::same(&english, "Driver B", text::feel::Feeling::Longest);
//! ```

mod arg;
mod capital;
pub mod names;
mod number;
mod render;
#[cfg(feature = "traced")]
pub mod traced;
mod voice;

pub use capital::capital;
pub use number::{decimal_mark, grouped, with_marks};
pub use voice::{Language, NotOfThisVersion, Units, Voice, Whose};

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

/// The table of Spanish, for [`Language::from_table`]; nothing that only speaks English carries it.
pub const SPANISH: &str = include_str!(concat!(env!("OUT_DIR"), "/es.txt"));

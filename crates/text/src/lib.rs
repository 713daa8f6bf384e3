//! What the core says, in one catalogue per language.
//!
//! `en/` and `es/` hold the same messages, in the syntax of Fluent; the build makes a module of each file and a typed
//! function of each message. English is compiled in, message by message where it is used. Another language is one text
//! that the host fetches and hands to [`speak`]; until then, and whenever that text is not of this version, everything is
//! said in English.
//!
//! ```
//! assert_eq!(text::format::shots(1), "1 shot");
//! text::speak(text::SPANISH)?;
//! assert_eq!(text::format::shots(2), "2 golpes");
//! # Ok::<(), text::NotOfThisVersion>(())
//! ```

mod number;
mod render;
mod spoken;

pub use number::{grouped, with_marks};
pub use spoken::{NotOfThisVersion, language, speak, speak_english};

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

/// The table of Spanish, for [`speak`]; nothing that only speaks English carries it.
pub const SPANISH: &str = include_str!(concat!(env!("OUT_DIR"), "/es.txt"));

//! A session, its question and how it was looked at as one short text that fits an address: nothing is stored
//! anywhere, the link is the session.
//!
//! `1.` and then, in letters that addresses keep (`base64`), tagged sections and a check sum over them. A section
//! that this version does not know is skipped with a notice, so links of later versions open as far as they can; what
//! a section once meant it means forever (`tests/links`). Values come back at the precision they were given in
//! (`column`). Reading holds every length against a limit first: any text gives a session or an error, quickly.

mod asked;
mod base64;
mod bytes;
mod codes;
mod column;
mod contents;
mod error;
mod left;
mod limits;
mod notice;
mod plan;
mod sealed;
mod second_and_weather;
mod series;
mod session;
mod tag;
mod view;

pub use error::{LinkError, PackError, TooLarge};
pub use left::left_of;
pub use limits::{MOST_CHARACTERS, MOST_SHOTS};
pub use notice::LinkNotice;
pub use plan::{PLAN_PREFIX, PlanToShare, SharedPlan, WriteOut, pack_plan, unpack_plan};
pub use session::{PackRequest, Unpacked, pack, unpack};

//! The one way into the core and out of it: plain objects in, plain objects out, no state, no arithmetic, no wording.
//!
//! Every function stands here once, in the module of what it serves. A host calls it as one package; a page loads that
//! package in two parts (`cargo xtask build`), without the functions knowing of it.

mod answers;
mod call;
mod coach;
mod columns;
mod flight;
mod objects;
mod take;
mod texts;
mod voice;
pub mod whole;

pub use answers::*;
pub use coach::*;
pub use flight::*;
pub use texts::*;

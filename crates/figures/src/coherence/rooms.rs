//! The parts of the page beside the answer, told of the same session: with what is true of each.

use super::fact::Fact;
use super::sessions::Asked;
use super::told::Telling;

/// Tells every part that has something to say of a session.
pub(crate) fn tell(_number: u64, _asked: &Asked, _telling: &mut Telling<'_>, _truths: &mut Vec<Fact>) {}

//! What is said of a reading: doubts, disagreements, order, and the result itself.

pub(crate) mod agreement;
pub(crate) mod finish;
pub(crate) mod order;
pub(crate) mod plausible;
pub(crate) mod whole;

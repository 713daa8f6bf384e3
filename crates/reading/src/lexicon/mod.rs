//! What single cells and headings mean: numbers, sides, clocks, and the words of the trade.

pub(crate) mod bare;
pub(crate) mod clock;
pub(crate) mod decimal;
pub(crate) mod figure;
pub(crate) mod heading;
pub(crate) mod languages;
pub(crate) mod marks;
pub(crate) mod number;
pub(crate) mod pair;
pub(crate) mod side;
pub(crate) mod spanish;
pub(crate) mod vocabulary;
pub(crate) mod word;

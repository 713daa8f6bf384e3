//! Many sessions, mostly of different golfers: what a fitting here brings, what the next one will, and how many leads were luck.
//!
//! Each session is judged as ever; of what was judged a [`Line`] is kept, a [`Pile`] is a set of lines that piles can be put
//! together from in any order and any number of times, and [`many`] reads the whole pile once. What each session holds is
//! its gap with two numbers for its error, not sums over a grid of spreads: those would be smaller only beyond a thousand
//! sessions, could not be read for a single one, and would add up to other last bits in another order.
//! Limits: averages, not scatter. Only clubs hit in turn are pooled: what the order did is no luck that many sessions even out.

mod answer;
mod both;
mod content;
mod found;
mod line;
mod not_pooled;
mod pile;
mod question;
mod roles;

pub use answer::{
    Brings, ClaimsFound, Findings, Many, NotPooledCount, OneOfMany, PulledTo, Share, ValueFound,
};
pub use content::Content;
pub use found::many;
pub use line::{Gap, Line, line};
pub use not_pooled::NotPooled;
pub use pile::{Kept, Pile, PilesDiffer};
pub use question::{ManyQuestion, ManyRefused, Sent, USUAL_RATE};
pub use roles::{Named, Names, RoleOfName, roles};

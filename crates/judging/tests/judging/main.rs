//! What is decided of a session, checked from the shots to the fact, without a word. One program: it is linked once.

#[path = "../../../telling/tests/telling/support/dice.rs"]
mod dice;
mod support;

mod boundaries;
mod compared;
mod days;
mod feelings;
mod flights;
mod landings;
mod leads;
mod luck;
mod piles;
mod plans;
mod promised;
mod rooms;
mod trusted;

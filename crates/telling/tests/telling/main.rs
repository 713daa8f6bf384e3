//! What the page says of a session, checked from the shots to the sentence. One program: it is linked once.

#[path = "support/dice.rs"]
mod dice;
mod made;
mod support;

mod averages_alone;
mod bets;
mod cause;
mod claims;
mod comparisons;
mod consistency;
mod decisions;
mod deeper;
mod honest_leads;
mod intervals_printed;
mod landing;
mod leading;
mod learned;
mod luck;
mod more_shots;
mod moved;
mod odd_values;
mod order_known;
mod planning;
mod potential;
mod promises;
mod published;
mod read_aloud;
mod removals;
mod scatterless;
mod second;
mod set_aside;
mod settled_once;
mod share;
mod straighter;
mod strictness;
mod trust;
mod trust_bounds;
mod trust_figures;
mod typical_shots;
mod usual_figures;
mod verdicts;
mod weather;
mod whose;
mod worded;
mod words;

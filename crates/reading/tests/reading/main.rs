//! What is read out of texts and links, and what is said of it. One program: it is linked once.

mod any_session;
#[path = "support/decoded.rs"]
mod decoded;
mod support;

mod corpus;
mod limits;
mod links;
mod plain;
mod plan_links;
mod properties;
mod read;
mod second_factor;
mod voices;

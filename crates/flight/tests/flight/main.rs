//! Everything the crate promises, held against check values, closed forms and symmetries.

#![allow(clippy::unwrap_used, reason = "a test that cannot read its own case must fail")]

mod closed_forms;
mod edges;
mod impact;
mod properties;
mod reference;
mod refusals;
mod searches;
mod support;
mod tables;

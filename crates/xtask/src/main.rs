//! Builds, serves, tests, measures.
fn main() {}

//! What the inputs hold, or why it cannot be had.

use serde_json::Value;

pub(crate) type Failed = Box<dyn std::error::Error>;

/// A number of a JSON object by its name.
pub(crate) fn number(of: &Value, name: &str) -> Result<u32, Failed> {
    let found = of.get(name).and_then(Value::as_u64).and_then(|n| u32::try_from(n).ok());
    found.ok_or_else(|| format!("no number `{name}`").into())
}

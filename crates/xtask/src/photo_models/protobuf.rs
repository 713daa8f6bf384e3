//! Just enough of protobuf to change single fields of a message and write it again.

use anyhow::{Context, Result, bail};

/// What stands in a field.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Value {
    Varint(u64),
    Fixed64([u8; 8]),
    Fixed32([u8; 4]),
    /// A text, a list of numbers, or a message inside.
    Bytes(Vec<u8>),
}

/// A message: its fields in their order, by number.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Message {
    pub(super) fields: Vec<(u32, Value)>,
}

impl Message {
    pub(super) fn parse(bytes: &[u8]) -> Result<Self> {
        let mut rest = bytes;
        let mut fields = Vec::new();
        while !rest.is_empty() {
            let key = varint(&mut rest)?;
            let value = match key & 7 {
                0 => Value::Varint(varint(&mut rest)?),
                1 => Value::Fixed64(take(&mut rest, 8)?.try_into()?),
                2 => {
                    let length = usize::try_from(varint(&mut rest)?)?;
                    Value::Bytes(take(&mut rest, length)?.to_vec())
                }
                5 => Value::Fixed32(take(&mut rest, 4)?.try_into()?),
                other => bail!("wire type {other}"),
            };
            fields.push((u32::try_from(key >> 3)?, value));
        }
        Ok(Self { fields })
    }

    pub(super) fn bytes(&self) -> Vec<u8> {
        let mut out = Vec::new();
        for (number, value) in &self.fields {
            let key = u64::from(*number) << 3;
            match value {
                Value::Varint(value) => {
                    push(&mut out, key);
                    push(&mut out, *value);
                }
                Value::Fixed64(bytes) => {
                    push(&mut out, key | 1);
                    out.extend(bytes);
                }
                Value::Bytes(bytes) => {
                    push(&mut out, key | 2);
                    push(&mut out, bytes.len() as u64);
                    out.extend(bytes);
                }
                Value::Fixed32(bytes) => {
                    push(&mut out, key | 5);
                    out.extend(bytes);
                }
            }
        }
        out
    }

    /// The first bytes under a number.
    pub(super) fn get(&self, number: u32) -> Option<&[u8]> {
        self.all(number).next()
    }

    /// The first text under a number; empty when there is none.
    pub(super) fn text(&self, number: u32) -> String {
        String::from_utf8_lossy(self.get(number).unwrap_or_default()).into_owned()
    }

    /// Everything that stands as bytes under a number.
    pub(super) fn all(&self, number: u32) -> impl Iterator<Item = &[u8]> {
        self.fields.iter().filter_map(move |(found, value)| match value {
            Value::Bytes(bytes) if *found == number => Some(bytes.as_slice()),
            _ => None,
        })
    }

    /// The messages under a number.
    pub(super) fn messages(&self, number: u32) -> Result<Vec<Self>> {
        self.all(number).map(Self::parse).collect()
    }

    /// The whole numbers under a number, packed or one by one.
    pub(super) fn integers(&self, number: u32) -> Result<Vec<u64>> {
        let mut found = Vec::new();
        for (_, value) in self.fields.iter().filter(|(field, _)| *field == number) {
            match value {
                Value::Varint(value) => found.push(*value),
                Value::Bytes(packed) => {
                    let mut rest = packed.as_slice();
                    while !rest.is_empty() {
                        found.push(varint(&mut rest)?);
                    }
                }
                Value::Fixed64(_) | Value::Fixed32(_) => bail!("field {number} holds no whole numbers"),
            }
        }
        Ok(found)
    }

    pub(super) fn add(&mut self, number: u32, bytes: impl Into<Vec<u8>>) {
        self.fields.push((number, Value::Bytes(bytes.into())));
    }

    pub(super) fn add_integer(&mut self, number: u32, value: u64) {
        self.fields.push((number, Value::Varint(value)));
    }

    pub(super) fn remove(&mut self, number: u32) {
        self.fields.retain(|(field, _)| *field != number);
    }
}

fn take<'a>(rest: &mut &'a [u8], length: usize) -> Result<&'a [u8]> {
    let (taken, left) = rest.split_at_checked(length).context("a field ends too early")?;
    *rest = left;
    Ok(taken)
}

fn varint(rest: &mut &[u8]) -> Result<u64> {
    let mut value = 0;
    for shift in (0..64).step_by(7) {
        let byte = take(rest, 1)?[0];
        value |= u64::from(byte & 0x7f) << shift;
        if byte < 0x80 {
            return Ok(value);
        }
    }
    bail!("a number that does not end")
}

fn push(out: &mut Vec<u8>, mut value: u64) {
    while value >= 0x80 {
        out.push(u8::try_from(value & 0x7f).unwrap_or(0) | 0x80);
        value >>= 7;
    }
    out.push(u8::try_from(value).unwrap_or(0));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_message_is_written_as_it_was_read() {
        let mut message = Message::default();
        message.add_integer(1, 300);
        message.add(8, "name");
        message.fields.push((2, Value::Fixed32([1, 2, 3, 4])));
        message.fields.push((16, Value::Fixed64([9; 8])));
        let bytes = message.bytes();
        assert_eq!(bytes[..3], [8, 0xac, 2]);
        let again = Message::parse(&bytes).unwrap();
        assert_eq!(again, message);
        assert_eq!((again.integers(1).unwrap(), again.text(8)), (vec![300], "name".into()));
        assert!(Message::parse(&bytes[..bytes.len() - 1]).is_err());
    }
}

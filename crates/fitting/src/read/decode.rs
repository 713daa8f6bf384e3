//! Bytes of a file into text: UTF-8, UTF-16 either way round, Windows-1252.
//!
//! Total: every sequence of bytes gives a text. What was assumed is said, since a file does not
//! have to tell. Source of the table: WHATWG Encoding Standard, index windows-1252.

use serde::Serialize;

/// How bytes were read as text.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Encoding {
    /// UTF-8, with or without a byte order mark.
    Utf8,
    /// UTF-16, low byte first.
    Utf16Le,
    /// UTF-16, high byte first.
    Utf16Be,
    /// Windows-1252, taken when the bytes are no UTF.
    Windows1252,
}

/// A file's text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Decoded {
    /// The text, without a byte order mark.
    pub text: String,
    /// How the bytes were read.
    pub encoding: Encoding,
    /// Whether a byte order mark or the bytes themselves leave no doubt.
    pub sure: bool,
    /// Characters that made no sense and stand as `U+FFFD`.
    pub replaced: usize,
}

/// The bytes 0x80 to 0x9F; the others are their own code points.
const HIGH_CONTROLS: [char; 32] = [
    '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž', '\u{8f}', '\u{90}',
    '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}', 'ž', 'Ÿ',
];

/// Reads the bytes of a file as text.
#[must_use]
pub fn decode(bytes: &[u8]) -> Decoded {
    match bytes {
        [0xEF, 0xBB, 0xBF, rest @ ..] => lossy_utf8(rest),
        [0xFF, 0xFE, rest @ ..] => utf16(rest, Encoding::Utf16Le, true),
        [0xFE, 0xFF, rest @ ..] => utf16(rest, Encoding::Utf16Be, true),
        _ => match zeros(bytes) {
            Some(encoding) => utf16(bytes, encoding, false),
            None => match std::str::from_utf8(bytes) {
                Ok(text) => {
                    Decoded { text: text.to_owned(), encoding: Encoding::Utf8, sure: true, replaced: 0 }
                }
                Err(_) => windows_1252(bytes),
            },
        },
    }
}

fn lossy_utf8(bytes: &[u8]) -> Decoded {
    let text = String::from_utf8_lossy(bytes).into_owned();
    let replaced = text.matches(char::REPLACEMENT_CHARACTER).count();
    Decoded { text, encoding: Encoding::Utf8, sure: true, replaced }
}

fn utf16(bytes: &[u8], encoding: Encoding, sure: bool) -> Decoded {
    let units = bytes.chunks(2).map(|pair| match (pair, encoding) {
        ([low, high], Encoding::Utf16Le) => u16::from_le_bytes([*low, *high]),
        ([high, low], _) => u16::from_be_bytes([*high, *low]),
        // Half a unit at the end.
        _ => 0xFFFD,
    });
    let mut replaced = 0;
    let text = char::decode_utf16(units)
        .map(|unit| {
            let c = unit.unwrap_or(char::REPLACEMENT_CHARACTER);
            replaced += usize::from(c == char::REPLACEMENT_CHARACTER);
            c
        })
        .collect();
    Decoded { text, encoding, sure, replaced }
}

fn windows_1252(bytes: &[u8]) -> Decoded {
    let text = bytes
        .iter()
        .map(|&byte| match byte {
            0x80..=0x9F => HIGH_CONTROLS[usize::from(byte - 0x80)],
            other => char::from(other),
        })
        .collect();
    Decoded { text, encoding: Encoding::Windows1252, sure: false, replaced: 0 }
}

/// UTF-16 without a mark: text of western letters has a zero in every other byte.
fn zeros(bytes: &[u8]) -> Option<Encoding> {
    let sample = &bytes[..bytes.len().min(4096)];
    let count = |first: usize| sample.iter().skip(first).step_by(2).filter(|b| **b == 0).count();
    let (even, odd) = (count(0), count(1));
    let pairs = sample.len() / 2;
    if pairs > 0 && odd * 3 > pairs && even * 10 < pairs {
        Some(Encoding::Utf16Le)
    } else if pairs > 0 && even * 3 > pairs && odd * 10 < pairs {
        Some(Encoding::Utf16Be)
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_encoding_gives_the_same_text() {
        let text = "Build;Carry\nDriver Ä – lang;250,5°\n";
        let utf16 = |bytes: fn(u16) -> [u8; 2]| text.encode_utf16().flat_map(bytes).collect::<Vec<u8>>();
        let little = utf16(u16::to_le_bytes);
        let big = utf16(u16::to_be_bytes);
        let windows: Vec<u8> = text
            .chars()
            .map(|c| if c == '–' { 0x96 } else { u8::try_from(u32::from(c)).expect("a Windows-1252 letter") })
            .collect();
        let cases: [(Vec<u8>, Encoding); 7] = [
            (text.as_bytes().to_vec(), Encoding::Utf8),
            ([b"\xEF\xBB\xBF", text.as_bytes()].concat(), Encoding::Utf8),
            ([b"\xFF\xFE".as_slice(), &little].concat(), Encoding::Utf16Le),
            ([b"\xFE\xFF".as_slice(), &big].concat(), Encoding::Utf16Be),
            (little, Encoding::Utf16Le),
            (big, Encoding::Utf16Be),
            (windows, Encoding::Windows1252),
        ];
        for (bytes, encoding) in cases {
            let decoded = decode(&bytes);
            assert_eq!((decoded.text.as_str(), decoded.encoding, decoded.replaced), (text, encoding, 0));
        }
    }

    #[test]
    fn broken_bytes_are_replaced_and_counted() {
        let decoded = decode(b"\xEF\xBB\xBFA\xFFB");
        assert_eq!((decoded.text.as_str(), decoded.replaced), ("A\u{fffd}B", 1));
        let decoded = decode(b"\xFF\xFEA\0\x00\xD8B");
        assert_eq!(decoded.text, "A\u{fffd}\u{fffd}");
        assert_eq!(decode(b"").text, "");
    }
}

//! Bytes as text that survives an address, an e-mail and a forum: base64 with `-` and `_`, no padding.
//!
//! Strict: any other character, a stray length and bits left over that are not zero are refused, so that one
//! content has one text. Source: RFC 4648, section 5.

const ALPHABET: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// Six bits a character, the first bits first.
pub(crate) fn encode(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for chunk in bytes.chunks(3) {
        let word =
            chunk.iter().fold(0_u32, |word, &byte| word << 8 | u32::from(byte)) << (8 * (3 - chunk.len()));
        for position in 0..=chunk.len() {
            let six = (word >> (18 - 6 * position)) & 63;
            text.push(char::from(ALPHABET[six as usize]));
        }
    }
    text
}

/// The bytes of a text, `None` when it was not made by [`encode`].
pub(crate) fn decode(text: &[u8]) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3 + 2);
    for chunk in text.chunks(4) {
        if chunk.len() == 1 {
            return None;
        }
        let mut word = 0_u32;
        for &character in chunk {
            word = word << 6 | six_bits(character)?;
        }
        word <<= 6 * (4 - chunk.len());
        let [_, content @ ..] = word.to_be_bytes();
        let (whole, over) = content.split_at(chunk.len() - 1);
        if over.iter().any(|&byte| byte != 0) {
            return None;
        }
        bytes.extend_from_slice(whole);
    }
    Some(bytes)
}

/// Whether a character can stand in such a text.
pub(crate) fn holds(character: u8) -> bool {
    six_bits(character).is_some()
}

fn six_bits(character: u8) -> Option<u32> {
    let value = match character {
        b'A'..=b'Z' => character - b'A',
        b'a'..=b'z' => character - b'a' + 26,
        b'0'..=b'9' => character - b'0' + 52,
        b'-' => 62,
        b'_' => 63,
        _ => return None,
    };
    Some(u32::from(value))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_examples_of_the_rfc_without_their_padding() {
        for (bytes, text) in [
            ("", ""),
            ("f", "Zg"),
            ("fo", "Zm8"),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg"),
            ("fooba", "Zm9vYmE"),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(encode(bytes.as_bytes()), text);
            assert_eq!(decode(text.as_bytes()).as_deref(), Some(bytes.as_bytes()));
        }
        assert_eq!(encode(&[0xfb, 0xff]), "-_8");
    }

    #[test]
    fn one_content_has_one_text() {
        // A stray character, padding, the other alphabet, a stray length, bits left over.
        for text in ["Z", "Zm9vY", "Zg==", "+_8", "Zh", "Zm9"] {
            assert_eq!(decode(text.as_bytes()), None, "{text}");
        }
    }
}

//! What the bytes of a file are, before any of them is text. The host has the decoders; here is which one to take.

/// How bytes are to be read as text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
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

impl Encoding {
    /// Its name in the WHATWG Encoding Standard.
    #[must_use]
    pub fn label(self) -> &'static str {
        match self {
            Self::Utf8 => "utf-8",
            Self::Utf16Le => "utf-16le",
            Self::Utf16Be => "utf-16be",
            Self::Windows1252 => "windows-1252",
        }
    }
}

/// What a file is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileIs {
    /// Sheets, for what opens workbooks.
    Workbook,
    /// Text in this encoding.
    Text(Encoding),
}

/// So many bytes tell whether a file is text, and whether every other one is zero.
const LOOKED_AT: usize = 4096;

/// A file that is no text and no workbook, such as a photo.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotText;

/// Looks at the bytes of a file.
///
/// # Errors
/// [`NotText`] when the bytes are no text and no workbook, such as a photo.
pub fn recognize(bytes: &[u8]) -> Result<FileIs, NotText> {
    let encoding = match bytes {
        // Packed files, and the file systems that older workbooks and locked ones are.
        [b'P', b'K', 3, 4, ..] | [0xD0, 0xCF, 0x11, 0xE0, ..] => return Ok(FileIs::Workbook),
        [0xFF, 0xFE, ..] => Encoding::Utf16Le,
        [0xFE, 0xFF, ..] => Encoding::Utf16Be,
        _ => {
            let start = &bytes[..bytes.len().min(LOOKED_AT)];
            match unmarked_utf16(start) {
                Some(encoding) => encoding,
                None if start.contains(&0) => return Err(NotText),
                None if bytes.starts_with(b"\xEF\xBB\xBF") || std::str::from_utf8(bytes).is_ok() => {
                    Encoding::Utf8
                }
                None => Encoding::Windows1252,
            }
        }
    };
    Ok(FileIs::Text(encoding))
}

/// UTF-16 without a mark: text of western letters has a zero in every other byte.
fn unmarked_utf16(start: &[u8]) -> Option<Encoding> {
    let zeros = |first: usize| start.iter().skip(first).step_by(2).filter(|b| **b == 0).count();
    let (even, odd) = (zeros(0), zeros(1));
    let pairs = start.len() / 2;
    if odd * 3 > pairs && even * 10 < pairs {
        Some(Encoding::Utf16Le)
    } else if even * 3 > pairs && odd * 10 < pairs {
        Some(Encoding::Utf16Be)
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_encoding_is_told_by_its_mark_or_its_bytes() {
        let text = "Build;Carry\nDriver Ä – lang;250,5°\n";
        let utf16 = |bytes: fn(u16) -> [u8; 2]| text.encode_utf16().flat_map(bytes).collect::<Vec<u8>>();
        let (little, big) = (utf16(u16::to_le_bytes), utf16(u16::to_be_bytes));
        let windows: Vec<u8> = text
            .chars()
            .map(|c| if c == '–' { 0x96 } else { u8::try_from(u32::from(c)).expect("a Windows-1252 letter") })
            .collect();
        let cases: [(Vec<u8>, Encoding); 8] = [
            (Vec::new(), Encoding::Utf8),
            (text.as_bytes().to_vec(), Encoding::Utf8),
            // Broken, but it says what it is.
            (b"\xEF\xBB\xBFA\xFFB".to_vec(), Encoding::Utf8),
            ([b"\xFF\xFE".as_slice(), &little].concat(), Encoding::Utf16Le),
            ([b"\xFE\xFF".as_slice(), &big].concat(), Encoding::Utf16Be),
            (little, Encoding::Utf16Le),
            (big, Encoding::Utf16Be),
            (windows, Encoding::Windows1252),
        ];
        for (bytes, encoding) in cases {
            assert_eq!(recognize(&bytes), Ok(FileIs::Text(encoding)), "{bytes:?}");
        }
    }

    #[test]
    fn workbooks_are_known_by_their_first_bytes_locked_ones_too() {
        assert_eq!(recognize(b"PK\x03\x04\x14"), Ok(FileIs::Workbook));
        assert_eq!(recognize(b"\xD0\xCF\x11\xE0"), Ok(FileIs::Workbook));
    }

    #[test]
    fn a_picture_is_no_text() {
        assert_eq!(recognize(b"\x89PNG\x00\x01"), Err(NotText));
    }
}

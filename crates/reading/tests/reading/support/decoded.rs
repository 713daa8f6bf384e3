//! What a browser's decoder makes of a file's bytes, by the crate that one of them uses.

use encoding_rs::Encoding;
use reading::{FileIs, recognize};

/// The text of a file; of one that is no text, whatever UTF-8 makes of it.
pub(crate) fn decoded(bytes: &[u8]) -> String {
    let label = match recognize(bytes) {
        Ok(FileIs::Text(encoding)) => encoding.label(),
        _ => "utf-8",
    };
    let encoding = Encoding::for_label(label.as_bytes()).expect("a name of the standard");
    encoding.decode(bytes).0.into_owned()
}

//! Why a shot was left out, in the language spoken where the reason is one that golfers usually give; any other stands as
//! it was written.

use session::names::short_name;
use text::Voice;
use text::reasons::{self as say, Kind};

/// How golfers write them, whichever language they were written in.
const WRITTEN: [(Kind, &[&str]); 12] = [
    (Kind::Mishit, &["mishit", "mis-hit", "miss-hit", "fallo", "mal golpe"]),
    (Kind::Thin, &["thin", "thinned", "bladed", "filazo", "fina", "fino"]),
    (Kind::Fat, &["fat", "chunk", "chunked", "heavy", "pesado", "pesada", "gorda"]),
    (Kind::Topped, &["topped", "top", "topada", "topado", "top bola"]),
    (Kind::Shanked, &["shank", "shanked", "hosel", "socket", "caña"]),
    (Kind::Skied, &["skied", "sky", "skyed", "popped up", "globo"]),
    (Kind::Toe, &["toe", "off the toe", "toed", "de punta", "punta"]),
    (Kind::Heel, &["heel", "off the heel", "heeled", "de talón", "talón"]),
    (Kind::Slip, &["slip of the keys", "typo", "error al escribir"]),
    (Kind::WrongClub, &["wrong club", "otro palo"]),
    (Kind::Fault, &["fault of ball or reading", "misread", "fallo de la bola o de la medición"]),
    (Kind::Other, &["other reason", "otra razón"]),
];

/// A reason as it is told.
pub(crate) fn told(reason: &str, voice: &Voice) -> String {
    let plain = reason.trim().to_lowercase();
    let known = WRITTEN.iter().find(|(_, written)| written.contains(&plain.as_str()));
    known.map_or_else(|| short_name(reason), |(kind, _)| say::kind(voice, *kind))
}

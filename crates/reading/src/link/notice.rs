//! What is worth knowing about a link that opens.

use serde::Serialize;
use session::Session;
use session::measure::MeasureId;
use session::names::short_name;
use text::Voice;
use text::capital;
use text::link;
use text::names::spoken;

/// Something about a link worth knowing that keeps it from nothing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum LinkNotice {
    /// The values of a measure had more digits than a link keeps.
    Rounded {
        /// The measure.
        measure: MeasureId,
        /// In plain words.
        message: String,
    },
    /// A later version wrote something that this one does not know.
    Skipped {
        /// In plain words.
        message: String,
    },
}

/// Says which measure the link keeps fewer digits of than it was given with.
pub(crate) fn rounded(measure: MeasureId, session: &Session, voice: &Voice) -> LinkNotice {
    let name = match measure.known() {
        Some(known) => spoken(known, voice),
        None => short_name(session.custom(&measure).map_or(measure.as_str(), |custom| &custom.name)),
    };
    let message = link::digits_lost(voice, &capital(&name));
    LinkNotice::Rounded { measure, message }
}

/// Says that there were sections that this version does not know.
pub(crate) fn skipped(unknown: usize, voice: &Voice) -> Vec<LinkNotice> {
    let notice = || LinkNotice::Skipped { message: link::parts_unknown(voice) };
    (unknown > 0).then(notice).into_iter().collect()
}

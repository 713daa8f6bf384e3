//! The trade's measures as golfers are told of them: names, and the margins that a form offers.

use crate::units::offered;
use serde::Serialize;
use session::known::{Facts, Known, MarginBecause};
use session::measure::{Better, Plausible, Unit};
use text::Voice;
use text::measure::{self as say, Reason};
use text::names::title;

/// One measure of the trade, in the language and the units of a voice.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(rename = "Measure"))]
pub struct MeasureInWords {
    /// Stable id.
    pub id: &'static str,
    /// The trade's name.
    pub name: String,
    /// Canonical unit.
    pub unit: Unit,
    /// Digits after the point that are worth showing.
    pub decimals: u8,
    /// Which way is usually wanted.
    pub better: Better,
    /// Values outside are questioned, never removed.
    pub plausible: Plausible,
    /// Smallest difference that usually matters, in the canonical unit: what is decided by when nobody says another.
    pub margin: f64,
    /// What a form offers in its place before the question is asked: in the canonical unit, and a round number in the
    /// units shown. The same as `margin` in yards; in meters it is the golfer's own once the question holds it.
    pub offered_margin: f64,
    /// Why that margin.
    pub margin_why: String,
}

/// The trade's measures in the order they are shown.
#[must_use]
pub fn measures(voice: &Voice) -> Vec<MeasureInWords> {
    Known::ALL.iter().map(|known| in_words(known.facts(), voice)).collect()
}

fn in_words(facts: &Facts, voice: &Voice) -> MeasureInWords {
    let Facts { known, id, unit, decimals, better, plausible, margin, margin_because, .. } = *facts;
    MeasureInWords {
        id,
        name: title(known, voice),
        unit,
        decimals,
        better,
        plausible,
        margin,
        offered_margin: offered(unit, margin, voice),
        margin_why: say::margin_why(voice, because(margin_because)),
    }
}

fn because(because: MarginBecause) -> Reason {
    match because {
        MarginBecause::ClubLength => Reason::ClubLength,
        MarginBecause::QuarterFairway => Reason::QuarterFairway,
        MarginBecause::Speed => Reason::Speed,
        MarginBecause::SpeedOfClub => Reason::SpeedOfClub,
        MarginBecause::Flight => Reason::Flight,
        MarginBecause::Delivery => Reason::Delivery,
        MarginBecause::Strike => Reason::Strike,
    }
}

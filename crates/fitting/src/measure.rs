//! The measures of the trade: what they are called, their unit, their plausible range, and
//! the smallest difference that usually matters.
//!
//! Ranges and worthwhile differences are common practice, no source; the golfer can change
//! the worthwhile difference. To add a measure, add a row to [`MEASURES`].

use crate::words::capital;
use serde::{Deserialize, Serialize};

/// The id of a measure: one of the trade's list or made from a heading.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(transparent)]
pub struct MeasureId(pub String);

impl From<&str> for MeasureId {
    fn from(id: &str) -> Self {
        Self(id.to_owned())
    }
}

impl std::fmt::Display for MeasureId {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

/// Which way of a measure is usually wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Better {
    /// More is usually wanted.
    Higher,
    /// Less is usually wanted.
    Lower,
    /// Nearer to zero is usually wanted.
    NearerZero,
    /// It depends on the golfer.
    Depends,
}

/// The canonical unit of a measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    /// Yards.
    Yd,
    /// Miles per hour.
    Mph,
    /// Revolutions per minute.
    Rpm,
    /// Degrees.
    Deg,
    /// Seconds.
    S,
    /// Millimetres.
    Mm,
    /// A plain ratio.
    #[serde(rename = "")]
    Ratio,
}

/// The values a measure can take on a range.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Plausible {
    /// Lowest plausible value.
    pub low: f64,
    /// Highest plausible value.
    pub high: f64,
}

/// One measure of the trade.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measure {
    /// Stable id.
    pub id: &'static str,
    /// The trade's name, as files head its column; what golfers are told is [`Measure::title`].
    pub name: &'static str,
    /// Canonical unit.
    pub unit: Unit,
    /// Digits after the point that are worth showing.
    pub decimals: u8,
    /// Which way is usually wanted.
    pub better: Better,
    /// Values outside are questioned, never removed.
    pub plausible: Plausible,
    /// Default smallest difference that matters, in the canonical unit.
    pub margin: f64,
    /// Why that default, as a word of the catalogue.
    margin_why: &'static str,
}

/// One measure of the trade, in the language spoken.
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
    /// Default smallest difference that matters, in the canonical unit.
    pub margin: f64,
    /// Why that default.
    pub margin_why: String,
}

impl Measure {
    /// Its name as a title: `Ball speed`.
    #[must_use]
    pub fn title(&self) -> String {
        capital(&self.spoken())
    }

    /// Its name in the middle of a sentence: `ball speed`.
    #[must_use]
    pub fn spoken(&self) -> String {
        text::measure::name(self.id)
    }

    /// The smallest difference that usually matters, in the canonical unit: a round number in the unit shown.
    #[must_use]
    pub fn usual_margin(&self) -> f64 {
        self.unit.as_round(self.margin)
    }

    fn in_words(&self) -> MeasureInWords {
        let Self { id, unit, decimals, better, plausible, margin_why, .. } = *self;
        let (margin, margin_why) = (self.usual_margin(), text::measure::margin_why(margin_why));
        let name = self.title();
        MeasureInWords { id, name, unit, decimals, better, plausible, margin, margin_why }
    }
}

/// The trade's measures in the order they are shown, in the language spoken.
#[must_use]
pub fn measures() -> Vec<MeasureInWords> {
    MEASURES.iter().map(Measure::in_words).collect()
}

const fn row(
    id: &'static str,
    name: &'static str,
    unit: Unit,
    decimals: u8,
    better: Better,
    plausible: (f64, f64),
    margin: (f64, &'static str),
) -> Measure {
    let plausible = Plausible { low: plausible.0, high: plausible.1 };
    Measure { id, name, unit, decimals, better, plausible, margin: margin.0, margin_why: margin.1 }
}

const CLUB_LENGTH: &str = "club-length";
const QUARTER_FAIRWAY: &str = "quarter-fairway";
const SPEED: &str = "speed";
const FLIGHT: &str = "flight";
const DELIVERY: &str = "delivery";
const STRIKE: &str = "strike";

/// The trade's measures in the order they are shown.
pub static MEASURES: [Measure; 21] = {
    use Better::{Depends, Higher, NearerZero};
    use Unit::{Deg, Mm, Mph, Ratio, Rpm, S, Yd};
    [
        row("carry", "Carry", Yd, 0, Higher, (0.0, 400.0), (5.0, CLUB_LENGTH)),
        row("total", "Total distance", Yd, 0, Higher, (0.0, 450.0), (5.0, CLUB_LENGTH)),
        row("offline", "Offline", Yd, 0, NearerZero, (-150.0, 150.0), (5.0, QUARTER_FAIRWAY)),
        row("ball_speed", "Ball speed", Mph, 1, Higher, (15.0, 235.0), (1.5, SPEED)),
        row("club_speed", "Club speed", Mph, 1, Higher, (10.0, 160.0), (1.5, SPEED)),
        row("launch_angle", "Launch angle", Deg, 1, Depends, (-5.0, 60.0), (1.0, FLIGHT)),
        row("launch_direction", "Launch direction", Deg, 1, NearerZero, (-45.0, 45.0), (1.0, FLIGHT)),
        row("spin_rate", "Spin rate", Rpm, 0, Depends, (0.0, 15000.0), (250.0, FLIGHT)),
        row("spin_axis", "Spin axis", Deg, 1, NearerZero, (-60.0, 60.0), (3.0, FLIGHT)),
        row("apex", "Peak height", Yd, 0, Depends, (0.0, 80.0), (3.0, FLIGHT)),
        row("descent_angle", "Descent angle", Deg, 1, Depends, (0.0, 90.0), (2.0, FLIGHT)),
        row("hang_time", "Hang time", S, 1, Depends, (0.0, 12.0), (0.3, FLIGHT)),
        row("smash", "Smash factor", Ratio, 2, Higher, (0.7, 1.56), (0.02, SPEED)),
        row("attack_angle", "Attack angle", Deg, 1, Depends, (-20.0, 20.0), (1.0, DELIVERY)),
        row("club_path", "Club path", Deg, 1, NearerZero, (-30.0, 30.0), (1.0, DELIVERY)),
        row("face_angle", "Face angle", Deg, 1, NearerZero, (-30.0, 30.0), (1.0, DELIVERY)),
        row("face_to_path", "Face to path", Deg, 1, NearerZero, (-30.0, 30.0), (1.0, DELIVERY)),
        row("dynamic_loft", "Dynamic loft", Deg, 1, Depends, (-5.0, 75.0), (1.0, DELIVERY)),
        row("spin_loft", "Spin loft", Deg, 1, Depends, (-5.0, 85.0), (1.0, DELIVERY)),
        row("strike_height", "Strike height", Mm, 0, NearerZero, (-40.0, 40.0), (3.0, STRIKE)),
        row("strike_offset", "Strike offset", Mm, 0, NearerZero, (-60.0, 60.0), (3.0, STRIKE)),
    ]
};

/// The trade's measure with this id, `None` for a column of the golfer's own.
#[must_use]
pub fn known(id: &MeasureId) -> Option<&'static Measure> {
    MEASURES.iter().find(|m| m.id == id.0)
}

/// Id of carry brought to standard air, a measure that the flight model adds.
pub(crate) const STANDARD_AIR_CARRY: &str = "carry_standard_air";

/// The trade's measure whose margin, direction and drift hold for this one: itself, and carry for carry brought to
/// standard air.
pub(crate) fn usual(id: &MeasureId) -> Option<&'static Measure> {
    let id = if id.0 == STANDARD_AIR_CARRY { "carry" } else { &id.0 };
    MEASURES.iter().find(|m| m.id == id)
}

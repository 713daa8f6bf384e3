//! The measures of the trade, one row each: every fact of a measure stands in its row and nowhere else.
//!
//! To add a measure, add a row. What more has to be said of it (its words for headings, how a sentence speaks of it, what
//! flies it) the compiler names, since every other place matches on [`Known`] whole.
//!
//! A range holds what golfers do from the gentlest chip with a wedge to the longest drive, juniors' among them: a ball that
//! leaves at 15 mph was chipped, one at 235 mph was hit by nobody yet; a carry of 0 was topped, and 15,000 rpm is a wedge
//! from wet grass. So wide a range lets a slip through that lies inside it, 15.4 mph for 154: what the other shots of the
//! build are shows that one ([`crate::slipped_point`]).
//!
//! Ranges, margins and scatters are common practice, no source, unless a row says otherwise; the golfer can change the
//! margin. The order allowances of carry, ball speed and club speed are measured by simulation: 6 yd is what a strongly
//! drifting session needs so that a plain comparison of two blocks keeps its error rate, also of 5 or 10 cold shots against
//! 30 warm ones (a typically drifting one needs 2.5 yd). With a yard go 0.45 and 0.31 mph; but single shots scatter less
//! beside them than carry does, so that less of the drift hides in luck: speeds need 3.8 and 3.0 mph, derived together
//! with carry's for at most 6 in 100 (`cargo xtask calibrate --only 5`). Those of offline and spin are judgement; for every other
//! measure it is half the usual margin, judgement too. Kurtosis is that of the invented shots (`cargo xtask simulate`),
//! and 4 where none were invented. How much sharper the typical shot is than the average was measured on the same
//! shots, hit in turns of three with typical drift, 15 and 30 with each club (`cargo xtask calibrate --only 31`); nothing is said
//! of measures that were not invented.

use crate::scale::{Better, Plausible, Unit};

/// The usual standard deviation of single shots among amateurs with a driver: low, middle and high end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UsualScatter {
    /// Of a golfer who scatters little.
    pub low: f64,
    /// What a plan takes when nothing is known; about halfway.
    pub middle: f64,
    /// Of one who scatters much: taken when averages come without a deviation, so that luck is never understated.
    pub high: f64,
}

/// Why a margin is usual.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MarginBecause {
    /// Less is lost between two clubs of a bag.
    ClubLength,
    /// A quarter of a fairway's half.
    QuarterFairway,
    /// What it is worth in yards.
    Speed,
    /// The same of what makes the ball fast: more, since the ball leaves faster than the club comes.
    SpeedOfClub,
    /// What changes the flight visibly.
    Flight,
    /// What a golfer can tell from one swing to another.
    Delivery,
    /// What a golfer can tell on the face.
    Strike,
}

/// Everything that is known of one of the trade's measures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Facts {
    /// Which one.
    pub known: Known,
    /// Stable id, in requests and files.
    pub id: &'static str,
    /// Code in links: never changed, never given away again.
    pub link_code: u8,
    /// The trade's name, as files head its column; what golfers are told is a matter of words.
    pub name: &'static str,
    /// Canonical unit.
    pub unit: Unit,
    /// Digits after the point that are worth showing.
    pub decimals: u8,
    /// Which way is usually wanted.
    pub better: Better,
    /// Values outside are questioned, never removed.
    pub plausible: Plausible,
    /// Whether full shots with one build keep so near each other that one ten times off is a point that slipped. Not of
    /// angles, nor of what a thin shot makes a tenth of: height, time in the air.
    pub keeps_its_size: bool,
    /// Smallest difference that usually matters, in the canonical unit.
    pub margin: f64,
    /// Why that margin.
    pub margin_because: MarginBecause,
    /// How far single shots usually scatter; `None` where it is not known: averages without a deviation give no verdict.
    pub scatter: Option<UsualScatter>,
    /// Kurtosis of single shots (3 for a normal distribution), which decides how many a comparison of scatters takes.
    pub kurtosis: f64,
    /// How much narrower the careful interval of the typical shot is than that of the average: the half-width of the
    /// average's over its own; `None` where no shots were invented.
    pub typical_sharpness: Option<f64>,
    /// Widening of a half-width by the drift that order alone can cause.
    pub order_allowance: f64,
    /// What one yard of carry lost to warming up costs on this measure; `None` where that is not known.
    pub per_yard_of_carry: Option<f64>,
}

/// Writes the enum, the list of all and the table from the same rows, so that none of them can lack one.
macro_rules! known {
    ($($(#[$doc:meta])* $name:ident $id:literal: $facts:expr,)+) => {
        /// One of the trade's measures.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Known {
            $($(#[$doc])* $name,)+
        }

        impl Known {
            /// All of them, in the order they are shown.
            pub const ALL: [Self; [$(Self::$name),+].len()] = [$(Self::$name),+];
        }

        /// The rows, in the order of [`Known::ALL`].
        static ROWS: [Facts; Known::ALL.len()] = [
            $(Facts { known: Known::$name, id: $id, link_code: Known::$name as u8, ..$facts },)+
        ];
    };
}

use Better::{Depends, Higher, NearerZero};
use MarginBecause::{ClubLength, Delivery, Flight, QuarterFairway, Speed, SpeedOfClub, Strike};
use Unit::{Deg, Mm, Mph, Ratio, Rpm, S, Yd};

known! {
    /// How far the ball flies.
    Carry "carry": row("Carry", Yd, 0, Higher, (0.0, 400.0), (5.0, ClubLength))
        .scatters(8.0, 11.0, 14.0, 8.0).typical_shot_sharper(1.20).drifts(6.0).per_yard(1.0).keeps_its_size(),
    /// How far it flies and rolls.
    Total "total": row("Total distance", Yd, 0, Higher, (0.0, 450.0), (5.0, ClubLength))
        .scatters(8.0, 11.0, 14.0, 8.0).drifts(6.0).per_yard(1.0).keeps_its_size(),
    /// How far beside the target line it lands, right positive.
    Offline "offline": row("Offline", Yd, 0, NearerZero, (-150.0, 150.0), (5.0, QuarterFairway))
        .scatters(13.0, 16.0, 20.0, 4.5).typical_shot_sharper(0.91).drifts(6.0),
    /// Speed of the ball.
    BallSpeed "ball_speed": row("Ball speed", Mph, 1, Higher, (15.0, 235.0), (1.5, Speed))
        .scatters(2.5, 3.0, 4.0, 5.5).typical_shot_sharper(1.00).drifts(3.8).per_yard(0.45).keeps_its_size(),
    /// Speed of the club head; its scatter is our assumption.
    ClubSpeed "club_speed": row("Club speed", Mph, 1, Higher, (10.0, 160.0), (1.5, SpeedOfClub))
        .scatters(1.2, 1.6, 2.2, 4.0).typical_shot_sharper(0.87).drifts(3.0).per_yard(0.31).keeps_its_size(),
    /// Up or down at the start; its scatter is our assumption.
    LaunchAngle "launch_angle": row("Launch angle", Deg, 1, Depends, (-5.0, 60.0), (1.0, Flight))
        .scatters(1.2, 1.8, 2.5, 4.0).typical_shot_sharper(0.87),
    /// Left or right at the start.
    LaunchDirection "launch_direction": row("Launch direction", Deg, 1, NearerZero, (-45.0, 45.0), (1.0, Flight)),
    /// Revolutions.
    SpinRate "spin_rate": row("Spin rate", Rpm, 0, Depends, (500.0, 15000.0), (250.0, Flight))
        .scatters(250.0, 400.0, 600.0, 8.0).typical_shot_sharper(0.95).drifts(150.0).keeps_its_size(),
    /// Tilt of the spin.
    SpinAxis "spin_axis": row("Spin axis", Deg, 1, NearerZero, (-60.0, 60.0), (3.0, Flight)),
    /// Highest point.
    Apex "apex": row("Peak height", Yd, 0, Depends, (0.0, 80.0), (3.0, Flight)),
    /// How steeply it comes down.
    DescentAngle "descent_angle": row("Descent angle", Deg, 1, Depends, (0.0, 90.0), (2.0, Flight)),
    /// How long it flies.
    HangTime "hang_time": row("Hang time", S, 1, Depends, (0.0, 12.0), (0.3, Flight)),
    /// Ball speed over club speed.
    Smash "smash": row("Smash factor", Ratio, 2, Higher, (0.7, 1.56), (0.02, SpeedOfClub)),
    /// Up or down through the ball.
    AttackAngle "attack_angle": row("Attack angle", Deg, 1, Depends, (-20.0, 20.0), (1.0, Delivery)),
    /// Left or right through the ball.
    ClubPath "club_path": row("Club path", Deg, 1, NearerZero, (-30.0, 30.0), (1.0, Delivery)),
    /// Where the face looks.
    FaceAngle "face_angle": row("Face angle", Deg, 1, NearerZero, (-30.0, 30.0), (1.0, Delivery)),
    /// Face against path.
    FaceToPath "face_to_path": row("Face to path", Deg, 1, NearerZero, (-30.0, 30.0), (1.0, Delivery)),
    /// Loft as delivered.
    DynamicLoft "dynamic_loft": row("Dynamic loft", Deg, 1, Depends, (-5.0, 75.0), (1.0, Delivery)),
    /// Loft against the angle of attack.
    SpinLoft "spin_loft": row("Spin loft", Deg, 1, Depends, (-5.0, 85.0), (1.0, Delivery)),
    /// Strike on the face, up positive.
    StrikeHeight "strike_height": row("Strike height", Mm, 0, NearerZero, (-40.0, 40.0), (3.0, Strike)),
    /// Strike on the face, towards the toe positive.
    StrikeOffset "strike_offset": row("Strike offset", Mm, 0, NearerZero, (-60.0, 60.0), (3.0, Strike)),
}

impl Known {
    /// Everything that is known of it.
    #[must_use]
    pub fn facts(self) -> &'static Facts {
        &ROWS[self as usize]
    }

    /// Stable id.
    #[must_use]
    pub fn id(self) -> &'static str {
        self.facts().id
    }

    /// The one with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<Self> {
        ROWS.iter().find(|row| row.id == id).map(|row| row.known)
    }

    /// The one with this code in a link.
    #[must_use]
    pub fn of_link_code(code: u8) -> Option<Self> {
        ROWS.iter().find(|row| row.link_code == code).map(|row| row.known)
    }
}

/// A row without scatter, whose drift is half its margin.
const fn row(
    name: &'static str,
    unit: Unit,
    decimals: u8,
    better: Better,
    plausible: (f64, f64),
    margin: (f64, MarginBecause),
) -> Facts {
    Facts {
        known: Known::Carry,
        id: "",
        link_code: 0,
        name,
        unit,
        decimals,
        better,
        plausible: Plausible { low: plausible.0, high: plausible.1 },
        keeps_its_size: false,
        margin: margin.0,
        margin_because: margin.1,
        scatter: None,
        kurtosis: 4.0,
        typical_sharpness: None,
        order_allowance: margin.0 / 2.0,
        per_yard_of_carry: None,
    }
}

impl Facts {
    const fn scatters(self, low: f64, middle: f64, high: f64, kurtosis: f64) -> Self {
        Self { scatter: Some(UsualScatter { low, middle, high }), kurtosis, ..self }
    }

    const fn typical_shot_sharper(self, by: f64) -> Self {
        Self { typical_sharpness: Some(by), ..self }
    }

    const fn keeps_its_size(self) -> Self {
        Self { keeps_its_size: true, ..self }
    }

    const fn drifts(self, order_allowance: f64) -> Self {
        Self { order_allowance, ..self }
    }

    const fn per_yard(self, cost: f64) -> Self {
        Self { per_yard_of_carry: Some(cost), ..self }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_found_by_its_id_and_its_code() {
        for known in Known::ALL {
            assert_eq!(known.facts().known, known);
            assert_eq!(Known::of(known.id()), Some(known));
            assert_eq!(Known::of_link_code(known.facts().link_code), Some(known));
        }
    }

    /// A link lives forever: a code is never changed or given away again, and new rows come at the end.
    #[test]
    fn codes_in_links_are_those_they_have_always_been() {
        let since_the_first_version = [
            "carry",
            "total",
            "offline",
            "ball_speed",
            "club_speed",
            "launch_angle",
            "launch_direction",
            "spin_rate",
            "spin_axis",
            "apex",
            "descent_angle",
            "hang_time",
            "smash",
            "attack_angle",
            "club_path",
            "face_angle",
            "face_to_path",
            "dynamic_loft",
            "spin_loft",
            "strike_height",
            "strike_offset",
        ];
        for (code, id) in (0..).zip(since_the_first_version) {
            assert_eq!(Known::of_link_code(code).map(Known::id), Some(id));
        }
    }

    #[test]
    fn usual_scatters_rise_and_lie_within_what_is_plausible() {
        for facts in Known::ALL.map(Known::facts) {
            assert!(facts.plausible.low < facts.plausible.high && facts.margin > 0.0, "{}", facts.id);
            if let Some(UsualScatter { low, middle, high }) = facts.scatter {
                assert!(0.0 < low && low < middle && middle < high, "{}", facts.id);
            }
        }
    }
}

//! What the club did on its way to the ball, and what of a difference in spin and curve that explains.
//!
//! Sign and order of effects only: a rigid head and a ball that leaves rolling are good to ±30 % of spin, and grip, cover
//! and friction are free. No strike, loft or attack is ever inferred from the ball.

use super::part::{Belongs, Span};
use super::two::Two;
use crate::flying::{RAD_PER_DEG, RADPS_PER_RPM};
use flight::impact::{Delivery, Head, Strike, gear_spin, impact};
use libm::{atan2, hypot};
use serde::Serialize;
use session::known::Known;
use session::measure::MeasureId;
use session::units::MPS_PER_MPH;

/// What the rigid picture of impact is good to.
const IMPACT_ERROR: f64 = 0.3;
/// Spin from which a club is taken for an iron, whose ball leaves with more spin than a rolling one, rpm. Common
/// practice, no source.
const IRON_SPIN: f64 = 4_500.0;
/// Ball over club speed where club speed was not measured. Common practice, no source.
const USUAL_SMASH: f64 = 1.45;
/// Spin loft where it was not measured, deg. Common practice, no source.
const USUAL_SPIN_LOFT: f64 = 15.0;
const M_PER_MM: f64 = 1e-3;

/// A number of the delivery that was measured with both builds.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct MovedFacts {
    /// Which.
    pub measure: MeasureId,
    /// Candidate − baseline.
    pub change: Span,
    /// Whether the interval excludes no difference.
    pub is_clear: bool,
    /// Whose doing.
    pub belongs: Belongs,
}

/// What one number of the delivery does to spin (rpm) or to the tilt of its axis (deg), roughly.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SpinSourceFacts {
    /// What is explained: `spin_rate` or `spin_axis`.
    pub of: MeasureId,
    /// By what.
    pub from: MeasureId,
    /// Candidate − baseline, with the error of the picture of impact in it.
    pub effect: Span,
    /// By what `from` differed, candidate − baseline.
    #[serde(skip)]
    pub change: Span,
}

/// Numbers of the delivery and whose doing they are.
const DELIVERY: [(Known, Belongs); 9] = [
    (Known::ClubSpeed, Belongs::Swing),
    (Known::AttackAngle, Belongs::Swing),
    (Known::ClubPath, Belongs::Swing),
    (Known::StrikeHeight, Belongs::Swing),
    (Known::StrikeOffset, Belongs::Swing),
    (Known::FaceAngle, Belongs::Both),
    (Known::FaceToPath, Belongs::Both),
    (Known::DynamicLoft, Belongs::Both),
    (Known::SpinLoft, Belongs::Both),
];

pub(super) fn moved(two: &Two<'_>) -> Vec<MovedFacts> {
    let one = |&(known, belongs): &(Known, Belongs)| {
        let change = two.difference(known)?;
        Some(MovedFacts { measure: known.into(), is_clear: change.is_clear(), change, belongs })
    };
    DELIVERY.iter().filter_map(one).collect()
}

pub(super) fn spin_sources(two: &Two<'_>) -> Vec<SpinSourceFacts> {
    let average = |known: Known| two.average(known);
    let Some(spin) = average(Known::SpinRate) else { return Vec::new() };
    let club_mph =
        average(Known::ClubSpeed).or_else(|| average(Known::BallSpeed).map(|ball| ball / USUAL_SMASH));
    let Some(club_mph) = club_mph else { return Vec::new() };
    let rolling = if spin >= IRON_SPIN { 0.3 } else { 0.0 };
    let head = Head { tangential_restitution: rolling, ..Head::DRIVER };
    let loft = average(Known::SpinLoft)
        .or_else(|| Some(average(Known::DynamicLoft)? - average(Known::AttackAngle)?));
    let picture = Picture { club_mph, spin_loft: loft.unwrap_or(USUAL_SPIN_LOFT), spin, head };
    let source = |of: Known, from: Known, slope: Option<f64>| {
        let (slope, change) = (slope?, two.difference(from)?);
        Some(SpinSourceFacts { of: of.into(), from: from.into(), effect: worth(slope, &change), change })
    };
    let loft = if two.has(Known::SpinLoft) { Known::SpinLoft } else { Known::DynamicLoft };
    [
        source(Known::SpinRate, loft, picture.spin_per_loft()),
        source(Known::SpinRate, Known::StrikeHeight, Some(picture.spin_per_height())),
        source(Known::SpinAxis, Known::FaceToPath, picture.tilt_per_face()),
        source(Known::SpinAxis, Known::StrikeOffset, Some(picture.tilt_per_offset())),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// A difference times a slope that is good to [`IMPACT_ERROR`]; both errors in quadrature.
fn worth(slope: f64, change: &Span) -> Span {
    let value = slope * change.value;
    let measured = slope.abs() * 0.5 * (change.high - change.low);
    let reach = hypot(measured, IMPACT_ERROR * value);
    Span { value, low: value - reach, high: value + reach }
}

/// A usual delivery around which the slopes are taken.
struct Picture {
    club_mph: f64,
    spin_loft: f64,
    spin: f64,
    head: Head,
}

impl Picture {
    fn delivery(&self, loft: f64, face: f64) -> Delivery {
        Delivery {
            club_speed_mps: self.club_mph * MPS_PER_MPH,
            dynamic_loft_rad: loft * RAD_PER_DEG,
            attack_rad: 0.0,
            face_rad: face * RAD_PER_DEG,
            path_rad: 0.0,
        }
    }

    fn spin_per_loft(&self) -> Option<f64> {
        let spin = |loft: f64| {
            let hit = impact(&self.delivery(loft, 0.0), &Strike::default(), &self.head).ok()?;
            Some(hit.launch.spin_radps / RADPS_PER_RPM)
        };
        Some(spin(self.spin_loft + 0.5)? - spin(self.spin_loft - 0.5)?)
    }

    fn tilt_per_face(&self) -> Option<f64> {
        let tilt = |face: f64| {
            let hit = impact(&self.delivery(self.spin_loft, face), &Strike::default(), &self.head).ok()?;
            Some(hit.launch.spin_axis_rad / RAD_PER_DEG)
        };
        Some(tilt(0.5)? - tilt(-0.5)?)
    }

    fn spin_per_height(&self) -> f64 {
        let strike = Strike { high_m: M_PER_MM, ..Strike::default() };
        gear_spin(&self.delivery(self.spin_loft, 0.0), &strike, &self.head).backspin_radps / RADPS_PER_RPM
    }

    /// Side spin of a millimeter as a tilt of the spin there is.
    fn tilt_per_offset(&self) -> f64 {
        let strike = Strike { toe_m: M_PER_MM, ..Strike::default() };
        let side = gear_spin(&self.delivery(self.spin_loft, 0.0), &strike, &self.head).sidespin_radps;
        atan2(side / RADPS_PER_RPM, self.spin) / RAD_PER_DEG
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::{Build, Session, Shot};

    fn picture() -> Picture {
        Picture { club_mph: 100.0, spin_loft: 14.0, spin: 2600.0, head: Head::DRIVER }
    }

    fn within(value: f64, low: f64, high: f64) {
        assert!((low..high).contains(&value), "{value} is not between {low} and {high}");
    }

    /// A slope of 2 at a change of 3 ± 2: the shots leave 4, three tenths of 6 are 1.8, in quadrature 4.386.
    #[test]
    fn what_a_change_is_worth_is_as_open_as_the_change_and_the_picture() {
        let change = Span { value: 3.0, low: 1.0, high: 5.0 };
        for slope in [2.0, -2.0] {
            let found = worth(slope, &change);
            assert!((found.value - 3.0 * slope).abs() < 1e-12);
            assert!((found.high - found.value - 4.386_342).abs() < 1e-6, "{}", found.high - found.value);
            assert!((found.value - found.low - 4.386_342).abs() < 1e-6);
        }
    }

    /// A rolling ball takes its spin from the part of the blow along the face: a sine of the spin loft.
    #[test]
    fn spin_grows_with_the_sine_of_the_loft_and_the_speed() {
        let slope = picture().spin_per_loft().expect("flies");
        let degrees: f64 = (0..14)
            .map(|at| Picture { spin_loft: f64::from(at) + 0.5, ..picture() }.spin_per_loft().expect("flies"))
            .sum();
        // d sin = cos · d, and what was added degree by degree is the spin at 14 degrees.
        let ratio = slope * libm::tan(14.0 * RAD_PER_DEG) / RAD_PER_DEG / degrees;
        within(ratio, 0.98, 1.02);
        within(degrees, 2000.0, 4000.0);
        let faster = Picture { club_mph: 110.0, ..picture() }.spin_per_loft().expect("flies");
        within(faster / slope, 1.099, 1.101);
    }

    /// The ball's axis tilts as the face lies across the path: at a spin loft of 14 degrees four times as far.
    #[test]
    fn an_open_face_tilts_the_axis_by_one_over_the_sine_of_the_loft() {
        let tilt = picture().tilt_per_face().expect("flies");
        within(tilt * libm::sin(14.0 * RAD_PER_DEG), 0.97, 1.03);
    }

    /// The gear effect, as its own page has it: 10 mm high take about 1,400 rpm, 10 mm to the toe draw by 760.
    #[test]
    fn a_millimeter_on_the_face_is_worth_what_the_gear_effect_gives() {
        within(picture().spin_per_height(), -168.0, -112.0);
        let rpm = |picture: Picture| libm::tan(picture.tilt_per_offset() * RAD_PER_DEG) * picture.spin;
        within(rpm(picture()), -91.0, -61.0);
        let spinning = rpm(Picture { spin: 5200.0, ..picture() });
        assert!((spinning / rpm(picture()) - 1.0).abs() < 1e-9, "the side spin does not hang on the spin");
    }

    /// What a strike higher on the face and a larger spin loft are worth, with these averages of both builds.
    fn worth_of(columns: &[(Known, f64)]) -> Vec<(MeasureId, f64)> {
        let mut columns = columns.to_vec();
        columns.push((Known::StrikeHeight, 4.0));
        let moves = |known| matches!(known, Known::StrikeHeight | Known::SpinLoft | Known::DynamicLoft);
        let shot = |at: usize| {
            let value = |&(known, average): &(Known, f64)| {
                let by = if moves(known) { 2.0 * (at / 8) as f64 - 1.0 } else { 0.0 };
                Some(average + by + (at % 4) as f64 * 0.1 - 0.15)
            };
            Shot { build: at / 8, values: columns.iter().map(value).collect(), ..Shot::default() }
        };
        let session = Session {
            builds: ["Own", "B"].map(|name| Build { name: name.into() }).into(),
            measures: columns.iter().map(|&(known, _)| known.into()).collect(),
            shots: (0..16).map(shot).collect(),
            ..Session::default()
        };
        let sources = spin_sources(&Two::of(&session, 0, 1));
        sources.into_iter().map(|source| (source.from, source.effect.value)).collect()
    }

    #[test]
    fn what_was_not_measured_of_a_delivery_is_taken_from_what_was() {
        use Known::{AttackAngle, BallSpeed, ClubSpeed, DynamicLoft, SpinLoft, SpinRate};
        let spin = (SpinRate, 2600.0);
        let whole = worth_of(&[spin, (ClubSpeed, 100.0), (SpinLoft, 12.0)]);
        let of = |worth: &[(MeasureId, f64)], from: Known| {
            worth.iter().find(|(measure, _)| *measure == from).expect("measured").1
        };
        let close = |a: f64, b: f64| assert!((a / b - 1.0).abs() < 1e-3, "{a} {b}");
        let ball = worth_of(&[spin, (BallSpeed, 145.0), (SpinLoft, 12.0)]);
        close(of(&ball, Known::StrikeHeight), of(&whole, Known::StrikeHeight));
        let loft = worth_of(&[spin, (ClubSpeed, 100.0), (DynamicLoft, 15.0), (AttackAngle, 3.0)]);
        close(of(&loft, DynamicLoft), of(&whole, SpinLoft));
        let usual = worth_of(&[spin, (ClubSpeed, 100.0), (DynamicLoft, 20.0)]);
        close(
            of(&usual, Known::StrikeHeight),
            of(&worth_of(&[spin, (ClubSpeed, 100.0), (SpinLoft, 15.0)]), Known::StrikeHeight),
        );
        assert!(worth_of(&[spin, (SpinLoft, 12.0)]).is_empty(), "no speed at all");
    }

    #[test]
    fn the_ball_of_an_iron_leaves_with_more_spin_than_a_rolling_one() {
        let of = |spin: f64| {
            worth_of(&[(Known::SpinRate, spin), (Known::ClubSpeed, 85.0), (Known::SpinLoft, 25.0)])[0].1
        };
        assert!((of(4_500.0) / of(4_499.0) - 1.3).abs() < 1e-6, "{} {}", of(4_500.0), of(4_499.0));
        assert!((of(4_000.0) - of(4_499.0)).abs() < 1e-9 && (of(6_000.0) - of(4_500.0)).abs() < 1e-9);
    }
}

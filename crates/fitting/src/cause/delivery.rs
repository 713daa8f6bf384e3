//! What the club did on its way to the ball, and what of a difference in spin and curve that explains.
//!
//! Sign and order of effects only: a rigid head and a ball that leaves rolling are good to ±30 % of spin, and grip, cover
//! and friction are free. No strike, loft or attack is ever inferred from the ball.

use super::{Belongs, Span, difference};
use crate::flying::{RAD_PER_DEG, RADPS_PER_RPM};
use crate::measure::{self, Measure, MeasureId};
use crate::session::Session;
use crate::units::MPS_PER_MPH;
use crate::words::{Subject, phrase_for};
use flight::impact::{Delivery, Head, Strike, gear_spin, impact};
use libm::{atan2, hypot};
use serde::Serialize;
use text::cause as say;

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
pub struct Moved {
    /// Which.
    pub measure: MeasureId,
    /// Candidate − baseline.
    pub change: Span,
    /// Whether the interval excludes no difference.
    pub is_clear: bool,
    /// Whose doing.
    pub belongs: Belongs,
    /// In words.
    pub words: String,
}

/// What one number of the delivery does to spin (rpm) or to the tilt of its axis (deg), roughly.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct SpinSource {
    /// What is explained: `spin_rate` or `spin_axis`.
    pub of: MeasureId,
    /// By what.
    pub from: MeasureId,
    /// Candidate − baseline, with the error of the picture of impact in it.
    pub effect: Span,
    /// In words.
    pub words: String,
}

/// Numbers of the delivery and whose doing they are.
const DELIVERY: [(&str, Belongs); 9] = [
    ("club_speed", Belongs::Swing),
    ("attack_angle", Belongs::Swing),
    ("club_path", Belongs::Swing),
    ("strike_height", Belongs::Swing),
    ("strike_offset", Belongs::Swing),
    ("face_angle", Belongs::Both),
    ("face_to_path", Belongs::Both),
    ("dynamic_loft", Belongs::Both),
    ("spin_loft", Belongs::Both),
];

pub(super) fn moved(session: &Session, baseline: usize, candidate: usize) -> Vec<Moved> {
    let one = |&(id, belongs): &(&str, Belongs)| {
        let change = difference(session, id, baseline, candidate)?;
        let measure = MeasureId::from(id);
        let subject = Subject::of(&measure, session);
        let name = measure::known(&measure).map(Measure::title).unwrap_or_default();
        let words = if change.is_clear() {
            let phrase = phrase_for(&measure);
            let way = if change.value > 0.0 { phrase.more } else { phrase.less };
            say::moved(&name, &subject.amount(change.value), &way, &span(&subject, &change))
        } else {
            say::not_moved(&name, &span(&subject, &change))
        };
        Some(Moved { measure, is_clear: change.is_clear(), change, belongs, words })
    };
    DELIVERY.iter().filter_map(one).collect()
}

/// An interval by its ends, each with its sign.
pub(super) fn span(subject: &Subject, sized: &Span) -> String {
    say::from_to(&subject.signed(sized.low), &subject.signed(sized.high))
}

pub(super) fn spin_sources(session: &Session, baseline: usize, candidate: usize) -> Vec<SpinSource> {
    let average = |id: &str| average(session, id, baseline, candidate);
    let Some(spin) = average("spin_rate") else { return Vec::new() };
    let club_mph = average("club_speed").or_else(|| average("ball_speed").map(|ball| ball / USUAL_SMASH));
    let Some(club_mph) = club_mph else { return Vec::new() };
    let rolling = if spin >= IRON_SPIN { 0.3 } else { 0.0 };
    let head = Head { tangential_restitution: rolling, ..Head::DRIVER };
    let loft = average("spin_loft").or_else(|| Some(average("dynamic_loft")? - average("attack_angle")?));
    let picture = Picture { club_mph, spin_loft: loft.unwrap_or(USUAL_SPIN_LOFT), spin, head };
    let source = |of: &str, from: &str, slope: Option<f64>| {
        let (slope, change) = (slope?, difference(session, from, baseline, candidate)?);
        let effect = worth(slope, &change);
        let subject = Subject::of(&of.into(), session);
        let moved = Subject::of(&from.into(), session);
        let (name, phrase) = (moved.name.clone(), phrase_for(&from.into()));
        let words = say::worth(
            &moved.amount(change.value),
            if change.value > 0.0 { &phrase.more } else { &phrase.less },
            &name,
            &subject.signed(effect.value),
            &span(&subject, &effect),
        );
        Some(SpinSource { of: of.into(), from: from.into(), effect, words })
    };
    let measured = |id: &str| session.measure_index(&MeasureId::from(id)).is_some();
    let loft_id = if measured("spin_loft") { "spin_loft" } else { "dynamic_loft" };
    [
        source("spin_rate", loft_id, picture.spin_per_loft()),
        source("spin_rate", "strike_height", Some(picture.spin_per_height())),
        source("spin_axis", "face_to_path", picture.tilt_per_face()),
        source("spin_axis", "strike_offset", Some(picture.tilt_per_offset())),
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

/// Average over the shots of both builds; `None` where not both have it.
fn average(session: &Session, id: &str, baseline: usize, candidate: usize) -> Option<f64> {
    let index = session.measure_index(&MeasureId::from(id))?;
    let of = |build: usize| {
        let own = session.shots.iter().filter(|shot| shot.build == build);
        let values: Vec<f64> = own.filter_map(|shot| shot.values.get(index).copied().flatten()).collect();
        (!values.is_empty()).then(|| stats::describe::mean(&values))
    };
    Some(0.5 * (of(baseline)? + of(candidate)?))
}

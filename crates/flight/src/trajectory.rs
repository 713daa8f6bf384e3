//! A flight from launch to level ground, by fixed Runge–Kutta steps.
//!
//! The step is a choice of the caller: [`TimeStep::FINE`] for a shot, [`TimeStep::COARSE`] inside
//! searches. Error of the carry, measured: below 1e-7 yd at 0.02 s for the reference shots; at 0.1 s
//! below 1e-5 yd for them, 1e-4 yd for any golf shot in 8 m/s of wind, 0.02 yd in the remotest corner
//! of the hard limits. The aerodynamics (±3 %), not the numerics, limit the answer. Adaptive steps are
//! not worth it, and symplectic Euler would need 4e-4 s for 0.05 yd.

use crate::aerodynamics::{Aerodynamics, Calibrated};
use crate::conditions::{Conditions, Medium};
use crate::error::{ConditionsError, LaunchError, Quantity};
use crate::hermite::{Ends, descent_fraction, value_at};
use crate::launch::Launch;
use crate::limits::check_conditions;
use crate::motion::{Motion, Rate, State};
use crate::validity::Validity;
use crate::vector::Vec3;
use libm::{atan2, hypot, sincos};

/// A simulation is stopped here, s. The longest golf shot stays up for less than 12 s.
pub const LONGEST_FLIGHT_S: f64 = 60.0;

/// Length of an integration step: from 1e-4 to 0.5 s.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimeStep(f64);

impl TimeStep {
    /// 0.02 s, for a single shot.
    pub const FINE: Self = Self(0.02);
    /// 0.1 s, for searches and maps: five times faster, carry within 1e-4 yd.
    pub const COARSE: Self = Self(0.1);

    /// A step of another length.
    ///
    /// # Errors
    /// Not finite, or outside 1e-4 to 0.5 s.
    pub fn new(seconds: f64) -> Result<Self, ConditionsError> {
        check_conditions(Quantity::TimeStep, seconds)?;
        Ok(Self(seconds))
    }

    /// Length, s.
    #[must_use]
    pub fn seconds(self) -> f64 {
        self.0
    }
}

/// The highest point of a flight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Apex {
    /// Height above the tee, m.
    pub height_m: f64,
    /// Distance towards the target, m.
    pub forward_m: f64,
    /// Distance to the right of the target line, m.
    pub lateral_m: f64,
    /// Time since launch, s.
    pub time_s: f64,
}

/// What became of a launch, on ground level with the tee.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flight {
    /// Distance from the tee to the landing, m: √(forward² + lateral²).
    pub carry_m: f64,
    /// Carry along the target line, m.
    pub forward_m: f64,
    /// Landing to the right of the target line, m.
    pub lateral_m: f64,
    /// Landing to the right of the line on which the ball started, m.
    pub curve_m: f64,
    /// The highest point.
    pub apex: Apex,
    /// Angle of the flight below the horizontal at landing, rad. Model estimate, 3–4 deg biased.
    pub descent_rad: f64,
    /// Speed over the ground at landing, m/s. Model estimate.
    pub landing_speed_mps: f64,
    /// Spin at landing, rad/s. Model estimate.
    pub landing_spin_radps: f64,
    /// Time in the air, s.
    pub time_s: f64,
    /// Whether the coefficients cover this flight.
    pub validity: Validity,
}

/// One point of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PathPoint {
    /// Time since launch, s.
    pub time_s: f64,
    /// Place, from the tee, m.
    pub position_m: Vec3,
    /// Velocity over the ground, m/s.
    pub velocity_mps: Vec3,
    /// Spin, rad/s.
    pub spin_radps: f64,
}

/// A flight with its path: launch, one point per step, landing.
#[derive(Debug, Clone, PartialEq)]
pub struct Track {
    /// The flight.
    pub flight: Flight,
    /// In order of time; the first lies on the tee, the last on the ground.
    pub points: Vec<PathPoint>,
}

/// A ball set free with any velocity and spin vector: for closed-form checks and symmetries.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Start {
    /// Velocity, m/s; must point upward.
    pub velocity_mps: Vec3,
    /// Spin vector, rad/s; right-handed, so back spin points to the right.
    pub spin_radps: Vec3,
}

impl Start {
    /// The start of a launch.
    #[must_use]
    pub fn of(launch: &Launch) -> Self {
        Self { velocity_mps: launch.velocity_mps(), spin_radps: launch.spin_vector_radps() }
    }
}

/// Flies a launch to ground level with the tee.
///
/// # Errors
/// A value outside the hard limits or not finite; a launch that does not leave the ground.
pub fn fly(launch: &Launch, conditions: &Conditions, step: TimeStep) -> Result<Flight, LaunchError> {
    check_upward(launch)?;
    simulate(&Start::of(launch), &Medium::of(conditions), &Calibrated::STANDARD, step)
}

/// Flies a launch and keeps its path.
///
/// # Errors
/// As [`fly`].
pub fn track(launch: &Launch, conditions: &Conditions, step: TimeStep) -> Result<Track, LaunchError> {
    check_upward(launch)?;
    simulate_path(&Start::of(launch), &Medium::of(conditions), &Calibrated::STANDARD, step)
}

/// Flies any start through any medium with any coefficients; no hard limits.
///
/// # Errors
/// Not finite, not upward, still flying after [`LONGEST_FLIGHT_S`], or overflow.
pub fn simulate<A: Aerodynamics>(
    start: &Start,
    medium: &Medium,
    aerodynamics: &A,
    step: TimeStep,
) -> Result<Flight, LaunchError> {
    integrate(start, medium, aerodynamics, step, |_| {})
}

/// As [`simulate`], with the path.
///
/// # Errors
/// As [`simulate`].
pub fn simulate_path<A: Aerodynamics>(
    start: &Start,
    medium: &Medium,
    aerodynamics: &A,
    step: TimeStep,
) -> Result<Track, LaunchError> {
    let mut points = Vec::new();
    let flight = integrate(start, medium, aerodynamics, step, |point| points.push(point))?;
    Ok(Track { flight, points })
}

fn check_upward(launch: &Launch) -> Result<(), LaunchError> {
    launch.check()?;
    if launch.elevation_rad > 0.0 {
        return Ok(());
    }
    Err(LaunchError::NotUpward { elevation_rad: launch.elevation_rad })
}

fn check_start(start: &Start) -> Result<(), LaunchError> {
    let velocity = start.velocity_mps;
    if !velocity.is_finite() {
        return Err(LaunchError::NotFinite { quantity: Quantity::Velocity });
    }
    if !start.spin_radps.is_finite() {
        return Err(LaunchError::NotFinite { quantity: Quantity::Spin });
    }
    if velocity.y > 0.0 {
        return Ok(());
    }
    Err(LaunchError::NotUpward { elevation_rad: atan2(velocity.y, hypot(velocity.x, velocity.z)) })
}

/// Both ends of one step, with the time of the first.
#[derive(Clone, Copy)]
struct Span<'a> {
    from: &'a State,
    from_rate: &'a Rate,
    to: &'a State,
    to_rate: &'a Rate,
    from_s: f64,
    step_s: f64,
}

fn integrate<A: Aerodynamics>(
    start: &Start,
    medium: &Medium,
    aerodynamics: &A,
    step: TimeStep,
    mut visit: impl FnMut(PathPoint),
) -> Result<Flight, LaunchError> {
    check_start(start)?;
    let motion = Motion::new(medium, aerodynamics, start.spin_radps.direction());
    let state = State {
        position_m: Vec3::ZERO,
        velocity_mps: start.velocity_mps,
        spin_radps: start.spin_radps.length(),
    };
    let mut under_way = UnderWay {
        rate: motion.rate(&state),
        apex: Apex { height_m: 0.0, forward_m: 0.0, lateral_m: 0.0, time_s: 0.0 },
        validity: Validity {
            slowest_air_speed_mps: f64::INFINITY,
            launch_spin_radps: state.spin_radps,
            lowest_spin_ratio: f64::INFINITY,
            highest_spin_ratio: 0.0,
        },
        state,
        steps: 0,
    };
    let step_s = step.seconds();
    loop {
        visit(point_of(&under_way.state, under_way.time_s(step_s)));
        if let Some((landing, time_s)) = go_on(&motion, &mut under_way, step_s)? {
            visit(point_of(&landing, time_s));
            return Ok(flight_of(start, &landing, time_s, under_way.apex, under_way.validity));
        }
    }
}

/// A flight between two steps.
struct UnderWay {
    state: State,
    rate: Rate,
    apex: Apex,
    validity: Validity,
    steps: u32,
}

impl UnderWay {
    /// Counted, not summed: ten thousand additions of 0.02 would drift.
    fn time_s(&self, step_s: f64) -> f64 {
        f64::from(self.steps) * step_s
    }
}

/// One step further; where and when the ball landed, if it did.
///
/// A function of its own, never part of the loop that calls it. An engine that replaces a running loop by faster code
/// carries the loop's numbers over; WebKitGTK 2.50 lost one of them in 11 of 800 first answers.
#[inline(never)]
fn go_on<A: Aerodynamics>(
    motion: &Motion<A>,
    under_way: &mut UnderWay,
    step_s: f64,
) -> Result<Option<(State, f64)>, LaunchError> {
    let UnderWay { state, rate, apex, validity, .. } = &*under_way;
    let from_s = under_way.time_s(step_s);
    if from_s >= LONGEST_FLIGHT_S {
        return Err(LaunchError::StillFlying { after_s: from_s });
    }
    let mut validity = *validity;
    widen(&mut validity, rate);
    let next = motion.step(state, rate, step_s);
    if !(next.position_m.is_finite() && next.velocity_mps.is_finite() && next.spin_radps.is_finite()) {
        return Err(LaunchError::Overflow { after_s: from_s });
    }
    let next_rate = motion.rate(&next);
    let span = Span { from: state, from_rate: rate, to: &next, to_rate: &next_rate, from_s, step_s };
    let apex = higher(*apex, &span);
    let landing = (next.position_m.y <= 0.0).then(|| land(&span));
    if let Some((landing, _)) = &landing {
        widen(&mut validity, &motion.rate(landing));
    }
    *under_way = UnderWay { state: next, rate: next_rate, apex, validity, steps: under_way.steps + 1 };
    Ok(landing)
}

fn widen(validity: &mut Validity, rate: &Rate) {
    validity.slowest_air_speed_mps = validity.slowest_air_speed_mps.min(rate.air_speed_mps);
    validity.lowest_spin_ratio = validity.lowest_spin_ratio.min(rate.spin_ratio);
    validity.highest_spin_ratio = validity.highest_spin_ratio.max(rate.spin_ratio);
}

/// The apex lies where the vertical speed falls through zero. Lift may turn a ball upward again:
/// the highest counts.
fn higher(apex: Apex, span: &Span<'_>) -> Apex {
    if !(span.from.velocity_mps.y > 0.0 && span.to.velocity_mps.y <= 0.0) {
        return apex;
    }
    let climb = Ends {
        from: span.from.velocity_mps.y,
        from_slope: span.from_rate.acceleration_mps2.y,
        to: span.to.velocity_mps.y,
        to_slope: span.to_rate.acceleration_mps2.y,
    };
    let fraction = descent_fraction(&climb, span.step_s);
    let top = state_at(span, fraction);
    if top.position_m.y <= apex.height_m {
        return apex;
    }
    Apex {
        height_m: top.position_m.y,
        forward_m: top.position_m.x,
        lateral_m: top.position_m.z,
        time_s: span.from_s + fraction * span.step_s,
    }
}

/// The state on the ground. Only called when the end of the step is at or below it.
fn land(span: &Span<'_>) -> (State, f64) {
    let height = Ends {
        from: span.from.position_m.y,
        from_slope: span.from_rate.velocity_mps.y,
        to: span.to.position_m.y,
        to_slope: span.to_rate.velocity_mps.y,
    };
    let fraction = descent_fraction(&height, span.step_s);
    let mut landing = state_at(span, fraction);
    landing.position_m.y = 0.0;
    (landing, span.from_s + fraction * span.step_s)
}

fn state_at(span: &Span<'_>, fraction: f64) -> State {
    let at = |from, from_slope, to, to_slope| {
        value_at(&Ends { from, from_slope, to, to_slope }, span.step_s, fraction)
    };
    let vector = |from: Vec3, from_slope: Vec3, to: Vec3, to_slope: Vec3| {
        Vec3::new(
            at(from.x, from_slope.x, to.x, to_slope.x),
            at(from.y, from_slope.y, to.y, to_slope.y),
            at(from.z, from_slope.z, to.z, to_slope.z),
        )
    };
    let (from, to, from_rate, to_rate) = (span.from, span.to, span.from_rate, span.to_rate);
    State {
        position_m: vector(from.position_m, from_rate.velocity_mps, to.position_m, to_rate.velocity_mps),
        velocity_mps: vector(
            from.velocity_mps,
            from_rate.acceleration_mps2,
            to.velocity_mps,
            to_rate.acceleration_mps2,
        ),
        spin_radps: at(from.spin_radps, from_rate.spin_radps2, to.spin_radps, to_rate.spin_radps2),
    }
}

fn point_of(state: &State, time_s: f64) -> PathPoint {
    PathPoint {
        time_s,
        position_m: state.position_m,
        velocity_mps: state.velocity_mps,
        spin_radps: state.spin_radps,
    }
}

fn flight_of(start: &Start, landing: &State, time_s: f64, apex: Apex, validity: Validity) -> Flight {
    let (forward_m, lateral_m) = (landing.position_m.x, landing.position_m.z);
    let velocity = landing.velocity_mps;
    // Straight up has no line to curve from: atan2(0, 0) is 0, the target line.
    let (right, ahead) = sincos(atan2(start.velocity_mps.z, start.velocity_mps.x));
    Flight {
        carry_m: hypot(forward_m, lateral_m),
        forward_m,
        lateral_m,
        curve_m: lateral_m * ahead - forward_m * right,
        apex,
        descent_rad: atan2(-velocity.y, hypot(velocity.x, velocity.z)),
        landing_speed_mps: velocity.length(),
        landing_spin_radps: landing.spin_radps,
        time_s,
        validity,
    }
}

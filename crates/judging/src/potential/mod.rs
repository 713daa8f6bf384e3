//! What a ball speed could carry: against the best launch at one's own spin, the best spin at one's own launch, and the
//! best of a window that a golfer can deliver.
//!
//! Differences of the flight model, brought to the golfer's own ball and device by ratio. The model is good to about
//! ±3 % of carry; the best of the window is flat, so it is a band, and rests on the window (launch to 17°, spin from
//! 1,500 rpm; common practice, no source). Straight shots in standard still air. Nothing here says how to get there.

mod gain;
mod map;

pub use gain::Gain;
pub use map::{CarryMap, LINE_SPACING, OnMap};

use crate::flying::{
    Columns, Flown, Launch, NoSuchBuild, RAD_PER_DEG, RADPS_PER_RPM, check_build, flown, forward_yd,
    launch_of,
};
use flight::{Conditions, TimeStep, Window};
use serde::Serialize;
use session::Session;
use session::question::BuildPlace;
use session::units::{M_PER_YD, MPS_PER_MPH};

/// A gain below this is none, yd: the band within which launches and spins carry the same.
pub const NOTHING: f64 = 2.0;

/// Fewest shots that make a group.
const FEWEST: usize = 3;
/// Spin from which stopping the ball counts as much as carry, rpm. Common practice, no source.
const IRON_SPIN: f64 = 4_500.0;

/// Why nobody can say what a ball speed could carry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PotentialRefused {
    /// It names a build that is not there.
    NoSuchBuild(NoSuchBuild),
    /// The map is asked for a group that is not there.
    NoSuchGroup {
        /// The place it names.
        got: usize,
        /// How many there are.
        groups: usize,
    },
    /// Too few shots of the baseline can be flown.
    TooFew {
        /// How many it takes.
        fewest: usize,
    },
}

impl From<NoSuchBuild> for PotentialRefused {
    fn from(refused: NoSuchBuild) -> Self {
        Self::NoSuchBuild(refused)
    }
}

/// One way to carry farther at the same ball speed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Improvement {
    /// Where: degrees for a launch, rpm for a spin.
    pub at: f64,
    /// What it would add, yd; never below zero.
    pub gain: f64,
    /// Whether the window set it, not the flight.
    pub at_edge: bool,
}

impl Improvement {
    /// Whether it adds less than what is [`NOTHING`].
    #[must_use]
    pub fn is_nothing(&self) -> bool {
        self.gain < NOTHING
    }
}

/// Launches and spins that carry as far as the best of the window, to 2 yd.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct BestBand {
    /// Lowest launch, deg.
    pub launch_low: f64,
    /// Highest launch, deg.
    pub launch_high: f64,
    /// Lowest spin, rpm.
    pub spin_low: f64,
    /// Highest spin, rpm.
    pub spin_high: f64,
    /// What it would add, yd; never below zero.
    pub gain: f64,
    /// Whether the window set it, not the flight.
    pub at_edge: bool,
}

impl BestBand {
    /// Whether it adds less than what is [`NOTHING`].
    #[must_use]
    pub fn is_nothing(&self) -> bool {
        self.gain < NOTHING
    }
}

/// Shots that are looked at together.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct GroupFacts {
    /// Index of the build; null for the golfer's best third of all shots.
    pub build: Option<usize>,
    /// Shots in it.
    pub n: usize,
    /// Average launch.
    pub launch: Launch,
    /// Average carry as measured, yd.
    pub carry: f64,
    /// The best launch at its own spin.
    pub best_launch: Improvement,
    /// The best spin at its own launch.
    pub best_spin: Improvement,
    /// The best of the window.
    pub best: BestBand,
}

/// A single change that would carry farther.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// A higher launch.
    HigherLaunch,
    /// A lower launch.
    LowerLaunch,
    /// More spin.
    MoreSpin,
    /// Less spin.
    LessSpin,
}

/// What a single change, of launch or of spin, would bring.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Unused {
    /// Less than what is [`NOTHING`].
    Nothing,
    /// So much, yd, by launch.
    InLaunch(f64),
    /// So much, yd, by spin.
    InSpin(f64),
    /// More, but the search ended before the flight did: how much is the window's doing.
    AtTheEdge(Change),
}

impl GroupFacts {
    /// Which way the best launch lies.
    #[must_use]
    pub fn launch_change(&self) -> Change {
        if self.best_launch.at > self.launch.launch_angle {
            Change::HigherLaunch
        } else {
            Change::LowerLaunch
        }
    }

    /// Which way the best spin lies.
    #[must_use]
    pub fn spin_change(&self) -> Change {
        if self.best_spin.at > self.launch.spin_rate { Change::MoreSpin } else { Change::LessSpin }
    }

    /// The better of the two single changes.
    #[must_use]
    pub fn unused(&self) -> Unused {
        let (launch, spin) = (self.best_launch.gain, self.best_spin.gain);
        match () {
            () if launch.max(spin) < NOTHING => Unused::Nothing,
            () if launch >= spin && self.best_launch.at_edge => Unused::AtTheEdge(self.launch_change()),
            () if launch >= spin => Unused::InLaunch(launch),
            () if self.best_spin.at_edge => Unused::AtTheEdge(self.spin_change()),
            () => Unused::InSpin(spin),
        }
    }
}

/// What a ball speed could carry.
#[derive(Debug, Clone, PartialEq)]
pub struct PotentialFacts {
    /// Each build, then the best third.
    pub groups: Vec<GroupFacts>,
    /// Place of the baseline among them.
    pub own: usize,
    /// Place of the one whose ball speed the map is drawn for.
    pub shown: usize,
    /// The largest gap in average carry that any build made to the baseline, yd; `None` with one build.
    pub largest_change: Option<f64>,
    /// Whether this looks like an iron, where carry is not everything.
    pub is_iron: bool,
    /// Carry over launch and spin.
    pub map: CarryMap,
}

/// Works out what the ball speeds of a session could carry. The map is drawn for the group at this place, or for that of
/// the baseline; its lines lie `line_spacing` apart, yd.
///
/// # Errors
/// A [`PotentialRefused`] for a build or a group that is not there, and without three shots of the baseline that have
/// carry, ball speed, launch angle and spin.
pub fn potential(
    session: &Session,
    baseline: usize,
    map_for: Option<usize>,
    line_spacing: f64,
) -> Result<PotentialFacts, PotentialRefused> {
    check_build(session, BuildPlace::Baseline, baseline)?;
    let columns = Columns::of(session);
    let shots = flown(session, &columns);
    let mut groups = Vec::new();
    for build in 0..session.builds.len() {
        let own: Vec<&Flown> = shots.iter().filter(|shot| shot.build == build).collect();
        groups.extend(group(Some(build), &own));
    }
    groups.extend(group(None, &best_third(&shots)));
    let own = groups.iter().position(|group| group.build == Some(baseline));
    let own = own.ok_or(PotentialRefused::TooFew { fewest: FEWEST })?;
    let shown = map_for.unwrap_or(own);
    let on_map = groups.get(shown);
    let on_map = on_map.ok_or(PotentialRefused::NoSuchGroup { got: shown, groups: groups.len() })?;
    let map = map::carry_map(on_map.launch.ball_speed, &shots, line_spacing);
    let carry = |group: &GroupFacts| group.carry - groups[own].carry;
    let others = groups.iter().filter(|group| group.build.is_some_and(|build| build != baseline));
    let largest_change = others.map(carry).max_by(|a, b| a.abs().total_cmp(&b.abs()));
    let is_iron = groups[own].launch.spin_rate >= IRON_SPIN;
    Ok(PotentialFacts { groups, own, shown, largest_change, is_iron, map })
}

/// The third of all shots that carried farthest, whatever the build.
fn best_third(shots: &[Flown]) -> Vec<&Flown> {
    let mut sorted: Vec<&Flown> = shots.iter().collect();
    arrange::sort_by(&mut sorted, |a, b| b.carry.total_cmp(&a.carry));
    sorted.truncate(shots.len().div_ceil(3));
    sorted
}

fn group(build: Option<usize>, shots: &[&Flown]) -> Option<GroupFacts> {
    if shots.len() < FEWEST {
        return None;
    }
    let average =
        |of: &dyn Fn(&Flown) -> f64| shots.iter().map(|shot| of(shot)).sum::<f64>() / shots.len() as f64;
    let [ball_speed, launch_angle, spin_rate] = [0, 1, 2].map(|i| average(&|shot| shot.values[i]));
    let carry = average(&|shot| shot.carry);
    let values = [ball_speed, launch_angle, spin_rate, 0.0, 0.0];
    let own = forward_yd(&values)?;
    let (shot, air, window) = (launch_of(&values), Conditions::STANDARD, Window::DELIVERABLE);
    let step = TimeStep::COARSE;
    let gain = |forward_m: f64| (carry * (forward_m / M_PER_YD / own - 1.0)).max(0.0);
    let by_launch = flight::best_launch(&shot, &air, &window, step).ok()?;
    let by_spin = flight::best_spin(&shot, &air, &window, step).ok()?;
    let best = flight::window_optimum(ball_speed * MPS_PER_MPH, &air, &window, step).ok()?;
    Some(GroupFacts {
        build,
        n: shots.len(),
        launch: Launch { ball_speed, launch_angle, spin_rate, launch_direction: 0.0, spin_axis: 0.0 },
        carry,
        best_launch: Improvement {
            at: by_launch.launch.elevation_rad / RAD_PER_DEG,
            gain: gain(by_launch.flight.forward_m),
            at_edge: by_launch.at_edge,
        },
        best_spin: Improvement {
            at: by_spin.launch.spin_radps / RADPS_PER_RPM,
            gain: gain(by_spin.flight.forward_m),
            at_edge: by_spin.at_edge,
        },
        best: BestBand {
            launch_low: best.band.launch_low_rad / RAD_PER_DEG,
            launch_high: best.band.launch_high_rad / RAD_PER_DEG,
            spin_low: best.band.spin_low_radps / RADPS_PER_RPM,
            spin_high: best.band.spin_high_radps / RADPS_PER_RPM,
            gain: gain(best.flight.forward_m),
            at_edge: best.launch_at_edge || best.spin_at_edge,
        },
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A group whose best launch and spin lie there and add so much.
    pub(super) fn group(launch: (f64, f64, bool), spin: (f64, f64, bool)) -> GroupFacts {
        let improvement = |(at, gain, at_edge)| Improvement { at, gain, at_edge };
        GroupFacts {
            build: Some(0),
            n: 5,
            launch: Launch {
                ball_speed: 150.0,
                launch_angle: 12.0,
                spin_rate: 2600.0,
                launch_direction: 0.0,
                spin_axis: 0.0,
            },
            carry: 240.0,
            best_launch: improvement(launch),
            best_spin: improvement(spin),
            best: BestBand {
                launch_low: 12.0,
                launch_high: 16.0,
                spin_low: 1600.0,
                spin_high: 2400.0,
                gain: launch.1.max(spin.1),
                at_edge: false,
            },
        }
    }

    #[test]
    fn two_yards_are_something_and_less_is_nothing() {
        for (gain, is_nothing) in [(0.0, true), (1.99, true), (NOTHING, false), (6.0, false)] {
            let group = group((14.0, gain, false), (2600.0, 0.0, false));
            assert_eq!(group.best_launch.is_nothing(), is_nothing, "{gain}");
            assert_eq!(group.best.is_nothing(), is_nothing, "{gain}");
            assert_eq!(group.unused() == Unused::Nothing, is_nothing, "{gain}");
        }
    }

    #[test]
    fn a_change_goes_from_what_was_hit_to_what_is_best() {
        let up = group((13.0, 3.0, false), (2700.0, 3.0, false));
        assert_eq!((up.launch_change(), up.spin_change()), (Change::HigherLaunch, Change::MoreSpin));
        let down = group((11.0, 3.0, false), (2500.0, 3.0, false));
        assert_eq!((down.launch_change(), down.spin_change()), (Change::LowerLaunch, Change::LessSpin));
    }

    #[test]
    fn the_better_of_two_changes_is_told_without_a_size_where_the_window_set_it() {
        let of = |launch, launch_at_edge, spin, spin_at_edge| {
            group((17.0, launch, launch_at_edge), (1500.0, spin, spin_at_edge)).unused()
        };
        assert_eq!(of(6.0, false, 3.0, true), Unused::InLaunch(6.0));
        assert_eq!(of(6.0, true, 3.0, false), Unused::AtTheEdge(Change::HigherLaunch));
        assert_eq!(of(3.0, true, 6.0, false), Unused::InSpin(6.0));
        assert_eq!(of(3.0, false, 6.0, true), Unused::AtTheEdge(Change::LessSpin));
        assert_eq!(of(6.0, false, 6.0, true), Unused::InLaunch(6.0), "launch is the easier one to change");
    }
}

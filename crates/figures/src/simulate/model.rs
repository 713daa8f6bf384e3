//! How an invented shot comes about.
//!
//! A shot is a core (speed, strike, face, launch and spin, each normal with memory from shot to shot),
//! sometimes a mishit, and the time of day: warming up, tiring, form, the round, the pick-up of the
//! club. Time acts through speed alone, so it moves carry, ball speed and club speed together and
//! leaves offline, launch and spin as they are. A build adds its effect to each measure.
//!
//! Source: own construction; the assumptions are listed in [`Parameters`].

use super::{Random, Turn};
use rand_distr::{Bernoulli, Distribution, Exp, Gamma, StandardNormal, Uniform};

/// The measures of an invented shot, by the ids of the product.
pub(crate) const MEASURES: [&str; 6] =
    ["carry", "offline", "ball_speed", "launch_angle", "spin_rate", "club_speed"];

/// A value per measure, in the order of [`MEASURES`]; yd, yd, mph, deg, rpm, mph.
pub(crate) type Values = [f64; MEASURES.len()];

/// Average of each measure without any time effect. Assumed.
const AVERAGE: Values = [255.0, 4.0, 160.0, 13.0, 2850.0, 108.0];

/// Standard deviation of ball speed between clean strikes, mph. Assumed.
const BALL_SPEED_SD: f64 = 2.2;
/// Carry gained per mph of ball speed, yd. Assumed.
const CARRY_PER_BALL_SPEED: f64 = 1.8;
/// Standard deviation of carry that ball speed does not explain, yd. Assumed.
const CARRY_REST_SD: f64 = 5.5;
/// Standard deviation of offline between clean strikes, yd. Assumed.
const OFFLINE_SD: f64 = 14.0;
/// Standard deviation of launch angle, deg. Assumed.
const LAUNCH_SD: f64 = 1.6;
/// Spin of clean strikes is log-normal: standard deviation of its logarithm. Assumed.
const SPIN_LOG_SD: f64 = 0.115;
/// Average ratio of ball speed to club speed. Assumed.
const SMASH: f64 = 1.46;
/// Part of the club's speed in the scatter of ball speed; the strike is the rest. Assumed.
const CLUB_PART_OF_BALL_SPEED: f64 = 0.6;
/// Standard deviation of club speed that ball speed does not show, mph. Assumed.
const CLUB_SPEED_REST_SD: f64 = 1.0;

/// Carry that a mishit loses, yd, anything between these. Assumed.
const MISHIT_LOSS: (f64, f64) = (15.0, 50.0);
/// Ball speed that a mishit loses per yard of lost carry, mph. Assumed.
const MISHIT_BALL_SPEED_PER_YARD: f64 = 0.22;
/// Standard deviation that a mishit adds to offline, yd. Assumed.
const MISHIT_OFFLINE_SD: f64 = 25.0;
/// Spin that a mishit adds on average, rpm; exponential. Assumed.
const MISHIT_SPIN: f64 = 500.0;

/// Ball speed and club speed that go with a yard of carry lost to time, mph. Assumed.
const BALL_SPEED_PER_YARD: f64 = 0.45;
const CLUB_SPEED_PER_YARD: f64 = 0.31;
const TIME_PER_YARD: Values = [1.0, 0.0, BALL_SPEED_PER_YARD, 0.0, 0.0, CLUB_SPEED_PER_YARD];

/// Shape of the gamma distribution that a session's warm-up deficit is drawn from. Assumed.
const WARM_UP_SHAPE: f64 = 3.0;
/// Shots of a round after which about a third of what its first one misses is left. Assumed.
const ROUND_COLD_SHOTS: f64 = 3.0;
/// Shots with a club after which about a third of what its first one misses is left. Assumed.
const LEARNING_SHOTS: f64 = 6.0;
/// Memory of form from shot to shot. Assumed.
const FORM_MEMORY: f64 = 0.95;

/// What differs between kinds of sessions. All assumed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Parameters {
    /// Share of mishits, 0 to 1.
    pub(crate) mishits: f64,
    /// Correlation of the core from one shot to the next.
    pub(crate) memory: f64,
    /// Average carry missing on the first shot, yd.
    pub(crate) warm_up: f64,
    /// Shots after which about a third of that is still missing.
    pub(crate) warm_up_shots: f64,
    /// Carry lost to tiring per ten shots, yd.
    pub(crate) tiring: f64,
    /// Shot after which tiring begins.
    pub(crate) tiring_after: f64,
    /// Standard deviation of form, which wanders slowly whatever club is in hand, yd.
    pub(crate) form_sd: f64,
    /// Standard deviation that the builds of a round share, yd.
    pub(crate) round_sd: f64,
    /// Standard deviation of a pick-up of the club, yd.
    pub(crate) pick_up_sd: f64,
    /// Carry missing on the first shot of every round, after a rest or a walk, yd.
    pub(crate) round_cold: f64,
}

/// Shots without any memory or drift: what textbooks assume.
pub(crate) const NONE: Parameters = Parameters {
    mishits: 0.08,
    memory: 0.0,
    warm_up: 0.0,
    warm_up_shots: 8.0,
    tiring: 0.0,
    tiring_after: 40.0,
    form_sd: 0.0,
    round_sd: 0.0,
    pick_up_sd: 0.0,
    round_cold: 0.0,
};

/// A steady golfer who came warmed up.
pub(crate) const MILD: Parameters =
    Parameters { memory: 0.1, warm_up: 4.0, warm_up_shots: 6.0, form_sd: 1.0, round_sd: 1.0, ..NONE };

/// An ordinary session.
pub(crate) const TYPICAL: Parameters = Parameters {
    memory: 0.15,
    warm_up: 6.0,
    tiring: 1.0,
    form_sd: 1.5,
    round_sd: 1.5,
    pick_up_sd: 1.0,
    ..NONE
};

/// A stress test: cold, then tired, with a swing that comes and goes.
pub(crate) const STRONG: Parameters = Parameters {
    memory: 0.3,
    warm_up: 10.0,
    warm_up_shots: 10.0,
    tiring: 2.0,
    form_sd: 2.5,
    round_sd: 2.5,
    pick_up_sd: 2.0,
    ..NONE
};

/// The kinds of sessions by name.
pub(crate) const LEVELS: [(&str, Parameters); 4] =
    [("none", NONE), ("mild", MILD), ("typical", TYPICAL), ("strong", STRONG)];

/// What is true of one build.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Effects {
    /// Added to every shot.
    pub(crate) shift: Values,
    /// Multiplies the scatter about the average.
    pub(crate) spread: Values,
    /// Carry missing on its own first shot, as long as the club is new in the hand, yd.
    pub(crate) unlearned: f64,
}

/// A build like any other.
impl Default for Effects {
    fn default() -> Self {
        Self { shift: [0.0; MEASURES.len()], spread: [1.0; MEASURES.len()], unlearned: 0.0 }
    }
}

/// One invented session: a shot per turn. `builds` says what is true of each build; a build beyond it
/// is like any other.
pub(crate) fn session(
    turns: &[Turn],
    parameters: &Parameters,
    builds: &[Effects],
    random: &mut Random,
) -> Vec<Values> {
    let time = time_effects(turns, parameters, random);
    let scatter = scatter(turns.len(), parameters, random);
    let mut shots = Vec::with_capacity(turns.len());
    let mut hit_before = vec![0.0; turns.iter().map(|turn| turn.build + 1).max().unwrap_or(0)];
    for ((turn, time), scatter) in turns.iter().zip(time).zip(scatter) {
        let build = builds.get(turn.build).copied().unwrap_or_default();
        let time = time - build.unlearned * f64::exp(-hit_before[turn.build] / LEARNING_SHOTS);
        hit_before[turn.build] += 1.0;
        shots.push(std::array::from_fn(|measure| {
            AVERAGE[measure]
                + scatter[measure] * build.spread[measure]
                + TIME_PER_YARD[measure] * time
                + build.shift[measure]
        }));
    }
    shots
}

/// Every shot's deviation from its average, which is zero in the long run: core and mishit.
fn scatter(shots: usize, parameters: &Parameters, random: &mut Random) -> Vec<Values> {
    let [speed, rest, face, launch, spin] =
        std::array::from_fn(|_| with_memory(shots, parameters.memory, random));
    (0..shots)
        .map(|shot| {
            let mishit = Mishit::draw(parameters.mishits, random);
            let ball_speed = BALL_SPEED_SD * speed[shot];
            let log_spin = SPIN_LOG_SD * spin[shot] - SPIN_LOG_SD * SPIN_LOG_SD / 2.0;
            [
                CARRY_PER_BALL_SPEED * ball_speed + CARRY_REST_SD * rest[shot] + mishit.carry,
                OFFLINE_SD * face[shot] + mishit.offline,
                ball_speed + MISHIT_BALL_SPEED_PER_YARD * mishit.carry,
                LAUNCH_SD * launch[shot],
                AVERAGE[4] * log_spin.exp_m1() + mishit.spin,
                CLUB_PART_OF_BALL_SPEED * ball_speed / SMASH + CLUB_SPEED_REST_SD * normal(random),
            ]
        })
        .collect()
}

/// What a mishit adds, less what mishits add on average.
struct Mishit {
    carry: f64,
    offline: f64,
    spin: f64,
}

impl Mishit {
    fn draw(share: f64, random: &mut Random) -> Self {
        let average = Self {
            carry: share * (MISHIT_LOSS.0 + MISHIT_LOSS.1) / 2.0,
            offline: 0.0,
            spin: -share * MISHIT_SPIN,
        };
        let happened = Bernoulli::new(share).is_ok_and(|chance| chance.sample(random));
        if !happened {
            return average;
        }
        let loss = Uniform::new(MISHIT_LOSS.0, MISHIT_LOSS.1).map_or(0.0, |losses| losses.sample(random));
        let spin = Exp::new(1.0 / MISHIT_SPIN).map_or(0.0, |spins| spins.sample(random));
        Self {
            carry: average.carry - loss,
            offline: MISHIT_OFFLINE_SD * normal(random),
            spin: average.spin + spin,
        }
    }
}

/// Carry that time adds to each shot, yd: mostly negative.
fn time_effects(turns: &[Turn], parameters: &Parameters, random: &mut Random) -> Vec<f64> {
    let deficit = Gamma::new(WARM_UP_SHAPE, parameters.warm_up / WARM_UP_SHAPE)
        .map_or(0.0, |deficits| deficits.sample(random));
    let form = with_memory(turns.len(), FORM_MEMORY, random);
    let round = normals(turns.iter().map(|turn| turn.round + 1).max().unwrap_or(0), random);
    let pick_up = normals(turns.iter().map(|turn| turn.pick_up + 1).max().unwrap_or(0), random);
    let mut shot = 0.0;
    let (mut round_of_last, mut in_round) = (None, 0.0);
    let mut effects = Vec::with_capacity(turns.len());
    for (turn, form) in turns.iter().zip(form) {
        in_round = if round_of_last.replace(turn.round) == Some(turn.round) { in_round + 1.0 } else { 0.0 };
        let cold = parameters.round_cold * f64::exp(-in_round / ROUND_COLD_SHOTS);
        let warm_up = -deficit * f64::exp(-shot / parameters.warm_up_shots);
        let tired = f64::max(0.0, shot - parameters.tiring_after) / 10.0;
        effects.push(
            warm_up - cold - parameters.tiring * tired
                + parameters.form_sd * form
                + parameters.round_sd * round[turn.round]
                + parameters.pick_up_sd * pick_up[turn.pick_up],
        );
        shot += 1.0;
    }
    effects
}

/// Standard normals whose correlation from one to the next is `memory`: xₜ = φ xₜ₋₁ + √(1−φ²) eₜ.
fn with_memory(count: usize, memory: f64, random: &mut Random) -> Vec<f64> {
    let fresh = (1.0 - memory * memory).sqrt();
    let mut values: Vec<f64> = Vec::with_capacity(count);
    for _ in 0..count {
        let innovation = normal(random);
        values.push(values.last().map_or(innovation, |last| memory * last + fresh * innovation));
    }
    values
}

fn normals(count: usize, random: &mut Random) -> Vec<f64> {
    (0..count).map(|_| normal(random)).collect()
}

fn normal(random: &mut Random) -> f64 {
    StandardNormal.sample(random)
}

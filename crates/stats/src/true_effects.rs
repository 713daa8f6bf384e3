//! What many sessions of different golfers bring: mean and spread of the true differences behind differences with known
//! errors, what the next one will bring, and what to believe of each.
//!
//! Random effects. The spread is the one at which the sessions lie as far apart as they should (Paule and Mandel), its
//! interval the spreads at which that is not surprising (Q profile), the mean's error Hartung and Knapp's, never less than the
//! plain one. What rests on the spread (the next one, a share, a pulled difference) is taken over all spreads that the profile
//! allows, each with its chance, since few sessions know little of it.
//! Limits: true differences are taken to be normal, the errors to be known and to owe nothing to each other.
//! Sources: R. C. Paule and J. Mandel, J. Research NBS 87 (1982), 377–385; J. Hartung and G. Knapp, Statistics in Medicine 20
//! (2001), 1771–1782; W. Viechtbauer, same 26 (2007), 37–52, for the profile; K. Nagashima, H. Noma and T. A. Furukawa,
//! Statistical Methods in Medical Research 28 (2019), 1689–1702, for a prediction over such a distribution of the spread; C. N.
//! Morris, J. American Statistical Association 78 (1983), 47–55, for pulled differences.

use crate::combine::{SessionEffect, check};
use crate::difference::{Refusal, TDifference};
use crate::distributions::{chi_square_upper, normal_sf, normal_upper};
use crate::level::{Interval, Level};
use crate::normal_mixture::{NormalMixture, Part};
use crate::real::square;

/// Spreads that the profile is cut into, each as likely as any other: with twice as many an end of a prediction moves by less
/// than a hundredth of the spread.
const SPREADS: u32 = 48;

/// Means at each of them, each as likely as any other, where a share needs both.
const MEANS: u32 = 40;

/// Newton's steps for a spread; near its place each squares the distance.
const MOST_STEPS: usize = 60;

/// What is believed when the spread is known.
#[derive(Debug, Clone, Copy)]
struct Given {
    between: f64,
    mean: f64,
    /// Square of the mean's error.
    variance: f64,
}

/// The true differences of a pile of sessions.
#[derive(Debug, Clone)]
pub struct TrueEffects<'a> {
    sessions: &'a [SessionEffect],
    found: Given,
    hartung_knapp: f64,
    spreads: Vec<Given>,
}

/// A share of the true differences, between 0 and 1.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ShareAbove {
    /// The chance that the next one is among them.
    pub chance: f64,
    /// Where the share lies.
    pub interval: Interval,
}

/// What to believe of one session's true difference.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct PulledEffect {
    /// The difference pulled toward the mean of all.
    pub value: f64,
    /// Its error, that of the spread and of the mean in it.
    pub sd: f64,
}

impl<'a> TrueEffects<'a> {
    /// Of sessions with known errors.
    ///
    /// τ² solves Q(τ²) = k − 1, Q(τ²) = Σ w(y − μ)², w = 1/(v + τ²), μ = Σ wy/Σ w; 0 where Q(0) is less.
    /// Accuracy: 1e-9 relative against tests/reference/stats/25.
    ///
    /// # Errors
    /// Fewer than two sessions, an effect that is not usable, a variance that is not above zero.
    pub fn new(sessions: &'a [SessionEffect]) -> Result<Self, Refusal> {
        if sessions.len() < 2 {
            return Err(Refusal::TooFew { got: sessions.len(), need: 2 });
        }
        check(sessions)?;
        let df = (sessions.len() - 1) as f64;
        let between = spread_with(sessions, df, 0.0);
        let (found, q) = (given(sessions, between), profile(sessions, between).q);
        let hartung_knapp = (q / df * found.variance).sqrt();
        // Upward, so that each is a good start for the next one.
        let mut spreads = Vec::with_capacity(SPREADS as usize);
        let mut last = 0.0;
        for at in 0..SPREADS {
            let tail = (f64::from(at) + 0.5) / f64::from(SPREADS);
            last = spread_with(sessions, chi_square_upper(tail, df), last);
            spreads.push(given(sessions, last));
        }
        let is_usable = |of: &Given| of.mean.is_finite() && of.variance > 0.0 && of.between.is_finite();
        if !spreads.iter().chain([&found]).all(is_usable) {
            return Err(Refusal::OutOfRange);
        }
        Ok(Self { sessions, found, hartung_knapp, spreads })
    }

    /// The mean of the true differences, with the larger of both errors, on t with sessions − 1.
    #[must_use]
    pub fn mean(&self) -> TDifference {
        let df = (self.sessions.len() - 1) as f64;
        TDifference { diff: self.found.mean, se: self.hartung_knapp.max(self.plain_error()), df }
    }

    /// Hartung and Knapp's error of the mean alone, which may be small by luck.
    #[must_use]
    pub fn hartung_knapp_error(&self) -> f64 {
        self.hartung_knapp
    }

    /// The mean's error as if the spread were known.
    #[must_use]
    pub fn plain_error(&self) -> f64 {
        self.found.variance.sqrt()
    }

    /// The standard deviation of the true differences; 0 where the errors explain how far apart the sessions lie.
    #[must_use]
    pub fn deviation(&self) -> f64 {
        self.found.between.sqrt()
    }

    /// The standard deviations at which the sessions lie neither surprisingly far apart nor surprisingly near.
    #[must_use]
    pub fn deviation_interval(&self, level: Level) -> Interval {
        let df = (self.sessions.len() - 1) as f64;
        let end = |tail: f64| spread_with(self.sessions, chi_square_upper(tail, df), 0.0).sqrt();
        Interval { level, low: end(level.tail()), high: end(1.0 - level.tail()) }
    }

    /// The true difference of one more session like these.
    #[must_use]
    pub fn next(&self) -> NormalMixture {
        NormalMixture::new(self.spreads.iter().map(|given| Part {
            chance: 1.0 / f64::from(SPREADS),
            mean: given.mean,
            variance: given.variance + given.between,
        }))
    }

    /// The share of true differences that are larger than this one.
    #[must_use]
    pub fn share_above(&self, value: f64, level: Level) -> ShareAbove {
        let mut shares = Vec::with_capacity((SPREADS * MEANS) as usize);
        for given in &self.spreads {
            for at in 0..MEANS {
                let deviate = normal_upper((f64::from(at) + 0.5) / f64::from(MEANS));
                let lead = given.mean + deviate * given.variance.sqrt() - value;
                shares.push(share(lead, given.between.sqrt()));
            }
        }
        arrange::sort_numbers(&mut shares);
        let all = f64::from(SPREADS * MEANS);
        let chance = shares.iter().sum::<f64>() / all;
        // The outermost of what is left after as much as the level leaves out on either side.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a place in the list")]
        let out = (level.tail() * all).floor() as usize;
        let (low, high) = (shares[out], shares[shares.len() - 1 - out]);
        ShareAbove { chance, interval: Interval { level, low, high } }
    }

    /// What to believe of a session's true difference: B·y + (1 − B)·μ with B = τ²/(τ² + v), over all spreads; the variance
    /// by the law of total variance, with the mean's own error in it.
    #[must_use]
    pub fn pulled(&self, session: &SessionEffect) -> PulledEffect {
        let (mut sum, mut squares, mut own) = (0.0, 0.0, 0.0);
        for given in &self.spreads {
            let kept = given.between / (given.between + session.variance);
            // From the session's own difference, so that nothing cancels.
            let moved = (1.0 - kept) * (given.mean - session.effect);
            sum += moved;
            squares += square(moved);
            own += kept * session.variance + square(1.0 - kept) * given.variance;
        }
        let n = f64::from(SPREADS);
        let variance = own / n + (squares / n - square(sum / n)).max(0.0);
        PulledEffect { value: session.effect + sum / n, sd: variance.sqrt() }
    }
}

/// The share of a normal distribution above a place that lies this far below its mean; all or nothing without a deviation.
fn share(lead: f64, deviation: f64) -> f64 {
    match deviation > 0.0 {
        true => normal_sf(-lead / deviation),
        false if lead > 0.0 => 1.0,
        false => 0.0,
    }
}

/// How far apart sessions lie at a spread, and how steeply that falls with it.
struct Profile {
    q: f64,
    /// −dQ/dτ² = Σ w²(y − μ)².
    fall: f64,
}

fn profile(sessions: &[SessionEffect], between: f64) -> Profile {
    let mean = given(sessions, between).mean;
    let (mut q, mut fall) = (0.0, 0.0);
    for session in sessions {
        let weight = 1.0 / (session.variance + between);
        let part = weight * square(session.effect - mean);
        q += part;
        fall += weight * part;
    }
    Profile { q, fall }
}

fn given(sessions: &[SessionEffect], between: f64) -> Given {
    let (mut total, mut sum) = (0.0, 0.0);
    for session in sessions {
        let weight = 1.0 / (session.variance + between);
        total += weight;
        sum += weight * session.effect;
    }
    Given { between, mean: sum / total, variance: 1.0 / total }
}

/// The squared spread at which the sessions lie this far apart, no less than `from`, at which they lie no nearer.
///
/// Newton's method on 1/Q, which is a straight line where all errors are alike, and never overshoots from below.
fn spread_with(sessions: &[SessionEffect], q: f64, from: f64) -> f64 {
    let mut between = from;
    for _ in 0..MOST_STEPS {
        let at = profile(sessions, between);
        // As near as rounding lets it come, below it from the start, or no number.
        let is_above = at.q > q * (1.0 + 1e-14);
        if !is_above || at.fall <= 0.0 {
            break;
        }
        let step = at.q / q * (at.q - q) / at.fall;
        if !step.is_finite() || between + step <= between {
            break;
        }
        between += step;
    }
    between
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sessions(effects: &[f64], variance: f64) -> Vec<SessionEffect> {
        effects.iter().map(|&effect| SessionEffect { effect, variance }).collect()
    }

    #[test]
    fn with_equal_errors_the_spread_is_what_the_scatter_leaves() {
        let all = sessions(&[1.0, 3.0, 5.0, 9.0, 2.0], 4.0);
        let scatter = crate::describe::sum_of_squares(&[1.0, 3.0, 5.0, 9.0, 2.0]) / 4.0;
        let found = TrueEffects::new(&all).expect("usable");
        assert!((square(found.deviation()) - (scatter - 4.0)).abs() < 1e-12);
        assert!((found.mean().diff - 4.0).abs() < 1e-12);
    }

    #[test]
    fn sessions_that_lie_near_each_other_have_no_spread_and_are_pulled_together() {
        let all = sessions(&[2.0, 4.0, 5.0, 6.0, 8.0], 9.0);
        let found = TrueEffects::new(&all).expect("usable");
        assert!(found.deviation() <= 0.0 && found.deviation_interval(Level::P95).low <= 0.0);
        let first = found.pulled(&all[0]);
        assert!(first.value > 4.0 && first.value < 5.0, "{first:?}");
        assert!(first.sd < 3.0, "less than its own error: {first:?}");
    }

    #[test]
    fn turned_around_everything_is_turned_around() {
        let effects = [3.0, -2.0, 8.0, 4.0, 12.0, 1.0];
        let variances = [4.0, 9.0, 2.0, 5.0, 12.0, 3.0];
        let pile = |sign: f64| -> Vec<SessionEffect> {
            let both = effects.iter().zip(variances);
            both.map(|(&effect, variance)| SessionEffect { effect: sign * effect, variance }).collect()
        };
        let (up, down) = (pile(1.0), pile(-1.0));
        let (up, down) = (TrueEffects::new(&up).expect("usable"), TrueEffects::new(&down).expect("usable"));
        assert!((up.mean().diff + down.mean().diff).abs() < 1e-12);
        assert!((up.deviation() - down.deviation()).abs() < 1e-12);
        let (above, below) = (up.share_above(5.0, Level::P95), down.share_above(-5.0, Level::P95));
        assert!((above.chance + below.chance - 1.0).abs() < 1e-12);
        assert!((above.interval.low + below.interval.high - 1.0).abs() < 1e-12);
        let (ahead, behind) = (up.next().interval(Level::P95), down.next().interval(Level::P95));
        assert!((ahead.low + behind.high).abs() < 1e-9);
    }

    #[test]
    fn a_share_lies_in_its_interval_and_falls_with_the_margin() {
        let all = sessions(&[3.0, -2.0, 8.0, 4.0, 12.0, 1.0, 7.0], 4.0);
        let found = TrueEffects::new(&all).expect("usable");
        let mut last = 1.0;
        for margin in [-10.0, 0.0, 3.0, 5.0, 8.0, 20.0] {
            let share = found.share_above(margin, Level::P95);
            assert!(share.interval.low <= share.chance && share.chance <= share.interval.high, "{share:?}");
            assert!(share.chance < last);
            last = share.chance;
        }
    }

    #[test]
    fn what_cannot_be_pooled_is_refused() {
        assert_eq!(TrueEffects::new(&[]).unwrap_err(), Refusal::TooFew { got: 0, need: 2 });
        for variance in [0.0, -1.0, f64::NAN, f64::INFINITY] {
            assert!(TrueEffects::new(&sessions(&[1.0, 2.0], variance)).is_err(), "{variance}");
        }
        assert!(TrueEffects::new(&sessions(&[1.0, f64::NAN], 1.0)).is_err());
        // Wholly equal: no spread, and an error that is not zero.
        let equal = sessions(&[5.0; 4], 1.0);
        let found = TrueEffects::new(&equal).expect("usable");
        assert!(found.deviation() <= 0.0 && found.mean().se > 0.4);
    }
}

//! Several sessions of the same builds, days apart, into one answer: random effects.
//!
//! Days differ by more than shots explain; the combined interval must know. With two or three sessions it is
//! wide, as it should be. A library part: the answer over several days says beforehand what is usual (see `day_to_day`).
//! Sources: DerSimonian and Laird, Controlled Clinical Trials 7 (1986), 177–188; Hartung and Knapp, Statistics in
//! Medicine 20 (2001), 1771–1782; Sidik and Jonkman, same 21 (2002), 3153–3159; never narrower than the plain
//! one as in Jackson and others, same 36 (2017), 3923–3934.

use crate::difference::{Refusal, TDifference};
use crate::real::square;
use crate::sample::check_value;

/// One session's difference and the square of its standard error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SessionEffect {
    /// Candidate − baseline in this session.
    pub effect: f64,
    /// Squared standard error.
    pub variance: f64,
}

/// A mean with a standard error on the normal distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct NormalEstimate {
    /// The mean.
    pub mean: f64,
    /// Its standard error.
    pub se: f64,
}

/// Sessions combined.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Combined {
    /// As if all sessions had one true difference.
    pub fixed: NormalEstimate,
    /// With sessions differing from each other.
    pub random: NormalEstimate,
    /// The same mean with Hartung and Knapp's standard error, which may be smaller by luck.
    pub hartung_knapp: TDifference,
    /// Cochran's Q, chi-square on sessions − 1 if they do not differ.
    pub q: f64,
    /// Variance between sessions, τ².
    pub between: f64,
    sessions: usize,
}

impl Combined {
    /// Share of the scatter among sessions that shots do not explain, I² = max(0, (Q − (k−1))/Q).
    #[must_use]
    pub fn share_between(&self) -> f64 {
        // Sessions that agree wholly have a Q of zero: 1 − ∞ counts as 0 like any other less than that.
        (1.0 - (self.sessions - 1) as f64 / self.q).max(0.0)
    }

    /// The combined difference a verdict may rest on: the larger standard error of the two, on t.
    #[must_use]
    pub fn headline(&self) -> TDifference {
        TDifference { se: self.hartung_knapp.se.max(self.random.se), ..self.hartung_knapp }
    }
}

/// Combines sessions.
///
/// w = 1/v; Q = Σ w(y − ȳ)²; τ² = max(0, (Q − (k−1))/(Σw − Σw²/Σw)); w* = 1/(v + τ²);
/// Hartung–Knapp se² = Σ w*(y − μ)²/((k−1) Σ w*), t on k − 1 df.
/// Accuracy: 1e-9 relative against tests/reference/stats/15.
///
/// # Errors
/// Fewer than two sessions, an effect that is not usable, a variance that is not above zero.
pub fn combine(sessions: &[SessionEffect]) -> Result<Combined, Refusal> {
    if sessions.len() < 2 {
        return Err(Refusal::TooFew { got: sessions.len(), need: 2 });
    }
    check(sessions)?;
    let df = (sessions.len() - 1) as f64;
    let fixed = weighted(sessions, 0.0)?;
    let weight = |session: &SessionEffect| 1.0 / session.variance;
    let total: f64 = sessions.iter().map(weight).sum();
    let squares: f64 = sessions.iter().map(|session| square(weight(session))).sum();
    let q: f64 = sessions.iter().map(|s| weight(s) * square(s.effect - fixed.mean)).sum();
    let between = ((q - df) / (total - squares / total)).max(0.0);
    let random = weighted(sessions, between)?;
    let scatter: f64 = sessions.iter().map(|s| square(s.effect - random.mean) / (s.variance + between)).sum();
    let se = random.se * (scatter / df).sqrt();
    // Equal effects leave Hartung and Knapp's error at zero; the headline then takes the other one.
    let hartung_knapp = TDifference { diff: random.mean, se, df };
    Ok(Combined { fixed, random, hartung_knapp, q, between, sessions: sessions.len() })
}

/// Every effect is usable, every variance above zero and of some weight.
pub(crate) fn check(sessions: &[SessionEffect]) -> Result<(), Refusal> {
    for (index, session) in sessions.iter().enumerate() {
        check_value(index, session.effect).map_err(|_| Refusal::Argument { got: session.effect })?;
        let weight = 1.0 / session.variance;
        if !(weight > 0.0 && weight.is_finite()) {
            return Err(Refusal::Argument { got: session.variance });
        }
    }
    Ok(())
}

fn weighted(sessions: &[SessionEffect], between: f64) -> Result<NormalEstimate, Refusal> {
    let (mut total, mut sum) = (0.0, 0.0);
    for session in sessions {
        let weight = 1.0 / (session.variance + between);
        total += weight;
        sum += weight * session.effect;
    }
    let estimate = NormalEstimate { mean: sum / total, se: (1.0 / total).sqrt() };
    (estimate.mean.is_finite() && estimate.se > 0.0).then_some(estimate).ok_or(Refusal::OutOfRange)
}

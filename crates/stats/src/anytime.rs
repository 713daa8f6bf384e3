//! Bounds that hold however often one looks and whenever one stops.
//!
//! The t-mixture is exact for normal shots with unknown deviation; the normal mixture supposes it known; the
//! asymptotic sequence is the same with the deviation estimated, right for long series only.
//! Sources: Robbins, Annals of Mathematical Statistics 41 (1970), 1397–1409; Howard, Ramdas, McAuliffe and
//! Sekhon, Annals of Statistics 49 (2021), 1055–1080; t-mixture after Lindon, Ham, Tingley and Bojinov (2022) and
//! Wang and Ramdas (2023); asymptotic sequence Waudby-Smith, Arbour, Sinha, Kennedy and Ramdas, Annals of
//! Statistics 52 (2024), 2613–2640.

use crate::difference::TDifference;
use crate::level::{Interval, Level};
use crate::real::{exp, ln, ln_1p, square};
use crate::root::find_root;

/// A t statistic watched without limit: the difference and the information W behind it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Watched {
    /// Candidate − baseline.
    pub difference: TDifference,
    /// Information: the standard error is the residual deviation / √W.
    pub information: f64,
    /// Prior variance of the effect in shot variances, g (see `choices::MIXTURE_VARIANCE`).
    pub mixture_variance: f64,
}

impl Watched {
    /// Evidence against no difference: its reciprocal is a p-value at any time.
    ///
    /// E = k^(−½) [(1 + t²/ν)/(1 + t²/(νk))]^((ν+1)/2), k = 1 + gW.
    #[must_use]
    pub fn evidence(&self) -> f64 {
        let (k, df, t2) = (self.k(), self.difference.df, square(self.difference.t()));
        let log_ratio = ln_1p(t2 / df) - ln_1p(t2 / (df * k));
        exp(0.5 * (df + 1.0) * log_ratio - 0.5 * ln(k))
    }

    /// min(1, 1/E).
    #[must_use]
    pub fn p_value(&self) -> f64 {
        (1.0 / self.evidence()).min(1.0)
    }

    /// Interval that covers at every look; `None` while the session is too short for any.
    #[must_use]
    pub fn interval(&self, level: Level) -> Option<Interval> {
        let critical = t_mixture_critical(self.difference.df, self.k(), level)?;
        Some(Interval::around(self.difference.diff, critical * self.difference.se, level))
    }

    fn k(&self) -> f64 {
        1.0 + self.mixture_variance * self.information
    }
}

/// The |t| at which the evidence reaches 1/α: A = (√k/α)^(2/(ν+1)), t = √(ν(A−1)/(1−A/k)); none if A ≥ k.
fn t_mixture_critical(df: f64, k: f64, level: Level) -> Option<f64> {
    let a = exp((0.5 * ln(k) - ln(level.alpha())) * 2.0 / (df + 1.0));
    let critical = (df * (a - 1.0) / (1.0 - a / k)).sqrt();
    (a < k && critical.is_finite()).then_some(critical)
}

/// Robbins's mixture boundary for a sum of values with known variance; `rho` places where it is tightest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NormalMixture {
    rho: f64,
}

impl NormalMixture {
    /// A boundary by its parameter ρ > 0, in units of accumulated variance.
    #[must_use]
    pub fn new(rho: f64) -> Option<NormalMixture> {
        (rho > 0.0 && rho.is_finite()).then_some(NormalMixture { rho })
    }

    /// The boundary that is narrowest at accumulated variance `variance`.
    ///
    /// ρ = v/(−W₋₁(−α²/e) − 1), W₋₁ the lower branch of Lambert's function. Accuracy: 1e-12 relative.
    #[must_use]
    pub fn narrowest_at(variance: f64, level: Level) -> Option<NormalMixture> {
        // With W = −1 − x the defining equation W eᵂ = −α²/e reads x − ln(1 + x) = −2 ln α.
        let target = -2.0 * ln(level.alpha());
        let x = find_root(0.0, 2.0 * target + 10.0, 0.0, &|x| x - ln_1p(x) - target)?;
        NormalMixture::new(variance / x)
    }

    /// ρ.
    #[must_use]
    pub fn rho(&self) -> f64 {
        self.rho
    }

    /// The distance a sum of accumulated variance v stays within, at all times: √((v+ρ) ln((v+ρ)/(ρα²))).
    #[must_use]
    pub fn boundary(&self, variance: f64, level: Level) -> f64 {
        let v = variance + self.rho;
        (v * (ln(v / self.rho) - 2.0 * ln(level.alpha()))).sqrt()
    }

    /// Evidence of a sum S at accumulated variance v: √(ρ/(v+ρ)) exp(S²/(2(v+ρ))).
    #[must_use]
    pub fn evidence(&self, sum: f64, variance: f64) -> f64 {
        let v = variance + self.rho;
        exp(0.5 * ln(self.rho / v) + 0.5 * sum * sum / v)
    }
}

/// Half-width of the asymptotic sequence for a difference with standard error `se` and information W.
///
/// se √{[(Wr + 1)/(Wr)] ln[(Wr + 1)/α²]}, r = ρ². `None` unless all are above zero.
#[must_use]
pub fn asymptotic_half_width(se: f64, information: f64, rho_squared: f64, level: Level) -> Option<f64> {
    let scaled = information * rho_squared;
    let width = se * ((scaled + 1.0) / scaled * (ln_1p(scaled) - 2.0 * ln(level.alpha()))).sqrt();
    (se > 0.0 && scaled > 0.0 && width.is_finite()).then_some(width)
}

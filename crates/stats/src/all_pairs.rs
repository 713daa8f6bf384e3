//! All pairs, or all against one, with one error for the whole family.
//!
//! For the methods page and as check values; verdicts use Holm on the cautious differences, which supposes
//! neither normal shots nor one common scatter.
//! Sources: Tukey (1953) and Kramer, Biometrics 12 (1956), 307–310; Games and Howell, J. Educational Statistics 1
//! (1976), 113–125; C. W. Dunnett, J. American Statistical Association 50 (1955), 1096–1121.

use crate::anova::anova;
use crate::difference::{Refusal, TDifference};
use crate::level::{Interval, Level};
use crate::sample::Sample;
use crate::studentized::{dunnett_sf, dunnett_upper, studentized_range_sf, studentized_range_upper};
use crate::welch::welch;
use std::f64::consts::SQRT_2;

/// One difference within a family of `groups` means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AmongAll {
    /// The difference on its own.
    pub difference: TDifference,
    /// Groups in the family.
    pub groups: u32,
}

impl AmongAll {
    /// Chance, were all means equal, that any pair lies this far apart.
    #[must_use]
    pub fn p_value(&self) -> f64 {
        studentized_range_sf(self.difference.t().abs() * SQRT_2, self.groups, self.difference.df)
    }

    /// Interval that holds for all pairs at once.
    #[must_use]
    pub fn interval(&self, level: Level) -> Interval {
        let q = studentized_range_upper(level.alpha(), self.groups, self.difference.df);
        Interval::around(self.difference.diff, q * self.difference.se / SQRT_2, level)
    }
}

/// Tukey–Kramer: one common scatter for all groups. Candidate and baseline are indices into `groups`.
///
/// # Errors
/// Fewer than two groups, an index without a group, no scatter.
pub fn tukey(groups: &[Sample], candidate: usize, baseline: usize) -> Result<AmongAll, Refusal> {
    let table = anova(groups)?;
    let (a, b) = (group(groups, candidate)?, group(groups, baseline)?);
    let se = (table.mean_square_within() * (1.0 / a.n() as f64 + 1.0 / b.n() as f64)).sqrt();
    let size = a.mean().abs().max(b.mean().abs());
    let difference = TDifference::new(a.mean() - b.mean(), se, table.test.df2, size)?;
    Ok(AmongAll { difference, groups: family(groups)? })
}

/// Games–Howell: Welch's scatter and degrees of freedom for each pair.
///
/// # Errors
/// Fewer than two groups, an index without a group, no scatter.
pub fn games_howell(groups: &[Sample], candidate: usize, baseline: usize) -> Result<AmongAll, Refusal> {
    let difference = welch(group(groups, candidate)?, group(groups, baseline)?)?;
    Ok(AmongAll { difference, groups: family(groups)? })
}

/// Every candidate against one baseline, one common scatter.
#[derive(Debug, Clone, PartialEq)]
pub struct Dunnett {
    /// One difference per candidate, in the order given.
    pub differences: Vec<TDifference>,
    lambdas: Vec<f64>,
}

/// Dunnett's two-sided comparison of candidates with a baseline.
///
/// # Errors
/// No candidate, no scatter.
pub fn dunnett(candidates: &[Sample], baseline: &Sample) -> Result<Dunnett, Refusal> {
    let all: Vec<Sample> = candidates.iter().chain([baseline]).cloned().collect();
    let table = anova(&all)?;
    let n0 = baseline.n() as f64;
    let compare = |candidate: &Sample| {
        let se = (table.mean_square_within() * (1.0 / candidate.n() as f64 + 1.0 / n0)).sqrt();
        let size = candidate.mean().abs().max(baseline.mean().abs());
        TDifference::new(candidate.mean() - baseline.mean(), se, table.test.df2, size)
    };
    let lambda = |candidate: &Sample| (candidate.n() as f64 / (candidate.n() as f64 + n0)).sqrt();
    Ok(Dunnett {
        differences: candidates.iter().map(compare).collect::<Result<_, _>>()?,
        lambdas: candidates.iter().map(lambda).collect(),
    })
}

impl Dunnett {
    /// Chance, were all equal to the baseline, that any candidate lies this far from it.
    #[must_use]
    pub fn p_value(&self, difference: &TDifference) -> f64 {
        dunnett_sf(difference.t().abs(), &self.lambdas, difference.df)
    }

    /// The |t| that serves as bound for all candidates at once.
    #[must_use]
    pub fn critical(&self, level: Level) -> f64 {
        let df = self.differences.first().map_or(f64::NAN, |first| first.df);
        dunnett_upper(level.alpha(), &self.lambdas, df)
    }
}

fn group(groups: &[Sample], index: usize) -> Result<&Sample, Refusal> {
    groups.get(index).ok_or(Refusal::TooFew { got: groups.len(), need: index + 1 })
}

fn family(groups: &[Sample]) -> Result<u32, Refusal> {
    u32::try_from(groups.len()).map_err(|_| Refusal::OutOfRange)
}

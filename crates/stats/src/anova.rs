//! Do several groups differ at all? Analysis of variance, Welch's form, and its use on spreads.
//!
//! For the methods page and as check values of the shared parts; a verdict compares pairs.
//! Sources: Fisher (1925); B. L. Welch, Biometrika 38 (1951), 330–336; Levene (1960); Brown and Forsythe, J.
//! American Statistical Association 69 (1974), 364–367; Bartlett, Proc. Royal Society A 160 (1937), 268–282.

use crate::describe::{mean, sum_of_squares};
use crate::difference::Refusal;
use crate::distributions::{chi_square_sf, f_sf};
use crate::real::{ln, square};
use crate::sample::Sample;

/// An F statistic with its degrees of freedom.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct FTest {
    /// The statistic.
    pub f: f64,
    /// Degrees of freedom of the numerator.
    pub df1: f64,
    /// Degrees of freedom of the denominator.
    pub df2: f64,
}

impl FTest {
    /// P(F > f).
    #[must_use]
    pub fn p_value(&self) -> f64 {
        f_sf(self.f, self.df1, self.df2)
    }

    fn new(f: f64, df1: f64, df2: f64) -> Result<FTest, Refusal> {
        if f.is_finite() { Ok(FTest { f, df1, df2 }) } else { Err(Refusal::NoScatter) }
    }
}

/// One-way analysis of variance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Anova {
    /// Squared deviations of group means from the grand mean, each as often as it has values.
    pub between: f64,
    /// Squared deviations from the own group's mean.
    pub within: f64,
    /// The test of equal means.
    pub test: FTest,
}

impl Anova {
    /// Variance within groups.
    #[must_use]
    pub fn mean_square_within(&self) -> f64 {
        self.within / self.test.df2
    }
}

/// F = (between/(k−1)) / (within/(n−k)).
///
/// Accuracy: 1e-8 relative against NIST StRD SiRstvt and SmLs01t.
///
/// # Errors
/// Fewer than two groups, no scatter within them.
pub fn anova(groups: &[Sample]) -> Result<Anova, Refusal> {
    several(groups)?;
    let n: usize = groups.iter().map(Sample::n).sum();
    let means: Vec<f64> = groups.iter().map(Sample::mean).collect();
    // Around one of the means, so that a large common part costs no digits.
    let origin = means[0];
    let weighted = groups.iter().zip(&means).map(|(group, m)| group.n() as f64 * (m - origin)).sum::<f64>();
    let grand = origin + weighted / n as f64;
    let between =
        groups.iter().zip(&means).map(|(group, m)| group.n() as f64 * square(m - grand)).sum::<f64>();
    let within = groups.iter().map(|group| sum_of_squares(group.values())).sum::<f64>();
    let (df1, df2) = ((groups.len() - 1) as f64, (n - groups.len()) as f64);
    Ok(Anova { between, within, test: FTest::new(between / df1 / (within / df2), df1, df2)? })
}

/// Welch's test of equal means for groups of unequal scatter.
///
/// # Errors
/// Fewer than two groups, a group without scatter.
pub fn welch_anova(groups: &[Sample]) -> Result<FTest, Refusal> {
    several(groups)?;
    let k = groups.len() as f64;
    let weights: Vec<f64> = groups.iter().map(|group| group.n() as f64 / group.variance()).collect();
    let total: f64 = weights.iter().sum();
    let center = groups.iter().zip(&weights).map(|(group, w)| w * group.mean()).sum::<f64>() / total;
    let between =
        groups.iter().zip(&weights).map(|(group, w)| w * square(group.mean() - center)).sum::<f64>();
    let unequal: f64 =
        groups.iter().zip(&weights).map(|(group, w)| square(1.0 - w / total) / (group.n() - 1) as f64).sum();
    let f = between / (k - 1.0) / (1.0 + 2.0 * (k - 2.0) / (k * k - 1.0) * unequal);
    FTest::new(f, k - 1.0, (k * k - 1.0) / (3.0 * unequal))
}

/// Which center distances are taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Center {
    /// The mean (Levene).
    Mean,
    /// The median (Brown and Forsythe).
    Median,
}

/// Test of equal spreads: analysis of variance of distances from each group's center.
///
/// # Errors
/// Fewer than two groups, equal distances everywhere.
pub fn equal_spreads(groups: &[Sample], center: Center) -> Result<FTest, Refusal> {
    let distances = |group: &Sample| {
        let middle = match center {
            Center::Mean => mean(group.values()),
            Center::Median => group.median(),
        };
        Sample::new(group.values().iter().map(|x| (x - middle).abs()).collect())
            .map_err(|_| Refusal::OutOfRange)
    };
    let distances: Vec<Sample> = groups.iter().map(distances).collect::<Result<_, _>>()?;
    Ok(anova(&distances)?.test)
}

/// Bartlett's test of equal variances of normal groups.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Bartlett {
    /// The statistic, chi-square on `df` degrees of freedom.
    pub statistic: f64,
    /// Groups less one.
    pub df: f64,
}

impl Bartlett {
    /// P(χ² > statistic).
    #[must_use]
    pub fn p_value(&self) -> f64 {
        chi_square_sf(self.statistic, self.df)
    }
}

/// Bartlett's statistic with its small-sample correction.
///
/// # Errors
/// Fewer than two groups, a group without scatter.
pub fn bartlett(groups: &[Sample]) -> Result<Bartlett, Refusal> {
    several(groups)?;
    let df = |group: &Sample| (group.n() - 1) as f64;
    let total: f64 = groups.iter().map(df).sum();
    let pooled = groups.iter().map(|group| df(group) * group.variance()).sum::<f64>() / total;
    let logs: f64 = groups.iter().map(|group| df(group) * ln(pooled / group.variance())).sum();
    let k = groups.len() as f64;
    let reciprocals = groups.iter().map(|group| 1.0 / df(group)).sum::<f64>() - 1.0 / total;
    let statistic = logs / (1.0 + reciprocals / (3.0 * (k - 1.0)));
    if !statistic.is_finite() {
        return Err(Refusal::NoScatter);
    }
    Ok(Bartlett { statistic, df: k - 1.0 })
}

fn several(groups: &[Sample]) -> Result<(), Refusal> {
    if groups.len() < 2 { Err(Refusal::TooFew { got: groups.len(), need: 2 }) } else { Ok(()) }
}

//! Adjusted p-values when several questions are asked of one session.
//!
//! Every function gives one adjusted value per p, in the order given. Values that are not probabilities count
//! as 1.

/// Holm's step-down adjustment: keeps the chance of any false 'different' among all questions.
///
/// In ascending order, adjⱼ = max over i ≤ j of min(1, (m − i + 1)·p₍ᵢ₎).
/// Source: S. Holm, Scandinavian Journal of Statistics 6 (1979), 65–70.
#[must_use]
pub fn holm(p: &[f64]) -> Vec<f64> {
    let mut adjusted = vec![1.0; p.len()];
    let mut least = 0.0f64;
    for (rank, index) in ascending(p).into_iter().enumerate() {
        least = least.max(((p.len() - rank) as f64 * probability(p[index])).min(1.0));
        adjusted[index] = least;
    }
    adjusted
}

/// Benjamini and Hochberg's step-up adjustment: keeps the expected share of false ones among those called
/// different. Not used for verdicts.
///
/// In descending order, adjⱼ = min over i ≥ j of (m/i)·p₍ᵢ₎.
/// Source: Benjamini and Hochberg, Journal of the Royal Statistical Society B 57 (1995), 289–300.
#[must_use]
pub fn benjamini_hochberg(p: &[f64]) -> Vec<f64> {
    let mut adjusted = vec![1.0; p.len()];
    let mut most = 1.0f64;
    for (rank, index) in ascending(p).into_iter().enumerate().rev() {
        most = most.min(p.len() as f64 / (rank + 1) as f64 * probability(p[index]));
        adjusted[index] = most;
    }
    adjusted
}

/// Bonferroni's adjustment, min(1, m·p).
#[must_use]
pub fn bonferroni(p: &[f64]) -> Vec<f64> {
    p.iter().map(|&p_i| (p.len() as f64 * probability(p_i)).min(1.0)).collect()
}

fn ascending(p: &[f64]) -> Vec<usize> {
    crate::arrange::positions(p.len(), &|i, j| probability(p[i]).total_cmp(&probability(p[j])))
}

fn probability(p: f64) -> f64 {
    if (0.0..=1.0).contains(&p) { p } else { 1.0 }
}

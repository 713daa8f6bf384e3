//! Which of many findings to keep so that, on average, no more than a stated part of those kept is luck.
//!
//! Source: Y. Benjamini and Y. Hochberg, J. Royal Statistical Society B 57 (1995), 289–300. Holds where the findings owe nothing
//! to each other, or only agree with each other (Benjamini and Yekutieli, Annals of Statistics 29 (2001), 1165–1188).

/// For each p-value, the smallest rate at which its finding is kept: min over j ≥ rank of n·p₍ⱼ₎/j, at most 1.
///
/// A p-value that is not a number is kept at no rate below 1. Accuracy: exact but for rounding; against
/// tests/reference/stats/26.
#[must_use]
pub fn false_discovery_rates(p_values: &[f64]) -> Vec<f64> {
    let p = |at: usize| if p_values[at].is_nan() { 1.0 } else { p_values[at].clamp(0.0, 1.0) };
    let mut order: Vec<usize> = (0..p_values.len()).collect();
    order.sort_unstable_by(|&one, &other| p(one).total_cmp(&p(other)).then(one.cmp(&other)));
    let n = p_values.len() as f64;
    let mut rates = vec![1.0; p_values.len()];
    let mut least = 1.0_f64;
    for (rank, &at) in order.iter().enumerate().rev() {
        least = least.min(n * p(at) / (rank + 1) as f64);
        rates[at] = least;
    }
    rates
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rate_is_never_less_than_the_p_value_and_keeps_their_order() {
        let p = [0.04, 0.001, 0.9, f64::NAN, 0.02, 0.02];
        let rates = false_discovery_rates(&p);
        for (one, p_one) in rates.iter().zip(p) {
            assert!(*one >= p_one || p_one.is_nan());
            assert!(*one <= 1.0);
        }
        assert!(rates[1] < rates[4] && (rates[4] - rates[5]).abs() < 1e-15 && rates[5] < rates[0]);
        assert!(false_discovery_rates(&[]).is_empty());
    }
}

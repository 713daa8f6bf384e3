//! The k-th smallest of all differences between two samples, without listing them.
//!
//! 50,000 shots a side have 2.5 billion differences; counting those below a value takes one pass over both.

/// All differences x − y of two samples, kept as the samples in ascending order.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct PairwiseDifferences {
    x: Vec<f64>,
    y: Vec<f64>,
}

impl PairwiseDifferences {
    /// Both in ascending order and not empty.
    pub(crate) fn new(x: Vec<f64>, y: Vec<f64>) -> PairwiseDifferences {
        PairwiseDifferences { x, y }
    }

    /// The difference that `k` others do not exceed, counted from 0, to the last bit.
    ///
    /// Halves the range of doubles between smallest and largest difference: at most 64 passes.
    pub(crate) fn kth(&self, k: usize) -> f64 {
        let (Some(&x_low), Some(&x_high)) = (self.x.first(), self.x.last()) else { return 0.0 };
        let (Some(&y_low), Some(&y_high)) = (self.y.first(), self.y.last()) else { return 0.0 };
        let (mut low, mut high) = (ordered(x_low - y_high), ordered(x_high - y_low));
        while low < high {
            let middle = low + (high - low) / 2;
            if self.up_to(double(middle)) > k { high = middle } else { low = middle + 1 }
        }
        double(low)
    }

    /// How many differences are at most `value`.
    fn up_to(&self, value: f64) -> usize {
        let mut within = 0;
        let mut first = 0;
        // As x grows, fewer y are small enough: the pointer only moves up.
        for x in &self.x {
            while self.y.get(first).is_some_and(|y| x - y > value) {
                first += 1;
            }
            within += self.y.len() - first;
        }
        within
    }
}

/// A whole number that sorts as the double does.
fn ordered(x: f64) -> u64 {
    let bits = x.to_bits();
    if bits >> 63 == 0 { bits | 1 << 63 } else { !bits }
}

fn double(ordered: u64) -> f64 {
    f64::from_bits(if ordered >> 63 == 1 { ordered & !(1 << 63) } else { !ordered })
}

#[cfg(test)]
mod tests {
    use super::PairwiseDifferences;

    #[test]
    fn finds_what_a_list_would() {
        let (x, y) = (vec![-3.5, 0.1, 0.1, 2.0, 7.25], vec![-1.0, 0.0, 0.3, 2.0]);
        let mut all: Vec<f64> = x.iter().flat_map(|a| y.iter().map(move |b| a - b)).collect();
        crate::arrange::sort_numbers(&mut all);
        let pairs = PairwiseDifferences::new(x, y);
        for (k, expected) in all.iter().enumerate() {
            assert!((pairs.kth(k) - expected).abs() <= 0.0, "{k}");
        }
    }
}

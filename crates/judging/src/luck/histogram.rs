//! Gaps that chance gives, counted into bins that can be drawn as they are.
//!
//! Bins are equally wide, as many on either side of zero, and wherever it can be done the margin is an edge: then
//! the bins beyond it hold just the gaps that reach it.

use serde::Serialize;

/// Bins wanted on each side of zero.
const BINS_EACH_SIDE: f64 = 14.0;

/// Shares of a bin's width below which a gap counts as lying on the edge above it.
const SLACK: f64 = 1e-9;

/// One bar.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Bin {
    /// Left edge, in the measure's unit, candidate − baseline.
    pub low: f64,
    /// Right edge.
    pub high: f64,
    /// Gaps in it.
    pub count: u32,
}

/// Bars from left to right without holes between them.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Histogram {
    /// From the most negative gap to the most positive.
    pub bins: Vec<Bin>,
    /// Gaps in all bins: every one drawn, to both sides.
    pub total: u32,
}

impl Histogram {
    /// Counts sizes (ascending, none negative) to both sides of zero.
    ///
    /// An edge belongs to the bin farther from zero, so that a gap of just the margin lies beyond it.
    #[must_use]
    pub(super) fn of(sizes: &[f64], margin: Option<f64>) -> Self {
        let width = width(sizes.last().copied().unwrap_or_default(), margin);
        let mut side: Vec<u32> = Vec::new();
        let mut rest = sizes;
        while !rest.is_empty() {
            let edge = (side.len() + 1) as f64 * width - SLACK * width;
            let inside = rest.partition_point(|size| *size < edge);
            side.push(u32::try_from(inside).unwrap_or(u32::MAX));
            rest = &rest[inside..];
        }
        let edge = |k: usize| k as f64 * width;
        let right = side.iter().enumerate().map(|(k, &count)| Bin { low: edge(k), high: edge(k + 1), count });
        // Less than zero, not minus: a negative zero would not survive being written as text.
        let left =
            right.clone().rev().map(|bin| Bin { low: 0.0 - bin.high, high: 0.0 - bin.low, count: bin.count });
        let bins: Vec<Bin> = left.chain(right).collect();
        Self { total: bins.iter().map(|bin| bin.count).sum(), bins }
    }
}

/// The width of a bin: a whole part of the margin, or a round number where the margin is too narrow for that.
fn width(reach: f64, margin: Option<f64>) -> f64 {
    let margin = margin.filter(|m| *m > 0.0);
    if reach <= 0.0 {
        return margin.unwrap_or(1.0);
    }
    let wanted = reach / BINS_EACH_SIDE;
    if let Some(margin) = margin.filter(|m| *m > 0.75 * wanted)
        && margin <= reach
    {
        return margin / (margin / wanted).round().max(1.0);
    }
    round_up(wanted)
}

/// The next 1, 2 or 5 times a power of ten. By steps, since logarithms differ in their last bit between targets.
fn round_up(wanted: f64) -> f64 {
    let mut power = 1.0;
    while power < wanted {
        power *= 10.0;
    }
    while power > 10.0 * wanted {
        power /= 10.0;
    }
    [power / 10.0, power / 5.0, power / 2.0].into_iter().find(|width| *width >= wanted).unwrap_or(power)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn counts(histogram: &Histogram) -> Vec<u32> {
        histogram.bins.iter().map(|bin| bin.count).collect()
    }

    #[test]
    fn every_gap_is_counted_to_both_sides() {
        let sizes: Vec<f64> = (0..1000).map(|i| f64::from(i) * 0.0371).collect();
        for margin in [None, Some(0.0), Some(0.01), Some(1.5), Some(5.0), Some(30.0), Some(500.0)] {
            let histogram = Histogram::of(&sizes, margin);
            assert_eq!(histogram.total, 2000, "{margin:?}");
            let mirrored: Vec<u32> = counts(&histogram).into_iter().rev().collect();
            assert_eq!(counts(&histogram), mirrored);
            assert!((16..=60).contains(&histogram.bins.len()), "{margin:?}: {}", histogram.bins.len());
            for pair in histogram.bins.windows(2) {
                assert!((pair[0].high - pair[1].low).abs() < 1e-9, "no holes");
            }
        }
    }

    #[test]
    fn the_margin_is_an_edge_and_what_reaches_it_lies_beyond() {
        let sizes: Vec<f64> = (0..200).map(|i| f64::from(i) * 0.1).collect();
        // The last one is the largest gap itself.
        for margin in [1.5, 2.0, 5.0, 7.3, sizes[199]] {
            let histogram = Histogram::of(&sizes, Some(margin));
            let beyond: u32 =
                histogram.bins.iter().filter(|bin| bin.low >= margin - 1e-9).map(|bin| bin.count).sum();
            let reached = sizes.iter().filter(|size| **size > margin - 1e-9).count();
            assert_eq!(beyond as usize, reached, "{margin}");
        }
    }

    #[test]
    fn shots_without_scatter_make_two_bars_that_meet_at_zero() {
        let histogram = Histogram::of(&[0.0; 7], Some(5.0));
        assert_eq!(counts(&histogram), [7, 7]);
        assert!((histogram.bins[0].high).abs() < 1e-12);
        assert_eq!(counts(&Histogram::of(&[0.0; 7], Some(0.0))), [7, 7], "a margin of nothing is no width");
    }

    #[test]
    fn round_widths_are_the_next_larger() {
        for (wanted, width) in
            [(0.7, 1.0), (1.0, 1.0), (1.1, 2.0), (3.0, 5.0), (5.1, 10.0), (0.03, 0.05), (140.0, 200.0)]
        {
            assert!((round_up(wanted) / width - 1.0).abs() < 1e-12, "{wanted}");
        }
    }

    #[test]
    fn tiny_and_huge_gaps_make_no_more_bars() {
        for scale in [1e-300, 1e-12, 1e12, 1e36] {
            let sizes: Vec<f64> = (0..100).map(|i| f64::from(i) * scale).collect();
            assert!(Histogram::of(&sizes, Some(5.0)).bins.len() <= 60, "{scale}");
        }
    }
}

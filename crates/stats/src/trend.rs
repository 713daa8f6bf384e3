//! Trend over the order of shots: warming up, tiring, or a club that grows on the golfer.
//!
//! One slope for the whole session, each build at its own level. Shots lean on each other and a slope sees
//! that more than a mean does, so its standard error may only be widened. Where each build was hit in one
//! block, slope and difference explain the same thing: this finds drift within blocks, it cannot take drift
//! between them out of a difference.
//! Source: analysis of covariance; widening from `autocorrelation` of what the line leaves over.

use crate::autocorrelation::{autocorrelation_factor, corrected_autocorrelation};
use crate::difference::{Refusal, TDifference};
use crate::sample::check_value;

/// One shot as the trend needs it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OrderedShot {
    /// When it was hit, in shots (or minutes) from any start.
    pub at: f64,
    /// Which build: only equal or not equal matters.
    pub build: usize,
    /// Its value.
    pub value: f64,
}

/// A slope over the order of shots.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Trend {
    /// Change per unit of order, as least squares gives it for independent shots.
    pub textbook: TDifference,
    /// Lag-1 autocorrelation of the residuals, corrected for its bias, within 0 to 0.9.
    pub autocorrelation: f64,
    /// From the first shot to the last, in units of order.
    pub span: f64,
}

impl Trend {
    /// The slope with its standard error widened for autocorrelation, never narrowed.
    #[must_use]
    pub fn slope(&self) -> TDifference {
        self.textbook.widened(autocorrelation_factor(self.autocorrelation))
    }

    /// Change over the whole session: the widened slope times the span.
    #[must_use]
    pub fn total(&self) -> TDifference {
        let slope = self.slope();
        TDifference { diff: slope.diff * self.span, se: slope.se * self.span, df: slope.df }
    }
}

/// Fits value = build + slope · order.
///
/// slope = Σ ẍÿ/Σ ẍ² with each build's means taken out, df = n − builds − 1.
///
/// # Errors
/// Unusable values, fewer than builds + 2 shots, shots all at one place in the order, no scatter.
pub fn trend(shots: &[OrderedShot]) -> Result<Trend, Refusal> {
    let mut shots = shots.to_vec();
    for (index, shot) in shots.iter().enumerate() {
        let usable = check_value(index, shot.value).and(check_value(index, shot.at));
        usable
            .map_err(|_| Refusal::Argument { got: if shot.at.is_finite() { shot.value } else { shot.at } })?;
    }
    crate::arrange::sort_by(&mut shots, |a, b| a.at.total_cmp(&b.at));
    let levels = Levels::of(&shots);
    let df = shots.len() as f64 - levels.0.len() as f64 - 1.0;
    if df < 1.0 {
        return Err(Refusal::TooFew { got: shots.len(), need: levels.0.len() + 2 });
    }
    let around: Vec<Around> = shots.iter().map(|shot| levels.around(shot)).collect();
    let spread: f64 = around.iter().map(|shot| shot.at * shot.at).sum();
    let slope = around.iter().map(|shot| shot.at * shot.value).sum::<f64>() / spread;
    let residuals: Vec<f64> = around.iter().map(|shot| shot.value - slope * shot.at).collect();
    let squares: f64 = residuals.iter().map(|e| e * e).sum();
    let products: f64 = residuals.windows(2).map(|pair| pair[0] * pair[1]).sum();
    let largest = shots.iter().fold(0.0f64, |most, shot| most.max(shot.value.abs()));
    Ok(Trend {
        textbook: TDifference::new(slope, (squares / df / spread).sqrt(), df, largest / spread.sqrt())?,
        autocorrelation: corrected_autocorrelation(products / squares, shots.len()),
        span: shots.last().map_or(0.0, |last| last.at - shots[0].at),
    })
}

struct Around {
    at: f64,
    value: f64,
}

/// Mean place and value of each build, by name.
struct Levels(Vec<BuildLevel>);

struct BuildLevel {
    build: usize,
    n: f64,
    at: f64,
    value: f64,
}

impl Levels {
    fn of(shots: &[OrderedShot]) -> Levels {
        let builds = crate::arrange::distinct(shots.iter().map(|shot| shot.build));
        let mut levels = Levels(
            builds.into_iter().map(|build| BuildLevel { build, n: 0.0, at: 0.0, value: 0.0 }).collect(),
        );
        for shot in shots {
            if let Some(level) = levels.find(shot.build) {
                // Running means: no sum grows large.
                level.n += 1.0;
                level.at += (shot.at - level.at) / level.n;
                level.value += (shot.value - level.value) / level.n;
            }
        }
        levels
    }

    fn find(&mut self, build: usize) -> Option<&mut BuildLevel> {
        let index = self.0.binary_search_by_key(&build, |level| level.build).ok()?;
        self.0.get_mut(index)
    }

    fn around(&self, shot: &OrderedShot) -> Around {
        match self.0.binary_search_by_key(&shot.build, |level| level.build) {
            Ok(index) => Around { at: shot.at - self.0[index].at, value: shot.value - self.0[index].value },
            Err(_) => Around { at: 0.0, value: 0.0 },
        }
    }
}

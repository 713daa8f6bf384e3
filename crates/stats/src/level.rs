//! Confidence levels and intervals.
//!
//! A level is kept as the chance of missing, α, because planned looks need levels such as 1 − 1e-14 that a
//! double cannot hold as such.

/// Confidence of a two-sided interval, strictly between 0.5 and 1.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Level {
    alpha: f64,
}

/// Why a level could not be made: it must lie strictly between 0.5 and 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LevelError {
    /// What was asked for.
    pub got: f64,
}

impl Level {
    /// 90 %: the interval of two one-sided 5 % tests.
    pub const P90: Level = Level { alpha: 0.10 };
    /// 95 %: the usual interval for a difference.
    pub const P95: Level = Level { alpha: 0.05 };
    /// 98 %: for 'the same' when the number of shots was not fixed.
    pub const P98: Level = Level { alpha: 0.02 };
    /// 99 %: for 'different' when the number of shots was not fixed.
    pub const P99: Level = Level { alpha: 0.01 };

    /// A level by its coverage, such as 0.95.
    ///
    /// # Errors
    /// Anything not strictly between 0.5 and 1.
    pub fn new(coverage: f64) -> Result<Level, LevelError> {
        Level::missing(1.0 - coverage).map_err(|_| LevelError { got: coverage })
    }

    /// A level by its chance of missing on either side together, such as 0.05.
    ///
    /// # Errors
    /// Anything not strictly between 0 and 0.5.
    pub fn missing(alpha: f64) -> Result<Level, LevelError> {
        if alpha > 0.0 && alpha < 0.5 { Ok(Level { alpha }) } else { Err(LevelError { got: 1.0 - alpha }) }
    }

    /// The level of one of so many comparisons that share this one's chance of missing.
    #[must_use]
    pub fn shared_by(self, comparisons: usize) -> Level {
        Level::missing(self.alpha / comparisons.max(1) as f64).unwrap_or(self)
    }

    /// Chance of missing, both sides together.
    #[must_use]
    pub fn alpha(self) -> f64 {
        self.alpha
    }

    /// Chance of missing on one side.
    #[must_use]
    pub fn tail(self) -> f64 {
        0.5 * self.alpha
    }

    /// Coverage, 1 − α (1 exactly when α is below the resolution of a double).
    #[must_use]
    pub fn coverage(self) -> f64 {
        1.0 - self.alpha
    }
}

/// Two ends at a level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// Confidence it was made for.
    pub level: Level,
    /// Lower end.
    pub low: f64,
    /// Upper end.
    pub high: f64,
}

impl Interval {
    /// `center` ± `half_width`.
    #[must_use]
    pub fn around(center: f64, half_width: f64, level: Level) -> Interval {
        Interval { level, low: center - half_width, high: center + half_width }
    }

    /// Whether `value` lies strictly outside.
    #[must_use]
    pub fn excludes(&self, value: f64) -> bool {
        self.low > value || self.high < value
    }

    /// Whether the whole interval lies strictly between `low` and `high`.
    #[must_use]
    pub fn inside(&self, low: f64, high: f64) -> bool {
        self.low > low && self.high < high
    }

    /// Half the distance between the ends.
    #[must_use]
    pub fn half_width(&self) -> f64 {
        0.5 * (self.high - self.low)
    }
}

//! The values of one build on one measure, checked once at the door.
//!
//! Everything behind this door may rely on at least two values, all finite and of a size whose fourth
//! power still fits a double; order is kept, because the order of shots matters to some questions.

/// Largest magnitude a value may have: its fourth power, summed and squared, must not overflow.
pub const LARGEST_VALUE: f64 = 1e37;

/// At least two finite values in the order they were observed.
#[derive(Debug, Clone, PartialEq)]
pub struct Sample(Vec<f64>);

/// Why a sample could not be made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SampleError {
    /// A scatter needs two values.
    TooFew {
        /// How many there were.
        got: usize,
        /// How many there must be.
        need: usize,
    },
    /// A value is infinite or not a number.
    NotFinite {
        /// Which one, counted from 0.
        index: usize,
    },
    /// A value is larger than `LARGEST_VALUE`.
    TooLarge {
        /// Which one, counted from 0.
        index: usize,
        /// What it was.
        value: f64,
    },
}

impl Sample {
    /// Takes values in order; the only place where they are checked.
    ///
    /// # Errors
    /// Fewer than two values, or one that is not finite or too large.
    pub fn new(values: Vec<f64>) -> Result<Sample, SampleError> {
        if values.len() < 2 {
            return Err(SampleError::TooFew { got: values.len(), need: 2 });
        }
        for (index, &value) in values.iter().enumerate() {
            check_value(index, value)?;
        }
        Ok(Sample(values))
    }

    /// Number of values, at least 2.
    #[must_use]
    pub fn n(&self) -> usize {
        self.0.len()
    }

    /// The values in the order given.
    #[must_use]
    pub fn values(&self) -> &[f64] {
        &self.0
    }

    /// The values in ascending order.
    #[must_use]
    pub fn sorted(&self) -> Vec<f64> {
        let mut values = self.0.clone();
        crate::arrange::sort_numbers(&mut values);
        values
    }
}

pub(crate) fn check_value(index: usize, value: f64) -> Result<(), SampleError> {
    if !value.is_finite() {
        return Err(SampleError::NotFinite { index });
    }
    if value.abs() > LARGEST_VALUE {
        return Err(SampleError::TooLarge { index, value });
    }
    Ok(())
}

/// Number of values, mean and standard deviation: all that a printed table leaves of a sample.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Summary {
    n: usize,
    mean: f64,
    sd: f64,
}

/// Why a summary could not be made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SummaryError {
    /// A standard deviation needs two values.
    TooFew {
        /// How many there were.
        got: usize,
        /// How many there must be.
        need: usize,
    },
    /// The mean is not a finite number of usable size.
    Mean {
        /// What it was.
        got: f64,
    },
    /// The standard deviation is negative, or not a finite number of usable size.
    Sd {
        /// What it was.
        got: f64,
    },
}

impl Summary {
    /// Takes count, mean and standard deviation (divisor n − 1) as printed.
    ///
    /// # Errors
    /// Fewer than two values, a mean or deviation that is not finite, a negative deviation.
    pub fn new(n: usize, mean: f64, sd: f64) -> Result<Summary, SummaryError> {
        if n < 2 {
            return Err(SummaryError::TooFew { got: n, need: 2 });
        }
        if !mean.is_finite() || mean.abs() > LARGEST_VALUE {
            return Err(SummaryError::Mean { got: mean });
        }
        if !(0.0..=LARGEST_VALUE).contains(&sd) {
            return Err(SummaryError::Sd { got: sd });
        }
        Ok(Summary { n, mean, sd })
    }

    /// Number of values, at least 2.
    #[must_use]
    pub fn n(&self) -> usize {
        self.n
    }

    /// Arithmetic mean.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.mean
    }

    /// Standard deviation with divisor n − 1.
    #[must_use]
    pub fn sd(&self) -> f64 {
        self.sd
    }
}

impl Sample {
    /// Count, mean and standard deviation of the sample.
    #[must_use]
    pub fn summary(&self) -> Summary {
        Summary { n: self.n(), mean: self.mean(), sd: self.sd() }
    }
}

//! What each refusal says to a programmer; golfers read `fitting`'s words instead.

use crate::difference::Refusal;
use crate::level::LevelError;
use crate::looks::LooksError;
use crate::rounds::{MOST_BUILDS, RoundsError};
use crate::sample::{LARGEST_VALUE, SampleError, SummaryError};
use std::error::Error;
use std::fmt::{Display, Formatter, Result};

impl Display for SampleError {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            SampleError::TooFew { got, need } => write!(f, "{got} values, at least {need} are needed"),
            SampleError::NotFinite { index } => write!(f, "value {index} is not a finite number"),
            SampleError::TooLarge { index, value } => {
                write!(f, "value {index} is {value:e}, beyond {LARGEST_VALUE:e}")
            }
        }
    }
}

impl Display for SummaryError {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            SummaryError::TooFew { got, need } => write!(f, "{got} values, at least {need} are needed"),
            SummaryError::Mean { got } => write!(f, "a mean of {got} is not usable"),
            SummaryError::Sd { got } => write!(f, "a standard deviation of {got} is not usable"),
        }
    }
}

impl Display for LevelError {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        write!(f, "a level of {} does not lie strictly between 0.5 and 1", self.got)
    }
}

impl Display for RoundsError {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            RoundsError::Value(error) => error.fmt(f),
            RoundsError::TooFewBuilds { got } => write!(f, "{got} builds, at least 2 are needed"),
            RoundsError::TooManyBuilds { got } => write!(f, "{got} builds, at most {MOST_BUILDS} are taken"),
        }
    }
}

impl Display for LooksError {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            LooksError::Count { got, most } => write!(f, "{got} looks, from 1 to {most} can be planned"),
            LooksError::Time { index, got } => {
                write!(f, "look {index} at {got}: times must rise, above 0 and up to 1")
            }
        }
    }
}

impl Display for Refusal {
    fn fmt(&self, f: &mut Formatter<'_>) -> Result {
        match self {
            Refusal::TooFew { got, need } => write!(f, "{got} values, at least {need} are needed"),
            Refusal::NoScatter => write!(f, "the values do not scatter"),
            Refusal::TooFewRounds { got, need } => {
                write!(f, "{got} rounds with several builds, at least {need} are needed")
            }
            Refusal::NotLinked => {
                write!(f, "no chain of rounds links the builds, or columns depend on each other")
            }
            Refusal::Argument { got } => write!(f, "an argument of {got} is outside its range"),
            Refusal::OutOfRange => write!(f, "the result is not a finite number"),
        }
    }
}

impl Error for SampleError {}
impl Error for SummaryError {}
impl Error for LevelError {}
impl Error for RoundsError {}
impl Error for LooksError {}
impl Error for Refusal {}

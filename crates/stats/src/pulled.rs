//! A difference pulled toward zero by how far builds usually differ: what to believe of it, which decides nothing.
//!
//! Before the shots the true difference is normal around zero with a usual deviation; the shots' error is Student's t. A
//! difference that was large by luck is pulled far, one that many shots vouch for hardly.
//! Source: standard conjugate theory with an unknown variance (Box and Tiao, Bayesian Inference in Statistical Analysis,
//! 1973, 2.4), the variance by quadrature.

use crate::describe::sum_of_squares;
use crate::difference::{Refusal, TDifference};
use crate::normal_mixture::{NormalMixture, Part, chances};
use crate::quadrature::Scale;
use crate::real::{ln, square};

/// Panels of twenty nodes for the error's own uncertainty, whose density is broad with few degrees of freedom.
const fn panels(df: f64) -> usize {
    if df < 8.0 { 40 } else { 8 }
}

/// What is believed of a true difference; `usual` is the deviation of true differences, `drift` one that may have been
/// added to all shots of a build (0 for none), both in the unit of the difference.
///
/// Accuracy: 1e-8 relative against tests/reference/stats/22.
///
/// # Errors
/// A `usual` that is not above zero, a `drift` that is negative, neither finite.
pub fn pulled(found: &TDifference, usual: f64, drift: f64) -> Result<NormalMixture, Refusal> {
    pulled_over(found, &[usual], drift)
}

/// The same where one of several deviations is usual, each as likely as any other before the shots; after them those count
/// most that expect such a difference.
///
/// # Errors
/// As [`pulled`], and none of them.
pub fn pulled_over(found: &TDifference, usual: &[f64], drift: f64) -> Result<NormalMixture, Refusal> {
    pulled_among(found, &[], usual, drift)
}

/// The same beside other builds, whose differences from the same baseline also say which deviation is usual here: builds that
/// lie near each other expect small gaps. Each average is normal around a common one with half the usual variance, and each
/// is taken as exact as the two of `found`; so for one usual deviation the others change nothing but the error's size.
///
/// Evidence of a deviation τ with error e: −(k−1)/2·ln(τ² + e) − S/(τ² + e), S the squares of the k averages around theirs.
/// Accuracy: as [`pulled`].
///
/// # Errors
/// As [`pulled_over`].
pub fn pulled_among(
    found: &TDifference,
    others: &[f64],
    usual: &[f64],
    drift: f64,
) -> Result<NormalMixture, Refusal> {
    let averages: Vec<f64> = [0.0, found.diff].iter().chain(others).copied().collect();
    let (squares, builds) = (sum_of_squares(&averages), averages.len() as f64);
    if let Some(&got) = usual.iter().find(|usual| !(**usual > 0.0 && usual.is_finite())) {
        return Err(Refusal::Argument { got });
    }
    if !(drift >= 0.0 && drift.is_finite()) {
        return Err(Refusal::Argument { got: drift });
    }
    let scale = Scale::new(found.df).ok_or(Refusal::Argument { got: found.df })?;
    // The ratio of the estimated to the true error.
    let places = scale.places(0.0, f64::INFINITY, panels(found.df));
    let variance = |ratio: f64| square(found.se / ratio) + square(drift);
    let each = || usual.iter().flat_map(|usual| places.iter().map(move |place| (*usual, place)));
    let logs: Vec<f64> = each()
        .map(|(usual, place)| {
            let all = variance(place.at) + square(usual);
            ln(place.weight) - 0.5 * (builds - 1.0) * ln(all) - squares / all
        })
        .collect();
    let chances = chances(&logs).ok_or(Refusal::OutOfRange)?;
    Ok(NormalMixture::new(chances.into_iter().zip(each()).map(|(chance, (usual, place))| {
        let error = variance(place.at);
        let kept = square(usual) / (square(usual) + error);
        Part { chance, mean: kept * found.diff, variance: kept * error }
    })))
}

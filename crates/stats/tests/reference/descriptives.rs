//! 01: mean, deviation, quantiles, autocorrelation; NIST StRD among them.

use crate::passport::{Case, each_case};
use stats::describe::{MAD_TO_SD, mad, mean, median, quantile_of_sorted};
use stats::{Sample, SampleError};

#[test]
fn descriptives() {
    each_case("01_descriptives.json", |case| {
        let x = case.numbers("x");
        case.exactly("n", x.len() as u64);
        match Sample::new(x.clone()) {
            Ok(sample) => whole_sample(case, &sample),
            Err(error) => {
                assert_eq!(error, SampleError::TooFew { got: 1, need: 2 });
                for undefined in ["sd", "autocorr_lag1"] {
                    assert!(case.expected(undefined).is_null());
                }
            }
        }
        case.close("mean", mean(&x), "default_rel");
        case.maybe_close("median", median(&x), "default_rel");
        case.maybe_close("mad_raw", mad(&x), "default_rel");
        case.maybe_close("mad_scaled", mad(&x).map(|raw| raw * MAD_TO_SD), "default_rel");
        let mut sorted = x;
        sorted.sort_by(f64::total_cmp);
        let shares = crate::passport::numbers(case.expected("quantile_probs"));
        let quantiles: Vec<f64> = shares.iter().map(|&p| quantile_of_sorted(&sorted, p).unwrap()).collect();
        case.all_close("quantiles", &quantiles, "default_rel");
    });
}

fn whole_sample(case: &Case, sample: &Sample) {
    case.close("sd", sample.sd(), "default_rel");
    let finer = if case.states("autocorr_rel") { "autocorr_rel" } else { "default_rel" };
    case.maybe_close("autocorr_lag1", sample.lag1_autocorrelation(), finer);
}

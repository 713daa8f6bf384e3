//! 08: adjusted p-values.

use crate::passport::each_case_where;
use stats::{benjamini_hochberg, bonferroni, holm};

#[test]
fn families() {
    each_case_where(
        "08_multiple_comparisons.json",
        |case| case.has("p"),
        |case| {
            let p = case.numbers("p");
            case.all_close("holm", &holm(&p), "rel");
            case.all_close("bh", &benjamini_hochberg(&p), "rel");
            case.all_close("bonferroni", &bonferroni(&p), "rel");
            let rejected = |adjusted: Vec<f64>| adjusted.iter().filter(|p| **p < 0.05).count() as u64;
            case.exactly("n_reject_holm_05", rejected(holm(&p)));
            case.exactly("n_reject_bh_05", rejected(benjamini_hochberg(&p)));
        },
    );
}

//! 04: Mann–Whitney and Hodges–Lehmann; 18: Brunner and Munzel's error of the chance.

use crate::passport::each_case;
use stats::{Continuity, Level, Sample, mann_whitney};

#[test]
fn mann_whitney_cases() {
    each_case("04_mann_whitney_hl.json", |case| {
        let [x, y] = ["x", "y"].map(|key| Sample::new(case.numbers(key)).unwrap());
        let level = Level::new(case.number("conf")).unwrap();
        let test = mann_whitney(&x, &y);
        case.exactly("n1", x.n() as u64);
        case.exactly("n2", y.n() as u64);
        case.close("U1", test.u, "rel");
        case.close("prob_superiority", test.chance(), "rel");
        case.close("hl_shift", test.shift(), "rel");
        case.close("z_cc", test.z(Continuity::Corrected), "rel");
        case.close("p_asym_cc", test.normal_p(Continuity::Corrected), "rel");
        case.close("p_asym", test.normal_p(Continuity::Plain), "rel");
        let interval = test.shift_interval(level);
        let (ends, order) = match test.exact_p() {
            Some(p) => {
                case.close("p_exact", p, "rel");
                ("hl_ci_exact", "ci_order_k")
            }
            None => ("hl_ci_normal_approx_order", "hl_ci_k"),
        };
        case.all_close(ends, &[interval.low, interval.high], "rel");
        case.exactly(order, test.shift_order(level) as u64);
    });
}

#[test]
fn brunner_munzel_cases() {
    each_case("18_brunner_munzel.json", |case| {
        let [x, y] = ["x", "y"].map(|key| Sample::new(case.numbers(key)).unwrap());
        let found = mann_whitney(&x, &y).chance_above_half().unwrap();
        case.close("t", found.t(), "rel");
        case.close("df", found.df, "rel");
        case.close("p", found.p_value(), "rel");
    });
}

//! 07: spreads, by F and by Bonett.

use crate::passport::{Case, each_case};
use stats::distributions::normal_upper;
use stats::{
    Interval, Level, Sample, SpreadRatio, Summary, normal_sd_interval, spread_ratio, variance_ratio,
};

#[test]
fn spreads() {
    each_case("07_variance.json", |case| {
        let level = Level::new(case.number("conf")).unwrap();
        if case.has("x") {
            let [x, y] = ["x", "y"].map(|key| Sample::new(case.numbers(key)).unwrap());
            two(case, &x, &y, level);
            // The package prints no F.
            if case.expects("bonett_iterated_sd_ratio_ci") {
                return;
            }
            by_f(case, &x.summary(), &y.summary(), level);
        } else {
            let side =
                |i| Summary::new(case.count(&format!("n{i}")), 0.0, case.number(&format!("sd{i}"))).unwrap();
            by_f(case, &side(1), &side(2), level);
        }
    });
}

fn ends(interval: Interval) -> [f64; 2] {
    [interval.low, interval.high]
}

fn by_f(case: &Case, x: &Summary, y: &Summary, level: Level) {
    let ratio = variance_ratio(x, y).unwrap();
    case.close("F", ratio.f, "rel");
    case.exactly("df1", ratio.df1 as u64);
    case.exactly("df2", ratio.df2 as u64);
    case.close("F_p_two_sided", ratio.p_value(), "rel");
    case.all_close("var_ratio_ci", &ends(ratio.interval(level)), "rel");
    case.all_close("sd_ratio_ci", &ends(ratio.sd_interval(level)), "rel");
    case.all_close("sd1_ci", &ends(normal_sd_interval(x, level)), "rel");
    if case.expects("crit_low") {
        let upper = |df1, df2| stats::distributions::f_upper(level.tail(), df1, df2);
        case.close("crit_low", 1.0 / upper(ratio.df2, ratio.df1), "rel");
        case.close("crit_high", upper(ratio.df1, ratio.df2), "rel");
    }
}

fn two(case: &Case, x: &Sample, y: &Sample, level: Level) {
    case.close("sd1", x.sd(), "rel");
    case.close("sd2", y.sd(), "rel");
    let spread = spread_ratio(x, y).unwrap();
    case.close("sd_ratio", spread.ratio(), "rel");
    if case.expects("bonett_iterated_sd_ratio_ci") {
        let iterated = spread.interval(level).unwrap();
        return case.all_close("bonett_iterated_sd_ratio_ci", &ends(iterated), "rel");
    }
    case.close("bonett_pooled_kurtosis", spread.pooled_kurtosis(1.0), "rel");
    case.close("bonett_se", spread.se(1.0), "rel");
    case.close("bonett_c", spread.correction(level), "rel");
    case.all_close("bonett_sd_ratio_ci", &as_published(&spread, level), "rel");
}

/// Bonett's interval of 2006, which takes the kurtosis at ratio 1 for both ends; the product iterates it.
pub(crate) fn as_published(spread: &SpreadRatio, level: Level) -> [f64; 2] {
    let half_width = normal_upper(level.tail()) * spread.se(1.0);
    [-1.0, 1.0].map(|sign| spread.ratio() * (0.5 * (spread.correction(level).ln() + sign * half_width)).exp())
}

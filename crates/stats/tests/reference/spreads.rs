//! 07: spreads, by F, Bonett, Levene, Brown–Forsythe and Bartlett.

use crate::passport::{Case, each_case, numbers};
use stats::anova::{Center, bartlett, equal_spreads};
use stats::{
    Interval, Level, Sample, Summary, normal_sd_interval, spread_of_one, spread_ratio, variance_ratio,
};

#[test]
fn spreads() {
    each_case("07_variance.json", |case| {
        if case.has("groups") {
            many(case);
            return;
        }
        let level = Level::new(case.number("conf")).unwrap();
        if case.has("x") {
            let [x, y] = ["x", "y"].map(|key| Sample::new(case.numbers(key)).unwrap());
            two(case, &x, &y, level);
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
    case.close("bonett_pooled_kurtosis", spread.pooled_kurtosis(1.0), "rel");
    case.close("bonett_se", spread.se(1.0), "rel");
    case.close("bonett_c", spread.correction(level), "rel");
    case.all_close("bonett_sd_ratio_ci", &ends(spread.interval_2006(level).unwrap()), "rel");
    case.all_close("sd1_bonett_ci", &ends(spread_of_one(x, level).unwrap()), "rel");
    levene(case, &[x.clone(), y.clone()]);
}

fn levene(case: &Case, groups: &[Sample]) {
    for (name, center) in [("levene", Center::Mean), ("brown_forsythe", Center::Median)] {
        let test = equal_spreads(groups, center).unwrap();
        case.close(&format!("{name}_W"), test.f, "rel");
        case.close(&format!("{name}_p"), test.p_value(), "rel");
    }
}

fn many(case: &Case) {
    let groups = case.input["groups"].as_array().unwrap();
    let groups: Vec<Sample> = groups.iter().map(|group| Sample::new(numbers(group)).unwrap()).collect();
    levene(case, &groups);
    let test = equal_spreads(&groups, Center::Mean).unwrap();
    case.exactly("df1", test.df1 as u64);
    case.exactly("df2", test.df2 as u64);
    let test = bartlett(&groups).unwrap();
    case.close("bartlett_T", test.statistic, "rel");
    case.close("bartlett_p", test.p_value(), "rel");
}

//! 02, 03, 06: Welch, equivalence, Yuen.

use crate::passport::{Case, each_case};
use stats::{Level, Sample, Summary, TDifference, equivalence, welch, welch_from_summaries, yuen};

fn sample(case: &Case, key: &str) -> Sample {
    Sample::new(case.numbers(key)).unwrap()
}

fn welch_of(case: &Case) -> TDifference {
    if case.has("x") {
        return welch(&sample(case, "x"), &sample(case, "y")).unwrap();
    }
    let summary = |i: &str| {
        let key = |name: &str| format!("{name}{i}");
        Summary::new(case.count(&key("n")), case.number(&key("mean")), case.number(&key("sd"))).unwrap()
    };
    welch_from_summaries(&summary("1"), &summary("2")).unwrap()
}

fn compare(case: &Case, test: &TDifference, level: Level, p: &str) {
    case.close("diff", test.diff, "rel");
    case.close("se", test.se, "rel");
    case.close("df", test.df, "rel");
    case.close("t", test.t(), "rel");
    case.close("p_two_sided", test.p_value(), p);
    let interval = test.interval(level);
    case.all_close("ci", &[interval.low, interval.high], "rel");
}

#[test]
fn welch_cases() {
    each_case("02_welch_t.json", |case| {
        let level = Level::new(case.number("conf")).unwrap();
        compare(case, &welch_of(case), level, "p_rel");
        if case.has("x") {
            for (i, key) in [("1", "x"), ("2", "y")] {
                let x = sample(case, key);
                case.exactly(&format!("n{i}"), x.n() as u64);
                case.close(&format!("mean{i}"), x.mean(), "rel");
                case.close(&format!("sd{i}"), x.sd(), "rel");
            }
        }
        if case.expects("pooled_t") {
            pooled(case, level);
        }
    });
}

/// The published pooled test of the same data; not a method of the product, so its formula stands here.
fn pooled(case: &Case, level: Level) {
    let (n1, n2) = (case.number("n1"), case.number("n2"));
    let df = n1 + n2 - 2.0;
    let squares = (n1 - 1.0) * case.number("sd1").powi(2) + (n2 - 1.0) * case.number("sd2").powi(2);
    let sd = (squares / df).sqrt();
    let t = (case.number("mean1") - case.number("mean2")) / (sd * (1.0 / n1 + 1.0 / n2).sqrt());
    case.close("pooled_t", t, "rel");
    case.close("pooled_df", df, "rel");
    case.close("pooled_sd", sd, "rel");
    case.close("pooled_t_crit_975", stats::distributions::t_upper(level.tail(), df), "rel");
}

#[test]
fn equivalence_cases() {
    each_case("03_tost.json", |case| {
        let test = welch_of(case);
        let (low, high) = (case.number("low"), case.number("high"));
        let result = equivalence(&test, low, high);
        case.close("diff", test.diff, "rel");
        case.close("se", test.se, "rel");
        case.close("df", test.df, "rel");
        case.close("t_lower", (test.diff - low) / test.se, "rel");
        case.close("t_upper", (test.diff - high) / test.se, "rel");
        case.close("p_lower", result.p_low, "rel");
        case.close("p_upper", result.p_high, "rel");
        case.close("p_tost", result.p_value(), "rel");
        let alpha = case.number("alpha");
        let interval = test.interval(Level::missing(2.0 * alpha).unwrap());
        case.all_close("ci", &[interval.low, interval.high], "rel");
        let equivalent = case.expected("equivalent").as_bool().unwrap();
        assert_eq!(result.holds(alpha), equivalent, "{}", case.id);
        assert_eq!(interval.inside(low, high), equivalent, "{}", case.id);
    });
}

#[test]
fn yuen_cases() {
    each_case("06_yuen.json", |case| {
        let result = yuen(&sample(case, "x"), &sample(case, "y"), case.number("trim")).unwrap();
        for (i, side) in [("1", result.candidate), ("2", result.baseline)] {
            case.close(&format!("trimmed_mean{i}"), side.mean, "rel");
            case.close(&format!("winsorized_sd{i}"), side.winsorized_sd, "rel");
            case.exactly(&format!("h{i}"), side.kept as u64);
        }
        compare(case, &result.difference, Level::new(case.number("conf")).unwrap(), "rel");
    });
}

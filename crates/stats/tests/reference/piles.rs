//! 25: true effects behind many sessions; 26: false discoveries among them, and ratios of means.

use crate::passport::{Case, each_case};
use stats::combine::SessionEffect;
use stats::ratio_of_means::{Found, ratio_of_means};
use stats::true_effects::TrueEffects;
use stats::{Interval, Level, false_discovery_rates};

fn ends(interval: Interval) -> [f64; 2] {
    [interval.low, interval.high]
}

#[test]
fn true_effects() {
    each_case("25_true_effects.json", |case| {
        let both = case.numbers("effect").into_iter().zip(case.numbers("variance"));
        let sessions: Vec<SessionEffect> =
            both.map(|(effect, variance)| SessionEffect { effect, variance }).collect();
        let found = TrueEffects::new(&sessions).unwrap();
        case.close("tau", found.deviation(), "abs");
        case.close("mean", found.mean().diff, "rel");
        case.close("se", found.plain_error(), "rel");
        case.close("hartung_knapp_se", found.hartung_knapp_error(), "rel");
        case.all_close("tau_interval", &ends(found.deviation_interval(Level::P95)), "abs");
        case.all_close("next", &ends(found.next().interval(Level::P95)), "rel");
        let share = found.share_above(case.number("margin"), Level::P95);
        case.close("share", share.chance, "rel");
        case.all_close("share_interval", &ends(share.interval), "abs");
        let pulled = found.pulled(&sessions[0]);
        case.close("first_pulled", pulled.value, "rel");
        case.close("first_pulled_sd", pulled.sd, "rel");
    });
}

#[test]
fn false_discoveries_and_ratios() {
    each_case("26_many.json", |case| if case.has("p") { rates(case) } else { ratio(case) });
}

fn rates(case: &Case) {
    case.all_close("rates", &false_discovery_rates(&case.numbers("p")), "rel");
}

fn ratio(case: &Case) {
    let (found, of, weight) = (case.numbers("found"), case.numbers("of"), case.numbers("weight"));
    let sessions: Vec<Found> =
        (0..found.len()).map(|i| Found { found: found[i], of: of[i], weight: weight[i] }).collect();
    let got = ratio_of_means(&sessions, Level::P95).unwrap();
    case.close("ratio", got.ratio, "rel");
    case.all_close("interval", &ends(got.interval.unwrap()), "rel");
}

//! 11: two groups in blocks, by least squares.

use crate::passport::each_case;
use stats::{Level, RoundShot, Rounds};

#[test]
fn blocks() {
    each_case("11_blocks.json", |case| {
        let names: Vec<&str> =
            case.input["block"].as_array().unwrap().iter().map(|b| b.as_str().unwrap()).collect();
        let shots: Vec<RoundShot> = case
            .numbers("y")
            .iter()
            .zip(&names)
            .zip(case.numbers("group"))
            .map(|((&value, name), group)| RoundShot {
                round: names.iter().position(|other| other == name).unwrap(),
                build: usize::from(group > 0.5),
                value,
            })
            .collect();
        let result = Rounds::new(&shots).unwrap().compare(1, 0).unwrap();
        let test = result.fixed_effects;
        case.close("block_fixed/diff", test.diff, "block_fixed_rel");
        case.close("block_fixed/se", test.se, "block_fixed_rel");
        case.close("block_fixed/t", test.t(), "block_fixed_rel");
        case.close("block_fixed/p", test.p_value(), "block_fixed_rel");
        case.close("block_fixed/df", test.df, "block_fixed_rel");
        let interval = test.interval(Level::P95);
        case.all_close("block_fixed/ci95", &[interval.low, interval.high], "block_fixed_rel");
        case.close("block_fixed/residual_sd", result.residual_sd, "block_fixed_rel");
    });
}

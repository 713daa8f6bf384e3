//! The careful difference part by part: widening, fallback, allowance; each at its edge and on both sides of zero.
#![expect(clippy::unwrap_used, clippy::float_cmp, reason = "tests")]

use stats::choices::{LONGEST_TURN, WIDENING};
use stats::distributions::{t_sf, t_upper};
use stats::{
    CautiousDifference, Level, MOST_BUILDS, Refusal, RoundShot, Rounds, RoundsError, Sample, TDifference,
    blocked_widening,
};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * (1.0 + a.abs().max(b.abs()))
}

fn difference(diff: f64, se: f64, df: f64) -> TDifference {
    TDifference::new(diff, se, df, 0.0).unwrap()
}

/// Both signs of one difference with all that may widen it.
fn both_signs(fallback: Option<(f64, f64)>, allowance: f64) -> [CautiousDifference; 2] {
    [3.0, -3.0].map(|diff| {
        let mut careful = CautiousDifference::new(&difference(diff, 1.0, 20.0), allowance);
        careful.fallback = fallback.map(|(se, df)| difference(diff, se, df));
        careful
    })
}

#[test]
fn an_allowance_is_added_to_the_half_width_once() {
    let usual = WIDENING * t_upper(0.025, 20.0);
    for careful in both_signs(None, 2.0) {
        assert!(near(careful.half_width(Level::P95), usual + 2.0));
        let interval = careful.interval(Level::P95);
        assert!(near(interval.low, careful.diff() - usual - 2.0));
        assert!(near(interval.high, careful.diff() + usual + 2.0));
        assert!(near(interval.half_width(), usual + 2.0));
    }
}

#[test]
fn an_allowance_that_is_none_counts_as_zero() {
    for nothing in [0.0, -1.0, f64::NAN, f64::NEG_INFINITY] {
        let careful = CautiousDifference::new(&difference(3.0, 1.0, 20.0), nothing);
        assert_eq!(careful.allowance, 0.0);
    }
    assert_eq!(CautiousDifference::new(&difference(3.0, 1.0, 20.0), 0.5).allowance, 0.5);
}

#[test]
fn a_factor_widens_and_never_below_the_usual_one() {
    let textbook = difference(3.0, 2.0, 20.0);
    for (factor, used) in
        [(0.5, WIDENING), (1.0, WIDENING), (WIDENING, WIDENING), (f64::NAN, WIDENING), (1.6, 1.6)]
    {
        let careful = CautiousDifference::with_factor(&textbook, factor, 0.0);
        assert!(near(careful.widened.se, 2.0 * used), "{factor}");
        assert_eq!((careful.diff(), careful.widened.df), (3.0, 20.0));
    }
}

#[test]
fn what_is_careful_already_is_not_widened_but_gets_its_allowance() {
    let careful = CautiousDifference::taken_as_is(&difference(3.0, 2.0, 20.0), 1.5);
    assert_eq!((careful.widened.se, careful.allowance, careful.fallback), (2.0, 1.5, None));
}

#[test]
fn p_counts_only_what_goes_beyond_the_allowance() {
    for careful in both_signs(None, 2.0) {
        assert!(near(careful.p_value(), 2.0 * t_sf(1.0 / WIDENING, 20.0)));
    }
    for covered in [3.0, 3.5] {
        assert!(both_signs(None, covered).iter().all(|careful| careful.p_value() == 1.0));
    }
}

#[test]
fn p_and_interval_agree_with_an_allowance_too() {
    let mut decided = [0, 0];
    for diff in (-80..=80).map(|tenths| 0.1 * f64::from(tenths)) {
        let mut careful = CautiousDifference::new(&difference(diff, 1.0, 20.0), 1.3);
        careful.fallback = Some(difference(diff, 0.9, 3.0));
        for level in [Level::P90, Level::P95, Level::P99] {
            let excludes = careful.interval(level).excludes(0.0);
            assert_eq!(excludes, careful.p_value() < level.alpha(), "{diff}");
            decided[usize::from(excludes)] += 1;
        }
        let inside = careful.interval(Level::P90).inside(-7.0, 5.0);
        assert_eq!(inside, careful.equivalence(-7.0, 5.0).holds(0.05), "{diff}");
    }
    assert!(decided.iter().all(|count| *count > 30));
}

#[test]
fn equivalence_takes_the_allowance_off_both_margins() {
    let careful = CautiousDifference::new(&difference(0.5, 1.0, 20.0), 1.5);
    let test = careful.equivalence(-6.0, 4.0);
    assert!(near(test.p_low, t_sf((0.5 + 6.0 - 1.5) / WIDENING, 20.0)), "{test:?}");
    assert!(near(test.p_high, t_sf((4.0 - 0.5 - 1.5) / WIDENING, 20.0)), "{test:?}");
    assert_eq!((test.low, test.high, test.p_value()), (-6.0, 4.0, test.p_high));
    // The larger of the two decides, whichever it is, and only below alpha.
    let other = careful.equivalence(-4.0, 6.0);
    assert_eq!(other.p_value(), other.p_low);
    assert!(!test.holds(test.p_value()) && test.holds(test.p_value() * 1.001));
}

#[test]
fn the_fallback_counts_where_it_is_wider_and_only_there() {
    let own = WIDENING * t_upper(0.025, 20.0);
    let reach = WIDENING * (t_upper(0.025, 20.0) + t_upper(0.2, 20.0));
    for careful in both_signs(Some((2.0, 4.0)), 0.5) {
        assert!(near(careful.half_width(Level::P95), 2.0 * t_upper(0.025, 4.0) + 0.5));
        let of_four = 2.0 * (t_upper(0.025, 4.0) + t_upper(0.2, 4.0)) + 0.5;
        assert!(near(careful.detectable(Level::P95, 0.8), of_four));
        assert!(near(careful.p_value(), 2.0 * t_sf(2.5 / 2.0, 4.0)));
    }
    for careful in both_signs(Some((0.1, 40.0)), 0.5) {
        assert!(near(careful.half_width(Level::P95), own + 0.5));
        assert!(near(careful.detectable(Level::P95, 0.8), reach + 0.5));
    }
}

#[test]
fn the_drift_that_explains_a_lead_leaves_the_allowance_out() {
    let own = WIDENING * t_upper(0.025, 20.0);
    for careful in both_signs(None, 2.0) {
        assert!(near(careful.drift_to_explain(Level::P95), 3.0 - own));
        assert_eq!(careful.drift_to_explain(Level::P99), 0.0, "the lead lies inside the error");
    }
}

/// Rounds of one turn with each build: the shots of build 0 as given, those of build 1 by `lead` higher.
fn turns(sets: &[[usize; 2]], lead: impl Fn(usize) -> f64) -> Vec<RoundShot> {
    let mut shots = Vec::new();
    for (round, of_round) in sets.iter().enumerate() {
        for (build, &n) in of_round.iter().enumerate() {
            let value = |i: usize| i as f64 + if build == 1 { lead(round) } else { 0.0 };
            shots.extend((0..n).map(|i| RoundShot { round, build, value: value(i) }));
        }
    }
    shots
}

#[test]
fn turns_that_are_too_long_fall_back_to_whole_rounds() {
    // Leads that hardly change: the test of the sets finds nothing.
    let leads = |round: usize| 8.0 + 0.1 * round as f64;
    let found = |n: usize| Rounds::new(&turns(&[[n, n]; 4], leads)).unwrap().compare(1, 0).unwrap();
    let (short, long) = (found(5), found(6));
    for session in [&short, &long] {
        assert!(session.interaction.unwrap().p > 0.5);
    }
    assert_eq!((short.shots_per_turn, long.shots_per_turn), (LONGEST_TURN, 6.0));
    assert!(!short.turns_too_long() && !short.falls_back() && short.headline().fallback.is_none());
    assert!(long.turns_too_long() && long.falls_back());
    let (fallback, paired) = (long.headline().fallback.unwrap(), long.paired.unwrap());
    assert_eq!((fallback.se, fallback.df, fallback.diff), (paired.se, 3.0, long.fixed_effects.diff));
}

#[test]
fn a_turn_counts_only_in_rounds_that_both_builds_share() {
    // Three rounds of three, then twenty shots of one build alone.
    let sets = [[3, 3], [3, 3], [3, 3], [0, 20]];
    let found = Rounds::new(&turns(&sets, |_| 5.0)).unwrap().compare(1, 0).unwrap();
    assert_eq!((found.shared_rounds, found.shots_per_turn), (3, 3.0));
    assert!(!found.turns_too_long());
}

#[test]
fn the_fallback_stands_around_the_common_difference() {
    // A third build links the first two once more: the difference of the model is not that of whole rounds.
    let value = |round: usize, build: usize, i: usize| (10 * build + i) as f64 * (1.0 + round as f64);
    let mut shots = Vec::new();
    for (round, builds) in [&[0, 1][..], &[0, 1], &[0, 1], &[0, 2], &[1, 2]].into_iter().enumerate() {
        for &build in builds {
            shots.extend((0..3).map(|i| RoundShot { round, build, value: value(round, build, i) }));
        }
    }
    let found = Rounds::new(&shots).unwrap().compare(1, 0).unwrap();
    assert!(found.falls_back());
    let paired = found.paired.unwrap();
    assert!((paired.diff - found.fixed_effects.diff).abs() > 0.1, "{found:?}");
    let fallback = found.headline().fallback.unwrap();
    assert_eq!((fallback.diff, fallback.se), (found.fixed_effects.diff, paired.se));
}

#[test]
fn whole_rounds_are_the_unit_of_the_fallback() {
    // Leads 1, 4 and 10 with sets of 1 and 2, 3 and 1, 2 and 2: weights 2/3, 3/4, 1.
    let leads = [1.0, 4.0, 10.0];
    let sets = [[1, 2], [3, 1], [2, 2]];
    let found = Rounds::new(&turns(&sets, |round| leads[round])).unwrap().compare(1, 0).unwrap();
    // Values count up within a set: set means are those of 0..n.
    let gaps = [1.0 + 0.5, 4.0 - 1.0, 10.0];
    let weights = [2.0 / 3.0, 0.75, 1.0];
    let total: f64 = weights.iter().sum();
    let diff = gaps.iter().zip(weights).map(|(gap, w)| gap * w).sum::<f64>() / total;
    let between = gaps.iter().zip(weights).map(|(gap, w)| w * (gap - diff) * (gap - diff)).sum::<f64>();
    let paired = found.paired.unwrap();
    assert!(near(paired.diff, diff) && near(paired.df, 2.0));
    assert!(near(paired.se, (between / 2.0 / total).sqrt()));
    // Squares within sets: 0.5 for two values, 2 for three; degrees of freedom n − 1 each.
    let test = found.interaction.unwrap();
    assert_eq!((test.df_between, test.df_within), (2.0, 0.0 + 1.0 + 2.0 + 0.0 + 1.0 + 1.0));
    assert!(near(test.f, between / 2.0 / ((0.5 + 2.0 + 0.5 + 0.5) / 5.0)));
    assert!(near(found.shots_per_turn, 11.0 / 6.0));
}

#[test]
fn sets_are_compared_only_where_two_rounds_and_two_degrees_of_freedom_are() {
    let tested = |sets: &[[usize; 2]]| {
        let spread = |round: usize| (round * round) as f64;
        Rounds::new(&turns(sets, spread)).unwrap().compare(1, 0).unwrap().interaction.is_some()
    };
    assert!(!tested(&[[1, 1], [1, 1], [1, 1]]), "no scatter within sets");
    assert!(!tested(&[[2, 1], [1, 1], [1, 1]]), "one degree of freedom");
    assert!(tested(&[[2, 2], [1, 1], [1, 1]]), "two");
    // One shared round of two mixed ones is no test, and no pair either.
    let shot = |round, build, value| RoundShot { round, build, value };
    let sets = [
        (0, 0, 1.0),
        (0, 0, 2.0),
        (0, 1, 4.0),
        (0, 1, 7.0),
        (1, 1, 5.0),
        (1, 1, 9.0),
        (1, 2, 8.0),
        (1, 2, 6.0),
    ];
    let found = Rounds::new(&sets.map(|(r, b, v)| shot(r, b, v))).unwrap().compare(1, 0).unwrap();
    assert_eq!((found.shared_rounds, found.paired, found.interaction), (1, None, None));
}

#[test]
fn identical_sets_do_not_disagree() {
    // No scatter between rounds, and in the second case none within sets either.
    let found = Rounds::new(&turns(&[[2, 2], [2, 2]], |_| 3.0)).unwrap().compare(1, 0).unwrap();
    assert_eq!((found.interaction.unwrap().f, found.interaction.unwrap().p), (0.0, 1.0));
    assert!(!found.falls_back() && found.paired.is_none());
}

#[test]
fn rounds_refuse_what_they_cannot_compare() {
    let shot = |round, build, value| RoundShot { round, build, value };
    let one_round =
        Rounds::new(&[shot(0, 0, 1.0), shot(0, 0, 3.0), shot(0, 1, 2.0), shot(1, 1, 2.5)]).unwrap();
    assert_eq!(one_round.compare(1, 0), Err(Refusal::TooFewRounds { got: 1, need: 2 }));
    // Two rounds of one shot each: three parameters and one more would be needed for any scatter at all.
    let bare = [shot(0, 0, 1.0), shot(0, 1, 2.0), shot(1, 0, 1.5), shot(1, 1, 3.0)];
    let found = Rounds::new(&bare).unwrap().compare(1, 0).unwrap();
    assert_eq!(found.fixed_effects.df, 1.0);
    let third = [bare.as_slice(), &[shot(0, 2, 1.0)]].concat();
    let found = Rounds::new(&third).unwrap().compare(1, 0).unwrap();
    assert_eq!(found.fixed_effects.df, 1.0);
    let linked = [shot(0, 0, 1.0), shot(0, 1, 2.0), shot(1, 1, 1.5), shot(1, 2, 3.0)];
    let refused = Rounds::new(&linked).unwrap().compare(1, 0);
    assert_eq!(refused, Err(Refusal::TooFew { got: 4, need: 5 }));
    let only_one = Rounds::new(&[shot(0, 7, 1.0), shot(1, 7, 2.0)]);
    assert_eq!(only_one, Err(RoundsError::TooFewBuilds { got: 1 }));
    let many = |builds: usize| Rounds::new(&(0..builds).map(|b| shot(0, b, 1.0)).collect::<Vec<_>>());
    assert!(many(MOST_BUILDS).is_ok_and(|rounds| rounds.builds().len() == MOST_BUILDS));
    assert_eq!(many(MOST_BUILDS + 1), Err(RoundsError::TooManyBuilds { got: MOST_BUILDS + 1 }));
}

#[test]
fn rounds_of_a_size_that_rounding_cannot_see_are_refused() {
    // The same values in every set up to the last bits of a large common part.
    let value = |i: usize| 1e9 + 1e-8 * i as f64;
    let shots: Vec<RoundShot> =
        (0..12).map(|i| RoundShot { round: i / 4, build: i / 2 % 2, value: value(i) }).collect();
    assert_eq!(Rounds::new(&shots).unwrap().compare(1, 0), Err(Refusal::NoScatter));
}

#[test]
fn blocks_whose_shots_lean_on_each_other_are_widened() {
    let sample = |values: &[f64]| Sample::new(values.to_vec()).unwrap();
    // Up and up: r = 4.5 / 17.5 for six values in a row; corrected (1 + 3r)/n more.
    let rising = sample(&[1.0, 2.0, 3.0, 4.0, 5.0, 6.0]);
    let r = rising.lag1_autocorrelation().unwrap();
    assert!(near(r, 8.75 / 17.5));
    let corrected = r + (1.0 + 3.0 * r) / 6.0;
    assert!(corrected > 0.9, "beyond what says anything");
    assert!(near(blocked_widening(&rising, &rising), (1.9f64 / 0.1).sqrt()));
    let calm = sample(&[2.0, 1.0, 3.0, 1.5, 2.5, 1.0, 3.0, 2.0, 1.0, 2.5, 2.0, 3.0]);
    let of_calm = calm.lag1_autocorrelation().unwrap();
    let of_calm = of_calm + (1.0 + 3.0 * of_calm) / 12.0;
    let mean = 0.5 * (corrected + of_calm);
    assert!(mean > 0.05 && mean < 0.9, "{mean}");
    let expected = ((1.0 + mean) / (1.0 - mean)).sqrt();
    assert!(
        near(blocked_widening(&rising, &calm), expected) && near(blocked_widening(&calm, &rising), expected)
    );
    // Shots that swing from side to side never narrow anything.
    let swinging = sample(&[1.0, 9.0, 1.0, 9.0, 1.0, 9.0, 1.0, 9.0]);
    assert_eq!(blocked_widening(&swinging, &swinging), WIDENING);
    let still = sample(&[4.0; 6]);
    assert!(blocked_widening(&still, &still) >= WIDENING);
}

/// Four rounds of one shot of build 0 and three of build 1; numpy, matrices written out.
#[test]
fn a_build_with_few_and_wild_shots_is_judged_by_its_own_scatter() {
    let few = [250.0, 262.0, 238.0, 255.0];
    let many = [[249.0, 252.0, 254.0], [251.0, 250.0, 255.0], [253.0, 249.0, 252.0], [250.0, 251.0, 256.0]];
    let mut shots = Vec::new();
    for (round, (value, others)) in few.into_iter().zip(many).enumerate() {
        shots.push(RoundShot { round, build: 0, value });
        shots.extend(others.map(|value| RoundShot { round, build: 1, value }));
    }
    let found = Rounds::new(&shots).unwrap().compare(1, 0).unwrap();
    let own = found.own_scatters.unwrap();
    assert!((own.diff - 0.583_333_333).abs() < 1e-8, "{own:?}");
    assert!((own.se - 4.884_546_683).abs() < 1e-8 && (own.df - 2.363_811_173).abs() < 1e-8, "{own:?}");
    // The common scatter is mostly that of the many.
    assert!(found.fixed_effects.se < 0.6 * own.se);
    let headline = found.headline();
    assert!(near(headline.half_width(Level::P95), headline.fallback.unwrap().half_width(Level::P95)));
    // With as many shots each there is nothing to choose between.
    assert_eq!(Rounds::new(&turns(&[[3, 3]; 4], |_| 5.0)).unwrap().compare(1, 0).unwrap().own_scatters, None);
}

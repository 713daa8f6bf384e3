//! Results that are known exactly: by hand, by another method of this crate, or because nothing is left to chance.
#![expect(clippy::unwrap_used, clippy::float_cmp, clippy::cast_possible_truncation, reason = "tests")]

use stats::bivariate::{BivariateNormal, Stretch};
use stats::bootstrap::{bca_shares, bias_correction, bootstrap};
use stats::describe::sum_of_squares;
use stats::distributions::{normal_cdf, normal_sf, normal_upper};
use stats::hotelling::hotelling;
use stats::linear_model::{Intercept, linear_model};
use stats::permutation::Deals;
use stats::points::{Covariance, Point, Points};
use stats::{Level, OrderedShot, Refusal, RoundShot, Rounds, trend};

fn close(a: f64, b: f64, relative: f64) -> bool {
    (a - b).abs() <= relative * a.abs().max(b.abs())
}

/// Uneven sets of four builds: the second and third meet only through the others.
fn uneven() -> Vec<RoundShot> {
    let sets = [
        (0, 0, 2),
        (0, 1, 3),
        (1, 0, 1),
        (1, 2, 2),
        (2, 3, 2),
        (2, 1, 1),
        (2, 0, 2),
        (3, 3, 3),
        (3, 2, 1),
        (4, 1, 2),
        (4, 3, 1),
        (5, 0, 1),
        (5, 3, 2),
    ];
    let mut shots = Vec::new();
    for (round, build, n) in sets {
        for _ in 0..n {
            let noise = f64::from(u8::try_from(shots.len() * 37 % 11).unwrap());
            shots.push(RoundShot { round, build, value: 4.0 * build as f64 - 3.0 * round as f64 + noise });
        }
    }
    shots
}

#[test]
fn builds_in_uneven_rounds_are_compared_as_by_least_squares() {
    let shots = uneven();
    let rounds = Rounds::new(&shots).unwrap();
    let column = |is: &dyn Fn(&RoundShot) -> bool| shots.iter().map(|s| f64::from(u8::from(is(s)))).collect();
    for baseline in 0..4 {
        let mut columns: Vec<Vec<f64>> = (0..6).map(|round| column(&|shot| shot.round == round)).collect();
        let candidates: Vec<usize> = (0..4).filter(|build| *build != baseline).collect();
        columns.extend(candidates.iter().map(|&build| column(&|shot| shot.build == build)));
        let values: Vec<f64> = shots.iter().map(|shot| shot.value).collect();
        let model = linear_model(&values, &columns, Intercept::Zero).unwrap();
        for (term, &candidate) in model.terms[6..].iter().zip(&candidates) {
            let found = rounds.compare(candidate, baseline).unwrap();
            let test = found.fixed_effects;
            assert!(close(test.diff, term.diff, 1e-9), "{candidate} − {baseline}: {test:?} {term:?}");
            assert!(close(test.se, term.se, 1e-9) && test.df == term.df);
            assert!(close(found.residual_sd, model.residual_sd(), 1e-9));
            assert!(close(found.residual_sd / found.information.sqrt(), test.se, 1e-12));
        }
        let fitted = Rounds::new(&shots).unwrap().fit().unwrap();
        assert_eq!(fitted.compare(candidates[0], baseline), rounds.compare(candidates[0], baseline));
    }
}

/// Neighbors at 2⁵² are 1 apart: the mean cannot be held, what it leaves over is taken out again.
#[test]
fn squares_are_right_where_their_mean_cannot_be_held() {
    let large = 2f64.powi(52);
    let values = [0.0, 1.0, 3.0].map(|x| large + x);
    assert!(close(sum_of_squares(&values), 14.0 / 3.0, 1e-15), "{}", sum_of_squares(&values));
    let values = [0.0, 0.0, 1.0, 0.0, 2.0].map(|x| large + x);
    assert!(close(sum_of_squares(&values), 5.0 - 9.0 / 5.0, 1e-15));
}

#[test]
fn least_squares_of_columns_that_are_axes() {
    // The first column is an axis already: a reflection with the other sign would cancel it.
    let columns = [vec![1.0, 0.0, 0.0, 0.0], vec![0.0, 1.0, 1.0, 1.0]];
    let model = linear_model(&[5.0, 1.0, 2.0, 6.0], &columns, Intercept::Zero).unwrap();
    assert!(close(model.terms[0].diff, 5.0, 1e-14) && close(model.terms[1].diff, 3.0, 1e-14));
    assert!(close(model.residual_squares, 14.0, 1e-14) && model.df == 2.0);
}

#[test]
fn least_squares_refuse_what_they_cannot_fit() {
    let y = [1.0, 3.0, 2.0, 5.0];
    let few =
        |n: usize, columns: &[Vec<f64>], intercept| linear_model(&y[..n], columns, intercept).unwrap_err();
    assert_eq!(few(4, &[], Intercept::Zero), Refusal::TooFew { got: 4, need: 2 });
    assert_eq!(few(1, &[], Intercept::Fitted), Refusal::TooFew { got: 1, need: 2 });
    let (rising, square) = (vec![0.0, 1.0, 2.0], vec![0.0, 1.0, 4.0]);
    assert_eq!(few(3, &[rising, square], Intercept::Fitted), Refusal::TooFew { got: 3, need: 4 });
    assert_eq!(few(4, &[vec![1.0; 3]], Intercept::Zero), Refusal::TooFew { got: 3, need: 4 });
    assert_eq!(few(4, &[vec![2.0; 4]], Intercept::Fitted), Refusal::NotLinked);
    assert_eq!(few(4, &[vec![0.0; 4]], Intercept::Zero), Refusal::NotLinked);
    assert!(matches!(few(4, &[vec![1.0, f64::NAN, 0.0, 0.0]], Intercept::Zero), Refusal::Argument { .. }));
    let columns = [vec![0.0, 1.0, 2.0, 3.0]];
    let line = |scale: f64| {
        linear_model(
            &columns[0].iter().map(|x| scale * (7.0 + x)).collect::<Vec<_>>(),
            &columns,
            Intercept::Fitted,
        )
    };
    for scale in [1e-6, 1.0, 1e9] {
        assert_eq!(line(scale).unwrap_err(), Refusal::NoScatter, "{scale}");
    }
}

#[test]
fn what_a_line_leaves_over_leans_by_its_corrected_autocorrelation() {
    let values: Vec<f64> = (0..24)
        .map(|i| 0.5 * f64::from(i) + [2.0, 3.0, -1.0, 0.0, -3.0, -2.0, 1.0, 0.0][i as usize % 8])
        .collect();
    let order: Vec<f64> = (0..24).map(f64::from).collect();
    let shots: Vec<OrderedShot> =
        values.iter().zip(&order).map(|(&value, &at)| OrderedShot { at, build: 0, value }).collect();
    let found = trend(&shots).unwrap();
    let model = linear_model(&values, std::slice::from_ref(&order), Intercept::Fitted).unwrap();
    let (level, slope) = (model.terms[0].diff, model.terms[1].diff);
    let left: Vec<f64> = values.iter().zip(&order).map(|(y, x)| y - level - slope * x).collect();
    let r =
        left.windows(2).map(|pair| pair[0] * pair[1]).sum::<f64>() / left.iter().map(|e| e * e).sum::<f64>();
    let corrected = r + (2.0 + 4.0 * r) / 24.0;
    assert!(corrected > 0.1 && corrected < 0.9, "{corrected}");
    assert!(close(found.autocorrelation, corrected, 1e-9), "{found:?} {corrected}");
}

fn scatter(center: Point) -> BivariateNormal {
    BivariateNormal::new(center, Covariance { xx: 9.0, xy: 2.0, yy: 4.0 }).unwrap()
}

#[test]
fn a_strip_is_measured_from_where_the_shots_are() {
    let scatter = scatter(Point { x: 3.0, y: 5.0 });
    let strip = |low, high| scatter.strip(Stretch { low, high });
    assert!(close(strip(4.0, 9.0), normal_cdf(2.0) - normal_cdf(-0.5), 1e-13));
    // Far out, on either side, the chance keeps its digits.
    assert!(close(strip(5.0 + 18.0, f64::INFINITY), normal_sf(9.0), 1e-12));
    assert!(close(strip(f64::NEG_INFINITY, 5.0 - 18.0), normal_sf(9.0), 1e-12));
    assert!(close(strip(5.0 + 18.0, 5.0 + 19.0), normal_sf(9.0) - normal_sf(9.5), 1e-12));
    assert_eq!(strip(9.0, 4.0), 0.0);
    assert_eq!(strip(f64::NAN, 4.0), 0.0);
}

#[test]
fn ground_that_is_none_holds_no_shot() {
    let scatter = scatter(Point { x: 3.0, y: 5.0 });
    let all = Stretch { low: f64::NEG_INFINITY, high: f64::INFINITY };
    for none in [(f64::NAN, 4.0), (4.0, f64::NAN), (4.0, 1.0), (4.0, 4.0)] {
        let x = Stretch { low: none.0, high: none.1 };
        assert_eq!(scatter.rectangle(x, all), 0.0, "{none:?}");
        assert_eq!(scatter.rectangle(all, x), 0.0, "{none:?}");
    }
    let middle = Point { x: 3.0, y: 5.0 };
    for radius in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert_eq!(scatter.circle(middle, radius), 0.0, "{radius}");
    }
    for broken in [f64::NAN, f64::INFINITY] {
        assert_eq!(scatter.circle(Point { x: broken, ..middle }, 2.0), 0.0);
        assert_eq!(scatter.circle(Point { y: broken, ..middle }, 2.0), 0.0);
    }
    assert!(scatter.circle(middle, 1e6) > 1.0 - 1e-9);
}

#[test]
fn a_scatter_without_width_has_no_chances() {
    let made = |xx, xy, yy| BivariateNormal::new(Point { x: 0.0, y: 0.0 }, Covariance { xx, xy, yy });
    assert!(made(4.0, 0.0, 9.0).is_some());
    assert!(made(0.0, 0.0, 9.0).is_none() && made(4.0, 0.0, 0.0).is_none() && made(4.0, 6.0, 9.0).is_none());
    for broken in [Point { x: f64::NAN, y: 0.0 }, Point { x: 0.0, y: f64::INFINITY }] {
        assert!(BivariateNormal::new(broken, Covariance { xx: 4.0, xy: 0.0, yy: 9.0 }).is_none());
    }
}

/// Shots on a line with a little width: the inverse of the covariance is noise below 1e-14 of its size.
#[test]
fn centers_are_compared_only_where_the_scatter_has_width() {
    let points = |width: f64, scale: f64| {
        let x: Vec<f64> = (0..8).map(|i| scale * f64::from(i)).collect();
        let y: Vec<f64> = (0..8).map(|i| scale * width * [1.0, -1.0, -1.0, 1.0][i % 4]).collect();
        Points::new(&x, &y).unwrap()
    };
    for scale in [1e-4, 1.0, 1e4] {
        let compare =
            |width: f64| hotelling(&points(width, scale), &points(width, scale)).map(|found| found.t_squared);
        assert_eq!(compare(1e-8), Err(Refusal::NoScatter), "{scale}");
        assert_eq!(compare(1e-5), Ok(0.0), "{scale}");
    }
}

/// F with 2 and m degrees of freedom has its quantile in closed form: m/2 · (tail^(−2/m) − 1).
#[test]
fn the_ellipse_of_the_next_shot_is_wider_by_what_few_shots_leave_unknown() {
    for n in [3_usize, 4, 8, 12, 60, 2000] {
        let x: Vec<f64> = (0..n).map(|i| (i as f64 * 1.7).sin() * 10.0).collect();
        let y: Vec<f64> = (0..n).map(|i| (i as f64 * 0.9).cos() * 4.0).collect();
        let points = Points::new(&x, &y).unwrap();
        for share in [0.5, 0.9] {
            let (all, next) = (points.ellipse(share).unwrap(), points.prediction_ellipse(share).unwrap());
            let m = n as f64 - 2.0;
            let f = m / 2.0 * ((1.0 - share).powf(-2.0 / m) - 1.0);
            let q = (m + 3.0) / (m + 2.0) * 2.0 * (m + 1.0) / m * f;
            let expected = (q / (-2.0 * (1.0 - share).ln())).sqrt();
            assert!((next.major / all.major / expected - 1.0).abs() < 1e-9, "{n} {share}");
            assert!((next.minor / all.minor / expected - 1.0).abs() < 1e-9, "{n} {share}");
            assert!(next.center == all.center && next.angle_deg.to_bits() == all.angle_deg.to_bits());
        }
    }
    assert_eq!(Points::new(&[0.0, 1.0], &[1.0, 0.0]).unwrap().prediction_ellipse(0.9), None);
}

#[test]
fn an_ellipse_holds_a_share_between_none_and_all() {
    let points = Points::new(&[0.0, 1.0, 2.0, 5.0], &[1.0, 0.0, 4.0, 3.0]).unwrap();
    for share in [0.0, 1.0, -0.1, 1.1, f64::NAN] {
        assert_eq!(points.ellipse(share), None, "{share}");
        assert_eq!(points.prediction_ellipse(share), None, "{share}");
    }
    assert!(points.ellipse(1e-9).is_some() && points.ellipse(1.0 - 1e-9).is_some());
    assert_eq!(Covariance { xx: 0.0, xy: 0.0, yy: 0.0 }.smallest(), 0.0);
}

#[test]
fn a_bootstrap_of_what_does_not_vary_has_no_width() {
    let found = &bootstrap(&[5], 400, 1, |_| vec![2.5, f64::NAN])[..];
    let interval = found[0].interval(Level::P95);
    assert_eq!((found[0].se(), interval.low, interval.high, found[0].undefined), (0.0, 2.5, 2.5, 0));
    assert_eq!((found[0].bias_correction, found[0].acceleration), (-0.0, 0.0));
    assert_eq!((found[1].undefined, found[1].sorted.len()), (400, 0));
    assert!(found[1].interval(Level::P95).low.is_nan() && found[1].se() == 0.0);
}

/// A resample is a single number here, each as likely: what the interval reads is a count.
#[test]
fn a_bootstrap_is_read_at_its_counts() {
    let mut next = 0.0;
    let found = bootstrap(&[1], 200, 1, |_| {
        next += 1.0;
        vec![next]
    });
    let found = &found[0];
    // The first call is the estimate; 200 draws follow, all above it, and a group of one leaves nothing out.
    assert_eq!((found.estimate, found.sorted.first(), found.sorted.last()), (1.0, Some(&2.0), Some(&201.0)));
    assert!(close(found.se(), f64::sqrt(200.0 * 201.0 / 12.0), 1e-12));
    assert_eq!(found.acceleration, 0.0);
    assert!(close(found.bias_correction, -normal_upper(0.5 / 201.0), 1e-12));
    let z0 = found.bias_correction;
    let shares = bca_shares(z0, 0.0, Level::P90);
    assert!(close(shares.low, normal_cdf(2.0 * z0 - normal_upper(0.05)), 1e-12));
    let read = |share: f64| found.sorted[((200.0 * share).ceil() as usize).max(1) - 1];
    let interval = found.interval(Level::P90);
    assert_eq!((interval.low, interval.high), (read(shares.low), read(shares.high)));
}

#[test]
fn a_share_that_is_a_whole_number_of_resamples_takes_exactly_those() {
    // Ten values, each met often; no correction: 5 % of 40 resamples are 2 of them.
    let mut turn = 0;
    let found = bootstrap(&[1], 40, 1, |_| {
        turn += 1;
        vec![if turn == 1 { 20.5 } else { f64::from(turn - 1) }]
    });
    let found = &found[0];
    assert!(found.bias_correction.abs() < 1e-12 && found.acceleration == 0.0);
    let interval = found.interval(Level::P90);
    assert_eq!((interval.low, interval.high), (2.0, 38.0));
}

#[test]
fn a_bias_is_bounded_where_all_resamples_lie_on_one_side() {
    let bound = -normal_upper(0.5 / 101.0);
    assert!(close(bias_correction(0, 0, 100), bound, 1e-12));
    assert!(close(bias_correction(100, 0, 100), -bound, 1e-9));
    assert!(bias_correction(40, 20, 100).abs() < 1e-12 && bias_correction(0, 0, 0).is_finite());
    assert!(close(bias_correction(70, 10, 100), -normal_upper(0.75), 1e-12));
}

#[test]
fn shares_run_to_their_ends_where_acceleration_overtakes_them() {
    let z = normal_upper(0.025);
    // 1 − a(z₀ + z) is not positive at the upper tail, then at the lower one.
    assert_eq!(bca_shares(0.0, 1.0 / z + 0.1, Level::P95).high, 1.0);
    assert_eq!(bca_shares(0.0, -1.0 / z - 0.1, Level::P95).low, 0.0);
    let usual = bca_shares(0.1, 0.02, Level::P95);
    assert!(close(usual.high, normal_cdf(0.1 + (0.1 + z) / (1.0 - 0.02 * (0.1 + z))), 1e-13));
    assert!(close(usual.low, normal_cdf(0.1 + (0.1 - z) / (1.0 - 0.02 * (0.1 - z))), 1e-13));
}

#[test]
fn drawn_deals_count_the_observed_one_among_them() {
    // Far apart: hardly any of a thousand deals comes near, and none beyond.
    let (low, high): (Vec<f64>, Vec<f64>) =
        ((0..20).map(f64::from).collect(), (0..20).map(|i| f64::from(i) + 500.0).collect());
    let drawn = Deals::of_two(&high, &low).unwrap().draw(999, 3);
    assert_eq!((drawn.as_far, drawn.at_least, drawn.at_most), (0, 0, 999));
    assert_eq!((drawn.p_value(), drawn.p_greater(), drawn.p_less()), (0.001, 0.001, 1.0));
    let turned = Deals::of_two(&low, &high).unwrap().draw(999, 3);
    assert_eq!((turned.at_least, turned.at_most), (999, 0));
}

#[test]
fn drawn_deals_follow_listed_ones_on_each_side_whichever_side_is_smaller() {
    let few = [3.0, 9.0, 4.5];
    let many = [1.0, 2.0, 6.0, 0.5, 5.5, 2.5, 3.5];
    for (candidate, baseline) in [(&few[..], &many[..]), (&many[..], &few[..])] {
        let deals = Deals::of_two(candidate, baseline).unwrap();
        let (listed, drawn) = (deals.list().unwrap(), deals.draw(40_000, 11));
        let pairs = [
            (listed.p_greater(), drawn.p_greater()),
            (listed.p_less(), drawn.p_less()),
            (listed.p_value(), drawn.p_value()),
        ];
        for (exact, estimate) in pairs {
            // Five standard errors.
            assert!((exact - estimate).abs() < 0.0125, "{exact} {estimate}");
        }
        assert!((listed.p_greater() - listed.p_less()).abs() > 0.3, "the sides differ");
    }
    assert_eq!(Deals::of_two(&few, &many).unwrap().count(), Some(120));
    // Four of seventy either way, though 66 of seventy runs through numbers beyond 64 bits.
    let (four, others) = (vec![1.0; 4], vec![2.0; 66]);
    assert_eq!(Deals::of_two(&four, &others).unwrap().count(), Some(916_895));
    assert_eq!(Deals::of_two(&others, &four).unwrap().count(), Some(916_895));
    assert_eq!(Deals::of_two(&[1.0; 40], &[2.0; 40]).unwrap().count(), None, "beyond 64 bits");
}

#[test]
fn every_refusal_says_its_numbers() {
    use stats::{LevelError, LooksError, RoundsError, SampleError, SummaryError};
    let said: [(String, &[&str]); 15] = [
        (SampleError::TooFew { got: 1, need: 2 }.to_string(), &["1", "2"]),
        (SampleError::NotFinite { index: 17 }.to_string(), &["17"]),
        (SampleError::TooLarge { index: 4, value: 3e38 }.to_string(), &["4", "3e38", "1e37"]),
        (SummaryError::TooFew { got: 0, need: 2 }.to_string(), &["0", "2"]),
        (SummaryError::Mean { got: 1e40 }.to_string(), &["mean", "1"]),
        (SummaryError::Sd { got: -2.5 }.to_string(), &["deviation", "-2.5"]),
        (LevelError { got: 0.25 }.to_string(), &["0.25"]),
        (RoundsError::TooFewBuilds { got: 1 }.to_string(), &["1"]),
        (RoundsError::TooManyBuilds { got: 99 }.to_string(), &["99", "64"]),
        (RoundsError::Value(SampleError::NotFinite { index: 23 }).to_string(), &["23"]),
        (LooksError::Count { got: 300, most: 100 }.to_string(), &["300", "100"]),
        (LooksError::Time { index: 3, got: 1.25 }.to_string(), &["3", "1.25"]),
        (Refusal::TooFew { got: 7, need: 9 }.to_string(), &["7", "9"]),
        (Refusal::TooFewRounds { got: 1, need: 2 }.to_string(), &["1", "2"]),
        (Refusal::Argument { got: 0.75 }.to_string(), &["0.75"]),
    ];
    for (text, parts) in said {
        assert!(parts.iter().all(|part| text.contains(part)), "{text}");
    }
    let others = [Refusal::NoScatter, Refusal::NotLinked, Refusal::OutOfRange];
    assert!(others.iter().all(|refusal| refusal.to_string().len() > 15));
}

/// Integrated along one axis or along the other: the chance is the same, however narrow and crooked the scatter.
#[test]
fn ground_is_measured_alike_along_either_axis() {
    for (sd, correlation) in [(0.3, 0.0), (0.05, 0.6), (0.02, -0.9), (3.0, 0.97), (20.0, 0.3)] {
        let (xy, yy) = (correlation * sd, sd * sd);
        let made = |x, y, xx, yy| BivariateNormal::new(Point { x, y }, Covariance { xx, xy, yy }).unwrap();
        let (here, turned) = (made(0.3, -0.2, 1.0, yy), made(-0.2, 0.3, yy, 1.0));
        for (x, y, size) in [(0.0, 0.0, 0.3), (0.5, -0.1, 1.0), (-2.0, 0.4, 2.5), (0.0, 9.0, 9.0)] {
            let circles = [here.circle(Point { x, y }, size), turned.circle(Point { x: y, y: x }, size)];
            assert!((circles[0] - circles[1]).abs() < 1e-10, "{sd} {correlation} {size}: {circles:?}");
            let along = |at: f64, half: f64| Stretch { low: at - half, high: at + half };
            let (wide, long) = (along(x, size), along(y, 0.4 * size));
            let boxes = [here.rectangle(wide, long), turned.rectangle(long, wide)];
            assert!((boxes[0] - boxes[1]).abs() < 1e-10, "{sd} {correlation} {size}: {boxes:?}");
        }
    }
}

#[test]
fn a_chance_under_the_worst_drift_has_both_tails_about_the_drifted_center() {
    let sample =
        |mean: f64| stats::Sample::new([-3.0, -1.0, 0.0, 1.0, 3.0].map(|x| mean + x).to_vec()).unwrap();
    let of = |gap: f64, allowance: f64| {
        let plain = stats::welch(&sample(250.0 + gap), &sample(250.0)).unwrap();
        stats::CautiousDifference::new(&plain, allowance)
    };
    // Without an allowance it is p; with one it lies between half of the two-sided p and the whole of it.
    let (plain, drifting) = (of(4.0, 0.0), of(4.0, 2.0));
    assert!((plain.chance_at_worst() - plain.p_value()).abs() < 1e-12);
    assert!(drifting.chance_at_worst() < drifting.p_value());
    assert!(drifting.chance_at_worst() > 0.5 * drifting.p_value());
    // A drift as large as the gap shows it in half of the sessions, and a little beyond.
    let even = of(4.0, 4.0).chance_at_worst();
    assert!(even > 0.5 && even < 0.52, "{even}");
}

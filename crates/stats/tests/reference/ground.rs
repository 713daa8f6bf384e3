//! 12: shots as points on the ground.

use crate::passport::{Case, each_case, numbers};
use stats::bivariate::{BivariateNormal, Stretch};
use stats::hotelling::hotelling;
use stats::points::{Covariance, Point, Points};

#[test]
fn points_on_the_ground() {
    each_case("12_bivariate.json", |case| {
        if case.has("regions") {
            regions(case);
        } else if case.has("next_share") {
            next_shot(case);
        } else if case.has("level") {
            ellipse(case);
        } else {
            centers(case);
        }
    });
}

fn matrix(case: &Case, key: &str, actual: Covariance) {
    let rows: Vec<Vec<f64>> = case.expected(key).as_array().unwrap().iter().map(numbers).collect();
    let pairs =
        [(actual.xx, rows[0][0]), (actual.xy, rows[0][1]), (actual.xy, rows[1][0]), (actual.yy, rows[1][1])];
    for (actual, expected) in pairs {
        case.within(key, actual, expected, case.tolerance("rel") * expected.abs());
    }
}

fn ellipse(case: &Case) {
    let points = Points::new(&case.numbers("x"), &case.numbers("y")).unwrap();
    let covariance = points.covariance();
    case.exactly("n", points.n() as u64);
    case.all_close("mean", &[points.center().x, points.center().y], "rel");
    matrix(case, "cov", covariance);
    case.all_close("eigenvalues", &[covariance.largest(), covariance.smallest()], "rel");
    let found = points.ellipse(case.number("level")).unwrap();
    case.close("chi2_quantile", found.major.powi(2) / covariance.largest(), "rel");
    case.all_close("semi_axes", &[found.major, found.minor], "rel");
    case.close("angle_deg", found.angle_deg, "rel");
}

/// Any points of the right number: what is held to the table is how far the ellipse reaches in units of their scatter.
fn next_shot(case: &Case) {
    let f: Vec<f64> = numbers(&case.input["n"])
        .into_iter()
        .map(|n| {
            let x: Vec<f64> = (0..n as usize).map(|i| (i as f64 * 1.7).sin() * 10.0).collect();
            let y: Vec<f64> = x.iter().map(|x| (x * 3.1).cos() * 4.0 + 250.0).collect();
            let points = Points::new(&x, &y).unwrap();
            let ellipse = points.prediction_ellipse(case.number("next_share")).unwrap();
            let wider = (n + 1.0) / n * 2.0 * (n - 1.0) / (n - 2.0);
            ellipse.major.powi(2) / points.covariance().largest() / wider
        })
        .collect();
    case.all_close("f", &f, "rel");
}

fn centers(case: &Case) {
    let points = |key: &str| {
        let rows: Vec<Vec<f64>> = case.input[key].as_array().unwrap().iter().map(numbers).collect();
        let column = |i: usize| rows.iter().map(|row| row[i]).collect::<Vec<f64>>();
        Points::new(&column(0), &column(1)).unwrap()
    };
    let found = hotelling(&points("x"), &points("y")).unwrap();
    case.all_close("mean_diff", &[found.difference.x, found.difference.y], "rel");
    matrix(case, "pooled_cov", found.pooled);
    case.close("mahalanobis_D2", found.squared_distance, "rel");
    case.close("T2", found.t_squared, "rel");
    case.close("F", found.test.f, "rel");
    case.exactly("df1", found.test.df1 as u64);
    case.exactly("df2", found.test.df2 as u64);
    case.close("p", found.test.p_value(), "rel");
}

fn regions(case: &Case) {
    let (mean, sd) = (case.numbers("mean"), case.numbers("sd"));
    let xy = case.number("rho") * sd[0] * sd[1];
    let covariance = Covariance { xx: sd[0] * sd[0], xy, yy: sd[1] * sd[1] };
    let scatter = BivariateNormal::new(Point { x: mean[0], y: mean[1] }, covariance).unwrap();
    let range = |ends: Vec<f64>| Stretch { low: ends[0], high: ends[1] };
    for (name, region) in case.input["regions"].as_object().unwrap() {
        let number = |key: &str| region[key].as_f64().unwrap();
        let found = match region["type"].as_str().unwrap() {
            "strip_y" => scatter.strip(Stretch { low: number("lo"), high: number("hi") }),
            "rect" => scatter.rectangle(range(numbers(&region["x"])), range(numbers(&region["y"]))),
            "disc" => scatter.circle(Point { x: number("cx"), y: number("cy") }, number("r")),
            other => panic!("nobody knows {other}"),
        };
        case.close(name, found, "abs");
    }
}

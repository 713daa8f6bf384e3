//! Target 27: several days together are rarely called different where clubs are equal, whatever a gap does from day to day, and
//! come out as narrow as was measured when the method was chosen.

use super::effort::{Effort, seed, sessions};
use super::rate::{ERROR, Limit, Row, rate, values};
use super::sessions::{BALL_SPEED, CARRY, Kind, fixed};
use crate::simulate::model::{STRONG, TYPICAL};
use crate::simulate::random;
use judging::together::{JudgedPair, together};
use judging::verdict::DecisionKind;
use rand_distr::{Distribution, StandardNormal};
use session::{Build, Session};

/// How often equal clubs may be called different where a gap varies by up to as much as is assumed, and by far more.
const USUAL: f64 = 0.06;
const FAR_MORE: f64 = 0.10;

/// Visits on several days, each with its own true gap.
struct Visits {
    kind: Kind,
    measure: usize,
    days: usize,
    /// Standard deviation of the true gap from day to day.
    spread: f64,
    /// The true gap over all days.
    gap: f64,
    /// Whether the club that is hit first changes from day to day.
    turned: bool,
    /// Whether each day holds one club of the pair only, beside a third one.
    with_control: bool,
}

impl Visits {
    fn new(kind: Kind, measure: usize, days: usize, spread: f64) -> Self {
        Self { kind, measure, days, spread, gap: 0.0, turned: false, with_control: false }
    }

    fn together(&self, number: u64) -> JudgedPair {
        let mut chance = random(self.kind.seed + 500_000, number);
        let days: Vec<Session> = (0..self.days)
            .map(|day| {
                let deviate: f64 = StandardNormal.sample(&mut chance);
                let gap = self.gap + self.spread * deviate;
                let at = self.days as u64 * number + day as u64;
                let mut session = self.kind.session(at, &[self.measure]);
                let is_odd = day % 2 == 1;
                for shot in &mut session.shots {
                    if self.turned && is_odd {
                        shot.build = 1 - shot.build;
                    }
                    if shot.build == 1 {
                        shot.values[0] = shot.values[0].map(|value| value + gap);
                    }
                }
                if self.with_control {
                    let name = if is_odd { "Candidate" } else { "Baseline" };
                    session.builds = ["Control", name].map(|name| Build { name: name.into() }).into();
                }
                session
            })
            .collect();
        // The first day of those with a control holds the baseline in the second place.
        let baseline = usize::from(self.with_control);
        let question = session::question::Question { baseline, ..fixed(self.measure) };
        let Ok(pairs) = together(&days, &question) else { unreachable!("invented days were refused") };
        let wanted = if self.with_control { 2 } else { 1 };
        let Some(pair) = pairs.into_iter().find(|pair| pair.candidate == wanted) else {
            unreachable!("a pair of invented days is missing")
        };
        pair
    }

    fn is_called(&self, number: u64, kind: DecisionKind) -> bool {
        self.together(number).decision.is_some_and(|decision| decision.kind == kind)
    }

    fn wrong(self, what: String, kind: DecisionKind, most: f64, effort: Effort) -> Row {
        let found = rate(sessions(8_000, effort), |number| self.is_called(number, kind));
        Row::of_rate(27, what, found, Limit::AtMost(most), effort).promised_wrong_at_most(ERROR)
    }

    /// Half of the interval that decides 'different', on average.
    fn width(self, what: String, most: f64, effort: Effort) -> Row {
        let widths =
            values(sessions(2_000, effort), |number| Some(self.together(number).combined?.half_width));
        let n = widths.len() as f64;
        let (mean, squares) = (stats::describe::mean(&widths), stats::describe::sum_of_squares(&widths));
        let measured = (mean, (squares / (n - 1.0) / n).sqrt());
        Row::of_value(27, what, measured, widths.len() as u64, Limit::AtMost(most), effort).in_unit("yd")
    }
}

/// What one more day was said to leave of the interval, as a share of what it left.
fn one_more_day(days: usize, spread: f64, kind: &Kind, effort: Effort) -> Row {
    let visits = |days| Visits::new(kind.clone(), CARRY, days, spread);
    let (before, after) = (visits(days), visits(days + 1));
    let pairs = values(sessions(2_000, effort), |number| {
        Some((before.together(number).combined?.with_one_more, after.together(number).combined?.half_width))
    });
    let (count, n) = (pairs.len() as u64, pairs.len() as f64);
    let (said, left): (Vec<f64>, Vec<f64>) = pairs.into_iter().unzip();
    let (said, left, squares) =
        (stats::describe::mean(&said), stats::describe::mean(&left), stats::describe::sum_of_squares(&left));
    let share = 100.0 * said / left;
    let measured = (share, share * (squares / (n - 1.0) / n).sqrt() / left);
    let what = format!(
        "after {days} days, 9 each a day, the gap varies by {spread} yd: what one more day was said to leave, as a share of what it left"
    );
    Row::of_value(27, what, measured, count, Limit::Between(80.0, 120.0), effort).in_unit("%")
}

pub(super) fn together_over(effort: Effort) -> Vec<Row> {
    let mut rows = Vec::new();
    for (measure, name, unit, spreads) in [
        (CARRY, "carry", "yd", [0.0, 2.0, 4.0, 8.0]),
        (BALL_SPEED, "ball speed", "mph", [0.0, 0.6, 1.2, 2.4]),
    ] {
        for days in [2, 3, 5] {
            for (at, spread) in spreads.into_iter().enumerate() {
                let kind = Kind::in_turn(TYPICAL, 9, seed(27, rows.len()));
                let what = format!(
                    "equal clubs on {days} days, 9 each a day, the gap varies by {spread} {unit}: {name} called different"
                );
                let most = if at < 3 { USUAL } else { FAR_MORE };
                rows.push(Visits::new(kind, measure, days, spread).wrong(
                    what,
                    DecisionKind::Different,
                    most,
                    effort,
                ));
            }
        }
    }
    for (days, most) in [(2, 12.5), (3, 9.7), (5, 6.7)] {
        let kind = Kind::in_turn(TYPICAL, 9, seed(27, rows.len()));
        let what = format!("equal clubs on {days} days, 9 each a day: half of the interval for carry");
        rows.push(Visits::new(kind, CARRY, days, 0.0).width(what, most, effort));
    }
    for (days, spread) in [(2, 0.0), (2, 4.0), (3, 4.0)] {
        rows.push(one_more_day(days, spread, &Kind::in_turn(TYPICAL, 9, seed(27, rows.len())), effort));
    }
    for (level_name, level) in [("typical", TYPICAL), ("strong", STRONG)] {
        for (days, turned, order) in [
            (2, false, "the same club first"),
            (5, false, "the same club first"),
            (10, false, "the same club first"),
            (4, true, "the other club first each day"),
        ] {
            let kind = Kind::blocked(level, &[9, 9], seed(27, rows.len()));
            let what = format!(
                "equal clubs on {days} days, 9 then 9, {order}, {level_name}: carry called different"
            );
            let visits = Visits { turned, ..Visits::new(kind, CARRY, days, 2.0) };
            rows.push(visits.wrong(what, DecisionKind::Different, USUAL, effort));
        }
    }
    for days in [2, 4, 6] {
        let kind = Kind::in_turn(TYPICAL, 9, seed(27, rows.len()));
        let what = format!(
            "equal clubs, one on each of {days} days beside a third club, 9 each a day, the gap varies by 4 yd: carry called different"
        );
        let visits = Visits { with_control: true, ..Visits::new(kind, CARRY, days, 4.0) };
        rows.push(visits.wrong(what, DecisionKind::Different, USUAL, effort));
    }
    for days in [2, 5] {
        let kind = Kind::in_turn(TYPICAL, 30, seed(27, rows.len()));
        let what =
            format!("5 yd apart on {days} days, 30 each a day, the gap varies by 2 yd: called the same");
        let visits = Visits { gap: 5.0, ..Visits::new(kind, CARRY, days, 2.0) };
        rows.push(visits.wrong(what, DecisionKind::Same, USUAL, effort));
    }
    rows
}

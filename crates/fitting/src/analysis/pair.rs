//! One candidate against the baseline on one measure: the careful difference and the textbook ones.

use super::allowance::order_allowance;
use super::averages::{self, Averages};
use super::estimate::{Counts, Estimate, Group, Method, Numbers, Range, TextbookTest};
use super::levels::Levels;
use super::shots::{Include, ShotTable};
use crate::measure::MeasureId;
use crate::verdict::Why;
use stats::choices::PLANNED_POWER;
use stats::{CautiousDifference, Level, Sample, TDifference};

/// Fewest shots with each build before a verdict is thought of.
const FEWEST_SHOTS: usize = 3;

/// A difference that a verdict may rest on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Comparison {
    /// Widened, and with its order allowance.
    pub careful: CautiousDifference,
    /// How it was made.
    pub method: Method,
    /// Shots behind it.
    pub n: Counts,
    /// Standard deviation of a single shot within a build, as plans need it.
    pub shot_sd: f64,
    /// The deviation taken for averages that came without one.
    pub assumed_sd: Option<f64>,
}

/// Everything known of one pair on one measure.
#[derive(Debug, Clone, PartialEq)]
pub struct Pair {
    /// Textbook results.
    pub numbers: Numbers,
    /// The careful difference, or why there is none.
    pub comparison: Result<Comparison, Why>,
}

impl Comparison {
    /// The careful interval at a level.
    #[must_use]
    pub fn range(&self, level: Level) -> Range {
        let interval = self.careful.interval(level);
        Range { low: interval.low, high: interval.high, level: level.coverage() }
    }

    /// Half-width at a level, without the order allowance.
    #[must_use]
    pub fn half_width_without_allowance(&self, level: Level) -> f64 {
        self.careful.half_width(level) - self.careful.allowance
    }

    /// The estimate as the decision at these levels sees it.
    #[must_use]
    pub fn estimate(&self, levels: &Levels, unit: &str, margin: Option<f64>, candidates: usize) -> Estimate {
        let different = self.range(levels.different);
        Estimate {
            value: self.careful.diff(),
            low: different.low,
            high: different.high,
            level: different.level,
            equivalence: self.range(levels.same),
            unit: unit.to_owned(),
            n: self.n,
            method: self.method,
            order_allowance: self.careful.allowance,
            chance_if_same: self.careful.p_value(),
            detectable: self.careful.detectable(levels.different, PLANNED_POWER),
            shots_to_settle: margin.and_then(|m| shots_to_settle(m, self.shot_sd, candidates)),
        }
    }
}

/// Shots with each build that a planned test in turns needs, so that a difference of `margin` shows
/// as different and none at all shows as the same, each in 8 of 10 cases.
fn shots_to_settle(margin: f64, shot_sd: f64, candidates: usize) -> Option<u32> {
    let size = margin / shot_sd;
    let strict = Level::missing(Level::P95.alpha() / candidates.max(1) as f64).ok()?;
    let detect = stats::power::shots_to_detect(size, strict, PLANNED_POWER)?;
    let same = stats::power::shots_for_equivalence(size, 0.0, Level::P90, PLANNED_POWER)?;
    u32::try_from(detect.tool.max(same.tool)).ok()
}

/// Compares `candidate` with `baseline` on `measure`, from shots where there are any, else from averages.
#[must_use]
pub fn compare(
    table: &ShotTable,
    measure: &MeasureId,
    baseline: usize,
    candidate: usize,
    include: Include,
) -> Pair {
    let index = table.session().measure_index(measure);
    let values = |build| index.map_or_else(Vec::new, |i| table.values(build, i, include));
    let (base, cand) = (values(baseline), values(candidate));
    if base.is_empty() || cand.is_empty() {
        return averages::compare(
            &Averages::of(table.session(), measure, baseline, &base),
            &Averages::of(table.session(), measure, candidate, &cand),
        );
    }
    let rounds = index.filter(|_| table.shared_rounds(baseline, candidate) > 0).and_then(|i| {
        let shots = table.in_rounds(i, include)?;
        stats::Rounds::new(&shots).ok()?.compare(candidate, baseline).ok().filter(|r| r.shared_rounds >= 2)
    });
    let n = Counts { baseline: base.len(), candidate: cand.len() };
    let mut numbers = Numbers {
        baseline: Some(group(&base)),
        candidate: Some(group(&cand)),
        welch: None,
        yuen: None,
        round: None,
    };
    let (Ok(base), Ok(cand)) = (Sample::new(base), Sample::new(cand)) else {
        return Pair { numbers, comparison: Err(Why::TooFewShots) };
    };
    let welch = stats::welch(&cand, &base).ok();
    numbers.welch = welch.map(|d| textbook(&d));
    numbers.yuen = stats::yuen(&cand, &base, stats::TRIM).ok().map(|y| textbook(&y.difference));
    numbers.round = rounds.as_ref().map(|r| textbook(&r.fixed_effects));
    if n.baseline < FEWEST_SHOTS || n.candidate < FEWEST_SHOTS {
        return Pair { numbers, comparison: Err(Why::TooFewShots) };
    }
    let comparison = match (rounds, welch) {
        (Some(rounds), _) => Ok(Comparison {
            careful: rounds.headline(),
            method: Method::Rounds,
            n,
            shot_sd: rounds.residual_sd,
            assumed_sd: None,
        }),
        (None, Some(welch)) => Ok(Comparison {
            careful: CautiousDifference::new(&welch, order_allowance(measure)),
            method: Method::WelchWithAllowance,
            n,
            shot_sd: pooled_sd(&base.summary(), &cand.summary()),
            assumed_sd: None,
        }),
        (None, None) => Err(Why::NoScatter),
    };
    Pair { numbers, comparison }
}

fn group(values: &[f64]) -> Group {
    let n = values.len();
    let sd = (n >= 2).then(|| (stats::describe::sum_of_squares(values) / (n - 1) as f64).sqrt());
    Group { n, mean: stats::describe::mean(values), sd }
}

/// Root mean square of the two deviations: what a plan with equal numbers of shots needs.
pub(super) fn pooled_sd(one: &stats::Summary, other: &stats::Summary) -> f64 {
    one.sd().hypot(other.sd()) / std::f64::consts::SQRT_2
}

pub(super) fn textbook(d: &TDifference) -> TextbookTest {
    let interval = d.interval(Level::P95);
    TextbookTest {
        diff: d.diff,
        se: d.se,
        t: d.t(),
        df: d.df,
        p: d.p_value(),
        low: interval.low,
        high: interval.high,
    }
}

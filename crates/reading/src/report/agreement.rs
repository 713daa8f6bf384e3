//! Summary rows held against the shots they stand with.
//!
//! A printed figure disagrees only when no rounding of it and of the rows can explain it. The
//! figures of a build's shots are worked out once for each stretch of rows, so that the cost
//! grows with the shots and the summary rows, not with both together.

use crate::doubt::Doubt;
use crate::outcome::{Statistic, SummaryGap};
use crate::remarks::NoticeKind;
use crate::take::ctx::SummaryRow;
use crate::take::draft::Draft;
use crate::talk::{Talk, place};
use crate::trim::{has, shortened};
use session::SummaryOf;
use session::measure::{self, Better, MeasureId};
use std::ops::Range;
use text::Voice;
use text::names::spoken;
use text::reading as say;

/// Holds every summary row against the shots it stands under, and says where they disagree; of a measure that is in doubt
/// nothing is said until somebody has settled it.
pub(crate) fn compare(
    draft: &Draft,
    rows: &[SummaryRow],
    doubts: &[Doubt],
    talk: &mut Talk,
) -> Vec<SummaryGap> {
    if rows.is_empty() {
        return Vec::new();
    }
    let in_doubt = |measure: usize| {
        let id = draft.session.measures.get(measure);
        id.is_some() && doubts.iter().any(|doubt| doubt.measure.as_ref() == id)
    };
    let mut compared = Compared::new(draft);
    let mut gaps = Vec::new();
    let mut agreed = 0;
    let mut left = MOST_COMPARED;
    for row in rows {
        for &(measure, printed, step) in row.values.iter().take(left) {
            match compared.check(row, measure, printed, step) {
                None => {}
                Some(_) if in_doubt(measure) => {}
                Some(Check::Agrees) => agreed += 1,
                Some(Check::Differs { from_rows, n }) => gaps.push(SummaryGap {
                    line: row.line,
                    build: row.build,
                    measure: draft.session.measures.get(measure).cloned(),
                    statistic: row.statistic,
                    printed,
                    from_rows,
                    n,
                }),
            }
        }
        left = left.saturating_sub(row.values.len());
        let n = compared.count(row);
        if let Some(printed) =
            row.n.filter(|&printed| n > 0 && row.of == SummaryOf::All && printed as usize != n)
        {
            gaps.push(SummaryGap {
                line: row.line,
                build: row.build,
                measure: None,
                statistic: Statistic::Count,
                printed: f64::from(printed),
                from_rows: f64::from(u32::try_from(n).unwrap_or(u32::MAX)),
                n,
            });
        }
    }
    if left == 0 {
        talk.notice(NoticeKind::TooManySummaries, place(0, ""), say::too_many_summaries(talk.voice()));
    }
    for gap in &gaps {
        talk.notice(
            NoticeKind::SummaryDisagrees,
            place(gap.line, ""),
            disagreement(draft, gap, talk.voice()),
        );
    }
    if agreed > 0 && gaps.is_empty() {
        let message = say::summaries_agree(talk.voice(), &agreed.to_string());
        talk.notice(NoticeKind::SummaryAgrees, place(0, ""), message);
    }
    gaps
}

/// Figures that are compared at most: two for each measure of a hundred builds are far fewer.
const MOST_COMPARED: usize = 20_000;

enum Check {
    Agrees,
    Differs { from_rows: f64, n: usize },
}

/// Build and measure.
type Key = (Option<usize>, usize);

/// Figures of a sample, and of its values without their side.
#[derive(Debug, Clone, Copy)]
struct Figures {
    n: usize,
    plain: Sample,
    unsigned: Sample,
}

#[derive(Debug, Clone, Copy)]
struct Sample {
    mean: f64,
    median: f64,
    low: f64,
    high: f64,
    /// With n − 1 and with n below the line: screens do either.
    deviations: [f64; 2],
}

struct Compared<'a> {
    draft: &'a Draft,
    /// Positions of each build's shots, rising.
    by_build: Vec<Vec<usize>>,
    /// Figures of all shots of a build, and of those in the stretch looked at last.
    all: Vec<(Key, Option<Figures>)>,
    range: Range<usize>,
    in_range: Vec<(Key, Option<Figures>)>,
}

impl<'a> Compared<'a> {
    fn new(draft: &'a Draft) -> Self {
        let mut by_build = vec![Vec::new(); draft.session.builds.len()];
        for (at, shot) in draft.session.shots.iter().enumerate() {
            if let Some(positions) = by_build.get_mut(shot.build) {
                positions.push(at);
            }
        }
        Self { draft, by_build, all: Vec::new(), range: 0..0, in_range: Vec::new() }
    }

    /// Positions of a build's shots within a stretch of them; for no build, of all.
    fn positions(&self, build: Option<usize>, range: &Range<usize>) -> impl Iterator<Item = usize> {
        let own = build.map(|b| self.by_build.get(b).map_or(&[][..], Vec::as_slice));
        let own = own.map(|list| {
            let from = list.partition_point(|&at| at < range.start);
            let until = list.partition_point(|&at| at < range.end);
            list.get(from..until).unwrap_or_default().iter().copied()
        });
        let whole = if own.is_none() { range.clone() } else { 0..0 };
        own.into_iter().flatten().chain(whole)
    }

    fn figures(&self, (build, measure): Key, range: &Range<usize>) -> Option<Figures> {
        let shots = &self.draft.session.shots;
        let value = |at: usize| shots.get(at)?.values.get(measure).copied().flatten();
        let mut values: Vec<f64> = self.positions(build, range).filter_map(value).collect();
        let n = values.len();
        if n == 0 {
            return None;
        }
        let plain = sample(&mut values);
        values.iter_mut().for_each(|v| *v = v.abs());
        Some(Figures { n, plain, unsigned: sample(&mut values) })
    }

    /// Figures of the shots a row stands under, and of all shots of its build.
    fn looked_up(&mut self, row: &SummaryRow, measure: usize) -> [Option<Figures>; 2] {
        let key = (row.build, measure);
        if self.range != row.shots {
            self.range = row.shots.clone();
            self.in_range.clear();
        }
        let whole = 0..self.draft.session.shots.len();
        let known = |list: &[(Key, Option<Figures>)]| list.iter().find(|(k, _)| *k == key).map(|(_, f)| *f);
        let above = known(&self.in_range).unwrap_or_else(|| {
            let found = self.figures(key, &row.shots);
            self.in_range.push((key, found));
            found
        });
        let all = known(&self.all).unwrap_or_else(|| {
            let found = self.figures(key, &whole);
            self.all.push((key, found));
            found
        });
        [above, all]
    }

    fn count(&self, row: &SummaryRow) -> usize {
        let whole = 0..self.draft.session.shots.len();
        match self.positions(row.build, &row.shots).count() {
            0 => self.positions(row.build, &whole).count(),
            n => n,
        }
    }

    fn check(&mut self, row: &SummaryRow, measure: usize, printed: f64, step: f64) -> Option<Check> {
        let [above, all] = self.looked_up(row, measure);
        let shown = above.or(all)?;
        let row_step = self.draft.steps.get(measure).copied().filter(|s| s.is_finite()).unwrap_or(0.0);
        let id = self.draft.session.measures.get(measure);
        let signed = id.and_then(measure::known).is_some_and(|m| m.better == Better::NearerZero);
        let slack = 0.5 * step + row_slack(row.statistic) * row_step + 1e-9 * printed.abs().max(1.0);
        let near = |sample: &Sample| of(row.statistic, sample).iter().any(|v| (v - printed).abs() <= slack);
        // A screen may average misses without their side.
        let agrees = |figures: &Figures| near(&figures.plain) || signed && near(&figures.unsigned);
        if agrees(&shown) || all.is_some_and(|all| agrees(&all)) {
            return Some(Check::Agrees);
        }
        Some(Check::Differs { from_rows: of(row.statistic, &shown.plain)[0], n: shown.n })
    }
}

/// How far the rounding of single values can move a figure, in steps.
fn row_slack(statistic: Statistic) -> f64 {
    match statistic {
        Statistic::Deviation => 0.75,
        Statistic::Range => 1.0,
        _ => 0.5,
    }
}

/// The figure from the rows, in the two ways it is worked out where there are two.
fn of(statistic: Statistic, sample: &Sample) -> [f64; 2] {
    let one = match statistic {
        Statistic::Mean | Statistic::Count => sample.mean,
        Statistic::Median => sample.median,
        Statistic::Low => sample.low,
        Statistic::High => sample.high,
        Statistic::Range => sample.high - sample.low,
        Statistic::Deviation => return sample.deviations,
    };
    [one, one]
}

/// Figures of at least one value; sorts them.
fn sample(values: &mut [f64]) -> Sample {
    arrange::sort_numbers(values);
    #[expect(clippy::cast_precision_loss, reason = "far fewer shots than 2^52")]
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    let squares = values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>();
    let middle = values.len() / 2;
    let at = |at: usize| values.get(at).copied().unwrap_or(mean);
    let median = if values.len().is_multiple_of(2) {
        f64::midpoint(at(middle.saturating_sub(1)), at(middle))
    } else {
        at(middle)
    };
    let one_less = if values.len() < 2 { 0.0 } else { (squares / (n - 1.0)).sqrt() };
    Sample {
        mean,
        median,
        low: at(0),
        high: at(values.len().saturating_sub(1)),
        deviations: [one_less, (squares / n).sqrt()],
    }
}

fn disagreement(draft: &Draft, gap: &SummaryGap, voice: &Voice) -> String {
    let session = &draft.session;
    let build = gap.build.and_then(|b| session.builds.get(b)).map(|b| shortened(&b.name));
    let (all, build) = (build.is_none(), build.unwrap_or_default());
    let (printed, found) = (shown(gap.printed, voice), shown(gap.from_rows, voice));
    let figure = match gap.statistic {
        Statistic::Count => return say::count_disagrees(voice, &printed, all, &build, &found),
        Statistic::Mean => say::Figure::Average,
        Statistic::Median => say::Figure::Median,
        Statistic::Deviation => say::Figure::Deviation,
        Statistic::Low => say::Figure::Smallest,
        Statistic::High => say::Figure::Largest,
        Statistic::Range => say::Figure::Range,
    };
    let custom = |id: &MeasureId| session.custom(id).map_or_else(|| id.to_string(), |c| c.name.clone());
    let name =
        gap.measure.as_ref().map(|id| id.known().map_or_else(|| custom(id), |known| spoken(known, voice)));
    let name = name.map(|name| shortened(&name));
    let amount = gap.printed - gap.from_rows;
    let figure = say::figure(voice, figure, name.is_some(), name.as_deref().unwrap_or_default(), all, &build);
    let (rows, apart) = (gap.n.to_string(), shown(amount.abs(), voice));
    say::figure_disagrees(voice, &figure, &printed, &found, &rows, &apart, amount > 0.0)
}

/// At most two digits behind the point, none that are zero.
pub(crate) fn shown(value: f64, voice: &Voice) -> String {
    let digits = session::digits::rounded(value, 2);
    let digits = if has(&digits, '.') { digits.trim_end_matches('0').trim_end_matches('.') } else { &digits };
    let sign = if value < 0.0 && digits != "0" { "-" } else { "" };
    format!("{sign}{}", digits.replace('.', &text::decimal_mark(voice)))
}

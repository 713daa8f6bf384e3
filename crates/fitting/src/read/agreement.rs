//! Summary rows held against the shots they stand with.
//!
//! A printed figure disagrees only when no rounding of it and of the rows can explain it.

use super::draft::Draft;
use super::outcome::{NoticeKind, Statistic, SummaryGap};
use super::summary::SummaryRow;
use super::talk::{Talk, place};
use crate::measure::{self, Better};
use crate::session::SummaryOf;

/// Holds every summary row against the shots it stands under, and says where they disagree.
pub(super) fn compare(draft: &Draft, rows: &[SummaryRow], talk: &mut Talk) -> Vec<SummaryGap> {
    let mut gaps = Vec::new();
    let mut agreed = 0;
    for row in rows {
        for &(measure, printed, step) in &row.values {
            let Some(check) = check(draft, row, measure, printed, step) else { continue };
            match check {
                Check::Agrees => agreed += 1,
                Check::Differs { from_rows, n } => gaps.push(SummaryGap {
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
        let n = count_of(draft, row);
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
    for gap in &gaps {
        talk.notice(NoticeKind::SummaryDisagrees, place(gap.line, ""), disagreement(draft, gap));
    }
    if agreed > 0 && gaps.is_empty() {
        let message = format!("The summary rows agree with the shots above them ({agreed} figures checked).");
        talk.notice(NoticeKind::SummaryAgrees, place(0, ""), message);
    }
    gaps
}

fn count_of(draft: &Draft, row: &SummaryRow) -> usize {
    let of = |range: std::ops::Range<usize>| {
        let shots = draft.session.shots.get(range).unwrap_or_default();
        shots.iter().filter(|s| row.build.is_none_or(|b| s.build == b)).count()
    };
    match of(row.shots.clone()) {
        0 => of(0..draft.session.shots.len()),
        n => n,
    }
}

enum Check {
    Agrees,
    Differs { from_rows: f64, n: usize },
}

fn check(draft: &Draft, row: &SummaryRow, measure: usize, printed: f64, step: f64) -> Option<Check> {
    let values = |range: std::ops::Range<usize>| -> Vec<f64> {
        let shots = draft.session.shots.get(range).unwrap_or_default();
        shots
            .iter()
            .filter(|s| row.build.is_none_or(|b| s.build == b))
            .filter_map(|s| s.values.get(measure).copied().flatten())
            .collect()
    };
    let above = values(row.shots.clone());
    let all = if above.len() == draft.session.shots.len() {
        Vec::new()
    } else {
        values(0..draft.session.shots.len())
    };
    let row_step = draft.steps.get(measure).copied().filter(|s| s.is_finite()).unwrap_or(0.0);
    let signed = draft
        .session
        .measures
        .get(measure)
        .and_then(measure::known)
        .is_some_and(|m| m.better == Better::NearerZero);
    let agrees = |sample: &[f64]| {
        let slack = 0.5 * step + row_slack(row.statistic) * row_step + 1e-9 * printed.abs().max(1.0);
        let of =
            |sample: &[f64]| candidates(row.statistic, sample).iter().any(|v| (v - printed).abs() <= slack);
        // A screen may average misses without their side.
        of(sample) || signed && of(&sample.iter().map(|v| v.abs()).collect::<Vec<_>>())
    };
    let shown = if above.is_empty() { &all } else { &above };
    if shown.is_empty() {
        return None;
    }
    if agrees(shown) || (!all.is_empty() && agrees(&all)) {
        return Some(Check::Agrees);
    }
    let from_rows = *candidates(row.statistic, shown).first()?;
    Some(Check::Differs { from_rows, n: shown.len() })
}

/// How far the rounding of single values can move a figure, in steps.
fn row_slack(statistic: Statistic) -> f64 {
    match statistic {
        Statistic::Deviation => 0.75,
        Statistic::Range => 1.0,
        _ => 0.5,
    }
}

/// The figure from the rows, in the ways it is commonly worked out.
fn candidates(statistic: Statistic, sample: &[f64]) -> Vec<f64> {
    #[expect(clippy::cast_precision_loss, reason = "far fewer shots than 2^52")]
    let n = sample.len() as f64;
    let mean = sample.iter().sum::<f64>() / n;
    let low = sample.iter().copied().fold(f64::INFINITY, f64::min);
    let high = sample.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    match statistic {
        Statistic::Mean => vec![mean],
        Statistic::Low => vec![low],
        Statistic::High => vec![high],
        Statistic::Range => vec![high - low],
        Statistic::Count => vec![n],
        Statistic::Median => {
            let mut sorted = sample.to_vec();
            stats::arrange::sort_numbers(&mut sorted);
            let middle = sorted.len() / 2;
            let upper = sorted.get(middle).copied();
            let lower = sorted.get(middle.saturating_sub(1)).copied();
            match (upper, lower) {
                (Some(u), Some(l)) if sorted.len().is_multiple_of(2) => vec![f64::midpoint(u, l)],
                (Some(u), _) => vec![u],
                _ => Vec::new(),
            }
        }
        Statistic::Deviation => {
            let squares = sample.iter().map(|v| (v - mean).powi(2)).sum::<f64>();
            if sample.len() < 2 {
                vec![0.0]
            } else {
                vec![(squares / (n - 1.0)).sqrt(), (squares / n).sqrt()]
            }
        }
    }
}

fn disagreement(draft: &Draft, gap: &SummaryGap) -> String {
    let figure = match gap.statistic {
        Statistic::Mean => "average",
        Statistic::Median => "median",
        Statistic::Deviation => "standard deviation",
        Statistic::Low => "smallest",
        Statistic::High => "largest",
        Statistic::Range => "range",
        Statistic::Count => "number of shots",
    };
    let custom = |id: &measure::MeasureId| {
        draft
            .session
            .custom
            .iter()
            .find(|c| c.id == *id)
            .map(|c| c.name.clone())
            .unwrap_or_else(|| id.0.clone())
    };
    let name = gap
        .measure
        .as_ref()
        .map(|id| measure::known(id).map_or_else(|| custom(id), |m| m.name.to_ascii_lowercase()));
    let build = gap.build.and_then(|b| draft.session.builds.get(b)).map_or("all shots", |b| b.name.as_str());
    let build = super::limits::shortened(build);
    let name = name.map(|n| format!(" {}", super::limits::shortened(&n))).unwrap_or_default();
    let amount = gap.printed - gap.from_rows;
    let (printed, from_rows, n) = (shown(gap.printed), shown(gap.from_rows), gap.n);
    let side = if amount > 0.0 { "more" } else { "less" };
    if gap.statistic == Statistic::Count {
        return format!("The file says {printed} shots for {build}; it holds {from_rows}.");
    }
    format!(
        "The {figure}{name} of {build} is {printed} in the file and {from_rows} from its {n} rows, {} {side}: \
         it belongs to shots that are not in the file.",
        shown(amount.abs())
    )
}

/// At most two digits behind the point, none that are zero.
pub(super) fn shown(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

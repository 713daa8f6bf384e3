//! Rows of averages, deviations and the like: recognized and kept apart from the shots.

use crate::lexicon::heading::words;
use crate::lexicon::vocabulary::{lists, statistic};
use crate::lexicon::word::Word;
use crate::outcome::{LineIs, Role, Statistic};
use crate::take::cell::{read_cell, whole_number};
use crate::take::ctx::{Ctx, SummaryRow};
use crate::take::draft::Draft;
use crate::take::strand::Strand;
use crate::understand::column::Column;
use session::{Summary, SummaryOf, SummaryValue};

/// Summary rows that are kept and compared; a session has a few for each build.
pub(crate) const MOST_SUMMARIES: usize = 2000;

/// What the label of a summary row says.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Label {
    pub(crate) statistic: Statistic,
    /// Column the label stands in.
    pub(crate) column: usize,
    /// The build it names.
    pub(crate) build: Option<String>,
    n: Option<u32>,
    of: SummaryOf,
}

/// Words that name a figure and hardly anything else.
fn is_strong(word: &str) -> bool {
    let strong = "average averages avg avgs mean means ø sd std stdev stddev standarddeviation stdv σ min max minimum maximum median averaged";
    lists(strong, word)
}

const FILLERS: &str = "of for the all shots shot balls ball n value values best good top ones last first total overall \
     group session only longest hit in by x without mishits excluding selected chosen filtered trimmed clean";

/// Which shots the words of a label or title speak of.
pub(crate) fn shots_meant(words: &[String]) -> SummaryOf {
    let any = |list: &str| words.iter().any(|w| lists(list, w));
    if any("good solid selected chosen without excluding filtered trimmed clean removed") {
        return SummaryOf::Chosen;
    }
    if any("best top longest") { SummaryOf::Best } else { SummaryOf::All }
}

/// The label of a summary row; `None` for a shot.
pub(crate) fn label(
    ctx: &mut Ctx<'_>,
    row: usize,
    columns: &[Column<'_>],
    in_summary: bool,
) -> Option<Label> {
    let grid = ctx.grid;
    let is_number = |text: &str| {
        let letters = text.trim_start_matches(['s', 'S', 'h', 'o', 't', '#', 'n', 'N', '.', ' ']);
        letters.bytes().all(|b| b.is_ascii_digit()) && whole_number(text).is_some()
    };
    let numbered = columns.iter().any(|c| c.role == Role::Number && is_number(grid.cell(row, c.index)));
    if numbered && !columns.iter().any(|c| c.understood.word == Some(Word::Statistic)) {
        return None;
    }
    for column in columns.iter().take(8) {
        let may = match column.role {
            Role::Build | Role::Number | Role::Round | Role::Time => true,
            Role::Ignored => !matches!(column.understood.word, Some(Word::Remark)),
            _ => false,
        };
        let cell = grid.cell(row, column.index);
        if !may || cell.is_empty() || ctx.no_labels.contains(cell) {
            continue;
        }
        let found = read_label(cell, column.index, column.role == Role::Build && !in_summary, &ctx.draft);
        if found.is_some() {
            return found;
        }
        if ctx.no_labels.len() < 1000 && !in_summary {
            ctx.no_labels.insert(cell.to_owned());
        }
    }
    None
}

fn read_label(cell: &str, column: usize, strong_only: bool, draft: &Draft) -> Option<Label> {
    if cell.len() > 60 {
        return None;
    }
    let all = words(cell);
    let joined = all.concat();
    let label = |statistic, build, n| Label { statistic, column, build, n, of: shots_meant(&all) };
    if let Some(found) = statistic(&joined) {
        return (!strong_only || is_strong(&joined)).then(|| label(found, None, None));
    }
    // A figure's word at either end, the rest fillers, a number of shots or a build's name.
    let (found, count) = [2, 1].into_iter().filter(|&n| all.len() > n).find_map(|n| {
        let ends = [all[..n].concat(), all[all.len() - n..].concat()];
        let word = ends.into_iter().find(|w| is_strong(w))?;
        Some((statistic(&word)?, n))
    })?;
    let at_start = is_strong(&all[..count].concat());
    let rest = if at_start { &all[count..] } else { &all[..all.len() - count] };
    let is_filler = |w: &String| lists(FILLERS, w) || w.bytes().all(|b| b.is_ascii_digit());
    if rest.iter().all(is_filler) {
        let n = rest.iter().find_map(|w| w.parse().ok());
        return Some(label(found, None, n));
    }
    let same = |name: &str| words(name) == rest;
    if let Some(build) = draft.session.builds.iter().find(|b| same(&b.name)) {
        return Some(label(found, Some(build.name.clone()), None));
    }
    // "Average Driver C" for a build that has no rows.
    let pieces: Vec<&str> = cell.split_whitespace().collect();
    let kept =
        if at_start { pieces.get(count..)? } else { pieces.get(..pieces.len().checked_sub(count)?)? };
    let name = kept.join(" ");
    let name = name.trim_matches(['-', '–', ':', ',', '(', ')', ' ']);
    (!name.is_empty()).then(|| label(found, Some(name.to_owned()), None))
}

/// Reads the figures of a summary row; builds with columns of their own get their own.
pub(crate) fn take_row(
    ctx: &mut Ctx<'_>,
    row: usize,
    columns: &[Column<'_>],
    strands: &[Strand],
    label: &Label,
    build: Option<usize>,
    since: usize,
) {
    let line = ctx.grid.line(row);
    let mut any = false;
    for strand in strands {
        let mut values = Vec::new();
        let mut n = label.n;
        for column in strand.columns.iter().filter_map(|&at| columns.get(at)) {
            if column.index == label.column {
                continue;
            }
            let cell = || whole_number(ctx.grid.cell(row, column.index));
            match column.role {
                Role::Count => n = cell().or(n),
                Role::Number if label.statistic == Statistic::Count => n = cell().or(n),
                Role::Measure(_) if label.statistic == Statistic::Count => n = n.max(cell()),
                Role::Measure(_) => {
                    if let Ok(Some((value, step))) = read_cell(ctx, row, column)
                        && let Some(measure) = ctx.draft.measure(column, ctx.talk.voice())
                    {
                        values.push((measure, value, step));
                    }
                }
                _ => {}
            }
        }
        if values.is_empty() && n.is_none() {
            continue;
        }
        any = true;
        let build = match &strand.build {
            Some(name) => Some(ctx.draft.build(name, ctx.hints)),
            None => build,
        };
        let shots = since..ctx.draft.session.shots.len();
        if ctx.summaries.len() >= MOST_SUMMARIES {
            ctx.too_many_summaries = true;
            continue;
        }
        ctx.summaries.push(SummaryRow {
            line,
            statistic: label.statistic,
            build,
            n,
            of: label.of,
            values,
            shots,
        });
    }
    ctx.outcomes.push((row, if any { LineIs::Summary } else { LineIs::Text }));
}

/// Turns summary rows into the session's summaries, one for each run of rows of one build.
pub(crate) fn settle(draft: &mut Draft, rows: &[SummaryRow]) {
    let mut last: Option<(usize, Vec<Statistic>, std::ops::Range<usize>)> = None;
    let mut rows: Vec<&SummaryRow> = rows.iter().collect();
    // Rows of several builds, side by side, stand line by line: bring each build's together.
    arrange::sort_by_key(&mut rows, |row| (row.shots.end, row.build));
    for row in rows {
        let Some(build) = row.build else { continue };
        let same = last.as_ref().is_some_and(|(b, seen, shots)| {
            *b == build && !seen.contains(&row.statistic) && *shots == row.shots
        });
        if !same {
            let values = session::few::Map::default();
            draft.session.summaries.push(Summary {
                build,
                n: None,
                of: row.of,
                values,
                line: Some(row.line),
            });
            last = Some((build, Vec::new(), row.shots.clone()));
        }
        if let Some((_, seen, _)) = &mut last {
            seen.push(row.statistic);
        }
        let Some(summary) = draft.session.summaries.last_mut() else { continue };
        summary.n = summary.n.or(row.n);
        if summary.of == SummaryOf::All {
            summary.of = row.of;
        }
        for &(measure, value, _) in &row.values {
            let Some(id) = draft.session.measures.get(measure) else { continue };
            let entry: &mut SummaryValue = summary.values.entry(id.clone(), SummaryValue::default);
            match row.statistic {
                Statistic::Mean => entry.mean = Some(value),
                Statistic::Deviation => entry.sd = Some(value),
                Statistic::Low => entry.low = Some(value),
                Statistic::High => entry.high = Some(value),
                Statistic::Median | Statistic::Range | Statistic::Count => {}
            }
        }
    }
    // A median or a range alone leaves nothing to keep.
    draft.session.summaries.retain_mut(|summary| {
        summary.values.retain(|_, v| *v != SummaryValue::default());
        !summary.values.is_empty() || summary.n.is_some()
    });
}

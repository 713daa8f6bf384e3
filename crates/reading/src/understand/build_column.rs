//! Which columns name the builds.

use crate::cut::grid::Grid;
use crate::lexicon::word::{Claim, Word};
use crate::outcome::Role;
use crate::understand::column::{Column, MOST_DISTINCT};
use session::few::Set;

/// Finds the columns that name the builds.
pub(crate) fn choose_build(
    columns: &mut [Column<'_>],
    hinted: &Set<usize>,
    averages: bool,
    grid: &Grid,
    rows: &[usize],
) {
    let candidate = |c: &Column<'_>| !hinted.contains(&c.index) && c.profile.filled() > 0;
    let claim = |c: &Column<'_>| match c.understood.word {
        Some(Word::Build(claim)) if candidate(c) => {
            // Only a group may be named by numbers alone; a "head" full of numbers is a measure.
            let text = c.profile.texts > 0 || c.profile.mostly_counts() && claim >= Claim::Group;
            text.then_some(claim)
        }
        _ => None,
    };
    let mut claimed: Vec<(Claim, usize)> =
        columns.iter().filter_map(|c| claim(c).map(|claim| (claim, c.index))).collect();
    arrange::sort_by(&mut claimed, |a, b| b.0.cmp(&a.0));
    let varied = |index: usize| columns.iter().any(|c| c.index == index && c.profile.distinct.len() > 1);
    if claimed.iter().any(|&(_, index)| varied(index)) {
        claimed.retain(|&(_, index)| varied(index));
    }
    let mut chosen: Vec<usize> = Vec::new();
    let mut distinct = 0;
    for (claim, index) in claimed {
        if !chosen.is_empty() && claim < Claim::Part {
            continue;
        }
        let mut more = chosen.clone();
        more.push(index);
        let builds = combinations(grid, rows, &more);
        if chosen.is_empty() || builds > distinct && builds <= MOST_BUILDS {
            chosen = more;
            distinct = builds;
        }
    }
    arrange::sort(&mut chosen);
    if chosen.is_empty() {
        guess_build(columns, &candidate_indexes(columns, hinted), averages);
        return;
    }
    for column in columns.iter_mut().filter(|c| chosen.contains(&c.index)) {
        column.role = Role::Build;
    }
}

/// More builds than this in one session are not builds.
const MOST_BUILDS: usize = 12;

fn combinations(grid: &Grid, rows: &[usize], indexes: &[usize]) -> usize {
    let mut seen = Set::default();
    for &row in rows {
        seen.insert(indexes.iter().map(|&index| grid.cell(row, index)).collect::<Vec<_>>());
        if seen.len() > MOST_DISTINCT {
            break;
        }
    }
    seen.len()
}

fn candidate_indexes(columns: &[Column<'_>], hinted: &Set<usize>) -> Vec<usize> {
    columns.iter().filter(|c| !hinted.contains(&c.index)).map(|c| c.index).collect()
}

/// Without a word for it: the column of text with the fewest different cells, or the one column
/// of a few whole numbers.
fn guess_build(columns: &mut [Column<'_>], candidates: &[usize], averages: bool) {
    let free = |c: &Column<'_>| candidates.contains(&c.index) && c.role == Role::Ignored;
    let text = |c: &Column<'_>| {
        let p = &c.profile;
        let few = averages || p.distinct.len() <= MOST_BUILDS || p.distinct.len() * 2 <= p.filled();
        free(c)
            && !p.mostly_figures()
            && p.texts > 0
            && !p.mostly_clocks()
            && !p.many
            && few
            && !matches!(c.understood.word, Some(Word::Remark | Word::LeftOut | Word::Time | Word::Statistic))
    };
    let texts: Vec<(usize, usize)> =
        columns.iter().filter(|c| text(c)).map(|c| (c.profile.distinct.len(), c.index)).collect();
    let found = texts.iter().filter(|(n, _)| *n > 1).min().or_else(|| texts.first()).map(|&(_, index)| index);
    let found = found.or_else(|| {
        let golf = columns.iter().any(|c| matches!(c.understood.word, Some(Word::Measure(_))));
        let mut few = columns.iter().filter(|c| {
            let p = &c.profile;
            candidates.contains(&c.index)
                && matches!(&c.role, Role::Measure(id) if id.as_str().is_empty())
                && p.counts == p.filled()
                && (2..=6).contains(&p.distinct.len())
                && p.filled() >= 3 * p.distinct.len()
        });
        let only = few.next().map(|c| c.index);
        if few.next().is_some() || golf { None } else { only }
    });
    let others = texts.len() > 1;
    if let Some(column) = columns.iter_mut().find(|c| Some(c.index) == found) {
        column.role = Role::Build;
        column.sure = !others && column.profile.texts > 0;
    }
}

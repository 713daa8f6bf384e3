//! Columns that together make one shot of a row: all of them, or each build's own with the shared ones.

use crate::understand::column::Column;
use session::few::Set;

/// Columns that together make one shot of a row.
#[derive(Debug, Clone)]
pub(crate) struct Strand {
    /// The build they belong to, when the columns say so.
    pub(crate) build: Option<String>,
    /// The group of its own columns.
    pub(crate) group: Option<usize>,
    /// Positions in the list of columns, shared ones among them.
    pub(crate) columns: Vec<usize>,
}

/// One strand for each group of columns; one for all where there are no groups.
pub(crate) fn strands(columns: &[Column<'_>]) -> Vec<Strand> {
    let groups: Set<usize> = columns.iter().filter_map(|c| c.group).collect();
    if groups.is_empty() {
        return vec![Strand { build: None, group: None, columns: (0..columns.len()).collect() }];
    }
    let of_group = |group: usize| {
        let own = |c: &&Column<'_>| c.group == Some(group);
        Strand {
            build: columns.iter().find(own).and_then(|c| c.build.clone()),
            group: Some(group),
            columns: (0..columns.len()).filter(|&at| columns[at].group.is_none_or(|g| g == group)).collect(),
        }
    };
    groups.into_iter().map(of_group).collect()
}

//! The build that a row belongs to.

use crate::cut::blocks::Block;
use crate::cut::grid::Grid;
use crate::outcome::Role;
use crate::take::ctx::Ctx;
use crate::take::summary;
use crate::understand::column::Column;

/// Build names from the build columns, carried down where only the first row of a group has one.
pub(crate) struct Names {
    /// Column index, whether its name is carried down, the last name.
    columns: Vec<(usize, bool, String)>,
    pub(crate) has_columns: bool,
    pub(crate) carried: bool,
}

impl Names {
    /// For the columns of one group and those that all groups share.
    pub(crate) fn new(columns: &[Column<'_>], group: Option<usize>, block: &Block, grid: &Grid) -> Self {
        let columns: Vec<(usize, bool, String)> = columns
            .iter()
            .filter(|c| c.role == Role::Build && (c.group.is_none() || c.group == group))
            .map(|c| {
                let empty = block.body.iter().filter(|&&row| grid.cell(row, c.index).is_empty()).count();
                // Every second row or more without a name: names stand for the rows below them.
                (c.index, empty > 0 && empty * 2 >= block.body.len(), String::new())
            })
            .collect();
        Self { has_columns: !columns.is_empty(), columns, carried: false }
    }

    pub(crate) fn heading<'c>(&self, columns: &'c [Column<'_>]) -> &'c str {
        let first = self.columns.first().map(|(index, ..)| *index);
        columns.iter().find(|c| Some(c.index) == first).map_or("", |c| c.heading.as_str())
    }

    pub(crate) fn of_row(&mut self, grid: &Grid, row: usize) -> Option<String> {
        for (index, carries, last) in &mut self.columns {
            let cell = grid.cell(row, *index);
            if !cell.is_empty() {
                cell.clone_into(last);
            } else if *carries {
                self.carried |= !last.is_empty();
            } else {
                last.clear();
            }
        }
        self.joined()
    }

    pub(crate) fn of_row_unchanged(&self, grid: &Grid, row: usize) -> Option<String> {
        let names: Vec<&str> = self.columns.iter().map(|(index, ..)| grid.cell(row, *index)).collect();
        join(names.into_iter())
    }

    fn joined(&self) -> Option<String> {
        join(self.columns.iter().map(|(_, _, name)| name.as_str()))
    }

    /// The build a summary stands for; `None` when it stands for all shots.
    pub(crate) fn of_summary(
        &self,
        ctx: &mut Ctx<'_>,
        row: usize,
        label: &summary::Label,
        title: Option<&str>,
        since: usize,
    ) -> Option<usize> {
        if let Some(name) = &label.build {
            return ctx.draft.known_build(name, ctx.hints).or_else(|| Some(ctx.draft.build(name, ctx.hints)));
        }
        let in_build_column = self.columns.iter().any(|(index, ..)| *index == label.column);
        if !in_build_column && let Some(name) = self.of_row_unchanged(ctx.grid, row) {
            return Some(ctx.draft.build(&name, ctx.hints));
        }
        if let Some(title) = title.filter(|_| !self.has_columns) {
            return Some(ctx.draft.build(title, ctx.hints));
        }
        let shots = ctx.draft.session.shots.get(since..).unwrap_or_default();
        let first = shots.first().map(|s| s.build)?;
        shots.iter().all(|s| s.build == first).then_some(first)
    }
}

fn join<'a>(names: impl Iterator<Item = &'a str>) -> Option<String> {
    let names: Vec<&str> = names.filter(|n| !n.is_empty()).collect();
    if names.is_empty() { None } else { Some(names.join(" / ")) }
}

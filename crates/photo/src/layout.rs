//! Texts into rows and columns: numbers make them, words stand beside or above.

use crate::headings::headings;
use crate::lines::{Frame, grouped, median};
use crate::places::{Place, Span, lines, said};
use crate::token::Token;

/// Rows and columns, and which text stands where.
#[derive(Debug)]
pub(crate) struct Layout {
    pub(crate) frame: Frame,
    /// Where each row runs, from the top.
    pub(crate) rows: Vec<f32>,
    /// From the left.
    pub(crate) columns: Vec<Span>,
    /// For each row and column the text that stands there.
    pub(crate) cells: Vec<Option<usize>>,
    /// The rest of names that were found in two boxes: a text, its row and its column.
    pub(crate) also: Vec<(usize, usize, usize)>,
    pub(crate) headings: Vec<String>,
    /// What stands above the headings and below the last row, line by line.
    pub(crate) above: Vec<String>,
    pub(crate) below: Vec<String>,
}

/// A row or a column with less of what others have is none, once there are several.
const ENOUGH: f32 = 0.3;
const SEVERAL: usize = 4;

impl Layout {
    pub(crate) fn cell(&self, row: usize, column: usize) -> Option<usize> {
        self.cells[row * self.columns.len() + column]
    }

    pub(crate) fn has_numbers(&self) -> bool {
        self.columns.iter().any(|it| it.is_number)
    }
}

/// How the rows of these numbers run.
pub(crate) fn frame(tokens: &[Token], numbers: &[usize]) -> (Frame, f32) {
    let quads = || numbers.iter().map(|at| &tokens[*at].quad);
    let heights: Vec<f32> = quads().map(|it| it.height()).collect();
    let slopes: Vec<f32> = quads().map(|it| it.across()[1] / it.across()[0].max(1.0)).collect();
    let centers: Vec<_> = quads().map(|it| it.center()).collect();
    let edges: Vec<_> = quads().flat_map(|it| [it.left(), it.right()]).collect();
    (Frame::of(&centers, &edges, &heights, median(&slopes)), median(&heights))
}

/// Puts texts into rows and columns; nothing when there are no numbers that make any.
pub(crate) fn layout(tokens: &[Token]) -> Option<Layout> {
    let numbers: Vec<usize> = (0..tokens.len()).filter(|at| tokens[*at].is_number()).collect();
    if numbers.is_empty() {
        return None;
    }
    let (frame, height) = frame(tokens, &numbers);
    let places: Vec<Place> = tokens.iter().map(|it| Place::of(&it.quad, &frame)).collect();
    let rows = rows(&numbers, &places, height);
    // The row of a text, when it stands in one.
    let row_of = |at: usize| {
        let near = (0..rows.len()).min_by(|one, other| {
            let away = |row: &usize| (rows[*row] - places[at].y).abs();
            away(one).total_cmp(&away(other))
        });
        near.filter(|row| (rows[*row] - places[at].y).abs() < 0.5 * height)
    };
    let in_rows: Vec<(usize, usize)> = (0..tokens.len()).filter_map(|at| Some((at, row_of(at)?))).collect();
    let columns = columns(tokens, &in_rows, &places, rows.len());
    let mut cells: Vec<Option<usize>> = vec![None; rows.len() * columns.len()];
    // What lies in the middle of its column comes first.
    let mut waiting: Vec<(f32, usize, usize, usize)> = Vec::new();
    let is_over = |at: usize, span: &Span| {
        let middle = (span.from + span.to) / 2.0;
        span.is_number && places[at].from < middle && middle < places[at].to
    };
    // A number over several columns is none: what stands there is read by itself.
    let is_one =
        |at: usize| !tokens[at].is_number() || columns.iter().filter(|span| is_over(at, span)).count() < 2;
    for (at, row) in in_rows.iter().filter(|(at, _)| is_one(*at)) {
        for (column, span) in columns.iter().enumerate() {
            waiting.push((away(&places[*at], span), *at, *row, column));
        }
    }
    waiting.sort_by(|one, other| one.0.total_cmp(&other.0));
    let mut is_placed = vec![false; tokens.len()];
    for (away, at, row, column) in waiting {
        let cell = &mut cells[row * columns.len() + column];
        if !is_placed[at] && cell.is_none() && away < 3.0 * height {
            *cell = Some(at);
            is_placed[at] = true;
        }
    }
    const SURE_NAME: f32 = 0.6;
    // A text close beside a name, in its row, is the rest of it.
    let beside = |at: usize, row: usize| {
        (0..columns.len()).filter(|it| !columns[*it].is_number).find(|column| {
            cells[row * columns.len() + column].is_some_and(|name| {
                let (one, other) = (&places[name], &places[at]);
                (other.from - one.to).max(one.from - other.to).abs() < 0.7 * height
            })
        })
    };
    let also: Vec<(usize, usize, usize)> = in_rows
        .iter()
        .filter(|(at, _)| !is_placed[*at] && is_one(*at) && tokens[*at].line.sure >= SURE_NAME)
        .filter_map(|(at, row)| Some((*at, *row, beside(*at, *row)?)))
        .collect();
    let (top, bottom) = (rows.first()? - 0.6 * height, rows.last()? + 0.6 * height);
    let outside = |is: &dyn Fn(f32) -> bool| {
        (0..tokens.len()).filter(|at| !is_placed[*at] && is(places[*at].y)).collect::<Vec<_>>()
    };
    let (headings, above) = headings(tokens, &outside(&|y| y < top), &frame, &columns, height);
    let below = outside(&|y| y > bottom);
    let below = lines(&below, &places, height).into_iter().map(|line| said(tokens, &line)).collect();
    Some(Layout { frame, rows, columns, cells, also, headings, above, below })
}

/// How far a text stands from a column: by its middle, or by the edge that the column is set at.
fn away(place: &Place, span: &Span) -> f32 {
    let middle = (place.middle() - (span.from + span.to) / 2.0).abs();
    let overlap = place.to.min(span.to) - place.from.max(span.from);
    if overlap > 0.0 {
        return middle.min((place.from - span.from).abs()).min((place.to - span.to).abs());
    }
    middle
}

fn rows(numbers: &[usize], places: &[Place], height: f32) -> Vec<f32> {
    let ys: Vec<f32> = numbers.iter().map(|at| places[*at].y).collect();
    let (of, count) = grouped(&ys, 0.45 * height);
    let mut rows: Vec<Vec<f32>> = vec![Vec::new(); count];
    of.iter().zip(&ys).for_each(|(row, y)| rows[*row].push(*y));
    let mut sizes: Vec<usize> = rows.iter().map(Vec::len).collect();
    sizes.sort_unstable();
    let usual = sizes[sizes.len() / 2] as f32;
    let rows: Vec<Vec<f32>> = rows.into_iter().flat_map(|it| fallen_apart(it, usual, height)).collect();
    let is_row = |it: &Vec<f32>| count < SEVERAL || it.len() as f32 >= ENOUGH * usual;
    let rows: Vec<f32> = rows.iter().filter(|it| is_row(it)).map(|it| median(it)).collect();
    with_overlooked(rows)
}

/// Two rows that a box between them held together; a group with about as many texts as others have is one row.
fn fallen_apart(mut row: Vec<f32>, usual: f32, height: f32) -> Vec<Vec<f32>> {
    const MORE: f32 = 1.5;
    const TALLER: f32 = 0.6;
    row.sort_by(f32::total_cmp);
    let spread = row.last().zip(row.first()).map_or(0.0, |(last, first)| last - first);
    if (row.len() as f32) < MORE * usual || spread <= TALLER * height {
        return vec![row];
    }
    let middle = row.iter().sum::<f32>() / row.len() as f32;
    let (above, below) = row.into_iter().partition(|it| *it < middle);
    vec![above, below]
}

/// Rows between which one more has its place: twice as far apart as those around them are.
fn with_overlooked(rows: Vec<f32>) -> Vec<f32> {
    const FEWEST: usize = 6;
    const TWICE: std::ops::Range<f32> = 1.75..2.25;
    if rows.len() < FEWEST {
        return rows;
    }
    let apart: Vec<f32> = rows.windows(2).map(|it| it[1] - it[0]).collect();
    let around = |at: usize| median(&apart[at.saturating_sub(2)..(at + 3).min(apart.len())]);
    let between = |at: usize| {
        let is_twice = TWICE.contains(&(apart[at] / around(at).max(1.0)));
        is_twice.then(|| f32::midpoint(rows[at], rows[at + 1]))
    };
    let mut all: Vec<f32> = (0..apart.len()).filter_map(between).chain(rows.iter().copied()).collect();
    all.sort_by(f32::total_cmp);
    all
}

/// Columns of numbers, then those of words between them.
fn columns(tokens: &[Token], in_rows: &[(usize, usize)], places: &[Place], rows: usize) -> Vec<Span> {
    let fewest = if rows < SEVERAL { 1 } else { ((rows as f32 * ENOUGH).ceil() as usize).max(2) };
    let of = |is_number: bool, blocked: &[Span]| -> Vec<(Span, usize)> {
        let found: Vec<(usize, &Place)> = in_rows
            .iter()
            .filter(|(at, _)| tokens[*at].is_number() == is_number)
            .map(|(at, row)| (*row, &places[*at]))
            .filter(|(_, it)| blocked.iter().all(|span| it.middle() < span.from || it.middle() > span.to))
            .collect();
        let span = |group: &Vec<(usize, &Place)>| {
            let edge =
                |of: fn(&Place) -> f32| median(&group.iter().map(|(_, it)| of(it)).collect::<Vec<_>>());
            (Span { from: edge(|it| it.from), to: edge(|it| it.to), is_number }, group.len())
        };
        side_by_side(found).iter().map(span).filter(|(_, count)| *count >= fewest).collect()
    };
    let numbers = of(true, &[]);
    let spans: Vec<Span> = numbers.iter().map(|(span, _)| span.clone()).collect();
    let words = of(false, &spans);
    // A number in a column of words is one of them: a club may be called 7.
    let is_among = |span: &Span, count: usize| {
        let middle = (span.from + span.to) / 2.0;
        words.iter().any(|(it, of)| it.from < middle && middle < it.to && count < *of)
    };
    let mut all: Vec<Span> = numbers
        .iter()
        .filter(|(span, count)| !is_among(span, *count))
        .chain(&words)
        .map(|(span, _)| span.clone())
        .collect();
    all.sort_by(|one, other| (one.from + one.to).total_cmp(&(other.from + other.to)));
    all
}

/// Texts that stand below each other, by their rows. Where many rows have two in one group, a box over both holds it together:
/// the widest goes, until it falls apart.
fn side_by_side(mut found: Vec<(usize, &Place)>) -> Vec<Vec<(usize, &Place)>> {
    const MIDDLE: f32 = 0.15;
    let inner = |it: &Place| {
        let margin = MIDDLE * (it.to - it.from);
        (it.from + margin, it.to - margin)
    };
    found.sort_by(|one, other| inner(one.1).0.total_cmp(&inner(other.1).0));
    let mut groups: Vec<Vec<(usize, &Place)>> = Vec::new();
    let mut end = f32::MIN;
    for (row, place) in found {
        let (from, to) = inner(place);
        match groups.last_mut() {
            Some(group) if from <= end => {
                group.push((row, place));
                end = end.max(to);
            }
            _ => {
                groups.push(vec![(row, place)]);
                end = to;
            }
        }
    }
    let is_several = |group: &Vec<(usize, &Place)>| {
        let mut rows: Vec<usize> = group.iter().map(|it| it.0).collect();
        rows.sort_unstable();
        rows.dedup();
        group.len() > 2 && (group.len() - rows.len()) as f32 >= ENOUGH * rows.len() as f32
    };
    let mut apart = Vec::new();
    for mut group in groups {
        if is_several(&group) {
            let width = |it: &(usize, &Place)| it.1.to - it.1.from;
            group.sort_by(|one, other| width(one).total_cmp(&width(other)));
            group.pop();
            apart.extend(side_by_side(group));
        } else {
            apart.push(group);
        }
    }
    apart
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quad::Quad;
    use crate::recognize::Line;

    /// Texts on a page of fixed letters: each with its line and its place in it.
    fn tokens(texts: &[(f32, f32, &str)]) -> Vec<Token> {
        let token = |(line, place, text): &(f32, f32, &str)| {
            let (x, y, count) = (place * 10.0, line * 24.0, text.chars().count());
            let to = x + 10.0 * count as f32;
            let places = (0..count).map(|at| (at as f32 + 0.5) / count as f32).collect();
            let line = Line { text: (*text).into(), sure: 1.0, places };
            Token { line, quad: Quad([[x, y], [to, y], [to, y + 16.0], [x, y + 16.0]]), is_cut: false }
        };
        texts.iter().map(token).collect()
    }

    #[test]
    fn a_table_with_headings_clubs_and_an_average_is_put_together() {
        let mut texts = vec![(0.0, 0.0, "Session of Tuesday"), (2.0, 0.0, "#"), (2.0, 5.0, "Club")];
        texts.extend([(2.0, 20.0, "Carry (yd) Spin rate"), (3.0, 33.0, "rpm")]);
        for row in 0..6_u8 {
            let y = 4.0 + f32::from(row);
            texts.extend([(y, 0.0, "1"), (y, 5.0, "7 iron"), (y, 25.0, "231.4"), (y, 34.0, "2345")]);
        }
        texts.extend([(10.0, 0.0, "Average"), (10.0, 25.0, "229.9"), (10.0, 34.0, "2345")]);
        texts.push((12.0, 0.0, "Six shots"));
        let tokens = tokens(&texts);
        let layout = layout(&tokens).unwrap();
        assert_eq!((layout.rows.len(), layout.columns.len()), (7, 4));
        assert_eq!(layout.headings, ["#", "Club", "Carry (yd)", "Spin rate (rpm)"]);
        let row = |row: usize| -> Vec<&str> {
            (0..4).map(|column| layout.cell(row, column).map_or("", |at| tokens[at].text())).collect()
        };
        assert_eq!(row(0), ["1", "7 iron", "231.4", "2345"]);
        assert_eq!(row(6), ["Average", "", "229.9", "2345"]);
        assert_eq!(
            (layout.above, layout.below),
            (vec!["Session of Tuesday".into()], vec!["Six shots".into()])
        );
    }

    #[test]
    fn a_box_over_two_columns_does_not_make_them_one() {
        let mut texts = vec![(0.0, 0.0, "12.36609")];
        for row in 1..9_u8 {
            texts.extend([(f32::from(row), 0.0, "12.3"), (f32::from(row), 5.0, "6609")]);
        }
        let tokens = tokens(&texts);
        let layout = layout(&tokens).unwrap();
        assert_eq!((layout.rows.len(), layout.columns.len()), (9, 2));
        assert_eq!((layout.cell(0, 0), layout.cell(0, 1)), (None, None), "holes, to be read again");
        assert!((1..9).all(|row| layout.cell(row, 1).is_some()));
    }

    #[test]
    fn a_row_that_was_overlooked_has_its_place_and_two_that_hang_together_fall_apart() {
        let rows_of = |left_away: &dyn Fn(u8) -> bool, moved: f32| {
            let mut texts = Vec::new();
            for row in (0..12_u8).filter(|it| !left_away(*it)) {
                let y = f32::from(row);
                texts.extend([(y, 0.0, "231.4"), (y, 9.0, "2345"), (y, 18.0, "12.5"), (y, 27.0, "88")]);
            }
            // Boxes that reach from one row to the next.
            texts.extend((0..4_u8).map(|at| (4.1 + moved * f32::from(at), 36.0 + 0.1 * f32::from(at), "7")));
            layout(&tokens(&texts)).unwrap().rows
        };
        assert_eq!(rows_of(&|row| row == 7, 1.0).len(), 12, "one is missing");
        assert_eq!(rows_of(&|_| false, 0.26).len(), 12, "two hang together");
        assert_eq!(rows_of(&|row| row == 7 || row == 8, 1.0).len(), 10, "a wider gap is one that was meant");
    }

    #[test]
    fn a_name_in_two_boxes_is_one() {
        let mut texts = Vec::new();
        for row in 0..6_u8 {
            let y = f32::from(row);
            texts.extend([(y, 0.0, if row == 3 { "Wood" } else { "Wood five" }), (y, 20.0, "231.4")]);
        }
        texts.push((3.0, 4.6, "five"));
        let tokens = tokens(&texts);
        let layout = layout(&tokens).unwrap();
        let also: Vec<_> = layout.also.iter().map(|it| (tokens[it.0].text(), it.1, it.2)).collect();
        assert_eq!(also, [("five", 3, 0)]);
    }

    #[test]
    fn words_alone_are_no_table() {
        assert!(layout(&tokens(&[(0.0, 0.0, "Hello"), (1.0, 0.0, "there")])).is_none());
    }
}

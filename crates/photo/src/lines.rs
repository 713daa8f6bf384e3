//! Rows and columns of a table that was photographed at an angle: lines that meet far away.

use crate::quad::{Point, less, sum};

/// How rows and columns run. A row is where `y` is the same, a column where `x` is.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Frame {
    origin: Point,
    /// How rows fall from left to right: in the middle, and how that changes from row to row.
    fall: (f32, f32),
    /// How columns lean from top to bottom.
    lean: (f32, f32),
}

impl Frame {
    /// Of the centers of numbers, their left and right edges, and their heights.
    pub(crate) fn of(centers: &[Point], edges: &[Point], heights: &[f32], slope: f32) -> Self {
        const FEWEST_FOR_ROWS: usize = 6;
        const FEWEST_FOR_COLUMNS: usize = 12;
        let count = centers.len().max(1) as f32;
        let total = centers.iter().fold([0.0, 0.0], |total, it| sum(total, *it));
        let origin = [total[0] / count, total[1] / count];
        let height = median(heights);
        let from = |points: &[Point], axis: usize| -> Vec<f32> {
            points.iter().map(|it| less(*it, origin)[axis]).collect()
        };
        let (x, y) = (from(centers, 0), from(centers, 1));
        let fall =
            if centers.len() >= FEWEST_FOR_ROWS { converging(&x, &y, height, slope) } else { (slope, 0.0) };
        let frame = Self { origin, fall, lean: (-fall.0, 0.0) };
        let mut rows: Vec<f32> = centers.iter().map(|it| frame.y(*it)).collect();
        let rows = groups(&mut rows, 0.45 * height);
        if centers.len() < FEWEST_FOR_COLUMNS || rows < 4 {
            return frame;
        }
        let all: Vec<Point> = edges.iter().chain(centers).copied().collect();
        Self { lean: converging(&from(&all, 1), &from(&all, 0), height, frame.lean.0), ..frame }
    }

    /// Which row a point stands in.
    pub(crate) fn y(&self, point: Point) -> f32 {
        let [x, y] = less(point, self.origin);
        (y - self.fall.0 * x) / (1.0 + self.fall.1 * x)
    }

    /// Which column.
    pub(crate) fn x(&self, point: Point) -> f32 {
        let [x, y] = less(point, self.origin);
        (x - self.lean.0 * y) / (1.0 + self.lean.1 * y)
    }

    /// The point of the picture that stands in a row and a column.
    pub(crate) fn point(&self, x: f32, y: f32) -> Point {
        let fall = self.fall.0 + y * self.fall.1;
        let lean = self.lean.0 + x * self.lean.1;
        let across = (x + y * lean) / (1.0 - fall * lean);
        sum(self.origin, [across, y + across * fall])
    }
}

pub(crate) fn median(values: &[f32]) -> f32 {
    let mut sorted = values.to_vec();
    sorted.sort_by(f32::total_cmp);
    sorted.get(sorted.len() / 2).copied().unwrap_or(0.0)
}

/// How many groups values make that stand farther apart than `gap`.
fn groups(values: &mut [f32], gap: f32) -> usize {
    values.sort_by(f32::total_cmp);
    1 + values.windows(2).filter(|it| it[1] - it[0] > gap).count()
}

/// Which group each value belongs to, and how many there are.
pub(crate) fn grouped(values: &[f32], gap: f32) -> (Vec<usize>, usize) {
    let mut order: Vec<usize> = (0..values.len()).collect();
    order.sort_by(|one, other| values[*one].total_cmp(&values[*other]));
    let mut of = vec![0; values.len()];
    let mut group = 0;
    for (before, at) in order.iter().zip(order.iter().skip(1)) {
        if values[*at] - values[*before] > gap {
            group += 1;
        }
        of[*at] = group;
    }
    (of, group + 1)
}

/// Finds `a` and `b` so that the lines `across = c + (a + b c) along` are those of the table: the `c` pile up.
/// One column alone shows nothing of how its rows run: then they run as its texts do, by `start`.
fn converging(along: &[f32], across: &[f32], height: f32, start: f32) -> (f32, f32) {
    let bin = (height * 0.25).max(2.0);
    let (low, high) =
        along.iter().fold((f32::MAX, f32::MIN), |(low, high), it| (low.min(*it), high.max(*it)));
    let reach = (high - low).max(1.0);
    let score = |a: f32, b: f32| {
        const MOST_BINS: usize = 4000;
        let places: Vec<f32> = along
            .iter()
            .zip(across)
            .map(|(along, across)| (across - a * along) / (1.0 + b * along))
            .collect();
        let (first, end) =
            places.iter().fold((f32::MAX, f32::MIN), |(low, high), it| (low.min(*it), high.max(*it)));
        let bin_of = |place: f32| (((place - first) / bin) as usize).min(MOST_BINS);
        let last = bin_of(end);
        let mut counts = vec![0_u32; last + 2];
        places.into_iter().for_each(|place| counts[bin_of(place)] += 1);
        let pairs = counts[..=last].iter().zip(&counts[1..]);
        pairs.map(|(one, next)| u64::from(one + next).pow(2)).sum::<u64>()
    };
    let steps =
        |count: i16, width: f32| (-count..=count).map(move |it| f32::from(it) * width / f32::from(count));
    let mut best = (score(start, 0.0), start, 0.0);
    let mut search = |around: (f32, f32), a_steps: (i16, f32), b_steps: (i16, f32)| {
        for a in steps(a_steps.0, a_steps.1) {
            for b in steps(b_steps.0, b_steps.1) {
                let (a, b) = (around.0 + a, around.1 + b / reach);
                let score = score(a, b);
                if score > best.0 {
                    best = (score, a, b);
                }
            }
        }
        (best.1, best.2)
    };
    let rough = search((0.0, 0.0), (30, 0.3), (7, 0.35));
    search(rough, (6, 0.012), (6, 0.06))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_seen_at_an_angle_stands_straight_again() {
        let seen = |row: f32, column: f32| {
            let (x, y) = (column * 90.0 - 300.0, row * 30.0 - 150.0);
            let depth = 1.0 + 0.0002 * x + 0.0003 * y;
            [(x + 0.06 * y) / depth + 900.0, (y - 0.08 * x) / depth + 600.0]
        };
        let places: Vec<(u16, u16)> =
            (0..10).flat_map(|row| (0..7).map(move |column| (row, column))).collect();
        let at = |(row, column): &(u16, u16)| seen(f32::from(*row), f32::from(*column));
        let centers: Vec<Point> = places.iter().map(at).collect();
        let frame = Frame::of(&centers, &centers, &vec![14.0; centers.len()], 0.0);
        let (rows, count) = grouped(&centers.iter().map(|it| frame.y(*it)).collect::<Vec<_>>(), 6.0);
        assert_eq!(count, 10);
        assert!(places.iter().zip(rows).all(|((row, _), found)| usize::from(*row) == found));
        let (columns, count) = grouped(&centers.iter().map(|it| frame.x(*it)).collect::<Vec<_>>(), 20.0);
        assert_eq!(count, 7);
        assert!(places.iter().zip(columns).all(|((_, column), found)| usize::from(*column) == found));
        let there = frame.point(frame.x(centers[23]), frame.y(centers[23]));
        assert!((there[0] - centers[23][0]).abs() < 0.5 && (there[1] - centers[23][1]).abs() < 0.5);
    }
}

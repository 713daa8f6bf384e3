//! Which numbers of a table speak against themselves: by their column, or by the column beside them.

use crate::number::Number;

/// Columns with fewer numbers have no line to be out of.
const FEWEST: usize = 4;
/// How far a number may be from the middle of its column, in standard deviations as the middle half shows them.
const FARTHEST: f64 = 4.5;
/// Makes the middle of the distances a standard deviation.
const OF_NORMAL: f64 = 1.4826;

/// The places of numbers of one column that are out of line: in form, in decimals, in size, without the letter of a side.
pub(crate) fn out_of_line(column: &[&Number]) -> Vec<usize> {
    let values: Vec<Option<f64>> = column.iter().map(|it| it.value()).collect();
    let mut bad: Vec<bool> = values.iter().map(Option::is_none).collect();
    let fine: Vec<usize> = (0..column.len()).filter(|at| !bad[*at]).collect();
    if fine.len() >= FEWEST {
        let decimals = most_common(&fine.iter().map(|at| column[*at].decimals()).collect::<Vec<_>>());
        let known: Vec<f64> = fine.iter().filter_map(|at| values[*at]).collect();
        let middle = median(&known);
        let spread = OF_NORMAL * median(&known.iter().map(|it| (it - middle).abs()).collect::<Vec<_>>());
        let step = 10_f64.powi(-i32::try_from(decimals).unwrap_or(0));
        let limit = (FARTHEST * spread).max(0.02 * middle.abs()).max(3.0 * step);
        let share = |is: &dyn Fn(&Number) -> bool| fine.iter().filter(|at| is(column[**at])).count();
        let has_sides = 2 * share(&|it| it.side.is_some()) > fine.len();
        let has_plus = share(&|it| it.sign == Some('+')) > 1;
        for at in fine {
            let (number, value) = (column[at], values[at].unwrap_or(0.0));
            let is_zero = value.abs() < step / 2.0;
            bad[at] = number.decimals() != decimals
                || (value - middle).abs() > limit
                || (has_sides && number.side.is_none() && !is_zero)
                || (has_plus && number.sign.is_none() && !is_zero);
        }
    }
    (0..column.len()).filter(|at| bad[*at]).collect()
}

/// The rows in which one column does not fit the other, which goes with it in all others.
pub(crate) fn against_another(one: &[Option<f64>], other: &[Option<f64>]) -> Vec<usize> {
    const FEWEST_PAIRS: usize = 8;
    const CLOSE: f64 = 0.03;
    let pairs: Vec<(usize, f64, f64)> = one
        .iter()
        .zip(other)
        .enumerate()
        .filter_map(|(row, (one, other))| Some((row, (*one)?, (*other)?)))
        .filter(|(_, one, other)| *one > 0.0 && *other > 0.0)
        .collect();
    if pairs.len() < FEWEST_PAIRS {
        return Vec::new();
    }
    let ratios: Vec<f64> = pairs.iter().map(|(_, one, other)| one / other).collect();
    let middle = median(&ratios);
    let distances: Vec<f64> = ratios.iter().map(|it| (it / middle - 1.0).abs()).collect();
    let spread = OF_NORMAL * median(&distances);
    let goes_along = spread < CLOSE;
    let limit = (6.0 * spread).max(CLOSE);
    // Neighbors of like size of which one is never the larger.
    let above = ratios.iter().filter(|it| **it > 1.0).count();
    let is_ordered = (0.77..1.3).contains(&middle) && above.min(pairs.len() - above) * 10 <= pairs.len();
    let is_out = |at: usize| {
        let breaks_order =
            is_ordered && (ratios[at] > 1.0) != (2 * above > pairs.len()) && distances[at] > 0.005;
        breaks_order || (goes_along && distances[at] > limit)
    };
    (0..pairs.len()).filter(|at| is_out(*at)).map(|at| pairs[at].0).collect()
}

/// Whether numbers count the rows: each one more for each row, or one again.
pub(crate) fn counts_rows(column: &[Option<f64>]) -> bool {
    let known: Vec<(f64, f64)> =
        column.iter().enumerate().filter_map(|(row, it)| Some((row as f64, (*it)?))).collect();
    let is_whole = known.iter().all(|(_, it)| it.fract().abs() < 1e-9 && *it >= 0.0);
    let goes_on = |it: &[(f64, f64)]| {
        (it[1].1 - it[0].1 - (it[1].0 - it[0].0)).abs() < 1e-9 || (it[1].1 - 1.0).abs() < 1e-9
    };
    let follows = known.windows(2).filter(|it| goes_on(it)).count();
    known.len() >= FEWEST && is_whole && follows * 10 >= (known.len() - 1) * 9
}

fn median(values: &[f64]) -> f64 {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let half = sorted.len() / 2;
    match sorted.len() {
        0 => 0.0,
        n if n % 2 == 1 => sorted[half],
        _ => f64::midpoint(sorted[half - 1], sorted[half]),
    }
}

fn most_common(values: &[usize]) -> usize {
    let count = |it: usize| values.iter().filter(|other| **other == it).count();
    values.iter().copied().max_by_key(|it| (count(*it), *it)).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::number::number;

    fn out(texts: &[&str]) -> Vec<usize> {
        let numbers: Vec<Number> = texts.iter().map(|it| number(it).unwrap()).collect();
        out_of_line(&numbers.iter().collect::<Vec<_>>())
    }

    #[test]
    fn numbers_out_of_line_are_found() {
        assert_eq!(out(&["231.4", "229.8", "2301", "235.0", "233.3"]), [2]);
        assert_eq!(out(&["231.4", "229.8", "29.1", "235.0", "233.3"]), [2]);
        assert_eq!(out(&["4.2 L", "3.1 R", "7.7", "0.0", "2.2 R"]), [2]);
        assert_eq!(out(&["+4.2", "+3.1", "-1.7", "2.2", "+2.2"]), [3]);
        assert_eq!(out(&["2,345", "2,367", "2367", "2,301", "2.344"]), Vec::<usize>::new());
        assert_eq!(out(&["1.2.3.4", "2"]), [0]);
    }

    #[test]
    fn columns_that_go_together_speak_against_what_does_not() {
        let total: Vec<Option<f64>> = (0..12_u8).map(|it| Some(240.0 + f64::from(it))).collect();
        let mut carry: Vec<Option<f64>> = total.iter().map(|it| it.map(|it| it - 12.0)).collect();
        carry[4] = Some(264.0);
        carry[7] = None;
        assert_eq!(against_another(&carry, &total), [4]);
        let spin: Vec<Option<f64>> =
            (0..12_u8).map(|it| Some(2300.0 + 97.0 * f64::from(it * it % 11))).collect();
        assert_eq!(against_another(&spin, &total), Vec::<usize>::new());
    }

    #[test]
    fn what_counts_rows_is_known() {
        let column = |values: &[f64]| values.iter().map(|it| Some(*it)).collect::<Vec<_>>();
        assert!(counts_rows(&column(&[1.0, 2.0, 3.0, 1.0, 2.0, 3.0, 4.0])));
        assert!(!counts_rows(&column(&[231.0, 232.0, 230.0, 229.0, 231.0])));
        assert!(!counts_rows(&column(&[1.0, 2.0])));
        let mut gaps = column(&[1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0]);
        (gaps[3], gaps[5]) = (None, None);
        assert!(counts_rows(&gaps));
    }
}

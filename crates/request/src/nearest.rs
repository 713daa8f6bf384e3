//! The known name that a misspelt one is nearest to.

/// Names longer than this are no field misspelt.
const LONGEST: usize = 64;

/// The nearest of the known names, if any is near enough to be meant: letters that must be put in, taken out, changed or
/// swapped with their neighbor, at most a third of the longer name.
pub(crate) fn nearest<'a>(name: &str, known: &[&'a str]) -> Option<&'a str> {
    if name.len() > LONGEST {
        return None;
    }
    let near =
        known.iter().map(|&there| (distance(name, there), there)).min_by_key(|&(distance, _)| distance);
    near.filter(|&(distance, there)| 3 * distance <= name.chars().count().max(there.chars().count()))
        .map(|(_, there)| there)
}

/// Optimal string alignment, row by row.
fn distance(one: &str, other: &str) -> usize {
    let one: Vec<char> = one.chars().flat_map(char::to_lowercase).collect();
    let other: Vec<char> = other.chars().flat_map(char::to_lowercase).collect();
    let mut before_last: Vec<usize> = Vec::new();
    let mut last: Vec<usize> = (0..=other.len()).collect();
    for (i, a) in one.iter().enumerate() {
        let mut row = vec![i + 1];
        for (j, b) in other.iter().enumerate() {
            let changed = last[j] + usize::from(a != b);
            let mut least = changed.min(last[j + 1] + 1).min(row[j] + 1);
            if i > 0 && j > 0 && *a == other[j - 1] && one[i - 1] == *b {
                least = least.min(before_last[j - 1] + 1);
            }
            row.push(least);
        }
        before_last = std::mem::replace(&mut last, row);
    }
    last[other.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    const FIELDS: [&str; 5] = ["baseline", "candidate", "margin", "first_margin", "wind_helping_mph"];

    #[test]
    fn a_slip_finds_the_name_that_was_meant() {
        for (slip, meant) in [
            ("margn", "margin"),
            ("Margin", "margin"),
            ("mragin", "margin"),
            ("basline", "baseline"),
            ("firstMargin", "first_margin"),
            ("wind_helpng_mph", "wind_helping_mph"),
        ] {
            assert_eq!(nearest(slip, &FIELDS), Some(meant), "{slip}");
        }
    }

    #[test]
    fn what_is_far_from_every_name_is_near_none() {
        for far in ["x", "shots", "", "weather", &"margin".repeat(1000)] {
            assert_eq!(nearest(far, &FIELDS), None, "{far}");
        }
        assert_eq!(nearest("margin", &[]), None);
    }
}

//! Putting things in order, compiled once.
//!
//! The standard library's sort is compiled anew for every type and every key: three to five kilobytes of
//! the page each time, thirty times over. Here one copy sorts positions, whatever stands at them. It costs
//! a call for each comparison, which only the sorting of plain numbers would feel: that keeps its own copy.

use std::cmp::Ordering;

/// The positions from 0 to below `n` in the order that `compare` says; equal ones stay as they were.
#[must_use]
pub fn positions(n: usize, compare: &dyn Fn(usize, usize) -> Ordering) -> Vec<usize> {
    let mut order: Vec<usize> = (0..n).collect();
    order.sort_by(|&one, &other| compare(one, other));
    order
}

/// Puts items in the order that `compare` says; equal ones stay as they were.
pub fn sort_by<T>(items: &mut Vec<T>, compare: impl Fn(&T, &T) -> Ordering) {
    let order = positions(items.len(), &|one, other| compare(&items[one], &items[other]));
    let mut taken: Vec<Option<T>> = items.drain(..).map(Some).collect();
    items.extend(order.into_iter().filter_map(|at| taken[at].take()));
}

/// Puts items in ascending order of a key; equal ones stay as they were.
pub fn sort_by_key<T, K: Ord>(items: &mut Vec<T>, key: impl Fn(&T) -> K) {
    sort_by(items, |one, other| key(one).cmp(&key(other)));
}

/// Puts items in ascending order.
pub fn sort<T: Ord>(items: &mut Vec<T>) {
    sort_by(items, T::cmp);
}

/// The different ones among some items, in ascending order.
#[must_use]
pub fn distinct<T: Ord>(items: impl IntoIterator<Item = T>) -> Vec<T> {
    let mut items: Vec<T> = items.into_iter().collect();
    sort(&mut items);
    items.dedup();
    items
}

/// Puts numbers in ascending order, by the total order of IEEE 754: −0 before 0, NaN at the ends.
pub fn sort_numbers(numbers: &mut [f64]) {
    numbers.sort_unstable_by(f64::total_cmp);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_items_stay_as_they_were() {
        let mut items = vec![(2, 'a'), (1, 'b'), (2, 'c'), (1, 'd')];
        sort_by_key(&mut items, |item| item.0);
        assert_eq!(items, [(1, 'b'), (1, 'd'), (2, 'a'), (2, 'c')]);
    }

    #[test]
    fn distinct_items_come_once_and_in_order() {
        assert_eq!(distinct(["b", "a", "b"]), ["a", "b"]);
        assert_eq!(distinct(Vec::<u32>::new()), []);
    }

    #[test]
    fn positions_name_the_order_and_leave_the_items() {
        let items = [30, 10, 20];
        assert_eq!(positions(3, &|a, b| items[a].cmp(&items[b])), [1, 2, 0]);
    }
}

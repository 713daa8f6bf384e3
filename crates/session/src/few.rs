//! A set and a map for a few keys, kept in ascending order in a list.
//!
//! They answer as the standard library's B-trees do and are a tenth as large once compiled, which is done
//! anew for each type of key and value. Putting in a key that is not the last moves those behind it: not
//! for keys by the ten thousand.

use serde::de::{Deserialize, Deserializer, MapAccess, Visitor};
use serde::ser::{Serialize, Serializer};
use std::borrow::Borrow;
use std::marker::PhantomData;

/// A few different things, in ascending order.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Set<T>(Vec<T>);

impl<T> Default for Set<T> {
    fn default() -> Self {
        Self(Vec::new())
    }
}

impl<T: Ord> Set<T> {
    /// Puts one in; whether it is new.
    pub fn insert(&mut self, item: T) -> bool {
        match self.0.binary_search(&item) {
            Ok(_) => false,
            Err(at) => {
                self.0.insert(at, item);
                true
            }
        }
    }

    /// Whether it is there.
    pub fn contains<Q: Ord + ?Sized>(&self, item: &Q) -> bool
    where
        T: Borrow<Q>,
    {
        self.0.binary_search_by(|there| there.borrow().cmp(item)).is_ok()
    }

    /// How many there are.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Takes all out.
    pub fn clear(&mut self) {
        self.0.clear();
    }

    /// In ascending order.
    pub fn iter(&self) -> std::slice::Iter<'_, T> {
        self.0.iter()
    }
}

impl<T: Ord> FromIterator<T> for Set<T> {
    fn from_iter<I: IntoIterator<Item = T>>(items: I) -> Self {
        Self(arrange::distinct(items))
    }
}

impl<T: Ord> Extend<T> for Set<T> {
    fn extend<I: IntoIterator<Item = T>>(&mut self, items: I) {
        items.into_iter().for_each(|item| _ = self.insert(item));
    }
}

impl<T> IntoIterator for Set<T> {
    type Item = T;
    type IntoIter = std::vec::IntoIter<T>;

    fn into_iter(self) -> Self::IntoIter {
        self.0.into_iter()
    }
}

/// A few keys with their values, in ascending order of the keys.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Map<K, V>(Vec<(K, V)>);

impl<K, V> Default for Map<K, V> {
    fn default() -> Self {
        Self(Vec::new())
    }
}

impl<K: Ord, V> Map<K, V> {
    fn find<Q: Ord + ?Sized>(&self, key: &Q) -> Result<usize, usize>
    where
        K: Borrow<Q>,
    {
        self.0.binary_search_by(|(there, _)| there.borrow().cmp(key))
    }

    /// The value of a key.
    pub fn get<Q: Ord + ?Sized>(&self, key: &Q) -> Option<&V>
    where
        K: Borrow<Q>,
    {
        self.find(key).ok().map(|at| &self.0[at].1)
    }

    /// Whether there is such a key.
    pub fn contains_key<Q: Ord + ?Sized>(&self, key: &Q) -> bool
    where
        K: Borrow<Q>,
    {
        self.find(key).is_ok()
    }

    /// Gives a key its value; the value it had before is gone.
    pub fn insert(&mut self, key: K, value: V) {
        match self.find(&key) {
            Ok(at) => self.0[at].1 = value,
            Err(at) => self.0.insert(at, (key, value)),
        }
    }

    /// The value of a key, made on the spot when it has none.
    pub fn entry(&mut self, key: K, make: impl FnOnce() -> V) -> &mut V {
        let at = match self.find(&key) {
            Ok(at) => at,
            Err(at) => {
                self.0.insert(at, (key, make()));
                at
            }
        };
        &mut self.0[at].1
    }

    /// Takes a key and its value out.
    pub fn remove<Q: Ord + ?Sized>(&mut self, key: &Q) -> Option<V>
    where
        K: Borrow<Q>,
    {
        self.find(key).ok().map(|at| self.0.remove(at).1)
    }

    /// Keeps what `keep` says yes to.
    pub fn retain(&mut self, keep: impl Fn(&K, &V) -> bool) {
        self.0.retain(|(key, value)| keep(key, value));
    }
}

impl<K, V> Map<K, V> {
    /// Keys with their values, in ascending order.
    pub fn iter(&self) -> impl Iterator<Item = (&K, &V)> {
        self.0.iter().map(|(key, value)| (key, value))
    }

    /// Keys in ascending order.
    pub fn keys(&self) -> impl Iterator<Item = &K> {
        self.0.iter().map(|(key, _)| key)
    }

    /// Values in the order of their keys.
    pub fn values(&self) -> impl Iterator<Item = &V> {
        self.0.iter().map(|(_, value)| value)
    }

    /// Values in the order of their keys.
    pub fn into_values(self) -> impl Iterator<Item = V> {
        self.0.into_iter().map(|(_, value)| value)
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

impl<K: Ord, V> FromIterator<(K, V)> for Map<K, V> {
    fn from_iter<I: IntoIterator<Item = (K, V)>>(pairs: I) -> Self {
        let mut map = Self::default();
        pairs.into_iter().for_each(|(key, value)| map.insert(key, value));
        map
    }
}

impl<K: Ord, V, const N: usize> From<[(K, V); N]> for Map<K, V> {
    fn from(pairs: [(K, V); N]) -> Self {
        pairs.into_iter().collect()
    }
}

impl<K: Serialize, V: Serialize> Serialize for Map<K, V> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(key, value)| (key, value)))
    }
}

impl<'de, K: Deserialize<'de> + Ord, V: Deserialize<'de>> Deserialize<'de> for Map<K, V> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_map(MapVisitor(PhantomData))
    }
}

struct MapVisitor<K, V>(PhantomData<(K, V)>);

impl<'de, K: Deserialize<'de> + Ord, V: Deserialize<'de>> Visitor<'de> for MapVisitor<K, V> {
    type Value = Map<K, V>;

    fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("a map")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut pairs: A) -> Result<Self::Value, A::Error> {
        let mut map = Map::default();
        while let Some((key, value)) = pairs.next_entry()? {
            map.insert(key, value);
        }
        Ok(map)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::{BTreeMap, BTreeSet};

    const ITEMS: [u32; 9] = [5, 1, 4, 1, 5, 9, 2, 6, 5];

    #[test]
    fn the_set_answers_as_a_tree_does() {
        let (mut set, mut tree) = (Set::default(), BTreeSet::new());
        for item in ITEMS {
            assert_eq!(set.insert(item), tree.insert(item));
        }
        assert!(set.iter().eq(tree.iter()));
        assert_eq!(set, ITEMS.into_iter().collect());
        assert!(set.contains(&9) && !set.contains(&7));
        assert_eq!((set.len(), set.is_empty()), (6, false));
    }

    #[test]
    fn the_map_answers_as_a_tree_does() {
        let (mut map, mut tree) = (Map::default(), BTreeMap::new());
        for item in ITEMS {
            *map.entry(item, || 0) += 1;
            *tree.entry(item).or_insert(0) += 1;
        }
        assert!(map.values().eq(tree.values()));
        assert!(map.into_values().eq(tree.into_values()));
    }
}

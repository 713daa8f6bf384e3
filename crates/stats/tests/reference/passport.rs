//! The one way from a reference file to a test: a case without a passport, or with a value nobody compares, fails.

use serde_json::Value;
use std::cell::RefCell;
use std::collections::BTreeSet;
use std::path::PathBuf;

/// A check value with its source, how it was computed, and how exact it is.
pub(crate) struct Case {
    pub(crate) id: String,
    pub(crate) input: Value,
    expected: Value,
    tolerance: Value,
    compared: RefCell<BTreeSet<String>>,
}

/// All cases of a file under tests/reference/stats; `visit` must compare every expected value.
pub(crate) fn each_case(file: &str, visit: impl FnMut(&Case)) {
    each_case_where(file, |_| true, visit);
}

/// The cases of a file that `choose` takes; the others belong to another test.
pub(crate) fn each_case_where(file: &str, choose: impl Fn(&Case) -> bool, mut visit: impl FnMut(&Case)) {
    let path: PathBuf = [env!("CARGO_MANIFEST_DIR"), "../../tests/reference/stats", file].iter().collect();
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let file: Value = serde_json::from_str(&text).unwrap();
    let cases = file["cases"].as_array().expect("a file of cases");
    assert!(!cases.is_empty(), "{} holds no cases", path.display());
    for case in cases {
        let case = admitted(case).unwrap_or_else(|missing| panic!("{}: {missing}", path.display()));
        if choose(&case) {
            visit(&case);
            case.assert_all_compared();
        }
    }
}

/// A case is admitted only with where it is from, how it was made, and what kind of value it is.
pub(crate) fn admitted(case: &Value) -> Result<Case, String> {
    let id = case["id"].as_str().ok_or("a case without an id")?;
    for field in ["source", "how", "kind"] {
        if case[field].as_str().is_none_or(str::is_empty) {
            return Err(format!("case {id} has no {field}"));
        }
    }
    for field in ["input", "expected", "tolerance"] {
        if case[field].as_object().is_none_or(serde_json::Map::is_empty) {
            return Err(format!("case {id} has no {field}"));
        }
    }
    Ok(Case {
        id: id.to_owned(),
        input: case["input"].clone(),
        expected: case["expected"].clone(),
        tolerance: case["tolerance"].clone(),
        compared: RefCell::default(),
    })
}

impl Case {
    pub(crate) fn number(&self, key: &str) -> f64 {
        self.input[key].as_f64().unwrap_or_else(|| panic!("{}: no number {key}", self.id))
    }

    pub(crate) fn count(&self, key: &str) -> usize {
        usize::try_from(self.input[key].as_u64().expect("a count")).unwrap()
    }

    pub(crate) fn numbers(&self, key: &str) -> Vec<f64> {
        numbers(&self.input[key])
    }

    pub(crate) fn has(&self, key: &str) -> bool {
        !self.input[key].is_null()
    }

    pub(crate) fn expects(&self, key: &str) -> bool {
        self.expected.get(key).is_some()
    }

    /// An expected value, which the caller now compares; `key` may be a path such as "block_fixed/diff".
    pub(crate) fn expected(&self, key: &str) -> &Value {
        self.compared.borrow_mut().insert(key.to_owned());
        let value = key.split('/').try_fold(&self.expected, |value, part| value.get(part));
        value.unwrap_or_else(|| panic!("{}: nothing expected for {key}", self.id))
    }

    pub(crate) fn tolerance(&self, key: &str) -> f64 {
        let value = &self.tolerance[key];
        value.as_f64().unwrap_or_else(|| panic!("{}: no tolerance {key}", self.id))
    }

    pub(crate) fn states(&self, tolerance: &str) -> bool {
        self.tolerance[tolerance].is_number()
    }

    /// Compares unrounded, relative to the expected value, with the tolerance of that name.
    pub(crate) fn close(&self, key: &str, actual: f64, tolerance: &str) {
        let expected =
            self.expected(key).as_f64().unwrap_or_else(|| panic!("{}: {key} is no number", self.id));
        let allowed =
            self.tolerance(tolerance) * if tolerance.ends_with("abs") { 1.0 } else { expected.abs() };
        self.within(key, actual, expected, allowed);
    }

    pub(crate) fn all_close(&self, key: &str, actual: &[f64], tolerance: &str) {
        let expected = numbers(self.expected(key));
        assert_eq!(expected.len(), actual.len(), "{}: {key}", self.id);
        for (&actual, expected) in actual.iter().zip(expected) {
            let allowed =
                self.tolerance(tolerance) * if tolerance.ends_with("abs") { 1.0 } else { expected.abs() };
            self.within(key, actual, expected, allowed);
        }
    }

    pub(crate) fn within(&self, key: &str, actual: f64, expected: f64, allowed: f64) {
        let error = (actual - expected).abs();
        assert!(
            error <= allowed,
            "{}: {key} is {actual:e}, expected {expected:e}, off by {error:e}, allowed {allowed:e}",
            self.id
        );
    }

    pub(crate) fn exactly(&self, key: &str, actual: u64) {
        let expected = self.expected(key).as_f64().expect("a count");
        assert_eq!(expected, actual as f64, "{}: {key}", self.id);
    }

    /// `null` in the file means the quantity is undefined.
    pub(crate) fn maybe_close(&self, key: &str, actual: Option<f64>, tolerance: &str) {
        match (self.expected(key).as_f64(), actual) {
            (Some(_), Some(actual)) => self.close(key, actual, tolerance),
            (expected, actual) => assert_eq!(expected, actual, "{}: {key}", self.id),
        }
    }

    fn assert_all_compared(&self) {
        let compared = self.compared.borrow();
        for leaf in leaves(&self.expected) {
            assert!(compared.contains(&leaf), "{}: nobody compares {leaf}", self.id);
        }
    }
}

/// Paths of everything in an object that is no object itself.
fn leaves(value: &Value) -> Vec<String> {
    let mut all = Vec::new();
    for (key, value) in value.as_object().into_iter().flatten() {
        if value.is_object() {
            all.extend(leaves(value).iter().map(|leaf| format!("{key}/{leaf}")));
        } else {
            all.push(key.clone());
        }
    }
    all
}

pub(crate) fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|x| x.as_f64().expect("a number")).collect()
}

#[test]
fn a_case_without_a_passport_is_refused() {
    let good = serde_json::json!({
        "id": "a", "source": "s", "how": "h", "kind": "published",
        "input": {"x": 1}, "expected": {"y": 1}, "tolerance": {"rel": 1e-9}
    });
    assert!(admitted(&good).is_ok());
    for field in ["source", "how", "kind", "expected", "tolerance"] {
        let mut bad = good.clone();
        bad.as_object_mut().unwrap().remove(field);
        assert!(admitted(&bad).is_err(), "{field}");
    }
}

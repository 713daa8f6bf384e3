//! The list of what cannot both be so, as data (`pairs.txt`), and the search for it.
//!
//! A line is `left | right | reason`. Facts are `key=value`, `key=!value` for any other value and `key=*` for any at all;
//! a key that begins with `is.` is of what is true, every other of what is said.
//! - `left | right`: both of one pair and measure, or one of them of the whole session, contradict each other;
//! - `left | other right`: the left one is of the measure asked for, the right one of another measure of the same club;
//! - `key | is.key`, without values: they must be equal wherever both are known;
//! - `left | needs right on share, card`: where the left one is so, the right one must be said on each of these;
//! - `left | needs right beside it on share, card`: on each of these that says the left one, the right one is said too;
//! - `left | never on share, card`: none of these says the left one.
//!
//! A line `always is.key=value | reason` is true of every session.

use super::fact::{Fact, Scope};
use anyhow::{Context, Result};

/// One line of the list.
#[derive(Debug, Clone)]
pub(crate) struct Pair {
    /// `left | right`, by which it is spoken of.
    pub(crate) name: String,
    pub(crate) reason: String,
    left: Pattern,
    right: Right,
}

#[derive(Debug, Clone)]
enum Right {
    Against(Pattern),
    AgainstOther(Pattern),
    Equal(String),
    NeedsOn(Pattern, Vec<String>),
    NeedsBeside(Pattern, Vec<String>),
    NeverOn(Vec<String>),
}

#[derive(Debug, Clone)]
struct Pattern {
    key: String,
    value: Option<String>,
    negated: bool,
}

/// What contradicts what.
#[derive(Debug, Clone)]
pub(crate) struct Fault {
    pub(crate) rule: String,
    pub(crate) reason: String,
    pub(crate) left: Fact,
    /// What it contradicts; nothing where something lacks.
    pub(crate) right: Option<Fact>,
    /// What else is to be said of it.
    pub(crate) note: String,
}

/// The list.
#[derive(Debug)]
pub(crate) struct Pairs {
    pub(crate) pairs: Vec<Pair>,
    /// What is true of every session.
    pub(crate) always: Vec<Fact>,
}

/// Reads the list.
///
/// # Errors
/// A line that is not understood.
pub(crate) fn read(text: &'static str) -> Result<Pairs> {
    let mut list = Pairs { pairs: Vec::new(), always: Vec::new() };
    for line in text.lines().filter(|line| !line.is_empty() && !line.starts_with('#')) {
        let missing = || format!("`{line}`");
        match line.strip_prefix("always ") {
            Some(fact) => {
                let (fact, _reason) = fact.split_once(" | ").with_context(missing)?;
                let (key, value) = fact.split_once('=').with_context(missing)?;
                list.always.push(Fact::truth(Scope::Session, key, value));
            }
            None => list.pairs.push(pair(line).with_context(missing)?),
        }
    }
    Ok(list)
}

fn pair(line: &str) -> Result<Pair> {
    let mut columns = line.splitn(3, '|').map(str::trim);
    let mut column = || columns.next().filter(|text| !text.is_empty()).context("three columns are needed");
    let (left, right, reason) = (column()?, column()?, column()?);
    let named = |surfaces: &str| surfaces.split(", ").map(str::to_owned).collect();
    let kind = if let Some(surfaces) = right.strip_prefix("never on ") {
        Right::NeverOn(named(surfaces))
    } else if let Some(needs) = right.strip_prefix("needs ") {
        let (fact, surfaces) = needs.split_once(" on ").context("needs it where?")?;
        let surfaces = named(surfaces);
        match fact.strip_suffix(" beside it") {
            Some(fact) => Right::NeedsBeside(pattern(fact), surfaces),
            None => Right::NeedsOn(pattern(fact), surfaces),
        }
    } else if let Some(other) = right.strip_prefix("other ") {
        Right::AgainstOther(pattern(other))
    } else if left.contains('=') {
        Right::Against(pattern(right))
    } else {
        Right::Equal(right.to_owned())
    };
    Ok(Pair {
        name: format!("{left} | {right}"),
        reason: reason.to_owned(),
        left: pattern(left),
        right: kind,
    })
}

fn pattern(text: &str) -> Pattern {
    let Some((key, value)) = text.split_once('=') else {
        return Pattern { key: text.to_owned(), value: None, negated: false };
    };
    let (value, negated) = value.strip_prefix('!').map_or((value, false), |value| (value, true));
    Pattern { key: key.to_owned(), value: (value != "*").then(|| value.to_owned()), negated }
}

impl Pattern {
    fn fits(&self, fact: &Fact) -> bool {
        self.key == fact.key
            && self.value.as_ref().is_none_or(|value| (fact.value.word() == *value) != self.negated)
    }
}

/// Every pair of facts that contradict each other by this line.
pub(crate) fn search(pair: &Pair, facts: &[Fact]) -> Vec<Fault> {
    let left = facts.iter().filter(|fact| pair.left.fits(fact));
    left.flat_map(|left| against(pair, left, facts)).collect()
}

fn against(pair: &Pair, left: &Fact, facts: &[Fact]) -> Vec<Fault> {
    let fault = |right: Option<&Fact>, note: String| Fault {
        rule: pair.name.clone(),
        reason: pair.reason.clone(),
        left: left.clone(),
        right: right.cloned(),
        note,
    };
    let with = |fits: &dyn Fn(&Fact) -> bool| -> Vec<Fault> {
        facts.iter().filter(|fact| fits(fact)).map(|right| fault(Some(right), String::new())).collect()
    };
    match &pair.right {
        Right::Against(right) => with(&|fact| right.fits(fact) && meet(&left.scope, &fact.scope)),
        Right::AgainstOther(right) => with(&|fact| right.fits(fact) && is_other(&left.scope, &fact.scope)),
        Right::Equal(key) => with(&|fact| {
            fact.key == key && meet(&left.scope, &fact.scope) && fact.value.word() != left.value.word()
        }),
        Right::NeedsOn(right, surfaces) => {
            let said = |surface: &String| {
                facts.iter().any(|fact| right.fits(fact) && fact.surface() == Some(surface.as_str()))
            };
            let lacking = surfaces.iter().filter(|surface| !said(surface));
            lacking.map(|surface| fault(None, format!("nothing says so on: {surface}"))).collect()
        }
        Right::NeedsBeside(right, surfaces) => {
            let beside = |fact: &Fact| right.fits(fact) && fact.surface() == left.surface();
            let lacks = is_on(left, surfaces) && !facts.iter().any(beside);
            lacks.then(|| fault(None, "nothing beside it says so".into())).into_iter().collect()
        }
        Right::NeverOn(surfaces) => {
            is_on(left, surfaces).then(|| fault(None, String::new())).into_iter().collect()
        }
    }
}

fn is_on(fact: &Fact, surfaces: &[String]) -> bool {
    fact.surface().is_some_and(|surface| surfaces.iter().any(|named| named == surface))
}

/// Whether what is said of the one bears on the other.
fn meet(one: &Scope, other: &Scope) -> bool {
    match (one, other) {
        (Scope::Part(_), Scope::Pair(..)) | (Scope::Pair(..), Scope::Part(_)) => false,
        (Scope::Session, _) | (_, Scope::Session) => true,
        _ => one == other,
    }
}

fn is_other(one: &Scope, other: &Scope) -> bool {
    matches!((one, other), (Scope::Pair(club, 0), Scope::Pair(same, 1..)) if club == same)
}

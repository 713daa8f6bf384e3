//! Which build of a session is the golfer's own and which is the fitting's, where every file calls them otherwise.

use super::not_pooled::NotPooled;
use serde::{Deserialize, Serialize};
use session::Session;
use session::question::Question;
use std::collections::BTreeMap;

/// What a name stands for in every session of a pile.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RoleOfName {
    /// The club that the golfer came with.
    Own,
    /// The club that came out of the fitting.
    New,
    /// A club that was only tried.
    Tried,
}

/// A table of names; two that differ by capitals or blanks only are one.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(from = "BTreeMap<String, RoleOfName>")]
pub struct Names(BTreeMap<String, RoleOfName>);

impl From<BTreeMap<String, RoleOfName>> for Names {
    fn from(names: BTreeMap<String, RoleOfName>) -> Self {
        Self(names.into_iter().map(|(name, role)| (key(&name), role)).collect())
    }
}

impl Names {
    /// What a name stands for, as far as somebody said it.
    #[must_use]
    pub fn role(&self, name: &str) -> Option<RoleOfName> {
        self.0.get(&key(name)).copied()
    }
}

/// The two builds of a session that are compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Named {
    /// The golfer's own.
    pub baseline: usize,
    /// The fitting's.
    pub candidate: usize,
}

/// Finds the two: by the table, then by what was asked of the session itself; without either the first build of two is the
/// golfer's own. Of several clubs that were tried none is taken because it leads: the best of five leads by luck.
///
/// # Errors
/// [`NotPooled::OneClub`] and [`NotPooled::SeveralClubs`].
pub fn roles(session: &Session, names: &Names, asked: Option<&Question>) -> Result<Named, NotPooled> {
    let builds = session.builds.len();
    if builds < 2 {
        return Err(NotPooled::OneClub);
    }
    let of = |wanted: RoleOfName| {
        let mut found = (0..builds).filter(|&at| names.role(&session.builds[at].name) == Some(wanted));
        (found.next(), found.next())
    };
    let exists = |build: &usize| *build < builds;
    let own = match of(RoleOfName::Own) {
        (Some(_), Some(_)) => return Err(NotPooled::SeveralClubs),
        (own, _) => own,
    };
    let candidate = match of(RoleOfName::New) {
        (Some(_), Some(_)) => return Err(NotPooled::SeveralClubs),
        (Some(new), None) => Some(new),
        (None, _) => asked.and_then(|asked| asked.candidate),
    };
    let baseline = own.or(asked.map(|asked| asked.baseline)).unwrap_or(0);
    // Of two clubs the one that is not the fitting's is the golfer's.
    let baseline = if own.is_none() && builds == 2 && candidate == Some(baseline) {
        1 - baseline.min(1)
    } else {
        baseline
    };
    let candidate = candidate.or_else(|| {
        let is_open = |at: &usize| names.role(&session.builds[*at].name) != Some(RoleOfName::Tried);
        let mut others = (0..builds).filter(|at| *at != baseline).filter(is_open);
        others.next().filter(|_| others.next().is_none())
    });
    match candidate.filter(|candidate| *candidate != baseline && exists(candidate) && exists(&baseline)) {
        Some(candidate) => Ok(Named { baseline, candidate }),
        None => Err(NotPooled::SeveralClubs),
    }
}

/// Names that differ by capitals or blanks only are one build.
pub(super) fn key(name: &str) -> String {
    name.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase()
}

#[cfg(test)]
mod tests {
    use super::*;
    use session::Build;

    fn found(builds: &[&str], names: &[(&str, RoleOfName)]) -> Result<Named, NotPooled> {
        let builds = builds.iter().map(|name| Build { name: (*name).into() }).collect();
        let names: BTreeMap<String, RoleOfName> =
            names.iter().map(|(name, role)| ((*name).to_owned(), *role)).collect();
        roles(&Session { builds, ..Session::default() }, &names.into(), None)
    }

    #[test]
    fn two_clubs_need_no_table_and_a_table_is_heard_first() {
        use RoleOfName::{New, Own, Tried};
        let pair = |baseline, candidate| Ok(Named { baseline, candidate });
        assert_eq!(found(&["Gamer", "B"], &[]), pair(0, 1));
        assert_eq!(found(&["B", "Gamer"], &[("gamer", Own)]), pair(1, 0));
        assert_eq!(found(&["B", "Gamer"], &[("b", Own), (" GAMER ", New)]), pair(0, 1));
        assert_eq!(found(&["A", "B", "C"], &[]), Err(NotPooled::SeveralClubs));
        assert_eq!(found(&["A", "B", "C"], &[("c", New)]), pair(0, 2));
        assert_eq!(found(&["A", "B", "C"], &[("b", Tried)]), pair(0, 2));
        assert_eq!(found(&["A", "B", "C"], &[("c", Own), ("a", New)]), pair(2, 0));
        assert_eq!(found(&["A", "B"], &[("a", New)]), pair(1, 0));
        assert_eq!(found(&["A", "B"], &[("a", Own), ("b", Own)]), Err(NotPooled::SeveralClubs));
        assert_eq!(found(&["A"], &[]), Err(NotPooled::OneClub));
    }
}

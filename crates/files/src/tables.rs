//! Two small tables that only a person can write: what names stand for, and what was promised.

use crate::unread::Unread;
use judging::many::{Names, RoleOfName};
use std::collections::BTreeMap;
use text::Voice;
use text::files as say;

/// What was promised, by the name of the file, in the unit of the measure as the numbers of a report are.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Claims(BTreeMap<String, f64>);

impl From<BTreeMap<String, f64>> for Claims {
    fn from(claims: BTreeMap<String, f64>) -> Self {
        Self(claims)
    }
}

impl Claims {
    /// What was promised of the session at a place: by the whole of it, else by the file's own name.
    #[must_use]
    pub fn of(&self, place: &str) -> Option<f64> {
        let own = place.rsplit(['/', '\\']).next().unwrap_or(place);
        self.0.get(place).or_else(|| self.0.get(own)).copied()
    }
}

/// Names and what they stand for: `name,own`, `name,new` or `name,tried` on each line, after a line of headings or none.
///
/// # Errors
/// An [`Unread`] with the line that is none.
pub fn names_of(text: &str, place: &str, voice: &Voice) -> Result<Names, Unread> {
    let role = |word: &str| match word.to_lowercase().as_str() {
        "own" => Some(RoleOfName::Own),
        "new" => Some(RoleOfName::New),
        "tried" => Some(RoleOfName::Tried),
        _ => None,
    };
    let rows = rows(text, &role).map_err(|line| wrong(place, &line, say::bad_names_remedy(voice), voice))?;
    Ok(Names::from(rows))
}

/// Promises: `file,8` on each line, after a line of headings or none; `scale` is what one of its units is in canonical ones.
///
/// # Errors
/// An [`Unread`] with the line that is none.
pub fn claims_of(text: &str, place: &str, scale: f64, voice: &Voice) -> Result<Claims, Unread> {
    let number =
        |word: &str| word.parse::<f64>().ok().filter(|claim| claim.is_finite()).map(|claim| claim * scale);
    let rows =
        rows(text, &number).map_err(|line| wrong(place, &line, say::bad_claims_remedy(voice), voice))?;
    Ok(Claims(rows))
}

fn wrong(place: &str, line: &str, remedy: String, voice: &Voice) -> Unread {
    Unread::new(place, "bad_table", say::bad_table(voice, line), remedy)
}

/// Two cells a row; the first row may be headings.
fn rows<T>(text: &str, value: &dyn Fn(&str) -> Option<T>) -> Result<BTreeMap<String, T>, String> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let mut found = BTreeMap::new();
    for (at, row) in reader.records().enumerate() {
        let row = row.map_err(|error| error.to_string())?;
        let cells: Vec<&str> = row.iter().collect();
        match (cells.as_slice(), cells.get(1).and_then(|word| value(word))) {
            ([name, _], Some(value)) => {
                found.insert((*name).to_owned(), value);
            }
            _ if at == 0 => {}
            _ => return Err(cells.join(",")),
        }
    }
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_table_may_have_headings_and_a_line_that_is_none_is_named() {
        let voice = Voice::english();
        let names =
            names_of("name,role\nGamer ,Own\n\"B, long\",new\n", "names.csv", &voice).expect("a table");
        assert_eq!(names.role("gamer"), Some(RoleOfName::Own));
        assert_eq!(names.role("b, LONG"), Some(RoleOfName::New));
        let wrong = names_of("Gamer,own\nB,mine\n", "names.csv", &voice).expect_err("no role");
        assert_eq!((wrong.kind.as_str(), wrong.place.as_str()), ("bad_table", "names.csv"));
        assert!(wrong.message.contains("B,mine"), "{}", wrong.message);
        let claims = claims_of("file,claim\na.csv,8\nseason/b.csv,-3.5\n", "claims.csv", 1.0, &voice)
            .expect("a table");
        assert_eq!(claims.of("2026/a.csv"), Some(8.0));
        assert_eq!(claims.of("season/b.csv"), Some(-3.5));
        assert_eq!(claims.of("b.csv"), None);
    }
}

//! A golfer's own names, made safe to stand in a line: cut, and without what would turn the line around.

/// Longest name that a sentence carries; longer ones are cut with an ellipsis.
const LONGEST_NAME: usize = 28;

/// A name short enough for a sentence, control characters made visible as spaces.
#[must_use]
pub fn short_name(name: &str) -> String {
    let clean: String = name
        .chars()
        .take(LONGEST_NAME + 1)
        .map(|c| if c.is_control() || is_direction_mark(c) { ' ' } else { c })
        .collect();
    if clean.chars().count() <= LONGEST_NAME {
        return clean.trim().to_owned();
    }
    let cut: String = clean.chars().take(LONGEST_NAME - 1).collect();
    format!("{}…", cut.trim_end())
}

/// Marks that would turn the reading direction of the rest of a sentence.
fn is_direction_mark(c: char) -> bool {
    matches!(c, '\u{200E}' | '\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hostile_names_are_cut_and_cannot_turn_the_sentence() {
        assert_eq!(short_name("Driver\u{202E}B\n"), "Driver B");
        assert_eq!(short_name(&"x".repeat(10_000)).chars().count(), LONGEST_NAME);
        assert_eq!(short_name("<b>B</b>"), "<b>B</b>");
    }
}

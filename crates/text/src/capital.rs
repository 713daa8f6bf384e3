//! A first letter as a capital.

/// The text with its first letter as a capital; of Latin letters, without the tables of all the others.
#[must_use]
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars
        .next()
        .map_or_else(String::new, |first| std::iter::once(capital_letter(first)).chain(chars).collect())
}

fn capital_letter(letter: char) -> char {
    match letter {
        'à'..='þ' if letter != '÷' => char::from_u32(u32::from(letter) - 0x20).unwrap_or(letter),
        other => other.to_ascii_uppercase(),
    }
}

#[cfg(test)]
mod tests {
    use super::capital;

    #[test]
    fn the_first_letter_alone_is_raised_in_any_language_we_speak() {
        for (given, raised) in [
            ("ball speed", "Ball speed"),
            ("ángulo", "Ángulo"),
            ("ñandú", "Ñandú"),
            ("÷ 2", "÷ 2"),
            ("", ""),
            ("3 wood", "3 wood"),
        ] {
            assert_eq!(capital(given), raised);
        }
    }
}

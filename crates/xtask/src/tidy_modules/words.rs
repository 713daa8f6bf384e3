//! The text of a Rust file as words, without comments and tests.

/// One word of the language: a name, a text in quotes, or a sign.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Word {
    Name(String),
    Text(String),
    /// `::`
    Then,
    Sign(char),
}

impl Word {
    pub(crate) fn is(&self, name: &str) -> bool {
        matches!(self, Self::Name(own) if own == name)
    }
}

/// The words of a text, comments and every item under `#[cfg(test)]` left away.
pub(crate) fn words_without_tests(text: &str) -> Vec<Word> {
    without_tests(words(text))
}

/// The words of a text, comments left away.
fn words(text: &str) -> Vec<Word> {
    let all: Vec<char> = text.chars().collect();
    let mut words = Vec::new();
    let mut at = 0;
    let get = |at: usize| all.get(at).copied().unwrap_or('\n');
    while at < all.len() {
        let c = all[at];
        let rest = |end: usize| all[at..end.min(all.len())].iter().collect::<String>();
        if c == '/' && get(at + 1) == '/' {
            at = (at..all.len()).find(|&i| all[i] == '\n').unwrap_or(all.len());
        } else if c == '/' && get(at + 1) == '*' {
            at = (at + 2..all.len())
                .find(|&i| all[i] == '*' && get(i + 1) == '/')
                .map_or(all.len(), |i| i + 2);
        } else if let Some(end) = raw_text(&all, at) {
            at = end;
            words.push(Word::Text(String::new()));
        } else if c == '"' {
            let mut end = at + 1;
            while end < all.len() && all[end] != '"' {
                end += if all[end] == '\\' { 2 } else { 1 };
            }
            words.push(Word::Text(rest(end).split_off(1)));
            at = end + 1;
        } else if c == '\'' && get(at + 1) == '\\' {
            at = (at + 3..all.len()).find(|&i| all[i] == '\'').map_or(all.len(), |i| i + 1);
        } else if c == '\'' {
            // A character, or a lifetime, which has no second quote.
            at += if get(at + 2) == '\'' { 3 } else { 1 };
        } else if c.is_alphanumeric() || c == '_' {
            let end =
                (at..all.len()).find(|&i| !all[i].is_alphanumeric() && all[i] != '_').unwrap_or(all.len());
            words.push(Word::Name(rest(end)));
            at = end;
        } else if c == ':' && get(at + 1) == ':' {
            words.push(Word::Then);
            at += 2;
        } else {
            if !c.is_whitespace() {
                words.push(Word::Sign(c));
            }
            at += 1;
        }
    }
    words
}

/// The end of a raw text that begins here: `r"…"`, `br#"…"#`.
fn raw_text(all: &[char], at: usize) -> Option<usize> {
    let before = at.checked_sub(1).map_or(' ', |i| all[i]);
    if before.is_alphanumeric() || before == '_' {
        return None;
    }
    let start = at + usize::from(all[at] == 'b');
    if all.get(start) != Some(&'r') {
        return None;
    }
    let hashes = all[start + 1..].iter().take_while(|c| **c == '#').count();
    let open = start + 1 + hashes;
    if all.get(open) != Some(&'"') {
        return None;
    }
    let closes = |i: &usize| {
        all[*i] == '"' && all[i + 1..].iter().take(hashes).filter(|c| **c == '#').count() == hashes
    };
    Some((open + 1..all.len()).find(closes).map_or(all.len(), |i| i + 1 + hashes))
}

/// Leaves away every item under `#[cfg(test)]`.
fn without_tests(words: Vec<Word>) -> Vec<Word> {
    let marks = ["#", "[", "cfg", "(", "test", ")", "]"];
    let is_mark = |from: &[Word]| {
        from.len() >= marks.len()
            && from.iter().zip(marks).all(|(word, mark)| match word {
                Word::Sign(sign) => mark.starts_with(*sign),
                word => word.is(mark),
            })
    };
    let mut kept = Vec::with_capacity(words.len());
    let mut at = 0;
    while at < words.len() {
        if is_mark(&words[at..]) {
            at = item_end(&words, at + marks.len());
        } else {
            kept.push(words[at].clone());
            at += 1;
        }
    }
    kept
}

/// Behind the next `;` or closing brace that ends an item.
fn item_end(words: &[Word], from: usize) -> usize {
    let mut depth = 0_usize;
    for (at, word) in words.iter().enumerate().skip(from) {
        match word {
            Word::Sign('{' | '(' | '[') => depth += 1,
            Word::Sign(')' | ']') => depth = depth.saturating_sub(1),
            Word::Sign('}') => {
                depth = depth.saturating_sub(1);
                if depth == 0 {
                    return at + 1;
                }
            }
            Word::Sign(';') if depth == 0 => return at + 1,
            _ => {}
        }
    }
    words.len()
}

//! The catalogues held against each other: nothing stays in English by oversight.

/// The pattern of every message, in the order of the tables.
fn patterns(table: &str) -> Vec<&str> {
    table.lines().skip(3).collect()
}

const ENGLISH: &str = include_str!(concat!(env!("OUT_DIR"), "/en.txt"));

/// What golfers of both languages call the same, and what is no word.
const ALIKE: [&str; 2] = ["Smash factor", "Spin"];

/// The words of a pattern, without its arguments and what they are chosen by (`build/pattern.rs` describes the marks).
fn words(pattern: &str) -> String {
    let mut text = String::new();
    let mut rest = pattern.chars();
    let mut is_key = false;
    while let Some(letter) = rest.next() {
        match letter {
            '\u{1}' => is_key = rest.next().is_none(),
            '\u{2}' => is_key = rest.next().is_some(),
            '\u{3}' => is_key = true,
            '\u{4}' | '\u{5}' => is_key = false,
            other if !is_key => text.push(other),
            _ => {}
        }
    }
    text
}

#[test]
fn no_message_is_the_same_in_both_languages() {
    let (english, spanish) = (patterns(ENGLISH), patterns(text::SPANISH));
    assert_eq!(english.len(), spanish.len());
    assert!(english.len() > 300, "{}", english.len());
    let same: Vec<String> = english
        .iter()
        .zip(&spanish)
        .filter(|(one, other)| one == other)
        .map(|(one, _)| words(one).trim().to_owned())
        .filter(|words| words.chars().any(char::is_alphabetic) && !ALIKE.contains(&words.as_str()))
        .collect();
    assert!(same.is_empty(), "said in English in both: {same:#?}");
}

#[test]
fn a_language_opens_questions_and_calls_as_it_does() {
    for pattern in patterns(text::SPANISH) {
        let count = |mark: char| pattern.chars().filter(|c| *c == mark).count();
        assert_eq!(count('¿'), count('?'), "{}", words(pattern));
        assert_eq!(count('¡'), count('!'), "{}", words(pattern));
    }
}

//! From the syntax tree of a message to the marks that are read when it is said.
//!
//! `\u{1}name\u{4}` prints an argument. `\u{2}name\u{4}` chooses by one: variants follow, each a key, `\u{4}`, a pattern
//! and `\u{3}`; the last is the one for every other value, its key is empty; `\u{5}` ends them. Names become letters later.

use fluent_syntax::ast::{Expression, InlineExpression, Pattern, PatternElement, Variant, VariantKey};

/// What a message takes.
#[derive(Clone, Hash)]
pub(crate) struct Argument {
    pub(crate) name: String,
    pub(crate) kind: Kind,
}

/// How an argument is used.
#[derive(Clone, PartialEq, Hash)]
pub(crate) enum Kind {
    /// Printed.
    Text,
    /// A count: chosen by, in the forms of the language's plural, and printed with its thousands set apart.
    Count,
    /// Chosen by: yes or not.
    Flag,
    /// Chosen by: one of these words. The key of the variant for every other value is one of them.
    Word(Vec<String>),
}

impl Kind {
    /// Whether a message with such an argument can be said where the other is what comes.
    pub(crate) fn fits(&self, comes: &Kind) -> bool {
        match (self, comes) {
            (Kind::Text, Kind::Count | Kind::Word(_)) => true,
            (Kind::Word(here), Kind::Word(there)) => here.iter().all(|key| there.contains(key)),
            _ => self == comes,
        }
    }
}

const FORMS: [&str; 6] = ["zero", "one", "two", "few", "many", "other"];

pub(crate) fn compiled(pattern: &Pattern<&str>, arguments: &mut Vec<Argument>, place: &str) -> String {
    let mut text = String::new();
    for element in &pattern.elements {
        match element {
            // A message may be written over several lines; it is one paragraph.
            PatternElement::TextElement { value } => text.push_str(&value.replace('\n', " ")),
            PatternElement::Placeable { expression } => {
                text.push_str(&placeable(expression, arguments, place));
            }
        }
    }
    text
}

fn placeable(expression: &Expression<&str>, arguments: &mut Vec<Argument>, place: &str) -> String {
    match expression {
        Expression::Inline(InlineExpression::StringLiteral { value }) => (*value).to_owned(),
        Expression::Inline(InlineExpression::VariableReference { id }) => {
            note(id.name, Kind::Text, arguments, place);
            format!("\u{1}{}\u{4}", id.name)
        }
        // `NUMBER($shots)`: a count that is only printed here and may be chosen by elsewhere.
        Expression::Inline(InlineExpression::FunctionReference { id, arguments: given })
            if id.name == "NUMBER" =>
        {
            let [InlineExpression::VariableReference { id }] = given.positional.as_slice() else {
                panic!("{place}: NUMBER takes one argument of the message");
            };
            note(id.name, Kind::Count, arguments, place);
            format!("\u{1}{}\u{4}", id.name)
        }
        Expression::Select { selector: InlineExpression::VariableReference { id }, variants } => {
            note(id.name, kind(variants), arguments, place);
            let mut text = format!("\u{2}{}\u{4}", id.name);
            let (rest, named): (Vec<_>, Vec<_>) = variants.iter().partition(|variant| variant.default);
            for variant in named.into_iter().chain(rest) {
                let key = if variant.default { "" } else { key(variant) };
                let said = compiled(&variant.value, arguments, place);
                text.push_str(&format!("{key}\u{4}{said}\u{3}"));
            }
            text.push('\u{5}');
            text
        }
        _ => panic!(
            "{place}: only arguments, texts in quotes, NUMBER and choices by an argument are understood"
        ),
    }
}

fn key<'a>(variant: &'a Variant<&str>) -> &'a str {
    match &variant.key {
        VariantKey::Identifier { name } => name,
        VariantKey::NumberLiteral { value } => value,
    }
}

fn kind(variants: &[Variant<&str>]) -> Kind {
    let keys: Vec<&str> = variants.iter().map(|variant| key(variant)).collect();
    if keys.iter().all(|key| FORMS.contains(key) || key.parse::<u64>().is_ok()) {
        return Kind::Count;
    }
    if keys.iter().all(|key| ["yes", "no"].contains(key)) {
        return Kind::Flag;
    }
    Kind::Word(keys.into_iter().map(str::to_owned).collect())
}

fn note(name: &str, kind: Kind, arguments: &mut Vec<Argument>, place: &str) {
    let Some(known) = arguments.iter_mut().find(|argument| argument.name == name) else {
        arguments.push(Argument { name: name.to_owned(), kind });
        return;
    };
    match (&mut known.kind, kind) {
        (_, Kind::Text) => {}
        (Kind::Word(words), Kind::Word(more)) => {
            for word in more {
                if !words.contains(&word) {
                    words.push(word);
                }
            }
        }
        (was, now) if *was == Kind::Text || *was == now => *was = now,
        _ => panic!("{place} chooses by `{name}` in two ways"),
    }
}

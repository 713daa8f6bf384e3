//! Says a message: reads the marks that `build/pattern.rs` describes.

use crate::Voice;
use crate::arg::Arg;
use crate::number::grouped;

/// The message of a number, in a voice.
pub(crate) fn said(voice: &Voice, number: usize, english: &str, args: &[Arg<'_>]) -> String {
    let pattern = voice.language().pattern(number, english);
    let mut text = String::with_capacity(pattern.len() * 2);
    Said { args, voice }.append(&mut text, pattern);
    #[cfg(feature = "traced")]
    if let Some(record) = voice.record() {
        record.note(number, args, &text);
    }
    text
}

struct Said<'a> {
    args: &'a [Arg<'a>],
    voice: &'a Voice,
}

impl Said<'_> {
    /// Appends a pattern up to its end or the end of a variant; gives what follows.
    fn append<'p>(&self, text: &mut String, mut pattern: &'p str) -> &'p str {
        while let Some(at) = pattern.find(['\u{1}', '\u{2}', '\u{3}']) {
            text.push_str(&pattern[..at]);
            let (mark, rest) = pattern[at..].split_at(1);
            if mark == "\u{3}" {
                return rest;
            }
            let (letter, rest) = rest.split_at(1);
            let index = usize::from(letter.as_bytes()[0] - b'A');
            if mark == "\u{1}" {
                self.print(text, index);
                pattern = rest;
            } else {
                pattern = self.choose(text, index, rest);
            }
        }
        text.push_str(pattern);
        ""
    }

    fn print(&self, text: &mut String, index: usize) {
        match self.args[index] {
            Arg::Text(given) => text.push_str(given),
            Arg::Count(count) => text.push_str(&grouped(self.voice, &count.to_string())),
            Arg::Flag(_) => {}
        }
    }

    /// Appends the first variant that fits, and reads over the others.
    fn choose<'p>(&self, text: &mut String, index: usize, mut variants: &'p str) -> &'p str {
        let mut said = false;
        loop {
            if let Some(rest) = variants.strip_prefix('\u{5}') {
                return rest;
            }
            let Some((key, variant)) = variants.split_once('\u{4}') else { return "" };
            let mut unsaid = String::new();
            let fits = !said && (key.is_empty() || self.fits(key, index));
            said |= fits;
            variants = self.append(if fits { &mut *text } else { &mut unsaid }, variant);
        }
    }

    fn fits(&self, key: &str, index: usize) -> bool {
        match self.args[index] {
            Arg::Text(word) => word == key,
            Arg::Flag(flag) => key == if flag { "yes" } else { "no" },
            Arg::Count(count) => key.parse() == Ok(count) || self.form(count) == key,
        }
    }

    fn form(&self, count: usize) -> &str {
        let mut runs = self.voice.language().forms().split(';').filter_map(|run| {
            let mut words = run.split(' ');
            let form = words.next()?;
            let (from, to): (usize, usize) = (words.next()?.parse().ok()?, words.next()?.parse().ok()?);
            (from <= count && count <= to).then_some(form)
        });
        runs.next().unwrap_or("other")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn say(pattern: &str, args: &[Arg<'_>]) -> String {
        said(&Voice::english(), usize::MAX, pattern, args)
    }

    #[test]
    fn one_variant_is_said_and_the_others_are_read_over() {
        let pattern = "\u{2}Aone\u{4}\u{1}A \u{2}Byes\u{4}good\u{3}\u{4}bad\u{3}\u{5} shot\u{3}\u{4}\u{1}A shots\u{3}\u{5}.";
        let say = |count, good| say(pattern, &[Arg::Count(count), Arg::Flag(good)]);
        assert_eq!(say(1, true), "1 good shot.");
        assert_eq!(say(1, false), "1 bad shot.");
        assert_eq!(say(2850, true), "2,850 shots.");
    }

    #[test]
    fn a_given_text_is_never_read_as_marks() {
        assert_eq!(say("\u{1}A.", &[Arg::Text("\u{1}B\u{3}")]), "\u{1}B\u{3}.");
    }

    fn marked() -> impl Strategy<Value = String> {
        let letters = vec!['\u{1}', '\u{2}', '\u{3}', '\u{4}', '\u{5}', 'A', 'B', 'C', 'y', ' ', 'ñ'];
        proptest::collection::vec(proptest::sample::select(letters), 0..12)
            .prop_map(|letters| letters.into_iter().collect())
    }

    proptest! {
        /// Also within the variants of a choice, and after it: what is given moves nothing that follows.
        #[test]
        fn whatever_is_given_stands_as_it_is(
            one in marked(),
            other in marked(),
            yes: bool,
        ) {
            let pattern = "\u{1}A|\u{2}Cyes\u{4}+\u{1}B\u{3}\u{4}-\u{1}B\u{3}\u{5}|\u{1}A.";
            let sign = if yes { '+' } else { '-' };
            let args = [Arg::Text(&one), Arg::Text(&other), Arg::Flag(yes)];
            prop_assert_eq!(say(pattern, &args), format!("{one}|{sign}{other}|{one}."));
        }
    }
}

//! The answer as text to paste: plain, Markdown, and the square brackets of forums; and as lines for a picture.
//!
//! Names and reasons are somebody's text: what would be markup in a style is escaped in it, or replaced where the
//! style knows no escape.

use crate::format::{Subject, number, shots};
use crate::report::{OverlayKind, Report};
use judging::analysis::{Estimate, Method};
use serde::Serialize;
use session::names::short_name;
use session::{Order, Session};
use text::paste as say;
use text::{Voice, capital};

/// Reasons that are named; the others are counted.
const REASONS_NAMED: usize = 4;

/// The answer in the styles that people paste.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct PasteWords {
    /// What was compared, for a subject line.
    pub title: String,
    /// Without any marks.
    pub plain: String,
    /// Markdown.
    pub markdown: String,
    /// Bold and links in square brackets, as many forums write them.
    pub brackets: String,
}

/// The lines of a picture of the answer.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct CardWords {
    /// What was compared.
    pub title: String,
    /// The answer.
    pub headline: String,
    /// How large and how sure; empty when nothing can be estimated.
    pub difference: String,
    /// Shots of each build and how they were hit.
    pub counts: String,
    /// How many were left out and why; says so when none was.
    pub left_out: String,
    /// What else stands over the answer, one line each.
    pub warnings: Vec<String>,
    /// All of it for those who cannot see the picture.
    pub alternative: String,
}

/// The lines of a picture of this answer.
pub(crate) fn card_words(session: &Session, report: &Report, voice: &Voice) -> CardWords {
    let title = title(session, report, voice);
    let headline = report.answer.words.headline.clone();
    let difference =
        report.answer.estimate.as_ref().map_or_else(String::new, |e| difference(session, report, e, voice));
    let (counts, left_out) = (counts(session, voice), left_out(session, voice));
    let warnings = report.overlays.iter().filter(|overlay| overlay.kind != OverlayKind::LeftOut);
    let warnings: Vec<String> = warnings.map(|overlay| overlay.headline.clone()).collect();
    let lines = [&title, &headline, &difference, &counts, &left_out].into_iter().chain(&warnings);
    let alternative =
        lines.filter(|line| !line.is_empty()).map(|line| ended(line)).collect::<Vec<_>>().join(" ");
    CardWords { title, headline, difference, counts, left_out, warnings, alternative }
}

/// The answer as text; `link` is the whole address that holds the shots.
pub(crate) fn paste_words(
    card: &CardWords,
    report: &Report,
    link: Option<&str>,
    voice: &Voice,
) -> PasteWords {
    let said = &report.answer.words;
    let mut facts = vec![said.detail.as_str(), &card.difference, &card.counts, &card.left_out];
    facts.extend(card.warnings.iter().map(String::as_str));
    facts.push(&said.next);
    facts.retain(|fact| !fact.is_empty());
    let [plain, markdown, brackets] =
        [PLAIN, MARKDOWN, BRACKETS].map(|style| written(&style, card, &facts, link, voice));
    PasteWords { title: card.title.clone(), plain, markdown, brackets }
}

/// How a style writes what all of them say.
struct Style {
    escaped: fn(&str) -> String,
    bold: [&'static str; 2],
    /// Before and after the list of facts, each on a line of its own.
    list: [Option<&'static str>; 2],
    item: &'static str,
    /// Around the words of a link, from the address.
    link: fn(&Voice, &str) -> String,
}

const PLAIN: Style = Style {
    escaped: str::to_owned,
    bold: ["", ""],
    list: [None, None],
    item: "",
    link: |voice, address| format!("{}: {address}", say::open(voice)),
};

const MARKDOWN: Style = Style {
    escaped: markdown,
    bold: ["**", "**"],
    // A list stands between empty lines.
    list: [Some(""), Some("")],
    item: "- ",
    link: |voice, address| format!("[{}]({address})", say::open(voice)),
};

const BRACKETS: Style = Style {
    escaped: brackets,
    bold: ["[b]", "[/b]"],
    list: [Some("[list]"), Some("[/list]")],
    item: "[*]",
    link: |voice, address| format!("[url={address}]{}[/url]", say::open(voice)),
};

fn written(style: &Style, card: &CardWords, facts: &[&str], link: Option<&str>, voice: &Voice) -> String {
    let [bold, unbold] = style.bold;
    let [open, close] = style.list.map(|mark| mark.map(str::to_owned));
    let items = facts.iter().map(|fact| format!("{}{}", style.item, (style.escaped)(fact)));
    let last = link.map_or_else(|| say::in_the_file(voice), |address| (style.link)(voice, address));
    let head = [(style.escaped)(&card.title), format!("{bold}{}{unbold}", (style.escaped)(&card.headline))];
    let lines = head.into_iter().chain(open).chain(items).chain(close).chain([last]);
    lines.collect::<Vec<_>>().join("\n")
}

/// What was compared, for a subject line.
fn title(session: &Session, report: &Report, voice: &Voice) -> String {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let measure = capital(&Subject::of(&report.asked.measure, session, voice).name);
    match report.asked.candidate {
        Some(candidate) => say::title(voice, &measure, &name(candidate), &name(report.asked.baseline)),
        None => measure,
    }
}

fn difference(session: &Session, report: &Report, estimate: &Estimate, voice: &Voice) -> String {
    let subject = Subject::of(&report.asked.measure, session, voice);
    let level = number(voice, estimate.level * 100.0, 0);
    if estimate.method == Method::SpreadRatio {
        let ratio = |x: f64| match (number(voice, ((x - 1.0) * 100.0).abs(), 0).as_str(), x < 1.0) {
            ("0", _) => say::the_same(voice),
            (hundredths, less) => text::spread::end(voice, hundredths, less),
        };
        return say::scatter(
            voice,
            &ratio(estimate.value),
            &ratio(estimate.low),
            &ratio(estimate.high),
            &level,
        );
    }
    let signed = |x: f64| {
        let plus = if x > 0.0 && !subject.prints_as_zero(x) { "+" } else { "" };
        format!("{plus}{}", subject.value(x))
    };
    let mixed_up = estimate.order_allowance > 0.0;
    let (low, high) = (signed(estimate.low), signed(estimate.high));
    say::gap(voice, &signed(estimate.value), mixed_up, &low, &high, &level)
}

fn counts(session: &Session, voice: &Voice) -> String {
    let of = |build: usize| session.shots.iter().filter(|shot| shot.build == build).count();
    let averages = |build: usize| session.summaries.iter().find(|summary| summary.build == build);
    let each: Vec<String> = session
        .builds
        .iter()
        .enumerate()
        .map(|(at, build)| {
            let name = short_name(&build.name);
            match (of(at), averages(at)) {
                (0, Some(summary)) => match summary.n {
                    Some(n) => say::average_of(voice, &name, &shots(voice, n as usize)),
                    None => say::average_of_unknown(voice, &name),
                },
                (n, _) => say::shots_with(voice, &name, &shots(voice, n)),
            }
        })
        .collect();
    let each = each.join(", ");
    match session.order {
        Order::Interleaved => say::hit_in_turn(voice, &each),
        Order::Blocked => say::hit_one_after_the_other(voice, &each),
        Order::Unknown => say::hit_somehow(voice, &each),
    }
}

fn left_out(session: &Session, voice: &Voice) -> String {
    let reasons: Vec<&str> = session.shots.iter().filter_map(|shot| shot.left_out.as_deref()).collect();
    if reasons.is_empty() {
        return if session.shots.is_empty() { String::new() } else { say::none_left_out(voice) };
    }
    let mut named: Vec<(String, usize)> = Vec::new();
    for why in &reasons {
        let why = if why.trim().is_empty() { say::no_reason(voice) } else { short_name(why) };
        match named.iter_mut().find(|(there, _)| *there == why) {
            Some((_, times)) => *times += 1,
            None => named.push((why, 1)),
        }
    }
    let mut said: Vec<String> =
        named.iter().take(REASONS_NAMED).map(|(why, times)| say::times_reason(voice, *times, why)).collect();
    if named.len() > REASONS_NAMED {
        said.push(say::other_reasons(voice));
    }
    say::left_out(voice, &shots(voice, reasons.len()), &said.join(", "))
}

fn ended(line: &str) -> String {
    if line.ends_with(['.', '!', '?']) { line.to_owned() } else { format!("{line}.") }
}

fn markdown(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if matches!(c, '\\' | '`' | '*' | '_' | '[' | ']' | '<' | '>' | '#' | '|' | '~' | '&' | '!') {
            out.push('\\');
        }
        out.push(c);
    }
    out
}

/// Forums know no escape: square brackets become round ones.
fn brackets(text: &str) -> String {
    text.replace('[', "(").replace(']', ")")
}

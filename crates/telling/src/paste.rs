//! The answer as text to paste: plain, Markdown, and the square brackets of forums; and as lines for a picture.
//!
//! Names and reasons are somebody's text: what would be markup in a style is escaped in it, or replaced where the
//! style knows no escape.

use crate::ends::{level_text, more_or_less, printed, ratio_lines};
use crate::format::{Subject, shots};
use crate::left_out::of_club;
use crate::reasons;
use crate::report::{OverlayKind, Report};
use crate::trust::TrustFinding;
use crate::words::sentences;
use judging::analysis::{Estimate, PartOf};
use judging::facts::{AllowsFor, HowHit, NumberOfShots, RestsOn};
use judging::trust::{Seen, Weight};
use serde::Serialize;
use session::measure::Margin;
use session::names::short_name;
use session::question::Goal;
use session::{Session, Shot, SummaryOf};
use text::paste as say;
use text::paste::Room;
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
    let (counts, left_out) = (counts(session, report, voice), left_out(session, report, voice));
    let warnings = report.overlays.iter().filter(|overlay| overlay.kind != OverlayKind::LeftOut);
    let serious = report.trust.iter().filter(|finding| travels(finding)).map(|finding| finding.what.clone());
    let warnings: Vec<String> = warnings.map(|overlay| overlay.headline.clone()).chain(serious).collect();
    let lines = [&title, &headline, &difference, &counts, &left_out].into_iter().chain(&warnings);
    let alternative =
        lines.filter(|line| !line.is_empty()).map(|line| ended(line)).collect::<Vec<_>>().join(" ");
    CardWords { title, headline, difference, counts, left_out, warnings, alternative }
}

/// The answer as text; `beside` are the lines of the bet and of the typical shot, `link` the whole address that holds the shots.
pub(crate) fn paste_words(
    card: &CardWords,
    report: &Report,
    beside: [&str; 2],
    link: Option<&str>,
    voice: &Voice,
) -> PasteWords {
    let said = &report.answer.words;
    let mut facts = vec![said.detail.as_str(), &card.difference];
    facts.extend(beside);
    facts.extend([card.counts.as_str(), &card.left_out]);
    let both_ways = report.overlays.iter().find(|overlay| overlay.kind == OverlayKind::LeftOut);
    facts.extend(both_ways.map(|overlay| overlay.detail.as_str()));
    facts.extend(card.warnings.iter().map(String::as_str));
    let who_says = who_says(report, voice);
    facts.push(&who_says);
    facts.push(&said.next);
    facts.retain(|fact| !fact.is_empty());
    let [plain, markdown, brackets] =
        [PLAIN, MARKDOWN, BRACKETS].map(|style| written(&style, card, &facts, link, voice));
    PasteWords { title: card.title.clone(), plain, markdown, brackets }
}

/// Who says that the number was fixed, and that nobody can check what was typed.
fn who_says(report: &Report, voice: &Voice) -> String {
    let fixed = report.answer.facts.as_ref().map(|facts| facts.number);
    match fixed {
        Some(NumberOfShots::SaidFixed) => say::sender_says_fixed(voice),
        Some(NumberOfShots::Planned { .. }) => say::sender_says_planned(voice),
        _ => say::cannot_be_checked(voice),
    }
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

/// Serious warnings go with every form of the answer; those that stand over it already, or in the line of what was left
/// out, are not said twice.
fn travels(finding: &TrustFinding) -> bool {
    let said = matches!(
        finding.seen,
        Seen::OddValue { .. }
            | Seen::Moved { .. }
            | Seen::Order { .. }
            | Seen::AveragesOnly
            | Seen::NumbersMissing { .. }
    );
    finding.weight == Weight::Serious && !said
}

fn difference(session: &Session, report: &Report, estimate: &Estimate, voice: &Voice) -> String {
    let subject = Subject::of(&report.asked.measure, session, voice);
    let facts = report.answer.facts.as_ref();
    let says_next_to_nothing = facts.is_some_and(|facts| facts.says_next_to_nothing);
    if report.asked.goal == Goal::Tighter {
        let lines = ratio_lines(report.asked.margin.map(Margin::Ratio));
        let ratio = |x: f64, lines: &[f64]| more_or_less(voice, x, lines);
        let decided = estimate.decided_by;
        if says_next_to_nothing {
            return String::new();
        }
        return say::scatter(
            voice,
            &ratio(estimate.value, &[]),
            &ratio(decided.low, &lines),
            &ratio(decided.high, &lines),
            &level_text(voice, decided.level),
        );
    }
    let printed = printed(estimate, report.asked.margin.map(Margin::Difference), &subject);
    if says_next_to_nothing {
        let averages = facts.is_some_and(|facts| facts.rests_on == RestsOn::Averages);
        return say::gap_alone(voice, averages, &printed.value);
    }
    let allows_for = facts.map_or(AllowsFor::Luck, |facts| facts.allows_for(estimate.order_allowance));
    let room = match allows_for {
        AllowsFor::Luck => Room::Luck,
        AllowsFor::LuckAlone => Room::LuckAlone,
        AllowsFor::LuckAndOrder => Room::LuckAndOrder,
        AllowsFor::LuckAndAGuess => Room::LuckAndAGuess,
        AllowsFor::LuckAndStarts => Room::LuckAndStarts,
    };
    say::gap(voice, &printed.value, room, &printed.low, &printed.high, &printed.level)
}

fn counts(session: &Session, report: &Report, voice: &Voice) -> String {
    let of = |build: usize| session.shots.iter().filter(|shot| shot.build == build).count();
    let index = session.measure_index(&report.asked.measure);
    let has_it = |shot: &Shot| index.is_some_and(|at| shot.values.get(at).copied().flatten().is_some());
    let measured = |build: usize| session.shots.iter().filter(|s| s.build == build && has_it(s)).count();
    let averages = |build: usize| session.summaries.iter().find(|summary| summary.build == build);
    let each: Vec<String> = session
        .builds
        .iter()
        .enumerate()
        .map(|(at, build)| {
            let name = short_name(&build.name);
            match (of(at), averages(at)) {
                (0, Some(summary)) => match summary.n {
                    Some(n) if summary.of == SummaryOf::Best => {
                        say::average_of_best(voice, &name, &shots(voice, n as usize))
                    }
                    Some(n) => say::average_of(voice, &name, &shots(voice, n as usize)),
                    None => say::average_of_unknown(voice, &name),
                },
                (n, _) if measured(at) < n => {
                    say::shots_measured(voice, &name, &shots(voice, n), &measured(at).to_string())
                }
                (n, _) => say::shots_with(voice, &name, &shots(voice, n)),
            }
        })
        .collect();
    let each = each.join(", ");
    match report.answer.facts.as_ref().map(|facts| facts.order) {
        Some(HowHit::InTurn | HowHit::InTurnNotCompared) => say::hit_in_turn(voice, &each),
        Some(HowHit::OneAfterTheOther) => say::hit_one_after_the_other(voice, &each),
        Some(HowHit::NotKnown) => say::hit_somehow(voice, &each),
        None => say::hit_by_one(voice, &each),
    }
}

fn left_out(session: &Session, report: &Report, voice: &Voice) -> String {
    let missing = report.trust.iter().find(|finding| matches!(finding.seen, Seen::NumbersMissing { .. }));
    let missing = missing.map_or_else(String::new, |finding| finding.what.clone());
    let reasons: Vec<&str> = session.shots.iter().filter_map(|shot| shot.left_out.as_deref()).collect();
    if reasons.is_empty() {
        let marked = if session.shots.is_empty() { String::new() } else { say::none_left_out(voice) };
        return sentences(&[marked, missing]);
    }
    let mut named: Vec<(String, usize)> = Vec::new();
    for why in &reasons {
        let why = if why.trim().is_empty() { say::no_reason(voice) } else { reasons::told(why, voice) };
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
    let parts: Vec<String> = left_out_by_club(session, voice);
    sentences(&[say::left_out(voice, &parts.join(", "), &said.join(", ")), missing])
}

/// `2 of 12 Driver B shots`, for every club of which some were.
fn left_out_by_club(session: &Session, voice: &Voice) -> Vec<String> {
    let of = |build: usize, out: bool| {
        session.shots.iter().filter(|shot| shot.build == build && (!out || shot.left_out.is_some())).count()
    };
    session
        .builds
        .iter()
        .enumerate()
        .map(|(at, build)| (build, PartOf { shots: of(at, true), of: of(at, false) }))
        .filter(|(_, part)| part.shots > 0)
        .map(|(build, part)| of_club(voice, &short_name(&build.name), part))
        .collect()
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

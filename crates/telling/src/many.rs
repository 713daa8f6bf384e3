//! Many sessions in words: what a fitting here brings, how many leads were luck, what was promised, and what is not pooled.

use crate::bet::chance;
use crate::ends::{level_text, lines};
use crate::format::Subject;
use crate::phrases::{Phrase, phrase_for};
use crate::words::sentences;
use judging::bet::Tens;
use judging::interval::Interval;
use judging::many::{Brings, ClaimsFound, Many, ManyQuestion, NotPooled, Pile, Sent};
use serde::Serialize;
use session::Session;
use session::refusal::Refusal;
use text::many as say;
use text::{Voice, bet, case};

/// Sentences of a pile; empty where there is nothing to say.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ManyWords {
    /// What a fitting here brings, in one sentence.
    pub headline: String,
    /// How far golfers differ, what the next one brings, and how many gain enough.
    pub brings: String,
    /// How many leads were luck.
    pub luck: String,
    /// What became of what was promised.
    pub promised: String,
    /// What to know of how the sessions came to be sent, and of copies.
    pub sent: String,
    /// What is not pooled, a line for each reason.
    pub not_pooled: Vec<String>,
}

/// A pile, answered and told.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct ManyAnswered {
    /// The numbers.
    #[serde(flatten)]
    pub found: Many,
    /// Sentences.
    pub words: ManyWords,
}

/// Reads a pile and tells it.
#[must_use]
pub fn many(pile: &Pile, voice: &Voice) -> ManyAnswered {
    let found = judging::many::many(pile);
    let words = words(&found, voice);
    ManyAnswered { found, words }
}

/// Whether it can be asked of any pile.
///
/// # Errors
/// The [`Refusal`] that says why not.
pub fn fits(question: &ManyQuestion, voice: &Voice) -> Result<(), Refusal> {
    question.fits().map_err(|refused| crate::refusals::many(&refused, voice))
}

/// Why a session is not pooled, and what would change that.
#[must_use]
pub fn why(why: NotPooled, voice: &Voice) -> String {
    match why {
        NotPooled::OneClub => say::one_club(voice),
        NotPooled::SeveralClubs => say::several_clubs(voice),
        NotPooled::OneAfterTheOther => say::one_after_the_other(voice),
        NotPooled::OrderNotKnown => say::order_not_known(voice),
        NotPooled::TooFewRounds => say::too_few_rounds(voice),
        NotPooled::AveragesOnly => say::averages_only(voice),
        NotPooled::CountsMissing => say::counts_missing(voice),
        NotPooled::OnlyTheBest => say::only_the_best(voice),
        NotPooled::NotMeasured => say::not_measured(voice),
        NotPooled::TooFewShots => say::too_few_shots(voice),
        NotPooled::NoScatter => say::no_scatter(voice),
        NotPooled::ValueInDoubt => say::value_in_doubt(voice),
    }
}

/// What the numbers of a pile are said in.
struct Ends<'v> {
    subject: Subject<'v>,
    phrase: Phrase,
    lines: Vec<f64>,
}

impl<'v> Ends<'v> {
    fn of(found: &Many, voice: &'v Voice) -> Self {
        Self {
            subject: Subject::of(&found.measure, &Session::default(), voice),
            phrase: phrase_for(&found.measure, voice),
            lines: lines(found.margin),
        }
    }

    /// `5 yd more`, on its side of no difference and of the margin.
    fn end(&self, x: f64) -> String {
        let voice = self.subject.voice;
        if self.subject.is_nothing(x, &self.lines) {
            return case::no_difference(voice);
        }
        let way = if x > 0.0 { &self.phrase.more } else { &self.phrase.less };
        case::gap(voice, &self.subject.end_amount(x, &self.lines), way)
    }

    fn both(&self, interval: &Interval) -> [String; 2] {
        [self.end(interval.low), self.end(interval.high)]
    }
}

fn words(found: &Many, voice: &Voice) -> ManyWords {
    let ends = Ends::of(found, voice);
    let sent = match found.sent {
        Sent::All => String::new(),
        Sent::Picked => say::sent_picked(voice),
        Sent::NotSaid => say::sent_not_said(voice),
    };
    let copies = if found.copies > 0 { say::copies(voice, found.copies) } else { String::new() };
    let headline = found.brings.as_ref().map(|brings| {
        let [low, high] = ends.both(&brings.mean.interval);
        let level = level_text(voice, brings.mean.interval.level);
        say::brings(voice, &low, &high, &ends.subject.name, &level, found.pooled)
    });
    ManyWords {
        headline: headline.unwrap_or_else(|| say::too_few(voice, found.sessions, found.pooled)),
        brings: found
            .brings
            .as_ref()
            .map_or_else(String::new, |brings| what_it_brings(brings, found, &ends, voice)),
        luck: if found.pooled > 0 { luck(found, voice) } else { String::new() },
        promised: found.claims.as_ref().map_or_else(String::new, |claims| promised(claims, &ends, voice)),
        sent: sentences(&[if found.pooled > 0 { sent } else { String::new() }, copies]),
        not_pooled: found
            .not_pooled
            .iter()
            .map(|count| say::not_pooled(voice, count.sessions, &why(count.why, voice)))
            .collect(),
    }
}

fn what_it_brings(brings: &Brings, found: &Many, ends: &Ends<'_>, voice: &Voice) -> String {
    let subject = &ends.subject;
    let apart = &brings.spread;
    let spread = if apart.value > 0.0 {
        let [size, low, high] =
            [apart.value, apart.interval.low, apart.interval.high].map(|size| subject.amount(size));
        say::spread(voice, &size, &low, &high)
    } else {
        say::spread_not_shown(voice, &subject.amount(apart.interval.high))
    };
    let [low, high] = ends.both(&brings.next);
    let enough = found
        .margin
        .zip(brings.enough)
        .map(|(margin, share)| say::enough(voice, &subject.chosen(margin), &of_ten(voice, share.of_ten)));
    let room = if subject.prints_as_zero(brings.allowance) {
        String::new()
    } else {
        say::room(voice, &subject.amount(brings.allowance))
    };
    sentences(&[
        spread,
        say::next(voice, &low, &high),
        enough.unwrap_or_default(),
        say::worse(voice, &of_ten(voice, brings.worse.of_ten)),
        room,
    ])
}

fn luck(found: &Many, voice: &Voice) -> String {
    let findings = &found.findings;
    let percent = session::digits::rounded(100.0 * findings.rate, 0);
    let by_luck = session::digits::rounded(findings.by_luck_alone, 0);
    sentences(&[
        say::found(voice, findings.different, found.pooled, findings.better, findings.worse),
        say::by_luck(voice, &by_luck),
        say::listed(voice, findings.listed, &percent),
    ])
}

fn promised(claims: &ClaimsFound, ends: &Ends<'_>, voice: &Voice) -> String {
    let share = claims.interval.map_or_else(String::new, |interval| {
        let [low, high] = [interval.low, interval.high].map(|end| signed_hundredths(voice, end));
        say::found_again(voice, &low, &high, &level_text(voice, interval.level))
    });
    sentences(&[
        say::promised(voice, claims.claims, &ends.end(claims.promised), &ends.end(claims.found)),
        share,
    ])
}

fn signed_hundredths(voice: &Voice, share: f64) -> String {
    let digits = session::digits::rounded(100.0 * share.abs(), 0);
    let sign = if share < 0.0 && digits != "0" { "\u{2212}" } else { "" };
    format!("{sign}{}", text::with_marks(voice, &digits))
}

/// Of ten, also where anything is possible.
fn of_ten(voice: &Voice, tens: Tens) -> String {
    match tens {
        Tens { low: 0, high: 10 } => bet::range_of_ten(voice, "0", "10"),
        tens => chance(voice, tens),
    }
}

//! How far luck reaches, in words: counted in runs and picks of the golfer's own shots. Nobody is accused of anything:
//! a good moment to stop does the same without intent.

use crate::check::told;
use crate::format::Subject;
use crate::phrases::{Phrase, phrase_for};
use crate::refusals;
use crate::report::Answer;
use crate::words::sentences;
use judging::luck::{self, Compared, ForBuild, LuckFacts, Showing};
use judging::verdict::Direction;
use judging::{judge, settle};
use serde::{Deserialize, Serialize};
use session::digits::rounded;
use session::names::short_name;
use session::question::{Goal, Question};
use session::refusal::Refusal;
use session::{Order, Session};
use text::case;
use text::luck::{self as say, Extreme};
use text::{Voice, capital};

/// What [`luck()`] is asked.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS), ts(optional_fields))]
pub struct LuckRequest {
    /// The shots.
    #[cfg_attr(feature = "typescript", ts(as = "session::wire::Session"))]
    pub session: Session,
    /// What is asked of them.
    pub question: Question,
    /// Shots shown of each build; left open, five, or as many as there are.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shown: Option<u32>,
    /// How they were chosen.
    pub showing: Showing,
}

/// How far luck reaches with these shots, told.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct Luck {
    /// The figures.
    #[serde(flatten)]
    pub facts: LuckFacts,
    /// What all shots say, as `check` answers.
    pub answer: Answer,
    /// Sentences.
    pub words: LuckWords,
}

/// Shows how far luck reaches for `shown` shots of each build.
///
/// # Errors
/// A [`Refusal`] as [`crate::check::check`] gives, for fewer than three shots with a build, for a number of shots that
/// cannot be shown, and for a goal of less scatter.
pub fn luck(request: &LuckRequest, voice: &Voice) -> Result<Luck, Refusal> {
    let session = luck::only(&request.session, &request.question.measure);
    let settled = settle(&request.question, &session).map_err(|misfit| refusals::misfit(&misfit, voice))?;
    let judged = judge(settled);
    let facts = luck::luck(&judged, request.shown, request.showing)
        .map_err(|refused| refusals::luck(&refused, &request.question.measure, &session, voice))?;
    Ok(Luck { answer: told(&judged, voice), words: words(&session, &facts, voice), facts })
}

/// Sentences about luck.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize)]
#[cfg_attr(feature = "typescript", derive(ts_rs::TS))]
pub struct LuckWords {
    /// Which share of all choices speaks for which build.
    pub headline: String,
    /// What the best choice shows for the candidate.
    pub for_candidate: String,
    /// What it shows for the baseline.
    pub for_baseline: String,
    /// What chance alone gives.
    pub chance: String,
    /// What all shots say of the gap; the answer's own words belong after it.
    pub whole: String,
    /// What each deal shows, in the order dealt.
    pub deals: Vec<String>,
    /// Where the shares come from, and that nobody needs to mean it.
    pub note: String,
    /// The picture for those who hear it.
    pub alternative: String,
}

/// Names and turns of speech for one pair.
struct Speech<'a> {
    voice: &'a Voice,
    luck: &'a LuckFacts,
    subject: Subject<'a>,
    phrase: Phrase,
    candidate: String,
    baseline: String,
    /// Whether shots were hit that the measure was not read on.
    is_part_measured: bool,
}

fn words(session: &Session, luck: &LuckFacts, voice: &Voice) -> LuckWords {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let hit = |build: usize| session.shots.iter().filter(|shot| shot.build == build).count();
    let speech = Speech {
        voice,
        luck,
        subject: Subject::of(&luck.measure, session, voice),
        phrase: phrase_for(&luck.measure, voice),
        candidate: name(luck.candidate),
        baseline: name(luck.baseline),
        is_part_measured: hit(luck.baseline) > luck.n.baseline || hit(luck.candidate) > luck.n.candidate,
    };
    LuckWords {
        headline: speech.headline(),
        for_candidate: speech.best(&luck.for_candidate),
        for_baseline: speech.best(&luck.for_baseline),
        chance: speech.chance(),
        whole: speech.whole(),
        deals: luck.deals.iter().map(|gap| speech.deal(*gap)).collect(),
        note: speech.note(session.order),
        alternative: speech.alternative(),
    }
}

impl Speech<'_> {
    fn headline(&self) -> String {
        let at_least =
            self.luck.margin.filter(|m| *m > 0.0).map(|m| say::at_least(self.voice, &self.subject.chosen(m)));
        let (first, second) = self.claims();
        let first = first + &at_least.unwrap_or_default();
        let (candidate, baseline) = (
            of_100(self.voice, self.luck.for_candidate.share),
            of_100(self.voice, self.luck.for_baseline.share),
        );
        let say = if self.in_a_row() { say::headline_in_a_row } else { say::headline_picked };
        say(self.voice, self.luck.shown as usize, &candidate, &first, &baseline, &second)
    }

    fn in_a_row(&self) -> bool {
        self.luck.showing == Showing::InARow
    }

    /// `Driver B carries farther` and `Own driver does`.
    fn claims(&self) -> (String, String) {
        let (candidate, baseline) = (&self.candidate, &self.baseline);
        if self.luck.compared == Compared::DistanceFromZero {
            return (say::nearer_to_zero(self.voice, candidate), say::other_does(self.voice, baseline));
        }
        let higher = self.luck.toward == Direction::Higher;
        let verb = if higher { &self.phrase.higher } else { &self.phrase.lower };
        if self.luck.measure.known().is_some() {
            // `Driver B is swung faster, Own driver is`: the second verb follows the first.
            let second = match verb.split(' ').next() {
                Some("is") => say::other_is(self.voice, baseline),
                Some("has") => say::other_has(self.voice, baseline),
                _ => say::other_does(self.voice, baseline),
            };
            (case::does(self.voice, candidate, verb), second)
        } else {
            let name = capital(&self.subject.name);
            (
                case::measure_of_does(self.voice, &name, candidate, verb),
                say::that_of_other_is(self.voice, baseline),
            )
        }
    }

    fn best(&self, choice: &ForBuild) -> String {
        let (own, other) = self.names(choice);
        let (best, all) = (self.said_of(choice, choice.best), self.said_of(choice, choice.against_all));
        let n = self.luck.shown as usize;
        say::best(self.voice, self.extremes(), n, self.in_a_row(), own, other, &best, &all)
    }

    /// `best` and `worst`, or, where nobody said which way is better, `highest` and `lowest`.
    fn extremes(&self) -> Extreme {
        if self.luck.goal == Goal::Different { Extreme::Highest } else { Extreme::Best }
    }

    fn names(&self, choice: &ForBuild) -> (&str, &str) {
        if choice.build == self.luck.candidate {
            (&self.candidate, &self.baseline)
        } else {
            (&self.baseline, &self.candidate)
        }
    }

    /// A gap as it looks from one build: `8 yd more`.
    fn said_of(&self, choice: &ForBuild, gap: f64) -> String {
        self.gap(if choice.build == self.luck.candidate { gap } else { -gap })
    }

    fn gap(&self, gap: f64) -> String {
        if self.subject.prints_as_zero(gap) {
            return case::no_difference(self.voice);
        }
        let up = gap > 0.0;
        let size = self.subject.amount(gap);
        match self.luck.compared {
            Compared::DistanceFromZero if up => say::farther_from_zero(self.voice, &size),
            Compared::DistanceFromZero => say::nearer_to_zero_by(self.voice, &size),
            Compared::Average => {
                case::gap(self.voice, &size, if up { &self.phrase.more } else { &self.phrase.less })
            }
        }
    }

    fn chance(&self) -> String {
        let (n, chance) = (self.luck.shown as usize, &self.luck.chance);
        let (share, size) = match (self.luck.margin.filter(|m| *m > 0.0), chance.beyond_margin) {
            (Some(margin), Some(share)) => (of_100(self.voice, share), self.subject.chosen(margin)),
            _ => (say::half(self.voice), self.subject.amount(chance.usual)),
        };
        say::by_luck_alone(self.voice, n, &share, &size)
    }

    fn whole(&self) -> String {
        let n = self.luck.n;
        let counts = if n.baseline == n.candidate {
            say::all_shots_of_each(self.voice, n.candidate, self.is_part_measured)
        } else {
            say::all_shots(self.voice, self.is_part_measured, n.candidate, n.baseline)
        };
        if self.subject.prints_as_zero(self.luck.gap) {
            return say::whole_no_difference(self.voice, &counts);
        }
        say::whole(self.voice, &counts, &self.gap(self.luck.gap), &self.candidate)
    }

    fn deal(&self, gap: f64) -> String {
        let n = self.luck.shown as usize;
        if self.subject.prints_as_zero(gap) {
            return say::deal_no_difference(self.voice, n);
        }
        say::deal(self.voice, n, &self.gap(gap), &self.candidate)
    }

    fn note(&self, order: Order) -> String {
        let listed = order == Order::Unknown && self.in_a_row();
        let note =
            if self.in_a_row() { say::note_in_a_row(self.voice) } else { say::note_picked(self.voice) };
        sentences(&[note, if listed { say::note_as_listed(self.voice) } else { String::new() }])
    }

    fn alternative(&self) -> String {
        let (n, bins) = (self.luck.shown as usize, &self.luck.chance.histogram.bins);
        let reach = bins.last().map_or(0.0, |bin| bin.high);
        let marked = |choice: &ForBuild| {
            let (own, _) = self.names(choice);
            say::marked(self.voice, &self.said_of(choice, choice.best), self.extremes(), n, own)
        };
        say::alternative(
            self.voice,
            n,
            &self.subject.amount(self.luck.chance.usual),
            &self.subject.amount(reach),
            &self.gap(self.luck.gap),
            &marked(&self.luck.for_candidate),
            &marked(&self.luck.for_baseline),
        )
    }
}

/// A share counted in a hundred, never rounded to none or all.
fn of_100(voice: &Voice, share: f64) -> String {
    let hundredths = (share * 100.0).round();
    if share <= 0.0 {
        say::none(voice)
    } else if share >= 1.0 {
        say::all(voice)
    } else if hundredths < 1.0 {
        say::fewer_than_1_of_100(voice)
    } else if hundredths > 99.0 {
        say::more_than_99_of_100(voice)
    } else {
        say::of_100(voice, &rounded(hundredths, 0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn shares_are_counted_and_never_rounded_to_nothing_or_everything() {
        let said: Vec<String> = [0.0, 0.0001, 0.005, 0.344, 0.994, 0.999, 1.0]
            .map(|share| of_100(&Voice::english(), share))
            .into();
        let expected = [
            "none",
            "fewer than 1 of 100",
            "1 of 100",
            "34 of 100",
            "99 of 100",
            "more than 99 of 100",
            "all",
        ];
        assert_eq!(said, expected);
    }
}

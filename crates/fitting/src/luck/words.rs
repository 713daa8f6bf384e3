//! How far luck reaches, in words: counted in runs and picks of the golfer's own shots. Nobody is accused of anything:
//! a good moment to stop does the same without intent.

use super::{Compared, ForBuild, Luck, Showing};
use crate::measure;
use crate::question::Goal;
use crate::session::{Order, Session};
use crate::verdict::Direction;
use crate::words::{Phrase, Subject, capital, count_of, phrase_for, sentences, short_name};
use serde::Serialize;

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
    /// Where the shares come from, and that nobody needs to mean it.
    pub note: String,
    /// The picture for those who hear it.
    pub alternative: String,
}

/// Names and turns of speech for one pair.
struct Speech<'a> {
    luck: &'a Luck,
    subject: Subject,
    phrase: Phrase,
    candidate: String,
    baseline: String,
}

pub(super) fn words(session: &Session, luck: &Luck) -> LuckWords {
    let name = |build: usize| session.builds.get(build).map_or_else(String::new, |b| short_name(&b.name));
    let speech = Speech {
        luck,
        subject: Subject::of(&luck.measure, session),
        phrase: phrase_for(&luck.measure),
        candidate: name(luck.candidate),
        baseline: name(luck.baseline),
    };
    LuckWords {
        headline: speech.headline(),
        for_candidate: speech.best(&luck.for_candidate),
        for_baseline: speech.best(&luck.for_baseline),
        chance: speech.chance(),
        whole: speech.whole(),
        note: speech.note(session.order),
        alternative: speech.alternative(),
    }
}

impl Speech<'_> {
    fn headline(&self) -> String {
        let n = self.luck.shown;
        let of = match self.luck.showing {
            Showing::InARow => {
                format!("Of all the runs of {n} you could have been shown,")
            }
            Showing::Picked => {
                format!("Of all the ways to pick {n} shots with each club,")
            }
        };
        let at_least = self
            .luck
            .margin
            .filter(|m| *m > 0.0)
            .map_or_else(String::new, |m| format!(" by {} or more", self.subject.chosen(m)));
        let (first, second) = self.claims();
        format!(
            "{of} {} say that {first}{at_least}, {} say that {second}.",
            of_100(self.luck.for_candidate.share),
            of_100(self.luck.for_baseline.share),
        )
    }

    /// `Driver B carries farther` and `Own driver does`.
    fn claims(&self) -> (String, String) {
        let (candidate, baseline) = (&self.candidate, &self.baseline);
        if self.luck.compared == Compared::DistanceFromZero {
            return (format!("{candidate} averages nearer to zero"), format!("{baseline} does"));
        }
        let verb = if self.luck.toward == Direction::Higher { self.phrase.higher } else { self.phrase.lower };
        if measure::known(&self.luck.measure).is_some() {
            // `Driver B is swung faster, Own driver is`: the second verb follows the first.
            let auxiliary = verb.split(' ').next().filter(|word| matches!(*word, "is" | "has"));
            let second = auxiliary.unwrap_or("does");
            (format!("{candidate} {verb}"), format!("{baseline} {second}"))
        } else {
            let name = capital(&self.subject.name);
            (format!("{name} of {candidate} {verb}"), format!("that of {baseline} is"))
        }
    }

    fn best(&self, choice: &ForBuild) -> String {
        let (own, other) = self.names(choice);
        let (best, worst) = self.extremes();
        let n = self.luck.shown;
        let how = if self.luck.showing == Showing::InARow { " in a row" } else { "" };
        format!(
            "The {best} {n}{how} with {own} against the {worst} {n} with {other}: {}. Against all shots with {other}: {}.",
            self.said_of(choice, choice.best),
            self.said_of(choice, choice.against_all)
        )
    }

    /// `best` and `worst`, or, where nobody said which way is better, `highest` and `lowest`.
    fn extremes(&self) -> (&'static str, &'static str) {
        if self.luck.goal == Goal::Different { ("highest", "lowest") } else { ("best", "worst") }
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
            return "no difference".to_owned();
        }
        let up = gap > 0.0;
        let side = match self.luck.compared {
            Compared::DistanceFromZero if up => "farther from zero",
            Compared::DistanceFromZero => "nearer to zero",
            Compared::Average if up => self.phrase.more,
            Compared::Average => self.phrase.less,
        };
        format!("{} {side}", self.subject.amount(gap))
    }

    fn chance(&self) -> String {
        let (n, chance) = (self.luck.shown, &self.luck.chance);
        let (share, size) = match (self.luck.margin.filter(|m| *m > 0.0), chance.beyond_margin) {
            (Some(margin), Some(share)) => (of_100(share), self.subject.chosen(margin)),
            _ => ("half".to_owned(), self.subject.amount(chance.usual)),
        };
        format!(
            "Of comparisons of {n} shots each between two clubs that are the same, with shots that scatter like \
             yours, {share} come out {size} or more apart by luck alone."
        )
    }

    fn whole(&self) -> String {
        let n = self.luck.n;
        let counts = if n.baseline == n.candidate {
            format!("All {} shots of each", count_of(n.candidate))
        } else {
            format!("All shots, {} and {}", count_of(n.candidate), count_of(n.baseline))
        };
        if self.subject.prints_as_zero(self.luck.gap) {
            return format!("{counts}: no difference.");
        }
        format!("{counts}: {} with {}.", self.gap(self.luck.gap), self.candidate)
    }

    fn note(&self, order: Order) -> String {
        let listed = if order == Order::Unknown && self.luck.showing == Showing::InARow {
            "The order of hitting is not known, so a run is one in the order your shots are listed."
        } else {
            ""
        };
        let how = match self.luck.showing {
            Showing::InARow => "stopping at a good moment is enough",
            Showing::Picked => "setting aside the ones that felt wrong is enough",
        };
        sentences(&[format!("Nobody has to mean it: {how}."), listed.to_owned()])
    }

    fn alternative(&self) -> String {
        let (n, bins) = (self.luck.shown, &self.luck.chance.histogram.bins);
        let reach = bins.last().map_or(0.0, |bin| bin.high);
        let marked = |choice: &ForBuild| {
            let (own, _) = self.names(choice);
            format!("{} for the {} {n} with {own}", self.said_of(choice, choice.best), self.extremes().0)
        };
        format!(
            "A hill of bars around no difference: the gaps that luck alone gives between two equal clubs, {n} shots \
             each. Half of them are smaller than {}, none is larger than {}. Marked are {} for all shots, {}, and {}.",
            self.subject.amount(self.luck.chance.usual),
            self.subject.amount(reach),
            self.gap(self.luck.gap),
            marked(&self.luck.for_candidate),
            marked(&self.luck.for_baseline),
        )
    }
}

/// A share counted in a hundred, never rounded to none or all.
fn of_100(share: f64) -> String {
    let hundredths = (share * 100.0).round();
    if share <= 0.0 {
        "none".to_owned()
    } else if share >= 1.0 {
        "all".to_owned()
    } else if hundredths < 1.0 {
        "fewer than 1 of 100".to_owned()
    } else if hundredths > 99.0 {
        "more than 99 of 100".to_owned()
    } else {
        format!("{} of 100", crate::digits::rounded(hundredths, 0))
    }
}

#[cfg(test)]
mod tests {
    use super::of_100;

    #[test]
    fn shares_are_counted_and_never_rounded_to_nothing_or_everything() {
        let said: Vec<String> = [0.0, 0.0001, 0.005, 0.344, 0.994, 0.999, 1.0].map(of_100).into();
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

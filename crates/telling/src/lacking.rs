//! What a session lacks for an answer: which club it is the fault of, and shots on which the measure was not read.

use crate::case::Case;
use judging::Judgment;
use judging::analysis::Group;
use judging::verdict::Why;
use session::SummaryOf;

impl Case<'_> {
    /// The clubs that keep these shots from answering; empty where that is not one's fault.
    pub(crate) fn lacking(&self, why: Option<Why>) -> Vec<String> {
        let Judgment { baseline, candidate, measure, pair, .. } = self.judgment;
        let lacks = |build: usize, group: Option<Group>| match why {
            Some(Why::NotMeasured) => group.is_none(),
            Some(Why::NoScatter) => group.and_then(|group| group.sd).is_some_and(|sd| sd <= 0.0),
            Some(Why::OnlyTheBest) => {
                let own = self.session.summaries.iter().filter(|summary| summary.build == build);
                let mut of_measure = own.filter(|summary| summary.values.get(measure).is_some());
                of_measure.next().is_some_and(|summary| summary.of != SummaryOf::All)
            }
            _ => false,
        };
        let both = [
            (*baseline, pair.numbers.baseline, &self.baseline),
            (*candidate, pair.numbers.candidate, &self.candidate),
        ];
        let lacking = both.into_iter().filter(|(build, group, _)| lacks(*build, *group));
        lacking.map(|(.., name)| name.clone()).collect()
    }

    /// Shots with a club, measured or not.
    pub(crate) fn hit_with(&self, build: usize) -> usize {
        self.session.shots.iter().filter(|shot| shot.build == build).count()
    }

    /// Whether the measure was read on no more than half of the shots of one of the two.
    pub(crate) fn is_half_unread(&self) -> bool {
        let numbers = &self.judgment.pair.numbers;
        let read = [(self.judgment.baseline, numbers.baseline), (self.judgment.candidate, numbers.candidate)];
        read.iter().any(|(build, group)| {
            let hit = self.hit_with(*build);
            group.is_some_and(|group| hit > 0 && 2 * group.n <= hit)
        })
    }
}

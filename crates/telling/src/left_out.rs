//! What was set aside, whatever was asked for: of which club how much, and an answer that changes with it.

use crate::both_ways::result;
use crate::case::Case;
use crate::format::count_of;
use crate::words::{Next, Words};
use judging::analysis::PartOf;
use judging::facts::SetAside;
use text::Voice;
use text::{answer as say, overlay};

/// When the answer changes with the shots that were set aside.
pub(crate) fn depends_on_left_out(case: &Case) -> Words {
    let how = case.judgment.facts.set_aside.as_ref().map_or_else(String::new, |set_aside| {
        let with_all = result(case, case.judgment.estimate.as_ref(), &set_aside.with_all);
        let without = result(case, set_aside.estimate_without.as_ref(), &set_aside.without);
        say::depends_how(case.voice, &with_all, &of_both(case, set_aside), &without)
    });
    let next = Next::step(say::leave_nothing_out(case.voice));
    let detail = [case.averages(), how.clone()];
    Words::new(say::depends(case.voice), say::depends_in_short(case.voice), &how, &detail, &next)
}

/// How many of both clubs, as far as any were: `2 of 12 Driver B shots`.
pub(crate) fn of_both(case: &Case, set_aside: &SetAside) -> String {
    let both = [(&case.baseline, set_aside.baseline), (&case.candidate, set_aside.candidate)];
    let told: Vec<String> = both
        .into_iter()
        .filter(|(_, part)| part.shots > 0)
        .map(|(name, part)| of_club(case.voice, name, part))
        .collect();
    match told.as_slice() {
        [one, other] => overlay::both_parts(case.voice, one, other),
        _ => told.concat(),
    }
}

/// How many of one club.
pub(crate) fn of_club(voice: &Voice, name: &str, part: PartOf) -> String {
    overlay::part_of_club(voice, &count_of(voice, part.shots), &count_of(voice, part.of), name)
}

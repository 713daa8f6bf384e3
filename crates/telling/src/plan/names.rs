//! What the builds of a plan are called: as they were typed, or by two labels.

use judging::plan::SettledPlan;
use text::Voice;
use text::plan as say;

/// Marks on two clubs that are one.
const LABELS: [&str; 2] = ["A", "B"];

pub(super) fn names(settled: &SettledPlan, voice: &Voice) -> Vec<String> {
    if !settled.same_club {
        return settled.names.clone();
    }
    let name = settled.names.first().cloned().unwrap_or_else(|| say::some_club(voice));
    LABELS.map(|label| say::labeled(voice, &name, label)).into()
}

//! The sentences of an answer that changes with the shots that were set aside, whatever was asked for.

use crate::case::{Case, sentences};
use crate::words::Words;
use text::answer as say;

/// When the answer changes with the shots that were set aside.
pub(crate) fn depends_on_left_out(case: &Case) -> Words {
    Words {
        headline: say::depends(case.voice),
        line: say::depends_in_short(case.voice),
        detail: sentences(&[case.averages(), say::depends_how(case.voice)]),
        next: say::leave_nothing_out(case.voice),
    }
}

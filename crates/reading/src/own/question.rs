//! What was asked, in the first line of the tool's own CSV: cells of `name=value` behind the order of the shots.
//!
//! Readers that know nothing of it pass over these cells, and a spreadsheet takes none of them for a formula.

use session::measure::MeasureId;
use session::question::Question;
use session::question::{Differs, Goal, LookedAfter, Stopping, StoppingWord};

const GOALS: [(&str, Goal); 5] = [
    ("higher", Goal::Higher),
    ("lower", Goal::Lower),
    ("nearer_zero", Goal::NearerZero),
    ("tighter", Goal::Tighter),
    ("different", Goal::Different),
];
const WORDS: [(&str, StoppingWord); 3] = [
    ("fixed", StoppingWord::Fixed),
    ("not_fixed", StoppingWord::NotFixed),
    ("unknown", StoppingWord::Unknown),
];
const DIFFERS: [(&str, Differs); 3] =
    [("shaft", Differs::Shaft), ("head", Differs::Head), ("old_club", Differs::OldClub)];
const PLANNED: &str = "planned";
/// Before the last of the laps after each of which was looked.
const EVERY: &str = "every to ";

/// The cells of a question; builds are counted from 1, as in the rows below.
pub(crate) fn cells(question: &Question) -> Vec<String> {
    let Question { baseline, candidate, measure, goal, margin, first_margin, stopping, differs } = question;
    let mut cells = vec![format!("baseline={}", baseline + 1), format!("measure={measure}")];
    cells.extend(candidate.map(|build| format!("candidate={}", build + 1)));
    cells.extend(goal.map(|goal| format!("goal={}", word_of(&GOALS, goal))));
    cells.extend(margin.map(|margin| format!("margin={margin}")));
    cells.extend(first_margin.map(|margin| format!("first margin={margin}")));
    cells.extend(differs.map(|differs| format!("differs={}", word_of(&DIFFERS, differs))));
    match stopping {
        Stopping::Word(word) => cells.push(format!("stopping={}", word_of(&WORDS, *word))),
        Stopping::Planned { planned_rounds, looked_after } => {
            cells.push(format!("stopping={PLANNED}"));
            cells.push(format!("laps={planned_rounds}"));
            let looks = match looked_after {
                LookedAfter::EveryRoundTo(last) => format!("{EVERY}{last}"),
                LookedAfter::Rounds(rounds) => {
                    rounds.iter().map(ToString::to_string).collect::<Vec<_>>().join(" ")
                }
            };
            cells.push(format!("looked after={looks}"));
        }
    }
    cells
}

/// The question that such cells hold; what is not known is passed over, and without a measure there is none.
pub(crate) fn understood<'a>(cells: impl Iterator<Item = &'a str>) -> Option<Question> {
    let said: Vec<(&str, &str)> = cells.filter_map(|cell| cell.split_once('=')).collect();
    let of = |name: &str| said.iter().find(|(its, _)| its.trim() == name).map(|(_, value)| *value);
    let build = |name| of(name).and_then(|text| text.trim().parse::<usize>().ok()?.checked_sub(1));
    let number = |name| of(name).and_then(|text| text.trim().parse::<f64>().ok()).filter(|v| v.is_finite());
    Some(Question {
        baseline: build("baseline")?,
        candidate: build("candidate"),
        measure: MeasureId::from(of("measure").filter(|id| !id.is_empty())?.to_owned()),
        goal: of("goal").and_then(|word| named(&GOALS, word)),
        margin: number("margin"),
        first_margin: number("first margin"),
        stopping: stopping(of("stopping"), of("laps"), of("looked after")),
        differs: of("differs").and_then(|word| named(&DIFFERS, word)),
    })
}

fn stopping(word: Option<&str>, laps: Option<&str>, looks: Option<&str>) -> Stopping {
    let planned = laps.and_then(|text| text.trim().parse().ok());
    if let (Some(PLANNED), Some(planned_rounds)) = (word.map(str::trim), planned) {
        let looks = looks.unwrap_or_default().trim();
        let last = looks.strip_prefix(EVERY.trim_end()).and_then(|last| last.trim().parse().ok());
        let rounds = || looks.split_whitespace().filter_map(|lap| lap.parse().ok()).collect();
        let looked_after = last.map_or_else(|| LookedAfter::Rounds(rounds()), LookedAfter::EveryRoundTo);
        return Stopping::Planned { planned_rounds, looked_after };
    }
    Stopping::Word(word.and_then(|word| named(&WORDS, word)).unwrap_or(StoppingWord::Unknown))
}

fn named<T: Copy>(words: &[(&str, T)], word: &str) -> Option<T> {
    words.iter().find(|(its, _)| *its == word.trim()).map(|(_, what)| *what)
}

fn word_of<T: PartialEq>(words: &[(&'static str, T)], of: T) -> &'static str {
    words.iter().find(|(_, what)| *what == of).map_or("", |(word, _)| word)
}

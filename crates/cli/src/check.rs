//! `check`: sessions answered one by one.

use crate::options::Check;
use crate::write::{Ends, complain, csv, json, out, settings_of, standard_input, word};
use files::{SessionRead, Unread, answer, read_bytes, read_file};
use judging::verdict::DecisionKind;
use reading::Hints;
use serde::Serialize;
use std::path::{Path, PathBuf};
use telling::report::Report;
use text::Voice;

/// A report with its file.
#[derive(Serialize)]
struct Line<'a> {
    place: &'a str,
    report: &'a Report,
}

pub(crate) fn run(options: &Check, voice: &Voice) -> Ends {
    let hints: Option<Hints> = match options.hints.as_deref().map(|path| settings_of(path, voice)).transpose()
    {
        Ok(hints) => hints,
        Err(unread) => {
            complain(&unread);
            return Ends::NotRead;
        }
    };
    let asking = options.asking(voice);
    let input = [PathBuf::from("-")];
    let files = if options.files.is_empty() { &input } else { options.files.as_slice() };
    let mut ends = Ends::Answered;
    let mut rows = vec![HEADINGS.map(str::to_owned).to_vec()];
    for path in files {
        let answered = read(path, hints.as_ref(), voice)
            .and_then(|read| answer(&read, &asking, voice).map(|report| (read, report)));
        let (read, report) = match answered {
            Ok(answered) => answered,
            Err(unread) => {
                ends = ends.max(Ends::NotRead);
                complain(&unread);
                if options.form.json {
                    out(&json(&unread));
                }
                continue;
            }
        };
        if report.answer.decision.kind == DecisionKind::CannotAnswer {
            ends = ends.max(Ends::CannotAnswer);
        }
        if options.form.json {
            out(&json(&Line { place: &read.place, report: &report }));
        } else if options.form.csv {
            rows.push(row(&read, &report));
        } else {
            out(&words(&read, &report, files.len() > 1));
        }
    }
    if options.form.csv {
        out(&csv(&rows));
    }
    ends
}

fn read(path: &Path, hints: Option<&Hints>, voice: &Voice) -> Result<SessionRead, Unread> {
    if path.as_os_str() == "-" {
        return read_bytes(standard_input().unwrap_or_default(), "-", hints, voice);
    }
    read_file(path, hints, voice)
}

fn words(read: &SessionRead, report: &Report, is_one_of_several: bool) -> String {
    let place = if is_one_of_several { format!("{}\n", read.place) } else { String::new() };
    let words = &report.answer.words;
    let overlays = report.overlays.iter().map(|overlay| format!("{} {}", overlay.headline, overlay.detail));
    let problems = read.problems.iter().map(|problem| format!("{} {}", problem.message, problem.remedy));
    let lines = [words.headline.clone(), words.detail.clone(), words.next.clone()].into_iter();
    let all: Vec<String> = lines.chain(overlays).chain(problems).filter(|line| !line.is_empty()).collect();
    format!("{place}{}\n{}", all.join("\n"), if is_one_of_several { "\n" } else { "" })
}

const HEADINGS: [&str; 13] = [
    "file",
    "baseline",
    "candidate",
    "measure",
    "decision",
    "direction",
    "matters",
    "why",
    "value",
    "low",
    "high",
    "level",
    "headline",
];

fn row(read: &SessionRead, report: &Report) -> Vec<String> {
    let name = |build: Option<usize>| {
        build.and_then(|build| read.session.builds.get(build)).map_or_else(String::new, |it| it.name.clone())
    };
    let decision = &report.answer.decision;
    let estimate = report.answer.estimate.as_ref();
    let number = |value: Option<f64>| value.map_or_else(String::new, |value| value.to_string());
    let decided = estimate.map(|estimate| estimate.decided_by);
    vec![
        read.place.clone(),
        name(Some(report.asked.baseline)),
        name(report.asked.candidate),
        report.asked.measure.to_string(),
        word(&decision.kind),
        word(&decision.direction),
        word(&decision.matters),
        word(&decision.why),
        number(estimate.map(|estimate| estimate.value)),
        number(decided.map(|decided| decided.low)),
        number(decided.map(|decided| decided.high)),
        number(decided.map(|decided| decided.level)),
        report.answer.words.headline.clone(),
    ]
}

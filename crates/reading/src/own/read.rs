//! The tool's own CSV, as [`crate::write_csv`] writes it, also after a spreadsheet had it.

use crate::hints::Hints;
use crate::lexicon::decimal;
use crate::limits::{MAX_BYTES, MAX_ROWS};
use crate::outcome::{
    ColumnReading, Delimiter, Layout, LineIs, LineReading, ReadResult, Reading, Role, RowCounts, UnitSource,
};
use crate::own::question;
use crate::own::write::{FIRST_MEASURE, MARK, UNKNOWN, unguarded, unit_named};
use crate::remarks::ProblemKind;
use crate::second_and_weather;
use crate::take::draft::LEAST_SLOTS;
use crate::talk::{Talk, place};
use crate::trim::{prefix, shortened};
use session::few::Map;
use session::measure::{self, MeasureId};
use session::question::Question;
use session::units::SourceUnit;
use session::{
    Build, Conditions, CustomMeasure, MOST_SECOND, Order, Session, Shot, Summary, SummaryOf, SummaryValue,
};
use text::Voice;

/// Reads a text of the tool's own; `None` for any other.
pub(crate) fn read(text: &str, hints: &Hints, voice: &Voice) -> Option<ReadResult> {
    let after = text.strip_prefix('"').unwrap_or(text).strip_prefix(MARK)?;
    let delimiter = match after.trim_start_matches('"').chars().next()? {
        ',' => Delimiter::Comma,
        ';' => Delimiter::Semicolon,
        '\t' => Delimiter::Tab,
        _ => return None,
    };
    let byte = match delimiter {
        Delimiter::Semicolon => b';',
        Delimiter::Tab => b'\t',
        _ => b',',
    };
    let whole = text;
    let text = prefix(whole, MAX_BYTES);
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(byte)
        .from_reader(text.as_bytes());
    let mut own = Own::new(delimiter == Delimiter::Semicolon, voice);
    let mut record = csv::StringRecord::new();
    let mut lines = crate::cut::delimited::Lines::new(text);
    while let Ok(true) = reader.read_record(&mut record) {
        let line = lines.line_at(record.position().map_or(0, csv::Position::byte));
        if own.rows.total() > MAX_ROWS + 1000 || own.slots > text.len().max(LEAST_SLOTS) {
            own.talk.problem(ProblemKind::TooLong, place(line, ""), "");
            break;
        }
        if record.iter().all(str::is_empty) {
            continue;
        }
        let is = own.take(&record, line);
        own.count(is, line, &record);
    }
    if whole.len() > text.len() {
        own.talk.problem(ProblemKind::TooLong, place(0, ""), "");
    }
    Some(own.finish(delimiter, hints))
}

struct Own {
    session: Session,
    /// What was asked of it.
    question: Option<Question>,
    talk: Talk,
    rows: RowCounts,
    lines: Vec<LineReading>,
    headings: Vec<String>,
    /// Values and blanks so far.
    slots: usize,
    /// The cell of a shot that names the value of the second factor.
    second_at: Option<usize>,
    /// The cell of a shot that holds its note.
    note_at: Option<usize>,
    /// A spreadsheet wrote decimal commas.
    comma: bool,
}

impl Own {
    fn new(comma: bool, voice: &Voice) -> Self {
        Self {
            session: Session::default(),
            question: None,
            talk: Talk::new(voice),
            rows: RowCounts::default(),
            lines: Vec::new(),
            headings: Vec::new(),
            slots: 0,
            second_at: None,
            note_at: None,
            comma,
        }
    }

    fn take(&mut self, record: &csv::StringRecord, line: u32) -> LineIs {
        let cell = |at: usize| record.get(at).unwrap_or_default();
        let text = |at: usize| unguarded(cell(at)).to_owned();
        match cell(0) {
            MARK => {
                self.session.order = match cell(2) {
                    "interleaved" => Order::Interleaved,
                    "blocked" => Order::Blocked,
                    _ => Order::Unknown,
                };
                self.question = question::understood(record.iter().skip(3));
                LineIs::Text
            }
            "build" => {
                self.session.builds.push(Build { name: text(2) });
                LineIs::Build
            }
            "custom" => {
                self.session.custom.push(CustomMeasure {
                    id: MeasureId::from(text(1)),
                    name: text(2),
                    unit: text(3),
                });
                LineIs::Text
            }
            "second" => {
                self.second_at = place_in_row(cell(1));
                let filled = record.iter().skip(3).filter(|cell| !cell.is_empty());
                let values = filled.map(|cell| unguarded(cell).to_owned()).take(MOST_SECOND);
                self.session.second = Some(second_and_weather::written(text(2), values));
                LineIs::Text
            }
            "note" => {
                self.note_at = place_in_row(cell(1));
                LineIs::Text
            }
            "weather" => {
                let figures = [1, 3, 4, 5, 6].map(|at| self.figure(cell(at)));
                self.session.weather = Conditions::from_figures(figures, unit_named(cell(2)));
                LineIs::Text
            }
            "columns" => {
                self.headings = (FIRST_MEASURE..record.len()).map(text).collect();
                LineIs::Headings
            }
            "id" => {
                // What stands beside the measures comes behind them.
                let beside = self.second_at.into_iter().chain(self.note_at).min();
                let end = beside.map_or(record.len(), |at| at.min(record.len()));
                self.session.measures = (FIRST_MEASURE..end).map(|at| MeasureId::from(text(at))).collect();
                // A spreadsheet fills short rows up with empty cells.
                while self.session.measures.len() > self.headings.len()
                    && self.session.measures.last().is_some_and(|id| id.as_str().is_empty())
                {
                    self.session.measures.pop();
                }
                LineIs::Headings
            }
            "shot" => self.take_shot(record, line),
            "summary" => self.take_summary(record, line),
            kind @ ("average" | "deviation" | "smallest" | "largest") => {
                self.take_figures(kind, record, line)
            }
            other => {
                self.talk.problem(ProblemKind::NoNumberInRow, place(line, ""), other);
                LineIs::Problem
            }
        }
    }

    fn build_of(&mut self, record: &csv::StringRecord, line: u32) -> Option<usize> {
        let number = record.get(1).and_then(|text| text.trim().parse::<usize>().ok());
        let by_number = number.and_then(|n| n.checked_sub(1)).filter(|&at| at < self.session.builds.len());
        let name = record.get(2).map(unguarded).unwrap_or_default();
        let found =
            by_number.or_else(|| self.session.builds.iter().position(|b| b.name == name && !name.is_empty()));
        if found.is_none() {
            self.talk.problem(ProblemKind::NoBuild, place(line, "no."), name);
        }
        found
    }

    fn take_shot(&mut self, record: &csv::StringRecord, line: u32) -> LineIs {
        let Some(build) = self.build_of(record, line) else { return LineIs::Problem };
        let left_out = record.get(5).filter(|why| !why.is_empty()).map(|why| unguarded(why).to_owned());
        let values = (0..self.session.measures.len()).map(|at| self.value(record, at, line)).collect();
        self.slots += self.session.measures.len();
        let whole = |at: usize| record.get(at).and_then(|text| text.trim().parse().ok());
        let second = self.second_at.and_then(|at| record.get(at)).filter(|cell| !cell.is_empty());
        let second =
            second.and_then(|cell| second_and_weather::place_of(&mut self.session.second, unguarded(cell)));
        let note = self.note_at.and_then(|at| record.get(at)).map(unguarded).filter(|note| !note.is_empty());
        let note = note.map(str::to_owned);
        self.session.shots.push(Shot {
            build,
            round: whole(3),
            number: whole(4),
            values,
            left_out,
            note,
            second,
        });
        LineIs::Shot
    }

    fn value(&mut self, record: &csv::StringRecord, measure: usize, line: u32) -> Option<f64> {
        let text = record.get(FIRST_MEASURE + measure).map(str::trim).filter(|text| !text.is_empty())?;
        let value = self.figure(text);
        if value.is_none() && text != UNKNOWN {
            let heading = self.headings.get(measure).cloned().unwrap_or_default();
            self.talk.problem(ProblemKind::NotANumber, place(line, &heading), text);
        }
        value
    }

    fn figure(&self, text: &str) -> Option<f64> {
        if self.comma { decimal::written(&text.replace(',', ".")) } else { decimal::written(text.trim()) }
    }

    fn take_summary(&mut self, record: &csv::StringRecord, line: u32) -> LineIs {
        let Some(build) = self.build_of(record, line) else { return LineIs::Problem };
        let whole = |at: usize| record.get(at).and_then(|text| text.trim().parse().ok());
        let of = match record.get(5) {
            Some("best") => SummaryOf::Best,
            Some("chosen") => SummaryOf::Chosen,
            _ => SummaryOf::All,
        };
        self.session.summaries.push(Summary {
            build,
            n: whole(3),
            of,
            values: Map::default(),
            line: whole(4),
        });
        LineIs::Summary
    }

    fn take_figures(&mut self, kind: &str, record: &csv::StringRecord, line: u32) -> LineIs {
        let Some(mut summary) = self.session.summaries.pop() else {
            self.talk.problem(ProblemKind::NoBuild, place(line, ""), kind);
            return LineIs::Problem;
        };
        for at in 0..self.session.measures.len() {
            let known = record.get(FIRST_MEASURE + at).is_some_and(|text| text.trim() == UNKNOWN);
            let value = self.value(record, at, line);
            let Some(id) = self.session.measures.get(at).filter(|_| known || value.is_some()) else {
                continue;
            };
            let entry = summary.values.entry(id.clone(), SummaryValue::default);
            match kind {
                "average" => entry.mean = value,
                "deviation" => entry.sd = value,
                "smallest" => entry.low = value,
                _ => entry.high = value,
            }
        }
        self.session.summaries.push(summary);
        LineIs::Summary
    }

    fn count(&mut self, is: LineIs, line: u32, record: &csv::StringRecord) {
        match is {
            LineIs::Shot => self.rows.shots += 1,
            LineIs::Summary => self.rows.summaries += 1,
            LineIs::Problem => self.rows.problems += 1,
            _ => self.rows.headings += 1,
        }
        if is != LineIs::Shot && self.lines.len() < crate::limits::MAX_LISTED {
            let text = record.iter().filter(|c| !c.is_empty()).take(6).collect::<Vec<_>>().join(" ");
            self.lines.push(LineReading { line, is, text: shortened(&text) });
        }
    }

    /// Gives the builds the names that the golfer wants; two of one name become one.
    fn rename(&mut self, hints: &Hints) {
        let wanted = |name: &str| hints.names.get(name).map_or(name, String::as_str).to_owned();
        let mut builds: Vec<Build> = Vec::new();
        let mut now_at = Vec::new();
        for name in self.session.builds.iter().map(|build| wanted(&build.name)) {
            // Builds that had one name before keep apart: the text says that they are two.
            let merged =
                builds.iter().position(|b| b.name == name && hints.names.values().any(|n| *n == name));
            now_at.push(merged.unwrap_or(builds.len()));
            if merged.is_none() {
                builds.push(Build { name });
            }
        }
        let now = |build: usize| now_at.get(build).copied().unwrap_or(build);
        self.session.shots.iter_mut().for_each(|shot| shot.build = now(shot.build));
        self.session.summaries.iter_mut().for_each(|summary| summary.build = now(summary.build));
        self.session.builds = builds;
    }

    fn finish(mut self, delimiter: Delimiter, hints: &Hints) -> ReadResult {
        self.rename(hints);
        self.session.order = hints.order.unwrap_or(self.session.order);
        if self.session.shots.is_empty() && self.session.summaries.is_empty() {
            self.talk.problem(ProblemKind::NoNumbers, place(0, ""), "");
        }
        let columns = self.session.measures.iter().enumerate().map(|(at, id)| {
            let known = measure::known(id).and_then(|m| SourceUnit::canonical(m.unit));
            let own = self.session.custom(id).map_or(String::new(), |c| c.unit.clone());
            ColumnReading {
                index: FIRST_MEASURE + at,
                heading: self.headings.get(at).cloned().unwrap_or_default(),
                role: Role::Measure(id.clone()),
                unit: known.map_or(own, |unit| unit.label().to_owned()),
                unit_source: UnitSource::Heading,
                decimal_mark: ".".to_owned(),
                build: None,
                sure: true,
                alternatives: Vec::new(),
                units: Vec::new(),
                unit_question: None,
            }
        });
        let second = self.session.second.as_ref().zip(self.second_at).map(|(second, index)| ColumnReading {
            index,
            heading: second.name.clone(),
            role: Role::Second,
            unit: String::new(),
            unit_source: UnitSource::None,
            decimal_mark: String::new(),
            build: None,
            sure: true,
            alternatives: Vec::new(),
            units: Vec::new(),
            unit_question: None,
        });
        let reading = Reading {
            delimiter,
            decimal_mark: if self.comma { "," } else { "." }.to_owned(),
            layout: Layout::Rows,
            columns: columns.chain(second).collect(),
            rows: self.rows,
            lines: self.lines,
            single_measure: None,
        };
        // Builds that became one, or a row that somebody took out: what was asked may not be asked any more.
        let question = self.question.filter(|question| question.fits(&self.session).is_ok());
        let (problems, notices) = self.talk.finish();
        ReadResult {
            session: self.session,
            problems,
            notices,
            reading,
            gaps: Vec::new(),
            doubts: Vec::new(),
            form: None,
            question,
        }
    }
}

/// The cell of a shot's row that a line names, counted from 1 there and from 0 here.
fn place_in_row(cell: &str) -> Option<usize> {
    cell.trim().parse::<usize>().ok().and_then(|n| n.checked_sub(1))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn builds_take_the_names_they_are_given() {
        let text = "Straight Answer session,1,unknown\nbuild,1,A\nbuild,2,B\ncolumns,no.,build,round,shot,left out,\
                    Carry (yd)\nid,,,,,,carry\nshot,1,A,,,,250\nshot,2,B,,,,255\n";
        let named = |pairs: &[(&str, &str)]| {
            let names = pairs.iter().map(|&(old, new)| (old.to_owned(), new.to_owned())).collect();
            let session =
                crate::read::read(text, &Hints { names, ..Hints::default() }, &Voice::english()).session;
            let builds: Vec<String> = session.builds.into_iter().map(|b| b.name).collect();
            (builds, session.shots.iter().map(|s| s.build).collect::<Vec<_>>())
        };
        assert_eq!(named(&[("A", "Mine")]), (vec!["Mine".into(), "B".into()], vec![0, 1]));
        assert_eq!(named(&[("B", "A")]), (vec!["A".into()], vec![0, 0]));
        assert_eq!(named(&[]), (vec!["A".into(), "B".into()], vec![0, 1]));
    }
}

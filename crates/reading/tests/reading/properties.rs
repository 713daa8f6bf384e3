//! What must hold for every text and every session, whatever stands in it.

use crate::any_session::{characters, name, session};
use crate::decoded::decoded;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use reading::{Delimiter, Hints, Layout, LineIs, ReadResult, Role, join, read};
use reading::{write_csv, write_csv_asked};
use session::Session;
use session::measure::{self, MeasureId};
use session::question::Question;
use session::question::{Differs, Goal, LookedAfter, Stopping, StoppingWord};
use std::collections::{BTreeMap, BTreeSet};
use text::Voice;

/// Cells and marks that mean something to the reader.
fn piece() -> impl Strategy<Value = String> {
    prop_oneof![
        6 => (-99_999_i32..99_999).prop_map(|v| (f64::from(v) / 10.0).to_string()),
        4 => prop::sample::select(vec![
            "Build", "Club", "Carry", "Carry (m)", "Offline", "Ball speed", "Spin rpm", "Shot", "Round", "Time",
            "Average", "Std Dev", "Min", "Shots", "n", "A", "B", "Driver A", "Driver B", "12 L", "R3", "250 yd",
            "25O", "-", "-0.0", "0 L", "n/a", "14:03", "2,480", "1.234,5", "251 ± 8", "|---|", "<table>", "<tr>", "<td>", "</td>",
            "{\"a\":1}", "[", "]", "}", "\"", "'", "=1", "best 5", "yd", "m/s", "°", "\u{2212}4", "Left out", "Head", "Shaft",
        ]).prop_map(str::to_owned),
        1 => characters(12),
    ]
}

prop_compose! {
    fn text()(
        rows in vec(vec(piece(), 0..7), 0..14),
        delimiter in prop::sample::select(vec![",", "\t", ";", "|", "  ", " ", "\n"]),
        end in prop::sample::select(vec!["\n", "\r\n", "\r", "\n\n"]),
    ) -> String {
        rows.iter().map(|row| row.join(delimiter)).collect::<Vec<_>>().join(end)
    }
}

fn hints() -> impl Strategy<Value = Hints> {
    let role = prop::sample::select(vec![
        Role::Build,
        Role::Round,
        Role::Number,
        Role::Time,
        Role::Count,
        Role::LeftOut,
        Role::Ignored,
        Role::Measure("carry".into()),
        Role::Measure("own".into()),
        Role::Deviation("carry".into()),
        Role::Low("offline".into()),
        Role::High("own".into()),
    ]);
    let layout = prop::sample::select(vec![
        Layout::Rows,
        Layout::Blocks,
        Layout::ColumnPerBuild,
        Layout::SideBySide,
        Layout::ColumnAfterColumn,
        Layout::Averages,
        Layout::MeasuresDown,
    ]);
    let delimiter = prop::sample::select(vec![
        Delimiter::Comma,
        Delimiter::Tab,
        Delimiter::Semicolon,
        Delimiter::Pipe,
        Delimiter::Spaces,
        Delimiter::Lines,
        Delimiter::Html,
        Delimiter::Json,
    ]);
    let is = prop::sample::select(vec![
        LineIs::Shot,
        LineIs::Summary,
        LineIs::Headings,
        LineIs::Units,
        LineIs::Build,
        LineIs::Text,
        LineIs::Problem,
    ]);
    (
        (option::of(delimiter), option::of(layout), option::of(prop::sample::select(vec![".", ",", "x"]))),
        prop::collection::btree_map(0_usize..7, role, 0..3),
        prop::collection::btree_map(0_usize..7, piece(), 0..2),
        prop::collection::btree_map(0_u32..12, is, 0..3),
        (option::of(name()), option::of(any::<bool>())),
    )
        .prop_map(|((delimiter, layout, mark), columns, units, lines, (build, letters))| Hints {
            delimiter,
            layout,
            decimal_mark: mark.map(str::to_owned),
            columns: columns.into_iter().collect(),
            units: units.into_iter().collect(),
            lines: lines.into_iter().collect(),
            build,
            letters_as_digits: letters,
            ..Hints::default()
        })
}

/// What holds for every reading.
fn check(text: &str, result: &ReadResult) -> Result<(), TestCaseError> {
    let session = &result.session;
    for shot in &session.shots {
        prop_assert!(shot.build < session.builds.len());
        prop_assert_eq!(shot.values.len(), session.measures.len());
        prop_assert!(shot.values.iter().flatten().all(|v| v.is_finite()));
        let of_nothing = |v: &f64| *v == 0.0 && v.is_sign_negative();
        prop_assert!(!shot.values.iter().flatten().any(of_nothing), "a link does not carry the sign of zero");
        // A value that cannot be stays out until somebody says that it is right.
        let is_asked = result.doubts.iter().any(|doubt| !doubt.lines.is_empty());
        prop_assert!(
            is_asked || shot.values.iter().any(Option::is_some),
            "a shot without a value in {:?}",
            text
        );
    }
    let ids: BTreeSet<&MeasureId> = session.measures.iter().collect();
    prop_assert_eq!(ids.len(), session.measures.len());
    for summary in &session.summaries {
        prop_assert!(summary.build < session.builds.len());
        prop_assert!(summary.values.keys().all(|id| ids.contains(id)));
    }
    for id in ids {
        let known = session::measure::known(id).is_some();
        prop_assert!(known || session.custom.iter().any(|c| c.id == *id), "{id} has no name");
    }
    let names: BTreeSet<&str> = session.builds.iter().map(|b| b.name.as_str()).collect();
    prop_assert_eq!(names.len(), session.builds.len());
    prop_assert!(!session.shots.is_empty() || !session.summaries.is_empty() || !result.problems.is_empty());
    // A session as read crosses the boundary and comes back the same.
    let wire = serde_json::to_string(session).expect("plain data");
    let back: Session = serde_json::from_str(&wire).expect("a session");
    prop_assert_eq!(&back, session);
    Ok(())
}

/// Rows that are not blank, where every line is a row.
fn rows(text: &str) -> usize {
    let blank = |c: char| {
        c.is_whitespace()
            || matches!(c, ',' | ';' | '\u{feff}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}')
    };
    text.split(['\n', '\r']).filter(|line| line.chars().any(|c| !blank(c))).count()
}

/// Any question that can be put in words about a session, also one that does not fit it.
fn asked(session: Session) -> impl Strategy<Value = Question> {
    let mut ids = session.measures;
    ids.push(MeasureId::from("carry".to_owned()));
    let margin = || option::of(prop_oneof![0.001_f64..99.0, Just(5.0), Just(0.1 + 0.2)]);
    let word = prop::sample::select(vec![StoppingWord::Fixed, StoppingWord::NotFixed, StoppingWord::Unknown]);
    let looks = prop_oneof![
        vec(1_u32..70, 0..5).prop_map(LookedAfter::Rounds),
        (1_u32..70).prop_map(LookedAfter::EveryRoundTo),
    ];
    let planned = (2_u32..61, looks)
        .prop_map(|(planned_rounds, looked_after)| Stopping::Planned { planned_rounds, looked_after });
    let goal = prop::sample::select(vec![
        Goal::Higher,
        Goal::Lower,
        Goal::NearerZero,
        Goal::Tighter,
        Goal::Different,
    ]);
    let differs = prop::sample::select(vec![Differs::Shaft, Differs::Head, Differs::OldClub]);
    (
        (0_usize..4, option::of(0_usize..4), prop::sample::select(ids), option::of(goal)),
        (margin(), margin(), prop_oneof![word.prop_map(Stopping::Word), planned], option::of(differs)),
    )
        .prop_map(|((baseline, candidate, measure, goal), (margin, first_margin, stopping, differs))| {
            Question { baseline, candidate, measure, goal, margin, first_margin, stopping, differs }
        })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]

    #[test]
    fn a_written_session_reads_back_identical(session in session()) {
        let text = write_csv(&session);
        let result = read(&text, &Hints::default(), &Voice::english());
        prop_assert_eq!(&result.session, &session, "{}", text);
        let holds_nothing = session.shots.is_empty() && session.summaries.is_empty();
        prop_assert_eq!(result.problems.len(), usize::from(holds_nothing));
        // Another round changes nothing either, and a spreadsheet's line ends do not matter.
        prop_assert_eq!(write_csv(&result.session), text);
    }

    #[test]
    fn what_was_asked_comes_back_with_the_session_to_the_last_bit(
        (session, question) in session().prop_flat_map(|session| (Just(session.clone()), asked(session))),
    ) {
        let text = write_csv_asked(&session, &question);
        let result = read(&text, &Hints::default(), &Voice::english());
        prop_assert_eq!(&result.session, &session, "{}", text);
        prop_assert_eq!(result.problems.len(), usize::from(session.shots.is_empty() && session.summaries.is_empty()));
        // Equal margins are equal bits: none is zero or no number.
        prop_assert_eq!(result.question, question.fits(&session).is_ok().then_some(question), "{}", text);
        // A file has a mark before it, by which a spreadsheet knows how names are written.
        let marked = format!("\u{feff}{text}");
        prop_assert_eq!(read(&marked, &Hints::default(), &Voice::english()).session, session);
    }

    #[test]
    fn no_cell_of_a_written_session_is_a_formula(
        (session, question) in session().prop_flat_map(|session| (Just(session.clone()), asked(session))),
    ) {
        let text = write_csv_asked(&session, &question);
        let mut reader = csv::ReaderBuilder::new().has_headers(false).flexible(true).from_reader(text.as_bytes());
        for record in reader.records() {
            let record = record.expect("the text is CSV");
            for cell in &record {
                let risky = cell.trim_start().starts_with(['=', '+', '@', '-', '\t', '\r']);
                prop_assert!(!risky || cell.parse::<f64>().is_ok(), "{cell:?} is a formula");
            }
        }
    }

    #[test]
    fn any_text_is_read(text in characters(400), hints in hints()) {
        check(&text, &read(&text, &hints, &Voice::english()))?;
    }

    #[test]
    fn any_bytes_are_read(bytes in vec(any::<u8>(), 0..400)) {
        let text = decoded(&bytes);
        check(&text, &read(&text, &Hints::default(), &Voice::english()))?;
    }

    #[test]
    fn any_table_is_read(text in text(), hints in hints()) {
        check(&text, &read(&text, &hints, &Voice::english()))?;
    }

    #[test]
    fn every_line_is_counted_once(text in text()) {
        // Quotes may join lines; there a row is not a line.
        let text = text.replace(['"', '\'', '|', '{', '['], " ");
        let result = read(&text, &Hints::default(), &Voice::english());
        let reading = &result.reading;
        if !matches!(reading.delimiter, Delimiter::Html | Delimiter::Json) && !matches!(reading.layout, Layout::ColumnAfterColumn | Layout::RowPerBuild) {
            prop_assert_eq!(reading.rows.total(), rows(&text), "{:?}\n{:?}", text, reading);
        }
    }

    #[test]
    fn reading_is_the_same_with_every_line_end(text in text()) {
        let plain = text.replace("\r\n", "\n").replace('\r', "\n");
        prop_assume!(!plain.contains('"'));
        let one = read(&plain, &Hints::default(), &Voice::english());
        for end in ["\r\n", "\r"] {
            let other = read(&plain.replace('\n', end), &Hints::default(), &Voice::english());
            prop_assert_eq!(&one.session, &other.session);
            prop_assert_eq!(&one.problems, &other.problems);
        }
    }

    #[test]
    fn joining_keeps_every_shot(one in session(), other in session()) {
        let joined = join(&[one.clone(), other.clone()], None);
        prop_assert_eq!(joined.shots.len(), one.shots.len() + other.shots.len());
        prop_assert_eq!(joined.summaries.len(), one.summaries.len() + other.summaries.len());
        let sum = |s: &Session, id: &MeasureId| {
            let at = s.measure_index(id);
            s.shots.iter().filter_map(|shot| shot.values.get(at?).copied().flatten()).filter(|v| v.abs() < 1e6).count()
        };
        let all = |s: &Session| s.measures.iter().map(|id| sum(s, id)).sum::<usize>();
        prop_assert_eq!(all(&joined), all(&one) + all(&other));
        // The golfer's own measures of one id but in two units stand apart.
        for id in joined.measures.iter().filter(|id| measure::known(id).is_some()) {
            prop_assert_eq!(sum(&joined, id), sum(&one, id) + sum(&other, id));
        }
        let per_build = |s: &Session| {
            let mut counts: BTreeMap<String, usize> = BTreeMap::new();
            for shot in &s.shots {
                *counts.entry(s.builds[shot.build].name.clone()).or_default() += 1;
            }
            counts
        };
        let mut expected = per_build(&one);
        for (name, n) in per_build(&other) {
            *expected.entry(name).or_default() += n;
        }
        prop_assert_eq!(per_build(&joined), expected);
    }
}

//! Reading published data and the plain ways in which shots are written down.

use reading::{DoubtKind, Hints, NoticeKind, ProblemKind, ReadResult, Role, Settled, read};
use session::Order;
use session::measure::MeasureId;
use text::Voice;

fn plain(text: &str) -> ReadResult {
    read(text, &Hints::default(), &Voice::english())
}

fn values(result: &ReadResult, measure: &str, build: usize) -> Vec<f64> {
    let at = result.session.measure_index(&measure.into()).expect("the measure was read");
    result.session.shots.iter().filter(|s| s.build == build).filter_map(|s| s.values[at]).collect()
}

fn names(result: &ReadResult) -> Vec<&str> {
    result.session.builds.iter().map(|b| b.name.as_str()).collect()
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

fn dataset(name: &str) -> ReadResult {
    let path = format!("{}/../../tests/reference/datasets/{name}.csv", env!("CARGO_MANIFEST_DIR"));
    plain(&std::fs::read_to_string(path).expect("the data set is there"))
}

#[test]
fn published_data_sets_are_read_whole() {
    // Group sizes and averages as R's aggregate(... ~ group, FUN = mean) prints them.
    type Group = (&'static str, usize, f64);
    let cases: [(&str, &str, &[Group]); 5] = [
        ("sleep", "extra", &[("1", 10, 0.75), ("2", 10, 2.33)]),
        ("PlantGrowth", "weight", &[("ctrl", 10, 5.032), ("trt1", 10, 4.661), ("trt2", 10, 5.526)]),
        ("ToothGrowth", "len", &[("VC", 30, 16.963_333_333_333_33), ("OJ", 30, 20.663_333_333_333_33)]),
        ("iris_setosa_versicolor", "sepal_length", &[("setosa", 50, 5.006), ("versicolor", 50, 5.936)]),
        ("iris_setosa_versicolor", "petal_width", &[("setosa", 50, 0.246), ("versicolor", 50, 1.326)]),
    ];
    for (name, measure, groups) in cases {
        let result = dataset(name);
        assert_eq!(result.problems, vec![], "{name}");
        assert_eq!(names(&result), groups.iter().map(|g| g.0).collect::<Vec<_>>(), "{name}");
        assert_eq!(result.session.order, Order::Blocked, "{name}");
        for (build, (group, n, expected)) in groups.iter().enumerate() {
            let got = values(&result, measure, build);
            assert_eq!(got.len(), *n, "{name} {group}");
            assert!((mean(&got) - expected).abs() < 1e-12, "{name} {group}: {}", mean(&got));
        }
    }
    let iris = dataset("iris_setosa_versicolor");
    assert_eq!(
        iris.session.measures,
        ["sepal_length", "sepal_width", "petal_length", "petal_width"].map(MeasureId::from)
    );
}

#[test]
fn other_data_sets_are_read_whole() {
    for (name, builds, shots) in
        [("chickwts", 6, 71), ("Puromycin", 2, 23), ("nist_gear", 10, 100), ("blood_counts", 3, 15)]
    {
        let result = dataset(name);
        assert_eq!(result.problems, vec![], "{name}");
        assert_eq!(result.session.builds.len(), builds, "{name}");
        assert_eq!(result.session.shots.len(), shots, "{name}");
    }
    assert_eq!(values(&dataset("blood_counts"), "count", 0).len(), 6);
}

#[test]
fn a_treatment_in_blocks_is_read_with_one_hint() {
    // npk: yield in six blocks of four plots; the golfer's tap says that N names the builds.
    let path = format!("{}/../../tests/reference/datasets/npk.csv", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(path).expect("the data set is there");
    let mut hints = Hints::default();
    hints.columns.insert(1, Role::Build);
    let result = read(&text, &hints, &Voice::english());
    assert_eq!(names(&result), ["0", "1"]);
    assert_eq!(result.session.order, Order::Interleaved);
    assert_eq!(result.session.shots.iter().filter_map(|s| s.round).max(), Some(6));
    assert!(
        (mean(&values(&result, "yield", 1)) - mean(&values(&result, "yield", 0)) - 5.616_666_666_666_67)
            .abs()
            < 1e-12
    );
}

#[test]
fn a_bad_cell_costs_only_itself() {
    let result = plain("Build,Carry,Offline\nA,250,L 3\nA,abc,4 R\nB,2S1,-1\n");
    assert_eq!(values(&result, "carry", 0), [250.0]);
    assert_eq!(values(&result, "offline", 0), [-3.0, 4.0]);
    assert_eq!(values(&result, "offline", 1), [-1.0]);
    let found: Vec<_> =
        result.problems.iter().map(|p| (p.kind, p.place.line, p.place.column.as_deref())).collect();
    assert_eq!(
        found,
        [(ProblemKind::NotANumber, 3, Some("Carry")), (ProblemKind::LetterForDigit, 4, Some("Carry"))]
    );
    assert_eq!(result.problems[1].suggestion.as_deref(), Some("251"));
    assert!(result.problems.iter().all(|p| !p.message.is_empty() && !p.remedy.is_empty()));
}

#[test]
fn nothing_to_read_is_said() {
    for text in ["", "  \n\t\r\n", "\u{feff}"] {
        assert_eq!(plain(text).problems[0].kind, ProblemKind::EmptyText);
    }
    for text in ["Hello", "Build,Carry\n", "one,two\nthree,four\n"] {
        let result = plain(text);
        assert!(result.session.shots.is_empty(), "{text}");
        assert!(
            result.problems.iter().any(|p| p.kind == ProblemKind::NoNumbers),
            "{text}: {:?}",
            result.problems
        );
    }
}

#[test]
fn rounds_come_from_the_order() {
    let shots = |order: &str| {
        let rows: String = order.chars().map(|c| format!("{c},250\n")).collect();
        let result = plain(&format!("Build,Carry\n{rows}"));
        let rounds: Vec<u32> = result.session.shots.iter().filter_map(|s| s.round).collect();
        (result.session.order, rounds)
    };
    assert_eq!(shots("AAABBB"), (Order::Blocked, vec![]));
    assert_eq!(shots("ABABAB"), (Order::Interleaved, vec![1, 1, 2, 2, 3, 3]));
    assert_eq!(shots("ABBAAB"), (Order::Interleaved, vec![1, 1, 2, 2, 3, 3]));
    assert_eq!(shots("AABBBBAA"), (Order::Interleaved, vec![1, 1, 1, 1, 2, 2, 2, 2]));
    assert_eq!(shots("AAABBBAABBB"), (Order::Interleaved, vec![1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2]));
    assert_eq!(shots("ABCCBAABC"), (Order::Interleaved, vec![1, 1, 1, 2, 2, 2, 3, 3, 3]));
    assert_eq!(shots("AAABBBAAA"), (Order::Blocked, vec![]));
    assert_eq!(shots("AAA"), (Order::Unknown, vec![]));
}

#[test]
fn a_disagreeing_average_is_said_with_its_amount() {
    let result = plain(
        "Club,Shot,Carry (yd)\nA,1,250\nA,2,252\nA,3,248\nA,Average,262\nB,1,255\nB,2,257\nB,Avg,256\n",
    );
    assert_eq!(result.session.shots.len(), 5);
    assert_eq!(result.session.summaries.len(), 2);
    assert_eq!(result.gaps.len(), 1);
    assert_eq!((result.gaps[0].printed, result.gaps[0].from_rows, result.gaps[0].n), (262.0, 250.0, 3));
    let said: Vec<_> = result.notices.iter().filter(|n| n.kind == NoticeKind::SummaryDisagrees).collect();
    assert_eq!(said.len(), 1);
    assert!(said[0].message.contains("12 more"), "{}", said[0].message);
}

#[test]
fn of_a_measure_in_doubt_no_average_is_held_against_its_rows() {
    let text = "Club,Shot,Carry (yd),Spin rate (rpm)\nA,1,250,2500\nA,2,2520,2600\nA,3,248,2700\nA,Average,250,2700\n";
    let disagrees = |settled: Option<Settled>| {
        let settled = settled.map(|says| ("out_of_range:carry".to_owned(), says)).into_iter().collect();
        let result = read(text, &Hints { settled, ..Hints::default() }, &Voice::english());
        let measures = result.gaps.iter().map(|gap| gap.measure.clone().expect("a measure"));
        measures.map(|id| id.to_string()).collect::<Vec<_>>()
    };
    assert_eq!(disagrees(None), ["spin_rate"], "it is not known yet what its rows are");
    assert_eq!(disagrees(Some(Settled::Right)), ["carry", "spin_rate"]);
}

#[test]
fn a_club_of_another_text_spelled_otherwise_is_asked_about() {
    let text = "Club,Carry\ndriver b,250\ndriver b,252\nMine,240\nMine,241\n";
    let read_beside = |others: &[&str], says: Option<Settled>| {
        let settled = says.map(|says| ("same_name:driverb".to_owned(), says)).into_iter().collect();
        let others = others.iter().map(|&name| name.to_owned()).collect();
        read(text, &Hints { others, settled, ..Hints::default() }, &Voice::english())
    };
    let asked = read_beside(&["Mine", "Driver B"], None);
    assert_eq!(asked.doubts.iter().map(|doubt| doubt.kind).collect::<Vec<_>>(), [DoubtKind::SameName]);
    assert!(asked.doubts[0].question.contains("“Driver B”, “driver b”"), "{}", asked.doubts[0].question);
    let one = read_beside(&["Mine", "Driver B"], Some(Settled::OneClub));
    assert!(one.doubts.is_empty());
    assert_eq!(names(&one), ["Driver B", "Mine"]);
    let two = read_beside(&["Mine", "Driver B"], Some(Settled::Right));
    assert!(two.doubts.is_empty());
    assert_eq!(names(&two), ["driver b", "Mine"]);
    // The same spelling elsewhere is the same club, whatever else is spelled like it.
    assert!(read_beside(&["driver b", "Driver B"], None).doubts.is_empty());
}

#[test]
fn questions_name_builds_as_they_stand_after_others_became_one() {
    let text = "Club,Carry\nA,250\nA,251\nB,240\nB,241\nb,242\nb,243\nC,230\nC,231\nc,232\nc,233\n";
    for (told, open, left) in [("b", "c", [2, 3]), ("c", "b", [1, 2])] {
        let settled = [(format!("same_name:{told}"), Settled::OneClub)].into_iter().collect();
        let result = read(text, &Hints { settled, ..Hints::default() }, &Voice::english());
        assert_eq!(result.doubts.len(), 1);
        assert_eq!(
            (result.doubts[0].key.as_str(), &*result.doubts[0].builds),
            (&*format!("same_name:{open}"), &left[..])
        );
        assert_eq!(names(&result).len(), 4);
    }
}

#[test]
fn a_slipped_point_shows_beside_all_shots_of_what_is_one_club() {
    let speeds = |name: &str, values: &[&str]| -> String {
        values.iter().map(|value| format!("{name},{value}\n")).collect()
    };
    let text = format!(
        "Club,Ball speed (mph)\n{}{}{}",
        speeds("Mine", &["150.1", "151.2", "149.8", "150.6", "152.0", "151.4"]),
        speeds("New", &["153.1", "154.2", "152.8", "15.4"]),
        speeds("new", &["153.6", "152.0", "154.4"]),
    );
    let settled = [("same_name:new".to_owned(), Settled::OneClub)].into_iter().collect();
    let result = read(&text, &Hints { settled, ..Hints::default() }, &Voice::english());
    assert_eq!(names(&result), ["Mine", "New"]);
    let asked: Vec<_> = result.doubts.iter().map(|doubt| (doubt.kind, &*doubt.builds)).collect();
    assert_eq!(asked, [(DoubtKind::PointSlipped, &[1][..])]);
}

#[test]
fn a_column_that_names_too_many_clubs_as_well_is_not_asked_about_twice() {
    let text = "Here are **my Ashots** from today, what do yourry (yd) | Offline |\n|:-----|-----------|---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|-||---|---||---|---||---|--12 L-||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---||---|---|:|:-------:|\n| **Own** | 250 | 3 L |\n| **Own*d)\nOld driver;12;248,2;103\nNew d 5 R |\n| New | 256 | A2 R |\n| New | 251 | 7 L |\n\nThanks in advance!\n";
    let first = plain(text);
    let many: Vec<_> = first.doubts.iter().filter(|doubt| doubt.kind == DoubtKind::ManyClubs).collect();
    assert!(!many[0].choices.is_empty());
    for choice in &many[0].choices {
        let settled = [(many[0].key.clone(), choice.says.clone())].into_iter().collect();
        let again = read(text, &Hints { settled, ..Hints::default() }, &Voice::english());
        for doubt in &again.doubts {
            assert_ne!(doubt.key, many[0].key);
            assert!(!doubt.choices.contains(choice), "{}", choice.label);
        }
    }
}

#[test]
fn spanish_headings_as_devices_write_them_are_measures() {
    for (heading, measure) in [
        ("Desviación", "offline"),
        ("Dispersión lateral", "offline"),
        ("Velocidad de cabeza", "club_speed"),
        ("Ángulo de vuelo", "launch_angle"),
    ] {
        let rows = ["Mío;1;3,5", "Mío;1;4,5", "Nuevo;1;5,5", "Nuevo;1;6,5", "Mío;2;4,1", "Nuevo;2;5,1"];
        let result = plain(&format!("Palo;Ciclo;{heading}\n{}", rows.join("\n")));
        assert_eq!(result.session.measures, [MeasureId::from(measure)], "{heading}");
        assert_eq!(result.session.shots.iter().filter_map(|shot| shot.round).max(), Some(2), "{heading}");
    }
    // Beside an average it is the spread, as it is in the page's own form of averages.
    for spread in ["Carry, desviación", "Carry, desv. est."] {
        let result = plain(&format!("Palo;Golpes;Carry;{spread}\nMío;12;231;9,5\nNuevo;12;235;8,5"));
        let (_, value) = result.session.summaries[0].values.iter().next().expect("an average");
        assert_eq!((value.mean, value.sd), (Some(231.0), Some(9.5)), "{spread}");
    }
}

#[test]
fn shots_shown_beside_a_doubt_say_to_which_side_they_went() {
    let text = "Club,Carry (yd),Offline (yd),Launch direction\nMine,250,-4,-1.5\nMine,1555,3,0.5\nNew,252,0,1\nNew,249,2,-2\n";
    let result = read(text, &Hints::default(), &Voice::english());
    let samples = &result.doubts.first().expect("a carry of 1,555 yd").samples;
    let shots: Vec<&str> = samples.iter().flat_map(|sample| &sample.shots).map(String::as_str).collect();
    assert!(shots[0].contains("offline 4\u{a0}yd left, launch direction \u{2212}1.5°"), "{shots:?}");
    assert!(shots.iter().any(|shot| shot.contains("2\u{a0}yd right")), "{shots:?}");
    assert!(shots.iter().any(|shot| shot.contains("offline 0\u{a0}yd")), "{shots:?}");
}

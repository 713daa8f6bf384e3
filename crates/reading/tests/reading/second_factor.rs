//! A column that tells what else changed: found, read, put into its order, kept by files and links, and joined.

use reading::{Hints, NoticeKind, ReadResult, Role, join, read, read_plain};
use session::Session;
use text::Voice;

fn of(text: &str) -> ReadResult {
    read(text, &Hints::default(), &Voice::english())
}

/// Two clubs, each hit six times under either of two values.
fn table(heading: &str, values: [&str; 2]) -> String {
    let mut text = format!("Build,{heading},Carry (yd)\n");
    for shot in 0..24 {
        let (build, value) = (["A", "B"][shot % 2], values[shot / 2 % 2]);
        text += &format!("{build},{value},{}\n", 240 + shot * 7 % 11);
    }
    text
}

fn values(session: &Session) -> Vec<&str> {
    session.second.iter().flat_map(|second| second.values.iter().map(String::as_str)).collect()
}

#[test]
fn the_words_for_it_are_known() {
    let headings = [
        "Condition",
        "Before/after",
        "Ball type",
        "Lesson",
        "ball",
        "Phase",
        "Tee height",
        "Day",
        "When",
        "CONDITION (lesson)",
    ];
    for heading in headings {
        let result = of(&table(heading, ["one", "other"]));
        let column = &result.reading.columns[1];
        assert_eq!((&column.role, column.sure), (&Role::Second, true), "{heading}");
        assert_eq!(values(&result.session), ["one", "other"], "{heading}");
        assert_eq!(result.session.builds.len(), 2, "{heading}");
        assert!(
            result.session.shots.iter().enumerate().all(|(i, s)| s.second == u32::try_from(i / 2 % 2).ok()),
            "{heading}"
        );
    }
}

#[test]
fn numbers_do_too_where_the_heading_says_so() {
    let result = of(&table("Lesson", ["0", "1"]));
    assert_eq!(values(&result.session), ["0", "1"]);
    assert_eq!(result.session.measures.len(), 1);
    // Without such a heading they are a measure of the golfer's own.
    assert_eq!(of(&table("Rating", ["0", "1"])).session.measures.len(), 2);
}

#[test]
fn a_column_of_few_texts_is_found_by_itself_and_asked_about() {
    let result = of(&table("Grip", ["old", "new"]));
    let column = &result.reading.columns[1];
    assert_eq!((&column.role, column.sure), (&Role::Second, false));
    assert!(column.alternatives.contains(&Role::Ignored));
    // What was said of a shot is none, nor what names the clubs again, nor a text of its own for every shot.
    for heading in ["Notes", "Shot shape", "Result"] {
        assert_eq!(of(&table(heading, ["one", "other"])).session.second, None, "{heading}");
    }
    let again = "Build,Maker,Carry\nA,x,250\nA,x,251\nA,x,252\nB,y,250\nB,y,251\nB,y,253\n";
    assert_eq!(of(again).session.second, None);
    let remarks: String = (0..12).map(|i| format!("{},said {i},{}\n", ["A", "B"][i % 2], 240 + i)).collect();
    assert_eq!(of(&format!("Build,Said,Carry\n{remarks}")).session.second, None);
}

#[test]
fn a_change_alone_is_what_the_shots_are_compared_by() {
    let result = of("Lesson,Carry\nbefore,240\nbefore,241\nafter,250\nafter,252\n");
    let names: Vec<&str> = result.session.builds.iter().map(|b| b.name.as_str()).collect();
    assert_eq!(names, ["before", "after"]);
    assert_eq!(result.session.second, None);
}

#[test]
fn a_column_of_gaps_says_nothing_even_where_it_was_named() {
    let mut hints = Hints::default();
    hints.columns.insert(1, Role::Second);
    let result = read("Build,Lesson,Carry\nA,,240\nA,-,241\nB,,250\nB,,252\n", &hints, &Voice::english());
    assert_eq!((result.session.second, result.session.shots.len()), (None, 4));
}

#[test]
fn before_comes_first_whichever_the_file_names_first() {
    let result = of(&table("Lesson", ["After", "Before"]));
    assert_eq!(values(&result.session), ["Before", "After"]);
    assert_eq!(result.session.shots[0].second, Some(1));
    assert_eq!(result.session.shots[2].second, Some(0));
    // Spelling decides nothing.
    let spelt = table("Lesson", ["before", "after"]).replacen("B,after", "B,AFTER", 2);
    assert_eq!(values(&of(&spelt).session), ["before", "after"]);
}

#[test]
fn written_only_where_it_changes_it_goes_down() {
    let mut text = "Build,Lesson,Carry\n".to_owned();
    for shot in 0..24 {
        let value = match shot {
            0 => "before",
            12 => "after",
            _ => "",
        };
        text += &format!("{},{value},{}\n", ["A", "B"][shot % 2], 240 + shot);
    }
    let session = of(&text).session;
    let after = session.shots.iter().filter(|s| s.second == Some(1)).count();
    assert_eq!((session.shots[11].second, after), (Some(0), 12));
}

#[test]
fn a_club_for_each_value_cannot_be_told_apart_and_that_is_said() {
    let mut text = "Build,Lesson,Carry\n".to_owned();
    for shot in 0..12 {
        let (build, value) = if shot < 6 { ("A", "before") } else { ("B", "after") };
        text += &format!("{build},{value},{}\n", 240 + shot);
    }
    let result = of(&text);
    assert_eq!(values(&result.session), ["before", "after"]);
    assert!(result.notices.iter().any(|n| n.kind == NoticeKind::SecondMixedUp));
    assert!(!of(&table("Lesson", ["x", "y"])).notices.iter().any(|n| n.kind == NoticeKind::SecondMixedUp));
}

#[test]
fn the_golfer_has_the_last_word() {
    let text = table("Lesson", ["before", "after"]);
    let hinted = |role| {
        read(
            &text,
            &Hints { columns: [(1, role)].into_iter().collect(), ..Hints::default() },
            &Voice::english(),
        )
        .session
    };
    assert_eq!(hinted(Role::Ignored).second, None);
    // A column named by hand is the only one that names the clubs.
    assert_eq!(hinted(Role::Build).builds[1].name, "after");
    let notes = table("Notes", ["low tee", "high tee"]);
    let said = Hints { columns: [(1, Role::Second)].into_iter().collect(), ..Hints::default() };
    assert_eq!(values(&read(&notes, &said, &Voice::english()).session), ["low tee", "high tee"]);
}

#[test]
fn the_short_way_leaves_it_to_the_whole_reader() {
    assert!(read_plain(&table("Lesson", ["before", "after"]), &Voice::english()).is_none());
    assert!(read_plain("Build,Carry\nA,240\nA,241\nB,250\nB,255\n", &Voice::english()).is_some());
}

#[test]
fn texts_joined_keep_their_values() {
    let one = of(&table("Lesson", ["before", "after"])).session;
    let other = of(&table("Lesson", ["after", "later"])).session;
    let joined = join(&[one, other], None);
    assert_eq!(values(&joined), ["before", "after", "later"]);
    assert_eq!(joined.shots[24].second, Some(1));
    assert_eq!(joined.shots[26].second, Some(2));
}

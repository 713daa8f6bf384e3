//! What is read and what a link holds is the same in every language and unit; only the words differ.

use crate::decoded::decoded;
use reading::link::{LinkNotice, PackRequest, pack, unpack};
use reading::{Hints, ReadResult, read};
use session::Session;
use session::question::View;
use text::{Language, Units, Voice};

fn spanish() -> Voice {
    Voice::new(Language::from_table(text::SPANISH).expect("a table of this version"), Units::Meters)
}

/// The session without the names that are given where the text gives none.
fn figures(session: &Session) -> Session {
    let mut session = session.clone();
    session.builds.iter_mut().for_each(|build| build.name.clear());
    session.custom.iter_mut().for_each(|custom| custom.name.clear());
    session
}

#[test]
fn a_text_gives_the_same_figures_and_doubts_in_other_words() {
    let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/csv");
    let (mut alike, mut different) = (0, 0);
    for entry in std::fs::read_dir(folder).expect("tests/csv is there") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|ending| ending == "json") {
            continue;
        }
        let text = decoded(&std::fs::read(&path).expect("the file can be read"));
        let of = |voice: &Voice| read(&text, &Hints::default(), voice);
        let (english, other) = (of(&Voice::english()), of(&spanish()));
        assert_eq!(figures(&english.session), figures(&other.session), "{}", path.display());
        assert_eq!(english.gaps, other.gaps, "{}", path.display());
        assert_eq!(english.reading.rows, other.reading.rows, "{}", path.display());
        let doubts = |result: &ReadResult| {
            let problems: Vec<_> = result.problems.iter().map(|p| (p.kind, p.place.line)).collect();
            let notices: Vec<_> = result.notices.iter().map(|n| (n.kind, n.place.line)).collect();
            (problems, notices)
        };
        assert_eq!(doubts(&english), doubts(&other), "{}", path.display());
        for (one, other) in english.notices.iter().zip(&other.notices) {
            *(if one.message == other.message { &mut alike } else { &mut different }) += 1;
        }
    }
    assert!(different > 100 && alike == 0, "{different} notices in other words, {alike} in the same");
}

#[test]
fn a_link_opens_as_the_same_session_and_question_and_speaks_as_it_is_asked_to() {
    let mut session = crate::support::in_turn("carry", 5, &[250.0, 252.0], 8.0);
    // More digits than anybody measures, in any unit: the notice says so.
    session
        .shots
        .iter_mut()
        .flat_map(|shot| &mut shot.values)
        .flatten()
        .for_each(|value| *value = 10.0 * value.sqrt());
    let request = PackRequest { session, question: crate::support::asking("carry"), view: View::default() };
    let link = pack(&request).expect("small");
    let english = unpack(&link, &Voice::english()).expect("it opens");
    let other = unpack(&link, &spanish()).expect("it opens");
    assert_eq!((&english.session, &english.question), (&other.session, &other.question));
    assert_eq!(english.question.margin, None, "the usual margin stays the usual one in any unit");
    let ([LinkNotice::Rounded { message: one, .. }], [LinkNotice::Rounded { message: another, .. }]) =
        (english.notices.as_slice(), other.notices.as_slice())
    else {
        panic!("one notice: {:?}", english.notices)
    };
    assert!(one.starts_with("Carry was given") && one != another, "{one} {another}");
}

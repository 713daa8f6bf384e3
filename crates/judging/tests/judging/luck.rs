//! What luck is looked at from, and whether every choice was.

use crate::support::{around, asking, averages, blocks, judged};
use judging::luck::{Showing, luck, only};
use session::{CustomMeasure, Session};

#[test]
fn all_choices_are_there_only_where_those_of_both_builds_are() {
    for (n, all) in [([6, 6], true), ([6, 40], false), ([40, 6], false)] {
        let session = blocks("carry", &[around(250.0, 8.0, n[0], 0), around(255.0, 9.0, n[1], 5)]);
        let question = asking("carry");
        let found = luck(&judged(&session, &question), Some(5), Showing::Picked).expect("shots");
        assert_eq!(found.pairs.all, all, "{n:?}");
    }
}

#[test]
fn one_measure_alone_is_judged_as_it_is_within_the_session() {
    // The club that leads has averages only.
    let mut session = blocks("own", &[around(250.0, 5.0, 9, 0), around(255.0, 5.0, 9, 4)]);
    session.builds.push(session::Build { name: "Driver C".into() });
    let mut third = averages("own", &[(Some(12), 262.0, Some(5.0))]).summaries.remove(0);
    third.build = 2;
    session.summaries.push(third);
    session.custom.push(CustomMeasure { id: "own".into(), name: "My own".into(), unit: "feet".into() });
    let question = asking("own");
    let (whole, alone): (_, Session) = (judged(&session, &question), only(&session, &"own".into()));
    let alone = judged(&alone, &question);
    assert_eq!(alone.headline(), whole.headline());
    let headline = alone.headline().expect("a candidate");
    assert_eq!((headline.candidate, headline.estimate.as_ref().expect("a size").unit.as_str()), (2, "feet"));
}

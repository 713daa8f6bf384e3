//! Folders as they are: whatever lies in them, nothing stops the pile, and everything refused is listed.

#![expect(clippy::unwrap_used, reason = "tests")]

use files::{
    AboutSeason, Asking, Season, SeasonAnswered, answer, claims_of, names_of, read_file, session_of, walk,
};
use judging::many::{ManyQuestion, NotPooled};
use session::question::View;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::fs;
use std::num::NonZero;
use std::path::PathBuf;
use text::{Language, Units, Voice};

/// A fresh folder in the one that cargo keeps for tests.
fn folder(name: &str) -> PathBuf {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).unwrap();
    folder
}

/// Invented shots hit in turn, AB BA: a golfer of this number, whose new club carries about this much more.
fn shots(number: u32, gap: f64, names: [&str; 2]) -> String {
    let mut text = String::from("Club,Round,Carry (yd)\n");
    for round in 1..=6_u32 {
        for turn in 0..2_u32 {
            let build = if round % 2 == 1 { turn } else { 1 - turn };
            for shot in 0..3_u32 {
                let noise = f64::from((number * 37 + round * 53 + build * 19 + shot * 71) % 23) - 11.0;
                let carry = 240.0 + f64::from(build) * gap + noise;
                writeln!(text, "{},{round},{carry:.1}", names[build as usize]).unwrap();
            }
        }
    }
    text
}

fn asked() -> ManyQuestion {
    ManyQuestion { margin: Some(5.0), ..ManyQuestion::of("carry".into()) }
}

fn season(folder: &PathBuf, about: &AboutSeason, threads: usize) -> SeasonAnswered {
    let voice = Voice::english();
    let (files, unread) = walk(std::slice::from_ref(folder), &voice);
    let mut season = Season::new(asked(), &voice).unwrap();
    season.take_unread(unread);
    season.take_files(&files, about, NonZero::new(threads), &voice, &|_| {});
    season.answer(&voice)
}

fn written(season: &SeasonAnswered) -> String {
    serde_json::to_string(season).unwrap()
}

#[test]
fn a_folder_of_all_kinds_is_answered_and_what_is_refused_is_listed() {
    let folder = folder("all-kinds");
    for number in 0..6_u32 {
        let text = shots(number, f64::from(number) * 2.0, ["Own", "New"]);
        fs::write(folder.join(format!("golfer-{number}.csv")), text).unwrap();
    }
    fs::create_dir(folder.join("deeper")).unwrap();
    // A copy under another name, with semicolons and decimal commas.
    let copy = shots(3, 6.0, ["Own", "New"]).replace(',', ";").replace('.', ",");
    fs::write(folder.join("deeper/copy.csv"), copy).unwrap();
    fs::write(folder.join("picture.png"), b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR").unwrap();
    fs::write(folder.join("empty.csv"), " \n").unwrap();
    fs::write(folder.join("letter.txt"), "Dear golfer, it was a pleasure.\n").unwrap();
    // Two gigabytes that take no room.
    fs::File::create(folder.join("huge.csv")).unwrap().set_len(2_000_000_000).unwrap();
    let mut sixty = String::from("Club,Round,Carry (yd)\n");
    for shot in 0..180 {
        writeln!(sixty, "Club number {},{},{}", shot % 60, shot / 60 + 1, 230 + shot % 17).unwrap();
    }
    fs::write(folder.join("sixty.csv"), sixty).unwrap();
    let mut three = shots(9, 4.0, ["Own", "New"]);
    three.push_str("Third,1,244\nThird,2,251\nThird,3,247\n");
    fs::write(folder.join("three.csv"), three).unwrap();
    #[cfg(unix)]
    std::os::unix::fs::symlink(&folder, folder.join("around")).unwrap();
    #[cfg(unix)]
    std::os::unix::fs::symlink(folder.join("nowhere"), folder.join("gone.csv")).unwrap();

    let found = season(&folder, &AboutSeason::default(), 1);
    let many = &found.answered.found;
    assert_eq!((many.sessions, many.pooled, many.copies), (7, 6, 1));
    assert_eq!(many.not_pooled.len(), 1);
    assert_eq!((many.not_pooled[0].why, many.not_pooled[0].sessions), (NotPooled::SeveralClubs, 1));
    let kinds: BTreeMap<String, &str> = found
        .unread
        .iter()
        .map(|unread| {
            assert!(!unread.message.is_empty() && !unread.remedy.is_empty(), "{unread:?}");
            (unread.place.rsplit('/').next().unwrap().to_owned(), unread.kind.as_str())
        })
        .collect();
    let expected = [
        ("empty.csv", "empty"),
        ("huge.csv", "too_large"),
        ("letter.txt", "no_shots"),
        ("picture.png", "not_text"),
    ];
    for (name, kind) in expected {
        assert_eq!(kinds.get(name), Some(&kind), "{kinds:?}");
    }
    assert!(kinds.contains_key("sixty.csv"), "{kinds:?}");
    #[cfg(unix)]
    assert_eq!((kinds["around"], kinds["gone.csv"]), ("linked_folder", "cannot_open"));
    assert_eq!(written(&season(&folder, &AboutSeason::default(), 3)), written(&found), "on more threads");
}

#[test]
fn names_are_asked_once_and_promises_belong_to_files() {
    let folder = folder("names");
    fs::write(folder.join("a.csv"), shots(1, 9.0, ["Gamer", "Fitted"])).unwrap();
    fs::write(folder.join("b.csv"), shots(2, 9.0, ["My old one", "The new one"])).unwrap();
    // The fitting's club stands first here.
    fs::write(folder.join("c.csv"), shots(3, -9.0, ["Fitted", "Gamer"])).unwrap();
    let voice = Voice::english();
    let names = names_of("Gamer,own\nFitted,new\n", "names.csv", &voice).unwrap();
    let claims = claims_of("a.csv,12\nc.csv,20\nz.csv,1\n", "claims.csv", 1.0, &voice).unwrap();
    let found = season(&folder, &AboutSeason { names, claims, hints: None }, 2);
    let many = &found.answered.found;
    assert_eq!(many.pooled, 3);
    let gaps: Vec<f64> = many.each.iter().map(|one| one.gap.unwrap().value).collect();
    assert!(gaps.iter().all(|gap| *gap > 2.0), "{gaps:?}");
    assert_eq!(many.claims.unwrap().claims, 2);
}

#[test]
fn seasons_put_together_twice_are_one_and_cross_as_text() {
    let voice = Voice::english();
    let part = |numbers: std::ops::Range<u32>| {
        let mut season = Season::new(asked(), &voice).unwrap();
        for number in numbers {
            let (place, text) = (format!("{number}.csv"), shots(number, 5.0, ["Own", "New"]));
            season.take(session_of(&text, &place, None, &voice), &AboutSeason::default(), &voice);
        }
        season.take(session_of("none", "none.txt", None, &voice), &AboutSeason::default(), &voice);
        season
    };
    let whole = part(0..9);
    let mut merged = part(4..9);
    let text = serde_json::to_string(&part(0..5)).unwrap();
    merged.merge(serde_json::from_str(&text).unwrap(), &voice).unwrap();
    merged.merge(part(2..4), &voice).unwrap();
    assert_eq!(written(&merged.answer(&voice)), written(&whole.answer(&voice)));
    assert_eq!((merged.len(), merged.is_empty()), (9, false));
    let other = Season::new(ManyQuestion::of("ball_speed".into()), &voice).unwrap();
    assert_eq!(merged.merge(other, &voice).unwrap_err().kind, "piles_differ");
}

#[test]
fn a_question_is_the_page_s_unless_something_is_said() {
    let voice = Voice::english();
    let text = "Club,Round,Ball speed,Carry\nOwn,1,150,240\nOwn,1,151,244\nB,1,152,251\nB,1,155,249\n\
        B,2,152,247\nB,2,153,252\nOwn,2,151,239\nOwn,2,150,246\n";
    let read = session_of(text, "shots.csv", None, &voice).unwrap();
    let usual = answer(&read, &Asking::default(), &voice).unwrap();
    assert_eq!((usual.asked.measure.as_str(), usual.asked.baseline), ("carry", 0));
    let turned =
        Asking { baseline: Some(" b".into()), measure: Some("ball_speed".into()), ..Asking::default() };
    let turned = answer(&read, &turned, &voice).unwrap();
    assert_eq!((turned.asked.measure.as_str(), turned.asked.baseline), ("ball_speed", 1));
    let nobody = Asking { candidate: Some("C".into()), ..Asking::default() };
    let refused = answer(&read, &nobody, &voice).unwrap_err();
    assert_eq!(refused.kind, "no_such_club");
    assert!(refused.remedy.contains("Own, B"), "{}", refused.remedy);
    // In meters the page offers 5 m.
    let meters = Voice::new(Language::english(), Units::Meters);
    let margin = answer(&read, &Asking::default(), &meters).unwrap().asked.margin.unwrap();
    assert!((margin - 5.0 / 0.9144).abs() < 1e-9, "{margin}");
}

#[test]
fn what_only_the_golfer_knows_is_waited_for() {
    let voice = Voice::english();
    let text = shots(1, 5.0, ["Own", "New"]).replacen("Own,1,", "Own,1,1", 1);
    let read = session_of(&text, "slip.csv", None, &voice).unwrap();
    assert!(!read.doubts.is_empty());
    assert_eq!(answer(&read, &Asking::default(), &voice).unwrap_err().kind, "waits");
    let mut season = Season::new(asked(), &voice).unwrap();
    season.take(Ok(read), &AboutSeason::default(), &voice);
    let answered = season.answer(&voice);
    assert_eq!((answered.answered.found.sessions, answered.unread.len()), (0, 1));
}

#[test]
fn workbooks_and_links_are_read_like_texts() {
    let voice = Voice::english();
    let tests = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../tests");
    let mut read = 0;
    for entry in fs::read_dir(tests.join("workbooks")).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|ending| ending == "xlsx" || ending == "ods") {
            match read_file(&path, None, &voice) {
                Ok(found) => {
                    assert!(!found.session.builds.is_empty());
                    read += 1;
                }
                Err(unread) => assert!(!unread.remedy.is_empty(), "{unread:?}"),
            }
        }
    }
    assert!(read > 0, "no workbook was read");
    let text = session_of(&shots(4, 6.0, ["Own", "New"]), "shots.csv", None, &voice).unwrap();
    let question =
        files::question(&text, &Asking { margin: Some(3.0), ..Asking::default() }, &voice).unwrap();
    let request =
        reading::link::PackRequest { session: text.session.clone(), question, view: View::default() };
    let link = straight_answer::whole::pack(&request, &voice).unwrap();
    let opened = session_of(&format!("https://golf.example/#{link}\n"), "link.txt", None, &voice).unwrap();
    assert_eq!(opened.session, text.session);
    assert_eq!(answer(&opened, &Asking::default(), &voice).unwrap().asked.margin, Some(3.0));
}

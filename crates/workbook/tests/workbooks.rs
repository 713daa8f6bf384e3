//! Workbooks made by general-purpose libraries, see `tests/workbooks/make.py`; and files that are none.

use std::fs;
use std::io::{Cursor, Read, Write};
use std::path::Path;
use straight_answer_workbook::{LARGEST_FILE, Sheet, sheets};
use text::Voice;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

fn bytes(name: &str) -> Vec<u8> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/workbooks");
    fs::read(folder.join(name)).expect("a file of the tree")
}

fn sheet(of: &[Sheet], name: &str) -> Sheet {
    of.iter().find(|sheet| sheet.name == name).expect("a sheet of that name").clone()
}

fn refused(bytes: Vec<u8>) -> &'static str {
    let refusal = sheets(bytes).expect_err("a refusal").words(&Voice::english());
    assert!(!refusal.message.is_empty() && !refusal.remedy.is_empty());
    refusal.kind
}

#[test]
fn a_sheet_becomes_lines_with_tabs() {
    let all = sheets(bytes("one_sheet.xlsx")).unwrap();
    assert_eq!(all.len(), 1);
    let Sheet { name, rows, text } = &all[0];
    assert_eq!((name.as_str(), *rows), ("Shots", 25));
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(lines[0], "Club\tRound\tCarry (yd)\tBall speed (mph)\tOffline (yd)");
    assert_eq!(lines.len(), 25);
    assert!(lines[1].starts_with("Own driver\t1\t2"));
}

#[test]
fn the_open_document_format_gives_the_same_shots() {
    let xlsx = sheets(bytes("one_sheet.xlsx")).unwrap();
    let ods = sheets(bytes("open_document.ods")).unwrap();
    let lines: Vec<&str> = ods[0].text.lines().collect();
    // Two empty rows below the headings keep their place: lines have the numbers that rows have.
    assert_eq!(lines[1..3], ["", ""]);
    let shots: Vec<&str> = lines[3..lines.len() - 1].to_vec();
    assert_eq!(shots, xlsx[0].text.lines().skip(1).collect::<Vec<_>>());
    assert_eq!(lines.last(), Some(&"\t14:05:22.5\t2026-05-03 14:05:00\tno"));
    assert_eq!(sheet(&ods, "Empty").text, "");
}

#[test]
fn every_sheet_is_there_by_name_and_odd_cells_keep_their_sense() {
    let all = sheets(bytes("several_sheets.xlsx")).unwrap();
    let names: Vec<&str> = all.iter().map(|sheet| sheet.name.as_str()).collect();
    assert_eq!(names, ["Notes", "Own driver", "Driver B", "Empty", "Odd cells"]);
    assert_eq!(sheet(&all, "Notes").text, "Invented session\t2026-05-03\nBay closed early\tyes\n");
    assert_eq!(sheet(&all, "Empty"), Sheet { name: "Empty".into(), rows: 0, text: String::new() });
    let odd = sheet(&all, "Odd cells").text;
    assert_eq!(
        odd.lines().take(5).collect::<Vec<_>>(),
        [
            "Club\tTime\tCarry (yd)\tSmash\tNote",
            "",
            "Own driver\t14:05:22\t251.4\t1.4820\t\"tab\there, \"\"quoted\"\",",
            "second line\"",
            "Own driver\t2026-05-03 14:06:00\t\t0.3",
        ]
    );
    assert!(odd.ends_with("\ta stray cell\n"));
}

#[test]
fn what_is_no_workbook_is_refused_by_kind() {
    assert_eq!(refused(bytes("no_workbook.zip")), "no_workbook");
    assert_eq!(refused(vec![b'P'; LARGEST_FILE + 1]), "too_large");
    assert_eq!(refused(Vec::new()), "broken");
    assert_eq!(refused(b"club,carry\n".to_vec()), "broken");
    let older = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
    assert_eq!(refused(older.to_vec()), "old_format");
    assert_eq!(refused(bytes("locked.xlsx")), "locked");
}

#[test]
fn a_damaged_workbook_is_refused_and_never_panics() {
    for name in ["one_sheet.xlsx", "open_document.ods"] {
        let whole = bytes(name);
        for keep in (0..whole.len()).step_by(97) {
            assert!(sheets(whole[..keep].to_vec()).is_err(), "{name} cut at {keep}");
        }
        for at in (0..whole.len()).step_by(31) {
            let mut hurt = whole.clone();
            hurt[at] ^= 0x55;
            let _ = sheets(hurt);
        }
    }
}

/// A workbook packed anew with one of its parts changed.
fn with_part_changed(name: &str, part: &str, change: impl FnOnce(&mut Vec<u8>)) -> Vec<u8> {
    let mut archive = ZipArchive::new(Cursor::new(bytes(name))).expect("a workbook");
    let mut changed = Vec::new();
    archive.by_name(part).and_then(|mut file| Ok(file.read_to_end(&mut changed)?)).expect("the part");
    change(&mut changed);
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for at in 0..archive.len() {
        let file = archive.by_index_raw(at).expect("a part");
        if file.name().is_ok_and(|name| name != part) {
            writer.raw_copy_file(file).expect("a copy");
        }
    }
    let stored = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
    writer.start_file(part, stored).expect("a new part");
    writer.write_all(&changed).expect("its bytes");
    writer.finish().expect("a packed file").into_inner()
}

#[test]
fn a_part_that_ends_too_early_is_refused_and_never_waited_for() {
    for (name, part) in [("open_document.ods", "content.xml"), ("one_sheet.xlsx", "xl/worksheets/sheet1.xml")]
    {
        let whole = with_part_changed(name, part, |_| {});
        assert_eq!(sheets(whole).map(|all| all[0].rows >= 25), Ok(true));
        for eighths in 1..8 {
            let cut = with_part_changed(name, part, |xml| xml.truncate(xml.len() * eighths / 8));
            assert_eq!(refused(cut), "broken", "{name}, {eighths} eighths of {part}");
        }
        for at in (0..2000).step_by(23) {
            let hurt = with_part_changed(name, part, |xml| {
                if let Some(byte) = xml.get_mut(at) {
                    *byte = b'9';
                }
            });
            let _ = sheets(hurt);
        }
    }
}

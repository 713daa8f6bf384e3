//! From the bytes of a file to its sheets, within limits that no file can talk its way around.

use crate::cell;
use crate::refused::Unreadable;
use calamine::{Data, Ods, OdsError, Reader, Xlsx, XlsxError};
use quick_xml::events::Event;
use serde::Serialize;
use std::io::{BufRead, BufReader, Cursor, Read};
use zip::ZipArchive;

/// Largest file, in bytes: a season of shots is a few hundred thousand.
pub const LARGEST_FILE: usize = 20_000_000;

/// Most that its parts may unpack to together, in bytes.
pub const MOST_UNPACKED: u64 = 200_000_000;

/// Last row of a sheet that may hold anything; the reader of text takes no more either.
pub const MOST_ROWS: usize = 100_000;

/// Longest text of a sheet, in bytes; the reader of text takes no more either.
const LONGEST_TEXT: usize = 10 * 1024 * 1024;

/// A sheet as text.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Sheet {
    /// As its tab says.
    pub name: String,
    /// Rows with anything in them.
    pub rows: usize,
    /// One line for each row from the first on, cells set apart by tabs; empty when the sheet is.
    pub text: String,
}

/// Which of the two formats.
enum Format {
    Xlsx,
    Ods,
}

/// Reads every sheet of a workbook; empty ones are among them.
///
/// # Errors
/// [`Unreadable`] for files that are too large, locked, broken or no workbook.
pub fn sheets(bytes: Vec<u8>) -> Result<Vec<Sheet>, Unreadable> {
    if bytes.len() > LARGEST_FILE {
        return Err(Unreadable::TooLarge { sheet: None });
    }
    match format(&bytes, MOST_UNPACKED)? {
        Format::Xlsx => of_xlsx(bytes),
        Format::Ods => of_ods(bytes),
    }
}

/// The format by what is packed in the file, after counting what it unpacks to.
fn format(bytes: &[u8], most_unpacked: u64) -> Result<Format, Unreadable> {
    if bytes.starts_with(&[0xd0, 0xcf, 0x11, 0xe0]) {
        // Older workbooks, and newer ones behind a password, are a file system of their own.
        let opened = Xlsx::new(Cursor::new(bytes));
        return Err(if matches!(opened, Err(XlsxError::Password)) {
            Unreadable::Locked
        } else {
            Unreadable::OldFormat
        });
    }
    let mut archive = ZipArchive::new(Cursor::new(bytes)).map_err(|_| Unreadable::Broken)?;
    let has = |name: &str| archive.file_names().flatten().any(|file| file.eq_ignore_ascii_case(name));
    let found = if has("xl/workbook.xml") {
        Ok(Format::Xlsx)
    } else if has("xl/workbook.bin") {
        Err(Unreadable::OldFormat)
    } else if has("content.xml") && has("mimetype") {
        Ok(Format::Ods)
    } else {
        Err(Unreadable::NoWorkbook)
    }?;
    // What the file says of its own size is not to be trusted: it is unpacked once, into nothing.
    let mut left = most_unpacked;
    for at in 0..archive.len() {
        let file = match archive.by_index(at) {
            Ok(file) => file,
            Err(zip::result::ZipError::UnsupportedArchive(_) | zip::result::ZipError::InvalidPassword) => {
                return Err(Unreadable::Locked);
            }
            Err(_) => return Err(Unreadable::Broken),
        };
        let unpacked =
            std::io::copy(&mut file.take(left), &mut std::io::sink()).map_err(|_| Unreadable::Broken)?;
        left = left
            .checked_sub(unpacked)
            .filter(|left| *left > 0)
            .ok_or(Unreadable::TooLarge { sheet: None })?;
    }
    if matches!(found, Format::Ods) {
        let content = archive.by_name("content.xml").map_err(|_| Unreadable::Broken)?;
        if !is_whole(BufReader::new(content)) {
            return Err(Unreadable::Broken);
        }
    }
    Ok(found)
}

/// Whether every element that begins also ends. Calamine looks for the end of a table until it finds it.
fn is_whole(content: impl BufRead) -> bool {
    let mut reader = quick_xml::Reader::from_reader(content);
    let mut buffer = Vec::new();
    let mut open = 0_usize;
    loop {
        match reader.read_event_into(&mut buffer) {
            Ok(Event::Start(_)) => open += 1,
            Ok(Event::End(_)) if open == 0 => return false,
            Ok(Event::End(_)) => open -= 1,
            Ok(Event::Eof) => return open == 0,
            Ok(_) => {}
            Err(_) => return false,
        }
        buffer.clear();
    }
}

fn of_xlsx(bytes: Vec<u8>) -> Result<Vec<Sheet>, Unreadable> {
    let refused = |error: XlsxError| {
        if matches!(error, XlsxError::Password) { Unreadable::Locked } else { Unreadable::Broken }
    };
    let mut book = Xlsx::new(Cursor::new(bytes)).map_err(refused)?;
    let mut sheets = Vec::new();
    for sheet in book.sheets_metadata().to_vec() {
        if sheet.typ != calamine::SheetType::WorkSheet {
            continue;
        }
        // Cell by cell: a stray cell in the last corner would make the whole sheet 17 billion cells.
        let mut cells = book.worksheet_cells_reader(&sheet.name).map_err(refused)?;
        let mut found_cells = Cells::new(&sheet.name);
        while let Some(found) = cells.next_cell().map_err(refused)? {
            let (row, column) = found.get_position();
            found_cells.put(row, column, cell::text(&Data::from(found.get_value().clone())))?;
        }
        sheets.push(found_cells.finish());
    }
    Ok(sheets)
}

fn of_ods(bytes: Vec<u8>) -> Result<Vec<Sheet>, Unreadable> {
    let refused = |error: OdsError| match error {
        OdsError::Password => Unreadable::Locked,
        OdsError::CellLimitExceeded { .. } => Unreadable::TooLarge { sheet: None },
        _ => Unreadable::Broken,
    };
    let mut book = Ods::new(Cursor::new(bytes)).map_err(refused)?;
    let mut sheets = Vec::new();
    for name in book.sheet_names() {
        let range = book.worksheet_range(&name).map_err(refused)?;
        let mut found_cells = Cells::new(&name);
        let (first_row, first_column) = range.start().unwrap_or_default();
        for (row, column, value) in range.used_cells() {
            let at = |first: u32, more: usize| first.saturating_add(u32::try_from(more).unwrap_or(u32::MAX));
            found_cells.put(at(first_row, row), at(first_column, column), cell::text(value))?;
        }
        sheets.push(found_cells.finish());
    }
    Ok(sheets)
}

/// The filled cells of a sheet as they arrive, in any order.
struct Cells {
    name: String,
    cells: Vec<(u32, u32, String)>,
    bytes: usize,
}

impl Cells {
    fn new(name: &str) -> Self {
        Self { name: name.to_owned(), cells: Vec::new(), bytes: 0 }
    }

    fn put(&mut self, row: u32, column: u32, text: String) -> Result<(), Unreadable> {
        if text.is_empty() {
            return Ok(());
        }
        // A line costs a tab for each column up to its last.
        self.bytes += text.len() + column as usize;
        if row as usize >= MOST_ROWS || self.bytes > LONGEST_TEXT {
            return Err(Unreadable::TooLarge { sheet: Some(self.name.clone()) });
        }
        self.cells.push((row, column, text));
        Ok(())
    }

    fn finish(mut self) -> Sheet {
        self.cells.sort_by_key(|&(row, column, _)| (row, column));
        let mut text = String::with_capacity(self.bytes);
        let (mut line, mut place, mut rows) = (0, 0, 0);
        for (row, column, cell) in &self.cells {
            if *row > line || rows == 0 {
                rows += 1;
                place = 0;
            }
            (line..*row).for_each(|_| text.push('\n'));
            (place..*column).for_each(|_| text.push('\t'));
            (line, place) = (*row, *column);
            push_quoted(&mut text, cell);
        }
        if rows > 0 {
            text.push('\n');
        }
        Sheet { name: self.name, rows, text }
    }
}

fn push_quoted(line: &mut String, cell: &str) {
    if cell.contains(['\t', '\n', '\r', '"']) {
        line.push('"');
        line.push_str(&cell.replace('"', "\"\""));
        line.push('"');
    } else {
        line.push_str(cell);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_unpacked_no_further_than_the_limit() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/workbooks/one_sheet.xlsx");
        let bytes = std::fs::read(path).unwrap();
        assert!(format(&bytes, MOST_UNPACKED).is_ok());
        assert_eq!(format(&bytes, 2000).err(), Some(Unreadable::TooLarge { sheet: None }));
    }

    #[test]
    fn a_document_that_ends_too_early_is_not_whole() {
        let whole = "<a><b x='1'/><c>d &amp; e</c></a>";
        assert!(is_whole(whole.as_bytes()));
        for broken in ["<a><b>", "<a></b></a>", "</a>", "<a", "<a><b></a></b>"] {
            assert!(!is_whole(broken.as_bytes()), "{broken}");
        }
    }

    #[test]
    fn a_stray_cell_costs_what_its_line_costs() {
        let mut cells = Cells::new("s");
        assert!(cells.put(99_999, 16_383, "x".into()).is_ok());
        assert_eq!(
            cells.put(100_000, 0, "x".into()).unwrap_err(),
            Unreadable::TooLarge { sheet: Some("s".into()) }
        );
        let wide = (0..2000).try_for_each(|row| cells.put(row, 16_383, "x".into()));
        assert!(matches!(wide, Err(Unreadable::TooLarge { .. })));
    }

    #[test]
    fn cells_out_of_order_come_into_order() {
        let mut cells = Cells::new("s");
        for (row, column, text) in [(2, 1, "d"), (0, 2, "b"), (0, 0, "a"), (2, 0, "c")] {
            cells.put(row, column, text.into()).unwrap();
        }
        assert_eq!(cells.finish().text, "a\t\tb\n\nc\td\n");
    }
}

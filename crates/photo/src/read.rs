//! The whole way from pixels to a reading: found, read, put together, looked at again, doubted.

use crate::doubts::counts_rows;
use crate::find;
use crate::layout::{Layout, layout};
use crate::models::Models;
use crate::number::{Number, number};
use crate::picture::Picture;
use crate::quad::{LINE, Quad, Strip, times};
use crate::reading::{Cell, Column, Cut, Doubt, Progress, Reading, Refused};
use crate::recognize::{self, Read};
use crate::signs::{BEFORE, has_bar};
use crate::tiles::{Tile, tiles};
use crate::token::Token;
use crate::work::{
    SURE, Work, bare, begun, begun_tile, columns, contrast, doubt, doubt_words, holes, is_blank,
    one_spelling, take_unit, values, with_unit, without_blank_rows,
};

/// No side of what is looked at is longer, in pixels.
pub const LONGEST: usize = 3000;
/// What the finder sees where there is memory enough; and where there is little.
pub const FINDER_LONGEST: usize = 1280;
/// Takes two thirds of the memory.
pub const FINDER_SMALL: usize = 960;
/// More texts than a screen shows.
const MOST_TEXTS: usize = 1500;
/// Up to this share of the numbers may be in doubt, in percent; and of a few numbers.
const MOST_DOUBTFUL: usize = 20;
const MOST_OF_FEW: usize = 50;
const FEW: usize = 20;

struct Reader<'a> {
    models: &'a Models,
    picture: Picture,
    progress: &'a mut dyn FnMut(Progress),
    done: usize,
    of: usize,
}

/// Reads a picture; `longest` is how large the finder sees it.
///
/// # Errors
/// [`Refused`] when there is no table, or too much of it is in doubt.
pub fn read(
    models: &Models,
    picture: Picture,
    longest: usize,
    progress: &mut dyn FnMut(Progress),
) -> Result<Reading, Refused> {
    progress(Progress::Finding);
    let given = picture.longest() as f32;
    let picture = picture.shrunk(LONGEST).stretched();
    let scale = given / picture.longest() as f32;
    let quads = find::texts(models, &picture, longest);
    if quads.is_empty() {
        return Err(Refused::NoText);
    }
    if quads.len() > MOST_TEXTS {
        return Err(Refused::TooMuch);
    }
    // About as many again are looked at twice.
    let of = 2 * quads.len();
    let mut reader = Reader { models, picture, progress, done: 0, of };
    let tokens = reader.tokens(&quads);
    let mut reading = match tiles(&tokens) {
        Some((tiles, beside)) => reader.of_tiles(&tokens, &tiles, beside),
        None => {
            let layout = layout(&tokens).ok_or(Refused::NoTable)?;
            // Numbers that make no column: the others could not be seen.
            if !layout.has_numbers() {
                let of = tokens.iter().filter(|it| it.is_number()).count();
                return Err(Refused::TooPoor { doubtful: of, of });
            }
            reader.of_table(&tokens, &layout)?
        }
    };
    for cell in &mut reading.cells {
        cell.quad = Quad(cell.quad.0.map(|corner| times(corner, scale)));
    }
    Ok(reading)
}

impl Reader<'_> {
    fn look(&mut self, strips: &[Strip]) -> Vec<Read> {
        let Self { models, progress, done, of, .. } = self;
        recognize::read(models, strips, &mut |more| {
            *done += more;
            *of = (*of).max(*done);
            progress(Progress::Reading { done: *done, of: *of });
        })
    }

    fn cut(&self, quads: impl Iterator<Item = Quad>) -> Vec<Strip> {
        quads.map(|it| Strip::cut(&self.picture, &it, 1.0)).collect()
    }

    /// Every text of the picture; boxes over several numbers are cut, and their parts read by themselves.
    fn tokens(&mut self, quads: &[Quad]) -> Vec<Token> {
        let strips = self.cut(quads.iter().copied());
        let read = self.look(&strips);
        let token = |(quad, read): (&Quad, &Read)| Token { line: read.line(), quad: *quad, is_cut: false };
        let mut tokens: Vec<Token> = quads
            .iter()
            .zip(&read)
            .map(token)
            .filter(|it| !it.text().trim().is_empty())
            .flat_map(Token::split)
            .collect();
        let cut: Vec<usize> = (0..tokens.len()).filter(|at| tokens[*at].is_cut).collect();
        let strips = self.cut(cut.iter().map(|at| tokens[*at].quad));
        for (at, read) in cut.iter().zip(self.look(&strips)) {
            let line = [read.line(), read.number()].into_iter().find(|it| number(&it.text).is_some());
            if let Some(line) = line {
                tokens[*at].line = line;
            }
        }
        tokens
    }

    fn of_tiles(&mut self, tokens: &[Token], tiles: &[Tile], mut above: Vec<String>) -> Reading {
        // Below a text that is no label nothing stands: no more than the noise of a photo. What shines may wash a number out.
        const NOISE: u8 = 12;
        let is_empty =
            |it: &Tile| it.number.is_none() && contrast(&Strip::cut(&self.picture, &it.quad, 1.0)) < NOISE;
        let (empty, tiles): (Vec<&Tile>, Vec<&Tile>) = tiles.iter().partition(|it| is_empty(it));
        above.extend(empty.iter().map(|it| it.label.clone()));
        let mut work: Vec<Work> =
            tiles.iter().enumerate().map(|(column, tile)| begun_tile(tokens, tile, column)).collect();
        self.read_tiles_as_numbers(&mut work);
        self.look_again(&mut work);
        let columns = tiles.iter().zip(&mut work).map(|(tile, work)| {
            let unit = take_unit(work);
            let unit = if tile.unit.is_empty() { unit } else { tile.unit.clone() };
            let found = number(&work.text);
            let has_signs = found.is_some_and(|it| it.sign.is_some() || it.side.is_some());
            Column { heading: with_unit(&tile.label, &unit), is_number: true, has_signs }
        });
        let columns = columns.collect();
        let reading = Reading { is_tiles: true, columns, rows: 1, above, ..Reading::default() };
        self.finished(reading, work)
    }

    /// What was read as a word is read as digits alone; what stays a word is missing.
    fn read_tiles_as_numbers(&mut self, work: &mut [Work]) {
        let words: Vec<usize> = (0..work.len()).filter(|at| number(&work[*at].text).is_none()).collect();
        let strips = self.cut(words.iter().map(|at| work[*at].quad));
        for (at, read) in words.iter().zip(self.look(&strips)) {
            let line = read.number();
            let is_read = number(&line.text).is_some();
            work[*at].text = if is_read { line.text } else { String::new() };
            work[*at].doubts.push(if is_read { Doubt::Filled } else { Doubt::Missing });
        }
    }

    fn of_table(&mut self, tokens: &[Token], layout: &Layout) -> Result<Reading, Refused> {
        let mut work: Vec<Work> = Vec::new();
        for row in 0..layout.rows.len() {
            for column in 0..layout.columns.len() {
                work.extend(layout.cell(row, column).map(|at| begun(&tokens[at], row, column)));
                let also = layout.also.iter().filter(|it| (it.1, it.2) == (row, column));
                if let Some(name) = work.last_mut() {
                    also.for_each(|it| name.goes_on(&tokens[it.0]));
                }
            }
        }
        let counting: Vec<bool> = (0..layout.columns.len())
            .map(|column| {
                layout.columns[column].is_number && counts_rows(&values(&work, column, layout.rows.len()))
            })
            .collect();
        self.read_as_numbers(&mut work, layout, &counting);
        self.read_missing_names(&mut work, layout);
        let measured = |it: &Work| {
            layout.columns[it.column].is_number && !counting[it.column] && number(&it.text).is_some()
        };
        let (mut numbers, mut rest): (Vec<Work>, Vec<Work>) = work.into_iter().partition(measured);
        one_spelling(&mut rest, layout);
        doubt_words(&mut rest, layout, &counting);
        self.look_again(&mut numbers);
        let columns = columns(layout, &mut numbers);
        self.look_for_signs(&mut numbers, &columns);
        doubt(&mut numbers, &columns, layout.rows.len());
        let doubtful = numbers.iter().chain(&rest).filter(|it| !it.doubts.is_empty()).count();
        let of = numbers.len() + rest.iter().filter(|it| it.doubts.contains(&Doubt::Missing)).count();
        let most = if of >= FEW { MOST_DOUBTFUL } else { MOST_OF_FEW };
        if doubtful * 100 > most * of {
            return Err(Refused::TooPoor { doubtful, of });
        }
        let mut work = numbers;
        work.extend(rest);
        work.sort_by_key(|it| (it.row, it.column));
        let rows = without_blank_rows(&mut work, layout.rows.len());
        let Layout { above, below, .. } = layout;
        let (above, below) = (above.clone(), below.clone());
        let reading = Reading { columns, rows, above, below, ..Reading::default() };
        Ok(self.finished(reading, work))
    }

    /// What stands among numbers and was read as a word is read as digits alone, and so is every hole.
    fn read_as_numbers(&mut self, work: &mut Vec<Work>, layout: &Layout, counting: &[bool]) {
        let looks_like_one = |it: &Work| {
            let letters = it.text.chars().filter(char::is_ascii_alphabetic).count();
            number(&it.text).is_none() && (it.text.contains(|it: char| it.is_ascii_digit()) || letters == 1)
        };
        let is_asked = |column: usize| layout.columns[column].is_number;
        // What counts the rows is known before it is read.
        let rows = layout.rows.len();
        let counts: Vec<Vec<Option<f64>>> =
            (0..layout.columns.len()).map(|column| values(work, column, rows)).collect();
        let is_next = |text: &str, row: usize, column: usize| {
            let before = row.checked_sub(1).and_then(|row| counts[column][row]);
            let after = counts[column].get(row + 1).copied().flatten();
            let expected = before.map(|it| it + 1.0).or(after.map(|it| it - 1.0));
            expected.is_some() && number(text).and_then(|it| it.value()) == expected
        };
        let words: Vec<usize> =
            (0..work.len()).filter(|at| is_asked(work[*at].column) && looks_like_one(&work[*at])).collect();
        let holes = holes(work, layout, &is_asked);
        let quads = words.iter().map(|at| work[*at].quad).chain(holes.iter().map(|it| it.2));
        let strips = self.cut(quads);
        let read: Vec<Read> = self.look(&strips);
        let (of_words, of_holes) = read.split_at(words.len());
        for (at, read) in words.iter().zip(of_words) {
            let line = read.number();
            let Work { row, column, .. } = work[*at];
            if counting[column] && !is_next(&line.text, row, column) {
                continue;
            }
            if number(&line.text).is_some() {
                if !counting[column] {
                    work[*at].doubts.push(Doubt::Filled);
                }
                work[*at].text = line.text;
                work[*at].sure = line.sure;
                work[*at].first = line.places.first().copied().unwrap_or(0.0);
            }
        }
        for (((row, column, quad), read), strip) in holes.iter().zip(of_holes).zip(&strips[words.len()..]) {
            let line = read.number();
            let is_read = number(&line.text).is_some();
            let counts = counting[*column];
            if (counts && !is_next(&line.text, *row, *column)) || (!is_read && is_blank(strip)) {
                continue;
            }
            let doubt = if is_read { Doubt::Filled } else { Doubt::Missing };
            let text = if is_read { line.text } else { String::new() };
            let first = line.places.first().copied().unwrap_or(0.0);
            let (doubts, quad) = (if counts { Vec::new() } else { vec![doubt] }, *quad);
            let (row, column, sure, other) = (*row, *column, line.sure, None);
            work.push(Work { row, column, quad, text, sure, other, doubts, first });
        }
    }

    /// A name that was overlooked is that of its neighbors, or stays away.
    fn read_missing_names(&mut self, work: &mut Vec<Work>, layout: &Layout) {
        let holes = holes(work, layout, &|column| !layout.columns[column].is_number);
        let strips = self.cut(holes.iter().map(|it| it.2));
        for ((row, column, quad), read) in holes.into_iter().zip(self.look(&strips)) {
            let line = read.line();
            let known = work.iter().find(|it| it.column == column && bare(&it.text) == bare(&line.text));
            if let Some(text) = known.map(|it| it.text.clone()) {
                let (sure, other, doubts, first) = (line.sure, None, Vec::new(), 0.0);
                work.push(Work { row, column, quad, text, sure, other, doubts, first });
            }
        }
    }

    /// A second look at each number: in gray, with more around it, a little wider.
    fn look_again(&mut self, work: &mut [Work]) {
        const AROUND: f32 = 0.55;
        const CLOSER: f32 = 0.15;
        // A strip with more around it is harder to read.
        const SURE_AGAIN: f32 = 0.75;
        const ABOVE: f32 = 0.08;
        let wider = |it: &Work| {
            // Narrow letters are seen as wide as usual ones: of two alike side by side one is lost otherwise.
            const LEAST: f32 = 1.08;
            const MOST: f32 = 1.6;
            const USUAL: f32 = 0.42;
            let letters = it.text.chars().count().max(1) as f32;
            let wide = it.quad.width() / it.quad.height().max(1.0) / letters;
            (USUAL / wide.max(0.01)).clamp(LEAST, MOST)
        };
        let again = work.iter().map(|it| {
            Strip::cut(&self.picture, &it.quad.grown(AROUND, AROUND, ABOVE), wider(it)).dark_on_light()
        });
        let again: Vec<Strip> = again.collect();
        let again = self.look(&again);
        // Where a rule or a neighbor stands close, no number is read with them: a look at less.
        let seen =
            |read: &Read| [read.line(), read.number()].into_iter().find(|it| number(&it.text).is_some());
        let closer: Vec<usize> = (0..work.len()).filter(|at| seen(&again[*at]).is_none()).collect();
        let strips = closer.iter().map(|at| {
            Strip::cut(&self.picture, &work[*at].quad.grown(CLOSER, CLOSER, ABOVE), wider(&work[*at]))
                .dark_on_light()
        });
        let strips: Vec<Strip> = strips.collect();
        let mut closer: Vec<(usize, Read)> = closer.into_iter().zip(self.look(&strips)).collect();
        for (at, (work, read)) in work.iter_mut().zip(again).enumerate() {
            let Some(one) = number(&work.text) else { continue };
            let read = closer.iter_mut().find(|it| it.0 == at).map_or(read, |it| std::mem::take(&mut it.1));
            let second = seen(&read).unwrap_or_else(|| read.number());
            if work.sure < SURE || second.sure < SURE_AGAIN {
                work.doubts.push(Doubt::Unsure);
            }
            if number(&second.text).is_none_or(|other| other.plain() != one.plain()) {
                work.doubts.push(Doubt::ReadOtherwise);
                work.other = Some(second.text).filter(|it| number(it).is_some());
            }
        }
    }

    /// Where a column has signs, what has none may have lost it.
    fn look_for_signs(&self, work: &mut [Work], columns: &[Column]) {
        for work in work.iter_mut().filter(|it| columns[it.column].has_signs) {
            let Some(Number { side: None, sign: None, .. }) = number(&work.text) else { continue };
            let wide = work.quad.grown(BEFORE, 0.0, 0.0);
            let strip = Strip::cut(&self.picture, &wide, 1.0);
            let (whole, before) = (wide.width().max(1.0), BEFORE * work.quad.height());
            if has_bar(&strip, (before + work.first * work.quad.width()) / whole) {
                work.doubts.push(Doubt::Sign);
                work.other.get_or_insert_with(|| format!("-{}", work.text));
            }
        }
    }

    fn finished(&self, mut reading: Reading, work: Vec<Work>) -> Reading {
        const AROUND: f32 = 0.6;
        const ABOVE: f32 = 0.1;
        reading.cut_height = LINE;
        for Work { row, column, quad, text, other, doubts, .. } in work {
            let cut = (reading.columns[column].is_number || !doubts.is_empty()).then(|| {
                let strip = Strip::cut(&self.picture, &quad.grown(AROUND, AROUND, ABOVE), 1.0);
                let cut = Cut { from: reading.cuts.len(), width: strip.width };
                reading.cuts.extend(strip.gray());
                cut
            });
            reading.cells.push(Cell { row, column, text, other, doubts, quad, cut });
        }
        reading
    }
}

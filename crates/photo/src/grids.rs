//! Whatever was found on a photo, wherever: texts make a table, tiles or nothing, and never a panic.
//!
//! `cargo xtask fuzz` throws many.

use crate::doubts::{against_another, counts_rows, out_of_line};
use crate::layout::layout;
use crate::number::{Number, number};
use crate::quad::Quad;
use crate::recognize::Line;
use crate::tiles::tiles;
use crate::token::Token;

const TEXTS: [&str; 24] = [
    "231.4",
    "12.5 L 98",
    "L 4.2",
    "-3",
    "+",
    "1,2,3",
    "2.345,6",
    "0",
    "999999999999999999999",
    "°",
    "Carry (yd)",
    "Ball speed Spin rate",
    "rpm",
    "7 iron A",
    "Average",
    "",
    " ",
    "L",
    "R0.8",
    "12 34 56 78 90",
    "()",
    "1.",
    "m",
    "231 yd",
];

/// Seeded chance, as small as it can be.
struct Chance(u64);

impl Chance {
    fn below(&mut self, limit: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % limit
    }

    fn within(&mut self, size: f32) -> f32 {
        self.below(10_000) as f32 / 10_000.0 * size
    }
}

fn token(chance: &mut Chance) -> Token {
    let text = TEXTS[chance.below(TEXTS.len())];
    // Most stand in rows and columns, some anywhere, some have no size at all.
    let (x, y) = match chance.below(4) {
        0 => (chance.within(3000.0), chance.within(3000.0)),
        _ => (
            chance.below(9) as f32 * 120.0 + chance.within(20.0),
            chance.below(12) as f32 * 40.0 + chance.within(6.0),
        ),
    };
    let height = if chance.below(20) == 0 { 0.0 } else { 8.0 + chance.within(40.0) };
    let width = if chance.below(20) == 0 { 0.0 } else { height * (0.4 + chance.within(9.0)) };
    let lean = chance.within(0.4) - 0.2;
    let corner = |along: f32, down: f32| [x + along - lean * down, y + down + lean * along];
    let quad = Quad([corner(0.0, 0.0), corner(width, 0.0), corner(width, height), corner(0.0, height)]);
    let places = text.chars().map(|_| chance.within(1.0)).collect();
    Token { line: Line { text: text.into(), sure: chance.within(1.0), places }, quad, is_cut: false }
}

/// Numbers under smaller texts, with whatever else stands around.
fn screen(chance: &mut Chance) -> Vec<Token> {
    let mut tokens = Vec::new();
    for place in 0..2 + chance.below(7) {
        let (x, y) = ((place % 3) as f32 * 400.0 + chance.within(30.0), (place / 3) as f32 * 180.0);
        for (text, down, height) in
            [(TEXTS[10 + chance.below(5)], 0.0, 18.0), (TEXTS[chance.below(10)], 30.0, 50.0)]
        {
            let (y, width) = (y + down, height * 0.5 * text.chars().count() as f32);
            let quad = Quad([[x, y], [x + width, y], [x + width, y + height], [x, y + height]]);
            let places = text.chars().map(|_| chance.within(1.0)).collect();
            tokens.push(Token { line: Line { text: text.into(), sure: 1.0, places }, quad, is_cut: false });
        }
    }
    tokens.extend((0..chance.below(3)).map(|_| token(chance)));
    tokens
}

#[test]
fn random_texts_make_tables_tiles_or_nothing() {
    const MANY: u64 = 150;
    let told = |name: &str| std::env::var(name).ok().map(|it| it.parse::<u64>().expect("a number"));
    let (many, first) = (told("PHOTO_GRIDS").unwrap_or(MANY), told("PHOTO_GRIDS_SEED").unwrap_or(0));
    let (mut tables, mut screens) = (0_u64, 0_u64);
    for seed in 0..many {
        let mut chance = Chance(seed.wrapping_add(first.wrapping_mul(1 << 40)));
        let found = if seed % 3 == 0 {
            screen(&mut chance)
        } else {
            (0..chance.below(90)).map(|_| token(&mut chance)).collect()
        };
        let tokens: Vec<Token> = found.into_iter().flat_map(Token::split).collect();
        if let Some((tiles, beside)) = tiles(&tokens) {
            screens += 1;
            let mut used: Vec<usize> = tiles.iter().filter_map(|it| it.number).collect();
            used.sort_unstable();
            assert!(used.windows(2).all(|it| it[0] != it[1]), "seed {seed}: a number in two tiles");
            assert!(tiles.iter().all(|it| it.number.is_none_or(|it| it < tokens.len())), "seed {seed}");
            assert!(used.len() + beside.len() <= tokens.len(), "seed {seed}: a text twice");
        }
        let Some(layout) = layout(&tokens) else { continue };
        tables += 1;
        let (rows, columns) = (layout.rows.len(), layout.columns.len());
        assert_eq!((layout.cells.len(), layout.headings.len()), (rows * columns, columns), "seed {seed}");
        let mut placed: Vec<usize> = layout.cells.iter().flatten().copied().collect();
        placed.sort_unstable();
        assert!(placed.windows(2).all(|it| it[0] != it[1]), "seed {seed}: a text in two cells");
        let column = |column: usize| -> Vec<Option<Number>> {
            (0..rows).map(|row| number(tokens[layout.cell(row, column)?].text())).collect()
        };
        let rest: Vec<usize> = layout.also.iter().map(|it| it.0).collect();
        assert!(rest.iter().all(|at| !placed.contains(at)), "seed {seed}: the rest of a name is a cell too");
        assert!(
            layout.also.iter().all(|it| layout.cell(it.1, it.2).is_some()),
            "seed {seed}: a rest of nothing"
        );
        assert!(
            layout.rows.windows(2).all(|it| it[0] <= it[1]),
            "seed {seed}: rows from the top: {:?}",
            layout.rows
        );
        let all: Vec<Vec<Option<Number>>> = (0..columns).map(column).collect();
        for one in &all {
            let numbers: Vec<&Number> = one.iter().flatten().collect();
            assert!(out_of_line(&numbers).iter().all(|at| *at < numbers.len()), "seed {seed}");
            let values = |of: &[Option<Number>]| of.iter().map(|it| it.as_ref()?.value()).collect::<Vec<_>>();
            counts_rows(&values(one));
            for other in &all {
                let against = against_another(&values(one), &values(other));
                assert!(against.iter().all(|row| *row < rows), "seed {seed}");
            }
        }
    }
    assert!(tables > many / 2 && screens > 0, "{tables} tables, {screens} screens of {many}");
}

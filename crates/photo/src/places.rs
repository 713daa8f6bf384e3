//! Where texts stand once the table is seen straight, and the lines they make.

use crate::lines::{Frame, grouped};
use crate::quad::Quad;
use crate::token::Token;

/// A column, seen straight.
#[derive(Debug, Clone)]
pub(crate) struct Span {
    pub(crate) from: f32,
    pub(crate) to: f32,
    pub(crate) is_number: bool,
}

/// Where a text stands, seen straight.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Place {
    pub(crate) from: f32,
    pub(crate) to: f32,
    pub(crate) y: f32,
}

impl Place {
    pub(crate) fn of(quad: &Quad, frame: &Frame) -> Self {
        Self { from: frame.x(quad.left()), to: frame.x(quad.right()), y: frame.y(quad.center()) }
    }

    pub(crate) fn middle(&self) -> f32 {
        (self.from + self.to) / 2.0
    }
}

/// Texts by line from the top, each from the left.
pub(crate) fn lines(texts: &[usize], places: &[Place], height: f32) -> Vec<Vec<usize>> {
    let (of, count) = grouped(&texts.iter().map(|at| places[*at].y).collect::<Vec<_>>(), 0.5 * height);
    let line = |line: usize| {
        let mut found: Vec<usize> =
            texts.iter().zip(&of).filter(|(_, of)| **of == line).map(|(at, _)| *at).collect();
        found.sort_by(|one, other| places[*one].from.total_cmp(&places[*other].from));
        found
    };
    (0..count).map(line).filter(|it| !it.is_empty()).collect()
}

pub(crate) fn said(tokens: &[Token], line: &[usize]) -> String {
    line.iter().map(|at| tokens[*at].text()).collect::<Vec<_>>().join(" ")
}

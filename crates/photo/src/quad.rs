//! Four corners around a text, and what lies between them in another picture.

use crate::picture::Picture;
use serde::Serialize;

/// A point of the picture.
pub(crate) type Point = [f32; 2];

/// The corners of a text from the top left on, as the hands of a clock go.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Quad(pub [[f32; 2]; 4]);

pub(crate) fn sum(one: Point, other: Point) -> Point {
    [one[0] + other[0], one[1] + other[1]]
}

pub(crate) fn less(one: Point, other: Point) -> Point {
    [one[0] - other[0], one[1] - other[1]]
}

pub(crate) fn times(one: Point, factor: f32) -> Point {
    [one[0] * factor, one[1] * factor]
}

pub(crate) fn length(one: Point) -> f32 {
    one[0].hypot(one[1])
}

pub(crate) fn between(one: Point, other: Point) -> Point {
    times(sum(one, other), 0.5)
}

impl Quad {
    pub(crate) fn center(&self) -> Point {
        let Self([a, b, c, d]) = *self;
        times(sum(sum(a, b), sum(c, d)), 0.25)
    }

    pub(crate) fn left(&self) -> Point {
        between(self.0[0], self.0[3])
    }

    pub(crate) fn right(&self) -> Point {
        between(self.0[1], self.0[2])
    }

    /// From the left to the right.
    pub(crate) fn across(&self) -> Point {
        less(self.right(), self.left())
    }

    /// From the top to the bottom.
    pub(crate) fn down(&self) -> Point {
        let Self([a, b, c, d]) = *self;
        less(between(c, d), between(a, b))
    }

    pub(crate) fn width(&self) -> f32 {
        length(self.across())
    }

    pub(crate) fn height(&self) -> f32 {
        length(self.down())
    }

    /// The part between two shares of its width.
    pub(crate) fn part(&self, from: f32, to: f32) -> Self {
        let Self([a, b, c, d]) = *self;
        let (top, bottom) = (less(b, a), less(c, d));
        Self([
            sum(a, times(top, from)),
            sum(a, times(top, to)),
            sum(d, times(bottom, to)),
            sum(d, times(bottom, from)),
        ])
    }

    /// Wider on the left, on the right, and above and below, in heights of the text.
    pub(crate) fn grown(&self, left: f32, right: f32, up_and_down: f32) -> Self {
        let Self([a, b, c, d]) = *self;
        let along = times(self.across(), self.height() / self.width().max(1e-6));
        let down = times(self.down(), up_and_down);
        let (to_left, to_right) = (times(along, -left), times(along, right));
        Self([
            sum(less(a, down), to_left),
            sum(less(b, down), to_right),
            sum(sum(c, down), to_right),
            sum(sum(d, down), to_left),
        ])
    }

    /// Where shares of width and height lie in the picture.
    pub(crate) fn place(&self) -> impl Fn(f32, f32) -> Point {
        let Self([a, b, c, d]) = *self;
        let (one, two) = (less(b, c), less(d, c));
        let three = [a[0] - b[0] + c[0] - d[0], a[1] - b[1] + c[1] - d[1]];
        let whole = one[0] * two[1] - two[0] * one[1];
        let whole = if whole.abs() < 1e-6 { 1e-6 } else { whole };
        let g = (three[0] * two[1] - two[0] * three[1]) / whole;
        let h = (one[0] * three[1] - three[0] * one[1]) / whole;
        let of = |axis: usize| (b[axis] - a[axis] + g * b[axis], d[axis] - a[axis] + h * d[axis], a[axis]);
        let ((xu, xv, x), (yu, yv, y)) = (of(0), of(1));
        move |u, v| {
            let depth = g * u + h * v + 1.0;
            [(xu * u + xv * v + x) / depth, (yu * u + yv * v + y) / depth]
        }
    }
}

/// How high a text is when it is read.
pub(crate) const LINE: usize = 48;

/// A text cut out and straightened, `LINE` high; three bytes for each pixel.
#[derive(Debug, Clone, Default)]
pub(crate) struct Strip {
    pub(crate) width: usize,
    pub(crate) pixels: Vec<u8>,
}

impl Strip {
    /// Cuts out what lies in a quad, `squeeze` times as wide as it is.
    pub(crate) fn cut(picture: &Picture, quad: &Quad, squeeze: f32) -> Self {
        const NARROWEST: f32 = 16.0;
        const WIDEST: f32 = 1200.0;
        // A larger text is averaged from more places.
        const MOST_PLACES: f32 = 6.0;
        let height = quad.height().max(1.0);
        let width = (LINE as f32 * quad.width() / height * squeeze).round().clamp(NARROWEST, WIDEST) as usize;
        let places = (height / LINE as f32).round().clamp(1.0, MOST_PLACES) as usize;
        let place = quad.place();
        let share = |at: usize, inner: usize, size: usize| {
            (at as f32 + (inner as f32 + 0.5) / places as f32) / size as f32
        };
        let mut pixels = Vec::with_capacity(3 * width * LINE);
        for y in 0..LINE {
            for x in 0..width {
                let mut color = [0.0_f32; 3];
                for inner in 0..places * places {
                    let at = place(share(x, inner % places, width), share(y, inner / places, LINE));
                    let found = picture.sample(at[0], at[1]);
                    (0..3).for_each(|it| color[it] += found[it]);
                }
                pixels.extend(color.map(|it| (it / (places * places) as f32).round() as u8));
            }
        }
        Self { width, pixels }
    }

    /// The light of its pixels, from its darkest to its lightest.
    pub(crate) fn gray(&self) -> Vec<u8> {
        let light = |it: &[u8; 3]| {
            let [r, g, b] = it.map(f32::from);
            0.299 * r + 0.587 * g + 0.114 * b
        };
        let lights: Vec<f32> = self.pixels.as_chunks::<3>().0.iter().map(light).collect();
        let mut sorted = lights.clone();
        sorted.sort_by(f32::total_cmp);
        let share = |share: f32| sorted[((sorted.len() - 1) as f32 * share) as usize];
        let (dark, bright) = (share(0.02), share(0.98));
        let factor = 255.0 / (bright - dark).max(8.0);
        lights.iter().map(|it| ((it - dark) * factor).clamp(0.0, 255.0) as u8).collect()
    }

    /// The same in gray, dark on light: another look at the same text.
    pub(crate) fn dark_on_light(&self) -> Self {
        let gray = self.gray();
        let mut sorted = gray.clone();
        sorted.sort_unstable();
        let is_light_on_dark = sorted[sorted.len() / 2] < 128;
        let turned = gray.iter().map(|it| if is_light_on_dark { 255 - it } else { *it });
        Self { width: self.width, pixels: turned.flat_map(|it| [it; 3]).collect() }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_corners_of_a_quad_lie_where_they_are() {
        let quad = Quad([[10.0, 5.0], [90.0, 12.0], [95.0, 40.0], [4.0, 30.0]]);
        let place = quad.place();
        let corners = [place(0.0, 0.0), place(1.0, 0.0), place(1.0, 1.0), place(0.0, 1.0)];
        for (found, corner) in corners.iter().zip(quad.0) {
            assert!(length(less(*found, corner)) < 1e-3, "{found:?} {corner:?}");
        }
        let whole = quad.part(0.0, 1.0);
        assert!(whole.0.iter().zip(quad.0).all(|(one, other)| length(less(*one, other)) < 1e-3));
        let grown = Quad([[0.0, 0.0], [40.0, 0.0], [40.0, 10.0], [0.0, 10.0]]).grown(0.5, 1.0, 0.1);
        assert_eq!(grown.0, [[-5.0, -1.0], [50.0, -1.0], [50.0, 11.0], [-5.0, 11.0]]);
    }
}

//! Where texts stand in a picture.

use crate::hull::{Tilted, at_angle, hull, smallest};
use crate::models::Models;
use crate::picture::Picture;
use crate::quad::{Point, Quad, length, less};

/// Sides of what the finder sees are whole numbers of these.
const STEP: usize = 32;
/// What a place must reach to belong to a text.
const PLACE: f32 = 0.3;
/// What the places of a text must reach together.
const TEXT: f32 = 0.5;
/// What is thinner than this, in places, is no text.
const THINNEST: f32 = 3.0;
/// How far a text reaches beyond what was found of it: by this share of its area for its length around.
const BEYOND: f32 = 1.6;
/// What the finder was taught with, for each color.
const MEAN: [f32; 3] = [0.485, 0.456, 0.406];
const SPREAD: [f32; 3] = [0.229, 0.224, 0.225];

/// The quads of all texts; the picture is looked at with its longer side no longer than `longest`.
pub(crate) fn texts(models: &Models, picture: &Picture, longest: usize) -> Vec<Quad> {
    let scale = (longest as f32 / picture.longest() as f32).min(1.0);
    let side = |it: usize| ((it as f32 * scale / STEP as f32).round() as usize).max(1) * STEP;
    let (width, height) = (side(picture.width), side(picture.height));
    let planes = picture.planes(width, height);
    // The models were taught with blue first.
    let input = [2, 1, 0].iter().zip(MEAN.iter().zip(SPREAD));
    let input = input.flat_map(|(color, (mean, spread))| {
        planes[*color].iter().map(move |it| (it / 255.0 - mean) / spread)
    });
    let found = models.find(input.collect(), width, height);
    let scale = [picture.width as f32 / width as f32, picture.height as f32 / height as f32];
    rectangles(&found, width, height)
        .iter()
        .map(|it| {
            let grown = it.width * it.height * BEYOND / (2.0 * (it.width + it.height));
            Quad(it.corners(grown).0.map(|corner| [corner[0] * scale[0], corner[1] * scale[1]]))
        })
        .collect()
}

fn rectangles(found: &[f32], width: usize, height: usize) -> Vec<Tilted> {
    let hulls: Vec<Vec<Point>> = together(found, width, height).into_iter().map(hull).collect();
    let alone: Vec<Tilted> = hulls.iter().map(|it| smallest(it)).collect();
    // Only a long text shows how it is turned; a short one stands as the long ones around it do.
    let is_long = |it: &Tilted| it.width > 2.5 * it.height && it.height >= THINNEST;
    let long: Vec<&Tilted> = alone.iter().filter(|it| is_long(it)).collect();
    let stands = hulls.iter().zip(&alone).map(|(hull, it)| {
        if is_long(it) || long.is_empty() {
            return *it;
        }
        const AROUND: usize = 7;
        let mut near: Vec<(f32, f32)> =
            long.iter().map(|long| (length(less(long.center, it.center)), long.angle)).collect();
        near.sort_by(|one, other| one.0.total_cmp(&other.0));
        near.truncate(AROUND);
        near.sort_by(|one, other| one.1.total_cmp(&other.1));
        at_angle(hull, near[near.len() / 2].1)
    });
    stands.filter(|it| it.width.min(it.height) >= THINNEST).collect()
}

/// The edges of places that hang together and are a text: the outermost of each row.
fn together(found: &[f32], width: usize, height: usize) -> Vec<Vec<Point>> {
    let mut seen = vec![false; found.len()];
    let mut texts = Vec::new();
    let mut waiting = Vec::new();
    for start in 0..found.len() {
        if seen[start] || found[start] <= PLACE {
            continue;
        }
        seen[start] = true;
        waiting.push(start);
        let (mut sum, mut count) = (0.0, 0);
        let first = start / width;
        let mut rows: Vec<(usize, usize)> = Vec::new();
        while let Some(at) = waiting.pop() {
            let (x, y) = (at % width, at / width);
            sum += found[at];
            count += 1;
            let row = y - first;
            if rows.len() <= row {
                rows.resize(row + 1, (usize::MAX, 0));
            }
            rows[row] = (rows[row].0.min(x), rows[row].1.max(x));
            for near_y in y.saturating_sub(1)..(y + 2).min(height) {
                for near_x in x.saturating_sub(1)..(x + 2).min(width) {
                    let near = near_y * width + near_x;
                    if !seen[near] && found[near] > PLACE {
                        seen[near] = true;
                        waiting.push(near);
                    }
                }
            }
        }
        if sum / count as f32 >= TEXT {
            let edge = rows.iter().enumerate().filter(|(_, (left, right))| left <= right);
            texts.push(
                edge.flat_map(|(row, (left, right))| {
                    let y = (first + row) as f32 + 0.5;
                    [[*left as f32 + 0.5, y], [*right as f32 + 0.5, y]]
                })
                .collect(),
            );
        }
    }
    texts
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_that_hang_together_are_one_text() {
        let mut found = vec![0.0; 100 * 40];
        let mut fill = |x0: usize, x1: usize, y0: usize, y1: usize, value: f32| {
            (y0..y1).for_each(|y| (x0..x1).for_each(|x| found[y * 100 + x] = value));
        };
        fill(5, 45, 5, 15, 0.9);
        fill(60, 66, 5, 15, 0.9);
        fill(10, 40, 25, 26, 0.9);
        fill(60, 90, 25, 35, 0.4);
        let found = rectangles(&found, 100, 40);
        let sides: Vec<_> = found.iter().map(|it| (it.width, it.height)).collect();
        assert_eq!(sides, [(39.0, 9.0), (5.0, 9.0)]);
    }
}

//! The smallest rectangle around the pixels of a text.

use crate::quad::{Point, Quad, less, sum, times};

/// A rectangle that stands at an angle, between -45 and 45 degrees.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Tilted {
    pub(crate) center: Point,
    pub(crate) width: f32,
    pub(crate) height: f32,
    /// In radians.
    pub(crate) angle: f32,
}

impl Tilted {
    /// Its corners, grown on every side.
    pub(crate) fn corners(&self, grown: f32) -> Quad {
        let (sine, cosine) = self.angle.sin_cos();
        let across = times([cosine, sine], self.width / 2.0 + grown);
        let down = times([-sine, cosine], self.height / 2.0 + grown);
        let corner = |x: f32, y: f32| sum(self.center, sum(times(across, x), times(down, y)));
        Quad([corner(-1.0, -1.0), corner(1.0, -1.0), corner(1.0, 1.0), corner(-1.0, 1.0)])
    }
}

/// The corners that hold all points between them.
pub(crate) fn hull(mut points: Vec<Point>) -> Vec<Point> {
    points.sort_by(|one, other| one[0].total_cmp(&other[0]).then(one[1].total_cmp(&other[1])));
    points.dedup();
    if points.len() < 3 {
        return points;
    }
    let half = |points: &mut dyn Iterator<Item = &Point>| {
        let mut kept: Vec<Point> = Vec::new();
        for point in points {
            while let [.., before, last] = kept.as_slice() {
                let (one, other) = (less(*last, *before), less(*point, *before));
                if one[0] * other[1] - one[1] * other[0] > 0.0 {
                    break;
                }
                kept.pop();
            }
            kept.push(*point);
        }
        kept.pop();
        kept
    };
    let mut found = half(&mut points.iter());
    found.extend(half(&mut points.iter().rev()));
    found
}

/// The smallest rectangle around a hull.
pub(crate) fn smallest(hull: &[Point]) -> Tilted {
    let quarter = std::f32::consts::FRAC_PI_2;
    let sides = hull.iter().zip(hull.iter().cycle().skip(1));
    let angles = sides.map(|(one, other)| {
        let side = less(*other, *one);
        let angle = side[1].atan2(side[0]);
        angle - (angle / quarter).round() * quarter
    });
    let around = angles.map(|angle| at_angle(hull, angle));
    let area = |it: &Tilted| it.width * it.height;
    around.min_by(|one, other| area(one).total_cmp(&area(other))).unwrap_or_else(|| at_angle(hull, 0.0))
}

/// The rectangle around a hull that stands at an angle.
pub(crate) fn at_angle(hull: &[Point], angle: f32) -> Tilted {
    let (sine, cosine) = angle.sin_cos();
    let (mut low, mut high) = ([f32::MAX; 2], [f32::MIN; 2]);
    for point in hull {
        let turned = [point[0] * cosine + point[1] * sine, point[1] * cosine - point[0] * sine];
        for axis in 0..2 {
            low[axis] = low[axis].min(turned[axis]);
            high[axis] = high[axis].max(turned[axis]);
        }
    }
    let middle = times(sum(low, high), 0.5);
    let center = [middle[0] * cosine - middle[1] * sine, middle[0] * sine + middle[1] * cosine];
    Tilted { center, width: high[0] - low[0], height: high[1] - low[1], angle }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_turned_rectangle_is_found_again() {
        let turned = Tilted { center: [100.0, 50.0], width: 60.0, height: 12.0, angle: 0.2 };
        let Quad([a, b, c, d]) = turned.corners(0.0);
        let inside = (0..50).map(|it| {
            let share = it as f32 / 50.0;
            sum(times(a, 1.0 - share), times(c, share))
        });
        let hull = hull(inside.chain([a, b, c, d]).collect());
        assert_eq!(hull.len(), 4);
        let found = smallest(&hull);
        for (found, is) in
            [(found.width, 60.0), (found.height, 12.0), (found.angle, 0.2), (found.center[0], 100.0)]
        {
            assert!((found - is).abs() < 1e-3, "{found} is not {is}");
        }
    }
}

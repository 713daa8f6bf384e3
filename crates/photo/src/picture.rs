//! Pixels: taken in, stretched to full contrast, shrunk by averaging.

/// Fewer pixels than this along a side hold no table.
const NARROWEST: usize = 48;

/// A picture of red, green and blue.
#[derive(Debug, Clone)]
pub struct Picture {
    pub(crate) width: usize,
    pub(crate) height: usize,
    /// Three bytes for each pixel, row by row.
    pub(crate) pixels: Vec<u8>,
}

impl Picture {
    /// A picture of pixels of four bytes, what shines through being white. Nothing when it is too small to hold a table,
    /// or the bytes are not as many as the sides say.
    #[must_use]
    pub fn from_rgba(width: usize, height: usize, bytes: &[u8]) -> Option<Self> {
        let expected = width.checked_mul(height)?.checked_mul(4)?;
        if width < NARROWEST || height < NARROWEST || bytes.len() != expected {
            return None;
        }
        let on_white = |color: u8, alpha: u8| {
            let (color, alpha) = (u32::from(color), u32::from(alpha));
            ((color * alpha + 255 * (255 - alpha)) / 255) as u8
        };
        let pixels = bytes.as_chunks::<4>().0.iter();
        let pixels = pixels.flat_map(|&[r, g, b, a]| [r, g, b].map(|color| on_white(color, a))).collect();
        Some(Self { width, height, pixels })
    }

    pub(crate) fn longest(&self) -> usize {
        self.width.max(self.height)
    }

    /// The light of a pixel, 0 to 255.
    pub(crate) fn light(&self, x: usize, y: usize) -> f32 {
        let at = 3 * (y * self.width + x);
        let [r, g, b] = [0, 1, 2].map(|color| f32::from(self.pixels[at + color]));
        0.299 * r + 0.587 * g + 0.114 * b
    }

    /// The same picture from black to white: a dark photo of a screen uses a small part of what there is.
    #[must_use]
    pub(crate) fn stretched(mut self) -> Self {
        const STEP: usize = 4;
        const MOST: f32 = 12.0;
        let mut counts = [0_usize; 256];
        for y in (0..self.height).step_by(STEP) {
            for x in (0..self.width).step_by(STEP) {
                counts[self.light(x, y) as usize & 255] += 1;
            }
        }
        let all: usize = counts.iter().sum();
        let share = |share: f32| {
            let wanted = share * all as f32;
            let mut seen = 0;
            let found = counts.iter().position(|count| {
                seen += count;
                seen as f32 >= wanted
            });
            found.unwrap_or(255) as f32
        };
        let (dark, light) = (share(0.01), share(0.995));
        let factor = (255.0 / (light - dark).max(1.0)).min(MOST);
        let table: Vec<u8> =
            (0..=255_u8).map(|it| ((f32::from(it) - dark) * factor).clamp(0.0, 255.0) as u8).collect();
        self.pixels.iter_mut().for_each(|it| *it = table[usize::from(*it)]);
        self
    }

    /// Three planes of another size, each value the average of what it covers.
    pub(crate) fn planes(&self, width: usize, height: usize) -> [Vec<f32>; 3] {
        let (across, down) = (covered(self.width, width), covered(self.height, height));
        let mut narrow = vec![[0.0_f32; 3]; width * self.height];
        for y in 0..self.height {
            for (x, covers) in across.iter().enumerate() {
                let mut sum = [0.0_f32; 3];
                for (at, weight) in covers {
                    let pixel = 3 * (y * self.width + at);
                    for (color, sum) in sum.iter_mut().enumerate() {
                        *sum += weight * f32::from(self.pixels[pixel + color]);
                    }
                }
                narrow[y * width + x] = sum;
            }
        }
        let mut planes = [(); 3].map(|()| vec![0.0_f32; width * height]);
        for (y, covers) in down.iter().enumerate() {
            for (at, weight) in covers {
                for x in 0..width {
                    for (color, plane) in planes.iter_mut().enumerate() {
                        plane[y * width + x] += weight * narrow[at * width + x][color];
                    }
                }
            }
        }
        planes
    }

    /// The picture with its longer side no longer than that.
    #[must_use]
    pub fn shrunk(self, longest: usize) -> Self {
        if self.longest() <= longest {
            return self;
        }
        let scale = longest as f32 / self.longest() as f32;
        let side = |it: usize| ((it as f32 * scale).round() as usize).max(1);
        let (width, height) = (side(self.width), side(self.height));
        let planes = self.planes(width, height);
        let pixels = (0..3 * width * height).map(|at| planes[at % 3][at / 3].round() as u8).collect();
        Self { width, height, pixels }
    }

    /// A color between the pixels, in the picture's own coordinates; beyond its sides that of the side.
    pub(crate) fn sample(&self, x: f32, y: f32) -> [f32; 3] {
        let place = |at: f32, size: usize| {
            let at = (at - 0.5).clamp(0.0, (size - 1) as f32);
            let first = at as usize;
            (first, (first + 1).min(size - 1), at - first as f32)
        };
        let ((left, right, dx), (top, bottom, dy)) = (place(x, self.width), place(y, self.height));
        let pixel =
            |x: usize, y: usize, color: usize| f32::from(self.pixels[3 * (y * self.width + x) + color]);
        [0, 1, 2].map(|color| {
            let upper = pixel(left, top, color) * (1.0 - dx) + pixel(right, top, color) * dx;
            let lower = pixel(left, bottom, color) * (1.0 - dx) + pixel(right, bottom, color) * dx;
            upper * (1.0 - dy) + lower * dy
        })
    }
}

/// For each place of a new size the old ones that it covers, with their shares.
fn covered(old: usize, new: usize) -> Vec<Vec<(usize, f32)>> {
    let step = old as f32 / new as f32;
    let of = |at: usize| {
        let (from, to) = (at as f32 * step, (at + 1) as f32 * step);
        let last = (to.ceil() as usize).clamp(1, old);
        let first = (from as usize).min(last - 1);
        let share = |it: usize| (to.min((it + 1) as f32) - from.max(it as f32)).max(0.0) / step;
        (first..last).map(|it| (it, share(it))).collect()
    };
    (0..new).map(of).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn averages_keep_the_light_of_a_picture() {
        let bytes: Vec<u8> =
            (0..60 * 50).flat_map(|at| [if at % 2 == 0 { 0 } else { 200 }, 50, 90, 255]).collect();
        let picture = Picture::from_rgba(60, 50, &bytes).unwrap();
        for (width, height) in [(30, 25), (17, 49), (64, 64)] {
            let planes = picture.planes(width, height);
            let mean = |plane: &[f32]| plane.iter().sum::<f32>() / plane.len() as f32;
            assert!((mean(&planes[0]) - 100.0).abs() < 1.0 && (mean(&planes[1]) - 50.0).abs() < 0.1);
        }
        assert!((picture.sample(30.0, 25.0)[1] - 50.0).abs() < 1e-3);
        assert_eq!(picture.shrunk(30).width, 30);
    }

    #[test]
    fn what_is_no_picture_of_a_table_is_none() {
        assert!(Picture::from_rgba(1, 1, &[0; 4]).is_none());
        assert!(Picture::from_rgba(50_000, 1, &[0; 200_000]).is_none());
        assert!(Picture::from_rgba(100, 100, &[0; 100]).is_none());
        assert!(Picture::from_rgba(usize::MAX, 2, &[]).is_none());
    }
}

//! Build effects within rounds: which builds the rounds link, by how much they differ, how exactly.
//!
//! After each round's mean is taken out, the normal equations of the build effects are the Laplacian of a
//! graph whose nodes are builds and whose edges are rounds. One build per connected part is held at zero;
//! what remains is positive definite and solved by Cholesky.
//! Source: Frisch and Waugh, Econometrica 1 (1933), 387–401, for taking out the rounds first.

/// Effects of builds within rounds and the inverse of their normal equations.
#[derive(Debug)]
pub(crate) struct Linked {
    effects: Vec<f64>,
    /// Zero in the rows and columns of builds held at zero.
    inverse: Vec<Vec<f64>>,
    part: Vec<usize>,
}

/// A difference of two effects; its variance in units of the residual variance.
#[derive(Debug)]
pub(crate) struct Link {
    pub(crate) difference: f64,
    pub(crate) variance: f64,
}

impl Linked {
    pub(crate) fn effects(&self) -> &[f64] {
        &self.effects
    }

    /// Free parameters: builds less connected parts.
    pub(crate) fn parameters(&self) -> usize {
        self.part.iter().enumerate().filter(|&(build, &part)| build != part).count()
    }

    /// `None` when no chain of rounds links them.
    pub(crate) fn pair(&self, candidate: usize, baseline: usize) -> Option<Link> {
        if candidate == baseline || self.part[candidate] != self.part[baseline] {
            return None;
        }
        let inverse = &self.inverse;
        let variance =
            inverse[candidate][candidate] + inverse[baseline][baseline] - 2.0 * inverse[candidate][baseline];
        Some(Link { difference: self.effects[candidate] - self.effects[baseline], variance })
    }
}

/// Solves for the build effects; cells are values by round and build. `None` if the arithmetic fails.
pub(crate) fn link(cells: &[Vec<Vec<f64>>], round_means: &[f64]) -> Option<Linked> {
    let k = cells.first()?.len();
    let mut laplacian = vec![vec![0.0; k]; k];
    let mut right = vec![0.0; k];
    let mut part: Vec<usize> = (0..k).collect();
    for (round, center) in cells.iter().zip(round_means) {
        let n: usize = round.iter().map(Vec::len).sum();
        for (i, set) in round.iter().enumerate() {
            right[i] += set.iter().map(|y| y - center).sum::<f64>();
            laplacian[i][i] += set.len() as f64;
            for (j, other) in round.iter().enumerate() {
                laplacian[i][j] -= (set.len() * other.len()) as f64 / n as f64;
                if !set.is_empty() && !other.is_empty() && part[i] != part[j] {
                    let (keep, gone) = (part[i].min(part[j]), part[i].max(part[j]));
                    part.iter_mut().filter(|p| **p == gone).for_each(|p| *p = keep);
                }
            }
        }
    }
    // A part is named after its first build, which is the one held at zero.
    for i in (0..k).filter(|&i| part[i] == i) {
        right[i] = 0.0;
        laplacian[i].fill(0.0);
        laplacian.iter_mut().for_each(|row| row[i] = 0.0);
        laplacian[i][i] = 1.0;
    }
    let factor = cholesky(laplacian)?;
    let column = |(build, &part): (usize, &usize)| {
        let mut unit = vec![0.0; k];
        unit[build] = if part == build { 0.0 } else { 1.0 };
        solve(&factor, unit)
    };
    let inverse = part.iter().enumerate().map(column).collect();
    Some(Linked { effects: solve(&factor, right), inverse, part })
}

/// Lower factor of a positive definite matrix; `None` if it is not one.
fn cholesky(mut a: Vec<Vec<f64>>) -> Option<Vec<Vec<f64>>> {
    for i in 0..a.len() {
        for j in 0..=i {
            let sum = a[i][j] - (0..j).map(|m| a[i][m] * a[j][m]).sum::<f64>();
            if i == j {
                if sum.is_nan() || sum <= 0.0 {
                    return None;
                }
                a[i][i] = sum.sqrt();
            } else {
                a[i][j] = sum / a[j][j];
            }
        }
    }
    Some(a)
}

fn solve(factor: &[Vec<f64>], mut b: Vec<f64>) -> Vec<f64> {
    let k = b.len();
    for i in 0..k {
        b[i] = (b[i] - (0..i).map(|j| factor[i][j] * b[j]).sum::<f64>()) / factor[i][i];
    }
    for i in (0..k).rev() {
        b[i] = (b[i] - (i + 1..k).map(|j| factor[j][i] * b[j]).sum::<f64>()) / factor[i][i];
    }
    b
}

//! Vectors of three, in the axes of the flight: x to the target, y up, z to the right.

use std::ops::{Add, Mul, Sub};

/// A vector; the unit is that of the quantity it stands for.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Vec3 {
    /// Towards the target.
    pub x: f64,
    /// Up.
    pub y: f64,
    /// To the right.
    pub z: f64,
}

impl Vec3 {
    /// No length.
    pub const ZERO: Self = Self::new(0.0, 0.0, 0.0);

    /// From components.
    #[must_use]
    pub const fn new(x: f64, y: f64, z: f64) -> Self {
        Self { x, y, z }
    }

    /// Scalar product.
    #[must_use]
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    /// Vector product, right-handed.
    #[must_use]
    pub fn cross(self, other: Self) -> Self {
        Self::new(
            self.y * other.z - self.z * other.y,
            self.z * other.x - self.x * other.z,
            self.x * other.y - self.y * other.x,
        )
    }

    /// Length.
    #[must_use]
    pub fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// The same direction with length 1; the zero vector stays zero.
    #[must_use]
    pub fn direction(self) -> Self {
        let length = self.length();
        if length > 0.0 { self * (1.0 / length) } else { Self::ZERO }
    }

    /// True when no component is infinite or no number.
    #[must_use]
    pub fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite() && self.z.is_finite()
    }
}

impl Add for Vec3 {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y, self.z + other.z)
    }
}

impl Sub for Vec3 {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x - other.x, self.y - other.y, self.z - other.z)
    }
}

impl Mul<f64> for Vec3 {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self::new(self.x * factor, self.y * factor, self.z * factor)
    }
}

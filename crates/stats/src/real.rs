//! Elementary functions that give the same bits in every browser, in Node and natively.
//!
//! Those of the standard library are the platform's own and differ in the last bit; a verdict must not depend on
//! where it was computed. The workspace's `clippy.toml` forbids the others. Sums, products, quotients and
//! square roots are exact to half a bit everywhere and need no substitute.

pub(crate) use libm::{asin, atan2, cbrt, exp, hypot, pow, sincos};
pub(crate) use libm::{expm1 as exp_m1, log as ln, log1p as ln_1p};

/// x².
#[inline]
pub(crate) fn square(x: f64) -> f64 {
    x * x
}

/// x⁴.
#[inline]
pub(crate) fn fourth(x: f64) -> f64 {
    square(square(x))
}

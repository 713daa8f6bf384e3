//! The strip that is asked about: how wide, and where it is aimed.

/// Width of a fairway when nobody said another, yd; as many meters where meters are shown. Common practice, no source.
pub const USUAL_FAIRWAY: f64 = 30.0;
/// Narrowest and widest strip worth asking for, yd.
pub(super) const FAIRWAYS: [f64; 2] = [5.0, 100.0];
/// Farthest aim to either side, yd.
pub(super) const FARTHEST_AIM: f64 = 60.0;

/// What is shown where the shots of a session land.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strip {
    /// Width of the fairway, yd.
    pub fairway: f64,
    /// Aim, yd right of its middle.
    pub aim: f64,
}

/// Which number of a [`Strip`] a refusal speaks of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StripPlace {
    /// Its width.
    Fairway,
    /// Where it is aimed.
    Aim,
}

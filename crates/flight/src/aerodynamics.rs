//! Drag, lift and spin decay of a ball as functions of the spin ratio S = ω r/V.
//!
//! [`Calibrated`] was fitted to common-practice carries (no source), because no published set that
//! could be read reproduces them: they miss a driver by −12 to −20 yd. What was compared:
//!
//! | set | how it was known |
//! |---|---|
//! | Bearman & Harvey 1976, Aeronaut. Q. 27:112, figs 7–8 (2000–6000 rpm, 13.7–88.1 m/s) | read as digitized in university course files |
//! | Smits & Smith 1994: CD = 0.24 + 0.18 S + 0.06 sin(π(Re − 9e4)/2e5), CL = 0.54 S^0.4 | from memory |
//! | Tavares, Shannon, Melvin 1999: spin torque Cm about 0.009–0.012 S | from memory |
//! | Lyu, Kensrud, Smith, Tosaya 2018: 13 balls, carries 18 m apart | abstract only |
//!
//! Valid for air speeds above about 20 m/s (Re above 6e4) and 0.03 < S < 1; no Reynolds term.

/// Air density at which the spin decay constant is stated, kg/m³.
pub(crate) const REFERENCE_DENSITY_KGPM3: f64 = 1.225;

/// Coefficients of a ball. The spin ratio is never negative.
pub trait Aerodynamics {
    /// Drag coefficient at a spin ratio.
    fn drag(&self, spin_ratio: f64) -> f64;
    /// CL/S: lift coefficient by spin ratio; finite at zero, where nothing is lifted.
    fn lift_per_spin_ratio(&self, spin_ratio: f64) -> f64;
    /// KW in dω/dt = −KW (ρ/1.225) V ω/r.
    fn spin_decay(&self) -> f64;
}

/// The set of this project, with a session's own multipliers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Calibrated {
    /// Factor on drag; 1 unless a session's ball was measured.
    pub drag_multiplier: f64,
    /// Factor on lift; 1 unless a session's ball was measured.
    pub lift_multiplier: f64,
}

impl Calibrated {
    /// A modern ball.
    pub const STANDARD: Self = Self { drag_multiplier: 1.0, lift_multiplier: 1.0 };
}

impl Aerodynamics for Calibrated {
    /// CD = 0.205 + 0.260 S²/(S² + 0.320²)
    fn drag(&self, spin_ratio: f64) -> f64 {
        let s2 = spin_ratio * spin_ratio;
        self.drag_multiplier * (0.205 + 0.260 * s2 / (s2 + 0.320 * 0.320))
    }

    /// CL = 0.540 S/√(S + 0.010)
    fn lift_per_spin_ratio(&self, spin_ratio: f64) -> f64 {
        self.lift_multiplier * 0.540 / (spin_ratio + 0.010).sqrt()
    }

    /// KW = 2.0e-5. Source: Smits & Smith 1994 (from memory), cross-checked with an extract that
    /// cites them (loss per second 0.0004 × mph × spin); equals Cm = 0.010 S.
    fn spin_decay(&self) -> f64 {
        2.0e-5
    }
}

/// The same coefficients at every spin: for checks against closed forms.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Constant {
    /// Drag coefficient.
    pub drag: f64,
    /// Lift coefficient.
    pub lift: f64,
    /// KW, see [`Aerodynamics::spin_decay`].
    pub spin_decay: f64,
}

impl Aerodynamics for Constant {
    fn drag(&self, _spin_ratio: f64) -> f64 {
        self.drag
    }
    fn lift_per_spin_ratio(&self, spin_ratio: f64) -> f64 {
        if spin_ratio > 0.0 { self.lift / spin_ratio } else { 0.0 }
    }
    fn spin_decay(&self) -> f64 {
        self.spin_decay
    }
}

//! A launch and the air in, in SI units; a trajectory out.

//! Samples in; estimates, intervals and tests out.

/**
 * What a plan may be, as the core has it: a form offers nothing that would be refused. What is usual comes with the plan.
 *
 * The core does not hand these out; each names the line of Rust that it repeats, and a test compares the two.
 */

/** A test holds one club against another; `builds` in `plan/request.rs`. */
export const FEWEST_BUILDS = 2;
/** `MOST_BUILDS` in `plan/request.rs`. */
export const MOST_BUILDS = 8;
/** `LONGEST_SET` in `plan/request.rs`. */
export const LONGEST_SET = 5;
/** `settle` in `plan/request.rs`. */
export const FEWEST_ROUNDS = 2;
/** `MOST_PLANNED_ROUNDS` in `analysis/levels.rs`. */
export const MOST_ROUNDS = 60;

/** What the form of a plan offers is what the core takes: its limits stand in the Rust sources. */
import { expect, test } from "vitest";
import { FEWEST_BUILDS, FEWEST_ROUNDS, LONGEST_SET, MOST_BUILDS, MOST_ROUNDS } from "../src/fair/limits.js";

const rust = Object.values(
  import.meta.glob<string>("../../crates/*/src/**/{plan,analysis}/*.rs", {
    query: "?raw",
    import: "default",
    eager: true,
  }),
).join("\n");

/** The number that a pattern finds in the Rust sources, and there only once. */
function inRust(pattern: RegExp): number {
  const found = [...rust.matchAll(pattern)];
  expect(found, String(pattern)).toHaveLength(1);
  return Number(found[0]![1]);
}

test("limits of a plan are the core's", () => {
  expect(FEWEST_BUILDS).toBe(inRust(/\((\d+)\.\.=MOST_BUILDS\)\.contains/g));
  expect(MOST_BUILDS).toBe(inRust(/const MOST_BUILDS: usize = (\d+);/g));
  expect(LONGEST_SET).toBe(inRust(/const LONGEST_SET: u32 = (\d+);/g));
  expect(FEWEST_ROUNDS).toBe(inRust(/request\.rounds\.unwrap_or\(\w+\), (\d+), MOST_PLANNED_ROUNDS/g));
  expect(MOST_ROUNDS).toBe(inRust(/const MOST_PLANNED_ROUNDS: u32 = (\d+);/g));
});

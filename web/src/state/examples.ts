/** Invented sessions whose truth is known, loaded only when asked for. Made by a seeded command, see `demo/`. */
import type { Question } from "../core/engine.js";

export interface Example {
  /** Its name in the page's address, `#example=fair`, and of its texts: what it is called, how it came about, what is true of it. */
  id: "fair" | "twelve" | "floor";
  text: () => Promise<string>;
  /** What is known of how it was hit. */
  question: Partial<Question>;
}

const raw = (module: { default: string }) => module.default;

export const EXAMPLES: readonly Example[] = [
  {
    id: "fair",
    text: () => import("../../../demo/fair-same.csv?raw").then(raw),
    question: { stopping: "fixed" },
  },
  {
    id: "twelve",
    text: () => import("../../../demo/fair-12-yards.csv?raw").then(raw),
    question: { stopping: "fixed" },
  },
  {
    id: "floor",
    text: () => import("../../../demo/sales-floor.csv?raw").then(raw),
    question: {},
  },
];

/** The example an address asks for: `#example=twelve`. */
export function exampleIn(fragment: string): Example | undefined {
  const id = new URLSearchParams(fragment.replace(/^#/, "")).get("example");
  return EXAMPLES.find((example) => example.id === id);
}

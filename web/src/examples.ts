/** Invented sessions whose truth is known, loaded only when asked for. Made by a seeded command, see `demo/`. */
import type { Question } from "./engine.js";

export interface Example {
  /** Its name in the page's address: `#example=fair`. */
  id: string;
  title: string;
  /** How it came about, and what is true of it. */
  truth: string;
  text: () => Promise<string>;
  /** What is known of how it was hit. */
  question: Partial<Question>;
}

const raw = (module: { default: string }) => module.default;

export const EXAMPLES: readonly Example[] = [
  {
    id: "fair",
    title: "Fair test, equal drivers",
    truth: "Hit in turns. In truth the two are the same.",
    text: () => import("../../demo/fair-same.csv?raw").then(raw),
    question: { stopping: "fixed" },
  },
  {
    id: "twelve",
    title: "Fair test, one is longer",
    truth: "Hit in turns. In truth one carries 12 yards more.",
    text: () => import("../../demo/fair-12-yards.csv?raw").then(raw),
    question: { stopping: "fixed" },
  },
  {
    id: "floor",
    title: "The sales floor",
    truth: "Five cold shots with the old club, then thirty with the new one. In truth they are the same.",
    text: () => import("../../demo/sales-floor.csv?raw").then(raw),
    question: {},
  },
];

/** The example an address asks for: `#example=twelve`. */
export function exampleIn(fragment: string): Example | undefined {
  const id = new URLSearchParams(fragment.replace(/^#/, "")).get("example");
  return EXAMPLES.find((example) => example.id === id);
}

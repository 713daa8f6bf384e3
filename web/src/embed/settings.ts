/** What a host may set, from the attributes of its element to the address of the frame and back. Pure. */
import type { Goal, Question } from "../core/engine.js";

/** The parts of the page that can be chosen, by the ids they have there. */
export const PARTS = ["shots", "counts", "answer", "trust", "luck", "landing", "cause", "potential", "share"] as const;

const GOALS: readonly string[] = ["higher", "lower", "nearer_zero", "tighter", "different"] satisfies Goal[];

export interface Settings {
  accent: string | null;
  scheme: "light" | "dark" | "auto";
  /** What is asked before the visitor has said anything. */
  opening: Partial<Question>;
  /** Null shows every part. */
  parts: string[] | null;
}

/** What stands in a frame's address; what is not understood counts as not said. */
export function settingsIn(query: string): Settings {
  const said = new URLSearchParams(query);
  const of = <T extends string>(name: string, choices: readonly T[]): T | null =>
    choices.find((choice) => choice === said.get(name)) ?? null;
  const accent = said.get("accent");
  const margin = Number(said.get("margin") ?? "");
  const measure = said.get("measure");
  const goal = of("goal", GOALS) as Goal | null;
  const parts = (said.get("parts") ?? "").split(/[\s,]+/).filter((part) => (PARTS as readonly string[]).includes(part));
  return {
    accent: accent !== null && /^#[0-9a-f]{6}$/i.test(accent) ? accent : null,
    scheme: of("scheme", ["light", "dark"]) ?? "auto",
    opening: {
      ...(measure !== null && /^\w{1,200}$/u.test(measure) ? { measure } : {}),
      ...(margin > 0 && Number.isFinite(margin) ? { margin } : {}),
      ...(goal === null ? {} : { goal }),
    },
    parts: parts.length > 0 ? parts : null,
  };
}

/** The ends of every scale of colors; the page's own stand in `styles/tokens.css`. */
export const WHITE = hex([255, 255, 255]);
const BLACK = hex([0, 0, 0]);

/** The accent, made as much darker or lighter as it needs to be read on this ground; and what is read on it. */
export function readable(accent: string, ground: string): { accent: string; on: string } {
  const toward = luminance(ground) > 0.2 ? 0 : 255;
  let color = accent;
  for (let step = 0; step < 20 && contrast(color, ground) < 4.5; step += 1) {
    color = hex(channels(color).map((channel) => Math.round(channel + (toward - channel) * 0.12)));
  }
  return { accent: color, on: contrast(color, WHITE) >= contrast(color, BLACK) ? WHITE : BLACK };
}

/** Contrast of two colors by WCAG 2.2. */
export function contrast(one: string, other: string): number {
  const [a, b] = [luminance(one), luminance(other)];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const channels = (color: string): number[] => [1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));

function hex(values: readonly number[]): string {
  return `#${values.map((value) => value.toString(16).padStart(2, "0")).join("")}`;
}

function luminance(color: string): number {
  const [red = 0, green = 0, blue = 0] = channels(color).map((channel) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

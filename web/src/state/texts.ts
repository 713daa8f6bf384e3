/** The texts a session is read from: what was given, what was said of each, and whose shots they are. Pure. */
import type { Hints, ReadResult, Refusal, Session } from "../core/engine.js";
import type { Sheet } from "../core/workbook.js";
import { say } from "../text/say.js";
import { shotCount } from "./shots.js";

/** Where a text came from. */
export interface Source {
  kind: "pasted" | "file" | "example" | "typed" | "averages" | "link" | "photo" | "logged";
  name: string;
  text: string;
  /** Whose shots they are, where the book says it. */
  of?: string;
  /** What was typed into the grid or the form, for opening it again. */
  draft?: unknown;
}

/** A text on its way in. */
export interface NewText {
  source: Source;
  hints?: Hints;
}

/** A text with what was said of it and what was read; null means that it is to be read. */
export interface Given {
  source: Source;
  hints: Hints;
  /** The club that shots without one were given to, until the golfer says which it was. */
  assumed: string | null;
  result: ReadResult | null;
  /** What stands on the page until it is read again. */
  shown: ReadResult | null;
}

/** Sheets of a workbook, from which the golfer chooses. */
export interface Workbook {
  name: string;
  sheets: readonly Sheet[];
}

/** What the core calls a club without a name, in every language; numbered on for the texts that follow. */
const UNNAMED = /^(?:Club|Build|Palo) (\d+)$/;

/** Whether a name is only a number, which says nothing of the club. */
export const isNumbered = (name: string): boolean => UNNAMED.test(name);

/**
 * The texts as they stand once more are added; shots without a club get a name that no club has yet. Files chosen
 * together are one for each club, and their names are as good as said.
 */
export function withMore(before: readonly Given[], more: readonly NewText[]): Given[] {
  const all = [...before];
  for (const { source, hints = {} } of more) {
    const assumed = all.length === 0 && more.length === 1 ? null : freeName(all, source);
    const isSaid = more.length > 1 && assumed !== null && !isNumbered(assumed);
    all.push({ source, hints: isSaid ? { build: assumed, ...hints } : hints, assumed, result: null, shown: null });
  }
  return all;
}

function freeName(given: readonly Given[], source: Source): string {
  const taken = new Set(given.flatMap(namesIn));
  const stem = source.kind === "file" ? source.name.replace(/\.[^.]{1,5}$/, "").trim() : "";
  if (stem !== "" && !taken.has(stem)) return stem;
  const numbers = [...taken].map((name) => Number(UNNAMED.exec(name)?.[1] ?? 0));
  return say("club-unnamed", { number: String(Math.max(given.length, ...numbers) + 1) });
}

const namesIn = ({ assumed, result }: Given): string[] => [
  ...(assumed === null ? [] : [assumed]),
  ...(result?.session.builds.map(({ name }) => name) ?? []),
];

/** What the reader is told of a text. */
export function hintsFor({ hints, assumed }: Given): Hints {
  return assumed !== null && hints.build === undefined ? { ...hints, build: assumed } : hints;
}

/** The name that shots without a club were given, when the golfer has not yet said which club it was. */
export function unnamed({ hints, assumed, result }: Given): string | null {
  if (!result || hints.build !== undefined) return null;
  if (result.notices.some(({ kind }) => kind === "build_assumed")) return result.session.builds[0]?.name ?? null;
  const used = result.session.builds.some(({ name }) => name === assumed);
  return used && hints.names?.[assumed!] === undefined ? assumed : null;
}

/** The texts after a club was given another name; two clubs of one name become one. */
export function renamed(given: readonly Given[], old: string, name: string): Given[] {
  return given.map((one) => {
    if (!one.result?.session.builds.some((build) => build.name === old)) return one;
    if (unnamed(one) === old) return again(one, { build: name });
    const before = one.hints.names ?? {};
    const names = Object.fromEntries(Object.entries(before).map(([read, now]) => [read, now === old ? name : now]));
    // The name as it stands in the text, unless it stands there for a club that was renamed before.
    if (names[old] === undefined) names[old] = name;
    return { ...one, hints: { ...one.hints, names }, result: null };
  });
}

/** The text with more said of it, to be read again. */
export const again = (one: Given, hints: Hints): Given => ({
  ...one,
  hints: mergeHints(one.hints, hints),
  result: null,
});

/** Corrections add up: those keyed by column, line or name one by one, the others as a whole. */
function mergeHints(before: Hints, more: Hints): Hints {
  const merged = Object.entries(more).map(([part, value]) => {
    const old = before[part as keyof Hints];
    const keyed = typeof value === "object" && typeof old === "object";
    return [part, keyed ? { ...old, ...value } : value];
  });
  return { ...before, ...(Object.fromEntries(merged) as Hints) };
}

/** Why a text that was to be added holds nothing; null when it holds shots or averages. */
export function nothingIn({ source, result }: Given): Refusal | null {
  if (!result || shotCount(result.session) > 0 || result.session.summaries.length > 0) return null;
  const [problem] = result.problems;
  return {
    kind: problem?.kind ?? "no_numbers",
    place: source.name,
    message: say("nothing-added", { why: problem?.message ?? say("no-shots") }),
    remedy: problem?.remedy ?? "",
  };
}

/** A session that came whole, as if it had been read: nothing was taken apart, nothing is amiss. */
export function asCame(session: Session): ReadResult {
  const rows = { shots: shotCount(session), summaries: session.summaries.length, headings: 0, problems: 0 };
  return {
    session,
    problems: [],
    notices: [],
    gaps: [],
    doubts: [],
    form: null,
    reading: {
      delimiter: "comma",
      decimal_mark: ".",
      layout: "rows",
      columns: [],
      rows,
      lines: [],
      single_measure: null,
    },
  };
}

/** The texts once the shots of the link are one; what was corrected meanwhile is still to be read from it. */
export function writtenOut(
  given: readonly Given[],
  { source, text, result }: { source: Source; text: string; result: ReadResult },
): Given[] {
  return given.map((one) =>
    one.source === source
      ? { ...one, source: { ...source, text }, result: one.result && result, shown: one.shown ?? result }
      : one,
  );
}

/** Sheets as texts; of several, each sheet's name stands for the club of its shots without one. */
export function textsOf({ name, sheets }: Workbook, chosen: readonly number[]): NewText[] {
  return chosen.flatMap((at) => {
    const sheet = sheets[at];
    if (!sheet) return [];
    const source: Source = {
      kind: "file",
      name: sheets.length > 1 ? `${sheet.name} (${name})` : name,
      text: sheet.text,
    };
    return [{ source, hints: chosen.length > 1 ? { build: sheet.name } : {} }];
  });
}

/** What is entered into the form of averages, as a text for the reader: one line for each club. Pure; no number is understood here. */
import type { Hints, Measure, ReadResult, Role } from "../core/engine.js";
import { say } from "../text/say.js";
import { shownIn } from "../text/units.js";
import { keyed, namesFor, textOf } from "./grid.js";

/** Which shots the averages stand for. */
export type Meant = "all" | "best" | "good";

export interface Entered {
  average: string;
  deviation: string;
}

export interface AveragesOfClub {
  name: string;
  shots: string;
  of: Meant;
  /** By measure. */
  values: Readonly<Record<string, Entered>>;
}

export interface Averages {
  clubs: readonly AveragesOfClub[];
  columns: readonly string[];
  units: Readonly<Record<string, string>>;
}

/** What was said wrongly, at its place in the form. */
export interface Fault {
  club: number;
  /** Null for the number of shots. */
  column: string | null;
  part: keyof Entered;
  message: string;
}

/** The words by which the reader tells which shots are meant. */
const MEANT: Record<Meant, string> = { all: "", best: "best", good: "good ones" };

const emptyClub = (name: string): AveragesOfClub => ({ name, shots: "", of: "all", values: {} });

export const emptyAverages = (names: readonly string[]): Averages => ({
  // Of clubs whose shots are there nobody enters averages too.
  clubs: (names.length === 1 ? namesFor(names).slice(1) : namesFor(names)).map(emptyClub),
  columns: ["carry"],
  units: {},
});

export const withClubChanged = (form: Averages, club: number, patch: Partial<AveragesOfClub>): Averages => ({
  ...form,
  clubs: form.clubs.map((one, at) => (at === club ? { ...one, ...patch } : one)),
});

export function withValue(form: Averages, club: number, column: string, patch: Partial<Entered>): Averages {
  const before = form.clubs[club]?.values ?? {};
  const value = { average: "", deviation: "", ...before[column], ...patch };
  return withClubChanged(form, club, { values: { ...before, [column]: value } });
}

export const withMoreClubs = (form: Averages): Averages => ({
  ...form,
  clubs: [...form.clubs, emptyClub(say("entry-club", { number: form.clubs.length + 1 }))],
});

const isFilled = ({ values }: AveragesOfClub, columns: readonly string[]): boolean =>
  columns.some((column) => (values[column]?.average ?? "").trim() !== "");

/** The text, what the reader is told of it, and the clubs on its lines after the first. */
export interface WrittenAverages {
  text: string;
  hints: Hints;
  clubs: readonly number[];
}

export function writtenAverages({ clubs, columns, units }: Averages, measures: readonly Measure[]): WrittenAverages {
  const filled = clubs.flatMap((club, at) => (isFilled(club, columns) ? [at] : []));
  const unitOf = (column: string) =>
    units[column] ?? shownIn(measures.find(({ id }) => id === column)?.unit ?? "").unit;
  const headings = columns.flatMap((column) => {
    const name = measures.find(({ id }) => id === column)?.name ?? column;
    return [say("heading-average", { measure: name }), say("heading-deviation", { measure: name })].map((heading) =>
      unitOf(column) ? `${heading} (${unitOf(column)})` : heading,
    );
  });
  const lines = filled.map((at) => {
    const { name, shots, of, values } = clubs[at]!;
    const cells = columns.flatMap((column) => [values[column]?.average ?? "", values[column]?.deviation ?? ""]);
    return [name.trim() || say("entry-club", { number: at + 1 }), shots, MEANT[of], ...cells];
  });
  const roles: Role[] = [
    "build",
    "count",
    "ignored",
    ...columns.flatMap((measure): Role[] => [{ measure }, { deviation: measure }]),
  ];
  const inUnits = columns.flatMap((column, at) =>
    units[column]
      ? [
          [3 + 2 * at, units[column]],
          [4 + 2 * at, units[column]],
        ]
      : [],
  );
  return {
    text: textOf([[say("role-build"), say("heading-shots"), say("heading-of-which"), ...headings], ...lines]),
    hints: {
      delimiter: "tab",
      layout: "averages",
      columns: keyed(roles, 0),
      units: Object.fromEntries(inUnits) as Record<number, string>,
      lines: keyed(["headings", ...filled.map(() => "summary" as const)], 1),
    },
    clubs: filled,
  };
}

/** What the core could not understand, at its place; also a number of shots that is none. */
export function faults(
  result: ReadResult,
  written: WrittenAverages,
  form: Averages,
  measures: readonly Measure[],
): Fault[] {
  const said = result.problems.flatMap(({ place, message }) => {
    const club = written.clubs[place.line - 2];
    const nameOf = (id: string) => measures.find((one) => one.id === id)?.name ?? id;
    const starts = (beginning: string) => place.column?.startsWith(beginning) ?? false;
    const isAverage = (id: string) => starts(say("heading-average", { measure: nameOf(id) }));
    const isDeviation = (id: string) => starts(say("heading-deviation", { measure: nameOf(id) }));
    const column = form.columns.find((id) => isAverage(id) || isDeviation(id)) ?? null;
    const part = column !== null && isDeviation(column) ? ("deviation" as const) : ("average" as const);
    return club === undefined ? [] : [{ club, column, part, message }];
  });
  const counts = result.session.summaries.flatMap(({ n, line }) => {
    const club = line === null ? undefined : written.clubs[line - 2];
    const isTyped = club !== undefined && form.clubs[club]!.shots.trim() !== "";
    return isTyped && n === null
      ? [{ club, column: null, part: "average" as const, message: say("averages-no-count") }]
      : [];
  });
  return [...said, ...counts];
}

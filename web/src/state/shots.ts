/**
 * The shots of a session, whether they came one by one or as columns. Pure.
 *
 * The core hands over columns: numbers in a row cross in one piece, where a hundred thousand objects would hold the page up.
 * A shot becomes an object only when it is shown.
 */
import type { Session, Shot } from "../core/engine.js";

/** What was said by hand of single shots, by position: why one is set aside, null when it counts again. */
export type SetAside = Readonly<Record<number, string | null>>;

export const shotCount = ({ columns, shots }: Session): number => columns?.build.length ?? shots.length;

/** Index of the build of a shot. */
export const buildOf = ({ columns, shots }: Session, at: number): number => columns?.build[at] ?? shots[at]!.build;

/** A shot's own number; null where it has none. */
export const numberOf = ({ columns, shots }: Session, at: number): number | null =>
  columns ? known(columns.number[at]) : shots[at]!.number;

/** Index into the values of the session's second factor. */
export const secondOf = ({ columns, shots }: Session, at: number): number | undefined =>
  columns ? (known(columns.second[at]) ?? undefined) : shots[at]!.second;

/** How many shots do not count. */
export const leftOutCount = ({ columns, shots }: Session): number =>
  columns?.left_out.length ?? shots.filter((shot) => shot.left_out !== null).length;

/** What was noted of shots, one text for each that has a note. */
export const notesIn = ({ columns, shots }: Session): string[] =>
  columns?.notes.map(([, note]) => note) ?? shots.flatMap(({ note }) => (note === undefined ? [] : [note]));

/** The shots from one position up to another. */
export function shotsFrom(session: Session, from: number, to: number): Shot[] {
  const { columns, shots } = session;
  if (!columns) return shots.slice(from, to);
  const [leftOut, notes] = [new Map(columns.left_out), new Map(columns.notes)];
  const end = Math.min(to, columns.build.length);
  return Array.from({ length: Math.max(end - from, 0) }, (_, more) => {
    const at = from + more;
    const [note, second] = [notes.get(at), known(columns.second[at])];
    return {
      build: columns.build[at]!,
      round: known(columns.round[at]),
      number: known(columns.number[at]),
      values: Object.fromEntries(
        session.measures.flatMap((id) => (columns.values[id] ? [[id, known(columns.values[id]![at])]] : [])),
      ),
      left_out: leftOut.get(at) ?? null,
      ...(note === undefined ? {} : { note }),
      ...(second === null ? {} : { second }),
    };
  });
}

/** The session with what was said by hand, which goes before what stands in the text. */
export function withReasons(session: Session, setAside: SetAside): Session {
  const { columns } = session;
  if (!columns) {
    const shots = session.shots.map((shot, index) => {
      const said = setAside[index];
      return said === undefined ? shot : { ...shot, left_out: said };
    });
    return { ...session, shots };
  }
  const reasons = new Map<number, string | null>(columns.left_out);
  for (const [at, said] of Object.entries(setAside)) reasons.set(Number(at), said);
  const left_out = [...reasons]
    .flatMap(([at, said]): [number, string][] => (said === null ? [] : [[at, said]]))
    .filter(([at]) => at < columns.build.length)
    .sort(([one], [other]) => one - other);
  return { ...session, columns: { ...columns, left_out } };
}

/** A number of a column; null where there is none. */
const known = (value: number | null | undefined): number | null =>
  value === undefined || value === null || Number.isNaN(value) ? null : value;

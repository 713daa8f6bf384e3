/** What was found in sentences, as the draft of the form that opens filled in. Pure. */
import type { ReadResult } from "../core/engine.js";

/** A form and its draft. */
interface Filled {
  entry: { kind: "averages" | "grid"; at: null };
  draft: unknown;
}

/** The form to open and its draft; null where the only text was no sentences. */
export function formDraft(results: readonly ReadResult[]): Filled | null {
  const form = results.length === 1 ? results[0]!.form : null;
  if (!form) return null;
  if (form.kind === "averages") {
    const columns = [...new Set(form.rows.flatMap(({ values }) => Object.keys(values)))];
    const clubs = form.rows.map(({ name, n, values }) => ({
      name,
      shots: n === null ? "" : String(n),
      of: "all",
      values: Object.fromEntries(
        Object.entries(values).map(([id, value]) => [id, { average: String(value), deviation: "" }]),
      ),
    }));
    return { entry: { kind: "averages", at: null }, draft: { clubs, columns, units: {} } };
  }
  const clubs = form.rows.map(({ name, shots }) => ({ name, rows: shots.map((shot) => [String(shot)]) }));
  return { entry: { kind: "grid", at: null }, draft: { clubs, columns: ["carry"], units: {} } };
}

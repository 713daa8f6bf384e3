/** An engine for unit tests: invented answers, every call written down. */
import type { Engine, Finding, Measure, ReadResult, Report, Session } from "../src/core/engine.js";
import { Refused } from "../src/core/refusal.js";

export const MEASURES: Measure[] = [
  measure("carry", "Carry", "yd", 0, "higher", 5),
  measure("offline", "Offline", "yd", 0, "nearer_zero", 5),
  measure("ball_speed", "Ball speed", "mph", 1, "higher", 1.5),
  measure("spin_rate", "Spin rate", "rpm", 0, "depends", 250),
  measure("smash", "Smash factor", "", 2, "higher", 0.02),
];

function measure(
  id: string,
  name: string,
  unit: Measure["unit"],
  decimals: number,
  better: Measure["better"],
  margin: number,
): Measure {
  return {
    id,
    name,
    unit,
    decimals,
    better,
    plausible: { low: 0, high: 400 },
    margin,
    offered_margin: margin,
    margin_why: "Common practice, no source.",
  };
}

/** A session of `builds` clubs with `n` shots each of the given measures. */
export function session(builds: number, n = 3, measures = ["carry"]): Session {
  return {
    builds: Array.from({ length: builds }, (_, index) => ({ name: `Club ${index + 1}` })),
    measures,
    custom: [],
    shots: Array.from({ length: builds * n }, (_, index) => ({
      build: index % builds,
      round: null,
      number: index + 1,
      values: Object.fromEntries(measures.map((id) => [id, 200 + index])),
      left_out: null,
    })),
    summaries: [],
    order: "unknown",
  };
}

export function readResult(of: Session): ReadResult {
  return {
    session: of,
    problems: [],
    notices: [],
    doubts: [],
    form: null,
    reading: {
      delimiter: "comma",
      decimal_mark: ".",
      layout: "rows",
      columns: [],
      rows: { shots: of.shots.length, summaries: 0, headings: 1, problems: 0 },
    },
  } as unknown as ReadResult;
}

const FACTS: Finding["facts"] = {
  order: "not_known",
  order_allowance: "included",
  number: "not_said",
  rests_on: "shots",
  scatter_is_assumed: false,
  says_next_to_nothing: false,
  differs_on: [],
};

export function report(measure = "carry", margin: number | null = 5): Report {
  const decision = { kind: "cannot_tell" } as const;
  const words = { headline: "Not settled.", line: "In a few words.", lead: "", step: "", detail: "", next: "" };
  const finding: Finding = {
    baseline: 0,
    candidate: 1,
    measure,
    decision,
    estimate: null,
    words,
    numbers: { baseline: null, candidate: null },
    printed: null,
    both_ways: null,
    facts: FACTS,
  };
  return {
    asked: { baseline: 0, candidate: 1, measure, goal: "higher", margin, margin_is_default: true, stopping: "unknown" },
    order: "unknown",
    rounds: 0,
    answer: { candidate: 1, decision, estimate: null, words, facts: FACTS },
    overlays: [],
    findings: [finding],
  } as unknown as Report;
}

const notAsked = (): Promise<never> => Promise.reject(new Error("not asked for in these tests"));

export function fakeEngine(): Engine & { calls: string[] } {
  const calls: string[] = [];
  return {
    calls,
    measures: async () => MEASURES,
    decode: notAsked,
    leftOfLink: notAsked,
    read: async (text) => {
      calls.push(`read ${text.length}`);
      return readResult(session(2));
    },
    join: async (sessions) => {
      calls.push(`join ${sessions.length}`);
      return sessions[0]!;
    },
    loadTheRest: async () => undefined,
    check: async ({ session: { shots } }) => {
      calls.push(`check ${shots.length}`);
      return report();
    },
    unpack: notAsked,
    share: notAsked,
    writeCsv: () => Promise.resolve(""),
    landing: notAsked,
    cause: notAsked,
    potential: notAsked,
    consistency: notAsked,
    second: notAsked,
    inStandardAir: notAsked,
    bet: notAsked,
    typical: notAsked,
    luck: ({ shown }) => {
      calls.push(`luck ${shown ?? "open"}`);
      return Promise.reject(new Refused({ kind: "one_build", place: "session.builds", message: "m", remedy: "r" }));
    },
  };
}

/** What the state wants next, asked of the engine, and the outcome as a message. */
import type { Engine, ReadResult, Session } from "../core/engine.js";
import { readIn } from "../core/read-in-units.js";
import type { Message, State } from "./state.js";
import { hintsFor } from "./texts.js";

export async function work(engine: Engine, state: State): Promise<Message> {
  const { turn, read, question, sent } = state;
  if (state.wants === "check" && read && question) {
    return {
      type: "answered",
      turn,
      report: await engine.check({ session: read.session, question }, sent ? "sender" : "own"),
    };
  }
  return { type: "read", turn, ...(await readAll(engine, state)) };
}

/** Reads what has not been read, and joins what there is. */
async function readAll(engine: Engine, { given, order }: State): Promise<{ results: ReadResult[]; session: Session }> {
  const alone = given.length === 1 && order !== null ? { order } : {};
  const results: ReadResult[] = [];
  for (const one of given) {
    // A club of a text before this one may be spelled otherwise here.
    const others = results.flatMap(({ session }) => session.builds.map(({ name }) => name));
    const beside = others.length > 0 ? { others } : {};
    results.push(one.result ?? (await readIn(engine, one.source.text, { ...hintsFor(one), ...alone, ...beside })));
  }
  const [first] = results;
  const session =
    first && results.length === 1
      ? first.session
      : await engine.join(
          results.map((result) => result.session),
          order,
        );
  return { results, session };
}

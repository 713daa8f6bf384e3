/** The engine in a worker, behind the same interface: for texts and sessions long enough to stop the page. */
import { Refused, openLocal, type Engine, type Refusal, type Session } from "./engine.js";

/** A call as it crosses to the worker. */
export interface Call {
  id: number;
  name: keyof Engine;
  parameters: unknown[];
}

/** The worker's answer to one call. */
export type Reply = { id: number; value: unknown } | { id: number; refusal: Refusal };

/** Texts longer than this, in characters, are read in the worker: about 5,000 rows. */
const LONG_TEXT = 200_000;
/** Sessions with more shots than this are checked in the worker. */
const MANY_SHOTS = 4_000;

/** What `openRemote` needs of a worker. */
export type Port = Pick<Worker, "postMessage"> & {
  onmessage: ((event: MessageEvent<Reply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
};

/** The engine that answers through `port`. */
export function openRemote(port: Port): Engine {
  const waiting = new Map<number, { resolve: (value: never) => void; reject: (why: unknown) => void }>();
  let last = 0;
  port.onmessage = ({ data }) => {
    const call = waiting.get(data.id);
    waiting.delete(data.id);
    if ("refusal" in data) call?.reject(new Refused(data.refusal));
    else call?.resolve(data.value as never);
  };
  port.onerror = (event) => {
    for (const call of waiting.values()) call.reject(new Error(event.message));
    waiting.clear();
  };
  const call = <T>(name: keyof Engine, ...parameters: unknown[]) =>
    new Promise<T>((resolve, reject) => {
      const id = ++last;
      waiting.set(id, { resolve: resolve as (value: never) => void, reject });
      port.postMessage({ id, name, parameters } satisfies Call);
    });
  return {
    measures: () => call("measures"),
    read: (text, hints) => call("read", text, hints),
    join: (sessions, order) => call("join", sessions, order),
    check: (request) => call("check", request),
    luck: (request) => call("luck", request),
  };
}

/** Short work on this thread, where it is fastest; long work in a worker, started when first needed. */
export async function openEngine(startWorker: () => Port): Promise<Engine> {
  const local = await openLocal();
  let remote: Engine | null = null;
  const away = () => (remote ??= openRemote(startWorker()));
  const engineFor = (session: Session) => (session.shots.length > MANY_SHOTS ? away() : local);
  return {
    measures: local.measures,
    read: (text, hints) => (text.length > LONG_TEXT ? away() : local).read(text, hints),
    join: (sessions, order) => {
      const shots = sessions.reduce((sum, session) => sum + session.shots.length, 0);
      return (shots > MANY_SHOTS ? away() : local).join(sessions, order);
    },
    check: (request) => engineFor(request.session).check(request),
    luck: (request) => engineFor(request.session).luck(request),
  };
}

/** The engine in a worker, behind the same interface: for texts and sessions long enough to stop the page. */
import { openLocal, type Engine, type Session } from "./engine.js";
import { caller, type Port } from "./port.js";

/** Texts longer than this, in characters, are read in the worker: about 5,000 rows. */
const LONG_TEXT = 200_000;
/** Sessions with more shots than this are checked in the worker. */
const MANY_SHOTS = 4_000;

/** The engine that answers through `port`. */
export function openRemote(port: Port): Engine {
  const call = caller(port);
  return {
    measures: () => call("measures"),
    decode: (bytes, name) => call("decode", bytes, name),
    read: (text, hints) => call("read", text, hints),
    join: (sessions, order) => call("join", sessions, order),
    check: (request) => call("check", request),
    luck: (request) => call("luck", request),
    unpack: (link) => call("unpack", link),
    share: (request) => call("share", request),
    writeCsv: (session) => call("writeCsv", session),
  };
}

/** Short work on this thread, where it is fastest; long work in a worker, started when first needed. */
export async function openEngine(startWorker: () => Port, language: string): Promise<Engine> {
  const local = await openLocal(language);
  let remote: Engine | null = null;
  const away = () => (remote ??= openRemote(startWorker()));
  const engineFor = (session: Session) => (session.shots.length > MANY_SHOTS ? away() : local);
  return {
    measures: local.measures,
    decode: local.decode,
    read: (text, hints) => (text.length > LONG_TEXT ? away() : local).read(text, hints),
    join: (sessions, order) => {
      const shots = sessions.reduce((sum, session) => sum + session.shots.length, 0);
      return (shots > MANY_SHOTS ? away() : local).join(sessions, order);
    },
    check: (request) => engineFor(request.session).check(request),
    luck: (request) => engineFor(request.session).luck(request),
    unpack: local.unpack,
    share: (request) => engineFor(request.session).share(request),
    writeCsv: (session) => engineFor(session).writeCsv(session),
  };
}

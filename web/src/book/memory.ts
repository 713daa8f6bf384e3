/** Shelves in this page's own memory, for where the device keeps nothing: a private window, a frame without an origin. */
import {
  compare,
  type Key,
  keyAt,
  NAMES,
  type Part,
  type Path,
  type Reader,
  SHELVES,
  type Shelf,
  type Store,
  type Writer,
} from "./store.js";

type Shelves = Map<Shelf, Map<string, object>>;

const nothing = (): Shelves => new Map(NAMES.map((name) => [name, new Map()]));

export function inMemory(): Store {
  let shelves = nothing();
  return {
    where: "memory",
    read: (use) => use(over(shelves)),
    write: async (use) => {
      // What fails half way leaves nothing behind.
      const changed: Shelves = new Map([...shelves].map(([name, records]) => [name, new Map(records)]));
      const done = await use(over(changed));
      shelves = changed;
      return done;
    },
    empty: async () => {
      shelves = nothing();
    },
  };
}

function over(shelves: Shelves): Writer {
  const on = (shelf: Shelf) => shelves.get(shelf)!;
  const named = (key: Key) => JSON.stringify(key);
  const within = (shelf: Shelf, part: Part) => found([...on(shelf).values()], shelf, part);
  const reader: Reader = {
    get: async (shelf, key) => structuredClone(on(shelf).get(named(key))),
    find: async (shelf, part) => structuredClone(within(shelf, part)),
    count: async (shelf, part) => within(shelf, part).length,
  };
  return {
    ...reader,
    put: async (shelf, value) => {
      on(shelf).set(named(keyAt(value, SHELVES[shelf].key)!), structuredClone(value));
    },
    remove: async (shelf, key) => {
      on(shelf).delete(named(key));
    },
  };
}

function found(values: object[], shelf: Shelf, { index, from, to, isBelow, newest, most }: Part): object[] {
  const indexes: Record<string, { path: Path; isList?: boolean }> = SHELVES[shelf].indexes;
  const { path, isList } = index ? indexes[index]! : { path: SHELVES[shelf].key as Path, isList: false };
  const keyed = values.flatMap((value) => {
    const key = keyAt(value, path);
    const keys = key === undefined ? [] : isList ? (key as readonly Key[]) : [key];
    return keys.map((one) => ({ key: one, value }));
  });
  const inside = keyed.filter(
    ({ key }) =>
      (from === undefined || compare(key, from) >= 0) &&
      (to === undefined || (isBelow ? compare(key, to) < 0 : compare(key, to) <= 0)),
  );
  inside.sort((a, b) => (newest ? compare(b.key, a.key) : compare(a.key, b.key)));
  return inside.slice(0, most).map(({ value }) => value);
}

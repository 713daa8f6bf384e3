/** An object on the other side of a worker's port: calls to its functions, and their answers. */
import type { Refusal } from "../../pkg/straight_answer.js";
import { carried, Refused } from "./refusal.js";

/** A call as it crosses to the worker. */
export interface Call {
  id: number;
  name: string;
  parameters: unknown[];
}

/** The worker's answer to one call. */
export type Reply = { id: number; value: unknown } | { id: number; refusal: Refusal };

/** What the page needs of a worker. */
export type Port = Pick<Worker, "postMessage"> & {
  onmessage: ((event: MessageEvent<Reply>) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
};

/** Asks through `port` by name and parameters. */
function caller(port: Port): <T>(name: string, ...parameters: unknown[]) => Promise<T> {
  const waiting = new Map<number, { resolve: (value: never) => void; reject: (why: unknown) => void }>();
  let last = 0;
  /** Why nobody will ever answer: what is on the other side never started. */
  let never: Error | null = null;
  let hasAnswered = false;
  port.onmessage = ({ data }) => {
    hasAnswered = true;
    const call = waiting.get(data.id);
    waiting.delete(data.id);
    if ("refusal" in data) call?.reject(new Refused(data.refusal));
    else call?.resolve(data.value as never);
  };
  port.onerror = (event) => {
    const why = new Error(event.message);
    if (!hasAnswered) never = why;
    for (const call of waiting.values()) call.reject(why);
    waiting.clear();
  };
  return <T>(name: string, ...parameters: unknown[]) =>
    new Promise<T>((resolve, reject) => {
      if (never) return reject(never);
      const id = ++last;
      waiting.set(id, { resolve: resolve as (value: never) => void, reject });
      return port.postMessage({ id, name, parameters } satisfies Call);
    });
}

/** Functions as they are asked through a port: whatever they give comes later. */
export type Remote<Functions> = {
  [Name in keyof Functions]: Functions[Name] extends (...parameters: infer Parameters) => infer Value
    ? (...parameters: Parameters) => Promise<Awaited<Value>>
    : never;
};

/** The object on the other side: each function is called there by the name by which it is called here. */
export function remote<Functions>(port: Port): Remote<Functions> {
  const call = caller(port);
  const asked = (_: object, name: string | symbol) =>
    // Whoever awaits an object asks first whether it is a promise.
    typeof name === "symbol" || name === "then" ? undefined : (...parameters: unknown[]) => call(name, ...parameters);
  return new Proxy({}, { get: asked }) as Remote<Functions>;
}

/** One call as it arrives at the worker, answered by the object that has a function of that name. */
export async function replyTo(answering: object | Promise<object>, { id, name, parameters }: Call): Promise<Reply> {
  try {
    const call = ((await answering) as Record<string, (...parameters: unknown[]) => unknown>)[name];
    return { id, value: await call?.(...parameters) };
  } catch (thrown) {
    return { id, refusal: carried(thrown) };
  }
}

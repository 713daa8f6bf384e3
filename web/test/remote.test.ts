/** The engine behind a port answers like the engine itself. */
import { expect, test } from "vitest";
import type { Engine } from "../src/core/engine.js";
import { remote as behind, type Call, type Port, type Reply, replyTo } from "../src/core/port.js";
import { asRefusal, Refused } from "../src/core/refusal.js";
import { fakeEngine, session } from "./fake-engine.js";

/** A port whose other side is an engine on this thread; messages are copied as between threads. */
function portTo(engine: Engine): Port {
  const port: Port = {
    onmessage: null,
    onerror: null,
    postMessage: (message: Call) => {
      void replyTo(engine, structuredClone(message)).then(reply);
    },
  };
  const reply = (data: Reply) => port.onmessage?.({ data: structuredClone(data) } as MessageEvent<Reply>);
  return port;
}

test("the engine behind a port answers like the engine itself", async () => {
  const engine = fakeEngine();
  const remote = behind<Engine>(portTo(engine));
  expect(await remote.measures()).toEqual(await engine.measures());
  const [read, report] = await Promise.all([
    remote.read("a,b", {}),
    remote.check({ session: session(2), question: { baseline: 0, measure: "carry", stopping: "fixed" } }),
  ]);
  expect(read.session.builds).toHaveLength(2);
  expect(report.answer.words.headline).toBe("Not settled.");
  expect(engine.calls).toEqual(["read 3", "check 6"]);
});

test("an engine behind a port can be awaited, which calls nothing on the other side", async () => {
  const engine = fakeEngine();
  const remote = await behind<Engine>(portTo(engine));
  expect(engine.calls).toEqual([]);
  expect(await remote.measures()).toEqual(await engine.measures());
});

test("a refusal crosses with its place and remedy", async () => {
  const refusal = { kind: "no_such_build", place: "question.baseline", message: "m", remedy: "r" };
  const engine = { ...fakeEngine(), check: () => Promise.reject(new Refused(refusal)) };
  const asked = behind<Engine>(portTo(engine)).check({
    session: session(2),
    question: { baseline: 9, measure: "carry", stopping: "fixed" },
  });
  await expect(asked).rejects.toMatchObject({ refusal });
});

test("a worker that dies answers every open call", async () => {
  const port: Port = { onmessage: null, onerror: null, postMessage: () => {} };
  const asked = behind<Engine>(port).read("x", {});
  port.onerror?.({ message: "out of memory" } as ErrorEvent);
  await expect(asked).rejects.toThrow("out of memory");
});

test("a worker that never started refuses every later call too, and an engine that cannot be opened every call", async () => {
  const port: Port = { onmessage: null, onerror: null, postMessage: () => {} };
  const remote = behind<Engine>(port);
  const first = remote.measures();
  port.onerror?.({ message: "no such file" } as ErrorEvent);
  await expect(first).rejects.toThrow("no such file");
  await expect(remote.measures()).rejects.toThrow("no such file");
  const reply = await replyTo(Promise.reject(new Error("not compiled")), { id: 7, name: "measures", parameters: [] });
  expect(reply).toMatchObject({ id: 7, refusal: { remedy: "not compiled" } });
});

test("anything thrown becomes a refusal with a remedy", () => {
  expect(asRefusal({ kind: "k", place: "", message: "m", remedy: "r" }).kind).toBe("k");
  expect(asRefusal(new Error("unreachable"))).toMatchObject({
    kind: "failed",
    remedy: expect.stringContaining("unreachable") as string,
  });
});

/** What crosses between host and frame: shapes of messages, settings, colors that can be read. */
import { describe, expect, test } from "vitest";
import { LONGEST_TEXT, marked, toFrame, toHost } from "../src/embed/messages.js";
import { contrast, readable, settingsIn } from "../src/embed/settings.js";

const answer = { decision: { kind: "same" }, estimate: null, words: {}, asked: {} };

describe("messages", () => {
  test("of a known shape are taken, and carry nothing more than they should", () => {
    expect(toFrame({ ...marked({ type: "open", text: "a", name: "n" }), more: 1 })).toEqual({
      type: "open",
      text: "a",
      name: "n",
    });
    expect(toFrame(marked({ type: "hello" }))).toEqual({ type: "hello" });
    expect(toHost(marked({ type: "ready" }))).toEqual({ type: "ready" });
    expect(toHost(marked({ type: "resize", height: 800 }))).toEqual({ type: "resize", height: 800 });
    expect(toHost(marked({ type: "answer", answer }))).toEqual({ type: "answer", answer });
    expect(toHost(marked({ type: "error", message: "x".repeat(999) }))).toEqual({
      type: "error",
      message: "x".repeat(500),
    });
  });

  test("of any other shape are passed over", () => {
    const strange = [
      undefined,
      null,
      0,
      "ready",
      [],
      {},
      { type: "ready" },
      { straight_answer: 2, type: "ready" },
      { straight_answer: 1 },
      { straight_answer: 1, type: "constructor" },
    ];
    const toFrameOnly = [
      { type: "open", text: 1, name: "n" },
      { type: "open", text: "a" },
      { type: "open", text: "x".repeat(LONGEST_TEXT + 1), name: "n" },
    ];
    const toHostOnly = [
      ...[-1, 0, Number.NaN, Infinity, 1e6, "9", null].map((height) => ({ type: "resize", height })),
      ...["yes", null, {}, { ...answer, words: 1 }, { ...answer, estimate: 3 }].map((wrong) => ({
        type: "answer",
        answer: wrong,
      })),
      { type: "error", message: {} },
    ];
    const mark = (message: object) => ({ straight_answer: 1, ...message });
    for (const data of [...strange, ...toFrameOnly.map(mark)]) expect(toFrame(data)).toBeNull();
    for (const data of [...strange, ...toHostOnly.map(mark)]) expect(toHost(data)).toBeNull();
  });
});

describe("settings", () => {
  test("are read from the address, and what is not understood counts as not said", () => {
    expect(
      settingsIn("?accent=%23aa3366&scheme=dark&measure=spin_rate&margin=250&goal=lower&parts=answer,trust%20x"),
    ).toEqual({
      accent: "#aa3366",
      scheme: "dark",
      opening: { measure: "spin_rate", margin: 250, goal: "lower" },
      parts: ["answer", "trust"],
    });
    const nothing = { accent: null, scheme: "auto", opening: {}, parts: null };
    expect(settingsIn("")).toEqual(nothing);
    expect(settingsIn("?accent=red;x&scheme=blue&measure=%3Cb%3E&margin=-1&goal=best&parts=all")).toEqual(nothing);
  });

  test("an accent that nobody could read is darkened or lightened until one can", () => {
    for (const ground of ["#ffffff", "#1b1f1b"]) {
      for (const wanted of ["#ffff00", "#000000", "#ffffff", "#7a3fb0", "#808080"]) {
        const { accent, on } = readable(wanted, ground);
        expect(accent).toMatch(/^#[0-9a-f]{6}$/);
        expect(contrast(accent, ground)).toBeGreaterThanOrEqual(4.5);
        expect(contrast(on, accent)).toBeGreaterThanOrEqual(4.5);
      }
    }
    expect(readable("#14604a", "#ffffff").accent).toBe("#14604a");
  });
});

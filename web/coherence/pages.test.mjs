/**
 * Draws the answers that `figures coherence --pages` wrote down, and writes down what the page's own scripts say with them,
 * message by message; `figures coherence` holds that against the facts.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { expect, test, vi } from "vitest";
import { measureView } from "../src/format/values.js";
import { start } from "../src/state/state.js";
import { showUnits } from "../src/text/units.js";

const FOLDER = "../target/coherence";

/** Of which session, on which part of the page, and of which finding something is said. */
const now = vi.hoisted(() => ({ number: 0, surface: "page", finding: null }));
const heard = vi.hoisted(() => []);

vi.mock("../src/text/say.js", async (original) => {
  const real = await original();
  const note = (say) => (id, told) => {
    const said = say(id, told);
    const text = Array.isArray(said) ? said.filter((part) => typeof part === "string").join("") : said;
    heard.push({ ...now, id, told: told ?? {}, text });
    return said;
  };
  return { ...real, say: note(real.say), sayAround: note(real.sayAround) };
});

// There is no window whose text could be larger.
vi.mock("../src/chart/text-size.js", () => ({ textSize: () => 1 }));

/** Makes everything that a template would draw, closed rows opened: what they say is said while they are made. */
function opened(drawn) {
  if (Array.isArray(drawn)) drawn.forEach(opened);
  else if (typeof drawn === "object" && drawn !== null) {
    const isDirective = "_$litDirective$" in drawn;
    for (const value of drawn.values ?? []) opened(isDirective && typeof value === "function" ? value() : value);
  }
}

test("what the page says of every answer is written down", async () => {
  const { picture } = await import("../src/answer/picture.js");
  const { numbers } = await import("../src/numbers/numbers.js");
  const { trust } = await import("../src/trust/trust.js");
  const { shots } = await import("../src/trust/every-shot.js");
  const { sent } = await import("../src/sent/sent.js");
  const actions = new Proxy({}, { get: () => () => undefined });
  const pages = JSON.parse(readFileSync(`${FOLDER}/pages.json`, "utf8"));
  for (const { number, metric, measures, shared } of pages) {
    showUnits(metric ? "metric" : null);
    const { report, session, question } = shared.file;
    const state = { ...start, measures, report, question };
    const view = measureView(report.asked.measure, measures, session);
    const draw = (surface, finding, make) => {
      Object.assign(now, { number, surface, finding });
      opened(make());
    };
    const ofAsked = { ...report, findings: report.findings.filter((one) => one.candidate === report.asked.candidate) };
    draw("picture", null, () => picture(ofAsked, session, view));
    for (const [at, finding] of report.findings.entries())
      if (finding.numbers.baseline && finding.numbers.candidate)
        draw("numbers", at, () => numbers([finding], report, state, session));
    draw("trust", null, () => trust(report));
    draw("shots", null, () => shots(session, report, view, 10, actions));
    draw("sent", null, () => sent(state, { question, view: {}, notices: [] }, session, actions));
  }
  expect(heard.length).toBeGreaterThan(pages.length);
  writeFileSync(`${FOLDER}/said.json`, JSON.stringify(heard));
});

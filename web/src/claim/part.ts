/**
 * Check a claim, and days together, open: what a fitting said against the session on the page, and that session with
 * those of other days. Keeps what was entered; the core decides and words it.
 */
import "./claim.css";
import "../styles/change.css";
import { html, type TemplateResult } from "lit";
import { openBook } from "../book/book.js";
import { askToPersist, keepClaim, today } from "../book/shelf.js";
import type { Measure, Refusal, Session } from "../core/engine.js";
import { readIn } from "../core/read-in-units.js";
import { asRefusal } from "../core/refusal.js";
import { BesidePart } from "../pieces/beside-part.js";
import { take } from "../state/intake.js";
import { patched } from "../state/patch.js";
import { shotCount } from "../state/shots.js";
import { type NewText, textsOf } from "../state/texts.js";
import english from "../text/en/claim.ftl?raw";
import englishFlight from "../text/en/flight.ftl?raw";
import { learn, say } from "../text/say.js";
import { canBeBrought, inOneAir } from "./air.js";
import { type ClaimActions, type ClaimState, weatherOf } from "./state.js";
import { togetherView } from "./together.js";
import { claimView } from "./view.js";

declare const APP_VERSION: string;

learn(english);
learn(englishFlight);

const NOTHING: Session = { builds: [], measures: [], custom: [], shots: [], summaries: [], order: "unknown" };

export class StraightAnswerClaim extends BesidePart {
  #state: ClaimState = {
    measures: [],
    current: null,
    question: { baseline: 0, measure: "carry", stopping: "unknown" },
    claimed: {},
    report: null,
    days: [],
    inAir: false,
    weather: {},
    air: [],
    pairs: [],
    kept: "",
    refusal: null,
    daysRefusal: null,
  };
  /** How often days were put together: only the last call may show what it found. */
  #calls = 0;
  readonly #refresh = (): void => this.#answer({ current: this.page.current() });

  readonly #actions: ClaimActions = {
    change: (patch) => this.#answer({ claimed: patched(this.#state.claimed, patch), kept: "" }),
    keep: (name) => void this.#keep(name),
    ask: (measure) => this.#answer({ question: { ...this.#state.question, measure } }),
    addText: (text) => this.#addDay([{ source: { kind: "pasted", name: "", text } }]),
    addFiles: (files) => void this.#addFiles(files),
    dropDay: (index) =>
      this.#answer({
        days: this.#state.days.filter((_, at) => at !== index),
        weather: without(this.#state.weather, index + 1),
      }),
    bringToAir: (inAir) => this.#answer({ inAir }),
    tellWeather: (day, conditions) => this.#answer({ weather: { ...this.#state.weather, [day]: conditions } }),
  };

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener("straight-answer", this.#refresh);
  }

  override disconnectedCallback(): void {
    document.removeEventListener("straight-answer", this.#refresh);
    super.disconnectedCallback();
  }

  protected override get refusal(): Refusal | null {
    return this.#state.refusal;
  }

  protected override opened(measures: readonly Measure[]): void {
    this.#answer({ measures, current: this.page.current() });
  }

  protected override refused(refusal: Refusal): void {
    this.#show({ refusal });
  }

  protected override show(): TemplateResult {
    return html`${claimView(this.#state, this.#actions)} ${togetherView(this.#state, this.#actions)}`;
  }

  /** The state with this change, and what the core says to it. */
  #answer(patch: Partial<ClaimState>): void {
    this.#state = { ...this.#state, ...patch };
    const { current, claimed } = this.#state;
    const session = current?.session ?? NOTHING;
    const question = current?.question ?? this.#state.question;
    const said = claimed.gain !== undefined || (claimed.before !== undefined && claimed.after !== undefined);
    const claim = said ? this.#asking(() => this.planner.claim({ claimed, session, question })) : null;
    this.#state = { ...this.#state, report: claim?.value ?? null, refusal: claim?.refusal ?? null };
    this.requestUpdate();
    void this.#putTogether();
  }

  async #keep(name: string): Promise<void> {
    const { claimed, report, current, question } = this.#state;
    if (!report) return;
    const measure = current?.question.measure ?? question.measure;
    const { headline: line } = report.words;
    try {
      const book = await openBook();
      await keepClaim(
        book,
        { name, date: today(), place: "", note: "" },
        { claimed, measure, line, version: APP_VERSION },
      );
      document.dispatchEvent(new Event("straight-answer-kept"));
      await askToPersist(book);
      this.#show({ kept: say(book.store.where === "device" ? "claim-kept" : "claim-kept-page") });
    } catch {
      this.#show({ kept: say("claim-not-kept") });
    }
  }

  /** The days in one answer. What was asked before this is over is answered by the later call. */
  async #putTogether(): Promise<void> {
    const call = ++this.#calls;
    const { current, days, inAir } = this.#state;
    if (!current || days.length === 0) return this.#show({ pairs: [], air: [], daysRefusal: null });
    const { question } = current;
    const sessions = [current.session, ...days.map(({ session }) => session)];
    const all = sessions.map((session, at) => ({ session, weather: weatherOf(this.#state, at) }));
    const brought =
      inAir && canBeBrought(question.measure) ? await inOneAir(all, question) : { sessions, question, told: [] };
    if (call !== this.#calls) return;
    if ("refusal" in brought) return this.#show({ pairs: [], air: [], daysRefusal: brought.refusal });
    const together = this.#asking(() =>
      this.planner.together({ sessions: brought.sessions, question: brought.question }),
    );
    this.#show({ pairs: together.value ?? [], air: brought.told, daysRefusal: together.refusal });
  }

  #show(patch: Partial<ClaimState>): void {
    this.#state = { ...this.#state, ...patch };
    this.requestUpdate();
  }

  #asking<T>(call: () => T): { value: T | null; refusal: Refusal | null } {
    try {
      return { value: call(), refusal: null };
    } catch (thrown) {
      return { value: null, refusal: asRefusal(thrown) };
    }
  }

  /** One day, of one text or of the sheets of one workbook. */
  async #addDay(texts: readonly NewText[]): Promise<boolean> {
    if (texts.every(({ source }) => source.text.trim() === "")) return false;
    try {
      const engine = await this.page.engine;
      const read = await Promise.all(texts.map(({ source, hints = {} }) => readIn(engine, source.text, hints)));
      const session =
        read.length === 1
          ? read[0]!.session
          : await engine.join(
              read.map((one) => one.session),
              null,
            );
      const problems = read.flatMap((one) => one.problems);
      const [first] = problems;
      if (shotCount(session) + session.summaries.length === 0 && first) {
        this.#show({
          daysRefusal: { kind: first.kind, place: texts[0]!.source.name, message: first.message, remedy: first.remedy },
        });
        return false;
      }
      this.#answer({ days: [...this.#state.days, { session, problems }] });
      return true;
    } catch (thrown) {
      this.#show({ daysRefusal: asRefusal(thrown) });
      return false;
    }
  }

  /** Files are taken as on the page, each as a day of its own. */
  async #addFiles(files: readonly File[]): Promise<void> {
    for (const file of files) {
      const taken = await take([file], await this.page.engine);
      if ("refusal" in taken) return this.#show({ daysRefusal: taken.refusal });
      await this.#addDay(
        "workbook" in taken
          ? textsOf(
              taken.workbook,
              taken.workbook.sheets.map((_, at) => at),
            )
          : taken.texts,
      );
    }
  }
}

/** The weather of the days that are left, once one is taken out. */
function without(weather: ClaimState["weather"], day: number): ClaimState["weather"] {
  const kept = Object.entries(weather).filter(([at]) => Number(at) !== day);
  return Object.fromEntries(
    kept.map(([at, conditions]) => [Number(at) > day ? Number(at) - 1 : Number(at), conditions]),
  );
}

customElements.define("straight-answer-claim", StraightAnswerClaim);

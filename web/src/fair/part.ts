/**
 * Part 9, open: a test planned, hit shot by shot, and looked at when the plan says so.
 *
 * Keeps the request and the log, asks the core after every change, writes every shot down at once. The answer itself
 * is shown by the page: a look hands it the session with the question of the plan.
 */
import "./fair.css";
import "./log.css";
import { html, nothing, type TemplateResult } from "lit";
import { takeWanted, type Wanted } from "../book/wanted.js";
import type { Measure } from "../core/engine.js";
import type { OwnSay, PlanRequest } from "../core/planner.js";
import { asRefusal } from "../core/refusal.js";
import { canShare, fileName, save, tableFile } from "../share/device.js";
import { hand, setHand } from "../state/handedness.js";
import { type Patch, patched } from "../state/patch.js";
import { withOffered } from "../state/question.js";
import english from "../text/en/fair.ftl?raw";
import englishFlight from "../text/en/flight.ftl?raw";
import englishKept from "../text/en/kept.ftl?raw";
import { learn, say } from "../text/say.js";
import { pageIn } from "../text/spoken.js";
import { copied, printSheet, shared, worksOffline } from "./device.js";
import { emptyEntry, filledEntry, type Key, turnedTo } from "./entry.js";
import { afterKey, oddIn } from "./keeping.js";
import { KeptPart } from "./kept-part.js";
import {
  begun,
  inCanonicalUnits,
  inUnitsShown,
  type TestLog,
  undone,
  type Values,
  warmedUp,
  withLook,
  withMishit,
  withSay,
  withSetEnded,
  withShot,
} from "./log.js";
import { isPlanLink, isSessionLink } from "./mark.js";
import { pastedInto } from "./paste.js";
import { type FairActions, nothingLogged } from "./state.js";
import { afterLookView } from "./views/after-look.js";
import { cardView } from "./views/card.js";
import { feelView } from "./views/feel.js";
import { planView } from "./views/plan.js";
import { sheetView } from "./views/sheet.js";

learn(english);
learn(englishFlight);
learn(englishKept);

export class StraightAnswerFair extends KeptPart {
  readonly #actions: FairActions = {
    change: (patch) => this.#change(patch),
    changeRecord: (record) => this.set({ record, entry: emptyEntry(record) }),
    callTester: (name) => this.set({ name }),
    start: () => this.#start(),
    nextPerson: () => void this.#nextPerson(),
    print: () => printSheet(),
    copyLink: () => void copied(this.#address()).then((done) => this.set({ done })),
    shareLink: canShare({ url: location.href })
      ? () => void shared(this.#address()).then((done) => this.set({ done }))
      : null,
    hand,
    chooseHand: (chosen) => {
      setHand(chosen);
      this.requestUpdate();
    },
    warmedUp: () => {
      void this.write(warmedUp(this.log), this.state.entry);
      this.toTop();
    },
    enter: (entry) => this.set({ entry: { ...this.state.entry, ...entry } }),
    press: (key) => this.#press(key),
    save: () => this.#save(),
    keepAsked: () => this.#keepAsked(),
    typeAgain: () => this.#typeAgain(),
    paste: (text) => this.#paste(text),
    pasteFromClipboard: () => void this.#pasteFromClipboard(),
    undo: () => this.#undo(),
    mishit: (mishit) => void this.write(withMishit(this.log, mishit), this.state.entry),
    endSet: () => this.#endSet(),
    look: () => this.#look(),
    say: (say) => void this.#said(say),
    goOn: () => this.#goOn(),
    pause: () => this.set({ mode: "paused" }),
    exportCsv: () => this.#export(),
    askToForget: () => void this.kept.counts().then((forgetting) => this.set({ forgetting })),
    forget: () => void this.#forget(),
  };

  protected override show(): TemplateResult {
    const { mode, plan, progress } = this.state;
    const { waits: isWaiting, overtaken } = this.state;
    const waits = html`${isWaiting ? html`<p class="notice">${say("fair-waits")}</p>` : nothing}
      ${overtaken ? html`<p class="notice" role="status">${say(`fair-overtaken-${overtaken}`)}</p>` : nothing}`;
    if (mode === "log" && progress) return html`${waits}${cardView(this.state, progress, this.#actions)}`;
    if (mode === "feel" && progress) return feelView(progress, this.#actions);
    if ((mode === "answer" || mode === "paused") && progress)
      return html`${waits}${afterLookView(this.state, progress, this.#actions)}`;
    return html`${waits}${planView(this.state, this.planner.limits(), this.#actions)}${plan ? sheetView(plan, this.state) : nothing}`;
  }

  protected override async opened(measures: readonly Measure[]): Promise<void> {
    this.set({ measures, current: this.page.current() });
    void worksOffline().then(() => this.set({ worksOffline: true }));
    void this.kept.names().then((names) => this.set({ names }));
    const wanted = takeWanted();
    if (!(await this.takeUp(wanted))) {
      this.#replan(withOffered(this.state.request, measures));
      // Opened by a tap low on the screen: the plan and its start are what is wanted.
      this.toTop(this.closest("section"));
    }
    this.#openLink();
  }

  protected override addressChanged(): void {
    this.#openLink();
  }

  /** A plan in the address, ready to be looked over and started; a test under way is finished first. */
  #openLink(): void {
    if (!this.isOpened || !isPlanLink()) return;
    if (this.state.log) return this.set({ waits: true });
    try {
      const { plan, record, notices } = this.planner.unpackPlan(location.hash);
      this.#replan(plan);
      const measures = [plan.measure, ...record.filter((id) => id !== plan.measure)];
      this.set({ record: measures, entry: emptyEntry(measures), sent: notices.map(({ message }) => message) });
    } catch (thrown) {
      this.set({ refusal: { ...asRefusal(thrown), place: "" } });
    }
    this.toTop();
  }

  /** The address that opens this plan on another phone. */
  #address(): string {
    const { request, record } = this.state;
    return `${pageIn()}#${this.planner.packPlan({ plan: request, record: [...record] })}`;
  }

  protected override async takeUp(wanted: Wanted | null): Promise<boolean> {
    if (wanted && "plan" in wanted) {
      this.kept.leave();
      this.set({ ...nothingLogged(this.state.record), name: wanted.name });
      this.#replan(wanted.plan);
      this.toTop(this.closest("section"));
      return true;
    }
    const under = await this.kept.resume(wanted?.test ?? null).catch(() => null);
    if (under) this.#resume(under.log, under.name);
    return under !== null;
  }

  #resume(log: TestLog, name: string): void {
    if (log.hand) setHand(log.hand);
    this.set({
      log,
      name,
      request: log.plan,
      record: log.measures,
      entry: emptyEntry(log.measures),
      isKept: true,
      keptShots: log.shots.length,
    });
    this.#replan(log.plan);
    this.follow(log, isSessionLink() ? "paused" : "log");
  }

  /** A plan that came by a link keeps the margin it was made with until another is asked for here. */
  #change(patch: Patch<PlanRequest>): void {
    const request = patched(this.state.request, patch);
    this.#replan("margin" in patch ? withOffered(request, this.state.measures) : request);
  }

  /** A request that makes no plan keeps the last one on the screen, with what is wrong. */
  #replan(request: PlanRequest): void {
    const before = this.state.request.measure;
    const kept = this.state.record.filter((id) => id !== request.measure && id !== before);
    const record = [request.measure, ...kept];
    try {
      this.set({
        request,
        record,
        entry: emptyEntry(record),
        plan: this.planner.plan(request),
        isPlanned: true,
        refusal: null,
        done: "",
      });
    } catch (thrown) {
      this.set({ request, isPlanned: false, refusal: asRefusal(thrown) });
    }
  }

  #start(): void {
    this.page.coverAnswer();
    // The plan is in the log from here on; its link is not opened again.
    // The test stands where a reload finds it, whatever was on the page before.
    history.replaceState(null, "", `${location.pathname}${location.search}#fair`);
    const { request, record, name } = this.state;
    const log = begun(request, record, hand());
    this.follow(log, "log", { sent: null, entry: emptyEntry(record), overtaken: null, keptShots: 0 });
    void this.kept.begin(log, name.trim()).then((outcome) => this.written(log, outcome));
    this.toTop();
  }

  /** The same plan for somebody else. A test that is not whole waits in the book. */
  async #nextPerson(): Promise<void> {
    if (!this.state.progress?.turn) await this.kept.note({ isOver: true }).catch(() => undefined);
    this.kept.leave();
    this.page.coverAnswer();
    this.set({ ...nothingLogged(this.state.record), name: "", names: await this.kept.names().catch(() => []) });
    this.toTop();
  }

  /** A key; a number that can only be whole goes on to the next, and a shot that has all of them is kept. */
  #press(key: Key): void {
    const { entry, isComplete } = afterKey(this.state.entry, key, this.state.record, this.state.measures);
    this.set({ entry });
    if (isComplete) this.#save();
  }

  #save(): void {
    const { values, mishit } = this.state.entry;
    if (Object.values(values).every((value) => value === null)) return;
    this.#keepUnlessOdd([values], mishit);
  }

  /** A value outside what is usual is asked about before it is kept; it is kept when it is said to be right. */
  #keepUnlessOdd(rows: readonly Values[], mishit: boolean): void {
    const odd = oddIn(rows, this.state.measures);
    if (odd) this.set({ asking: { ...odd, rows, mishit }, pasteTrouble: "" });
    else this.#keep(rows, mishit);
  }

  #keep(rows: readonly Values[], mishit: boolean): void {
    const turn = this.state.progress?.turn;
    if (!turn) return;
    const add = (log: TestLog, values: Values) => withShot(log, turn.index, this.#canonical(values), mishit);
    void this.write(rows.reduce(add, this.log), emptyEntry(this.state.record));
  }

  #keepAsked(): void {
    const { asking } = this.state;
    if (asking) this.#keep(asking.rows, asking.mishit);
  }

  /** The number that was asked about is out of the hand; what else was typed stays. */
  #typeAgain(): void {
    const { asking, entry } = this.state;
    if (!asking) return;
    const { measure } = asking;
    const values = { ...entry.values, [measure]: null };
    this.set({ asking: null, entry: turnedTo({ ...entry, values }, measure) });
  }

  #canonical(values: Values): Values {
    return inCanonicalUnits(values, this.state.measures);
  }

  #paste(text: string): void {
    const pasted = pastedInto(text, this.log.measures, this.state.progress?.turn ?? null);
    if ("trouble" in pasted) return this.set({ pasteTrouble: pasted.trouble });
    this.#keepUnlessOdd(pasted.rows, false);
  }

  async #pasteFromClipboard(): Promise<void> {
    try {
      this.#paste(await navigator.clipboard.readText());
    } catch {
      this.set({ pasteTrouble: say("paste-refused") });
    }
  }

  #undo(): void {
    const { log, back } = undone(this.log);
    const { record, measures } = this.state;
    const entry = back
      ? filledEntry(record, inUnitsShown(back.values as Values, measures), back.note !== null)
      : emptyEntry(record);
    void this.write(log, turnedTo(entry, entry.active));
  }

  #endSet(): void {
    const turn = this.state.progress?.turn;
    if (turn) void this.write(withSetEnded(this.log, turn.index), emptyEntry(this.state.record));
  }

  /** What was felt is asked before any number is shown. */
  #look(): void {
    if (this.log.say) void this.#uncover(this.log);
    else this.set({ mode: "feel" });
    this.toTop();
  }

  async #said(say: OwnSay): Promise<void> {
    await this.#uncover(withSay(this.log, say));
  }

  /** The look is written down before anything is shown. */
  async #uncover(before: TestLog): Promise<void> {
    const now = this.state.progress?.look_now;
    if (!now) return;
    const log = withLook(before, now);
    await this.write(log, this.state.entry, "answer");
    const { progress } = this.state;
    if (!progress) return;
    const { session, question } = progress;
    try {
      const feel = log.say ? this.planner.feel({ session, question, say: log.say }) : null;
      this.set({ feel });
      this.isLookedAt = true;
      this.page.showAnswer(this.planner.writeCsv(session), question);
    } catch (thrown) {
      this.set({ refusal: asRefusal(thrown) });
    }
  }

  #goOn(): void {
    // A session that was opened meanwhile stands in the way of the keys; its link opens it again.
    if (isSessionLink()) history.replaceState(null, "", `${location.pathname}${location.search}#fair`);
    this.page.coverAnswer();
    this.follow(this.log, "log");
    this.toTop();
  }

  #export(): void {
    const { progress } = this.state;
    if (!progress) return;
    const { session, question } = progress;
    const words = ["fair-test", this.state.name, ...session.builds.map(({ name }) => name).slice(0, 3)];
    save(tableFile(this.planner.writeCsv(session, question), fileName(words, "csv")));
  }

  async #forget(): Promise<void> {
    try {
      await this.kept.forget();
      this.page.coverAnswer();
      this.set({ ...nothingLogged(this.state.record), name: "", names: [], isPersistent: null });
      this.#openLink();
    } catch {
      this.set({ isKept: false });
    }
  }
}

customElements.define("straight-answer-fair", StraightAnswerFair);

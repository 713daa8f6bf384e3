/**
 * The element that holds the page: keeps the state, does the work the state wants, hands texts in.
 *
 * Drawn into the document itself, so that anchors, labels, print and assistive technology work as everywhere.
 */

import { html, type TemplateResult } from "lit";
import type { Engine, Question } from "../core/engine.js";
import { readIn } from "../core/read-in-units.js";
import { asRefusal } from "../core/refusal.js";
import { LightElement } from "../pieces/light-element.js";
import { openNow } from "../pieces/when-open.js";
import type { Actions } from "../state/actions.js";
import { copied, fromClipboard } from "../state/clipboard.js";
import type { Draft } from "../state/draft.js";
import { type Example, exampleIn } from "../state/examples.js";
import { isLink } from "../state/link.js";
import { nextFrame, nextTurn } from "../state/next-frame.js";
import { once } from "../state/once.js";
import type { Current } from "../state/page-port.js";
import { arePhotos } from "../state/photos.js";
import { type Message, reduce, type State, start } from "../state/state.js";
import { type NewText, textsOf } from "../state/texts.js";
import { work } from "../state/work.js";
import { say } from "../text/say.js";
import { watchingWith } from "./answer-place.js";
import { isOwnSession } from "./own-session.js";
import { type Place, placeIn, placeOf } from "./place.js";
import { aheadOfLink, fetching, hasUnder, page } from "./view.js";

export class StraightAnswerPage extends LightElement {
  /** Set before the element is put into the document. */
  engine!: Promise<Engine>;
  /** What is asked before the golfer has said anything; a host page may set it. */
  opening: Partial<Question> = {};
  /** Inside somebody else's page nothing moves, and the keyboard stays where it is. */
  quiet = false;
  #tellStanding!: () => void;
  /** Settled once what the page opened with is shown: whatever nobody waits for comes after it. */
  readonly standing = new Promise<void>((resolve) => (this.#tellStanding = resolve));
  #state: State = start;
  /** Settled once the measures are known, which reading and answering name. */
  #opened: Promise<void> | null = null;
  /** Whether what stands below the answer is drawn too: not before the first answer has been seen. */
  #isUnder = false;
  #isWhole = false;
  #rest: Promise<void> | null = null;
  /** Inside somebody else's page there are no ways in, only the place for shots. */
  readonly #hasStart = document.documentElement.dataset["place"] !== undefined;
  /** Whether what the page's address holds is still on its way: into a page that is empty, or in the place of what is there. */
  #isFetching = false;
  #isReplacing = false;
  /** Where to go once something is read. */
  #goTo: "answer" | "sent" | null = null;
  /** Makes a text of what came by a link: after its answer, or before anything else is read. */
  #writeOut = async (): Promise<void> => undefined;
  readonly #watch = watchingWith((is) => this.#dispatch({ type: "answer_in_view", is }));

  readonly #actions: Actions = {
    drawAgain: () => this.requestUpdate(),
    canPaste: typeof navigator.clipboard?.readText === "function",
    pasteFromClipboard: (adding) => void this.#pasteFromClipboard(adding),
    giveText: (text, adding) => this.#giveText(text, adding),
    giveFiles: (files, adding) => void this.#giveFiles(files, adding),
    openExample: (example) => void this.#openExample(example),
    enter: (entry) => this.#enter({ type: "entry", entry }),
    leave: (draft) => this.#enter({ type: "entry_left", draft }),
    entered: (text, at) => this.#entered(text, at),
    photographed: (texts) => this.#photographed(texts),
    chooseSheets: (sheets) => this.#chooseSheets(sheets),
    changeText: (at, text) => this.#changeText(at, text),
    removeText: (at) => this.#dispatch({ type: "text_removed", at }),
    hint: (hints, at) => this.#dispatch({ type: "hinted", hints, at: at ?? 0 }),
    weather: (weather) => this.#dispatch({ type: "hinted", hints: { weather }, at: "all" }),
    rename: (build, name) => this.#dispatch({ type: "renamed", build, name }),
    undo: () => this.#dispatch({ type: "undone" }),
    redo: () => this.#dispatch({ type: "redone" }),
    dropCut: () => this.#dispatch({ type: "link_cut", cut: null }),
    ask: (patch) => this.#dispatch({ type: "asked", patch }),
    leaveOut: (shot, reason) => this.#dispatch({ type: "left_out", shot, reason }),
    confirm: (shot) => this.#dispatch({ type: "confirmed", shot }),
    showMoreShots: () => this.#dispatch({ type: "more_shots" }),
    startAgain: () => this.#startAgain(),
    asSent: () => this.#dispatch({ type: "as_sent" }),
    luck: async (request) => (await this.engine).luck(request),
    share: async (request) => (await this.engine).share(request),
    writeCsv: async (session, question) => (await this.engine).writeCsv(session, question),
    check: async (request) => (await this.engine).check(request),
    read: async (text, hints) => (await this.engine).read(text, hints),
  };

  /** What stands on the page, for the parts beside it; null before anything was read. */
  get current(): Current | null {
    const { read, question, report, sent } = this.#state;
    return read && question ? { session: read.session, question, report, isSent: sent !== null } : null;
  }

  get underHand(): State {
    return this.#state;
  }

  /** Takes up what a reload has left, or files that came from elsewhere. */
  takeUp({ texts = [], question, entry }: Partial<Draft>, files: readonly File[] = [], adding = false): void {
    if (files.length > 0) void this.#giveFiles(files, adding);
    if (texts.length > 0) this.#goTo = "answer";
    if (texts.length > 0) this.#dispatch({ type: "texts_given", texts, ...(question ? { question } : {}) });
    if (entry) this.#enter({ type: "entry", entry });
  }

  /** Answers a session in the tool's own CSV, as the log of a test hands it over. */
  showLogged(csv: string, question: Question, of = ""): void {
    this.#goTo = "answer";
    const texts = [{ source: { kind: "logged", name: say("text-logged"), text: csv, of } }] as const;
    this.#dispatch({ type: "texts_given", texts, question });
  }

  /** Takes shots and answer off the page. */
  cover(): void {
    this.#dispatch({ type: "started_again", covered: true });
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#listen();
    this.#opened = this.#open();
  }

  override render(): TemplateResult {
    if (this.#isFetching) return fetching();
    this.#isUnder = hasUnder(this.#state, this.#isUnder);
    const drawn = page(this.#state, this.#actions, { under: this.#isUnder, whole: this.#isWhole }, this.#place);
    return this.#isReplacing ? html`<p class="notice replacing" role="status">${say("replacing")}</p>${drawn}` : drawn;
  }

  override updated(): void {
    // What stands below comes once it is known how far below.
    if (!this.#isFetching && !this.#state.wants && (this.#isWhole || !this.#state.report)) this.#stands();
    if (this.#state.report) this.#rest ??= this.#drawTheRest();
    document.body.classList.toggle("with-shots", this.#state.read !== null);
    if (this.#hasStart) document.documentElement.dataset["place"] = this.#place ?? "";
    this.#watch(this.querySelector("#answer-headline"));
    // As soon as it is read, before it is answered: what moves under a finger later is touched by mistake.
    if (this.#goTo && this.#state.read && this.#state.wants !== "read") {
      const id = this.#goTo;
      this.#goTo = null;
      this.#show(id);
    }
  }

  get #place(): Place | null {
    return this.#isFetching ? null : placeOf(this.#state, this.#hasStart ? placeIn(location.hash) : "shots");
  }

  async #open(): Promise<void> {
    // What the address holds is fetched while the engine is.
    void this.#openFromAddress();
    try {
      const engine = await this.engine;
      this.#dispatch({ type: "opened", measures: await engine.measures() });
    } catch (thrown) {
      this.#dispatch({ type: "file_refused", refusal: asRefusal(thrown) });
    }
  }

  /** Takes texts in, in the place of what is there: for whoever holds this element. */
  open(texts: readonly NewText[]): void {
    this.#give(texts);
  }

  #dispatch(message: Message): void {
    const before = this.#state;
    this.#state = reduce(before, message);
    this.requestUpdate();
    const { report, trouble } = this.#state;
    if (report && report !== before.report) this.dispatchEvent(new CustomEvent("answered", { detail: report }));
    if (trouble && trouble !== before.trouble)
      this.dispatchEvent(new CustomEvent("refused", { detail: trouble.message }));
    if (message.type === "answered" || message.type === "started_again")
      this.dispatchEvent(new Event("straight-answer", { bubbles: true }));
    if (this.#state.wants && this.#state.turn !== before.turn) void this.#work(this.#state);
  }

  /** What was opened is shown; with the engine there, or known not to come, nothing is waited for any more. */
  #stands(): void {
    this.classList.remove("starting");
    for (const line of document.querySelectorAll("#start :is(.needs, .late)")) line.remove();
    if (this.#state.measures.length > 0 || this.#state.trouble) this.#tellStanding();
  }

  async #drawTheRest(): Promise<void> {
    await nextFrame();
    this.#isWhole = true;
    this.requestUpdate();
    // What fails to load now is loaded when it is asked for, and said then.
    await (await this.engine).loadTheRest().catch(() => undefined);
  }

  /** Does what the state wants, save what something newer has overtaken; its outcome the reducer drops. */
  async #work(state: State): Promise<void> {
    try {
      await this.#opened;
      await nextFrame();
      if (state.wants === "read") await this.#writeOut();
      if (state.turn !== this.#state.turn) return;
      const outcome = await work(await this.engine, this.#state);
      await nextTurn();
      this.#dispatch(outcome);
    } catch (thrown) {
      this.#dispatch({ type: "refused", turn: state.turn, refusal: asRefusal(thrown) });
    }
    // What fails here is tried again before anything is read, and said then.
    if (state.wants !== "check") return;
    await nextFrame();
    await this.#writeOut().catch(() => undefined);
  }

  #give(texts: readonly NewText[], adding = false, opening = this.opening): void {
    if (texts.every(({ source }) => source.text.trim() === "")) {
      this.#refuse("empty_text", say("empty-text"), say("empty-text-remedy"));
      return;
    }
    this.#goTo ??= "answer";
    if (adding && this.#state.given.length > 0) this.#dispatch({ type: "texts_added", texts });
    else this.#dispatch({ type: "texts_given", texts, opening });
  }

  #refuse(kind: string, message: string, remedy: string): void {
    this.#dispatch({ type: "file_refused", refusal: { kind, place: "", message, remedy } });
  }

  #giveText(text: string, adding?: boolean): void {
    this.#give([{ source: { kind: "pasted", name: adding ? say("text-added") : say("text-pasted"), text } }], adding);
  }

  async #giveFiles(files: readonly File[], adding = false): Promise<void> {
    if (arePhotos(files)) return this.#enter({ type: "entry", entry: { kind: "photos", files, adding } });
    // Files are taken in by what comes with the first of them.
    const taken = await import("../state/intake.js")
      .then(async ({ take }) => take(files, await this.engine))
      .catch((thrown: unknown) => ({ refusal: asRefusal(thrown) }));
    if ("refusal" in taken) this.#dispatch({ type: "file_refused", refusal: taken.refusal });
    else if ("workbook" in taken)
      this.#enter({ type: "entry", entry: { kind: "sheets", workbook: taken.workbook, adding } });
    else this.#give(taken.texts, adding);
  }

  #photographed(texts: readonly NewText[]): void {
    const { entry } = this.#state;
    if (entry?.kind === "photos") this.#give(texts, entry.adding);
  }

  #chooseSheets(sheets: readonly number[]): void {
    const { entry } = this.#state;
    if (entry?.kind === "sheets") this.#give(textsOf(entry.workbook, sheets), entry.adding);
  }

  #enter(message: Message): void {
    this.#dispatch(message);
    void this.updateComplete.then(() => this.#show("shots"));
  }

  #entered(text: NewText, at: number | null): void {
    this.#goTo ??= "answer";
    if (at === null) this.#give([text], true);
    else this.#dispatch({ type: "text_replaced", at, text });
  }

  #changeText(at: number, text: string): void {
    const source = this.#state.given[at]?.source;
    if (source) this.#dispatch({ type: "text_replaced", at, text: { source: { ...source, kind: "pasted", text } } });
  }

  async #pasteFromClipboard(adding?: boolean): Promise<void> {
    try {
      this.#giveText(await fromClipboard(navigator.clipboard), adding);
    } catch {
      const field = this.querySelector<HTMLTextAreaElement>(adding ? "#more" : "#text");
      field?.focus();
      this.#refuse("clipboard_refused", say("clipboard-refused"), say("clipboard-refused-remedy"));
    }
  }

  async #openExample(example: Example): Promise<void> {
    try {
      const text = await example.text();
      this.#goTo = "answer";
      const source = {
        kind: "example",
        name: say("example-name", { title: say(`example-${example.id}`) }),
        text,
      } as const;
      this.#give([{ source }], false, example.question);
    } catch {
      this.#refuse("not_loaded", say("example-not-loaded"), say("example-not-loaded-remedy"));
    }
  }

  async #openFromAddress(): Promise<void> {
    const example = exampleIn(location.hash);
    if (!example && !isLink(location.hash)) return;
    // What stands on the page, a text half typed too, stands until something else can.
    const stands = !this.classList.contains("starting") && document.documentElement.dataset["place"] !== "start";
    [this.#isFetching, this.#isReplacing] = [!stands, stands && this.#state.given.length > 0];
    document.body.classList.toggle("from-address", this.#isFetching);
    this.requestUpdate();
    if (!example) aheadOfLink();
    await (example ? this.#openExample(example) : this.#openLink(location.hash));
    this.#isFetching = this.#isReplacing = false;
    this.requestUpdate();
  }

  /**
   * The link's shots are answered as they came, and become a text that reads back as they were: all that can be done with a
   * text can be done with them.
   */
  async #openLink(link: string): Promise<void> {
    try {
      const engine = await this.engine;
      const { session, ...sent } = await engine.unpack(link);
      await this.#opened;
      // Another link came meanwhile.
      if (link !== location.hash) return;
      const source = { kind: "link", name: say("text-link"), text: "" } as const;
      this.#writeOut = once(async () => {
        const text = await engine.writeCsv(session);
        this.#dispatch({ type: "link_written", source, text, result: await readIn(engine, text, {}) });
      });
      const isOwn = isOwnSession();
      this.#goTo = isOwn ? "answer" : "sent";
      this.#dispatch({ type: "link_opened", source, session, sent, isOwn });
    } catch (thrown) {
      // What is on the page stays, and what is wrong with the link is said above it.
      this.#dispatch({ type: "link_cut", cut: { link, refusal: { ...asRefusal(thrown), place: "" } } });
      if (!this.quiet) scrollTo({ top: 0 });
    }
  }

  #startAgain(): void {
    document.body.classList.remove("from-address");
    history.replaceState(null, "", location.pathname + location.search);
    this.#dispatch({ type: "started_again" });
    if (!this.quiet) window.scrollTo({ top: 0 });
  }

  #listen(): void {
    window.addEventListener("hashchange", () => {
      this.requestUpdate();
      void this.#openFromAddress();
    });
    document.addEventListener("paste", (event) => this.#pasted(event));
    document.addEventListener("dragover", (event) => event.preventDefault());
    document.addEventListener("drop", (event) => this.#dropped(event));
    window.addEventListener("beforeprint", () => {
      for (const row of this.querySelectorAll<HTMLDetailsElement>("details.trust, .overlay details, .in-full"))
        openNow(row);
    });
  }

  /** A paste anywhere is shots, save into a field that already holds something or is no field for shots. */
  #pasted(event: ClipboardEvent): void {
    const into = event.target;
    const isField = into instanceof HTMLInputElement || into instanceof HTMLTextAreaElement;
    const adding = isField && into.id === "more";
    if (this.#state.entry || (isField && ((into.id !== "text" && !adding) || into.value.trim() !== ""))) return;
    // A copied table comes as text and as its picture.
    const given = (type: string) => event.clipboardData?.getData(type) ?? "";
    const text = copied(given("text/plain"), given("text/html"));
    if (text.trim() !== "") this.#giveText(text, adding);
    else if (!this.#take(event.clipboardData, adding)) {
      if (!isField) this.#giveText("", adding);
      return;
    }
    event.preventDefault();
  }

  #dropped(event: DragEvent): void {
    event.preventDefault();
    // What is being typed is not thrown away for a file that slipped from the hand.
    if (this.#state.entry) return;
    const onto = event.target instanceof Element && event.target.closest("details.add") !== null;
    this.#take(event.dataTransfer, onto);
  }

  /** Takes in files, or else text; false when it holds neither text nor a file. */
  #take(data: DataTransfer | null, adding: boolean): boolean {
    const files = [...(data?.files ?? [])];
    const text = data?.getData("text/plain") ?? "";
    if (files.length > 0) void this.#giveFiles(files, adding);
    else if (text.trim() !== "") this.#giveText(text, adding);
    return text.trim() !== "" || files.length > 0;
  }

  /** Puts a part on the screen and the keyboard there. */
  #show(id: string): void {
    if (this.quiet) return;
    const section = this.querySelector(`#${id}`);
    section?.scrollIntoView({ block: "start" });
    this.querySelector<HTMLElement>(`#${id}-title`)?.focus({ preventScroll: true });
  }
}

/**
 * The book, open: people, visits and answers that were kept on this device, and everything that can be done with them.
 *
 * Loaded when its door is opened. Only what is drawn is read.
 */
import "./book.css";
import type { TemplateResult } from "lit";
import type { Measure, Refusal } from "../core/engine.js";
import { asRefusal } from "../core/refusal.js";
import { BesidePart } from "../pieces/beside-part.js";
import { fileName, save } from "../share/device.js";
import english from "../text/en/book.ftl?raw";
import englishKept from "../text/en/kept.ftl?raw";
import { learn, say } from "../text/say.js";
import { type Book, bookIn, forgetEverything, openBook, openIfKept, withMeta } from "./book.js";
import { contentsOf, copyOf, found, takeOver } from "./copy.js";
import { NewerVersion } from "./device.js";
import { type Locked, unlocked } from "./lock.js";
import { inMemory } from "./memory.js";
import { mergedWith } from "./merge.js";
import { claimsOf, planAfter, seasonOf, shotsOf } from "./season.js";
import {
  bodyOf,
  counts,
  deleted,
  people,
  personOf,
  type Row,
  remove,
  rows,
  rowsOf,
  search,
  takeBack,
  say as tellOf,
} from "./shelf.js";
import { bytesOf } from "./size.js";
import { atFirst, type BookActions, type BookState, type Opened, ROWS } from "./state.js";
import { underWay } from "./tests.js";
import { onTold } from "./told.js";
import { bookView } from "./view.js";
import { goOnWith } from "./wanted.js";

declare const APP_VERSION: string;

learn(english);
learn(englishKept);

export class StraightAnswerBook extends BesidePart {
  /** An empty one until something is kept: looking leaves nothing on the device. */
  #book: Book = bookIn(inMemory());
  #isKept = false;
  #locked: Locked | null = null;
  #turn = 0;
  #hangUp: (() => void) | null = null;
  #state: BookState = atFirst;

  readonly #actions: BookActions = {
    search: (text) => void this.#refresh({ text, most: ROWS }),
    showMore: () => void this.#refresh({ most: this.#state.most + ROWS }),
    toggle: (id) => this.#set({ open: this.#state.open === id ? null : id }),
    openAnswer: (row) => void this.#openAnswer(row),
    goOn: (test) => this.#goOn({ test }),
    saveRaw: (raw) => void this.#save(JSON.stringify(raw, null, 1), say("book-raw-file")),
    tellVisit: (id, patch) => void this.#changing(() => tellOf(this.#book, "visit", id, patch)),
    saveVisit: (id) => void this.#saveVisit(id),
    showPerson: (id) => void this.#showPerson(id),
    rename: (id, name) => {
      if (name.trim() !== "") void this.#changing(() => tellOf(this.#book, "person", id, { name: name.trim() }));
    },
    nextVisit: (row) => void this.#nextVisit(row),
    remove: (id, what) => void this.#remove(id, what),
    takeBack: (gone) =>
      void this.#changing(() => takeBack(this.#book, gone), { done: say("book-taken-back"), undo: null }),
    saveCopy: (passphrase) => void this.#saveCopy(passphrase),
    openCopy: (file) => void file.text().then((text) => this.#openCopy(text)),
    unlock: (passphrase) => void this.#unlock(passphrase),
    takeOver: () => void this.#takeOver(),
    leaveCopy: () => this.#set({ copy: null }),
    askToForget: (forgetting) => this.#set({ forgetting }),
    forget: () => void this.#forget(),
  };

  override connectedCallback(): void {
    super.connectedCallback();
    this.#hangUp = onTold(() => void this.#refresh());
    document.addEventListener("straight-answer-kept", this.#again);
  }

  override disconnectedCallback(): void {
    this.#hangUp?.();
    document.removeEventListener("straight-answer-kept", this.#again);
    super.disconnectedCallback();
  }

  readonly #again = (): void => void this.#refresh();

  protected override get refusal(): Refusal | null {
    return null;
  }

  protected override refused(): void {
    this.requestUpdate();
  }

  protected override async opened(measures: readonly Measure[]): Promise<void> {
    await this.#refresh({ measures });
    this.closest("section")?.scrollIntoView({ block: "start" });
  }

  protected override show(): TemplateResult {
    return bookView(this.#state, this.#actions);
  }

  #set(patch: Partial<BookState>): void {
    this.#state = { ...this.#state, ...patch };
    this.requestUpdate();
  }

  /** Reads what is drawn; what was asked for meanwhile is drawn by the later call. */
  async #refresh(patch: Partial<BookState> = {}): Promise<void> {
    this.#set(patch);
    const turn = ++this.#turn;
    try {
      const kept = await openIfKept();
      this.#isKept = kept !== null;
      this.#book = kept ?? bookIn(inMemory());
      const book = this.#book;
      const { text, most, person } = this.#state;
      const shown = {
        where: kept ? book.store.where : ("device" as const),
        rows: await search(book, text, most),
        counts: await counts(book),
        meta: await book.meta(),
        deleted: await deleted(book),
        underWay: await Promise.all(
          (await underWay(book)).map(async (test) => ({ test, name: await personOf(book, test.data.person) })),
        ),
        person: person && (await anew(book, person)),
      };
      const [newest] = await rows(book, 1);
      const isCopyOld = newest !== undefined && "kept" in newest && newest.kept.made > (shown.meta.copied ?? 0);
      if (turn !== this.#turn) return;
      this.#set({ ...shown, isCopyOld, trouble: "" });
      const bytes = await bytesOf(this.#isKept);
      if (turn === this.#turn) this.#set({ bytes });
    } catch (thrown) {
      if (thrown instanceof NewerVersion) this.#set({ trouble: "newer" });
      else this.#set({ done: asRefusal(thrown).message, undo: null });
    }
  }

  async #changing(work: () => Promise<unknown>, patch: Partial<BookState> = { done: "", undo: null }): Promise<void> {
    try {
      await work();
      await this.#refresh(patch);
    } catch {
      this.#set({ done: say("book-not-written"), undo: null });
    }
  }

  async #openAnswer(row: Row): Promise<void> {
    const shown = await shotsOf(this.#book, row, await this.page.engine, this.planner).catch(() => null);
    const of = "kept" in row ? row.person?.data.name : undefined;
    if (shown) return this.page.showAnswer(this.planner.writeCsv(shown.session), shown.question, of);
    if (!("kept" in row) || row.kept.kind === "test") return this.#set({ done: say("book-no-shots"), undo: null });
    // What cannot be read is handed over as it lies.
    const { raw } = await bodyOf(this.#book, row.kept.id);
    await this.#save(JSON.stringify({ record: row.kept, body: raw }, null, 1), say("book-raw-file"));
    this.#set({ done: say("book-damaged-body"), undo: null });
  }

  #goOn(what: Parameters<typeof goOnWith>[0]): void {
    goOnWith(what);
    location.hash = "fair";
  }

  async #nextVisit(row: Row): Promise<void> {
    const plan = planAfter(row, await shotsOf(this.#book, row, await this.page.engine, this.planner).catch(() => null));
    if (!plan) return this.#set({ done: say("book-no-plan"), undo: null });
    this.#goOn({ plan, name: "kept" in row ? (row.person?.data.name ?? "") : "" });
  }

  async #showPerson(id: string | null): Promise<void> {
    if (id === null) return this.#set({ person: null, open: null });
    const known = await people(this.#book);
    const person = known.find((one) => one.id === id) ?? null;
    const all = await rowsOf(this.#book, id);
    this.#set({ person: { person, rows: all, season: null, claims: [] }, open: null });
    this.scrollIntoView({ block: "start" });
    const season = await seasonOf(this.#book, all, await this.page.engine, this.planner).catch(() => null);
    const claims = await claimsOf(this.#book, all, await this.page.engine, this.planner);
    if (this.#state.person?.person?.id === id) this.#set({ person: { ...this.#state.person, season, claims } });
  }

  async #remove(id: string, what: string): Promise<void> {
    const isPerson = this.#state.person?.person?.id === id;
    try {
      const undo = await remove(this.#book, id);
      const name = what === "" ? say("book-nobody") : what;
      await this.#refresh({
        done: say("book-gone", { what: name }),
        undo,
        open: null,
        ...(isPerson ? { person: null } : {}),
      });
    } catch {
      this.#set({ done: say("book-not-written"), undo: null });
    }
  }

  async #save(text: string, name: string): Promise<boolean> {
    return saveAs(new File([text], fileName([name], "json"), { type: "application/json" }));
  }

  async #saveCopy(passphrase: string): Promise<void> {
    const { text, revision } = await copyOf(this.#book, APP_VERSION, passphrase);
    if (!(await this.#save(text, say("copy-file")))) return;
    if (this.#isKept) await this.#book.change((to) => withMeta(to, { copied: revision }));
    await this.#refresh({ done: say("copy-saved"), undo: null });
  }

  async #saveVisit(id: string): Promise<void> {
    const { text } = await copyOf(this.#book, APP_VERSION, "", id);
    if (await this.#save(text, say("copy-visit-file"))) this.#set({ done: say("copy-visit-saved"), undo: null });
  }

  async #openCopy(text: string): Promise<void> {
    const file = found(text);
    if (file.is === "locked") {
      this.#locked = file.file;
      return this.#set({ copy: { isWrong: false }, done: "", undo: null });
    }
    if (file.is !== "book") return this.#set({ done: say(`copy-${file.is}`), undo: null, copy: null });
    const preview = mergedWith(await contentsOf(this.#book), file.contents);
    this.#set({ copy: { preview, from: file.contents }, done: "", undo: null });
  }

  async #unlock(passphrase: string): Promise<void> {
    const text = this.#locked && (await unlocked(this.#locked, passphrase));
    if (text === null) this.#set({ copy: { isWrong: true } });
    else await this.#openCopy(text);
  }

  async #takeOver(): Promise<void> {
    const { copy } = this.#state;
    if (!copy || !("preview" in copy)) return;
    await this.#changing(
      async () => {
        this.#book = await openBook();
        await takeOver(this.#book, copy.from);
      },
      { copy: null, done: say("copy-taken-over"), undo: null },
    );
  }

  async #forget(): Promise<void> {
    const book = await openIfKept().catch(() => null);
    if (book) await forgetEverything(book);
    await this.#refresh({ forgetting: false, person: null, copy: null, done: say("book-forgotten"), undo: null });
  }
}

/** A person as the book has them now; the season keeps its shots and takes in what is said of its days. */
async function anew(book: Book, { person, season, claims }: Opened): Promise<Opened> {
  const id = person?.id ?? "";
  const all = await rowsOf(book, id);
  const visits = new Map(all.flatMap((row) => ("kept" in row && row.visit ? [[row.visit.id, row.visit]] : [])));
  const days = season?.days.map((day) => ({ ...day, visit: visits.get(day.visit?.id ?? "") ?? day.visit })) ?? [];
  const known = (await people(book)).find((one) => one.id === id) ?? person;
  return { person: known, rows: all, season: season && { ...season, days }, claims };
}

/** Where the browser lets the golfer choose a place it does; false when nobody chose one. */
async function saveAs(file: File): Promise<boolean> {
  const choose = (window as { showSaveFilePicker?: (wish: object) => Promise<FileSystemFileHandle> })
    .showSaveFilePicker;
  if (!choose) {
    save(file);
    return true;
  }
  try {
    const place = await choose({ suggestedName: file.name });
    const to = await place.createWritable();
    await to.write(file);
    await to.close();
    return true;
  } catch (thrown) {
    if (thrown instanceof DOMException && thrown.name === "AbortError") return false;
    save(file);
    return true;
  }
}

customElements.define("straight-answer-book", StraightAnswerBook);

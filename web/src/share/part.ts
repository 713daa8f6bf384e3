/**
 * Part 10, open: makes link, words, card and files of the session and its answer, and hands them to the device.
 *
 * Loaded when its door is opened (`views/share-door.ts`). Nothing leaves the device but by the golfer's own hand.
 */
import "./share.css";
import type { PropertyValues, TemplateResult } from "lit";
import type { Measure, Question, Refusal, Session, Shared, ShareRequest } from "../core/engine.js";
import { asRefusal } from "../core/refusal.js";
import { today } from "../format/today.js";
import { measureView } from "../format/values.js";
import { BehindDoor } from "../pieces/behind-door.js";
import { withoutNames } from "../state/link.js";
import english from "../text/en/share.ftl?raw";
import { learn, say } from "../text/say.js";
import { pageIn } from "../text/spoken.js";
import { card } from "./card.js";
import type { Code } from "./code.js";
import { colors, type Scheme } from "./colors.js";
import { copy, fileName, openShareSheet, save, tableFile } from "./device.js";
import { type Copied, type Style, shareView } from "./view.js";

learn(english);

const KINDS = { json: "application/json", png: "image/png" } as const;

export class StraightAnswerShare extends BehindDoor {
  static override properties = {
    session: { attribute: false },
    question: { attribute: false },
    measures: { attribute: false },
    ask: { attribute: false },
    writeCsv: { attribute: false },
  };
  declare session: Session;
  declare question: Question;
  declare measures: readonly Measure[];
  declare ask: (request: ShareRequest) => Promise<Shared>;
  declare writeCsv: (session: Session, question?: Question) => Promise<string>;

  #blank = false;
  #note = "";
  #style: Style = "plain";
  #scheme: Scheme = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
  #shared: Shared | null = null;
  #trouble: Refusal | null = null;
  #picture: { address: string; file: File; code: Code | null } | null = null;
  #done = "";
  #turn = 0;
  #stale = true;

  override disconnectedCallback(): void {
    this.#forgetPicture();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("session") || changed.has("question")) this.#stale = true;
    if (this.#stale && this.isOpen) void this.#refresh();
  }

  override render(): TemplateResult {
    return shareView(
      {
        shared: this.#shared,
        trouble: this.#trouble,
        blank: this.#blank,
        note: this.#note,
        style: this.#style,
        scheme: this.#scheme,
        picture: this.#picture,
        done: this.#done,
      },
      {
        blankNames: (blank) => this.#change(() => (this.#blank = blank)),
        addNote: (note) => this.#change(() => (this.#note = note)),
        choose: (style) => this.#redraw(() => (this.#style = style)),
        show: (scheme) => this.#redraw(() => (this.#scheme = scheme), true),
        copy: (done, text) => void this.#copy(done, text),
        share: (data) => void this.#share(data),
        savePicture: () => this.#picture && save(this.#picture.file),
        saveCsv: () => void this.#saveCsv(),
        saveReport: () => this.#saveReport(),
        print: () => window.print(),
      },
    );
  }

  #change(apply: () => void): void {
    apply();
    this.#stale = true;
    this.requestUpdate();
  }

  #redraw(apply: () => void, picture = false): void {
    apply();
    if (picture) void this.#draw(this.#turn);
    this.requestUpdate();
  }

  /** The session as it is given away. */
  get #given(): Session {
    return this.#blank ? withoutNames(this.session) : this.session;
  }

  /** Asks the core; an outcome overtaken by a newer wish is dropped. */
  async #refresh(): Promise<void> {
    this.#stale = false;
    const turn = ++this.#turn;
    const view = this.#note.trim() === "" ? {} : { note: this.#note.trim() };
    try {
      const address = pageIn();
      const shared = await this.ask({ session: this.#given, question: this.question, view, address });
      if (turn !== this.#turn) return;
      this.#settle(shared, null);
      await this.#draw(turn);
    } catch (thrown) {
      if (turn === this.#turn) this.#settle(null, asRefusal(thrown));
    }
  }

  #settle(shared: Shared | null, trouble: Refusal | null): void {
    this.#shared = shared;
    this.#trouble = trouble;
    this.#done = "";
    this.requestUpdate();
  }

  /** Draws the card; what draws the code is loaded with the first one. */
  async #draw(turn: number): Promise<void> {
    const shared = this.#shared;
    if (!shared) return;
    const { code } = await import("./code.js");
    const rows = shared.link === null ? null : code(shared.link);
    const measure = measureView(shared.file.question.measure, this.measures, this.session);
    const blob = await card({ shared, measure, date: today(), code: rows, colors: colors(this.#scheme) });
    if (turn !== this.#turn) return;
    this.#forgetPicture();
    this.#picture = { address: URL.createObjectURL(blob), file: this.#file("png", blob), code: rows };
    this.requestUpdate();
  }

  #forgetPicture(): void {
    if (this.#picture) URL.revokeObjectURL(this.#picture.address);
    this.#picture = null;
  }

  async #copy(done: Copied, text: string): Promise<void> {
    const copied = await copy(text);
    this.#done = copied ? say(done) : say("share-not-copied");
    this.requestUpdate();
  }

  async #share(data: ShareData): Promise<void> {
    try {
      await openShareSheet(data);
    } catch {
      this.#done = say("share-not-taken");
      this.requestUpdate();
    }
  }

  async #saveCsv(): Promise<void> {
    save(tableFile(await this.writeCsv(this.#given, this.question), this.#name("csv")));
  }

  #saveReport(): void {
    if (this.#shared) save(this.#file("json", JSON.stringify(this.#shared.file, null, 2)));
  }

  #file(ending: keyof typeof KINDS, content: BlobPart): File {
    return new File([content], this.#name(ending), { type: KINDS[ending] });
  }

  /** By the clubs: whoever saves several finds each again. */
  #name(ending: string): string {
    const clubs = this.#given.builds.map(({ name }) => name);
    return fileName(["straight-answer", ...clubs.slice(0, 3)], ending);
  }
}

customElements.define("straight-answer-share", StraightAnswerShare);

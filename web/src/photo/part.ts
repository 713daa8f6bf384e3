/** Photos in the place of the shots: read one after the other, checked by hand, handed on as texts or into the form of averages. */
import "./photo.css";
import { html, type TemplateResult } from "lit";
import type { Measure, ReadResult } from "../core/engine.js";
import { openPhotos, type PhotoReader, type Step } from "../core/photo.js";
import type { Averages } from "../entry/averages.js";
import { LightElement } from "../pieces/light-element.js";
import type { NewText } from "../state/texts.js";
import english from "../text/en/photo.ftl?raw";
import { learn, say } from "../text/say.js";
import { begun, type Checked, openIn, withSaid } from "./checked.js";
import type { Failed } from "./failed.js";
import { averagesOf, textsOf, tileText } from "./table.js";
import { type Held, photosView } from "./view.js";

learn(english);

/** What the page does with what was read. */
export interface Taking {
  measures: readonly Measure[];
  read: (text: string) => Promise<ReadResult>;
  taken: (texts: readonly NewText[]) => void;
  averages: (draft: Averages) => void;
  type: () => void;
  cancel: () => void;
}

class StraightAnswerPhotos extends LightElement {
  static override properties = { files: { attribute: false }, taking: { attribute: false } };
  declare files: readonly File[];
  declare taking: Taking;

  #reader: PhotoReader | null = null;
  #begun: readonly File[] | null = null;
  #waiting: File[] = [];
  #now: { name: string; at: number; of: number; step: Step } | null = null;
  #failed: Failed[] = [];
  #photos: Checked[] = [];
  #held: Held = null;

  override willUpdate(): void {
    if (this.files === this.#begun) return;
    this.#begun = this.files;
    this.#give(this.files);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#end();
  }

  override render(): TemplateResult {
    const shown = { now: this.#now, failed: this.#failed, photos: this.#photos, held: this.#held };
    return photosView(shown, {
      say: (photo, cell, text) => this.#say(photo, cell, text),
      finish: () => void this.#finish(),
      cancel: () => this.taking.cancel(),
      another: (files) => this.#give(files),
      type: () => this.taking.type(),
    });
  }

  #give(files: readonly File[]): void {
    const isIdle = this.#waiting.length === 0;
    this.#waiting.push(...files);
    this.#failed = [];
    if (isIdle) void this.#readAll();
  }

  async #readAll(): Promise<void> {
    this.#reader ??= openPhotos();
    const reader = this.#reader;
    const of = this.#waiting.length;
    for (let at = 0; this.#waiting.length > 0; at++) {
      const file = this.#waiting[0]!;
      const tell = (step: Step) => {
        this.#now = { name: file.name, at, of, step };
        this.requestUpdate();
      };
      tell({ doing: "loading", done: 0, of: 0 });
      const came = await reader.read(file, tell);
      // Left meanwhile.
      if (this.#reader !== reader) return;
      if ("reading" in came) this.#photos.push(begun(file.name, came.reading));
      else this.#failed.push({ name: file.name, failure: came.failure });
      this.#waiting.shift();
    }
    this.#now = null;
    this.#end();
    this.requestUpdate();
  }

  /** What holds a phone's memory goes as soon as nothing waits for it. */
  #end(): void {
    this.#reader?.end();
    this.#reader = null;
  }

  #say(photo: number, cell: number, text: string): void {
    this.#photos = this.#photos.map((one, at) => (at === photo ? withSaid(one, cell, text) : one));
    this.requestUpdate();
  }

  async #finish(): Promise<void> {
    if (this.#photos.some((photo) => openIn(photo) > 0)) {
      this.#held = "open";
      this.requestUpdate();
      await this.updateComplete;
      this.querySelector<HTMLElement>("li.open input")?.focus();
      return;
    }
    const tiles = this.#photos.filter(({ reading }) => reading.is_tiles);
    const tables = this.#photos.filter(({ reading }) => !reading.is_tiles);
    if (tables.length > 0 && tiles.length > 0) {
      this.#held = "mixed";
      this.requestUpdate();
      return;
    }
    if (tables.length > 0) return this.taking.taken(textsOf(tables));
    const read = await Promise.all(
      tiles.map(async (photo) => ({ photo, read: await this.taking.read(tileText(photo)) })),
    );
    this.taking.averages(averagesOf(read, this.taking.measures, (number) => say("photo-club", { number })));
  }
}

customElements.define("straight-answer-photos", StraightAnswerPhotos);

export const photos = (files: readonly File[], taking: Taking): TemplateResult =>
  html`<straight-answer-photos .files=${files} .taking=${taking}></straight-answer-photos>`;

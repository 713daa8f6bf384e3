/** What the grid and the form have in common: a draft that changes step by step, can be taken back, and is read after each step. */

import type { Hints, Measure, ReadResult } from "../core/engine.js";
import { LightElement } from "../pieces/light-element.js";
import type { NewText } from "../state/texts.js";

export abstract class EntryElement<Draft> extends LightElement {
  static override properties = {
    measures: { attribute: false },
    draft: { attribute: false },
    clubs: { attribute: false },
    read: { attribute: false },
    done: { attribute: false },
    leave: { attribute: false },
  };
  declare measures: readonly Measure[];
  /** What was typed before, when it is opened again. */
  declare draft: unknown;
  /** Clubs that the session has already. */
  declare clubs: readonly string[];
  declare read: (text: string, hints: Hints) => Promise<ReadResult>;
  declare done: (text: NewText) => void;
  /** Closes it; what was typed is kept. */
  declare leave: (draft: unknown) => void;

  #now: Draft | null = null;
  #past: Draft[] = [];
  /** Where typing began that is not yet a step of its own. */
  #typedFrom: Draft | null = null;
  #turn = 0;
  /** While a button of the mouse or a finger is down: settled once what it presses has been told. */
  #pressed: Promise<void> | null = null;

  /** A draft with nothing in it. */
  protected abstract empty(): Draft;
  /** The draft as a text for the reader. */
  protected abstract write(draft: Draft): { text: string; hints: Hints };
  /** Takes in what the core made of the draft. */
  protected abstract wasRead(draft: Draft, result: ReadResult): void;

  protected get now(): Draft {
    this.#now ??= (this.draft as Draft | undefined) ?? this.empty();
    return this.#now;
  }

  /** What is typed so far, when anything is. */
  get underHand(): unknown {
    return this.canUndo || this.draft !== undefined ? this.now : undefined;
  }

  protected get canUndo(): boolean {
    return this.#past.length > 0 || this.#typedFrom !== null;
  }

  /** One step: it can be taken back, and the core looks at the draft. */
  protected change(next: Draft): void {
    this.#past.push(this.#typedFrom ?? this.now);
    this.#typedFrom = null;
    this.#now = next;
    void this.#look();
  }

  /** A letter within a step: kept, but not yet looked at. */
  protected typing(next: Draft): void {
    this.#typedFrom ??= this.now;
    this.#now = next;
    this.requestUpdate();
  }

  /** The end of typing in one field. */
  protected typed(): void {
    if (this.#typedFrom !== null) this.change(this.now);
  }

  protected cancel(): void {
    this.leave(this.underHand);
  }

  protected undo(): void {
    const before = this.#typedFrom ?? this.#past.pop();
    this.#typedFrom = null;
    if (before === undefined) return;
    this.#now = before;
    void this.#look();
  }

  override firstUpdated(): void {
    this.addEventListener("pointerdown", () => this.#press());
    if (this.draft) void this.#look();
  }

  /** Leaving a field by pressing a button makes the core look: what it says must not move that button away meanwhile. */
  #press(): void {
    this.#pressed ??= new Promise<void>((settle) => {
      const ends = ["pointerup", "pointercancel"];
      const released = () => {
        for (const end of ends) window.removeEventListener(end, released);
        setTimeout(() => {
          this.#pressed = null;
          settle();
        });
      };
      for (const end of ends) window.addEventListener(end, released);
    });
  }

  async #look(): Promise<void> {
    this.requestUpdate();
    const turn = ++this.#turn;
    const draft = this.now;
    const { text, hints } = this.write(draft);
    const result = await this.read(text, hints);
    await this.#pressed;
    if (turn !== this.#turn) return;
    this.wasRead(draft, result);
    this.requestUpdate();
  }
}

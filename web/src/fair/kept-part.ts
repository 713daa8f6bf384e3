/**
 * What the fair test shows and keeps: the state, and how it follows what is written down, here and by other tabs.
 *
 * Every change is shown at once and written down at once; what a store does not take stays on the screen and is said.
 */

import { onTold, type Told } from "../book/told.js";
import { takeWanted, WANTED, type Wanted } from "../book/wanted.js";
import type { Refusal } from "../core/engine.js";
import { asRefusal } from "../core/refusal.js";
import { BesidePart } from "../pieces/beside-part.js";
import { type Entry, filledEntry } from "./entry.js";
import { keptTest, type Outcome } from "./kept.js";
import { asked, begun, inUnitsShown, type TestLog, type Values } from "./log.js";
import { isSessionLink } from "./mark.js";
import { atFirst, type FairState, type Mode, nothingLogged } from "./state.js";
import { WakeLock } from "./wake-lock.js";

declare const APP_VERSION: string;

export abstract class KeptPart extends BesidePart {
  protected state: FairState = atFirst();
  protected readonly kept = keptTest();
  /** Whether the answer that is on its way is the one to a look. */
  protected isLookedAt = false;
  readonly #awake = new WakeLock();
  #hangUp: (() => void) | null = null;

  /** Goes on with what the book asks for, or with the newest test that waits; false where there is none. */
  protected abstract takeUp(wanted: Wanted | null): Promise<boolean>;
  /** The address has changed. */
  protected abstract addressChanged(): void;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener("hashchange", this.#changed);
    document.addEventListener(WANTED, this.#wanted);
    document.addEventListener("straight-answer", this.#answered);
    this.#hangUp = onTold((told) => void this.#told(told));
  }

  override disconnectedCallback(): void {
    window.removeEventListener("hashchange", this.#changed);
    document.removeEventListener(WANTED, this.#wanted);
    document.removeEventListener("straight-answer", this.#answered);
    this.#hangUp?.();
    this.#awake.release();
    super.disconnectedCallback();
  }

  protected override willUpdate(): void {
    this.dataset["mode"] = this.state.mode;
  }

  protected get log(): TestLog {
    return this.state.log ?? begun(this.state.request, this.state.record);
  }

  protected set(patch: Partial<FairState>): void {
    this.state = { ...this.state, ...patch };
    if (this.state.mode === "log") this.#awake.hold();
    else this.#awake.release();
    this.requestUpdate();
  }

  protected override get refusal(): Refusal | null {
    return this.state.refusal;
  }

  protected override refused(refusal: Refusal): void {
    this.set({ refusal });
  }

  readonly #changed = (): void => {
    this.addressChanged();
    // A session that somebody shared is shown; the test is gone on with from below it.
    if (isSessionLink() && this.state.log) this.set({ mode: "paused" });
  };

  /** The book asks for a test that waits. */
  readonly #wanted = (): void => {
    if (!this.isOpened) return;
    void this.takeUp(takeWanted());
  };

  /** The answer to a look is noted beside the test, in its one line. */
  readonly #answered = (): void => {
    const report = this.isLookedAt ? this.page.current()?.report : null;
    if (!report) return;
    this.isLookedAt = false;
    const { headline: line } = report.answer.words;
    void this.kept.note({ line, version: APP_VERSION }).catch(() => undefined);
  };

  /** Another tab has written: what it wrote is shown here too. */
  async #told({ kind }: Told): Promise<void> {
    if (!this.state.log || kind !== "changed") return this.state.log ? this.#takeOver(null) : undefined;
    const log = await this.kept.reload().catch(() => undefined);
    if (log !== undefined && JSON.stringify(log) !== JSON.stringify(this.state.log)) this.#takeOver(log);
  }

  /** The test as another tab left it. A number that was typed here and is not in it comes back into the hand. */
  #takeOver(log: TestLog | null): void {
    const { log: before, record, entry, measures } = this.state;
    if (!log) {
      this.kept.leave();
      return this.set({ ...nothingLogged(record), overtaken: "gone" });
    }
    const lost = before && before.shots.length > this.state.keptShots ? before.shots.at(-1) : undefined;
    const back = lost ? filledEntry(record, inUnitsShown(lost.values as Values, measures), lost.note !== null) : entry;
    const mode = this.state.mode === "answer" || this.state.mode === "feel" ? "paused" : this.state.mode;
    this.follow(log, mode, {
      entry: back,
      isKept: true,
      keptShots: log.shots.length,
      overtaken: lost ? "back" : "shown",
    });
  }

  protected follow(log: TestLog, mode: Mode, patch: Partial<FairState> = {}): void {
    try {
      this.set({ log, mode, progress: this.planner.follow(asked(log)), refusal: null, ...patch });
    } catch (thrown) {
      this.set({ log, refusal: asRefusal(thrown), ...patch });
    }
  }

  /** Shows the new state at once and stores it at once; a store that fails is said, and the test goes on. */
  protected async write(log: TestLog, entry: Entry, mode: Mode = this.state.mode): Promise<void> {
    this.follow(log, mode, { entry, asking: null, pasteTrouble: "", overtaken: null });
    this.written(log, await this.kept.keep(log));
  }

  protected written(log: TestLog, outcome: Outcome): void {
    if (outcome.is === "overtaken") return this.#takeOver(outcome.log);
    if (this.state.log !== log) return;
    if (outcome.is === "not_kept") return this.set({ isKept: false, isNewer: outcome.isNewer });
    this.set({ isKept: true, isPersistent: outcome.isPersistent, keptShots: log.shots.length });
  }

  protected toTop(of: Element | null = this): void {
    void this.updateComplete.then(() => of?.scrollIntoView({ block: "start" }));
  }
}

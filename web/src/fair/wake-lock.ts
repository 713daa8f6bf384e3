/** Keeps the screen on while a test is logged, where the device can; given back when the log is left. */
export class WakeLock {
  #wanted = false;
  #held: WakeLockSentinel | null = null;
  readonly #again = (): void => void this.#request();

  hold(): void {
    if (this.#wanted) return;
    this.#wanted = true;
    document.addEventListener("visibilitychange", this.#again);
    void this.#request();
  }

  release(): void {
    this.#wanted = false;
    document.removeEventListener("visibilitychange", this.#again);
    void this.#held?.release().catch(() => undefined);
    this.#held = null;
  }

  /** The device lets go whenever the page is hidden, and may refuse: on a low battery, say. */
  async #request(): Promise<void> {
    if (!this.#wanted || document.visibilityState !== "visible") return;
    try {
      const held = await navigator.wakeLock?.request("screen");
      if (this.#wanted) this.#held = held ?? null;
      else void held?.release().catch(() => undefined);
    } catch {
      this.#held = null;
    }
  }
}

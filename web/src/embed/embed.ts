/**
 * `<straight-answer>` for other people's pages: a frame with the checker from this file's own origin.
 *
 * Holds no wasm and no styles, and asks nothing of the host but to let the frame be. What is inside the element (a
 * plain link, say) is shown where this script does not run, and where the frame cannot be loaded.
 */

import { LONGEST_TEXT, marked, type ToFrame, type ToHost, toHost } from "./messages.js";
import { SETTINGS } from "./settings-names.js";

/** A classic script knows where it came from only while it runs for the first time. */
const home = new URL("./embed.html", (document.currentScript as HTMLScriptElement | null)?.src ?? location.href);

/** Until the frame says how high it is. */
const FIRST_HEIGHT = 640;
/** What the frame may do of what this browser lets a page give away; a browser that does not know a name complains of it. */
const ALLOWED = ["clipboard-write", "web-share"];

/** After this time without a word from the frame it will not come any more. */
const PATIENCE = 30_000;

class StraightAnswer extends HTMLElement {
  static observedAttributes = ["link", "csv", ...SETTINGS];
  #frame: HTMLIFrameElement | null = null;
  #ready = false;
  #waiting: ToFrame[] = [];
  #patience: ReturnType<typeof setTimeout> | undefined;

  readonly #heard = (event: MessageEvent): void => {
    if (event.source !== this.#frame?.contentWindow || event.origin !== home.origin) return;
    const message = toHost(event.data);
    if (message) this.#take(message);
  };

  connectedCallback(): void {
    addEventListener("message", this.#heard);
    this.#open();
  }

  disconnectedCallback(): void {
    removeEventListener("message", this.#heard);
    clearTimeout(this.#patience);
    this.#frame?.remove();
    this.#frame = null;
  }

  attributeChangedCallback(): void {
    if (this.#frame) this.#open();
  }

  /** Hands in shots as text, in the place of what is there; without a name they get one in the language of the frame. */
  open(text: string, name = ""): void {
    if (text.length > LONGEST_TEXT) this.#fail(`longer than the ${LONGEST_TEXT} characters that are taken in`);
    else this.#send({ type: "open", text, name });
  }

  #open(): void {
    this.#ready = false;
    this.#waiting = [];
    const shadow = this.shadowRoot ?? this.attachShadow({ mode: "open" });
    const frame = document.createElement("iframe");
    frame.src = this.#address();
    frame.title = this.getAttribute("title") ?? "Straight Answer: do these clubs really differ?";
    frame.width = "100%";
    frame.height = String(FIRST_HEIGHT);
    frame.setAttribute("frameborder", "0");
    frame.referrerPolicy = "no-referrer";
    const known = (document as { featurePolicy?: { features(): string[] } }).featurePolicy?.features() ?? [];
    frame.allow = ALLOWED.filter((feature) => known.includes(feature)).join("; ");
    frame.setAttribute(
      "sandbox",
      "allow-scripts allow-same-origin allow-forms allow-downloads allow-modals allow-popups allow-popups-to-escape-sandbox",
    );
    this.style.display = "block";
    this.#frame = frame;
    shadow.replaceChildren(frame);
    clearTimeout(this.#patience);
    this.#patience = setTimeout(() => this.#giveUp(), PATIENCE);
    const csv = this.getAttribute("csv");
    if (csv !== null) void this.#fetch(csv);
  }

  #address(): string {
    const address = new URL(home);
    for (const name of SETTINGS) {
      const value = this.getAttribute(name);
      if (value !== null) address.searchParams.set(name, value);
    }
    // A whole address or only what follows its mark.
    const link = this.getAttribute("link")?.trim().split("#").pop();
    if (link) address.hash = link;
    return address.href;
  }

  /** The frame cannot read the host's files, and the host reads only its own. */
  async #fetch(csv: string): Promise<void> {
    try {
      const address = new URL(csv, document.baseURI);
      if (address.origin !== location.origin) throw new Error("csv must be an address on the page's own origin");
      const answer = await fetch(address);
      if (!answer.ok) throw new Error(`csv: ${answer.status}`);
      const text = await answer.text();
      // A page that says the file is gone often says it as if it were the file.
      if (/html/.test(answer.headers.get("content-type") ?? "") || /^\s*<(?:!doctype|html)/i.test(text))
        throw new Error("csv: a web page came in the place of a file with shots");
      this.open(text, address.pathname.split("/").pop() || csv);
    } catch (thrown) {
      this.#fail(thrown instanceof Error ? thrown.message : String(thrown));
    }
  }

  /** Told once the host's own scripts have run: before that nobody listens. */
  #fail(message: string): void {
    const tell = (): void => this.#tell("error", { message });
    if (document.readyState === "complete") setTimeout(tell);
    else addEventListener("load", () => setTimeout(tell), { once: true });
  }

  #take(message: ToHost): void {
    switch (message.type) {
      case "ready":
        clearTimeout(this.#patience);
        this.#ready = true;
        for (const one of [{ type: "hello" } as const, ...this.#waiting.splice(0)]) this.#send(one);
        break;
      case "resize":
        if (this.#frame) this.#frame.height = String(Math.ceil(message.height));
        this.#tell("resize", { height: message.height });
        break;
      case "answer":
        this.#tell("answer", message.answer);
        break;
      case "error":
        this.#tell("error", { message: message.message });
        break;
    }
  }

  #send(message: ToFrame): void {
    if (this.#ready) this.#frame?.contentWindow?.postMessage(marked(message), home.origin);
    else this.#waiting.push(message);
  }

  #giveUp(): void {
    this.shadowRoot?.replaceChildren(document.createElement("slot"));
    this.#tell("error", { message: "the checker could not be loaded" });
  }

  #tell(type: "answer" | "resize" | "error", detail: object): void {
    this.dispatchEvent(new CustomEvent(type, { detail }));
  }
}

if (!customElements.get("straight-answer")) customElements.define("straight-answer", StraightAnswer);

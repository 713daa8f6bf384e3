/**
 * The element that holds the page: keeps the state, does the work the state wants, hands texts in.
 *
 * Drawn into the document itself, so that anchors, labels, print and assistive technology work as everywhere.
 */
import { LitElement, type TemplateResult } from "lit";
import type { Actions } from "./actions.js";
import { LARGEST_FILE, decode, tooLarge } from "./decode.js";
import { asRefusal, type Engine, type Question } from "./engine.js";
import { exampleIn, type Example } from "./examples.js";
import { reduce, start, type AnswerPlace, type Message, type Source, type State } from "./state.js";
import { page } from "./views/page.js";

/** The share of the answer's sentence that must be on the screen before it counts as seen. */
const SEEN = 0.5;

export class StraightAnswerPage extends LitElement {
  /** Set before the element is put into the document. */
  engine!: Promise<Engine>;
  #state: State = start;
  /** Where to go once the answer stands: an example opened by its address shows the answer first. */
  #goTo: "answer" | "shots" | null = null;
  #watch: IntersectionObserver | null = null;
  #watched: Element | null = null;

  readonly #actions: Actions = {
    canPaste: typeof navigator.clipboard?.readText === "function",
    pasteFromClipboard: () => void this.#pasteFromClipboard(),
    giveText: (text) => this.#give({ kind: "pasted", name: "Your text", text }),
    giveFile: (file) => void this.#giveFile(file),
    openExample: (example) => void this.#openExample(example, "shots"),
    hint: (hints) => this.#dispatch({ type: "hinted", hints }),
    ask: (patch) => this.#dispatch({ type: "asked", patch }),
    leaveOut: (shot, reason) => this.#dispatch({ type: "left_out", shot, reason }),
    showMoreShots: () => this.#dispatch({ type: "more_shots" }),
    startAgain: () => this.#startAgain(),
    luck: async (request) => (await this.engine).luck(request),
  };

  protected override createRenderRoot(): HTMLElement {
    this.replaceChildren();
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#listen();
    void this.#open();
  }

  override render(): TemplateResult {
    return page(this.#state, this.#actions);
  }

  override updated(): void {
    this.#watchTheAnswer();
    if (this.#goTo && this.#state.read && !this.#state.wants) {
      const id = this.#goTo;
      this.#goTo = null;
      this.#show(id);
    }
  }

  async #open(): Promise<void> {
    try {
      const engine = await this.engine;
      this.#dispatch({ type: "opened", measures: await engine.measures() });
    } catch (thrown) {
      this.#dispatch({ type: "file_refused", refusal: asRefusal(thrown) });
    }
    this.#openFromAddress();
  }

  #dispatch(message: Message): void {
    const before = this.#state;
    this.#state = reduce(before, message);
    this.requestUpdate();
    if (this.#state.wants && this.#state.turn !== before.turn) void this.#work(this.#state);
  }

  /** Does what the state wants; an outcome that comes too late is dropped by the reducer. */
  async #work({ wants, turn, source, hints, read, question }: State): Promise<void> {
    try {
      const engine = await this.engine;
      if (wants === "read" && source) {
        this.#dispatch({ type: "read", turn, result: await engine.read(source.text, hints) });
      } else if (wants === "check" && read && question) {
        this.#dispatch({ type: "answered", turn, report: await engine.check({ session: read.session, question }) });
      }
    } catch (thrown) {
      this.#dispatch({ type: "refused", turn, refusal: asRefusal(thrown) });
    }
  }

  #give(source: Source, question?: Partial<Question>): void {
    if (source.text.trim() === "") {
      const refusal = {
        kind: "empty_text",
        place: "",
        message: "There is nothing here yet.",
        remedy: "Paste the shots of two clubs, choose a file, or try an example below.",
      };
      this.#dispatch({ type: "file_refused", refusal });
      return;
    }
    this.#goTo ??= "shots";
    this.#dispatch({ type: "text_given", source, question });
  }

  async #giveFile(file: File): Promise<void> {
    if (file.size > LARGEST_FILE) return this.#dispatch({ type: "file_refused", refusal: tooLarge(file.name) });
    const decoded = decode(new Uint8Array(await file.arrayBuffer()), file.name);
    if ("refusal" in decoded) this.#dispatch({ type: "file_refused", refusal: decoded.refusal });
    else this.#give({ kind: "file", name: file.name, text: decoded.text });
  }

  async #pasteFromClipboard(): Promise<void> {
    try {
      this.#give({ kind: "pasted", name: "Your text", text: await navigator.clipboard.readText() });
    } catch {
      const field = this.querySelector<HTMLTextAreaElement>("#text");
      field?.focus();
      const refusal = {
        kind: "clipboard_refused",
        place: "",
        message: "The browser did not hand over the clipboard.",
        remedy: "Hold your finger on the field and choose Paste.",
      };
      this.#dispatch({ type: "file_refused", refusal });
    }
  }

  async #openExample(example: Example, goTo: "answer" | "shots"): Promise<void> {
    try {
      const text = await example.text();
      this.#goTo = goTo;
      this.#give({ kind: "example", name: `Invented example: ${example.title}`, text }, example.question);
    } catch {
      const refusal = {
        kind: "not_loaded",
        place: "",
        message: "This example could not be loaded.",
        remedy: "You seem to be offline. Your own shots can still be read: paste them here.",
      };
      this.#dispatch({ type: "file_refused", refusal });
    }
  }

  #openFromAddress(): void {
    const example = exampleIn(location.hash);
    if (example) void this.#openExample(example, "answer");
  }

  #startAgain(): void {
    if (exampleIn(location.hash)) history.replaceState(null, "", location.pathname + location.search);
    this.#dispatch({ type: "started_again" });
    void this.updateComplete.then(() => this.#show("shots"));
  }

  #listen(): void {
    window.addEventListener("hashchange", () => this.#openFromAddress());
    document.addEventListener("paste", (event) => this.#pasted(event));
    document.addEventListener("dragover", (event) => event.preventDefault());
    document.addEventListener("drop", (event) => this.#dropped(event));
    window.addEventListener("beforeprint", () => {
      for (const details of this.querySelectorAll<HTMLDetailsElement>("details.numbers, details.trust")) details.open = true;
    });
  }

  /** A paste anywhere is shots, save into a field that already holds something or is no field for shots. */
  #pasted(event: ClipboardEvent): void {
    const into = event.target;
    const isField = into instanceof HTMLInputElement || into instanceof HTMLTextAreaElement;
    if (isField && (into.id !== "text" || into.value.trim() !== "")) return;
    const file = event.clipboardData?.files[0];
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (text.trim() === "" && !file) return;
    event.preventDefault();
    if (text.trim() !== "") this.#give({ kind: "pasted", name: "Your text", text });
    else if (file) void this.#giveFile(file);
  }

  #dropped(event: DragEvent): void {
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    const text = event.dataTransfer?.getData("text/plain") ?? "";
    if (file) void this.#giveFile(file);
    else if (text.trim() !== "") this.#give({ kind: "pasted", name: "Your text", text });
  }

  /** Puts a part on the screen and the keyboard there. */
  #show(id: string): void {
    const section = this.querySelector(`#${id}`);
    section?.scrollIntoView({ block: "start" });
    this.querySelector<HTMLElement>(`#${id}-title`)?.focus({ preventScroll: true });
  }

  #watchTheAnswer(): void {
    const headline = this.querySelector("#answer-headline");
    if (headline === this.#watched) return;
    this.#watch ??= new IntersectionObserver((entries) => {
      const entry = entries.at(-1);
      if (entry) this.#dispatch({ type: "answer_is", place: place(entry) });
    }, { threshold: [0, SEEN] });
    this.#watch.disconnect();
    this.#watched = headline;
    if (headline) this.#watch.observe(headline);
  }
}

function place({ intersectionRatio, boundingClientRect }: IntersectionObserverEntry): AnswerPlace {
  if (intersectionRatio >= SEEN) return "in view";
  return boundingClientRect.top > 0 ? "below" : "above";
}

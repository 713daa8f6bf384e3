/**
 * Check a claim, and days together, open: what a fitting said against the session on the page, and that session with
 * those of other days. Keeps what was entered; the core decides and words it.
 */
import "../styles/claim.css";
import { LitElement, html, type TemplateResult } from "lit";
import { asRefusal, type Measure, type Question, type Refusal, type Session } from "../engine.js";
import type { Current, HandOver } from "../hand-over.js";
import { openPlanner, type Claimed, type ClaimReport, type Planner, type TogetherPair } from "../planner.js";
import { claimView } from "./view.js";
import { togetherView } from "./together.js";

export interface ClaimState {
  measures: readonly Measure[];
  current: Current | null;
  /** What is asked where nothing is on the page. */
  question: Question;
  claimed: Claimed;
  report: ClaimReport | null;
  days: readonly Session[];
  pairs: readonly TogetherPair[];
  refusal: Refusal | null;
  daysRefusal: Refusal | null;
}

export interface ClaimActions {
  change: (patch: { [K in keyof Claimed]?: Claimed[K] | undefined }) => void;
  ask: (measure: string) => void;
  addDay: (text: string) => void;
  dropDay: (index: number) => void;
}

const NOTHING: Session = { builds: [], measures: [], custom: [], shots: [], summaries: [], order: "unknown" };

export class StraightAnswerClaim extends LitElement {
  /** Set by the door. */
  declare page: HandOver;
  #planner: Planner | null = null;
  #state: ClaimState = {
    measures: [], current: null, question: { baseline: 0, measure: "carry", stopping: "unknown" }, claimed: {}, report: null,
    days: [], pairs: [], refusal: null, daysRefusal: null,
  };
  readonly #refresh = (): void => this.#answer({ current: this.page.current() });

  readonly #actions: ClaimActions = {
    change: (patch) => this.#answer({ claimed: withoutBlanks({ ...this.#state.claimed, ...patch }) }),
    ask: (measure) => this.#answer({ question: { ...this.#state.question, measure } }),
    addDay: (text) => void this.#addDay(text),
    dropDay: (index) => this.#answer({ days: this.#state.days.filter((_, at) => at !== index) }),
  };

  protected override createRenderRoot(): HTMLElement {
    this.replaceChildren();
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener("straight-answer", this.#refresh);
    void this.#open();
  }

  override disconnectedCallback(): void {
    document.removeEventListener("straight-answer", this.#refresh);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    if (!this.#planner) return html`<p class="hint">${this.#state.refusal?.message ?? "Opening…"}</p>`;
    return html`${claimView(this.#state, this.#actions)} ${togetherView(this.#state, this.#actions)}`;
  }

  async #open(): Promise<void> {
    try {
      this.#planner = await openPlanner();
      const measures = await (await this.page.engine).measures();
      this.#answer({ measures, current: this.page.current() });
    } catch (thrown) {
      this.#state = { ...this.#state, refusal: asRefusal(thrown) };
      this.requestUpdate();
    }
  }

  /** The state with this change, and what the core says to it. */
  #answer(patch: Partial<ClaimState>): void {
    this.#state = { ...this.#state, ...patch };
    const { current, claimed, days } = this.#state;
    const session = current?.session ?? NOTHING;
    const question = current?.question ?? this.#state.question;
    const said = claimed.gain !== undefined || (claimed.before !== undefined && claimed.after !== undefined);
    const claim = said ? this.#asking(() => this.#planner!.claim({ claimed, session, question })) : null;
    const together =
      current && days.length > 0 ? this.#asking(() => this.#planner!.together({ sessions: [session, ...days], question })) : null;
    this.#state = {
      ...this.#state,
      report: claim?.value ?? null,
      refusal: claim?.refusal ?? null,
      pairs: together?.value ?? [],
      daysRefusal: together?.refusal ?? null,
    };
    this.requestUpdate();
  }

  #asking<T>(call: () => T): { value: T | null; refusal: Refusal | null } {
    try {
      return { value: call(), refusal: null };
    } catch (thrown) {
      return { value: null, refusal: asRefusal(thrown) };
    }
  }

  async #addDay(text: string): Promise<void> {
    if (text.trim() === "") return;
    try {
      const { session } = await (await this.page.engine).read(text, {});
      this.#answer({ days: [...this.#state.days, session] });
    } catch (thrown) {
      this.#state = { ...this.#state, daysRefusal: asRefusal(thrown) };
      this.requestUpdate();
    }
  }
}

function withoutBlanks(claimed: { [K in keyof Claimed]?: Claimed[K] | undefined }): Claimed {
  return Object.fromEntries(Object.entries(claimed).filter(([, value]) => value !== undefined)) as Claimed;
}

customElements.define("straight-answer-claim", StraightAnswerClaim);

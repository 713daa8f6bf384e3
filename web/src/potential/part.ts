/** Part 8, open: keeps whose ball speed the map is for. Loaded when its door is opened. */
import "../styles/flight.css";
import "./potential.css";
import type { TemplateResult } from "lit";
import type { Flights, Potential } from "../core/flights.js";
import { OpenedPart } from "../pieces/opened-part.js";
import english from "../text/en/flight.ftl?raw";
import { learn } from "../text/say.js";
import { potentialView } from "./view.js";

learn(english);

export class StraightAnswerPotential extends OpenedPart<Potential> {
  /** Null leaves it to the core: the golfer's own club. */
  #group: number | null = null;

  protected override ask(from: Flights): Promise<Potential> {
    const { session, baseline } = this;
    return from.potential({ session, baseline, ...(this.#group === null ? {} : { map_for: this.#group }) });
  }

  protected override show(potential: Potential): TemplateResult {
    const own = potential.groups.findIndex((group) => group.build === this.baseline);
    const chosen = Math.min(this.#group ?? own, potential.groups.length - 1);
    return potentialView(potential, this.session, chosen, (group) => this.change(() => (this.#group = group)));
  }

  protected override forget(): void {
    this.#group = null;
  }
}

customElements.define("straight-answer-potential", StraightAnswerPotential);

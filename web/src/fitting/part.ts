/**
 * Going to a fitting, open: what a fair one looks like, line by line, to take along; and afterwards what that fitting can
 * show and what it cannot, worked out by the core from the same lines. Nothing is kept.
 */
import "./fitting.css";
import type { TemplateResult } from "lit";
import type { Measure, Refusal } from "../core/engine.js";
import type { FittingReport, FittingSeen } from "../core/planner.js";
import { BesidePart } from "../pieces/beside-part.js";
import english from "../text/en/fitting.ftl?raw";
import englishStart from "../text/en/start.ftl?raw";
import { learn } from "../text/say.js";
import { fittingView } from "./view.js";

learn(english);
learn(englishStart);

class StraightAnswerFitting extends BesidePart {
  #seen: FittingSeen = NOTHING_SAID;
  #report: FittingReport | null = null;
  #refusal: Refusal | null = null;

  protected override get refusal(): Refusal | null {
    return this.#refusal;
  }

  protected override opened(_measures: readonly Measure[]): void {
    this.requestUpdate();
  }

  protected override refused(refusal: Refusal): void {
    this.#refusal = refusal;
    this.requestUpdate();
  }

  protected override show(): TemplateResult {
    return fittingView({ seen: this.#seen, report: this.#report }, (line, said) =>
      this.#say({ ...this.#seen, [line]: said }),
    );
  }

  #say(seen: FittingSeen): void {
    this.#seen = seen;
    this.#report = this.planner.fitting(seen);
    this.requestUpdate();
  }
}

const NOTHING_SAID: FittingSeen = {
  own_club: null,
  as_often: null,
  as_warm: null,
  in_turn: null,
  alike: null,
  every_shot: null,
  number_said: null,
  hit_again: null,
  measured: null,
  taken_home: null,
};

customElements.define("straight-answer-fitting", StraightAnswerFitting);

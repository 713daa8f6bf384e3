/** Which of the answers it is, by a shape and a word that an arm's length does not blur. */
import { html, type TemplateResult } from "lit";
import type { Decision } from "../core/engine.js";
import { say } from "../text/say.js";

type Standing =
  | "matters"
  | "may_matter"
  | "too_small"
  | "different"
  | "same"
  | "cannot_tell"
  | "depends"
  | "cannot_answer";

export function standingOf({ kind, matters, why }: Decision): Standing {
  switch (kind) {
    case "different":
      return matters === null
        ? "different"
        : matters === "yes"
          ? "matters"
          : matters === "no"
            ? "too_small"
            : "may_matter";
    case "same":
      return "same";
    case "cannot_tell":
      return why === "depends_on_left_out" ? "depends" : "cannot_tell";
    case "cannot_answer":
      return "cannot_answer";
  }
}

const SQUARE = "M3 3h26v26h-26z";
const CIRCLE = "M16 2a14 14 0 1 1 0 28a14 14 0 1 1 0-28z";
const DIAMOND = "M16 1L31 16L16 31L1 16z";
const UNEQUAL = "M9 12.5h14M9 19.5h14M19.5 7.5L12.5 24.5";
const QUESTION = "M12.2 12.6a3.9 3.9 0 1 1 5.6 3.5c-1.3.7-1.8 1.4-1.8 2.9M16 22.6v.4";

/** The frame's path, and the sign's in it. */
const SHAPES: Record<Standing, readonly [string, string]> = {
  matters: [SQUARE, UNEQUAL],
  different: [SQUARE, UNEQUAL],
  may_matter: [SQUARE, UNEQUAL],
  too_small: [SQUARE, UNEQUAL],
  same: [CIRCLE, "M9.5 12.5h13M9.5 19.5h13"],
  cannot_tell: [DIAMOND, QUESTION],
  depends: [DIAMOND, "M10 13h11l-3-3M22 19h-11l3 3"],
  cannot_answer: [CIRCLE, "M10 16h12"],
};

export const standing = (decision: Decision): TemplateResult => {
  const is = standingOf(decision);
  const [frame, sign] = SHAPES[is];
  return html`
    <p class="standing">
      <svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true"><path class="frame" d=${frame} /><path class="sign" d=${sign} /></svg>
      <span>${say(`standing-${is}`)}</span>
    </p>`;
};

/**
 * The page's colors for pictures drawn outside it, in either scheme whatever the device shows: read off the style
 * sheet's own rules, so that they are named once (`styles/tokens.css`).
 */
import { LOOKS } from "../chart/marker.js";

export { LOOKS };

export type Scheme = "light" | "dark";

export interface Colors {
  card: string;
  ink: string;
  quiet: string;
  zone: string;
  alert: string;
  code: string;
  codeGround: string;
  looks: string[];
}

/** The colors of a scheme. */
export function colors(scheme: Scheme): Colors {
  const named = new Map<string, string>();
  for (const rule of rootRules(scheme)) {
    for (const name of rule.style) if (name.startsWith("--")) named.set(name, rule.style.getPropertyValue(name).trim());
  }
  const color = (name: string) => named.get(`--${name}`) ?? "";
  return {
    card: color("card"),
    ink: color("ink"),
    quiet: color("quiet"),
    zone: color("zone"),
    alert: color("alert"),
    code: color("code"),
    codeGround: color("code-ground"),
    looks: Array.from({ length: LOOKS }, (_, index) => color(`look-${index}`)),
  };
}

/** The rules for the document itself: the light ones, and for the dark scheme those that overrule them. */
function* rootRules(scheme: Scheme): Generator<CSSStyleRule> {
  for (const sheet of document.styleSheets) {
    for (const rule of sheet.cssRules) {
      if (isRoot(rule)) yield rule;
      const isDark = rule instanceof CSSMediaRule && /prefers-color-scheme:\s*dark/.test(rule.conditionText);
      if (isDark && scheme === "dark") for (const inner of rule.cssRules) if (isRoot(inner)) yield inner;
    }
  }
}

const isRoot = (rule: CSSRule): rule is CSSStyleRule => rule instanceof CSSStyleRule && rule.selectorText === ":root";

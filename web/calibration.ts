/** The measured error rates as rows of the methods page, put in when the page is built. */
/// <reference types="node" />
import { existsSync, readFileSync } from "node:fs";
import type { Plugin } from "vite";

/** One promise and what `cargo xtask calibrate` measured of it. */
export interface Measured {
  target: string | number;
  what: string;
  measured: number;
  se: number;
  sessions: number;
  at_least: number | null;
  at_most: number | null;
  pass: boolean;
}

const FILE = new URL("../tests/calibration.json", import.meta.url);
const PLACE = "<!-- measured error rates -->";

export const calibrationTable: Plugin = {
  name: "calibration-table",
  transformIndexHtml: (html) => html.replace(PLACE, () => table(existsSync(FILE) ? JSON.parse(readFileSync(FILE, "utf8")) : [])),
};

/** The table, or a sentence saying that nothing was measured. */
export function table(rows: readonly Measured[]): string {
  if (rows.length === 0) return "<p>This copy was built without its measured rates. <code>cargo xtask calibrate</code> measures them.</p>";
  const kept = rows.filter(({ pass }) => pass).length;
  return `<p>${kept} of ${rows.length} promises are kept. First, of each kind, the one that comes nearest to its limit.</p>
    ${drawn("The nearest to their limits", nearest(rows))}
    <details><summary>All ${rows.length} measured rates</summary>${drawn("All measured rates", rows)}</details>`;
}

/** Of each target the row with the least room to its limit; one that broke it comes first. */
export function nearest(rows: readonly Measured[]): Measured[] {
  const targets = [...new Set(rows.map(({ target }) => target))];
  return targets.map((target) => rows.filter((one) => one.target === target).reduce((a, b) => (room(b) < room(a) ? b : a)));
}

/** Room to the nearer limit, as a share of that limit. */
function room({ measured, at_least, at_most }: Measured): number {
  const below = at_most === null ? Infinity : (at_most - measured) / Math.abs(at_most || 1);
  const above = at_least === null ? Infinity : (measured - at_least) / Math.abs(at_least || 1);
  return Math.min(below, above);
}

function drawn(name: string, rows: readonly Measured[]): string {
  return `<div class="scroll" tabindex="0" role="group" aria-label="${name}"><table>
    <thead><tr><th scope="col">What was tried</th><th scope="col">Measured</th><th scope="col">Promised</th><th scope="col">Sessions</th><th scope="col">Kept?</th></tr></thead>
    <tbody>${rows.map(row).join("")}</tbody></table></div>`;
}

const row = ({ what, measured, se, sessions, at_least, at_most, pass }: Measured): string => `
  <tr><th scope="row">${escaped(what)}</th><td>${figure(measured)} <small>± ${figure(se)}</small></td>
  <td>${promised(at_least, at_most)}</td><td>${sessions.toLocaleString("en")}</td><td>${pass ? "yes" : "no"}</td></tr>`;

function promised(least: number | null, most: number | null): string {
  if (least !== null && most !== null) return `${figure(least)} to ${figure(most)}`;
  if (least !== null) return `at least ${figure(least)}`;
  return most === null ? "" : `at most ${figure(most)}`;
}

const figure = (value: number): string => String(Number(value.toPrecision(3)));

const escaped = (text: string): string => text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");

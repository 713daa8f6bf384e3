/** Values into text: numbers with their unit, names of measures, roles and orders. Pure; no verdict is worded here. */
import type { ColumnReading, Goal, Measure, Order, Role, Session } from "../core/engine.js";
import { STANDARD_AIR_CARRY } from "../core/standard-air.js";
import { numberTag, say } from "../text/say.js";
import { type Shown, shownIn } from "../text/units.js";

/** What the page needs to know of a measure, of the trade's list or of the golfer's own; its unit is the one shown. */
export interface MeasureView extends Shown {
  id: string;
  name: string;
  decimals: number;
  /** Usual smallest difference that matters, in the canonical unit; none for a column of the golfer's own. */
  margin: number | null;
  /** What is offered in its place: a round number in the unit shown. */
  offeredMargin: number | null;
  marginWhy: string;
}

const MINUS = "\u2212";
const SPACE = "\u00a0";
/** At which no line breaks either. */
const THIN_SPACE = "\u202f";

/** A measure by its id. */
export function measureView(id: string, measures: readonly Measure[], session: Pick<Session, "custom">): MeasureView {
  const known = measures.find((measure) => measure.id === id);
  if (known)
    return { ...known, ...shownIn(known.unit), offeredMargin: known.offered_margin, marginWhy: known.margin_why };
  const own = session.custom.find((measure) => measure.id === id);
  const unit = own?.unit ?? "";
  // Carry in standard air is a carry; a column of the golfer's own stays in its own unit.
  const shown = id === STANDARD_AIR_CARRY ? shownIn(unit) : { unit, scale: 1 };
  return { id, name: own?.name ?? id, ...shown, decimals: 1, margin: null, offeredMargin: null, marginWhy: "" };
}

/** A number with a real minus sign. */
export function number(value: number, decimals: number): string {
  const rounded = value.toFixed(decimals);
  const parts = withDecimals(decimals).formatToParts(Number(rounded) === 0 ? 0 : value);
  // Where a comma stands before decimals a point among thousands is read as one: Spanish sets them apart by a space.
  const comma = parts.some(({ type, value }) => type === "group" && value === ".");
  const text = parts.map(({ type, value }) => (comma && type === "group" ? THIN_SPACE : value)).join("");
  return text.replace("-", MINUS);
}

/** Made once for each language and number of decimals: making one costs more than a hundred formats. */
const formats = new Map<string, Intl.NumberFormat>();

function withDecimals(decimals: number): Intl.NumberFormat {
  const key = `${numberTag()} ${decimals}`;
  const known = formats.get(key);
  if (known) return known;
  const made = new Intl.NumberFormat(numberTag(), { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  formats.set(key, made);
  return made;
}

/** A number that always carries its sign, as differences do. */
export function signed(value: number, decimals: number): string {
  const text = number(value, decimals);
  return Number(value.toFixed(decimals)) > 0 ? `+${text}` : text;
}

/** A number with as many decimals as it needs, at most `most`: for what the golfer typed. */
export function plain(value: number, most = 6): string {
  return new Intl.NumberFormat(numberTag(), { maximumFractionDigits: most, useGrouping: false })
    .format(value)
    .replace("-", MINUS);
}

/** What the golfer typed as a number, with a point or a comma; null when it is none. */
export function typedNumber(text: string): number | null {
  const cleaned = text.trim().replace(MINUS, "-").replace(",", ".");
  const value = Number(cleaned);
  return cleaned !== "" && Number.isFinite(value) ? value : null;
}

/** What stands between whole numbers and decimals. */
export const decimalMark = (): string =>
  new Intl.NumberFormat(numberTag()).formatToParts(0.5).find(({ type }) => type === "decimal")?.value ?? ".";

/** Text followed by its unit, as the unit is written. */
export function withUnit(text: string, unit: string): string {
  if (unit === "") return text;
  return unit === "deg" ? `${text}°` : `${text}${SPACE}${unit}`;
}

/** What a measure's values need to be written. */
type Written = Pick<MeasureView, "unit" | "scale" | "decimals">;

/** A value of a measure, in the unit shown; `more` decimals than the measure has. */
export const amountOf = (value: number, { unit, scale, decimals }: Written, more = 0): string =>
  withUnit(number(value * scale, decimals + more), unit);

/** A difference, which always carries its sign. */
export const gapOf = (gap: number, { unit, scale, decimals }: Written, more = 0): string =>
  withUnit(signed(gap * scale, decimals + more), unit);

/** A size that somebody chose: in other units than it was chosen in, to one decimal more than the measure has. */
export const chosenOf = (size: number, { scale, decimals }: Pick<Written, "scale" | "decimals">): number =>
  scale === 1 ? size : Number((size * scale).toFixed(decimals + 1));

/** A unit as the golfer reads it. */
export function unitName(unit: string): string {
  return unit === "deg" ? say("unit-degrees") : unit;
}

const SPELLED: Readonly<Record<string, string>> = { yd: "yard", m: "meter" };

/** A length with its unit in full, for those who hear it. */
export const spelledOut = (length: number, unit: string): string =>
  new Intl.NumberFormat(numberTag(), {
    style: "unit",
    unit: SPELLED[unit]!,
    unitDisplay: "long",
    maximumFractionDigits: 0,
  }).format(length);

/** A share of 1 as percent. */
export function percent(share: number): string {
  return `${number(share * 100, 0)}${SPACE}%`;
}

/** The level of an interval, with as many nines as it takes not to be all. */
export function levelOf(level: number): string {
  const hundredths = level * 100;
  const isWhole = Math.abs(hundredths - Math.round(hundredths)) < 1e-6 && Math.round(hundredths) < 100;
  let decimals = isWhole ? 0 : 1;
  while (decimals < 9 && Number(hundredths.toFixed(decimals)) >= 100) decimals += 1;
  return `${number(hundredths, decimals)}${SPACE}%`;
}

/** An end of an interval, with the digits it takes to stand on its own side of no difference and of the margin. */
export function endOf(end: number, margin: number | null, { unit, scale, decimals }: Written, more = 0): string {
  const lines = [0, ...(margin === null ? [] : [margin * scale, -margin * scale])];
  const at = end * scale;
  const stands = (digits: number) =>
    lines.every((line) => Math.sign(Number(at.toFixed(digits)) - line) === Math.sign(at - line));
  let digits = decimals + more;
  while (digits < decimals + more + 3 && !stands(digits)) digits += 1;
  return withUnit(signed(at, digits), unit);
}

/** A ratio of scatters as percent more or less, short enough for the end of a bar. */
export function moreOrLess(ratio: number): string {
  return hasLimit(ratio) ? `${signed((ratio - 1) * 100, 0)}${SPACE}%` : say("no-limit");
}

/** The same in words: `20 % less`, `25 % more`. */
export function moreOrLessInWords(ratio: number): string {
  if (!hasLimit(ratio)) return say("no-limit");
  const hundredths = number(Math.abs(ratio - 1) * 100, 0);
  if (hundredths === "0") return say("ratio-same");
  return ratio < 1 ? say("ratio-less", { percent: hundredths }) : say("ratio-more", { percent: hundredths });
}

const hasLimit = (ratio: number): boolean => Number.isFinite(ratio) && ratio > 0;

/** How often something happens by luck, which is never zero and never certain. */
export function share(of: number): string {
  if (of < 0.01) return say("share-below");
  return of > 0.99 ? say("share-above") : percent(of);
}

/** A probability, which is never zero. */
export function probability(p: number): string {
  return p < 0.001 ? `< ${number(0.001, 3)}` : number(p, 3);
}

const DISTANCES = ["carry", "total"];
const SPEEDS = ["ball_speed", "club_speed"];

/** What 'better' is called for a measure. */
export function goalName(goal: Goal, measure: string): string {
  switch (goal) {
    case "higher":
      return say(
        DISTANCES.includes(measure) ? "goal-longer" : SPEEDS.includes(measure) ? "goal-faster" : "goal-higher",
      );
    case "lower":
      return say(
        DISTANCES.includes(measure) ? "goal-shorter" : SPEEDS.includes(measure) ? "goal-slower" : "goal-lower",
      );
    case "nearer_zero":
      return say(measure === "offline" ? "goal-straighter" : "goal-nearer-zero");
    case "tighter":
      return say("goal-tighter");
    case "different":
      return say("goal-different");
  }
}

/** The goals that make sense for a measure, the likeliest first. */
export function goalsFor(measure: string, measures: readonly Measure[]): Goal[] {
  switch (measures.find((known) => known.id === measure)?.better) {
    case "higher":
      return ["higher", "different", "tighter"];
    case "lower":
      return ["lower", "different", "tighter"];
    case "nearer_zero":
      return ["nearer_zero", "different", "tighter"];
    default:
      return ["different", "higher", "lower", "tighter"];
  }
}

/** What lies left and right of the line, said of the candidate. */
export function sides(measure: string, ratio: boolean): { left: string; right: string } {
  if (ratio) return { left: say("side-tighter"), right: say("side-wider") };
  if (DISTANCES.includes(measure)) return { left: say("side-shorter"), right: say("side-longer") };
  if (SPEEDS.includes(measure)) return { left: say("side-slower"), right: say("side-faster") };
  if (["offline", "launch_direction", "club_path", "face_angle", "face_to_path", "spin_axis"].includes(measure)) {
    return { left: say("side-left"), right: say("side-right") };
  }
  return { left: say("side-lower"), right: say("side-higher") };
}

/** What a column was taken for. */
export function roleName(role: Role, nameOf: (measure: string) => string): string {
  if (typeof role === "object") {
    const [kind, measure] = Object.entries(role)[0] as [string, string];
    const name = nameOf(measure);
    const statistic = STATISTICS.find((known) => known === kind);
    if (kind === "measure") return name;
    return statistic
      ? say(`role-${statistic}`, { measure: name })
      : say("role-other", { measure: name, kind: kind.replaceAll("_", " ") });
  }
  const known = ROLES.find((one) => one === role);
  return known ? say(`role-${known}`) : role.replaceAll("_", " ");
}

const ROLES = ["build", "round", "number", "time", "count", "left_out", "second", "ignored"] as const;
const STATISTICS = ["deviation", "low", "high"] as const;

/** Whether a heading, without its unit, is the very name of what its column was taken for. */
export function saysTheSame(heading: string, name: string): boolean {
  const bare = (text: string) =>
    text
      .replace(/[([].*$/, "")
      .replace(/[^\p{L}]/gu, "")
      .toLowerCase();
  const [written, meant] = [bare(heading), bare(name)];
  return (
    written === meant ||
    (written.length > 3 && meant.startsWith(written)) ||
    (name === say("role-build") && written === "build")
  );
}

/** A role as one piece of text, for the value of a choice. */
export const roleKey = (role: Role): string => JSON.stringify(role);

/** Each column once: in blocks and repeated headings the same column is read several times. */
export function distinctColumns(columns: readonly ColumnReading[]): ColumnReading[] {
  const key = ({ index, heading, build }: ColumnReading) => JSON.stringify([index, heading, build]);
  return [...new Map(columns.map((column) => [key(column), column])).values()];
}

/** Every role a column can be given: those the reading offers first, then the rest; scatter of what is `present`. */
export function rolesFor(column: ColumnReading, measures: readonly Measure[], present: readonly string[]): Role[] {
  const all: Role[] = [
    "build",
    ...measures.map((measure): Role => ({ measure: measure.id })),
    "round",
    "number",
    "time",
    "count",
    "left_out",
    "second",
    ...present.map((measure): Role => ({ deviation: measure })),
    "ignored",
  ];
  const offered = [column.role, ...column.alternatives];
  const taken = new Set(offered.map(roleKey));
  return [...offered, ...all.filter((role) => !taken.has(roleKey(role)))];
}

/** How the shots were hit. */
export function orderName(order: Order): string {
  return say(`order-${order}`);
}

/** The shots of each build, and whether only averages stand for it. */
export function buildCounts(session: Session): { shots: number; averagesOf: number | null; averagesOnly: boolean }[] {
  const shots = session.builds.map(() => 0);
  for (const build of session.columns?.build ?? session.shots.map((shot) => shot.build)) {
    shots[build!] = (shots[build!] ?? 0) + 1;
  }
  return session.builds.map((_, build) => {
    const summary = session.summaries.find((one) => one.build === build);
    return {
      shots: shots[build] ?? 0,
      averagesOf: summary?.n ?? null,
      averagesOnly: shots[build] === 0 && summary !== undefined,
    };
  });
}

/** A club’s count in words. */
export function countText({ shots, averagesOf, averagesOnly }: ReturnType<typeof buildCounts>[number]): string {
  if (!averagesOnly) return say("n-shots", { count: shots });
  return averagesOf === null ? say("averages-only") : say("averages-of", { count: averagesOf });
}

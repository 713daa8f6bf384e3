/**
 * The answer as one picture: words, interval, counts, date, and a code to scan. Drawn on the device.
 *
 * 1,200 pixels wide, so that it is sharp at the 600 or so that forums show; as high as its words need.
 */

import { type IntervalGeometry, intervalGeometry } from "../chart/interval.js";
import { markerPath } from "../chart/marker.js";
import type { Report, Shared } from "../core/engine.js";
import { type MeasureView, moreOrLess, sides, signed } from "../format/values.js";
import { say } from "../text/say.js";
import { type Colors, LOOKS } from "./colors.js";

export interface CardInput {
  shared: Shared;
  measure: MeasureView;
  /** As the page writes it; the core knows no clock. */
  date: string;
  /** Rows of the code to scan; null leaves it out. */
  code: readonly (readonly boolean[])[] | null;
  colors: Colors;
}

const WIDTH = 1200;
const PAD = 56;
/** Wide enough that a phone reads a usual link's code from the picture at half its size. */
const CODE = 470;
const FONT = 'system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", sans-serif';

/** A line of words with its place, found before anything is drawn. */
interface Line {
  text: string;
  y: number;
  font: string;
  color: string;
}

/** The card as a PNG. */
export async function card(input: CardInput): Promise<Blob> {
  const canvas = document.createElement("canvas");
  const ctx = canvas.getContext("2d")!;
  const { colors, shared, code } = input;
  const page = writer(ctx, colors);
  page.write(shared.card.title, 30, 500, colors.quiet, WIDTH - 2 * PAD);
  page.gap(10);
  page.write(shared.card.headline, 50, 700, colors.ink, WIDTH - 2 * PAD);
  const picture = interval(shared.file.report, input.measure);
  page.gap(24);
  const pictureTop = page.y;
  if (picture) page.gap(PICTURE);
  const beside = code ? WIDTH - 2 * PAD - CODE - 40 : WIDTH - 2 * PAD;
  const wordsTop = page.y;
  page.write(shared.card.difference, 31, 600, colors.ink, beside);
  for (const line of [shared.card.counts, shared.card.left_out]) page.write(line, 28, 400, colors.ink, beside);
  for (const line of shared.card.warnings) page.write(`! ${line}`, 28, 600, colors.alert, beside);
  page.gap(14);
  page.write(say("card-dated", { date: input.date }), 26, 400, colors.quiet, beside);
  if (code) page.write(say("card-scan"), 26, 400, colors.quiet, beside);
  canvas.width = WIDTH;
  canvas.height = Math.max(page.y, code ? wordsTop + CODE : 0) + PAD;
  ctx.fillStyle = colors.card;
  ctx.fillRect(0, 0, canvas.width, canvas.height);
  page.draw();
  if (picture) drawInterval(ctx, picture, pictureTop, input);
  if (code) drawCode(ctx, colors, code, WIDTH - PAD - CODE, wordsTop);
  return new Promise((resolve, reject) =>
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("no picture"))), "image/png"),
  );
}

/** Puts words below one another, broken where the width ends. */
function writer(ctx: CanvasRenderingContext2D, colors: Colors) {
  const lines: Line[] = [];
  return {
    y: PAD,
    gap(height: number): void {
      this.y += height;
    },
    write(text: string, size: number, weight: number, color: string, width: number): void {
      if (text === "") return;
      const font = `${weight} ${size}px ${FONT}`;
      ctx.font = font;
      for (const line of broken(ctx, text, width)) {
        this.y += size * 1.28;
        lines.push({ text: line, y: this.y - size * 0.28, font, color: color || colors.ink });
      }
      this.y += 6;
    },
    draw(): void {
      for (const { text, y, font, color } of lines) {
        ctx.font = font;
        ctx.fillStyle = color;
        ctx.fillText(text, PAD, y);
      }
    },
  };
}

/** Lines no wider than the width; a word that is wider itself is cut. */
function broken(ctx: CanvasRenderingContext2D, text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/ +/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (ctx.measureText(longer).width <= width) line = longer;
    else {
      if (line !== "") lines.push(line);
      line = word;
      while (ctx.measureText(line).width > width) line = `${line.slice(0, -2)}…`;
    }
  }
  return [...lines, line];
}

const PICTURE = 220;
const BAR_Y = 96;
/** Room for the words at either end. */
const SIDE = 330;

interface Picture {
  geometry: IntervalGeometry;
  isRatio: boolean;
}

function interval({ answer, asked }: Report, { scale }: MeasureView): Picture | null {
  const { estimate, candidate } = answer;
  if (!estimate || candidate === null || answer.facts?.says_next_to_nothing) return null;
  const isRatio = estimate.method === "spread_ratio";
  const { value, order_allowance: allowance } = estimate;
  const { low, high } = estimate.decided_by;
  const rows = [{ build: candidate, value, low, high, allowance, chosen: true }];
  return { geometry: intervalGeometry({ rows, margin: asked.margin, isRatio, scale }), isRatio };
}

function drawInterval(
  ctx: CanvasRenderingContext2D,
  { geometry, isRatio }: Picture,
  top: number,
  { colors, measure }: CardInput,
): void {
  const x = (percent: number) => PAD + (percent / 100) * (WIDTH - 2 * PAD);
  const { left, right } = sides(measure.id, isRatio);
  const figure = (value: number) => (isRatio ? moreOrLess(value) : signed(value * measure.scale, measure.decimals));
  const small = `400 26px ${FONT}`;
  const floor = top + 150;
  const text = (words: string, at: number, y: number, align: CanvasTextAlign, color = colors.quiet) => {
    Object.assign(ctx, { font: small, textAlign: align, fillStyle: color });
    ctx.fillText(words, at, y);
  };
  text(`← ${left}`, PAD, top + 24, "left");
  text(`${right} →`, WIDTH - PAD, top + 24, "right");
  if (geometry.zone) {
    ctx.fillStyle = colors.zone;
    ctx.fillRect(x(geometry.zone.from), top + 40, x(geometry.zone.to) - x(geometry.zone.from), floor - top - 40);
    // Above its zone, as far as the words at both ends leave room.
    const middle = x((geometry.zone.from + geometry.zone.to) / 2);
    text(say("card-zone"), Math.min(Math.max(middle, PAD + SIDE), WIDTH - PAD - SIDE), top + 24, "center");
  }
  ctx.strokeStyle = colors.ink;
  ctx.lineWidth = 3;
  ctx.setLineDash([]);
  stroke(ctx, x(geometry.none), top + 40, x(geometry.none), floor);
  ctx.lineWidth = 2;
  stroke(ctx, PAD, floor, WIDTH - PAD, floor);
  for (const { at, value } of geometry.ticks) text(figure(value), x(at), floor + 34, "center");
  for (const bar of geometry.bars) {
    const y = top + BAR_Y;
    const color = colors.looks[bar.build % LOOKS] ?? colors.ink;
    ctx.strokeStyle = color;
    ctx.lineWidth = 6;
    stroke(ctx, x(bar.from), y, x(bar.to), y);
    ctx.lineWidth = 16;
    stroke(ctx, x(bar.coreFrom), y, x(bar.coreTo), y);
    ctx.save();
    ctx.translate(x(bar.at), y);
    ctx.scale(2.4, 2.4);
    Object.assign(ctx, { fillStyle: color, strokeStyle: colors.card, lineWidth: 2 });
    const marker = new Path2D(markerPath(bar.build));
    ctx.stroke(marker);
    ctx.fill(marker);
    ctx.restore();
  }
  ctx.textAlign = "left";
}

function stroke(ctx: CanvasRenderingContext2D, x1: number, y1: number, x2: number, y2: number): void {
  ctx.beginPath();
  ctx.moveTo(x1, y1);
  ctx.lineTo(x2, y2);
  ctx.stroke();
}

/** Dark on white in either scheme, with the four light modules around that readers need. */
function drawCode(
  ctx: CanvasRenderingContext2D,
  colors: Colors,
  code: readonly (readonly boolean[])[],
  x: number,
  y: number,
): void {
  const module = Math.max(1, Math.floor(CODE / (code.length + 8)));
  const size = module * (code.length + 8);
  const [left, top] = [x + CODE - size, y];
  ctx.fillStyle = colors.codeGround;
  ctx.fillRect(left, top, size, size);
  ctx.fillStyle = colors.code;
  for (const [down, row] of code.entries()) {
    for (const [across, dark] of row.entries()) {
      if (dark) ctx.fillRect(left + (across + 4) * module, top + (down + 4) * module, module, module);
    }
  }
}

/** The ground from above: one scale, shots that move with the aim, ovals that lie where their shots lie. */
import { expect, test } from "vitest";
import { aimAt, type LandingInput, landingGeometry, WIDTH } from "../src/landing/geometry.js";

const input = (change: Partial<LandingInput> = {}): LandingInput => ({
  shots: [
    { shot: 0, build: 0, offline: -20, carry: 240, leftOut: false },
    { shot: 1, build: 0, offline: 15, carry: 255, leftOut: false },
    { shot: 2, build: 1, offline: 4, carry: 262, leftOut: true },
  ],
  builds: [{ build: 0, center: { offline: -2, carry: 248 }, ovals: [{ share: 0.5, major: 20, minor: 10, angle: 90 }] }],
  fairway: 30,
  aim: 0,
  farthestAim: 60,
  ...change,
});

test("right is right, farther is higher, and both have one scale", () => {
  const { shots, fairway, middle } = landingGeometry(input());
  const [a, b, c] = shots as [(typeof shots)[0], (typeof shots)[0], (typeof shots)[0]];
  expect(b.x).toBeGreaterThan(a.x);
  expect(c.y).toBeLessThan(b.y);
  expect((a.y - b.y) / 15).toBeCloseTo((b.x - a.x) / 35, 9);
  expect(fairway.x + fairway.width / 2).toBeCloseTo(middle, 9);
  expect(fairway.width / 30).toBeCloseTo((b.x - a.x) / 35, 9);
});

test("the shots move with the aim, the fairway stays", () => {
  const [before, after] = [landingGeometry(input()), landingGeometry(input({ aim: 10 }))];
  expect(after.fairway).toEqual(before.fairway);
  const moved = after.shots.map(({ x }, index) => x - before.shots[index]!.x);
  for (const by of moved) expect(by).toBeCloseTo((before.fairway.width / 30) * 10, 6);
  expect(after.aim.x - before.aim.x).toBeCloseTo(moved[0]!, 6);
});

test("an oval lies along its shots, in one scale or squeezed", () => {
  const [oval] = landingGeometry(input()).ovals;
  const scale = landingGeometry(input()).fairway.width / 30;
  // Its longer axis points from the tee, which is straight up.
  expect(oval).toMatchObject({ turn: -90 });
  expect([oval!.rx / scale, oval!.ry / scale].map((axis) => Math.round(axis))).toEqual([20, 10]);
  const far = Array.from({ length: 9 }, (_, shot) => ({
    shot,
    build: 0,
    offline: 0,
    carry: 60 + 30 * shot,
    leftOut: false,
  }));
  const tall = landingGeometry(input({ shots: far }));
  expect(tall.bottom - tall.top).toBe(460);
  const along = (tall.shots[0]!.y - tall.shots[8]!.y) / 240;
  // Squeezed, its longer axis has become the sideways one.
  expect(tall.ovals[0]!.ry / along).toBeCloseTo(20, 6);
});

test("a place under the finger is a whole yard within what can be asked", () => {
  const geometry = landingGeometry(input());
  expect(aimAt(geometry, geometry.middle / WIDTH, 60)).toBe(0);
  for (const aim of [-12, 7, 31]) {
    const share = geometry.middle / WIDTH + aim / geometry.aim.perShare;
    expect(aimAt(geometry, share, 60)).toBe(aim);
  }
  expect([aimAt(geometry, -3, 60), aimAt(geometry, 3, 60)]).toEqual([-60, 60]);
});

test("nothing is drawn outside, whatever the numbers", () => {
  const wild = landingGeometry(
    input({ aim: -60, shots: [...input().shots, { shot: 3, build: 0, offline: 400, carry: 90, leftOut: false }] }),
  );
  for (const { x, y } of [...wild.shots, ...wild.centers]) {
    expect(x).toBeGreaterThanOrEqual(wild.left);
    expect(x).toBeLessThanOrEqual(wild.right);
    expect(y).toBeGreaterThanOrEqual(wild.top - 1e-9);
    expect(y).toBeLessThanOrEqual(wild.bottom + 1e-9);
  }
  expect(wild.shots.at(-1)!.outside).toBe(true);
});

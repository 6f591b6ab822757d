import type { Body, Foot, Grip, Side } from "./motion.ts";

/** How a repeat lies to the first one: so many metres on, turned by so many degrees to the left, after so many times. */
export interface Onward { x: number; y: number; turn: number; times: number }

export const first: Onward = { x: 0, y: 0, turn: 0, times: 0 };

/**
 * Metres, degrees and shares of the weight by which an end may miss the start it leads into: what is left of it is
 * evened out in one count. A hold lets partners stand here or there by as much. Working values.
 */
const near = 0.5, askew = 12, leaning = 0.3;

/** Facings lie on eighths of a turn. */
const eighth = 45;

export function placed<P extends { x: number; y: number }>(p: P, by: Omit<Onward, "times">): P {
  const a = (by.turn * Math.PI) / 180;
  return { ...p, x: by.x + p.x * Math.cos(a) - p.y * Math.sin(a), y: by.y + p.x * Math.sin(a) + p.y * Math.cos(a) };
}

/** The same repeat once more: from where `by` begins, by `step`. */
export function next(by: Onward, step: Onward): Onward {
  const { x, y } = placed(step, by);
  return { x, y, turn: (by.turn + step.turn) % 360, times: by.times + 1 };
}

/** The way back. */
export function back(step: Onward): Onward {
  const { x, y } = placed({ x: -step.x, y: -step.y }, { x: 0, y: 0, turn: -step.turn });
  return { x, y, turn: -step.turn, times: -step.times };
}

export function carried(body: Body, by: Onward): Body {
  const foot = (f: Foot): Foot => ({ ...placed(f, by), facing: f.facing + by.turn });
  return {
    ...placed(body, by), facing: body.facing + by.turn,
    feet: { left: foot(body.feet.left), right: foot(body.feet.right) },
    hands: { left: placed(body.hands.left, by), right: placed(body.hands.right, by) },
  };
}

/**
 * Where the next repeat begins, when everybody ends as they began, on the same foot, only further on or turned; else
 * nothing, for then they would jump. Where the free foot is does not matter: it is about to move.
 */
export function leadsInto(start: Body[], end: Body[]): Onward | undefined {
  const [a, b] = [start[0], end[0]];
  if (!a || !b) return undefined;
  const turn = Math.round((b.facing - a.facing) / eighth) * eighth;
  const turned = placed(a, { x: 0, y: 0, turn });
  const step: Onward = { x: b.x - turned.x, y: b.y - turned.y, turn: turn % 360, times: 1 };
  const fits = start.every((body, i) => {
    const to = end[i], from = carried(body, step);
    if (!to) return false;
    const apart = (p: Point, q: Point) => Math.hypot(p.x - q.x, p.y - q.y);
    // Who lands from a hop has little weight on the floor yet, and all of it on one foot.
    const share = (b: Body, side: Side) => b.feet[side].weight / Math.max(b.feet.left.weight + b.feet.right.weight, 1e-3);
    const stands = (side: Side) => Math.abs(share(from, side) - share(to, side)) <= leaning && (to.feet[side].weight < 0.5 || apart(from.feet[side], to.feet[side]) <= near);
    return Math.abs(around(to.facing - from.facing)) <= askew && apart(from, to) <= near && stands("left") && stands("right");
  });
  return fits ? step : undefined;
}

/**
 * A body at the beginning of another time through: it sets out from where the time before has left it.
 * @param before How that was, seen from this repeat.
 * @param start How the repeat begins the first time.
 * @param left How much of the difference is left, from 1 to 0.
 * @param feet The same for each foot: where it stands it stays, and only its first step takes it where it belongs.
 */
export function settling(now: Body, before: Body, start: Body, left: number, feet: Record<Side, number>): Body {
  const towards = <P extends Point>(p: P, to: Point, from: Point, left: number): P => ({ ...p, x: p.x + (to.x - from.x) * left, y: p.y + (to.y - from.y) * left });
  const foot = (side: Side): Foot => {
    const [p, to, from] = [now.feet[side], before.feet[side], start.feet[side]];
    const still = feet[side];
    return { ...towards(p, to, from, still), facing: p.facing + around(to.facing - from.facing) * still, up: p.up + (to.up - from.up) * still, toe: p.toe + (to.toe - from.toe) * still };
  };
  const hand = (side: Side): Grip => {
    const [p, to, from] = [now.hands[side], before.hands[side], start.hands[side]];
    return { ...towards(p, to, from, left), up: p.up + (to.up - from.up) * left };
  };
  return {
    ...towards(now, before, start, left), facing: now.facing + around(before.facing - start.facing) * left,
    feet: { left: foot("left"), right: foot("right") },
    hands: { left: hand("left"), right: hand("right") },
  };
}

/** Smoothly from 1 to 0. */
export function fading(part: number): number {
  const p = Math.min(Math.max(part, 0), 1);
  return (1 - p) * (1 - p) * (1 + 2 * p);
}

interface Point { x: number; y: number }

/** Degrees the nearer way round. */
const around = (degrees: number) => ((((degrees % 360) + 540) % 360) - 180);

import type { Body } from "./motion.ts";
import { measures as m } from "./measures.ts";
import { ahead, aside, type Vector } from "./vectors.ts";

/** Half as deep and half as wide as a trunk, as shares of stature. Working values. */
const deep = 0.075, wide = 0.1;

/** A trunk begins so far below the shoulders, as a share of stature. Working value. */
const trunk = 0.3;

/**
 * What an arm should not go through, seen from between the own shoulders: an upright ellipse for a trunk, as wide as deep for a head.
 * @property round Of somebody round whom an arm may be laid, which it then is not in front of: the stature.
 * @property near True of the room about the head of somebody else: an arm whose hand is above it has its elbow above it too, where it can.
 */
export interface Solid { x: number; y: number; cos: number; sin: number; deep: number; wide: number; bottom: number; top: number; own: boolean; round?: number; near?: boolean }

/**
 * The trunk and the head of somebody, seen by a dancer from between the shoulders.
 * @param chest Where that is, and `its` where it is of the other.
 * @returns Nothing of bodies further away than two arms are long: they are in nobody's way.
 */
export function solidsOf(body: Body, chest: Vector, other: Body, its: Vector, own: boolean): Solid[] {
  const k = other.stature, [x, y, z] = [its.x - chest.x, its.y - chest.y, its.z - chest.z];
  if (x * x + y * y > k * k) return [];
  const [front, left] = [ahead(body.facing), aside(body.facing)], turned = ((other.facing - body.facing) * Math.PI) / 180;
  const place = { x: x * front.x + y * front.y, y: x * left.x + y * left.y, cos: Math.cos(turned), sin: Math.sin(turned), own };
  const head = m.headRadius * k, middle = (m.head - other.measures.shoulderHeight) * k;
  return [
    { ...place, deep: deep * k, wide: wide * k, bottom: z - trunk * k, top: z + m.neck * k },
    { ...place, deep: head, wide: head, bottom: z + middle - head, top: z + middle + head },
    ...(own ? [] : [
      { ...place, deep: head, wide: head, bottom: z - trunk * k, top: z + middle + over * k, round: k },
      { ...place, deep: room * head, wide: room * head, bottom: z + middle - room * head, top: z + middle + head, near: true },
    ]),
  ];
}

/** How far the room about a head goes, in heads, and what being in it costs against being in the head itself. Found by looking. */
const room = 2, bother = 0.4;

/** How deep an arm with its elbow at a place is in bodies, summed over some places of it; of the own body only where the elbow is and beyond. */
export function inBodies(bodies: Solid[], shoulder: Vector, hand: Vector, x: number, y: number, z: number): number {
  let sum = 0;
  for (const body of bodies) {
    if (body.round !== undefined) continue;
    if (body.near) {
      if (hand.z > body.top) sum += bother * (depth(body, x, y, z) + depth(body, (x + hand.x) / 2, (y + hand.y) / 2, (z + hand.z) / 2));
      continue;
    }

    if (!body.own) sum += depth(body, (shoulder.x + x) / 2, (shoulder.y + y) / 2, (shoulder.z + z) / 2);
    sum += depth(body, x, y, z);
    for (let part = 1; part < 4; part++) sum += depth(body, x + ((hand.x - x) * part) / 4, y + ((hand.y - y) * part) / 4, z + ((hand.z - z) * part) / 4);
  }

  return sum;
}

/**
 * A hand on the far side of somebody: further than the first two from the middle it is there and not before the breast, less far
 * ahead than the second two it is beside and not in front; both as shares of stature, from not at all to wholly. Working values.
 */
const far = [0.02, 0.06] as const, front = [0.14, 0.1] as const;

/** An arm so far above the middle of a head goes over it, as a share of stature. Working value. */
const over = 0.07;

/**
 * How far an arm with its elbow at a place lies in front of somebody whose far side it is laid round, from 0 to 1: it goes
 * behind the neck or the back. No arm over a head is meant, and no hand that is in front.
 */
export function inFront(bodies: Solid[], shoulder: Vector, hand: Vector, x: number, y: number, z: number): number {
  let sum = 0;
  for (const body of bodies) {
    if (body.round !== undefined) sum += passing(body, shoulder, hand, x, y, z);
  }

  return sum;
}

function passing(body: Solid, shoulder: Vector, hand: Vector, x: number, y: number, z: number): number {
  const side = (px: number, py: number): number => (py - body.y) * body.cos - (px - body.x) * body.sin;
  const before = (px: number, py: number): number => (px - body.x) * body.cos + (py - body.y) * body.sin;
  const [from, elbow, to] = [side(shoulder.x, shoulder.y), side(x, y), side(hand.x, hand.y)];
  if (from * to >= 0) return 0;
  const k = body.round!, meant = share(Math.abs(to) / k, far) * share(before(hand.x, hand.y) / k, front);
  if (meant === 0) return 0;
  const upper = from * elbow < 0, t = upper ? from / (from - elbow) : elbow / (elbow - to);
  const part = (s: number, e: number, h: number): number => (upper ? s + (e - s) * t : e + (h - e) * t);
  const up = part(shoulder.z, z, hand.z);
  if (up < body.bottom || up > body.top) return 0;
  return meant * share(before(part(shoulder.x, x, hand.x), part(shoulder.y, y, hand.y)), [0, body.deep]);
}

const share = (value: number, [none, whole]: readonly [number, number]): number => Math.min(1, Math.max(0, (value - none) / (whole - none)));

/** 1 in the middle of a body and nothing outside it. */
function depth(body: Solid, x: number, y: number, z: number): number {
  if (z < body.bottom || z > body.top) return 0;
  const dx = x - body.x, dy = y - body.y;
  const u = (dx * body.cos + dy * body.sin) / body.deep, v = (dy * body.cos - dx * body.sin) / body.wide;
  return Math.max(0, 1 - u * u - v * v);
}

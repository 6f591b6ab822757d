import type { Body } from "./motion.ts";
import { measures as m } from "./measures.ts";
import { ahead, aside, type Vector } from "./vectors.ts";

/** Half as deep and half as wide as a trunk, as shares of stature. Working values. */
const deep = 0.075, wide = 0.1;

/** A trunk begins so far below the shoulders, as a share of stature. Working value. */
const trunk = 0.3;

/** What an arm should not go through, seen from between the own shoulders: an upright ellipse for a trunk, as wide as deep for a head. */
export interface Solid { x: number; y: number; cos: number; sin: number; deep: number; wide: number; bottom: number; top: number; own: boolean }

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
  ];
}

/** How deep an arm with its elbow at a place is in bodies, summed over some places of it; of the own body only where the elbow is and beyond. */
export function inBodies(bodies: Solid[], shoulder: Vector, hand: Vector, x: number, y: number, z: number): number {
  let sum = 0;
  for (const body of bodies) {
    if (!body.own) sum += depth(body, (shoulder.x + x) / 2, (shoulder.y + y) / 2, (shoulder.z + z) / 2);
    sum += depth(body, x, y, z);
    for (let part = 1; part < 4; part++) sum += depth(body, x + ((hand.x - x) * part) / 4, y + ((hand.y - y) * part) / 4, z + ((hand.z - z) * part) / 4);
  }

  return sum;
}

/** 1 in the middle of a body and nothing outside it. */
function depth(body: Solid, x: number, y: number, z: number): number {
  if (z < body.bottom || z > body.top) return 0;
  const dx = x - body.x, dy = y - body.y;
  const u = (dx * body.cos + dy * body.sin) / body.deep, v = (dy * body.cos - dx * body.sin) / body.wide;
  return Math.max(0, 1 - u * u - v * v);
}

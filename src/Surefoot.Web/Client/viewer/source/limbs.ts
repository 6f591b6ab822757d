import { at, dot, long, minus, plus, times, unit, type Vector } from "./vectors.ts";

/** Where a joint can be: on a circle of a radius round a limb, so far along it from its root. */
export function hinge(from: Vector, to: Vector, upper: number, lower: number): { along: Vector; middle: number; radius: number } {
  const way = minus(to, from);
  const far = long(way);
  if (far < 1e-6) return { along: at(0, 0, 0), middle: 0, radius: upper };
  const along = unit(way);
  if (far >= upper + lower) return { along, middle: (far * upper) / (upper + lower), radius: 0 };
  const middle = Math.min(Math.max((upper * upper - lower * lower + far * far) / (2 * far), -upper), upper);
  return { along, middle, radius: Math.sqrt(Math.max(0, upper * upper - middle * middle)) };
}

/**
 * The knee of a leg or the elbow of an arm: where two bones of known length meet between their ends.
 * @param towards The side to which the joint bends; only what is across the limb counts.
 * @returns On the straight line where the ends are further apart than the bones are long.
 */
export function joint(from: Vector, to: Vector, upper: number, lower: number, towards: Vector): Vector {
  const { along, middle, radius } = hinge(from, to, upper, lower);
  const across = minus(towards, times(along, dot(towards, along)));
  const bend = long(across) < 1e-6 ? anyAcross(along) : unit(across);
  return plus(plus(from, times(along, middle)), times(bend, radius));
}

/** How far a joint is bent, in degrees: 0 for a straight limb. */
export function bent(from: Vector, middle: Vector, to: Vector): number {
  const a = unit(minus(middle, from)), b = unit(minus(to, middle));
  return (Math.acos(Math.min(Math.max(dot(a, b), -1), 1)) * 180) / Math.PI;
}

function anyAcross(along: Vector): Vector {
  return Math.abs(along.z) < 0.9 ? unit(at(-along.y, along.x, 0)) : at(1, 0, 0);
}

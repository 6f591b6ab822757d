/** A place or a way in the dance's own room: metres, z up. */
export interface Vector { x: number; y: number; z: number }

export const at = (x: number, y: number, z: number): Vector => ({ x, y, z });
export const plus = (a: Vector, b: Vector): Vector => at(a.x + b.x, a.y + b.y, a.z + b.z);
export const minus = (a: Vector, b: Vector): Vector => at(a.x - b.x, a.y - b.y, a.z - b.z);
export const times = (a: Vector, k: number): Vector => at(a.x * k, a.y * k, a.z * k);
export const dot = (a: Vector, b: Vector): number => a.x * b.x + a.y * b.y + a.z * b.z;
export const cross = (a: Vector, b: Vector): Vector => at(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);
// Not Math.hypot, which is many times slower: this is asked a million times for every dance.
export const long = (a: Vector): number => Math.sqrt(a.x * a.x + a.y * a.y + a.z * a.z);
export const between = (a: Vector, b: Vector): number => long(minus(a, b));
export const mixed = (a: Vector, b: Vector, part: number): Vector => plus(a, times(minus(b, a), part));

/** Of length 1; nothing stays nothing. */
export function unit(a: Vector): Vector {
  const l = long(a);
  return l < 1e-9 ? at(0, 0, 0) : times(a, 1 / l);
}

/** Level ways, seen from somebody who looks so many degrees to the left of x. */
export const ahead = (degrees: number): Vector => at(Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180), 0);
export const aside = (degrees: number): Vector => ahead(degrees + 90);

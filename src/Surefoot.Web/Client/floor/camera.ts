import type { Motion } from "surefoot-viewer/motion.ts";
import { back, placed } from "surefoot-viewer/onward.ts";

/** What the floor is looked at from: the middle of the picture in metres, and how much floor must be seen up and across. */
export interface View { x: number; y: number; up: number; across: number }

/** Counts before and after a moment over which the picture's middle is evened out: less shakes with each step, more lets them run out of sight. Working value. */
const even = 1;

/** Samples in a count of the path that is evened out. */
const fine = 4;

/** Metres of floor around the bodies that are seen as well, and the least that is seen. Working values. */
const around = 0.3, least = 1.6;

/**
 * Follows the dancers smoothly. The path depends on the count alone, not on how one got there, so that a moment
 * always looks the same.
 */
export class Camera {
  private readonly path: { x: number; y: number }[];
  private readonly up: number;
  private readonly across: number;

  constructor(motion: Motion) {
    const end = Math.ceil((motion.file.counts + 1) * fine);
    const { counts } = motion.file;
    const { onward } = motion;
    const middle = (count: number): { x: number; y: number } => {
      // Before and after this repeat are the ends of its neighbours, so that the picture glides from one into the next.
      if (onward && count < 0) return placed(middle(count + counts), back(onward));
      if (onward && count > counts) return placed(middle(count - counts), onward);
      const bodies = motion.at(count);
      const n = Math.max(bodies.length, 1);
      return { x: bodies.reduce((s, b) => s + b.x, 0) / n, y: bodies.reduce((s, b) => s + b.y, 0) / n };
    };
    const half = even * fine;
    const middles = Array.from({ length: end + 1 + 2 * half }, (_, i) => middle((i - half) / fine));
    this.path = Array.from({ length: end + 1 }, (_, i) => {
      let x = 0, y = 0, weights = 0;
      for (let k = -half; k <= half; k++) {
        const m = middles[i + half + k]!;
        const weight = 1 + Math.cos((Math.PI * k) / (half + 1));
        x += m.x * weight;
        y += m.y * weight;
        weights += weight;
      }
      return { x: x / weights, y: y / weights };
    });
    let up = 0, across = 0;
    for (let i = 0; i <= end; i++) {
      const { x, y } = this.path[i]!;
      for (const b of motion.at(i / fine)) {
        for (const p of [b, b.feet.left, b.feet.right]) {
          up = Math.max(up, Math.abs(p.x - x));
          across = Math.max(across, Math.abs(p.y - y));
        }
      }
    }
    // Where each repeat begins turned, what lay across lies up the next time.
    if (onward && onward.turn % 180 !== 0) up = across = Math.max(up, across);
    this.up = Math.max(least, 2 * (up + around));
    this.across = Math.max(least, 2 * (across + around));
  }

  at(count: number): View {
    const place = Math.min(Math.max(count * fine, 0), this.path.length - 1);
    const first = Math.floor(place);
    const a = this.path[first] ?? { x: 0, y: 0 };
    const b = this.path[first + 1] ?? a;
    const part = place - first;
    return { x: a.x + (b.x - a.x) * part, y: a.y + (b.y - a.y) * part, up: this.up, across: this.across };
  }
}

import { ankleBack, heel, measures as m, straightest } from "./measures.ts";
import type { Foot } from "./motion.ts";
import { ahead, at, plus, times, type Vector } from "./vectors.ts";

/** From the middle of the sole forward to the ball, as a share of the foot's length; a foot rolls on it. Working value. */
const ball = 0.22;

/** How far a heel rises at most, in degrees, and how low hips may sink before it does, as a share of their standing height. Working values. */
const steepest = 68, unbent = 0.955;

/** Height of the hips of somebody who stands, in metres. */
export const standing = (stature: number): number => (m.thigh + m.shank) * stature * straightest + m.ankle * stature + heel;

/** Over the back of the sole, as the foot is turned and tipped. */
export function ankleOf(foot: Foot, long: number, stature: number): Vector {
  const pitch = (foot.toe * Math.PI) / 180;
  const back = -ankleBack * long, up = m.ankle * stature + heel;
  const level = back * Math.cos(pitch) - up * Math.sin(pitch);
  return plus(at(foot.x, foot.y, foot.up + back * Math.sin(pitch) + up * Math.cos(pitch)), times(ahead(foot.facing), level));
}

/** As high as a leg lets the hips be: metres above the floor. */
export function highest(hip: Vector, foot: Foot, long: number, stature: number): number {
  const ankle = ankleOf(foot, long, stature);
  const reach = (m.thigh + m.shank) * stature * straightest;
  const [x, y] = [ankle.x - hip.x, ankle.y - hip.y];
  return ankle.z + Math.sqrt(Math.max(reach * reach - x * x - y * y, 0.0004));
}

/** Metres above the floor below which a foot is about to carry weight. Working value. */
const landed = 0.04;

/** Metres over which a foot counts as beside the body, between behind and ahead of it. Working value. */
const beside = 0.3;

/**
 * A foot that the body has left behind rolls onto its ball, as feet do that are about to leave the floor: the heel
 * rises so that the hips need not sink. The ball stays where it is.
 * @param long How long a foot is, in metres.
 * @param other The other foot, which carries the more the nearer the body is to it.
 */
export function rolled(foot: Foot, other: Foot, hip: Vector, long: number, stature: number): Foot {
  const far = (f: Foot): number => Math.sqrt((f.x - hip.x) ** 2 + (f.y - hip.y) ** 2);
  const [here, there] = [far(foot), far(other)];
  const [near, landing] = [there / Math.max(here + there, 1e-6), share(other.up / landed)];
  const before = (foot.x - hip.x) * ahead(foot.facing).x + (foot.y - hip.y) * ahead(foot.facing).y;
  // While the other foot is in the air this one bears all; yet its heel rises the further the body has gone on.
  const load = near + (1 - near) * landing * landing * (1 - share(-before / beside));
  // One that is tipped already is as the dance has it.
  const free = share((1 - load) / 0.6) * share(0.5 - before / beside) * share(1 - Math.abs(foot.toe) / 10);
  const most = steepest * free;
  const enough = unbent * standing(stature);
  if (most < 0.5 || highest(hip, foot, long, stature) >= enough) return foot;
  let [low, high] = [0, most];
  if (highest(hip, tipped(foot, high, long), long, stature) > enough) {
    for (let i = 0; i < 9; i++) {
      const middle = (low + high) / 2;
      if (highest(hip, tipped(foot, middle, long), long, stature) >= enough) high = middle;
      else low = middle;
    }
  }

  return tipped(foot, high, long);
}

function tipped(foot: Foot, degrees: number, long: number): Foot {
  const far = ball * long, a = (degrees * Math.PI) / 180;
  const way = ahead(foot.facing), back = far * (1 - Math.cos(a));
  return { ...foot, x: foot.x + way.x * back, y: foot.y + way.y * back, up: foot.up + far * Math.sin(a), toe: foot.toe - degrees };
}

const share = (value: number): number => Math.min(Math.max(value, 0), 1);

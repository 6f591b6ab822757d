import { sides, type Body, type Foot, type Side } from "./motion.ts";
import { joint } from "./limbs.ts";
import { heel, measures as m, straightest } from "./measures.ts";
import { ankleOf, highest, rolled, standing } from "./rolling.ts";
import { ahead, aside, at, between, minus, mixed, plus, times, unit, type Vector } from "./vectors.ts";

export interface Leg { hip: Vector; knee: Vector; ankle: Vector; sole: Vector; facing: number; toe: number; weight: number }
export interface Arm { shoulder: Vector; elbow: Vector; hand: Vector }

/** Where every joint of a figure is at a moment. Made from feet, body middle and hands alone. */
export interface Skeleton {
  pelvis: Vector;
  chest: Vector;
  neck: Vector;
  head: Vector;
  facing: number;
  stature: number;
  /** How long a foot is, in metres. */
  foot: number;
  legs: Record<Side, Leg>;
  arms: Record<Side, Arm>;
}

/** How far a shoulder goes towards a hand that is further away than the arm is long, as a share of stature. Working value. */
const shrug = 0.035;

/** How near a hand comes to its own shoulder with the elbow bent as far as elbows go, and how far a shoulder yields to it, as shares of stature. Working values. */
const nearest = 0.101, yielding = 0.085;

const hipOf = (body: Body, side: Side, up: number): Vector =>
  plus(at(body.x, body.y, up), times(aside(body.facing), side === "left" ? m.halfHips * body.stature : -m.halfHips * body.stature));

/** As high as both legs let the hips be, in metres. */
export const highestHips = (body: Body): number =>
  Math.min(standing(body.stature), ...sides.map((side) => highest(hipOf(body, side, 0), footOf(body, side), footLength(body), body.stature)));

const footOf = (body: Body, side: Side): Foot => rolled(body.feet[side], body.feet[side === "left" ? "right" : "left"], hipOf(body, side, 0), footLength(body), body.stature);

const footLength = (body: Body): number => body.measures.foot * body.stature;

/** @param level How high the hips are meant to be, in metres; they are never higher than the legs let them be. */
export function skeletonOf(body: Body, level = Infinity): Skeleton {
  const k = body.stature;
  const [front, left] = [ahead(body.facing), aside(body.facing)];
  const feet = { left: footOf(body, "left"), right: footOf(body, "right") };
  const up = Math.min(level, highestHips(body));
  const sunk = up - standing(k);
  const leg = (side: Side): Leg => {
    const foot = feet[side], ankle = ankleOf(foot, footLength(body), k), root = hipOf(body, side, up);
    const bend = plus(plus(front, ahead(foot.facing)), times(left, side === "left" ? 0.12 : -0.12));
    return {
      hip: root, ankle, knee: joint(root, ankle, m.thigh * k, m.shank * k, bend),
      sole: at(foot.x, foot.y, foot.up), facing: foot.facing, toe: foot.toe, weight: foot.weight,
    };
  };
  // The trunk stays upright over the hips; it sinks with them.
  const chest = at(body.x, body.y, body.measures.shoulderHeight * k + heel + sunk);
  const arm = (side: Side): Arm => armOf(chest, body, side, front, left);
  return {
    pelvis: at(body.x, body.y, up), chest, neck: plus(chest, at(0, 0, m.neck * k)), head: at(body.x, body.y, m.head * k + heel + sunk),
    facing: body.facing, stature: k, foot: footLength(body),
    legs: { left: leg("left"), right: leg("right") }, arms: { left: arm("left"), right: arm("right") },
  };
}

function armOf(chest: Vector, body: Body, side: Side, front: Vector, left: Vector): Arm {
  const { stature: k, measures } = body;
  const grip = body.hands[side];
  const out = side === "left" ? 1 : -1;
  const hand = at(grip.x, grip.y, grip.up);
  let shoulder = plus(chest, times(left, out * measures.halfShoulders * k));
  const reach = (measures.upperArm + measures.foreArm) * k * straightest;
  const far = between(shoulder, hand);
  const missing = far - reach, folded = nearest * k - far;
  if (missing > 0) shoulder = plus(shoulder, times(unit(minus(hand, shoulder)), Math.min(missing, shrug * k)));
  else if (folded > 0) shoulder = plus(shoulder, times(unit(minus(shoulder, hand)), Math.min(folded, yielding * k)));
  // An elbow hangs down, out and a little back; of a raised arm it points forward and out.
  const raised = Math.min(Math.max((hand.z - shoulder.z) / (0.25 * k) + 0.4, 0), 1);
  const hanging = plus(plus(at(0, 0, -1), times(left, 0.55 * out)), times(front, -0.4));
  const lifted = plus(plus(at(0, 0, -0.35), times(left, 0.9 * out)), times(front, 0.5));
  return { shoulder, hand, elbow: joint(shoulder, hand, measures.upperArm * k, measures.foreArm * k, mixed(hanging, lifted, raised)) };
}

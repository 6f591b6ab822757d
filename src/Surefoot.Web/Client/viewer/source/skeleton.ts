import type { Body, Foot, Grip, Side } from "./motion.ts";
import { joint } from "./limbs.ts";
import { ankleBack, heel, measures as m, straightest } from "./measures.ts";
import { ahead, aside, at, between, long, minus, mixed, plus, times, unit, type Vector } from "./vectors.ts";

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
  legs: Record<Side, Leg>;
  arms: Record<Side, Arm>;
}

/** Metres over which one leg's limit gives way to the other's as the body sinks, so that it never jerks. Working value. */
const soft = 0.03;

/** How far a shoulder goes towards a hand that is further away than the arm is long, as a share of stature. Working value. */
const shrug = 0.035;

export function skeletonOf(moment: Body): Skeleton {
  const k = moment.stature;
  const [front, left] = [ahead(moment.facing), aside(moment.facing)];
  const ankles = { left: ankleOf(moment.feet.left, k), right: ankleOf(moment.feet.right, k) };
  const standing = (m.thigh + m.shank) * k * straightest + m.ankle * k + heel;
  const hip = (side: Side, up: number): Vector => plus(at(moment.x, moment.y, up), times(left, side === "left" ? m.halfHips * k : -m.halfHips * k));
  // As high as both legs let the hips be.
  const limit = (side: Side): number => {
    const way = minus(ankles[side], hip(side, 0));
    const reach = (m.thigh + m.shank) * k * straightest;
    return ankles[side].z + Math.sqrt(Math.max(reach * reach - way.x * way.x - way.y * way.y, 0.0004));
  };
  const up = softer(softer(limit("left"), limit("right")), standing);
  const pelvis = at(moment.x, moment.y, up);
  const leg = (side: Side): Leg => {
    const foot = moment.feet[side];
    const root = hip(side, up);
    const bend = plus(plus(front, ahead(foot.facing)), times(left, side === "left" ? 0.12 : -0.12));
    return {
      hip: root, ankle: ankles[side], knee: joint(root, ankles[side], m.thigh * k, m.shank * k, bend),
      sole: at(foot.x, foot.y, foot.up), facing: foot.facing, toe: foot.toe, weight: foot.weight,
    };
  };
  // The trunk stays upright over the hips; it sinks with them.
  const chest = at(moment.x, moment.y, m.shoulders * k + heel + (up - standing));
  const arm = (side: Side): Arm => armOf(chest, moment.hands[side], side, front, left, k);
  return {
    pelvis, chest, neck: plus(chest, at(0, 0, m.neck * k)), head: at(moment.x, moment.y, m.head * k + heel + (up - standing)),
    facing: moment.facing, stature: k,
    legs: { left: leg("left"), right: leg("right") }, arms: { left: arm("left"), right: arm("right") },
  };
}

/** Over the back of the sole, as the foot is turned and tipped. */
function ankleOf(foot: Foot, stature: number): Vector {
  const pitch = (foot.toe * Math.PI) / 180;
  const back = -ankleBack * m.foot * stature, up = m.ankle * stature + heel;
  const way = ahead(foot.facing);
  const level = back * Math.cos(pitch) - up * Math.sin(pitch);
  return at(foot.x + way.x * level, foot.y + way.y * level, foot.up + back * Math.sin(pitch) + up * Math.cos(pitch));
}

function armOf(chest: Vector, grip: Grip, side: Side, front: Vector, left: Vector, k: number): Arm {
  const out = side === "left" ? 1 : -1;
  const hand = at(grip.x, grip.y, grip.up);
  let shoulder = plus(chest, times(left, out * m.halfShoulders * k));
  const reach = (m.upperArm + m.foreArm) * k * straightest;
  const missing = between(shoulder, hand) - reach;
  if (missing > 0) shoulder = plus(shoulder, times(unit(minus(hand, shoulder)), Math.min(missing, shrug * k)));
  // An elbow hangs down, out and a little back; of a raised arm it points forward and out.
  const raised = Math.min(Math.max((hand.z - shoulder.z) / (0.25 * k) + 0.4, 0), 1);
  const hanging = plus(plus(at(0, 0, -1), times(left, 0.55 * out)), times(front, -0.4));
  const lifted = plus(plus(at(0, 0, -0.35), times(left, 0.9 * out)), times(front, 0.5));
  return { shoulder, hand, elbow: joint(shoulder, hand, m.upperArm * k, m.foreArm * k, mixed(hanging, lifted, raised)) };
}

/** The smaller of two lengths, rounded where they meet; never more than either. */
function softer(a: number, b: number): number {
  const h = Math.max(soft - Math.abs(a - b), 0) / soft;
  return Math.min(a, b) - (h * h * soft) / 4;
}

/** By how much an arm is too short for its hand, in metres. */
export function shortOf(arm: Arm, stature: number): number {
  return Math.max(0, long(minus(arm.hand, arm.shoulder)) - (m.upperArm + m.foreArm) * stature);
}

import { type Body, type Foot, type Side } from "./motion.ts";
import { joint } from "./limbs.ts";
import { heel, measures as m, straightest } from "./measures.ts";
import { ankleOf, highest, rolled, standing } from "./rolling.ts";
import { ahead, aside, at, between, dot, long, minus, mixed, plus, times, unit, type Vector } from "./vectors.ts";

export interface Leg { hip: Vector; knee: Vector; ankle: Vector; sole: Vector; facing: number; toe: number; weight: number }
export interface Arm { shoulder: Vector; elbow: Vector; hand: Vector }

/** Where every joint of a figure is at a moment. Made from feet, body middle and hands alone. */
export interface Skeleton {
  pelvis: Vector;
  chest: Vector;
  neck: Vector;
  head: Vector;
  facing: number;
  /** How far the shoulders are turned to the left of the facing, in degrees. */
  twist: number;
  stature: number;
  /** How long a foot is, in metres. */
  foot: number;
  legs: Record<Side, Leg>;
  arms: Record<Side, Arm>;
}

/** How far a shoulder goes towards a hand that is further away than the arm is long, as a share of stature. Working value. */
const shrug = 0.035;

/** How near a hand comes to its own shoulder with the elbow bent as far as elbows go, and how far a shoulder yields to it, as shares of stature. Working values. */
const nearest = 0.101, yielding = 0.1;

const hipOf = (body: Body, side: Side, up: number): Vector =>
  plus(at(body.x, body.y, up), times(aside(body.facing), side === "left" ? m.halfHips * body.stature : -m.halfHips * body.stature));

/** As high as both legs let the hips be, in metres. */
export const highestHips = (body: Body): number => hipsOver(body, feetOf(body));

const hipsOver = (body: Body, feet: Record<Side, Foot>): number => {
  const over = (side: Side): number => highest(hipOf(body, side, 0), feet[side], footLength(body), body.stature);
  return Math.min(standing(body.stature), over("left"), over("right"));
};

/** Degrees from the body's facing to a foot's. A foot left behind in a turn may look half a circle away; only beyond that is it the other way round. */
const across = (degrees: number): number => (Math.abs(degrees) > 270 ? degrees - 360 * Math.round(degrees / 360) : degrees);

const footOf = (body: Body, side: Side): Foot => rolled(body.feet[side], body.feet[side === "left" ? "right" : "left"], hipOf(body, side, 0), footLength(body), body.stature);

const feetOf = (body: Body): Record<Side, Foot> => ({ left: footOf(body, "left"), right: footOf(body, "right") });

const footLength = (body: Body): number => body.measures.foot * body.stature;

/** How somebody carries the body: what the whole repeat says of a moment. */
export interface Carriage {
  /** How high the hips are meant to be, in metres; they are never higher than the legs let them be. */
  level: number;
  /** How far the shoulders are turned to the left of the facing, in degrees. */
  twist: number;
  /** Which way a shoulder goes out of the way of its hand, seen by the dancer; straight away from it where nothing is given. */
  yields: Partial<Record<Side, Vector>>;
  /** Which way the elbows bend, likewise; as they hang best where nothing is given. */
  bends: Partial<Record<Side, Vector>>;
}

export const plainly: Carriage = { level: Infinity, twist: 0, yields: {}, bends: {} };

export function skeletonOf(body: Body, { level, twist, yields, bends }: Carriage = plainly): Skeleton {
  const k = body.stature;
  const left = aside(body.facing);
  const feet = feetOf(body);
  const up = Math.min(level, hipsOver(body, feet));
  const leg = (side: Side): Leg => {
    const foot = feet[side], ankle = ankleOf(foot, footLength(body), k), root = hipOf(body, side, up);
    const bend = plus(ahead(body.facing + across(foot.facing - body.facing) / 2), times(left, side === "left" ? 0.06 : -0.06));
    return {
      hip: root, ankle, knee: joint(root, ankle, m.thigh * k, m.shank * k, bend),
      sole: at(foot.x, foot.y, foot.up), facing: foot.facing, toe: foot.toe, weight: foot.weight,
    };
  };
  // The trunk stays upright over the hips; it sinks with them.
  const chest = chestOver(body, up);
  const arm = (side: Side): Arm => armOf(chest, body, side, twist, yields[side], bends[side]);
  return {
    pelvis: at(body.x, body.y, up), chest, neck: plus(chest, at(0, 0, m.neck * k)), head: at(body.x, body.y, m.head * k + heel + up - standing(k)),
    facing: body.facing, twist, stature: k, foot: footLength(body),
    legs: { left: leg("left"), right: leg("right") }, arms: { left: arm("left"), right: arm("right") },
  };
}

const chestOver = (body: Body, hips: number): Vector => at(body.x, body.y, body.measures.shoulderHeight * body.stature + heel + hips - standing(body.stature));

/**
 * Between the shoulders, and the arms with the elbows where they hang by themselves.
 * @param hips How high the hips are, in metres.
 */
export function upperBody(body: Body, hips: number, yields: Partial<Record<Side, Vector>>, twist = 0): { chest: Vector; arms: Record<Side, Arm> } {
  const chest = chestOver(body, hips);
  const arm = (side: Side): Arm => armOf(chest, body, side, twist, yields[side], undefined);
  return { chest, arms: { left: arm("left"), right: arm("right") } };
}

const shoulderOf = (chest: Vector, body: Body, side: Side, twist: number): Vector =>
  plus(chest, times(aside(body.facing + twist), (side === "left" ? 1 : -1) * body.measures.halfShoulders * body.stature));

const handOf = ({ hands }: Body, side: Side): Vector => at(hands[side].x, hands[side].y, hands[side].up);

function armOf(chest: Vector, body: Body, side: Side, twist: number, yields: Vector | undefined, bend: Vector | undefined): Arm {
  const { stature: k, measures } = body;
  const [front, left] = [ahead(body.facing), aside(body.facing)];
  const hand = handOf(body, side);
  const inRoom = (v: Vector): Vector => plus(plus(times(front, v.x), times(left, v.y)), at(0, 0, v.z));
  let shoulder = shoulderOf(chest, body, side, twist);
  const reach = (measures.upperArm + measures.foreArm) * k * straightest;
  const far = between(shoulder, hand);
  const missing = far - reach, folded = nearest * k - far;
  if (missing > 0) shoulder = plus(shoulder, times(unit(minus(hand, shoulder)), Math.min(missing, shrug * k)));
  else if (folded > 0) shoulder = plus(shoulder, yielded(minus(hand, shoulder), yields && inRoom(yields), nearest * k, yielding * k));
  const towards = bend ? inRoom(bend) : wishOf(shoulder, hand, side, k, front, left);
  return { shoulder, hand, elbow: joint(shoulder, hand, measures.upperArm * k, measures.foreArm * k, towards) };
}

/** A hand this near its shoulder, as a share of how near it may come, would turn it about on its way past; nearer than the second it is led past by one way alone. Working values. */
const past = 0.7, within = 0.3;

// How far a shoulder goes until its hand is as far from it as it has to be, or as far as shoulders go: away from the hand, or past it.
function yielded(hand: Vector, way: Vector | undefined, least: number, most: number): Vector {
  const away = times(unit(hand), -1), led = Math.min(Math.max((past - long(hand) / least) / (past - within), 0), 1);
  const along = way ? unit(mixed(away, way, led)) : away, ahead = dot(hand, along);
  const far = ahead + Math.sqrt(Math.max(0, ahead * ahead + least * least - dot(hand, hand)));
  return times(along, Math.min(Math.max(far, 0), most));
}

/** The hand seen from its shoulder by the dancer, where it goes past so near that the shoulder has to be led. */
export function foldedArm(body: Body, side: Side, twist: number): Vector | undefined {
  const [front, left] = [ahead(body.facing), aside(body.facing)];
  const near = past * nearest * body.stature;
  const level = minus(handOf(body, side), shoulderOf(at(body.x, body.y, 0), body, side, twist));
  // Seldom so near even from above; only then is it worth asking how high the shoulder is.
  if (level.x * level.x + level.y * level.y >= near * near) return undefined;
  const way = minus(level, at(0, 0, chestOver(body, highestHips(body)).z));
  return long(way) < near ? at(dot(way, front), dot(way, left), way.z) : undefined;
}

/** Where an elbow would be by itself: it hangs down, out and a little back; of a raised arm it points forward and out. */
export function wishOf(shoulder: Vector, hand: Vector, side: Side, k: number, front: Vector, left: Vector): Vector {
  const out = side === "left" ? 1 : -1;
  const raised = Math.min(Math.max((hand.z - shoulder.z) / (0.25 * k) + 0.4, 0), 1);
  const hanging = plus(plus(at(0, 0, -1), times(left, 0.55 * out)), times(front, -0.4));
  const lifted = plus(plus(at(0, 0, 0.3), times(left, 0.4 * out)), times(front, 0.6));
  return mixed(hanging, lifted, raised);
}

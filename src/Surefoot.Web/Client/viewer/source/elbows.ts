import type { Body, Motion, Side } from "./motion.ts";
import { hinge } from "./limbs.ts";
import { measures as m } from "./measures.ts";
import type { Shoulders } from "./shoulders.ts";
import { skeletonOf, wishOf, type Skeleton } from "./skeleton.ts";
import { ahead, aside, at, cross, dot, long, mixed, minus, plus, times, unit, type Vector } from "./vectors.ts";

/** Moments in a count at which elbows are looked at, ways round the arm that are tried, and moments before and after one that are evened out. Working values. */
const fine = 16, ways = 24, even = 3;

/** How many ways further round an elbow may go from one moment to the next: a quarter of a circle in a sixteenth of a count. */
const furthest = 6;

/** What going round costs against hanging badly: so much that an elbow takes some third of a count to change sides. Found by looking. */
const haste = 3;

/** An elbow inside the body, seen from its middle: half as deep and half as wide as a trunk, as shares of stature, and what it costs. Working values. */
const deep = 0.075, wide = 0.1, through = 0.5;

/** Counts on either side of a repeat that are looked at as well, so that its end leads into its start. */
const beyond = 4;

/** @property pivot The middle of the circle on which the elbow can be, seen from between the shoulders. */
interface Moment { along: Vector; round: Vector; wished: number; wish: number; pivot: Vector; radius: number; inside: (elbow: Vector) => boolean }

/**
 * Which way everybody's elbows bend through a repeat. Bent towards one fixed side they would flip over wherever a hand
 * passes that side; so each takes the way round its arm that hangs best and moves least, found over the whole repeat.
 */
export class Elbows {
  private readonly bends: Record<Side, Vector[]>[];

  constructor(private readonly motion: Motion, shoulders: Shoulders) {
    const n = Math.max(1, Math.round(motion.counts * fine));
    const bodies = Array.from({ length: n }, (_, i) => motion.at(i / fine));
    this.bends = motion.roles.map((_, d) => {
      const own = bodies.map((all) => all[d]!);
      const arms = own.map((body, i) => skeletonOf(body, Infinity, shoulders.at(d, i / fine)));
      return { left: around(own, arms, "left"), right: around(own, arms, "right") };
    });
  }

  /** The way both elbows of a dancer bend, seen by that dancer: x ahead, y to the left, z up. */
  at(dancer: number, count: number): Record<Side, Vector> {
    const { counts } = this.motion;
    const place = counts > 0 ? (((count % counts) + counts) % counts) * fine : 0;
    const first = Math.floor(place), part = place - first;
    const of = (side: Side): Vector => {
      const bends = this.bends[dancer]![side];
      return mixed(bends[first % bends.length]!, bends[(first + 1) % bends.length]!, part);
    };
    return { left: of("left"), right: of("right") };
  }
}

// A repeat with what goes before and after it; its last moments glide over to what leads into its first.
function around(bodies: Body[], skeletons: Skeleton[], side: Side): Vector[] {
  const n = bodies.length, ahead_ = Math.min(n, beyond * fine);
  const single = bodies.map((body, i) => momentOf(body, skeletons[i]!, side));
  const moments = Array.from({ length: n + 2 * ahead_ }, (_, i) => ({ ...single[(i - ahead_ + n) % n]! }));
  carry(moments);
  const bends = bent(moments);
  const glide = Math.min(fine, ahead_);
  return Array.from({ length: n }, (_, i) => {
    const now = bends[i + ahead_]!, late = i - (n - glide) + 1;
    return late <= 0 ? now : unit(mixed(now, bends[i + ahead_ - n]!, late / glide));
  });
}

function momentOf(body: Body, { chest, arms }: Skeleton, side: Side): Moment {
  const arm = arms[side];
  const [front, left] = [ahead(body.facing), aside(body.facing)];
  const own = (v: Vector): Vector => at(dot(v, front), dot(v, left), v.z);
  const k = body.stature;
  const { along, middle, radius } = hinge(arm.shoulder, arm.hand, body.measures.upperArm * k, body.measures.foreArm * k);
  const wish = own(wishOf(arm.shoulder, arm.hand, side, k, front, left));
  const way = own(along), pivot = plus(own(minus(arm.shoulder, chest)), times(way, middle));
  const inside = (elbow: Vector): boolean => elbow.z < m.neck * k && Math.abs(elbow.x) < deep * k && Math.abs(elbow.y) < wide * k;
  return { along: way, round: wish, wished: 0, wish: long(wish), pivot, radius, inside };
}

// A way across the arm that turns no more than the arm itself does from moment to moment; against it the ways round are counted.
function carry(moments: Moment[]): void {
  let round = at(0, 0, -1);
  for (const moment of moments) {
    const across = (v: Vector): Vector => minus(v, times(moment.along, dot(v, moment.along)));
    const carried = unit(across(round));
    round = dot(carried, carried) > 0.5 ? carried : unit(across(Math.abs(moment.along.x) < 0.9 ? at(1, 0, 0) : at(0, 1, 0)));
    const wish = across(moment.round), beside = cross(moment.along, round);
    moment.wished = Math.atan2(dot(wish, beside), dot(wish, round));
    moment.wish = moment.wish > 0 ? long(wish) / moment.wish : 0;
    moment.round = round;
  }
}

const angle = (way: number): number => (2 * Math.PI * way) / ways;

// The cheapest way round from the first moment to the last.
function bent(moments: Moment[]): Vector[] {
  const from = moments.map(() => new Int8Array(ways));
  let costs = new Float64Array(ways);
  // Where the elbow would be for each way, three numbers each: this is asked a million times.
  let before = new Float64Array(3 * ways);
  moments.forEach((moment, i) => {
    const next = new Float64Array(ways);
    const elbows = new Float64Array(3 * ways);
    for (let way = 0; way < ways; way++) {
      const elbow = plus(moment.pivot, times(bendOf(moment, angle(way)), moment.radius));
      elbows.set([elbow.x, elbow.y, elbow.z], 3 * way);
      let best = i === 0 ? 0 : Infinity, of = way;
      for (let by = -furthest; i > 0 && by <= furthest; by++) {
        const last = (way + by + ways) % ways;
        const x = elbow.x - before[3 * last]!, y = elbow.y - before[3 * last + 1]!, z = elbow.z - before[3 * last + 2]!;
        const cost = costs[last]! + haste * (x * x + y * y + z * z);
        if (cost < best) {
          best = cost;
          of = last;
        }
      }

      next[way] = best + moment.radius * moment.wish ** 2 * (1 - Math.cos(angle(way) - moment.wished)) + (moment.inside(elbow) ? through : 0);
      from[i]![way] = of;
    }
    [costs, before] = [next, elbows];
  });
  let way = costs.indexOf(Math.min(...costs));
  const angles = new Float64Array(moments.length);
  for (let i = moments.length - 1; i >= 0; i--) {
    angles[i] = angle(way);
    way = from[i]![way]!;
  }

  for (let i = 1; i < angles.length; i++) angles[i]! += 2 * Math.PI * Math.round((angles[i - 1]! - angles[i]!) / (2 * Math.PI));
  return moments.map((moment, i) => bendOf(moment, evened(angles, i)));
}

const bendOf = (moment: Moment, a: number): Vector => plus(times(moment.round, Math.cos(a)), times(cross(moment.along, moment.round), Math.sin(a)));

function evened(values: Float64Array, i: number): number {
  let [sum, weights] = [0, 0];
  for (let k = -even; k <= even; k++) {
    const value = values[i + k];
    if (value === undefined) continue;
    const weight = 1 + Math.cos((Math.PI * k) / (even + 1));
    sum += weight * value;
    weights += weight;
  }

  return sum / weights;
}

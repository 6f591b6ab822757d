import { sides, type Body, type Motion, type Side } from "./motion.ts";
import { fine, type Levels } from "./levels.ts";
import { hinge } from "./limbs.ts";
import type { Shoulders } from "./shoulders.ts";
import { upperBody, wishOf } from "./skeleton.ts";
import { evened, placeOf } from "./repeat.ts";
import { inBodies, inFront, solidsOf, type Solid } from "./solids.ts";
import type { Twists } from "./twists.ts";
import { ahead, aside, at, cross, dot, long, mixed, minus, plus, times, unit, type Vector } from "./vectors.ts";

/** Ways round the arm that are tried, and moments before and after one that are evened out. Working values. */
const ways = 24, even = 3;

/** How many ways further round an elbow may go from one moment to the next: a quarter of a circle in a sixteenth of a count. */
const furthest = 6;

/** What going round costs against hanging badly: so much that an elbow takes some third of a count to change sides. Found by looking. */
const haste = 6;

/** What it costs to have some of an arm in anybody's trunk or head. Working value. */
const pierced = 0.35;

/** What it costs to have an arm in front of somebody round whom it is laid. Found by looking. */
const wrongSide = 0.15;

/** Counts on either side of a repeat that are looked at as well, so that its end leads into its start. */
const beyond = 4;

/** What of a body elbows need. */
type Upper = ReturnType<typeof upperBody>;

/** @property pivot The middle of the circle on which the elbow can be, seen from between the shoulders. */
interface Moment { along: Vector; round: Vector; wished: number; wish: number; pivot: Vector; radius: number; shoulder: Vector; hand: Vector; bodies: Solid[] }

/**
 * Which way everybody's elbows bend through a repeat. Bent towards one fixed side they would flip over wherever a hand
 * passes that side; so each takes the way round its arm that hangs best and moves least, found over the whole repeat.
 */
export class Elbows {
  private readonly bends: Record<Side, Vector[]>[];

  constructor(private readonly motion: Motion, levels: Levels, twists: Twists, shoulders: Shoulders) {
    const n = Math.max(1, Math.round(motion.counts * fine));
    const moments = motion.roles.map(() => ({ left: [] as Moment[], right: [] as Moment[] }));
    for (let i = 0; i < n; i++) {
      const bodies = motion.at(i / fine), uppers = bodies.map((body, d) => upperBody(body, levels.limits[d]![i]!, shoulders.at(d, i / fine), twists.at(d, i / fine)));
      bodies.forEach((body, d) => {
        const solids = bodies.flatMap((other, o) => solidsOf(body, uppers[d]!.chest, other, uppers[o]!.chest, o === d));
        for (const side of sides) moments[d]![side].push(momentOf(body, uppers[d]!, side, solids));
      });
    }

    this.bends = moments.map(({ left, right }) => ({ left: around(left), right: around(right) }));
  }

  /** The way both elbows of a dancer bend, seen by that dancer: x ahead, y to the left, z up. */
  at(dancer: number, count: number): Record<Side, Vector> {
    const { counts } = this.motion;
    const place = placeOf(count, counts, fine);
    const first = Math.floor(place), part = place - first;
    const of = (side: Side): Vector => {
      const bends = this.bends[dancer]![side];
      return mixed(bends[first % bends.length]!, bends[(first + 1) % bends.length]!, part);
    };
    return { left: of("left"), right: of("right") };
  }
}

// A repeat with what goes before and after it; its last moments glide over to what leads into its first.
function around(single: Moment[]): Vector[] {
  const n = single.length, ahead_ = Math.min(n, beyond * fine);
  const moments = Array.from({ length: n + 2 * ahead_ }, (_, i) => ({ ...single[(i - ahead_ + n) % n]! }));
  carry(moments);
  const bends = bent(moments);
  const glide = Math.min(fine, ahead_);
  return Array.from({ length: n }, (_, i) => {
    const now = bends[i + ahead_]!, late = i - (n - glide) + 1;
    return late <= 0 ? now : unit(mixed(now, bends[i + ahead_ - n]!, late / glide));
  });
}

function momentOf(body: Body, { chest, arms }: Upper, side: Side, bodies: Solid[]): Moment {
  const arm = arms[side];
  const [front, left] = [ahead(body.facing), aside(body.facing)];
  const own = (v: Vector): Vector => at(dot(v, front), dot(v, left), v.z);
  const k = body.stature;
  const { along, middle, radius } = hinge(arm.shoulder, arm.hand, body.measures.upperArm * k, body.measures.foreArm * k);
  const wish = own(wishOf(arm.shoulder, arm.hand, side, k, front, left));
  const way = own(along), pivot = plus(own(minus(arm.shoulder, chest)), times(way, middle));
  const [shoulder, hand] = [own(minus(arm.shoulder, chest)), own(minus(arm.hand, chest))];
  return { along: way, round: wish, wished: 0, wish: long(wish), pivot, radius, shoulder, hand, bodies };
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
const cosines = Float64Array.from({ length: ways }, (_, way) => Math.cos(angle(way)));
const sines = Float64Array.from({ length: ways }, (_, way) => Math.sin(angle(way)));

/** Ways round and those before the first and after the last that are near them, so that nobody has to count round. */
const padded = ways + 2 * furthest;

/** Where the elbow is at each way round, seen from between the shoulders, and what it has cost to come there. */
interface Places { x: Float64Array; y: Float64Array; z: Float64Array; cost: Float64Array }

const places = (): Places => ({ x: new Float64Array(padded), y: new Float64Array(padded), z: new Float64Array(padded), cost: new Float64Array(padded) });

function place({ round, along, pivot, radius }: Moment, { x, y, z }: Places): void {
  const beside = cross(along, round);
  for (let way = 0; way < ways; way++) {
    const c = radius * cosines[way]!, s = radius * sines[way]!, i = way + furthest;
    x[i] = pivot.x + c * round.x + s * beside.x;
    y[i] = pivot.y + c * round.y + s * beside.y;
    z[i] = pivot.z + c * round.z + s * beside.z;
  }
}

// What it costs to hang badly at a moment, each way round.
function hang(moment: Moment, { x, y, z, cost }: Places): void {
  const { wish, wished, radius } = moment;
  const much = radius * wish ** 2, cos = Math.cos(wished), sin = Math.sin(wished);
  for (let way = 0; way < ways; way++) {
    const i = way + furthest;
    cost[i] = much * (1 - cosines[way]! * cos - sines[way]! * sin)
      + pierced * inBodies(moment.bodies, moment.shoulder, moment.hand, x[i]!, y[i]!, z[i]!) + wrongSide * inFront(moment.bodies, moment.shoulder, moment.hand, x[i]!, y[i]!, z[i]!);
  }
}

function wrap(values: Float64Array): void {
  values.copyWithin(0, ways, ways + furthest);
  values.copyWithin(ways + furthest, furthest, 2 * furthest);
}

// The cheapest ways to come from one moment to the next, added to what the next one costs by itself.
function step(before: Places, here: Places, from: Int8Array): void {
  const { x: xs, y: ys, z: zs, cost: costs } = before, { x, y, z, cost } = here;
  for (let way = 0; way < ways; way++) {
    const i = way + furthest, hx = x[i]!, hy = y[i]!, hz = z[i]!;
    let best = Infinity, chosen = i;
    for (let last = way; last <= way + 2 * furthest; last++) {
      const dx = hx - xs[last]!, dy = hy - ys[last]!, dz = hz - zs[last]!;
      const all = costs[last]! + haste * (dx * dx + dy * dy + dz * dz);
      if (all < best) {
        best = all;
        chosen = last;
      }
    }

    cost[i] = cost[i]! + best;
    from[way] = (chosen - furthest + ways) % ways;
  }
}

// The cheapest way round from the first moment to the last. In plain numbers: where elbows could be is asked a million times for every dance.
function bent(moments: Moment[]): Vector[] {
  const from = moments.map(() => new Int8Array(ways));
  let [here, before] = [places(), places()];
  moments.forEach((moment, i) => {
    place(moment, here);
    hang(moment, here);
    if (i > 0) step(before, here, from[i]!);
    Object.values(here).forEach(wrap);
    [here, before] = [before, here];
  });
  const costs = before.cost.subarray(furthest, furthest + ways);
  let way = costs.indexOf(Math.min(...costs));
  const angles = new Float64Array(moments.length);
  for (let i = moments.length - 1; i >= 0; i--) {
    angles[i] = angle(way);
    way = from[i]![way]!;
  }

  for (let i = 1; i < angles.length; i++) angles[i]! += 2 * Math.PI * Math.round((angles[i - 1]! - angles[i]!) / (2 * Math.PI));
  return moments.map((moment, i) => bendOf(moment, evened(angles, i, even)));
}

const bendOf = (moment: Moment, a: number): Vector => plus(times(moment.round, Math.cos(a)), times(cross(moment.along, moment.round), Math.sin(a)));

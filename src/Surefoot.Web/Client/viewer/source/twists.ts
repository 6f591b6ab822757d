import { sides, type Body, type Motion, type Side } from "./motion.ts";
import { fine as levelled, type Levels } from "./levels.ts";
import { hinge } from "./limbs.ts";
import { evened, placeOf } from "./repeat.ts";
import { upperBody } from "./skeleton.ts";
import { inBodies, solidsOf, type Solid } from "./solids.ts";
import { ahead, aside, at, cross, dot, minus, unit, type Vector } from "./vectors.ts";

/** Moments in a count at which shoulders are looked at, and how many before and after one are evened out. Working values. */
const fine = 4, even = 3;

/** How far shoulders turn against hips, in degrees to either side, and in which steps that is tried. Common practice, no source: easily some thirty degrees. */
const most = 32, by = 8, tried = Array.from({ length: (2 * most) / by + 1 }, (_, i) => i * by - most);

/** What it costs to be turned all the way, to turn a step more from one moment to the next, to have an arm in a body, and to reach a metre too short. Found by looking. */
const turned = 0.1, haste = 0.03, pierced = 0.3, missing = 4;

/** Ways round an arm at which its elbow is looked for. Working value. */
const ways = 8;

/** Counts on either side of a repeat that are looked at as well, so that its end leads into its start. */
const beyond = 4;

/**
 * How far everybody's shoulders are turned against the hips through a repeat. Whoever lays an arm round somebody, or
 * reaches across, turns the shoulders with it; else the arm would go through a body.
 */
export class Twists {
  private readonly degrees: Float64Array[];

  constructor(private readonly motion: Motion, levels: Levels) {
    const n = Math.max(1, Math.round(motion.counts * fine));
    const costs = motion.roles.map(() => Array.from({ length: n }, () => new Float64Array(tried.length)));
    for (let i = 0; i < n; i++) {
      const bodies = motion.at(i / fine), chests = bodies.map((body, d) => upperBody(body, levels.limits[d]![Math.round((i * levelled) / fine)]!, {}).chest);
      bodies.forEach((body, d) => {
        const solids = bodies.flatMap((other, o) => solidsOf(body, chests[d]!, other, chests[o]!, o === d));
        tried.forEach((twist, t) => { costs[d]![i]![t] = costOf(body, chests[d]!, twist, solids); });
      });
    }

    this.degrees = costs.map(around);
  }

  /** Degrees to the left of a dancer's facing. */
  at(dancer: number, count: number): number {
    const { counts } = this.motion, degrees = this.degrees[dancer]!, n = degrees.length;
    const place = placeOf(count, counts, fine);
    const first = Math.floor(place), t = place - first;
    const [a, b, c, d] = [-1, 0, 1, 2].map((k) => degrees[(first + k + n) % n]!) as [number, number, number, number];
    return b + (t / 2) * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
  }
}

function costOf(body: Body, chest: Vector, twist: number, solids: Solid[]): number {
  const k = body.stature, upper = body.measures.upperArm * k, fore = body.measures.foreArm * k;
  const [front, left] = [ahead(body.facing), aside(body.facing)];
  const across = at(-Math.sin((twist * Math.PI) / 180), Math.cos((twist * Math.PI) / 180), 0);
  let cost = turned * (twist / most) ** 2;
  for (const side of sides) {
    const out = (side === "left" ? 1 : -1) * body.measures.halfShoulders * k;
    const shoulder = at(across.x * out, across.y * out, 0), hand = handOf(body, side, chest, front, left);
    const { along, middle, radius } = hinge(shoulder, hand, upper, fore);
    const far = minus(hand, shoulder), short = Math.sqrt(dot(far, far)) - upper - fore;
    if (short > 0) cost += missing * short;
    const round = unit(cross(along, Math.abs(along.x) < 0.9 ? at(1, 0, 0) : at(0, 1, 0))), beside = cross(along, round);
    let least = Infinity;
    for (let way = 0; way < ways && least > 0; way++) {
      const c = radius * Math.cos((2 * Math.PI * way) / ways), s = radius * Math.sin((2 * Math.PI * way) / ways);
      least = Math.min(least, inBodies(solids, shoulder, hand,
        shoulder.x + along.x * middle + c * round.x + s * beside.x, shoulder.y + along.y * middle + c * round.y + s * beside.y, shoulder.z + along.z * middle + c * round.z + s * beside.z));
    }

    cost += pierced * least;
  }

  return cost;
}

const handOf = (body: Body, side: Side, chest: Vector, front: Vector, left: Vector): Vector => {
  const hand = body.hands[side], way = at(hand.x - chest.x, hand.y - chest.y, 0);
  return at(dot(way, front), dot(way, left), hand.up - chest.z);
};

// The cheapest way through a repeat with what goes before and after it; its last moments glide over to what leads into its first.
function around(single: Float64Array[]): Float64Array {
  const n = single.length, lead = Math.min(n, beyond * fine), all = n + 2 * lead;
  const from = Array.from({ length: all }, () => new Int8Array(tried.length));
  let before = single[(n - lead) % n]!.slice();
  for (let i = 1; i < all; i++) {
    const own = single[(((i - lead) % n) + n) % n]!, here = new Float64Array(tried.length);
    for (let t = 0; t < tried.length; t++) {
      let best = Infinity;
      for (let u = 0; u < tried.length; u++) {
        const cost = before[u]! + haste * (t - u) ** 2;
        if (cost < best) {
          best = cost;
          from[i]![t] = u;
        }
      }

      here[t] = own[t]! + best;
    }

    before = here;
  }

  const way = new Float64Array(all);
  let t = before.indexOf(Math.min(...before));
  for (let i = all - 1; i >= 0; i--) {
    way[i] = tried[t]!;
    t = from[i]![t]!;
  }

  const glide = Math.min(fine, lead);
  return Float64Array.from({ length: n }, (_, i) => {
    const now = evened(way, i + lead, even), late = i - (n - glide) + 1;
    return late <= 0 ? now : now + ((evened(way, i + lead - n, even) - now) * late) / glide;
  });
}

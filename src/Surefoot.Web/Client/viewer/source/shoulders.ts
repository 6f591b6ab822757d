import { sides, type Motion, type Side } from "./motion.ts";
import { placeOf } from "./repeat.ts";
import { foldedArm } from "./skeleton.ts";
import type { Twists } from "./twists.ts";
import { at, dot, long, minus, plus, times, unit, type Vector } from "./vectors.ts";

/** Moments in a count at which hands are looked at. Working value. */
const fine = 32;

/** While a hand goes past its shoulder; the way the shoulder goes out of its way, seen by the dancer. */
interface Stretch { from: number; to: number; way: Vector }

type Folded = ReturnType<typeof foldedArm>;

/**
 * Which way shoulders yield to hands that go past them, nearer than a folded arm lets them: one way for as long as that
 * lasts. Always straight away from the hand a shoulder would leap from one side to the other.
 */
export class Shoulders {
  private readonly stretches: Record<Side, Stretch[]>[];

  constructor(private readonly motion: Motion, twists: Twists) {
    const n = Math.max(1, Math.round(motion.counts * fine));
    const hands = motion.roles.map(() => ({ left: [] as Folded[], right: [] as Folded[] }));
    // Nobody is kept: thousands of bodies that stay in memory cost more than all that is done with them.
    for (let i = 0; i < n; i++) motion.at(i / fine).forEach((body, d) => {
      const twist = twists.at(d, i / fine);
      for (const side of sides) hands[d]![side].push(foldedArm(body, side, twist));
    });
    this.stretches = hands.map(({ left, right }) => ({ left: folded(left, "left"), right: folded(right, "right") }));
  }

  /** Seen by the dancer: x ahead, y to the left, z up. Nothing where a hand is far enough away. */
  at(dancer: number, count: number): Partial<Record<Side, Vector>> {
    const { counts } = this.motion;
    const place = placeOf(count, counts, fine);
    const found: Partial<Record<Side, Vector>> = {};
    for (const side of sides) {
      const stretch = this.stretches[dancer]![side].find((s) => s.from - 1 <= place && place <= s.to + 1);
      if (stretch) found[side] = stretch.way;
    }
    return found;
  }
}

function folded(hands: Folded[], side: Side): Stretch[] {
  const found: Stretch[] = [];
  for (let from = 0; from < hands.length; from++) {
    if (!hands[from]) continue;
    let to = from;
    while (to + 1 < hands.length && hands[to + 1]) to++;
    // Between the ways it comes and goes, and away from both.
    const way = plus(unit(hands[from]!), unit(hands[to]!));
    found.push({ from, to, way: long(way) > 0.05 ? times(unit(way), -1) : outward(unit(hands[from]!), side) });
    from = to;
  }
  return found;
}

function outward(hand: Vector, side: Side): Vector {
  const out = at(0, side === "left" ? 1 : -1, 0), across = minus(out, times(hand, dot(out, hand)));
  return long(across) > 0.1 ? unit(across) : at(0, 0, -1);
}

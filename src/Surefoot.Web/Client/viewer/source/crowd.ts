import type { Foot, Grip, Body } from "./motion.ts";

/** How many there are on a full floor, and how far apart, in metres. Working values. */
export const crowdSize = 24, couplesApart = 2.5, dancersApart = 1.6;

type Place = (x: number, y: number) => { x: number; y: number; turned: number };

/** The middle of a ring of couples, seen from where the first one begins: metres to the left. */
export const ringRadius = (crowdSize * couplesApart) / (2 * Math.PI);

/**
 * Everybody on the floor at one moment. Couples go round a ring: every place of theirs is bent onto it by itself, so
 * that feet that stand still and hands that are joined stay so. Line dancers stand in rows.
 */
export function crowdOf(moments: readonly Body[], floor: "track" | "walls"): Body[] {
  const all: Body[] = [];
  for (let n = 0; n < crowdSize; n++) {
    const to = floor === "track" ? onRing(n) : inRows(n);
    for (const moment of moments) all.push(placed(moment, to));
  }

  return all;
}

function onRing(n: number): Place {
  return (x, y) => {
    const angle = (x + n * couplesApart) / ringRadius;
    // The ring's middle is to the left of the first couple, which stays where it is.
    return { x: (ringRadius - y) * Math.sin(angle), y: ringRadius - (ringRadius - y) * Math.cos(angle), turned: (angle * 180) / Math.PI };
  };
}

function inRows(n: number): Place {
  const across = 6;
  const [row, column] = [Math.floor(n / across), n % across];
  return (x, y) => ({ x: x + (1.5 - row) * dancersApart, y: y + (2.5 - column) * dancersApart, turned: 0 });
}

function placed(moment: Body, to: Place): Body {
  const spot = to(moment.x, moment.y);
  const foot = (f: Foot): Foot => {
    const there = to(f.x, f.y);
    return { ...f, x: there.x, y: there.y, facing: f.facing + there.turned };
  };
  const hand = (h: Grip): Grip => {
    const there = to(h.x, h.y);
    return { ...h, x: there.x, y: there.y };
  };
  return {
    ...moment, x: spot.x, y: spot.y, facing: moment.facing + spot.turned,
    feet: { left: foot(moment.feet.left), right: foot(moment.feet.right) },
    hands: { left: hand(moment.hands.left), right: hand(moment.hands.right) },
  };
}

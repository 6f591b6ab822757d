/** Where she is in the dance while she teaches: a bite, a count in it, and what comes when it ends. Plain values. */
import type { Dance } from "./dance.ts";

export interface Walk {
  /** Which of the dance's bites. */
  bite: number;
  /** A count of the repeat; 0 and below are the counts before the bite begins. */
  count: number;
  /** Again and again, until she goes on. */
  loop: boolean;
  /** The bite that comes when this one ends, where she has asked for it. */
  then: number | undefined;
}

/** Counts before a bite when it is danced at tempo: the end of a bar. */
export const before = (dance: Dance): number => Math.max(2, dance.beats);

export const begun = (dance: Dance, bite: number, loop: boolean): Walk => ({ bite: clamp(dance, bite), count: dance.bites[clamp(dance, bite)]!.from, loop, then: undefined });

/** The same bite from some counts before it. */
export const countedIn = (dance: Dance, walk: Walk): Walk => ({ ...walk, count: 1 - before(dance), then: undefined });

/** One count on; undefined where it ends there. */
export function on(dance: Dance, walk: Walk): Walk | undefined {
  const bite = dance.bites[walk.bite]!;
  if (walk.count < 0) return { ...walk, count: walk.count + 1 };
  if (walk.count === 0) return { ...walk, count: bite.from };
  if (walk.count < bite.to) return { ...walk, count: walk.count + 1 };
  if (walk.then !== undefined) return begun(dance, walk.then, walk.loop);
  return walk.loop ? begun(dance, walk.bite, true) : undefined;
}

/** One count back, within the bite. */
export function back(dance: Dance, walk: Walk): Walk {
  const bite = dance.bites[walk.bite]!;
  return walk.count > bite.from ? { ...walk, count: walk.count - 1 } : { ...walk, count: walk.loop ? bite.to : bite.from };
}

/** The bite that follows another one: the one that begins where it ends, the first of them where several do. */
export function following(dance: Dance, bite: number): number {
  const { to } = dance.bites[bite]!;
  // After a tag the dance begins again.
  const end = to >= dance.repeat ? 0 : to;
  const next = dance.bites.findIndex((b) => b.from === end + 1);
  return next < 0 ? 0 : next;
}

const clamp = (dance: Dance, bite: number): number => Math.min(Math.max(0, Math.trunc(bite) || 0), dance.bites.length - 1);

import type { Motion, Role, Step } from "./motion.ts";

/** What is to be read beside the picture at a count of the repeat. */
export interface Words {
  count: string;
  part: string;
  step: string;
  /** What comes next, as it would be called; empty while the same figure goes on. */
  call: string;
  hold: string;
}

/** Counts ahead of a step at which its call is given. Working value: one to two. */
const ahead = 2;

export function wordsAt(motion: Motion, focus: Role | "both", count: number): Words {
  const roles = focus === "both" ? motion.roles : [focus];
  const steps = roles.flatMap((r) => motion.stepOf(r, count) ?? []);
  const part = motion.partAt(Math.max(count, 1));
  return {
    count: steps.reduce((last, s) => s.at > last.at ? s : last, { at: -1, count: "" }).count,
    part: part ? [part.label, part.name].filter(Boolean).join("  ") + (part.mirrored ? ", on the other foot" : "") : "",
    step: forAll(steps.map((s) => [motion.called(s.role), s.words])),
    call: forAll(roles.map((r): [string, string] => [motion.called(r), callAt(motion, r, count)]).filter(([, call]) => call)),
    hold: motion.holdAt(Math.max(count, 1)),
  };
}

/** The figure that begins within the next two counts, for one role; nothing where the one before goes on. */
export function callAt(motion: Motion, role: Role, count: number): string {
  let before = motion.stepOf(role, count);
  for (const next of motion.after(role, count)) {
    if (next.at > count + ahead + 1e-6) return "";
    // Whoever rocks knows of the recover.
    if ((!before || !sameFigure(before, next)) && !next.words.includes("recover")) return short(next);
    before = next;
  }

  return "";
}

// Said once where all do the same.
function forAll(said: readonly (readonly [called: string, words: string])[]): string {
  const [first] = said;
  return !first ? "" : said.every(([, words]) => words === first[1]) ? first[1] : said.map(([called, words]) => `${called}: ${words}`).join("  ·  ");
}

const sameFigure = (a: Step, b: Step): boolean => a.figure !== undefined && a.figure === b.figure;

/** A call is short: the figure's name, or the step's without its foot. */
function short(step: Step): string {
  return (step.figure ?? step.words.replace(/^(left|right)\s+/u, "")).toLowerCase();
}

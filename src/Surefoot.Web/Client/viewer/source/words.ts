import type { Role, Step } from "./file.ts";
import type { Motion } from "./motion.ts";

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
  const role = focus === "both" ? motion.roles[0]! : focus;
  const step = motion.stepOf(role, count);
  const part = motion.partAt(Math.max(count, 1));
  return {
    count: step?.count ?? "",
    part: part ? [part.label, part.name].filter(Boolean).join("  ") + (part.mirrored ? ", on the other foot" : "") : "",
    step: focus === "both" && motion.roles.length > 1 ? motion.roles.map((r) => ({ r, s: motion.stepOf(r, count) })).filter(({ s }) => s).map(({ s }) => s!.words).filter((w, i, all) => all.indexOf(w) === i).join("  /  ") : step?.words ?? "",
    call: callAt(motion, role, count),
    hold: motion.holdAt(Math.max(count, 1)),
  };
}

/** The figure that begins within the next two counts; nothing where the one before goes on. */
export function callAt(motion: Motion, role: Role, count: number): string {
  const last = motion.stepOf(role, count);
  let before = last;
  for (const next of motion.after(role, count)) {
    if (next.at > count + ahead + 1e-6) return "";
    if (!before || !sameFigure(before, next)) return short(next);
    before = next;
  }

  return "";
}

const sameFigure = (a: Step, b: Step): boolean => a.figure !== undefined && a.figure === b.figure;

/** A call is short: the figure's name, or the step's without its foot. */
function short(step: Step): string {
  return (step.figure ?? step.words).replace(/\s+(left|right|L|R)$/u, "").toLowerCase();
}

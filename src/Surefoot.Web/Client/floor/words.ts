import type { Motion } from "surefoot-viewer/motion.ts";

export interface CountWords {
  /** The count as dancers say it, within its part. */
  count: string;
  part: string;
  roles: { called: string; words: string }[];
  hold: string;
}

/** A moment in words: the count, what each role has just done, and what they hold. */
export function wordsAt(motion: Motion, count: number): CountWords {
  const steps = motion.stepsAt(count);
  const last = Math.max(0, ...steps.map((s) => s.at));
  const part = motion.partAt(count);
  return {
    count: steps.find((s) => s.at === last)?.count ?? "0",
    part: part ? [part.label, part.name].filter((w) => w).join(": ") : "before the first count",
    roles: motion.roles.map((role) => {
      const step = steps.find((s) => s.role === role);
      const figure = step?.figure !== undefined ? ` (${step.figure})` : "";
      return { called: role === "dancer" ? "" : motion.called(role), words: step ? `${step.words}${figure}` : "ready" };
    }),
    hold: motion.heldAt(Math.max(count, 1)),
  };
}

/** Before the first count of what is danced over and over. */
export function readyFor(motion: Motion, count: number): CountWords {
  const { part, hold } = wordsAt(motion, count);
  return { ...wordsAt(motion, 0), part, hold };
}

/** The same as one sentence for those who listen. */
export function spoken(words: CountWords): string {
  const roles = words.roles.map((r) => (words.roles.length > 1 ? `${r.called}: ${r.words}` : r.words));
  return [words.count === "0" ? "Start" : `Count ${words.count}`, words.part, ...roles, words.hold].filter((w) => w).join(". ") + ".";
}

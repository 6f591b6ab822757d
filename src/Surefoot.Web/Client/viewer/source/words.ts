import { meant, type Motion, type Role } from "./motion.ts";

/** What is to be read beside the picture at a count of the repeat. */
export interface Words {
  count: string;
  part: string;
  step: string;
  /** What comes next, as it would be called; empty while the same figure goes on. */
  call: string;
  hold: string;
}

export function wordsAt(motion: Motion, focus: Role | "both", count: number): Words {
  const roles = focus === "both" ? motion.roles : [focus];
  const steps = roles.flatMap((r) => motion.stepOf(r, count) ?? []);
  const part = motion.partAt(Math.max(count, 1));
  return {
    count: steps.reduce((last, s) => s.at > last.at ? s : last, { at: -1, count: "" }).count,
    part: part ? [part.label, part.name].filter(Boolean).join("  ") + (part.mirrored ? ", on the other foot" : "") : "",
    step: forAll(steps.map((s) => [motion.called(s.role), s.words])),
    call: callAt(motion, focus, count),
    hold: motion.heldAt(Math.max(count, 1)),
  };
}

/** What is called and has not begun yet; nothing where the same figure goes on. */
export function callAt(motion: Motion, focus: Role | "both", count: number): string {
  return motion.callsAt(focus, count)
    .map((c) => c.role === undefined || focus !== "both" ? c.words : `${motion.called(c.role)}: ${c.words}`).join("  ·  ");
}

/** What a voice says on a whole count: a call on its first count, nothing while it is still being said, else the number. */
export function saidOn(motion: Motion, focus: Role | "both", count: number, number: string | undefined): string | undefined {
  let busy = false;
  for (const call of motion.file.calls) {
    const says = focus === "both" ? call.says : meant(call, focus) ? call.words : "";
    if (!says) continue;
    if (call.from === count) return says;
    busy ||= call.from < count && count < call.from + call.counts;
  }
  return busy ? undefined : number;
}

// Said once where all do the same.
function forAll(said: readonly (readonly [called: string, words: string])[]): string {
  const [first] = said;
  return !first ? "" : said.every(([, words]) => words === first[1]) ? first[1] : said.map(([called, words]) => `${called}: ${words}`).join("  ·  ");
}

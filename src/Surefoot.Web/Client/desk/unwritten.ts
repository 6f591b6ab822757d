import type { Problem } from "./live.ts";

export interface Writer {
  /** Where her cursor stands. */
  at: number;
  /** Whether her keys go into the text there, with no words chosen. */
  writes: boolean;
  /** Whether the last thing she did was to type there. */
  typed: boolean;
}

/** The problems as they are for a writer: what she is just writing is not wrong yet, and nothing is assumed of it. */
export function whileWriting(problems: Problem[], { at, writes, typed }: Writer): Problem[] {
  return problems.filter((p) => !(p.severity === "hint" && writes && typed && p.from <= at && at <= p.to + 1)).map((p) => {
    const { unfinished } = p;
    if (!unfinished || at < unfinished.from || at > unfinished.to) return p;
    if (unfinished.while === "open" && !writes) return p;
    if (unfinished.while === "typed" && !(writes && typed)) return p;
    // What a word may be meant for holds already; a number that more is to come for does not want another one.
    return { ...p, severity: "unwritten", message: unfinished.says, place: "", reason: "", related: [], fixes: unfinished.while === "typed" ? p.fixes : [] };
  });
}

import type { Problem } from "./live.ts";

/** The problems as they are for a writer whose cursor stands at a place: what she is just writing is not wrong yet. */
export function whileWriting(problems: Problem[], at: number): Problem[] {
  return problems.map((p) => {
    const { unfinished } = p;
    if (!unfinished || at < unfinished.from || at > unfinished.to) return p;
    return { ...p, severity: "unwritten", message: unfinished.says, place: "", reason: "", related: [], fixes: [] };
  });
}

import type { Motion } from "./motion.ts";

/** The whole counts of a repeat, as each part of the page counts its own; the values go through the repeat. */
export function countsOf(motion: Motion): [part: string, counts: [value: string, text: string][]][] {
  const last = Math.max(1, Math.ceil(motion.counts));
  const parts = motion.file.parts;
  const groups: [string, [string, string][]][] = parts.length === 0 ? [["", []]] : parts.map((p) => [[p.label, p.name].filter(Boolean).join(" "), []]);
  for (let count = 1; count <= last; count++) {
    const part = Math.max(0, parts.findLastIndex((p) => p.from <= count));
    groups[part]![1].push([String(count), counted(motion, count, parts[part]?.from ?? 1)]);
  }

  return groups.filter(([, counts]) => counts.length > 0);
}

// A part may begin with 1 or go on from the one before: its first step says which.
function counted(motion: Motion, count: number, from: number): string {
  const first = Number.parseInt(motion.file.steps.find((s) => s.at >= from)?.count ?? "", 10);
  return String(count - from + (Number.isNaN(first) ? from : first));
}

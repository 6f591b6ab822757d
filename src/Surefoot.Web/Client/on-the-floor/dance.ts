/** What the page has of its dance, as the studio wrote it there. Counts run from 1 through one repeat. */
export interface Dance {
  page: number;
  title: string;
  beats: number;
  tempo: number;
  /** What dancers call each count, within its part; behind the repeat those of tags and the like, counted on. */
  counts: string[];
  /** Counts of one repeat. */
  repeat: number;
  bites: Bite[];
  danced: { at: number; words: string }[];
  /** On `counts` counts from count `from` on, before the `step` it names; a step past the last count is count 1 again. */
  calls: Call[];
  /** What is called before its first count. */
  opening: string[];
}

export interface Bite { name: string; from: number; to: number }
export interface Call { from: number; counts: number; step: number; words: string }

/** What is said, or to be said next. */
export interface Said {
  words: string;
  /** The counts on which it is said, as dancers call them. */
  on: string;
  /** True on those counts. */
  now: boolean;
}

/** What is danced on a count; each role's words by themselves where they differ. */
export function dancedOn(dance: Dance, count: number): string[] {
  // Where the roles differ each has its own last step.
  const words = new Map<string, string>();
  for (const step of dance.danced) {
    if (Math.floor(step.at) > count) break;
    const who = /^[^:]+: /u.exec(step.words)?.[0] ?? "";
    if (who === "") words.clear();
    else words.delete("");
    words.set(who, step.words);
  }
  return [...words.values()];
}

/** What is called while its first count is counted in: what the dance begins with, else what a bite does. */
export function beforeBite(dance: Dance, bite: Bite, size: number, count: number): Said | undefined {
  const words = bite.from === 1 ? dance.opening : dancedOn(dance, bite.from);
  return words.length > 0 ? { words: words.join("\n"), on: `${size - 1} ${size}`, now: count >= -1 } : undefined;
}

/** The call that is said on a count, else the next one of the bite. */
export function callAt(dance: Dance, bite: Bite, count: number, around: boolean): Said | undefined {
  const ahead = callsOf(dance, bite, around).filter((c) => c.from + c.counts - 1 >= count);
  const first = ahead[0];
  if (!first) return undefined;
  const together = ahead.filter((c) => c.step === first.step);
  const from = Math.min(...together.map((c) => c.from));
  return { words: together.map((c) => c.words).join("\n"), on: span(dance, from, first.from + first.counts - 1), now: count >= from };
}

/** Where a bite is danced again its end leads to its own start, whatever the dance goes on to. */
function callsOf(dance: Dance, bite: Bite, around: boolean): Call[] {
  const inBite = dance.calls.filter((c) => c.from >= bite.from && c.from <= bite.to);
  if (!around || bite.to - bite.from + 1 >= dance.repeat) return inBite;
  const start = dancedOn(dance, bite.from).join("\n");
  const inside = inBite.filter((c) => c.step <= bite.to);
  if (start === dancedOn(dance, bite.to).join("\n")) return inside;
  const from = Math.max(bite.from, bite.to - 1);
  return [...inside, { from, counts: bite.to - from + 1, step: bite.to + 1, words: start }];
}

function span(dance: Dance, from: number, to: number): string {
  const name = (count: number): string => dance.counts[count - 1] ?? String(count);
  return from === to ? name(from) : `${name(from)} ${name(to)}`;
}

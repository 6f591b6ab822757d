import { acceptCompletion, autocompletion, completionStatus, moveCompletionSelection, selectedCompletionIndex, type Completion, type CompletionContext, type CompletionResult } from "@codemirror/autocomplete";
import type { Command, KeyBinding } from "@codemirror/view";
import { callLine, openingCall } from "./language.ts";
import type { Entry, Group, Lexicon } from "./lexicon.ts";

const groupNames: Record<Group, string> = {
  step: "step", way: "way", hold: "hold", hand: "hands", role: "role", look: "look, weight", again: "again", header: "head", figure: "figure", part: "part", call: "call", level: "level",
};

// Which words may follow a word of the head; other facts are free text.
const afterFact: Record<string, Group[]> = { hold: ["hold"], position: ["hold"], facing: ["look", "role"], feet: ["way", "role"], level: ["level"] };

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Words alone, each with a space on both sides. */
const plain = (text: string) => ` ${text.toLowerCase().replace(/[^\p{L}]+/gu, " ").trim()} `;

const takeFirst: Command = (view) => {
  if (completionStatus(view.state) !== "active") return false;
  if (selectedCompletionIndex(view.state) === null) moveCompletionSelection(true)(view);
  return acceptCompletion(view);
};

/** Tab takes what is offered first, or what was chosen; where nothing is offered it leaves the text. */
export const takingOffers: KeyBinding = { key: "Tab", run: takeFirst };

/** Offers what can be written at a place, with what it means in one line. */
export function completion(lexicon: Lexicon) {
  /** What stands in the text already is likely to be written again; of the rest figures come first, as nobody remembers their spelling, and the shorter before the longer. */
  const likely = (group: Group, label: string, text: string) => (text.includes(plain(label)) ? 9 : 0) + (group === "figure" ? 0.3 : 0) - label.length / 10;

  function option(entry: Entry, label: string, apply = label, text = ""): Completion {
    return {
      label,
      apply,
      type: entry.group,
      detail: entry.meaning,
      boost: likely(entry.group, label, text),
    };
  }

  const offered = (groups: Group[], text: string): Completion[] =>
    lexicon.all.filter((e) => groups.includes(e.group) && e.meaning.length > 0).flatMap((e) => e.spellings.filter((s) => s.length > 2).slice(0, 3).map((s) => option(e, s, s, text)));

  const lineStarts = (): Completion[] => [
    ...lexicon.of("header").map((e) => option(e, `${capital(e.name)}:`, `${capital(e.name)}: `)),
    ...lexicon.of("role").map((e) => option(e, `${capital(e.name)}:`, `${capital(e.name)}: `)),
    ...lexicon.of("part").flatMap((e) => e.spellings.map((s) => option(e, capital(s), `${capital(s)} `))),
    ...lexicon.of("call").slice(0, 1).map((e) => option(e, capital(e.name), `${capital(e.name)} `)),
    ...[openingCall(lexicon)].flatMap((e) => (e ? [option(e, `Call ${e.name}:`, `Call ${e.name}: `)] : [])),
    ...lexicon.of("again").filter((e) => e.name === "repeat").map((e) => option(e, capital(e.name), `${capital(e.name)} `)),
  ];

  const calls = callLine(lexicon);
  // Between the counts of a call and its colon: for whom.
  const opens = callLine(lexicon, ",[^:]*$");

  function source(context: CompletionContext): CompletionResult | null {
    const line = context.state.doc.lineAt(context.pos);
    const before = line.text.slice(0, context.pos - line.from);
    if (/^\s*>/.test(before)) return null;
    const typed = /[\p{L}][\p{L}'’ -]*$/u.exec(before)?.[0] ?? "";
    if (typed.trim().length < 2 && !context.explicit) return null;
    const start = /^\s*[\p{L} ]*$/u.test(before);
    if (start) return { from: line.from + (before.length - before.trimStart().length), options: lineStarts(), validFor: /^[\p{L} ]*$/u };
    const fact = /^\s*([\p{L}]+)\s*:/u.exec(before)?.[1]?.toLowerCase();
    const isFact = fact !== undefined && lexicon.of("header").some((e) => e.spellings.includes(fact));
    const called = calls.test(before);
    const groups = called ? (["call", "figure"] satisfies Group[]) : opens.test(before) ? (["role"] satisfies Group[]) : isFact ? (afterFact[fact] ?? []) : (["figure", "step", "way", "hold", "hand", "role", "look", "again"] satisfies Group[]);
    if (groups.length === 0) return null;
    // Names have several words: what fits may begin at any of the last words, the longest stretch that begins a name wins.
    const rest = plain(context.state.doc.sliceString(0, context.pos - typed.length) + context.state.doc.sliceString(context.pos));
    const options = offered(groups, rest);
    const words = [...typed.matchAll(/(^|[ ])(?=\p{L})/gu)].map((m) => m.index + m[0].length);
    const end = context.pos;
    for (const at of words) {
      const text = typed.slice(at).toLowerCase();
      if (text.length > 0 && (text.length >= 2 || context.explicit) && options.some((o) => o.label.toLowerCase().startsWith(text))) {
        return { from: end - (typed.length - at), options, validFor: /^[\p{L}'’ -]*$/u };
      }
    }
    const last = words.at(-1);
    // One letter is a foot.
    if (last !== undefined && typed.length - last < 2 && !context.explicit) return null;
    return { from: last === undefined ? end : end - (typed.length - last), options, validFor: /^[\p{L}'’-]*$/u };
  }

  return autocompletion({
    override: [source],
    // Whoever presses Enter wants a new line, whatever is offered: nothing is chosen until somebody chooses.
    selectOnOpen: false,
    icons: false,
    maxRenderedOptions: 60,
    optionClass: (o) => `offer-${o.type ?? ""}`,
    addToOptions: [{ position: 90, render: (o) => {
      const kind = document.createElement("span");
      kind.className = "offer-kind";
      kind.textContent = groupNames[o.type as Group] ?? "";
      return kind;
    } }],
  });
}

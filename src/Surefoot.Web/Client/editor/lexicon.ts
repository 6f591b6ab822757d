/** The words of a page as the server lists them (made from its own words file and figure book). */
export interface WordLists {
  words: { group: Group; meaning: string; spellings: string[] }[];
  /** Other forms of a word: "walks" is "walk". */
  forms: Record<string, string>;
}

export type Group = "step" | "way" | "hold" | "hand" | "role" | "look" | "again" | "header" | "figure" | "part" | "call" | "level";

export interface Entry {
  group: Group;
  /** As Surefoot itself writes it. */
  name: string;
  meaning: string;
  spellings: string[];
}

interface Phrase {
  words: string[];
  entry: Entry;
}

/** Where a word is, in characters of its line. */
export interface Word {
  from: number;
  to: number;
  text: string;
}

export interface Found {
  entry: Entry;
  from: number;
  to: number;
}

const word = /[\p{L}][\p{L}'’/]*/gu;

// "Both hands" is said far more often than "both dancers".
const rank = (group: Group): number => (group === "figure" ? 0 : group === "hand" ? 1 : 2);

/** Finds the longest name that starts at a word; figures before single words. */
export class Lexicon {
  readonly entries: Entry[] = [];
  private readonly phrases = new Map<string, Phrase[]>();
  private own: Entry[] = [];

  constructor(private readonly lists: WordLists) {
    for (const { group, meaning, spellings } of lists.words) {
      const entry = { group, meaning, spellings, name: spellings[0] ?? "" };
      this.entries.push(entry);
      // Words of the head stand before a colon only, and headings at the start of a line: the line says so itself.
      if (group !== "header" && group !== "part" && group !== "call" && group !== "level") this.add(entry);
    }
  }

  static words(line: string): Word[] {
    return [...line.matchAll(word)].map((m) => ({ from: m.index, to: m.index + m[0].length, text: m[0] }));
  }

  get all(): Entry[] {
    return [...this.entries, ...this.own];
  }

  of(group: Group): Entry[] {
    return this.all.filter((e) => e.group === group);
  }

  /** The figures that the page itself defines; true when they are others than before. */
  setOwn(figures: { name: string; means: string }[]): boolean {
    if (figures.map((f) => f.name).join() === this.own.map((e) => e.name).join()) return false;
    for (const list of this.phrases.values()) {
      for (let i = list.length - 1; i >= 0; i--) if (this.own.includes(list[i]!.entry)) list.splice(i, 1);
    }
    this.own = figures.map((f) => ({ group: "figure", name: f.name, meaning: f.means, spellings: [f.name] }));
    for (const entry of this.own) this.add(entry);
    return true;
  }

  /** The name at word number i of a line. */
  at(words: Word[], line: string, i: number): Found | undefined {
    const first = words[i];
    if (!first) return undefined;
    for (const phrase of this.phrases.get(this.root(first.text)) ?? []) {
      const last = words[i + phrase.words.length - 1];
      if (!last) continue;
      const fits = phrase.words.every((w, k) => {
        const here = words[i + k]!;
        const between = k === 0 ? " " : line.slice(words[i + k - 1]!.to, here.from);
        return this.root(here.text) === w && /^[ -]+$/.test(between);
      });
      if (fits) return { entry: phrase.entry, from: first.from, to: last.to };
    }
    return undefined;
  }

  /** Every name in a line, left to right. */
  line(line: string): Found[] {
    const words = Lexicon.words(line);
    const found: Found[] = [];
    for (let i = 0; i < words.length; i++) {
      const name = this.at(words, line, i);
      if (!name) continue;
      found.push(name);
      while (i + 1 < words.length && words[i + 1]!.from < name.to) i++;
    }
    return found;
  }

  private root(text: string): string {
    const lower = text.toLowerCase();
    return Object.hasOwn(this.lists.forms, lower) ? this.lists.forms[lower]! : lower;
  }

  private add(entry: Entry): void {
    for (const spelling of entry.spellings) {
      const words = spelling.split(/[ -]+/).map((w) => this.root(w));
      const list = this.phrases.get(words[0]!) ?? [];
      list.push({ words, entry });
      list.sort((a, b) => b.words.length - a.words.length || rank(a.entry.group) - rank(b.entry.group));
      this.phrases.set(words[0]!, list);
    }
  }
}

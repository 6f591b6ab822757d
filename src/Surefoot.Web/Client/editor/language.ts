import { HighlightStyle, StreamLanguage, syntaxHighlighting, type StringStream } from "@codemirror/language";
import { Tag } from "@lezer/highlight";
import { Lexicon, type Entry, type Found, type Group } from "./lexicon.ts";

// What a stretch of a page is; the style sheet gives each its look by its class.
const kinds = ["count", "claim", "note", "title", ...(["step", "way", "hold", "hand", "role", "look", "again", "header", "figure", "part", "call", "level"] satisfies Group[]), "called"] as const;
type Kind = (typeof kinds)[number];
// With a name of our own before it: some bare names mean something else to the editor.
const token = (kind: Kind) => `dance-${kind}`;
const tags = Object.fromEntries(kinds.map((kind) => [token(kind), Tag.define(kind)])) as Record<string, Tag>;

const highlight = syntaxHighlighting(HighlightStyle.define(kinds.map((kind) => ({ tag: tags[token(kind)]!, class: `word-${kind}` }))));

interface Line {
  /** Nothing but blank lines so far: the next line is the title unless it is a fact. */
  top: boolean;
  bracket: boolean;
  /** Past the colon of a call: what follows is called and danced by nobody. */
  called: boolean;
  found: Found[];
}

const heading = /^\s*(\[\d|figure\s*:)/i;
const counts = /^[0-9&+][0-9&+ea]*(\s*(-|–|,|to|through)\s*[0-9&][0-9&ea]*)*&?(?=\s|:|$)|^[SQ]{2,}(?=\s)/;

/** "Call 7-8, follow:" or "Call before the dance:", up to its colon, or with another ending. */
export const callLine = (lexicon: Lexicon, ending = ":"): RegExp => {
  const [call, before] = [lexicon.of("call")[0], openingCall(lexicon)];
  return new RegExp(`^\\s*(${call?.spellings.join("|") ?? "call"})\\s+([0-9&][^:]*|(${before?.spellings.join("|") ?? "before"})\\s*(,[^:]*)?)${ending}`, "i");
};

/** The words that stand in place of counts for what is called before the first step. */
export const openingCall = (lexicon: Lexicon): Entry | undefined => lexicon.of("call").find((e) => e.name.startsWith("before"));

/** The page's own language, as far as colours need it; what a page means is said by the server alone. */
export function danceLanguage(lexicon: Lexicon) {
  const parts = new RegExp(`^\\s*(${lexicon.of("part").flatMap((e) => e.spellings).join("|")})\\b`, "i");
  const headers = new Set(lexicon.of("header").flatMap((e) => e.spellings.map((s) => s.toLowerCase())));

  const calls = callLine(lexicon);

  function begin(stream: StringStream, line: Line): Kind | null {
    line.bracket = line.called = false;
    line.found = lexicon.line(stream.string);
    if (stream.match(/^\s*>/)) {
      stream.skipToEnd();
      return "note";
    }
    const fact = /^\s*([\p{L} ]+?)\s*:/u.exec(stream.string);
    if (fact && headers.has(fact[1]!.toLowerCase())) {
      line.top = false;
      stream.pos = fact[0].length;
      return "header";
    }
    const call = calls.exec(stream.string);
    if (call) {
      line.top = false;
      stream.pos = call[0].length;
      line.called = true;
      return "call";
    }
    if (parts.test(stream.string) || heading.test(stream.string)) {
      line.top = false;
      stream.match(/^[^(]*/);
      return "part";
    }
    if (line.top && stream.string.trim().length > 0) {
      line.top = false;
      stream.skipToEnd();
      return "title";
    }
    stream.eatSpace();
    return stream.match(counts) ? "count" : null;
  }

  const language = StreamLanguage.define<Line>({
    name: "dance",
    startState: () => ({ top: true, bracket: false, called: false, found: [] }),
    copyState: (line) => ({ ...line }),
    tokenTable: tags,
    token(stream, line) {
      if (stream.sol()) {
        const kind = begin(stream, line);
        if (kind !== null || stream.pos > 0) return kind && token(kind);
      }
      if (line.called) {
        stream.skipToEnd();
        return token("called");
      }
      const next = stream.peek();
      if (next === "(" || next === "[") line.bracket = true;
      if (line.bracket) {
        while (!stream.eol()) {
          const c = stream.next();
          if (c === ")" || c === "]") {
            line.bracket = false;
            break;
          }
        }
        return token("claim");
      }
      const here = line.found.find((f) => f.from === stream.pos);
      if (here) {
        stream.pos = here.to;
        return token(here.entry.group);
      }
      const ahead = line.found.find((f) => f.from > stream.pos);
      stream.next();
      // Up to the next name or bracket nothing is coloured.
      while (!stream.eol() && stream.pos < (ahead?.from ?? Infinity) && stream.peek() !== "(" && stream.peek() !== "[") stream.next();
      return null;
    },
  });
  return [language, highlight];
}

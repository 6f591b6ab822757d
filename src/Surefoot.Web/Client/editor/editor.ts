import { closeBrackets, closeBracketsKeymap, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { highlightSelectionMatches, searchKeymap } from "@codemirror/search";
import { EditorState } from "@codemirror/state";
import { drawSelection, EditorView, highlightActiveLine, keymap, lineNumbers } from "@codemirror/view";
import type { Known, Problem, Span } from "../desk/live.ts";
import type { Post } from "../desk/messages.ts";
import type { Writer } from "../desk/unwritten.ts";
import { completion, takingOffers } from "./completion.ts";
import { finding } from "./finding.ts";
import { figureTips, type FigureShown } from "./figures.ts";
import { danceLanguage } from "./language.ts";
import { Lexicon, type WordLists } from "./lexicon.ts";
import { Places } from "./places.ts";
import { problemMarks, showProblems } from "./problems.ts";

export interface EditorNeeds {
  text: string;
  words: WordLists;
  post: Post;
  changed: (text: string) => void;
  figure: (name: string) => Promise<FigureShown | undefined>;
}

const narrow = matchMedia("(max-width: 40rem)");

/** How high the tabs of the panes are on a telephone, with some room, in pixels. */
const tabs = 84;

/** The text of a dance, with everything that helps to write it. */
export class DanceEditor {
  readonly view: EditorView;
  private readonly lexicon: Lexicon;
  private readonly places = new Places();
  private readonly sizes: ResizeObserver;
  private typed = false;
  /** Another look has another size of type, and the numbers of the lines stand beside their lines in it. */
  private readonly look = () => this.view.requestMeasure();

  constructor(parent: HTMLElement, needs: EditorNeeds) {
    const { post } = needs;
    this.lexicon = new Lexicon(needs.words);
    const say = (words: string) => post.tell("answer", words);
    const nonce = document.querySelector<HTMLMetaElement>("meta[name=style-nonce]")?.content ?? "";
    const state = EditorState.create({
      doc: needs.text,
      extensions: [
        EditorView.cspNonce.of(nonce),
        EditorView.lineWrapping,
        // On a telephone the tabs lie over the lower edge of the page: the line that is written stays above them.
        EditorView.scrollMargins.of(() => narrow.matches ? { bottom: tabs } : null),
        EditorView.contentAttributes.of({ "aria-label": "The text of the dance", spellcheck: "false", autocapitalize: "off", tabindex: "0" }),
        lineNumbers(),
        history(),
        drawSelection(),
        highlightActiveLine(),
        highlightSelectionMatches(),
        finding,
        closeBrackets(),
        danceLanguage(this.lexicon),
        completion(this.lexicon),
        figureTips(this.lexicon, needs.figure),
        this.places.extension,
        problemMarks(say),
        keymap.of([takingOffers, ...closeBracketsKeymap, ...defaultKeymap, ...searchKeymap, ...historyKeymap, ...completionKeymap]),
        EditorView.updateListener.of((update) => {
          if (update.docChanged || update.selectionSet) this.typed = update.transactions.some((t) => t.isUserEvent("input.type") || t.isUserEvent("delete"));
          if (update.docChanged) needs.changed(update.state.doc.toString());
          if (update.focusChanged && !update.view.hasFocus) post.tell("left", undefined);
          if (update.selectionSet && !update.docChanged) post.tell("cursor", update.state.selection.main.head);
          const pointed = update.transactions.some((t) => t.isUserEvent("select"));
          if (pointed && update.selectionSet && update.state.selection.main.empty) this.pointed(post);
        }),
      ],
    });
    this.view = new EditorView({ state, parent });
    // The sentence above grows with the dance and takes a line of this place away: who is writing keeps the line in sight.
    this.sizes = new ResizeObserver(() => {
      if (this.view.hasFocus) this.view.dispatch({ effects: EditorView.scrollIntoView(this.view.state.selection.main.head) });
    });
    this.sizes.observe(this.view.scrollDOM);
    document.addEventListener("surefoot-look", this.look);
    post.on("count", ({ at, by }) => this.places.show(this.view, at, by === "floor" && !this.view.hasFocus));
    post.on("show", (span) => this.goTo(span));
  }

  get cursor(): number {
    return this.view.state.selection.main.head;
  }

  /** The line with the cursor. */
  get line(): Span {
    return this.view.state.doc.lineAt(this.cursor);
  }

  /** The count whose words stand at the cursor. */
  get count(): number | undefined {
    return this.places.countAt(this.cursor, this.line);
  }

  get writer(): Writer {
    const { main } = this.view.state.selection;
    return { at: main.head, writes: main.empty && this.view.hasFocus, typed: this.typed };
  }

  get text(): string {
    return this.view.state.doc.toString();
  }

  /** What the server says of the text as it stands. */
  known(known: Known): void {
    this.places.set(known.places);
    this.lexicon.setOwn(known.figures);
  }

  show(problems: Problem[], say: (words: string) => void): void {
    showProblems(this.view, problems, say);
  }

  /** Puts another text in place of this one, line for line where it has as many, so that marks stay where they were; false when it is this text already. */
  put(text: string): boolean {
    const { state } = this.view;
    const [old, now] = [state.doc.toString().split("\n"), text.split("\n")];
    if (text === state.doc.toString()) return false;
    const changes = old.length === now.length
      ? old.flatMap((line, i) => (line === now[i] ? [] : [{ from: state.doc.line(i + 1).from, to: state.doc.line(i + 1).to, insert: now[i]! }]))
      : [{ from: 0, to: state.doc.length, insert: text }];
    const at = state.doc.lineAt(state.selection.main.head).number;
    this.view.dispatch({ changes, userEvent: "input.tidy" });
    const line = this.view.state.doc.line(Math.min(at, this.view.state.doc.lines));
    this.view.dispatch({ selection: { anchor: line.to }, scrollIntoView: true });
    return true;
  }

  goTo(span: Span): void {
    const length = this.view.state.doc.length;
    this.view.dispatch({
      selection: { anchor: Math.min(span.from, length), head: Math.min(span.to, length) },
      effects: EditorView.scrollIntoView(Math.min(span.from, length), { y: "center" }),
    });
    this.view.focus();
  }

  close(): void {
    this.sizes.disconnect();
    document.removeEventListener("surefoot-look", this.look);
    this.view.destroy();
  }

  private pointed(post: Post): void {
    const { count } = this;
    if (count !== undefined) post.tell("count", { at: count, by: "text" });
  }
}

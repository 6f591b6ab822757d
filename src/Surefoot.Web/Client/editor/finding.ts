import { closeSearchPanel, findNext, findPrevious, getSearchQuery, replaceAll, replaceNext, search, SearchQuery, setSearchQuery } from "@codemirror/search";
import type { Extension } from "@codemirror/state";
import type { EditorView, Panel, ViewUpdate } from "@codemirror/view";
import { button, make } from "../dom.ts";

/** Places that are counted; a page that has more of one word is no dance. Working value. */
const most = 999;

/** Finds words in the text and puts others in their place: words only, whatever signs are in them. */
export const finding: Extension = search({ top: true, createPanel: (view) => new FindPanel(view) });

class FindPanel implements Panel {
  readonly dom: HTMLElement;
  readonly top = true;
  private readonly words = make("input", { type: "text", "main-field": "true", "aria-label": "Words to find in the text", autocomplete: "off", autocapitalize: "off", spellcheck: "false", enterkeyhint: "search" });
  private readonly instead = make("input", { type: "text", "aria-label": "Words to put in their place", autocomplete: "off", autocapitalize: "off", spellcheck: "false" });
  private readonly tally = make("span", { class: "tally", role: "status" });
  private query: SearchQuery;

  constructor(private readonly view: EditorView) {
    this.query = getSearchQuery(view.state);
    this.words.value = this.query.search;
    this.instead.value = this.query.replace;
    for (const field of [this.words, this.instead]) field.addEventListener("input", () => this.asked());
    this.words.addEventListener("keydown", (event) => this.step(event));
    this.instead.addEventListener("keydown", (event) => event.key === "Enter" && this.take(event, replaceNext));
    this.dom = make("div", { class: "finding", role: "search", "aria-label": "In this text" },
      make("div", { class: "line" },
        make("label", {}, "Find ", this.words),
        button("Next", () => findNext(view)),
        button("Before", () => findPrevious(view)),
        this.tally,
        button("Close", () => closeSearchPanel(view), { class: "close" })),
      make("div", { class: "line" },
        make("label", {}, "and write ", this.instead),
        button("Here", () => replaceNext(view), { "aria-label": "Write it here" }),
        button("Everywhere", () => replaceAll(view), { "aria-label": "Write it everywhere" })));
    this.dom.addEventListener("keydown", (event) => event.key === "Escape" && this.take(event, closeSearchPanel));
    this.count();
  }

  mount(): void {
    this.words.select();
  }

  update(update: ViewUpdate): void {
    const query = getSearchQuery(update.state);
    // Opened again over chosen words: these are looked for.
    if (!query.eq(this.query) && query.search !== this.words.value) this.words.value = query.search;
    if (update.docChanged || update.selectionSet || !query.eq(this.query)) {
      this.query = query;
      this.count();
    }
  }

  private asked(): void {
    const query = new SearchQuery({ search: this.words.value, replace: this.instead.value, literal: true });
    this.view.dispatch({ effects: setSearchQuery.of(query) });
  }

  private step(event: KeyboardEvent): void {
    if (event.key === "Enter") this.take(event, event.shiftKey ? findPrevious : findNext);
  }

  private take(event: KeyboardEvent, act: (view: EditorView) => boolean): void {
    event.preventDefault();
    act(this.view);
  }

  // "2 of 5": where she is among the places.
  private count(): void {
    const { from, to } = this.view.state.selection.main;
    let [all, here] = [0, 0];
    if (this.query.valid) {
      const places = this.query.getCursor(this.view.state);
      for (let place = places.next(); !place.done && all < most; place = places.next()) {
        all++;
        if (place.value.from === from && place.value.to === to) here = all;
      }
    }
    this.tally.textContent = !this.query.search ? "" : all === 0 ? "nowhere" : here > 0 ? `${here} of ${all}` : all === 1 ? "in one place" : `in ${all} places`;
  }
}

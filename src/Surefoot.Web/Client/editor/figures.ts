import { StateEffect, StateField, type Extension } from "@codemirror/state";
import { hoverTooltip, keymap, showTooltip, type EditorView, type Tooltip } from "@codemirror/view";
import { make } from "../dom.ts";
import type { Found, Lexicon } from "./lexicon.ts";

/** What a figure comes to, as the server dances it. */
export interface FigureShown {
  name?: string;
  means?: string;
  source?: string;
  ways?: { way: string; roles: { role: string; steps: { count: string; words: string }[] }[] }[];
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function table(steps: { count: string; words: string }[], caption: string): HTMLElement {
  const rows = steps.map((s) => make("tr", {}, make("th", { scope: "row" }, s.count), make("td", {}, s.words)));
  return make("table", {}, make("caption", {}, caption), make("tbody", {}, ...rows));
}

function drawn(found: Found, shown: FigureShown | undefined): HTMLElement {
  const box = make("div", { class: "figure-shown", role: "note" });
  box.append(make("h3", {}, capital(shown?.name ?? found.entry.name)), make("p", {}, capital(shown?.means ?? found.entry.meaning)));
  const ways = make("div", { class: "ways" });
  for (const way of shown?.ways ?? []) {
    for (const role of way.roles) ways.append(table(role.steps, role.role === "dancer" ? way.way : `${role.role}, ${way.way}`));
  }
  if (ways.childElementCount > 0) box.append(ways);
  return box;
}

/** Shows what the name under the mouse or at the cursor (Mod-i) means; figures step by step. */
export function figureTips(lexicon: Lexicon, ask: (name: string) => Promise<FigureShown | undefined>): Extension {
  function at(view: EditorView, pos: number): (Found & { start: number }) | undefined {
    const line = view.state.doc.lineAt(pos);
    if (/^\s*>/.test(line.text)) return undefined;
    const found = lexicon.line(line.text).find((f) => line.from + f.from <= pos && pos <= line.from + f.to);
    return found && { ...found, start: line.from };
  }

  async function tip(view: EditorView, pos: number, onlyFigures: boolean): Promise<Tooltip | null> {
    const found = at(view, pos);
    if (!found || (onlyFigures && found.entry.group !== "figure")) return null;
    const shown = found.entry.group === "figure" ? await ask(found.entry.name) : undefined;
    return { pos: found.start + found.from, end: found.start + found.to, above: true, create: () => ({ dom: drawn(found, shown) }) };
  }

  const put = StateEffect.define<Tooltip | null>();
  const asked = StateField.define<Tooltip | null>({
    create: () => null,
    update(now, change) {
      for (const effect of change.effects) if (effect.is(put)) return effect.value;
      return change.docChanged || change.selection ? null : now;
    },
    provide: (field) => showTooltip.from(field),
  });

  return [
    hoverTooltip((view, pos) => tip(view, pos, true), { hoverTime: 400, hideOnChange: true }),
    asked,
    keymap.of([
      { key: "Mod-i", run: (view) => {
        void tip(view, view.state.selection.main.head, false).then((t) => view.dispatch({ effects: put.of(t) }));
        return true;
      } },
      { key: "Escape", run: (view) => {
        if (view.state.field(asked) === null) return false;
        view.dispatch({ effects: put.of(null) });
        return true;
      } },
    ]),
  ];
}

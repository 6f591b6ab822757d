import { RangeSet, StateEffect, StateField, type Extension, type Range } from "@codemirror/state";
import { Decoration, EditorView, type DecorationSet } from "@codemirror/view";
import type { Place, Span } from "../desk/live.ts";

const danced = Decoration.mark({ class: "danced-now" });
const again = Decoration.line({ class: "danced-again" });
const put = StateEffect.define<DecorationSet>();

const marks = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update(now, change) {
    for (const effect of change.effects) if (effect.is(put)) return effect.value;
    return now.map(change.changes);
  },
  provide: (field) => EditorView.decorations.from(field),
});

/** Which words stand on which count, both ways. */
export class Places {
  private places: Place[] = [];
  private shown = "";
  readonly extension: Extension = marks;

  set(places: Place[]): void {
    this.places = places;
  }

  /** The count whose words are at a place of the text; on a line that repeats others, the first of them. */
  countAt(pos: number, line: Span): number | undefined {
    const inside = this.places.find((p) => !p.by && p.from <= pos && pos < p.to);
    if (inside) return inside.at;
    const onLine = this.places.filter((p) => !p.by && p.from < line.to && p.to > line.from);
    const byLine = this.places.filter((p) => p.by && p.by.from < line.to && p.by.to > line.from);
    const near = onLine.length > 0 ? onLine : byLine;
    if (near.length === 0) return undefined;
    // The words nearest to the place, else the line's first count.
    return near.reduce((best, p) => (Math.abs(p.from - pos) < Math.abs(best.from - pos) ? p : best)).at;
  }

  /** Marks the words that are danced on a count, and the line that has them danced again. */
  show(view: EditorView, at: number, scroll: boolean): void {
    const now = new Map<string, number>();
    for (const p of this.places) if (p.at <= at + 1e-6 && p.at > (now.get(p.role) ?? -Infinity)) now.set(p.role, p.at);
    // Words for both are danced by each; they are marked once.
    const here = this.places.filter((p) => now.get(p.role) === p.at).filter((p, i, all) => all.findIndex((o) => o.from === p.from && o.to === p.to && o.by?.from === p.by?.from) === i);
    const key = here.map((p) => `${p.from}-${p.to}-${p.by?.from}`).join();
    if (key === this.shown && !scroll) return;
    this.shown = key;
    const length = view.state.doc.length;
    const ranges: Range<Decoration>[] = [];
    for (const p of here) {
      if (p.to <= length && p.to > p.from) ranges.push(danced.range(p.from, p.to));
      if (p.by && p.by.from <= length) ranges.push(again.range(view.state.doc.lineAt(p.by.from).from));
    }
    const first = here[0];
    const target = first ? (first.by ?? first) : undefined;
    const effects: StateEffect<unknown>[] = [put.of(RangeSet.of(ranges, true))];
    if (scroll && target && target.to <= length) effects.push(EditorView.scrollIntoView(target.from, { y: "center" }));
    view.dispatch({ effects });
  }
}

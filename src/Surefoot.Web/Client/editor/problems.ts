import { forEachDiagnostic, lintGutter, setDiagnostics, type Action, type Diagnostic } from "@codemirror/lint";
import type { EditorState, Extension } from "@codemirror/state";
import { keymap, type EditorView } from "@codemirror/view";
import type { Fix, Problem } from "../desk/live.ts";

export const severityWords = { error: "error", warning: "warning", hint: "assumed", unwritten: "still to write" } as const;

/** Applies a suggestion to the text; one step back takes all of it back. */
export function applyFix(view: EditorView, fix: Fix): void {
  const length = view.state.doc.length;
  if (fix.edits.some((e) => e.to > length)) return;
  view.dispatch({
    changes: fix.edits.map((e) => ({ from: e.from, to: e.to, insert: e.text })),
    userEvent: "input.fix",
    scrollIntoView: true,
  });
}

/** What a suggestion that was taken has done, in a word. */
export const whatChanged = (fix: Fix): string => `Changed: ${fix.title.replace(/^Did you mean:? */, "")}`;

interface Known extends Diagnostic {
  problem: Problem;
}

function diagnostic(problem: Problem, say: (words: string) => void): Known {
  return {
    problem,
    from: problem.from,
    to: problem.to,
    severity: problem.severity === "unwritten" ? "info" : problem.severity,
    source: severityWords[problem.severity],
    message: problem.message,
    markClass: `problem-${problem.severity}`,
    renderMessage: () => {
      const box = document.createElement("div");
      const message = document.createElement("p");
      message.textContent = problem.message;
      box.append(message);
      if (problem.reason.length > 0) {
        const reason = document.createElement("p");
        reason.className = "reason";
        reason.textContent = problem.reason;
        box.append(reason);
      }
      return box;
    },
    actions: problem.fixes.map((fix): Action => ({
      name: fix.title,
      // The text may have moved since: the places are shifted with the underlined words.
      apply: (view, from) => {
        applyFix(view, moved(fix, from - problem.from));
        say(whatChanged(fix));
      },
    })),
  };
}

const moved = (fix: Fix, by: number): Fix =>
  by === 0 ? fix : { ...fix, edits: fix.edits.map((e) => ({ ...e, from: e.from + by, to: e.to + by })) };

export function showProblems(view: EditorView, problems: Problem[], say: (words: string) => void): void {
  view.dispatch(setDiagnostics(view.state, problems.map((p) => diagnostic(p, say))));
}

/** The problem at the cursor, else one on its line that has a suggestion. */
function nearest(state: EditorState): { diagnostic: Known; from: number } | undefined {
  const at = state.selection.main.head;
  const line = state.doc.lineAt(at);
  const near: { diagnostic: Known; from: number; to: number }[] = [];
  forEachDiagnostic(state, (d, from, to) => {
    if (to >= line.from && from <= line.to && (d.actions?.length ?? 0) > 0) near.push({ diagnostic: d as Known, from, to });
  });
  return near.find((n) => n.from <= at && at <= n.to) ?? near[0];
}

/** The next problem behind the cursor, or the one before it, round and round; what is still to write is none. */
function goOn(view: EditorView, way: 1 | -1, say: (words: string) => void): boolean {
  const { state } = view;
  const places: { from: number; to: number }[] = [];
  forEachDiagnostic(state, (d, from, to) => {
    if ((d as Known).problem.severity !== "unwritten") places.push({ from, to });
  });
  places.sort((a, b) => (a.from - b.from) * way);
  const { main } = state.selection;
  const next = places.find((p) => (p.from - main.from) * way > 0) ?? places[0];
  if (next) view.dispatch({ selection: { anchor: next.from, head: next.to }, scrollIntoView: true });
  else say("There is no problem to go to.");
  return true;
}

export function problemMarks(say: (words: string) => void): Extension {
  const fix = (view: EditorView): boolean => {
    const found = nearest(view.state);
    const action = found?.diagnostic.actions?.[0];
    if (!found || !action) {
      say("There is no suggestion on this line.");
      return true;
    }
    action.apply(view, found.from, found.from + found.diagnostic.to - found.diagnostic.from);
    return true;
  };
  return [lintGutter({ hoverTime: 150 }), keymap.of([{ key: "Mod-.", run: fix }, { key: "F8", run: (view) => goOn(view, 1, say), shift: (view) => goOn(view, -1, say) }])];
}

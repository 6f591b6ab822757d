import { applyFix, whatChanged } from "../editor/problems.ts";
import { DanceEditor } from "../editor/editor.ts";
import type { FigureShown } from "../editor/figures.ts";
import type { WordLists } from "../editor/lexicon.ts";
import { Floor } from "../floor/floor.ts";
import type { MotionFile } from "surefoot-viewer/motion.ts";
import { Live, type Known } from "./live.ts";
import { Post } from "./messages.ts";
import { openKeeping } from "../keep/keeping.ts";
import { panes } from "./panes.ts";
import { ProblemList } from "./problems.ts";
import { Sheet } from "./sheet.ts";
import { whileWriting } from "./unwritten.ts";

/** Milliseconds after the last key before sheet and floor follow the text: problems are wanted at once, these when a word is done. Working value. */
const settled = 350;

/** Milliseconds a press of the mouse may take, at most. Working value. */
const pressed = 400;

/** Milliseconds an answer to what somebody did is to be seen. Working value. */
const seen = 6000;

/** Fills the parts of a desk and lets them talk. Called by the page once its parts are there to stay. */
export async function open(root: HTMLElement, page: number, notebook: number): Promise<{ close(): void }> {
  const part = (name: string) => root.querySelector<HTMLElement>(`[data-part="${name}"]`)!;
  const post = new Post();
  const heard = part("heard");
  const answer = part("answer");
  let answered: ReturnType<typeof setTimeout> | undefined;
  post.on("say", (words) => (heard.textContent = words));
  post.on("answer", (words) => {
    heard.textContent = answer.textContent = answer.title = words;
    clearTimeout(answered);
    answered = setTimeout(() => (answer.textContent = answer.title = ""), seen);
  });

  const asked = fetch(`/words.json?notebook=${notebook}`);
  const keeping = await openKeeping(part("keeping"), page, post);
  const { text } = keeping;
  const words = (await (await asked).json()) as WordLists;
  let later: ReturnType<typeof setTimeout> | undefined;
  let followed = false;
  // Whoever comes from a search that found something on a count wants to see that count.
  let begin = beginning(location.search);
  let read: { known: Known; of: string } | undefined;
  let judged = "";
  const live = new Live(notebook, known, (lost) => post.tell("lost", lost));
  const editor = new DanceEditor(part("text"), {
    text,
    words,
    post,
    changed: (changed) => {
      live.changed(changed);
      keeping.changed(changed);
    },
    figure: (name) => live.ask<FigureShown>(`figure?name=${encodeURIComponent(name)}`),
  });
  // Whoever made a new dance wants to write, over the counts it begins with.
  if (new URLSearchParams(location.search).has("write")) {
    history.replaceState(history.state, "", location.pathname);
    const first = text.search(/^[0-9]/m);
    editor.view.dispatch({ selection: { anchor: Math.max(first, 0) } });
    editor.view.focus();
  }

  post.on("replace", (replaced) => editor.view.dispatch({ changes: { from: 0, to: editor.view.state.doc.length, insert: replaced } }));
  const list = new ProblemList(part("problems"), part("tally"), (p) => post.tell("show", p), (fix) => {
    applyFix(editor.view, fix);
    editor.view.focus();
    post.tell("answer", whatChanged(fix));
  });
  const floor = new Floor(part("floor"), { count: (at) => post.tell("count", { at, by: "floor" }) });
  post.on("count", ({ at, by }) => {
    if (by === "text") floor.goTo(at, true);
    if (by === "writing") floor.turnTo(at);
    const danced = read?.known.places.find((p) => Math.abs(p.at - at) < 1e-6);
    if (danced) turnTo((danced.by ?? danced).from);
  });
  const sheet = new Sheet(part("sheet"));
  const tally = panes(root, part("panes"), begin === undefined ? "sheet" : "floor");
  part("plain").hidden = true;
  part("tidy").addEventListener("click", () => void tidy());

  function known(now: Known, of: string): void {
    // Places are those of this very text; if it moved on meanwhile, the next answer is on its way.
    if (of !== editor.text) return;
    read = { known: now, of };
    editor.known(now);
    judge(true);
    say(part("facts"), now.facts);
    part("facts").title = now.facts;
    if (now.title) say(part("title"), now.title);
    root.dataset.number = String(now.number);
    turnTo(editor.cursor);
    clearTimeout(later);
    later = setTimeout(() => void follow(now.number), followed ? settled : 0);
    followed = true;
  }

  // What is just being written is no fault yet, so the problems depend on where the cursor stands.
  function judge(anew: boolean): void {
    if (!read || read.of !== editor.text) return;
    const problems = whileWriting(read.known.problems, editor.writer);
    const severities = problems.map((p) => p.severity).join();
    if (!anew && severities === judged) return;
    judged = severities;
    editor.show(problems, (said) => post.tell("answer", said));
    list.show(problems, read.known.places.length > 0);
    atLine();
    tally(problems.filter((p) => p.severity !== "unwritten").length);
    sheet.doubts(problems.filter((p) => p.severity === "error").length, !anew);
  }

  // Who has only opened a page is shown its worst problem, not what is assumed of its first line.
  function atLine(): void {
    if (editor.view.hasFocus) list.at(editor.line);
  }

  async function tidy(): Promise<void> {
    // What was written last may still be on its way.
    for (let i = 0; i < 20 && read?.of !== editor.text; i++) await new Promise((done) => setTimeout(done, 100));
    const tidied = await live.ask<{ number: number; text: string }>("tidy");
    // A text that moved on meanwhile is not taken away from who writes it.
    if (!tidied || read?.of !== editor.text || read.known.number !== tidied.number) {
      post.tell("answer", "That could not be done just now.");
      return;
    }
    post.tell("answer", editor.put(tidied.text) ? "Tidied; one step back takes it back." : "The page is tidy already.");
  }

  // The sheet shows the part that is written, or danced.
  function turnTo(place: number): void {
    if (read?.of === editor.text) sheet.at(Math.max(0, read.known.parts.filter((from) => from <= place).length - 1));
  }

  post.on("cursor", (at) => {
    judge(false);
    if (read?.of === editor.text) atLine();
    turnTo(at);
  });
  // Not at once: a press on the list is what took the keys away, and the list must not change under it.
  post.on("left", () => setTimeout(() => judge(false), pressed));

  async function follow(number: number): Promise<void> {
    const motion = await live.ask<MotionFile>(`motion?number=${number}`);
    if (motion) {
      floor.load(motion);
      if (begin !== undefined) floor.goTo(begin);
      begin = undefined;
      const written = read?.of === editor.text && editor.writer.typed ? editor.count : undefined;
      if (written !== undefined && floor.stands) post.tell("count", { at: written, by: "writing" });
    }
    sheet.show(`${live.address}/sheet?number=${number}`);
    document.documentElement.dataset.ready = "";
  }

  live.changed(text);
  await live.send();
  return {
    close() {
      clearTimeout(later);
      keeping.close();
      live.close();
      editor.close();
      floor.close();
      sheet.close();
    },
  };
}

/** Puts words in their place; the same words again would have the page laid out again, with each key. */
function say(place: HTMLElement, words: string): void {
  if (place.textContent !== words) place.textContent = words;
}

/** "?count=15": the count of the repeat at which a page is opened. */
function beginning(search: string): number | undefined {
  const count = Number(new URLSearchParams(search).get("count") ?? NaN);
  return Number.isFinite(count) && count > 0 ? count : undefined;
}

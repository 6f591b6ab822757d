import { button, make } from "../dom.ts";
import { severityWords } from "../editor/problems.ts";
import type { Fix, Problem, Span } from "./live.ts";

/** The problems of a page as a list: said in full, each a way to its words, its suggestions one press away. */
export class ProblemList {
  private readonly unfolded = new Set<string>();
  private items: { problem: Problem; item: HTMLElement }[] = [];
  private turned: HTMLElement | undefined;
  private said = "";
  private scrolled = false;

  constructor(
    private readonly parent: HTMLElement,
    private readonly tally: HTMLElement,
    private readonly goTo: (problem: Problem) => void,
    private readonly mend: (fix: Fix) => void,
  ) {
    // To ask how far it is scrolled would have the whole page laid out, with each key.
    parent.addEventListener("scroll", () => (this.scrolled = parent.scrollTop > 0));
  }

  /** @param danced Whether there is anything on the page that is danced. */
  show(problems: Problem[], danced: boolean): void {
    const told = problems.filter((p) => p.severity !== "unwritten").length;
    this.tally.textContent = told === 0 ? "none" : String(told);
    if (problems.length === 0) {
      this.items = [];
      this.said = "";
      this.parent.replaceChildren(make("p", { class: "sound" }, danced ? "Nothing is wrong, and nothing was assumed." : "No counts are written yet."));
      return;
    }
    // The list is drawn again only when it says something else, so that whoever stands in it is not thrown out.
    const rank = { error: 0, warning: 1, hint: 2, unwritten: 3 };
    const sorted = [...problems].sort((a, b) => rank[a.severity] - rank[b.severity] || a.from - b.from);
    const said = JSON.stringify(sorted.map((p) => [p.name, p.severity, p.place, p.message, p.reason, p.related.map((r) => r.says), p.fixes.map((f) => f.title)]));
    if (said === this.said) {
      // Only their places may have moved.
      sorted.forEach((problem, i) => Object.assign(this.items[i]!.problem, problem));
      return;
    }
    this.said = said;
    const focus = this.parent.contains(document.activeElement) ? [...this.parent.querySelectorAll("button")].indexOf(document.activeElement as HTMLButtonElement) : -1;
    this.items = sorted.map((p) => ({ ...p })).map((problem) => ({ problem, item: this.item(problem) }));
    this.turned = undefined;
    this.parent.replaceChildren(make("ol", {}, ...this.items.map(({ item }) => item)));
    if (focus >= 0) [...this.parent.querySelectorAll("button")].at(focus)?.focus();
  }

  /** Marks what is told of the line that is written and brings it in sight; a reader of the list is left where he is. */
  at({ from, to }: Span): void {
    let first: HTMLElement | undefined;
    for (const { problem, item } of this.items) {
      const here = problem.from <= to && problem.to >= from;
      item.classList.toggle("here", here);
      if (here) first ??= item;
    }
    if (first === this.turned && (first || !this.scrolled) || this.parent.matches(":hover, :focus-within")) return;
    this.turned = first;
    // Not scrollIntoView: it would move the page as well.
    this.parent.scrollTop = first ? this.parent.scrollTop + first.getBoundingClientRect().top - this.parent.getBoundingClientRect().top : 0;
  }

  private item(problem: Problem): HTMLElement {
    const head = make("span", { class: `severity ${problem.severity}` }, severityWords[problem.severity]);
    const open = button("", () => this.goTo(problem), { class: "open" });
    open.append(head, make("span", { class: "place" }, problem.place), make("span", { class: "message" }, problem.message));
    const item = make("li", { class: `problem ${problem.severity}` }, open);
    const more = [problem.reason, ...new Set(problem.related.map((r) => r.says))].filter((words) => words).map((words) => make("p", { class: "reason" }, words));
    // Before the reasons: on a laptop the list is low, and what mends it has to be in sight.
    if (problem.fixes.length > 0 && problem.severity !== "unwritten") item.append(make("div", { class: "fixes" }, ...problem.fixes.map((f, i) => button(f.title, () => this.mend(problem.fixes[i]!), { class: "fix" }))));
    // What was assumed is one sentence; only who asks why is told the rest.
    if (problem.severity === "hint" && more.length > 0) item.append(this.folded(problem, more));
    else item.append(...more);
    return item;
  }

  /** Stays open while the list is drawn again. */
  private folded(problem: Problem, more: HTMLElement[]): HTMLElement {
    const key = `${problem.name} ${problem.place}`;
    const details = make("details", { class: "folded" }, make("summary", {}, "More"), ...more);
    details.open = this.unfolded.has(key);
    details.addEventListener("toggle", () => (details.open ? this.unfolded.add(key) : this.unfolded.delete(key)));
    return details;
  }
}

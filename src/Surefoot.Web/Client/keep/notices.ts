import { button, make } from "../dom.ts";

/** Something to do about a notice: pressed, or followed to another page. */
export type Choice = { words: string; act: () => void } | { words: string; to: () => string };

/** What has to be said of keeping, in plain words; each stays until it is answered or put away. */
export class Notices {
  private readonly shown = new Map<string, HTMLElement>();

  constructor(private readonly parent: HTMLElement) {}

  /** @param kind Of each kind one stands at a time, the last. */
  show(kind: string, words: string, ...choices: Choice[]): void {
    this.drop(kind);
    const notice = make("div", { class: "notice", "data-kind": kind }, make("p", {}, words));
    const ways = make("div", { class: "ways" });
    for (const choice of choices) ways.append("act" in choice ? button(choice.words, choice.act) : this.link(choice.words, choice.to));
    ways.append(button("Put this away", () => this.drop(kind), { class: "away" }));
    notice.append(ways);
    this.shown.set(kind, notice);
    this.parent.append(notice);
  }

  drop(kind: string): void {
    this.shown.get(kind)?.remove();
    this.shown.delete(kind);
  }

  /** Where it leads may change while it stands there. */
  private link(words: string, to: () => string): HTMLAnchorElement {
    const link = make("a", { href: to() }, words);
    for (const event of ["pointerdown", "focus", "click"]) link.addEventListener(event, () => (link.href = to()));
    return link;
  }
}

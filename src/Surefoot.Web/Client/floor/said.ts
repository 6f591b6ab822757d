import { make } from "../dom.ts";
import type { CountWords } from "./words.ts";

/** The moment in words under the picture: the count, the part, what each does and what they hold. */
export class Said {
  private readonly count = make("strong", { class: "count" });
  private readonly part = make("span", { class: "part" });
  private readonly roles = make("dl", { class: "roles" });
  private readonly hold = make("span", { class: "hold" });
  readonly root = make("div", { class: "now" }, this.count, make("p", { class: "where" }, this.part, this.hold), this.roles);

  private shown = "";

  show(words: CountWords): void {
    // The same words again would be laid out and painted again, with every picture.
    const all = JSON.stringify(words);
    if (all === this.shown) return;
    this.shown = all;
    this.count.textContent = words.count;
    this.part.textContent = words.part;
    this.hold.textContent = words.hold;
    this.roles.replaceChildren(...words.roles.map((r) => make("div", {}, make("dt", {}, r.called), make("dd", {}, r.words))));
  }
}

import { make } from "../dom.ts";
import type { Stretch } from "./clock.ts";
import type { Motion } from "surefoot-viewer/motion.ts";

/** Chooses what is danced over and over: the whole dance, a part of it, or from one count to another. */
export class Stretches {
  readonly choice = make("select", { "aria-label": "Repeat" });
  private readonly from = make("input", { type: "number", min: "1", step: "1", "aria-label": "First count of the range" });
  private readonly to = make("input", { type: "number", min: "1", step: "1", "aria-label": "Last count of the range" });
  readonly range = make("span", { class: "range", hidden: "" }, "counts ", this.from, " to ", this.to);
  private offered = "";

  constructor(changed: () => void) {
    for (const field of [this.choice, this.from, this.to]) field.addEventListener("change", changed);
  }

  get whole(): boolean {
    return this.choice.value === "all";
  }

  /** Offers a dance's parts; the choice stays where the parts are the same. */
  offer(motion: Motion): void {
    this.from.max = this.to.max = String(motion.file.counts);
    const parts = motion.file.parts.map((p) => `${p.label}${p.from}${p.counts}`).join();
    if (parts === this.offered && this.choice.options.length > 0) return;
    this.offered = parts;
    const options = motion.file.parts.map((p, i) => {
      const name = [p.label || `Counts from ${p.from}`, p.name].filter((w) => w).join(": ");
      return make("option", { value: String(i) }, p.mirrored ? `${name} (other foot)` : name);
    });
    const kept = this.choice.value;
    this.choice.replaceChildren(make("option", { value: "all" }, "the whole dance"), ...options, make("option", { value: "range" }, "chosen counts"));
    this.choice.value = kept;
    if (this.choice.selectedIndex < 0) this.choice.value = "all";
  }

  /** The next part; after the last the whole dance. */
  another(): void {
    this.choice.selectedIndex = (this.choice.selectedIndex + 1) % Math.max(this.choice.options.length - 1, 1);
  }

  chosen(motion: Motion): Stretch {
    const { value } = this.choice;
    this.range.hidden = value !== "range";
    if (value === "range") {
      const from = Math.min(Math.max(Number(this.from.value) || 1, 1), motion.file.counts);
      const to = Math.min(Math.max(Number(this.to.value) || motion.file.counts, from), motion.file.counts);
      this.from.value = String(from);
      this.to.value = String(to);
      return { from: from - 1, to };
    }
    const part = value === "all" ? undefined : motion.file.parts[Number(value)];
    // Everybody sets out for a count one before it is done.
    return part ? { from: part.from - 1, to: part.from - 1 + part.counts } : { from: 0, to: motion.file.counts };
  }
}

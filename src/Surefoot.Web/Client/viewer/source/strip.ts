import { put } from "./put.ts";
import type { Watching } from "./watching.ts";
import { callAt, wordsAt } from "./words.ts";

/** What stands under the picture. */
export interface Shown { count: string; step: string }

/** Count, part, words and call under the picture. */
export class Strip {
  readonly element = document.createElement("div");
  private readonly count = piece("viewer-count");
  private readonly part = piece("viewer-part");
  private readonly step = piece("viewer-step");
  private readonly call = piece("viewer-call");
  private readonly heard = document.createElement("p");

  constructor(private readonly watching: Watching) {
    this.element.className = "viewer-strip";
    this.element.setAttribute("aria-hidden", "true");
    const middle = document.createElement("div");
    middle.className = "viewer-middle";
    middle.append(this.part, this.step);
    this.element.append(this.count, middle, this.call);
    this.heard.className = "viewer-heard";
    this.heard.setAttribute("role", "status");
  }

  /** For those who do not see it. */
  get spoken(): HTMLElement {
    return this.heard;
  }

  /** As it stands there now. */
  get shown(): Shown {
    return { count: this.count.textContent ?? "", step: this.step.textContent ?? "" };
  }

  show(): void {
    const { clock, motion, view, countIn } = this.watching;
    const now = clock.now();
    const within = this.watching.within(now.at);
    const { stretch } = clock;
    // Where a part comes again and again nobody has danced the count before it.
    const begins = stretch !== null && within >= stretch.from - 1e-6 && !motion.stops.some((s) => s > stretch.from + 1e-6 && s <= within + 1e-6);
    const before = within < 0.5 || begins;
    const words = wordsAt(motion, view.focus, begins ? stretch.from + 1 : within);
    put(this.count, now.countIn !== null ? String(countIn + now.countIn + 1) : before ? "–" : words.count);
    put(this.part, words.hold ? `${words.part}  ·  ${words.hold}` : words.part);
    put(this.step, now.countIn !== null ? "get ready" : before ? "ready" : words.step);
    const call = begins ? callAt(motion, view.focus, within) : words.call;
    put(this.call, call ? `next: ${call}` : "");
    // While it plays nobody could listen to every count.
    if (!clock.playing) put(this.heard, begins ? `Ready for ${words.part || "the first count"}.` : before ? "At the start." : `Count ${words.count}. ${words.step}. ${words.part}.${words.hold ? ` ${words.hold}.` : ""}`);
  }
}

function piece(name: string): HTMLElement {
  const element = document.createElement("div");
  element.className = name;
  return element;
}

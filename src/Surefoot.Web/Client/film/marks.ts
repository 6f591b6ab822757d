interface Marked {
  element: HTMLElement;
  spans: [from: number, to: number][];
}

/** Marks on the page and among the chapters what the film is showing, quietly: nothing is read out for it. */
export class Marks {
  private readonly all: Marked[];
  private readonly now: HTMLElement;
  private readonly lines: HTMLElement | null;

  constructor(room: HTMLElement) {
    this.all = [...room.querySelectorAll<HTMLElement>("[data-spans]")].map((element) => ({ element, spans: spans(element.dataset.spans!) }));
    this.now = room.querySelector<HTMLElement>('[data-part="film-now"]')!;
    this.lines = room.querySelector<HTMLElement>('[data-part="film-lines"]');
  }

  /** @param at Seconds. */
  show(at: number, playing: boolean): void {
    const on = this.all.filter((m) => m.spans.some(([from, to]) => at >= from && at < to)).map((m) => m.element);
    for (const { element } of this.all) {
      if (on.includes(element)) {
        // Of a chapter and the chapters in it the smallest is what is shown.
        const holds = on.some((other) => other !== element && element.contains(other));
        if (holds) element.removeAttribute("aria-current");
        else element.setAttribute("aria-current", "true");
      } else {
        element.removeAttribute("aria-current");
      }
    }
    this.say(on);
    if (playing) this.follow(on.find((e) => e.parentElement === this.lines && !e.classList.contains("part")));
  }

  private say(on: HTMLElement[]): void {
    const chapter = on.filter((e) => "chapter" in e.dataset).map((e) => e.querySelector(".called")!.textContent);
    const lines = on.filter((e) => e.parentElement === this.lines && !e.classList.contains("part")).map((e) => e.querySelector(".words")!.textContent!.trim().replace(/\s+/g, " "));
    const words = [chapter.join(", "), ...lines].filter((w) => w !== "").join(" · ");
    this.now.hidden = words === "";
    if (this.now.textContent !== words) this.now.textContent = words;
  }

  // Only where the page has a box of its own to move in: nothing else of the room moves by itself.
  private follow(line: HTMLElement | undefined): void {
    const box = this.lines;
    if (!line || !box || box.scrollHeight <= box.clientHeight || getComputedStyle(box).overflowY === "visible") return;
    const [stands, frame] = [line.getBoundingClientRect(), box.getBoundingClientRect()];
    // The box may reach below the window.
    if (stands.top >= frame.top && stands.bottom <= Math.min(frame.bottom, innerHeight)) return;
    box.scrollTop += stands.top - frame.top - box.clientHeight / 3;
  }
}

function spans(told: string): [number, number][] {
  return told.split(" ").map((span) => span.split("-").map(Number) as [number, number]);
}

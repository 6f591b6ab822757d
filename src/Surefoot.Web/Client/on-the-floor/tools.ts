import { button, make } from "../dom.ts";
import type { Dance } from "./dance.ts";

/** Counts a minute that can be chosen, and how far one press goes. */
export const tempos = { slowest: 40, fastest: 240, step: 4 } as const;

/** The line at the foot of the screen: what is taught, how fast, again and again or once. */
export class Tools {
  private readonly bites: HTMLSelectElement;
  private readonly tempo = make("output", { class: "tempo", "aria-label": "Counts a minute" });
  private readonly loop: HTMLButtonElement;
  private readonly play: HTMLButtonElement;

  constructor(parent: HTMLElement, dance: Dance, act: { bite(n: number): void; faster(by: number): void; loop(): void; play(): void }) {
    this.bites = make("select", { "aria-label": "What is taught" }, ...dance.bites.map((b, i) => make("option", { value: String(i) }, b.name)));
    this.bites.addEventListener("change", () => act.bite(Number(this.bites.value)));
    this.loop = button("Again and again", act.loop, { "aria-pressed": "true", "aria-keyshortcuts": "L" });
    this.play = button("Count", act.play, { class: "play", "aria-keyshortcuts": "P" });
    parent.append(
      this.bites,
      make("span", { class: "speed", role: "group", "aria-label": "Tempo" },
        button("−", () => act.faster(-tempos.step), { "aria-label": "Slower", "aria-keyshortcuts": "-" }), this.tempo,
        button("+", () => act.faster(tempos.step), { "aria-label": "Faster", "aria-keyshortcuts": "+" })),
      this.play, this.loop,
    );
  }

  show(bite: number, tempo: number, loop: boolean, playing: boolean): void {
    this.bites.value = String(bite);
    this.tempo.textContent = String(tempo);
    this.loop.setAttribute("aria-pressed", String(loop));
    this.play.textContent = playing ? "Stop" : "Count";
  }
}

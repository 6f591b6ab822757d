import { button, make } from "../dom.ts";
import { fastest, slowest } from "./clock.ts";
import { told } from "./keys.ts";
import type { Motion, Role } from "surefoot-viewer/motion.ts";
import { Stretches } from "./stretches.ts";

/** What somebody does with the controls. */
export interface Hands {
  toggle: () => void;
  step: (by: 1 | -1) => void;
  begin: () => void;
  scrub: (count: number) => void;
  speed: (hundredths: number) => void;
  stretch: () => void;
  who: (role: string) => void;
}

/** The player's buttons, sliders and lists. They know nothing of dancing or of time. */
export class Controls {
  readonly scrub = make("input", { type: "range", min: "0", step: "any", value: "0", "aria-label": "Count of the repeat" });
  readonly speed = make("input", { type: "range", min: String(slowest), max: String(fastest), step: "5", value: "100", "aria-label": "Speed, per cent of the tempo" });
  readonly stretches: Stretches;
  readonly root: HTMLElement;
  private readonly speedText = make("output");
  private readonly who = make("select", { "aria-label": "Show both, or one of them larger" });
  private readonly play: HTMLButtonElement;

  constructor(hands: Hands) {
    this.stretches = new Stretches(hands.stretch);
    this.play = button("Play", hands.toggle, { class: "play" });
    this.root = make("div", { class: "controls" },
      make("div", { class: "transport" },
        button("Start", hands.begin),
        button("Back", () => hands.step(-1), { "aria-label": "One count back" }),
        this.play,
        button("Next", () => hands.step(1), { "aria-label": "Next count" }),
      ),
      this.scrub,
      make("div", { class: "settings" },
        make("label", {}, "Speed ", this.speed, this.speedText),
        make("label", {}, "Show ", this.who),
        make("label", { class: "stretch" }, "Repeat ", this.stretches.choice),
        this.stretches.range,
      ),
      told(),
    );
    this.scrub.addEventListener("input", () => hands.scrub(Number(this.scrub.value)));
    this.speed.addEventListener("input", () => hands.speed(Number(this.speed.value)));
    this.who.addEventListener("change", () => hands.who(this.who.value));
  }

  offer(motion: Motion): void {
    this.scrub.max = String(motion.file.counts);
    this.stretches.offer(motion);
    this.who.replaceChildren(make("option", { value: "" }, "both"), ...motion.roles.map((r) => make("option", { value: r }, motion.called(r))));
    this.who.closest("label")!.hidden = motion.roles.length < 2;
  }

  plays(playing: boolean): void {
    const text = playing ? "Pause" : "Play";
    if (this.play.textContent !== text) this.play.textContent = text;
  }

  showSpeed(hundredths: number): void {
    this.speed.value = String(hundredths);
    this.speedText.textContent = `${hundredths} %`;
  }

  showWho(role: Role | undefined): void {
    this.who.value = role ?? "";
  }

  /** The next of both, lead and follow. */
  another(): string {
    this.who.selectedIndex = (this.who.selectedIndex + 1) % this.who.options.length;
    return this.who.value;
  }
}

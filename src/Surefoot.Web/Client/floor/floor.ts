import { button, make } from "../dom.ts";
import { Clock, fastest, slowest } from "./clock.ts";
import { Motion, type MotionFile, type Role } from "./motion.ts";
import { Picture } from "./picture.ts";
import { spoken, wordsAt } from "./words.ts";

/** Told whenever the count on which somebody does something becomes another one. */
export interface FloorEars {
  count?: (at: number) => void;
}

/** A floor with players' controls. It takes one motion file and knows nothing else. */
export class Floor {
  private readonly clock = new Clock();
  private readonly canvas = make("canvas", { role: "img", "aria-label": "The dancers from above", tabindex: "0", class: "floor-picture" });
  private readonly picture: Picture;
  private readonly countText = make("strong", { class: "count" });
  private readonly partText = make("span", { class: "part" });
  private readonly roleText = make("dl", { class: "roles" });
  private readonly holdText = make("span", { class: "hold" });
  private readonly heard = make("p", { class: "heard", "aria-live": "polite" });
  private readonly playButton: HTMLButtonElement;
  private readonly scrub = make("input", { type: "range", min: "0", step: "any", value: "0", "aria-label": "Count of the repeat" });
  private readonly speed = make("input", { type: "range", min: String(slowest), max: String(fastest), step: "5", value: "100", "aria-label": "Speed in hundredths of the tempo" });
  private readonly speedText = make("output");
  private readonly loop = make("select", { "aria-label": "Repeat" });
  private readonly who = make("select", { "aria-label": "Show both, or one of them larger" });
  private readonly from = make("input", { type: "number", min: "1", step: "1", "aria-label": "First count of the range" });
  private readonly to = make("input", { type: "number", min: "1", step: "1", "aria-label": "Last count of the range" });
  private readonly range = make("span", { class: "range", hidden: "" }, "counts ", this.from, " to ", this.to);
  private readonly still = matchMedia("(prefers-reduced-motion: reduce)");
  private readonly watch: ResizeObserver;
  private readonly look = () => {
    this.picture.recolour();
    this.draw();
  };
  private motion: Motion | undefined;
  private only: Role | undefined;
  private last = 0;
  private stop = NaN;
  private frame = 0;
  /** Frames drawn while playing, for whoever measures. */
  frames = 0;

  constructor(private readonly root: HTMLElement, private readonly ears: FloorEars = {}) {
    this.playButton = button("Play", () => this.toggle(), { class: "play" });
    const words = make("div", { class: "now" }, this.countText, make("p", { class: "where" }, this.partText, this.holdText), this.roleText);
    const controls = make("div", { class: "controls" },
      make("div", { class: "transport" },
        button("Start", () => this.goTo(this.clock.stretch.from)),
        button("Back", () => this.step(-1), { "aria-label": "One count back" }),
        this.playButton,
        button("On", () => this.step(1), { "aria-label": "One count on" }),
      ),
      this.scrub,
      make("div", { class: "settings" },
        make("label", {}, "Speed ", this.speed, this.speedText),
        make("label", {}, "Repeat ", this.loop),
        this.range,
        make("label", {}, "Show ", this.who),
      ),
      make("details", { class: "keys" }, make("summary", {}, "Keys"), "Space plays and pauses, ← and → step by count, Home and End go to the ends, + and − change the speed, L takes the next part, W looks at lead, follow or both."),
    );
    root.classList.add("floor-player");
    root.append(this.canvas, words, controls, this.heard);
    this.picture = new Picture(this.canvas);
    this.scrub.addEventListener("input", () => this.goTo(Number(this.scrub.value), false));
    this.speed.addEventListener("input", () => this.setSpeed(Number(this.speed.value)));
    this.loop.addEventListener("change", () => this.setLoop());
    this.from.addEventListener("change", () => this.setLoop());
    this.to.addEventListener("change", () => this.setLoop());
    this.who.addEventListener("change", () => this.setWho(this.who.value));
    root.addEventListener("keydown", (key) => this.key(key));
    document.addEventListener("surefoot-look", this.look);
    this.watch = new ResizeObserver(() => {
      this.picture.resize();
      this.draw();
    });
    this.watch.observe(this.canvas);
    this.setSpeed(100);
  }

  get at(): number {
    return this.clock.at;
  }

  /** Shows a dance; the place in it stays where there still is one. */
  load(file: MotionFile): void {
    const motion = new Motion(file);
    const before = this.motion?.file.parts.map((p) => `${p.label}${p.from}${p.counts}`).join();
    this.motion = motion;
    this.picture.load(motion);
    this.clock.tempo = file.tempo;
    this.clock.at = Math.min(this.clock.at, file.counts);
    this.scrub.max = this.from.max = this.to.max = String(file.counts);
    if (file.parts.map((p) => `${p.label}${p.from}${p.counts}`).join() !== before) this.offerParts(motion);
    this.offerRoles(motion);
    this.setLoop();
    this.stop = NaN;
    this.draw();
  }

  /** Goes to a count; who asks for it from outside is not told of it. */
  goTo(count: number, quiet = false): void {
    if (!this.motion) return;
    this.clock.at = Math.min(Math.max(count, 0), this.motion.file.counts);
    this.draw(quiet);
    if (!this.clock.playing) this.hear();
  }

  close(): void {
    this.pause();
    this.watch.disconnect();
    document.removeEventListener("surefoot-look", this.look);
    this.root.replaceChildren();
  }

  toggle(): void {
    if (this.clock.playing) this.pause();
    else this.play();
  }

  private play(): void {
    if (!this.motion || this.clock.stretch.to <= this.clock.stretch.from) return;
    this.clock.play();
    this.playButton.textContent = "Pause";
    this.last = performance.now();
    const tick = (now: number) => {
      if (!this.clock.playing) return;
      // A window that was away for long does not jump ahead.
      this.clock.pass(Math.min((now - this.last) / 1000, 0.25));
      this.last = now;
      this.frames++;
      this.draw();
      this.frame = requestAnimationFrame(tick);
    };
    this.frame = requestAnimationFrame(tick);
  }

  private pause(): void {
    cancelAnimationFrame(this.frame);
    this.clock.playing = false;
    this.playButton.textContent = "Play";
    this.draw();
    this.hear();
  }

  private step(by: 1 | -1): void {
    if (!this.motion) return;
    if (this.clock.playing) this.pause();
    this.goTo(by > 0 ? this.motion.next(this.clock.at) : this.motion.previous(this.clock.at));
  }

  private setSpeed(speed: number): void {
    this.clock.speed = Math.min(Math.max(speed, slowest), fastest);
    this.speed.value = String(this.clock.speed);
    this.speedText.textContent = `${this.clock.speed} %`;
  }

  private setLoop(): void {
    const motion = this.motion;
    if (!motion) return;
    const part = motion.file.parts[Number(this.loop.value)];
    this.range.hidden = this.loop.value !== "range";
    if (this.loop.value === "range") {
      const from = Math.min(Math.max(Number(this.from.value) || 1, 1), motion.file.counts);
      const to = Math.min(Math.max(Number(this.to.value) || motion.file.counts, from), motion.file.counts);
      this.from.value = String(from);
      this.to.value = String(to);
      this.clock.stretch = { from: from - 1, to };
    } else if (this.loop.value !== "all" && part) {
      // Everybody sets out for a count one before it is done.
      this.clock.stretch = { from: part.from - 1, to: part.from - 1 + part.counts };
    } else {
      this.clock.stretch = { from: 0, to: motion.file.counts };
    }
    const { from, to } = this.clock.stretch;
    if (this.loop.value !== "all" && (this.clock.at < from || this.clock.at > to)) this.goTo(from);
  }

  private setWho(role: string): void {
    this.only = this.motion?.roles.find((r) => r === role);
    this.who.value = this.only ?? "";
    this.draw();
  }

  private offerParts(motion: Motion): void {
    const parts = motion.file.parts.map((p, i) => {
      const name = [p.label || `Counts from ${p.from}`, p.name].filter((w) => w).join(": ");
      return make("option", { value: String(i) }, p.mirrored ? `${name} (other foot)` : name);
    });
    const kept = this.loop.value;
    this.loop.replaceChildren(make("option", { value: "all" }, "the whole dance"), ...parts, make("option", { value: "range" }, "from count to count"));
    this.loop.value = kept;
    if (this.loop.selectedIndex < 0) this.loop.value = "all";
  }

  private offerRoles(motion: Motion): void {
    this.who.replaceChildren(make("option", { value: "" }, "both"), ...motion.roles.map((r) => make("option", { value: r }, motion.called(r))));
    this.who.closest("label")!.hidden = motion.roles.length < 2;
    this.setWho(this.only ?? "");
  }

  private key(key: KeyboardEvent): void {
    const target = key.target as HTMLElement;
    if (key.ctrlKey || key.metaKey || key.altKey || target.matches("select, input[type=number]")) return;
    const onRange = target.matches("input[type=range]");
    const acts: Record<string, (() => void) | undefined> = {
      " ": target.matches("button") ? undefined : () => this.toggle(),
      ArrowLeft: target === this.speed ? undefined : () => this.step(-1),
      ArrowRight: target === this.speed ? undefined : () => this.step(1),
      Home: onRange && target === this.speed ? undefined : () => this.goTo(this.clock.stretch.from),
      End: onRange && target === this.speed ? undefined : () => this.goTo(this.clock.stretch.to),
      "+": () => this.setSpeed(this.clock.speed + 5),
      "-": () => this.setSpeed(this.clock.speed - 5),
      l: () => {
        this.loop.selectedIndex = (this.loop.selectedIndex + 1) % Math.max(this.loop.options.length - 1, 1);
        this.setLoop();
      },
      w: () => {
        this.who.selectedIndex = (this.who.selectedIndex + 1) % this.who.options.length;
        this.setWho(this.who.value);
      },
    };
    const act = acts[key.key.length === 1 ? key.key.toLowerCase() : key.key];
    if (!act) return;
    key.preventDefault();
    act();
  }

  private stopAt(): number {
    return this.motion?.stops.findLast((s) => s <= this.clock.at + 1e-6) ?? 0;
  }

  private draw(quiet = false): void {
    const motion = this.motion;
    if (!motion) return;
    const stop = this.stopAt();
    // Who wants less motion sees the dance count by count.
    this.picture.draw(this.still.matches && this.clock.playing ? stop : this.clock.at, this.only);
    this.scrub.value = String(this.clock.at);
    if (stop === this.stop) return;
    const first = Number.isNaN(this.stop);
    this.stop = stop;
    this.say(motion);
    if (!first && !quiet) this.ears.count?.(stop);
  }

  private say(motion: Motion): void {
    const words = wordsAt(motion, this.clock.at);
    this.countText.textContent = words.count;
    this.partText.textContent = words.part;
    this.holdText.textContent = words.hold;
    this.roleText.replaceChildren(...words.roles.map((r) => make("div", {}, make("dt", {}, r.called), make("dd", {}, r.words))));
    this.scrub.setAttribute("aria-valuetext", words.count === "0" ? "start" : `count ${words.count}${words.part ? `, ${words.part}` : ""}`);
    this.canvas.setAttribute("aria-label", `The dancers from above. ${spoken(words)}`);
  }

  /** Spoken only when somebody stands still at a count: while it plays, words would pile up. */
  private hear(): void {
    if (this.motion) this.heard.textContent = spoken(wordsAt(this.motion, this.clock.at));
  }
}

import { make } from "../dom.ts";
import { Clock, fastest, slowest } from "./clock.ts";
import { Controls } from "./controls.ts";
import { keys } from "./keys.ts";
import { Motion, type MotionFile, type Role } from "surefoot-viewer/motion.ts";
import { first, next, type Onward } from "surefoot-viewer/onward.ts";
import { Picture } from "./picture.ts";
import { Said } from "./said.ts";
import { readyFor, spoken, wordsAt, type CountWords } from "./words.ts";

/** Told whenever the count on which somebody does something becomes another one. */
export interface FloorEars {
  count?: (at: number) => void;
}

/** A floor with players' controls. It takes one motion file and knows nothing else. */
export class Floor {
  private readonly clock = new Clock();
  private readonly canvas = make("canvas", { role: "img", "aria-label": "The dancers from above", tabindex: "0", class: "floor-picture" });
  private readonly picture: Picture;
  private readonly said = new Said();
  private readonly heard = make("p", { class: "heard", "aria-live": "polite" });
  private readonly controls: Controls;
  private readonly still = matchMedia("(prefers-reduced-motion: reduce)");
  private readonly watch: ResizeObserver;
  private readonly look = () => {
    this.picture.recolour();
    this.draw();
  };
  private motion: Motion | undefined;
  private only: Role | undefined;
  /** Where this repeat begins: the couple goes on from where the one before brought it. */
  private onward: Onward = first;
  private last = 0;
  private stop = NaN;
  /** How often what is chosen has begun again. */
  private rounds = 0;
  /** Whether they stand where what is chosen sets out, and were not sent to that count. */
  private ready = false;
  private frame = 0;
  /** Frames drawn while playing, for whoever measures. */
  frames = 0;

  constructor(private readonly root: HTMLElement, private readonly ears: FloorEars = {}) {
    const begin = () => this.begin();
    const toggle = () => this.toggle();
    const step = (by: 1 | -1) => this.step(by);
    this.controls = new Controls({
      toggle, step, begin,
      scrub: (count) => this.goTo(count),
      speed: (hundredths) => this.setSpeed(hundredths),
      stretch: () => this.setStretch(),
      who: (role) => this.setWho(role),
    });
    keys(root, this.controls.speed, {
      toggle, step, begin,
      end: () => this.goTo(this.clock.stretch.to),
      faster: (by) => this.setSpeed(this.clock.speed + 5 * by),
      part: () => {
        this.controls.stretches.another();
        this.setStretch();
      },
      who: () => this.setWho(this.controls.another()),
    });
    root.classList.add("floor-player");
    root.append(this.canvas, this.said.root, this.controls.root, this.heard);
    this.picture = new Picture(this.canvas);
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
    this.motion = motion;
    this.onward = first;
    this.picture.load(motion);
    this.clock.tempo = file.tempo;
    this.clock.at = Math.min(this.clock.at, file.counts);
    this.controls.offer(motion);
    this.setWho(this.only ?? "");
    this.setStretch(false);
    this.stop = NaN;
    this.draw();
  }

  /** Goes to a count of this repeat; who asks for it from outside is not told of it. */
  goTo(count: number, quiet = false): void {
    this.turnTo(count, quiet);
    if (this.motion && !this.clock.playing) this.hear();
  }

  /** Whether it stands still, so that somebody may turn it to another count. */
  get stands(): boolean {
    return !this.clock.playing;
  }

  /** Goes to a count without a word of it: whoever writes there knows what she writes. */
  turnTo(count: number, quiet = true): void {
    if (!this.motion) return;
    this.clock.at = Math.min(Math.max(count, 0), this.motion.file.counts);
    this.ready = false;
    this.rounds = 0;
    this.draw(quiet);
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

  /** To where the first repeat begins. */
  private begin(): void {
    this.onward = first;
    if (this.motion) this.setOut();
  }

  /** To where what is chosen sets out: no count of it is danced yet, and the one before is not meant. */
  private setOut(): void {
    this.clock.at = this.clock.stretch.from;
    this.ready = !this.controls.stretches.whole;
    this.rounds = 0;
    this.stop = NaN;
    this.draw();
    this.ears.count?.(this.meant());
    if (!this.clock.playing) this.hear();
  }

  private play(): void {
    if (!this.motion || this.clock.stretch.to <= this.clock.stretch.from) return;
    this.again(this.clock.play());
    this.controls.plays(true);
    this.last = performance.now();
    const tick = (now: number) => {
      if (!this.clock.playing) return;
      // A window that was away for long does not jump ahead.
      this.again(this.clock.pass(Math.min((now - this.last) / 1000, 0.25)));
      this.last = now;
      this.frames++;
      this.draw();
      this.frame = requestAnimationFrame(tick);
    };
    this.frame = requestAnimationFrame(tick);
  }

  /** The whole dance goes on from where it has come to, as on a floor; a part of it begins again where it began. */
  private again(times: number): void {
    this.rounds += times;
    const step = this.controls.stretches.whole ? this.motion?.onward : undefined;
    for (; times > 0 && step; times--) this.onward = next(this.onward, step);
  }

  private pause(): void {
    cancelAnimationFrame(this.frame);
    this.clock.playing = false;
    this.controls.plays(false);
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
    this.controls.showSpeed(this.clock.speed);
  }

  /** @param chosen Whether somebody has just chosen what is danced over and over. */
  private setStretch(chosen = true): void {
    if (!this.motion) return;
    const { from, to } = (this.clock.stretch = this.controls.stretches.chosen(this.motion));
    if (this.controls.stretches.whole) return;
    this.onward = first;
    if (chosen) {
      this.ready = false;
      this.rounds = 0;
    }
    if (this.clock.at < from || this.clock.at > to || (chosen && this.clock.at === from)) this.setOut();
    else this.draw();
  }

  private setWho(role: string): void {
    this.only = this.motion?.roles.find((r) => r === role);
    this.controls.showWho(this.only);
    this.draw();
  }

  private stopAt(): number {
    return this.motion?.stops.findLast((s) => s <= this.clock.at + 1e-6) ?? 0;
  }

  private draw(quiet = false): void {
    const motion = this.motion;
    if (!motion) return;
    const stop = this.stopAt();
    // Who wants less motion sees the dance count by count.
    this.picture.draw(this.still.matches && this.clock.playing ? stop : this.clock.at, this.only, this.onward);
    this.controls.scrub.value = String(this.clock.at);
    if (stop === this.stop) return;
    const isFirst = Number.isNaN(this.stop);
    this.stop = stop;
    this.say(motion);
    if (!isFirst && !quiet) this.ears.count?.(this.meant());
  }

  // A part that is danced over and over comes from its own last count, and the first time from none.
  private setsOut(): boolean {
    return !this.controls.stretches.whole && (this.clock.playing || this.ready) && this.stopAt() <= this.clock.stretch.from + 1e-6;
  }

  /** The count whose words are meant. */
  private meant(): number {
    if (!this.setsOut()) return this.stopAt();
    return this.rounds > 0 ? this.clock.stretch.to : this.motion?.next(this.clock.stretch.from) ?? 0;
  }

  private words(motion: Motion): CountWords {
    if (!this.setsOut()) return wordsAt(motion, this.clock.at);
    return this.rounds > 0 ? wordsAt(motion, this.clock.stretch.to) : readyFor(motion, this.meant());
  }

  private say(motion: Motion): void {
    const words = this.words(motion);
    this.said.show(words);
    this.controls.scrub.setAttribute("aria-valuetext", words.count === "0" ? "start" : `count ${words.count}${words.part ? `, ${words.part}` : ""}`);
    // For whoever measures: which repeat this is, and the middle of the floor that is looked at on this count, in metres.
    const { x, y } = this.picture.middle(this.stop, this.onward);
    this.canvas.dataset.round = String(this.onward.times);
    this.canvas.dataset.middle = `${x.toFixed(4)} ${y.toFixed(4)}`;
    this.canvas.setAttribute("aria-label", `The dancers from above. ${spoken(words)}`);
  }

  /** Spoken only when somebody stands still at a count: while it plays, words would pile up. */
  private hear(): void {
    if (this.motion) this.heard.textContent = spoken(this.words(this.motion));
  }
}

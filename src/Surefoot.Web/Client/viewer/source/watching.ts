/** A dance that is being watched: everything the buttons and keys turn, and who is told when it changed. */
import { Clock } from "./clock.ts";
import type { Motion } from "./motion.ts";
import { Sound } from "./sound.ts";
import { usualView, type View } from "./view.ts";
import { saidOn } from "./words.ts";

export class Watching {
  readonly clock: Clock;
  readonly sound: Sound;
  readonly view: View = usualView();
  countIn: 0 | 4 | 8 = 0;
  private readonly told: (() => void)[] = [];

  constructor(readonly motion: Motion) {
    this.clock = new Clock(() => performance.now() / 1000, motion.file.tempo, motion.counts);
    const beats = Number(motion.file.meter.split("/")[0]) || 4;
    this.sound = new Sound(this.clock, (line) => {
      const { at, countIn } = this.clock.place(line - 1e-6);
      const { focus } = this.view;
      // The last count before the dance is count 0, the one before it -1.
      if (countIn !== null) return { accent: (this.countIn + countIn) % beats === 0, say: saidOn(motion, focus, countIn + 1, this.countIn + countIn < 0 ? undefined : String(this.countIn + countIn + 1)) };
      const within = this.within(Math.round(at));
      const number = motion.stepOf(focus === "both" ? motion.roles[0]! : focus, within)?.count.replace("&", "and");
      // On the counts before a figure its call takes the place of the number.
      return { accent: (Math.max(within, 1) - 1) % beats === 0, say: within === 0 ? undefined : saidOn(motion, focus, within, number) };
    });
  }

  onChange(tell: () => void): void {
    this.told.push(tell);
  }

  changed(): void {
    for (const tell of this.told) tell();
  }

  /** A count of the repeat; the end of the last count still belongs to it. */
  within(at: number): number {
    const { counts } = this.motion;
    if (counts <= 0) return 0;
    const rest = at % counts;
    return rest < 1e-6 && at > 0 ? counts : rest;
  }

  async play(): Promise<void> {
    await this.sound.wake();
    this.clock.play(this.countIn);
    this.sound.start();
    this.changed();
  }

  pause(): void {
    this.clock.pause();
    this.sound.stop();
    this.changed();
  }

  async toggle(): Promise<void> {
    if (this.clock.playing) this.pause();
    else await this.play();
  }

  seek(at: number): void {
    this.sound.stop();
    this.clock.seek(Math.max(0, at));
    this.changed();
  }

  /** To the next or the last moment at which somebody does something. */
  step(forward: boolean): void {
    const { at } = this.clock.now();
    const { counts } = this.motion;
    const whole = counts > 0 ? Math.floor(at / counts + 1e-9) * counts : 0;
    const stops = [...new Set([0, ...this.motion.file.steps.map((s) => s.at)])].sort((a, b) => a - b);
    const here = at - whole;
    const next = forward ? stops.find((s) => s > here + 1e-6) : stops.findLast((s) => s < here - 1e-6);
    if (next !== undefined) this.seek(whole + next);
    else this.seek(forward ? whole + counts + (stops[1] ?? 0) : whole > 0 ? whole - counts + (stops.at(-1) ?? 0) : 0);
  }
}

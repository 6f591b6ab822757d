/** Slowest and fastest that a dance is shown, in hundredths of its tempo. */
export const slowest = 25, fastest = 150;

/** A stretch of the repeat, in counts from where everybody sets out. */
export interface Stretch { from: number; to: number }

/** Where in the repeat we are, and how time moves it. Knows nothing of pictures. */
export class Clock {
  at = 0;
  playing = false;
  /** In hundredths of the dance's tempo. */
  speed = 100;
  stretch: Stretch = { from: 0, to: 0 };
  tempo = 100;

  play(): void {
    if (this.at < this.stretch.from - 1e-6 || this.at >= this.stretch.to - 1e-6) this.at = this.stretch.from;
    this.playing = true;
  }

  /** Lets time pass; at the end of the stretch it begins again. */
  pass(seconds: number): void {
    if (!this.playing) return;
    this.at += (seconds * this.tempo * this.speed) / 6000;
    const length = this.stretch.to - this.stretch.from;
    if (this.at >= this.stretch.to) this.at = length > 0 ? this.stretch.from + ((this.at - this.stretch.from) % length) : this.stretch.from;
  }
}

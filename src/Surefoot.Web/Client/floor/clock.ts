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

  /** Begins to play, at the beginning of the stretch when it was at its end; tells how many times it has begun again. */
  play(): number {
    this.playing = true;
    const before = this.at < this.stretch.from - 1e-6, over = this.at >= this.stretch.to - 1e-6;
    if (before || over) this.at = this.stretch.from;
    return over ? 1 : 0;
  }

  /** Lets time pass; at the end of the stretch it begins again. Tells how many times it did. */
  pass(seconds: number): number {
    if (!this.playing) return 0;
    this.at += (seconds * this.tempo * this.speed) / 6000;
    const length = this.stretch.to - this.stretch.from;
    if (this.at < this.stretch.to || length <= 0) return 0;
    const times = Math.floor((this.at - this.stretch.from) / length);
    this.at -= times * length;
    return times;
  }
}

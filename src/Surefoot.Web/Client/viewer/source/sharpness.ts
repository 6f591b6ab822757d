/** Frames over which one looks before anything is changed, the time in milliseconds that the middle one of them may take, and that of one that comes late. Working values. */
const looks = 30, smooth = 18.5, late = 25;

/** How many of them may be late: one is somebody else's. */
const allowed = 1;

/** Least share of the screen's points that is drawn, each way, and what becomes of the share where some frames are late. Working values. */
const least = 0.4, fewer = 0.87;

/**
 * How sharp a moving picture is drawn: where a machine does not keep up, fewer points, which the browser spreads over
 * the same place. A picture that stands is always drawn whole.
 */
export class Sharpness {
  private learned = 1;
  private moving = false;
  private last = 0;
  private readonly spans: number[] = [];

  /** Share of the points, each way. */
  get share(): number {
    return this.moving ? this.learned : 1;
  }

  /**
   * Told of every frame.
   * @param time In milliseconds.
   * @returns True when the share is another one now.
   */
  frame(time: number, moving: boolean): boolean {
    const before = this.share;
    if (moving !== this.moving) {
      this.moving = moving;
      this.spans.length = 0;
      // What was slow the last time may be quicker now.
      if (moving) this.learned = Math.min(1, this.learned / fewer);
    } else if (moving) {
      this.spans.push(time - this.last);
      if (this.spans.length >= looks) {
        const middle = this.spans.sort((a, b) => a - b)[looks >> 1]!;
        const times = middle > smooth ? Math.max(0.7, Math.sqrt(smooth / middle)) : this.spans[looks - 1 - allowed]! > late ? fewer : 1;
        this.learned = Math.max(least, this.learned * times);
        this.spans.length = 0;
      }
    }

    this.last = time;
    return this.share !== before;
  }
}

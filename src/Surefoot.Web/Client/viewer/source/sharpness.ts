/** Frames over which one looks before anything is changed, and their mean in milliseconds that is still smooth. Working values. */
const looks = 20, smooth = 18.5;

/** Least share of the screen's points that is drawn, each way. */
const least = 0.5;

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
    } else if (moving) {
      this.spans.push(time - this.last);
      if (this.spans.length >= looks) {
        // A single long frame is somebody else's.
        const middle = this.spans.sort((a, b) => a - b)[looks >> 1]!;
        if (middle > smooth) this.learned = Math.max(least, this.learned * Math.max(0.7, Math.sqrt(smooth / middle)));
        this.spans.length = 0;
      }
    }

    this.last = time;
    return this.share !== before;
  }
}

/** Slowest and fastest that a dance is shown, in hundredths of its tempo. */
export const slowest = 25, fastest = 150;

/** A stretch of the repeat that comes again and again, in counts from where everybody sets out for it. */
export interface Stretch { from: number; to: number }

/** Where we are: a count of the dance, or one of those that are counted before it begins. */
export interface Now { at: number; countIn: number | null }

/**
 * Where in the dance we are, told from a clock and never added up, so that it cannot drift: counts lie on a line of
 * their own that only goes forward; the stretch and the counting-in say which place of the dance each of them is.
 */
export class Clock {
  private playing_ = false;
  private speed_ = 100;
  private stretch_: Stretch | null = null;
  /** Of the line of counts: where it stood when the clock showed a time. */
  private anchor = { count: 0, time: 0 };
  /** Where on the line the dance itself begins, and at which of its counts. */
  private begin = { count: 0, at: 0 };

  /** @param seconds The time that everything else goes by as well; that of the sound where there is any. */
  constructor(private seconds: () => number, readonly tempo: number, readonly counts: number) {}

  get playing(): boolean {
    return this.playing_;
  }

  get speed(): number {
    return this.speed_;
  }

  get stretch(): Stretch | null {
    return this.stretch_;
  }

  /** Counts a second. */
  get rate(): number {
    return (this.tempo * this.speed_) / 6000;
  }

  /** On the line of counts. */
  get line(): number {
    return this.playing_ ? this.anchor.count + (this.seconds() - this.anchor.time) * this.rate : this.anchor.count;
  }

  now(): Now {
    return this.place(this.line);
  }

  /** Which place of the dance a count of the line is. */
  place(line: number): Now {
    const since = line - this.begin.count;
    if (since < 0) return { at: this.begin.at, countIn: Math.floor(since) };
    const at = this.begin.at + since;
    if (!this.stretch_ || at < this.stretch_.to) return { at, countIn: null };
    const { from, to } = this.stretch_;
    return { at: from + ((at - from) % (to - from)), countIn: null };
  }

  /** When a count of the line is, by the clock. */
  timeOf(line: number): number {
    return this.anchor.time + (line - this.anchor.count) / this.rate;
  }

  /** @param countIn Counts that are counted before anybody moves. */
  play(countIn = 0): void {
    if (this.playing_) return;
    const { at } = this.now();
    this.begin = { count: 0, at: this.inside(at) ? at : this.stretch_!.from };
    this.anchor = { count: -countIn, time: this.seconds() };
    this.playing_ = true;
  }

  pause(): void {
    this.seek(this.now().at);
  }

  /** Goes to a count and stays there, or goes on from there. */
  seek(at: number): void {
    this.begin = { count: 0, at };
    this.anchor = { count: 0, time: this.seconds() };
    this.playing_ = false;
  }

  setSpeed(speed: number): void {
    const line = this.line;
    this.anchor = { count: line, time: this.seconds() };
    this.speed_ = Math.min(Math.max(speed, slowest), fastest);
  }

  setStretch(stretch: Stretch | null): void {
    const { at } = this.now();
    const playing = this.playing_;
    this.seek(at);
    this.stretch_ = stretch && stretch.to > stretch.from ? stretch : null;
    if (playing) this.play();
    // Whoever chooses a part wants to see it, and not what stood there before.
    else if (!this.inside(at)) this.seek(this.stretch_!.from);
  }

  // The end of a stretch is its beginning again.
  private inside(at: number): boolean {
    return !this.stretch_ || (at >= this.stretch_.from - 1e-6 && at < this.stretch_.to - 1e-6);
  }

  /** Another clock from now on; nothing moves by it. */
  goBy(seconds: () => number): void {
    const line = this.line;
    this.seconds = seconds;
    this.anchor = { count: line, time: seconds() };
  }
}

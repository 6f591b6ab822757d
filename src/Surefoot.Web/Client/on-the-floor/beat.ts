/** Counts in time. Each is told from when the first one was, so that lateness never adds up. */
export class Beat {
  private timer = 0;
  private started = 0;
  private told = 0;
  private tempo = 100;

  /** @param tell Called on every count; false ends it. */
  constructor(private readonly tell: () => boolean) {}

  get running(): boolean {
    return this.timer !== 0;
  }

  /** @param tempo Counts a minute. The first count is told at once. */
  start(tempo: number): void {
    this.stop();
    this.tempo = tempo;
    this.started = performance.now();
    this.told = 0;
    this.look();
  }

  /** Another tempo from the count that was told last. */
  change(tempo: number): void {
    if (this.running) this.started = performance.now() - ((performance.now() - this.started) * this.tempo) / tempo;
    this.tempo = tempo;
  }

  stop(): void {
    window.clearTimeout(this.timer);
    this.timer = 0;
  }

  private look(): void {
    const each = 60_000 / this.tempo;
    // A tablet that slept has missed counts; it goes on from now and does not catch up.
    if (performance.now() - this.started > (this.told + 2) * each) this.started = performance.now() - this.told * each;
    if (performance.now() - this.started >= this.told * each - 1) {
      this.told++;
      if (!this.tell()) {
        this.stop();
        return;
      }
    }
    this.timer = window.setTimeout(() => this.look(), Math.max(0, this.started + this.told * each - performance.now()));
  }
}

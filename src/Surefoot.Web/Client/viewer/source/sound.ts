import type { Clock } from "./clock.ts";

/** Seconds ahead for which clicks are given to the sound card, and between two looks. Working values. */
const ahead = 0.25, look = 60;

/** A click at a time of a sound: higher on the first count of a bar. */
export function click(context: BaseAudioContext, time: number, accent: boolean, to: AudioNode = context.destination): void {
  const tone = context.createOscillator();
  const level = context.createGain();
  tone.frequency.value = accent ? 1760 : 1175;
  // Loud from its very first sample: a soft beginning would be heard late.
  level.gain.setValueAtTime(accent ? 0.5 : 0.32, time);
  level.gain.exponentialRampToValueAtTime(0.0005, time + 0.055);
  tone.connect(level).connect(to);
  tone.start(time);
  tone.stop(time + 0.06);
}

/** What is heard at a count. */
export interface Heard { accent: boolean; say?: string | undefined }

/** Clicks and words in time with the feet. The sound's own clock says where the dance is. */
export class Sound {
  private context: AudioContext | undefined;
  private timer = 0;
  private done = -Infinity;
  clicks = false;
  voice = false;

  /** @param heard What there is to be heard at a count of the clock's line. */
  constructor(private readonly clock: Clock, private readonly heard: (line: number) => Heard) {}

  /** Only after a press of a button do browsers let anything be heard. */
  async wake(): Promise<void> {
    if (!this.clicks && !this.voice) return;
    if (!this.context) {
      const context = new AudioContext({ latencyHint: "interactive" });
      this.context = context;
      await context.resume();
      // What is heard now was given to the card a little earlier.
      this.clock.goBy(() => context.currentTime - lateness(context));
    } else await this.context.resume();
  }

  start(): void {
    this.done = Math.ceil(this.clock.line - 1e-6) - 1;
    window.clearInterval(this.timer);
    this.timer = window.setInterval(() => this.ahead(), look);
    this.ahead();
  }

  stop(): void {
    window.clearInterval(this.timer);
    if (this.voice) window.speechSynthesis?.cancel();
  }

  /** The clicks of so many seconds of playing, as a sound card gets them: handed out bit by bit as the clock goes on. */
  async rendered(seconds: number, samples = 48_000): Promise<Float32Array> {
    const context = new OfflineAudioContext(1, seconds * samples, samples);
    let now = 0;
    this.clock.goBy(() => now);
    this.clock.play();
    this.done = -1;
    for (; now < seconds; now += look / 1000) this.ahead(context);
    this.clock.pause();
    return (await context.startRendering()).getChannelData(0);
  }

  private ahead(card: BaseAudioContext | undefined = this.clicks ? this.context : undefined): void {
    if (!this.clock.playing) return;
    const until = this.clock.line + ahead * this.clock.rate;
    for (let line = Math.max(this.done + 1, Math.ceil(this.clock.line - 0.05)); line <= until; line++) {
      this.done = line;
      const heard = this.heard(line);
      const time = this.clock.timeOf(line);
      if (card) click(card, Math.max(time + lateness(card), card.currentTime), heard.accent);
      if (this.voice && heard.say) this.speak(heard.say, time);
    }
  }

  private speak(words: string, time: number): void {
    const wait = (time - this.clock.timeOf(this.clock.line)) * 1000;
    window.setTimeout(() => {
      if (!this.clock.playing || !window.speechSynthesis) return;
      const said = new SpeechSynthesisUtterance(words);
      said.lang = "en";
      said.rate = Math.min(2, Math.max(1, this.clock.rate * 0.9));
      // Whatever is still being said would come too late.
      window.speechSynthesis.cancel();
      window.speechSynthesis.speak(said);
    }, Math.max(0, wait - 40));
  }
}

// Seconds from handing a sound to the card until it is heard.
const lateness = (card: BaseAudioContext): number => card instanceof AudioContext ? card.outputLatency || card.baseLatency || 0 : 0;

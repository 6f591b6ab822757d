import { button, choice, grouped, pull, toggle } from "./buttons.ts";
import { cameraNames, type CameraName } from "./cameras.ts";
import { fastest, slowest } from "./clock.ts";
import { countsOf } from "./counts.ts";
import type { Role } from "./motion.ts";
import { Film } from "./film.ts";
import { mark, put } from "./put.ts";
import type { Watching } from "./watching.ts";

const cameraWords: Record<CameraName, string> = { back: "from the back", side: "from the side", above: "from above", partner: "partner's eyes", free: "by hand" };

/** The buttons under the picture. */
export class Controls {
  readonly element = document.createElement("div");
  private readonly fresh: (() => void)[] = [];
  /** True while counts that were chosen come again and again, also where a part happens to have the same. */
  private byCounts = false;

  constructor(private readonly watching: Watching, film: Film | undefined, cameras: readonly CameraName[] = cameraNames) {
    this.element.className = "viewer-controls";
    const { clock, view, motion, sound } = watching;
    const both = motion.roles.length > 1;
    const change = (then: () => void) => () => {
      then();
      watching.changed();
    };

    const play = button("Play", "Play", () => void watching.toggle());
    play.className = "viewer-play";
    this.fresh.push(() => {
      const text = clock.playing ? "Pause" : "Play";
      put(play, text);
      mark(play, "title", `${text} (space bar)`);
    });
    this.group("viewer-time", "Time", button("◂", "One step back", () => watching.step(false)), play, button("▸", "One step on", () => watching.step(true)),
      this.kept(pull("Count", 0, motion.counts, 0.25, () => watching.within(clock.now().at), (at) => watching.seek(at), (at) => at < 0.5 ? "start" : `${Math.floor(at + 1e-6)} of ${motion.counts}`)));
    this.group("viewer-pace", "Pace", 
      this.kept(pull("Speed", slowest, fastest, 5, () => clock.speed, (s) => change(() => clock.setSpeed(s))(), (s) => `${s} %`)),
      this.kept(choice("Repeat", this.stretches(), () => this.stretch(), (value) => change(() => this.setStretch(value))())),
      this.range(change),
      this.kept(choice("Count in", [["0", "no"], ["4", "4"], ["8", "8"]], () => String(watching.countIn), (value) => change(() => { watching.countIn = Number(value) as 0 | 4 | 8; })())));
    const words = cameras.filter((c) => both || c !== "partner");
    this.group("viewer-look", "Look",
      this.kept(choice("Seen", words.map((c) => [c, cameraWords[c]]), () => view.cameras[0]!, (c) => change(() => { view.cameras[0] = c as CameraName; })())),
      ...(cameras.length > 1 ? [this.kept(choice("and", [["", "nothing else"], ...words.filter((c) => c !== "free").map((c): [string, string] => [c, cameraWords[c]])], () => view.cameras[1] ?? "", (c) => change(() => { view.cameras = c ? [view.cameras[0]!, c as CameraName] : [view.cameras[0]!]; })()))] : []),
      ...(both ? [this.kept(choice("Who", [["both", "both"], ...motion.roles.map((r): [string, string] => [r, motion.called(r)])], () => view.focus, (r) => change(() => { view.focus = r as Role | "both"; })())),
        this.kept(choice("The other one", [["faint", "faint"], ["hidden", "not shown"]], () => view.others, (o) => change(() => { view.others = o as "faint" | "hidden"; })()))] : []));
    const sounds = (on: boolean, which: "clicks" | "voice"): void => {
      sound[which] = on;
      void sound.wake().then(() => {
        if (clock.playing) sound.start();
        watching.changed();
      });
    };
    this.group("viewer-also", "Also",
      this.kept(toggle("Click", "A click on every count", () => sound.clicks, (on) => sounds(on, "clicks"))),
      this.kept(toggle("Voice", "A voice that counts and calls", () => sound.voice, (on) => sounds(on, "voice"))),
      this.kept(toggle("Mirror", "As in a mirror", () => view.mirror, (on) => change(() => { view.mirror = on; })())),
      this.kept(toggle("Prints", "Footprints of the last counts", () => view.traces, (on) => change(() => { view.traces = on; })())),
      this.kept(toggle("Full floor", motion.file.floor === "track" ? "Twenty-four couples" : "Twenty-four dancers", () => view.crowd, (on) => change(() => { view.crowd = on; })())),
      ...(film ? [this.kept(toggle("Film it", "Film the picture, into a WebM file", () => film.running, (on) => change(() => on ? film.start() : film.stop())()))] : []));
    watching.onChange(() => this.show());
    this.show();
  }

  show(): void {
    for (const renew of this.fresh) renew();
  }

  private group(name: string, says: string, ...members: HTMLElement[]): void {
    const group = document.createElement("div");
    group.className = name;
    group.setAttribute("role", "group");
    group.setAttribute("aria-label", says);
    group.append(...members);
    this.element.append(group);
  }

  private kept<T extends HTMLElement>([element, renew]: [T, () => void]): T {
    this.fresh.push(renew);
    return element;
  }

  // From one count to another, both of them danced.
  private range(change: (then: () => void) => () => void): HTMLElement {
    const { clock, motion } = this.watching;
    const last = Math.max(1, Math.ceil(motion.counts));
    const counts = countsOf(motion);
    const range = document.createElement("span");
    range.className = "viewer-range";
    const from = (): number => Math.floor(clock.stretch?.from ?? 0) + 1, to = (): number => Math.ceil(clock.stretch?.to ?? last);
    range.append(
      this.kept(grouped("from", counts, () => String(from()), (value) => change(() => clock.setStretch({ from: Number(value) - 1, to: Math.max(Number(value), to()) }))())),
      this.kept(grouped("to", counts, () => String(to()), (value) => change(() => clock.setStretch({ from: Math.min(Number(value), from()) - 1, to: Number(value) }))())));
    this.fresh.push(() => {
      if (range.hidden === this.byCounts) range.hidden = !this.byCounts;
    });
    return range;
  }

  private stretches(): [string, string][] {
    return [["", "the dance"], ["counts", "chosen counts"], ...this.watching.motion.file.parts.map((p, i): [string, string] => [String(i), [p.label || `counts ${p.from} to ${p.from + p.counts - 1}`, p.name].filter(Boolean).join(" ")])];
  }

  private stretch(): string {
    const { stretch } = this.watching.clock;
    if (!stretch) return "";
    if (this.byCounts) return "counts";
    const i = this.watching.motion.file.parts.findIndex((p) => Math.abs(p.from - 1 - stretch.from) < 1e-6 && Math.abs(p.counts - (stretch.to - stretch.from)) < 1e-6);
    return i < 0 ? "" : String(i);
  }

  private setStretch(value: string): void {
    this.byCounts = value === "counts";
    if (this.byCounts) {
      // Four counts from here on, to begin with.
      const { clock, motion } = this.watching;
      const from = Math.min(Math.max(0, Math.ceil(this.watching.within(clock.now().at) - 1 - 1e-6)), Math.max(0, Math.ceil(motion.counts) - 4));
      clock.setStretch({ from, to: Math.min(from + 4, Math.ceil(motion.counts)) });
      return;
    }

    const part = value === "" ? undefined : this.watching.motion.file.parts[Number(value)];
    this.watching.clock.setStretch(part ? { from: part.from - 1, to: part.from - 1 + part.counts } : null);
  }
}

import { Motion, type MotionFile } from "./motion.ts";
import { Controls } from "./controls.ts";
import { Film } from "./film.ts";
import { listen, touch } from "./keys.ts";
import { Poses } from "./poses.ts";
import { light, type Palette } from "./palette.ts";
import { Plain } from "./plain.ts";
import { Sharpness } from "./sharpness.ts";
import type { Skeleton } from "./skeleton.ts";
import { Stage } from "./stage.ts";
import { Strip } from "./strip.ts";
import { Watching } from "./watching.ts";

export type { MotionFile } from "./motion.ts";
export { dark, dim, light, type Palette } from "./palette.ts";

/** Milliseconds after which a picture that stands is drawn finely. Working value. */
const rest = 350;

/** Shows a dance in an element of a page. It takes a motion file and knows of nothing else. */
export class Viewer {
  readonly watching: Watching;
  readonly motion: Motion;
  /** True where the browser can only show it from above. */
  readonly plain: boolean;
  /** Kept once the whole repeat was looked at, after the first picture: from then on every picture is as it is meant. */
  readonly ready: Promise<void>;
  private readonly canvas = document.createElement("canvas");
  private readonly stage: Stage | Plain;
  private readonly strip: Strip;
  private readonly controls: Controls;
  private readonly film: Film | undefined;
  private readonly sizes: ResizeObserver;
  private readonly sharpness = new Sharpness();
  private readonly poses: Poses;
  private readonly deaf: () => void;
  private frame = 0;
  private stale = true;
  /** When the picture was drawn last, and whether it is drawn finer now than it is while it moves. */
  private drawn = 0;
  private fine = false;

  constructor(private readonly host: HTMLElement, file: MotionFile, palette: Palette = light) {
    this.motion = new Motion(file);
    this.poses = new Poses(this.motion);
    this.watching = new Watching(this.motion);
    host.classList.add("viewer");
    const picture = document.createElement("div");
    picture.className = "viewer-picture";
    picture.tabIndex = 0;
    picture.setAttribute("role", "group");
    picture.setAttribute("aria-label", `${file.title || "The dance"}, moving. Space plays and pauses, arrow keys go from step to step.`);
    picture.append(this.canvas);
    let stage: Stage | Plain;
    try {
      stage = new Stage(this.canvas, this.motion, this.poses);
    } catch {
      // No WebGL here: a canvas that was asked for it gives nothing else any more.
      const other = document.createElement("canvas");
      this.canvas.replaceWith(other);
      this.canvas = other;
      stage = new Plain(other, this.motion);
    }

    this.stage = stage;
    this.plain = stage instanceof Plain;
    if (this.plain) this.watching.view.cameras = ["above"];
    this.strip = new Strip(this.watching);
    this.film = Film.possible ? new Film(this.canvas, file.title) : undefined;
    this.controls = new Controls(this.watching, this.film, this.plain ? ["above"] : undefined);
    host.replaceChildren(picture, this.strip.element, this.strip.spoken, this.controls.element);
    this.deaf = listen(picture, this.watching);
    touch(picture, this.watching);
    this.watching.onChange(() => { this.stale = true; });
    this.sizes = new ResizeObserver(() => this.resize());
    this.sizes.observe(picture);
    this.paint(palette);
    this.resize();
    const next = (time: number): void => {
      this.frame = requestAnimationFrame(next);
      if (this.sharpness.frame(time, this.watching.clock.playing)) this.resize();
      if (this.stale) this.drawn = time;
      this.pass();
      if (!this.fine && time - this.drawn > rest) this.refine();
    };
    this.frame = requestAnimationFrame(next);
    this.pass();
    this.ready = this.look();
  }

  // A part between two pictures, so that whoever plays at once sees them move at once.
  private async look(): Promise<void> {
    while (!this.poses.seen) {
      await new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(drawn, 0))));
      this.poses.look();
    }
    this.stale = true;
  }

  paint(palette: Palette): void {
    this.stage.paint(palette);
    this.stale = true;
  }

  /** Draws now, whatever the clock says: for pictures of one count. */
  drawAt(count: number): void {
    this.poses.lookThrough();
    this.watching.seek(count);
    this.pass();
  }

  /** The picture at a count as a PNG file in a data address. */
  pictureAt(count: number): string {
    this.drawAt(count);
    // The canvas forgets its picture once the browser has shown it, so it is taken at once.
    if (this.plain || (this.stage as Stage).smooth) return this.canvas.toDataURL("image/png");
    const still = document.createElement("canvas");
    [still.width, still.height] = [this.canvas.width, this.canvas.height];
    this.resize(2);
    this.stage.draw(count, this.watching.view);
    still.getContext("2d")!.drawImage(this.canvas, 0, 0, still.width, still.height);
    this.resize();
    return still.toDataURL("image/png");
  }

  /** Where every joint is at a count, as it is drawn. */
  jointsAt(count: number): Skeleton[] {
    this.poses.lookThrough();
    return this.motion.onAndOn(count).map((body, i) => this.poses.of(body, i, count));
  }

  dispose(): void {
    cancelAnimationFrame(this.frame);
    this.sizes.disconnect();
    this.deaf();
    this.watching.pause();
    this.stage.dispose();
    this.host.replaceChildren();
  }

  // Once it stands, edges that are not smoothed as they are drawn are smoothed by drawing four points for each.
  private refine(): void {
    if (this.plain || (this.stage as Stage).smooth || this.watching.clock.playing || this.film?.running || this.watching.view.cameras.includes("free")) return;
    this.resize(2);
    this.stage.draw(this.watching.clock.now().at, this.watching.view);
    [this.fine, this.stale] = [true, false];
  }

  private pass(): void {
    const { clock, view } = this.watching;
    if (!clock.playing && !this.stale && !view.cameras.includes("free") && !this.film?.running) return;
    if (this.fine) this.resize();
    [this.fine, this.stale] = [false, false];
    this.canvas.style.transform = view.mirror ? "scaleX(-1)" : "";
    this.stage.draw(clock.now().at, view);
    this.strip.show();
    this.controls.show();
    this.film?.take(view.mirror, this.strip.shown);
  }

  private resize(times = 1): void {
    const picture = this.canvas.parentElement!;
    this.stage.resize(Math.max(picture.clientWidth, 1), Math.max(picture.clientHeight, 1), Math.min(window.devicePixelRatio || 1, 2) * this.sharpness.share * times);
    this.stale = true;
  }
}

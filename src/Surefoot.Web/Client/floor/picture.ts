import { drawArms, drawHead, drawJoint, drawTrunk, type ToScreen } from "./bodies.ts";
import { Camera } from "./camera.ts";
import { drawGround } from "./ground.ts";
import type { Body, Motion, Role } from "surefoot-viewer/motion.ts";
import { carried, placed, type Onward } from "surefoot-viewer/onward.ts";
import { drawSole } from "./soles.ts";
import { tonesOf, type Tones } from "./tones.ts";

/** How much of a dancer is left who is not looked at. Fainter is hard to see on a beamer. Working value. */
const faded = 0.22;

/** Metres from the middle of a body to its role's name, at least. Working value. */
const apart = 0.52;

/** So much nearer is a dancer who is looked at alone. */
const nearer = 1.5;

/** Everybody seen from above on a canvas; whatever is lower lies beneath. */
export class Picture {
  private readonly context: CanvasRenderingContext2D;
  private tones: Tones;
  private motion: Motion | undefined;
  private camera: Camera | undefined;
  private width = 0;
  private height = 0;

  constructor(private readonly canvas: HTMLCanvasElement) {
    this.context = canvas.getContext("2d", { alpha: false })!;
    this.tones = tonesOf(canvas);
  }

  load(motion: Motion): void {
    this.motion = motion;
    this.camera = new Camera(motion);
  }

  /** Takes the page's tones anew. */
  recolour(): void {
    this.tones = tonesOf(this.canvas);
  }

  /** Fits the canvas to its place, sharp on any screen. */
  resize(): void {
    const fine = Math.min(devicePixelRatio, 2);
    this.width = this.canvas.clientWidth;
    this.height = this.canvas.clientHeight;
    this.canvas.width = Math.round(this.width * fine);
    this.canvas.height = Math.round(this.height * fine);
    this.context.setTransform(fine, 0, 0, fine, 0, 0);
  }

  /** The middle of the floor that is looked at, in metres. */
  middle(count: number, onward: Onward): { x: number; y: number } {
    return placed(this.camera?.at(count) ?? { x: 0, y: 0 }, onward);
  }

  /** @param onward Where the repeat begins that is danced. */
  draw(count: number, only: Role | undefined, onward: Onward): void {
    const { context, motion, camera, width, height, tones } = this;
    if (!motion || !camera || width === 0) return;
    const bodies = (onward.times > 0 ? motion.again(count) : motion.at(count)).map((body) => carried(body, onward));
    const looked = only === undefined ? undefined : bodies.find((b) => b.role === only);
    const view = placed(camera.at(count), onward);
    if (looked) {
      view.x = (view.x + looked.x) / 2;
      view.y = (view.y + looked.y) / 2;
      view.up /= nearer;
      view.across /= nearer;
    }
    const measures = motion.file.body;
    const scale = Math.min(height / view.up, width / view.across);
    const screen: ToScreen = (p) => ({ x: width / 2 - (p.y - view.y) * scale, y: height / 2 - (p.x - view.x) * scale });
    drawGround(context, tones, motion.file.floor, view, width, height, screen, scale);
    // The one who is looked at lies over the other.
    const order = looked ? [...bodies.filter((b) => b !== looked), looked] : bodies;
    const each = (draw: (body: Body) => void) => {
      for (const body of order) {
        context.globalAlpha = looked && body !== looked ? faded : 1;
        draw(body);
      }
      context.globalAlpha = 1;
    };
    each((body) => {
      for (const side of ["left", "right"] as const) {
        const at = screen(body.feet[side]);
        context.save();
        context.translate(at.x, at.y);
        drawSole(context, tones, body.role, side, body.feet[side], motion.file.body.foot * body.stature, scale);
        context.restore();
      }
    });
    each((body) => drawArms(context, tones, measures, body, "waist", screen, scale));
    each((body) => drawTrunk(context, tones, measures, body, screen, scale));
    each((body) => drawArms(context, tones, measures, body, "shoulder", screen, scale));
    each((body) => drawHead(context, tones, measures, body, screen, scale));
    each((body) => drawArms(context, tones, measures, body, "overhead", screen, scale));
    const lead = bodies.find((b) => b.role === "lead");
    if (lead) for (const hand of motion.joinedAt(count)) drawJoint(context, tones, lead.hands[hand.lead], hand.are === "raised", screen, scale);
    if (order.length > 1) for (const body of order) this.name(body, order.find((b) => b !== body)!, screen, scale);
  }

  /** The role's name on the far side of the partner, where nothing else is drawn. */
  private name(body: Body, other: Body, screen: ToScreen, scale: number): void {
    const way = { x: body.x - other.x, y: body.y - other.y };
    const far = Math.hypot(way.x, way.y) || 1;
    const u = { x: way.x / far, y: way.y / far };
    // Beyond a foot that is set out that way.
    const beyond = Math.max(apart, ...[body.feet.left, body.feet.right].map((foot) => {
      const [x, y] = [foot.x - body.x, foot.y - body.y];
      return Math.abs(x * u.y - y * u.x) < apart / 2 ? x * u.x + y * u.y + apart / 2 : 0;
    }));
    const at = screen({ x: body.x + u.x * beyond, y: body.y + u.y * beyond });
    const { context, tones, width, height } = this;
    context.font = `600 ${Math.max(13, Math.min(20, scale * 0.1))}px system-ui, sans-serif`;
    context.textAlign = "center";
    context.textBaseline = "middle";
    context.lineWidth = 4;
    context.lineJoin = "round";
    context.strokeStyle = tones.floor;
    const called = this.motion!.called(body.role);
    // Whole in the picture, and not on the directions along its upper edge.
    const half = context.measureText(called).width / 2 + 6;
    at.x = Math.min(Math.max(at.x, half), width - half);
    at.y = Math.min(Math.max(at.y, 34), height - 12);
    context.strokeText(called, at.x, at.y);
    context.fillStyle = tones.ink;
    context.fillText(called, at.x, at.y);
  }
}

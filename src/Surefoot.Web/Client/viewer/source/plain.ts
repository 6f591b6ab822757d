import { type Body, type Motion, sides } from "./motion.ts";
import { focusOf } from "./cameras.ts";
import { crowdOf, ringRadius } from "./crowd.ts";
import { measures as m } from "./measures.ts";
import type { Palette } from "./palette.ts";
import { shownOf, type View } from "./view.ts";

/** The dance from above on a plain canvas, for browsers without WebGL 2. Line of dance, or 12:00, is up. */
export class Plain {
  private readonly context: CanvasRenderingContext2D;
  private palette!: Palette;
  private size = { width: 1, height: 1, density: 1 };

  constructor(private readonly canvas: HTMLCanvasElement, private readonly motion: Motion) {
    this.context = canvas.getContext("2d")!;
  }

  paint(palette: Palette): void {
    this.palette = palette;
  }

  resize(width: number, height: number, density: number): void {
    this.size = { width, height, density };
    [this.canvas.width, this.canvas.height] = [width * density, height * density];
  }

  draw(count: number, view: View): void {
    const { width, height, density } = this.size;
    const c = this.context;
    const moments = this.motion.onAndOn(count);
    const track = this.motion.file.floor === "track";
    const focus = view.crowd ? { x: 0, y: track ? ringRadius : 0 } : focusOf(this.motion, count);
    const scale = Math.min(width, height) / (view.crowd ? (track ? ringRadius * 2.5 : 12) : 3.4 * view.near);
    c.setTransform(density, 0, 0, density, 0, 0);
    c.fillStyle = css(this.palette.floor);
    c.fillRect(0, 0, width, height);
    c.translate(width / 2, height / 2);
    c.scale(scale, scale);
    // x is up and y to the left.
    c.transform(0, -1, -1, 0, 0, 0);
    c.translate(-focus.x, -focus.y);
    c.strokeStyle = css(this.palette.line);
    c.lineWidth = 0.012;
    for (let i = -12; i <= 12; i++) {
      const [x, y] = [Math.round(focus.x), Math.round(focus.y)];
      c.strokeRect(x + i, y - 14, 0, 28);
      c.strokeRect(x - 14, y + i, 28, 0);
    }

    for (const moment of view.crowd ? crowdOf(moments, this.motion.file.floor) : moments) this.dancer(moment, shownOf(view, moment.role));
  }

  dispose(): void {}

  private dancer(d: Body, shown: number): void {
    const c = this.context;
    c.globalAlpha = shown;
    for (const side of sides) {
      const foot = d.feet[side];
      this.there(foot.x, foot.y, foot.facing, () => {
        c.beginPath();
        c.ellipse(0, 0, (d.measures.foot * d.stature) / 2, (m.footBreadth * d.stature) / 2, 0, 0, 2 * Math.PI);
        c.fillStyle = css(foot.weight > 0.5 ? this.palette.boot : this.palette.skin);
        c.fill();
      });
    }

    c.strokeStyle = css(d.role === "follow" ? this.palette.follow : this.palette.lead);
    c.fillStyle = c.strokeStyle;
    for (const side of sides) {
      c.beginPath();
      c.lineWidth = 0.045;
      const a = ((d.facing + (side === "left" ? 90 : -90)) * Math.PI) / 180;
      c.moveTo(d.x + Math.cos(a) * d.measures.halfShoulders * d.stature, d.y + Math.sin(a) * d.measures.halfShoulders * d.stature);
      c.lineTo(d.hands[side].x, d.hands[side].y);
      c.stroke();
    }

    this.there(d.x, d.y, d.facing, () => {
      c.beginPath();
      // Square for the lead and round for the follow, as the figures are.
      const [deep, wide] = [0.13 * d.stature, 0.26 * d.stature];
      if (d.role === "follow") c.ellipse(0, 0, deep / 2, wide / 2, 0, 0, 2 * Math.PI);
      else c.rect(-deep / 2, -wide / 2, deep, wide);
      c.fill();
      c.fillStyle = css(this.palette.skin);
      c.beginPath();
      c.moveTo(0.16, 0);
      c.arc(0, 0, 0.095, 0.5, 2 * Math.PI - 0.5);
      c.fill();
    });
    c.globalAlpha = 1;
  }

  private there(x: number, y: number, facing: number, draw: () => void): void {
    this.context.save();
    this.context.translate(x, y);
    this.context.rotate((facing * Math.PI) / 180);
    draw();
    this.context.restore();
  }
}

const css = (tone: number): string => `#${tone.toString(16).padStart(6, "0")}`;

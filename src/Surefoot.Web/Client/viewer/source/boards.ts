import { BufferGeometry, Color, DoubleSide, Float32BufferAttribute, Mesh } from "three";
import type { Air } from "./air.ts";
import type { Palette } from "./palette.ts";
import { vertexPaint } from "./vertex-paint.ts";

/** Metres around whoever is looked at in which the joints of boards are drawn; they fade until there. Working value. */
const around = 9;

/** Metres of a joint that have one tone, and how many boards lie beside each other in a metre. */
const piece = 3, beside = 4;

/** How wide joints are, in metres: of boards that lie beside each other, and of those that follow each other. */
const along = 0.008, across = 0.016;

/**
 * The joints between the boards of the floor, a metre long, which show how far dancers go. They are drawn as thin
 * strips: a picture of boards laid over the whole floor takes longer than both dancers where there is no graphics card.
 */
export class Boards {
  readonly mesh: Mesh;
  /** How far each corner is from the middle, as a share of what is drawn. */
  private readonly far: number[] = [];

  constructor(air: Air) {
    const corners: number[] = [], sides: number[] = [];
    const strip = (x1: number, y1: number, x2: number, y2: number, wide: number): void => {
      const [fromFar, toFar] = [Math.hypot(x1, y1) / around, Math.hypot(x2, y2) / around];
      if (fromFar >= 1 && toFar >= 1) return;
      const [dx, dy] = x1 === x2 ? [wide / 2, 0] : [0, wide / 2];
      const first = corners.length / 3;
      corners.push(x1 - dx, y1 - dy, 0, x1 + dx, y1 + dy, 0, x2 - dx, y2 - dy, 0, x2 + dx, y2 + dy, 0);
      sides.push(first, first + 1, first + 2, first + 2, first + 1, first + 3);
      this.far.push(fromFar, fromFar, toFar, toFar);
    };
    for (let from = -around; from < around; from += piece) {
      for (let n = -around * beside; n <= around * beside; n++) strip(from, n / beside, from + piece, n / beside, along);
      for (let n = -around; n <= around; n++) strip(n, from, n, from + piece, across);
    }

    const form = new BufferGeometry();
    form.setAttribute("position", new Float32BufferAttribute(corners, 3));
    form.setAttribute("color", new Float32BufferAttribute(new Float32Array(corners.length), 3));
    form.setIndex(sides);
    const paint = vertexPaint(air, "even");
    [paint.depthWrite, paint.side] = [false, DoubleSide];
    this.mesh = new Mesh(form, paint);
    this.mesh.frustumCulled = false;
    this.mesh.renderOrder = -1;
  }

  paint(palette: Palette): void {
    const [joint, floor, tone] = [new Color(palette.line), new Color(palette.floor), new Color()];
    const colors = this.mesh.geometry.getAttribute("color");
    this.far.forEach((far, i) => {
      tone.copy(joint).lerp(floor, Math.min(1, far));
      colors.setXYZ(i, tone.r, tone.g, tone.b);
    });
    colors.needsUpdate = true;
  }

  /** They stay on whole metres of the room. */
  follow(x: number, y: number): void {
    this.mesh.position.set(Math.round(x), Math.round(y), 0);
  }
}

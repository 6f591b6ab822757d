import { BufferAttribute, BufferGeometry, type Color, DynamicDrawUsage, type Material, type Matrix4, Mesh } from "three";

/** A shape as its corners, which are put somewhere else in every picture. */
export interface Form { readonly corners: ArrayLike<number>; readonly upright: ArrayLike<number>; readonly sides: ArrayLike<number> }

export function formOf(geometry: BufferGeometry): Form {
  const corners = geometry.getAttribute("position").array;
  const sides = geometry.getIndex()?.array ?? Uint16Array.from({ length: corners.length / 3 }, (_, i) => i);
  const form = { corners, upright: geometry.getAttribute("normal").array, sides };
  geometry.dispose();
  return form;
}

interface Piece { form: Form; ink: Color }

/**
 * Many forms that are drawn in one go. Drawn one by one, or as copies of one form, each costs as much as hundreds of
 * corners where there is no graphics card; so corners are put in place here, and all of them are handed over together.
 */
export class Cast {
  readonly mesh: Mesh;
  private readonly pieces: Piece[] = [];
  private corners = new Float32Array(0);
  private upright = new Float32Array(0);
  private count = 0;
  private filled = 0;
  private shown = -1;
  private stale = false;

  constructor(paint: Material) {
    this.mesh = new Mesh(new BufferGeometry(), paint);
    this.mesh.frustumCulled = false;
  }

  begin(): void {
    [this.count, this.filled] = [0, 0];
  }

  add(form: Form, ink: Color, place: Matrix4): void {
    const length = form.corners.length, end = this.filled + length;
    if (end > this.corners.length) this.grow(end);
    const e = place.elements, { corners, upright } = this;
    // What stands upright on a stretched form leans the other way.
    const x = over(e, 0), y = over(e, 4), z = over(e, 8);
    for (let i = 0, to = this.filled; i < length; i += 3, to += 3) {
      const px = form.corners[i]!, py = form.corners[i + 1]!, pz = form.corners[i + 2]!;
      corners[to] = e[0] * px + e[4] * py + e[8] * pz + e[12];
      corners[to + 1] = e[1] * px + e[5] * py + e[9] * pz + e[13];
      corners[to + 2] = e[2] * px + e[6] * py + e[10] * pz + e[14];
      const nx = form.upright[i]! * x, ny = form.upright[i + 1]! * y, nz = form.upright[i + 2]! * z;
      upright[to] = e[0] * nx + e[4] * ny + e[8] * nz;
      upright[to + 1] = e[1] * nx + e[5] * ny + e[9] * nz;
      upright[to + 2] = e[2] * nx + e[6] * ny + e[10] * nz;
    }

    const before = this.pieces[this.count];
    if (before?.form !== form || before.ink !== ink) {
      this.pieces[this.count] = { form, ink };
      this.stale = true;
    }

    this.filled = end;
    this.count++;
  }

  end(): void {
    if (this.stale || this.count !== this.shown) this.join();
    for (const name of ["position", "normal"]) {
      const all = this.mesh.geometry.getAttribute(name);
      if (all) all.needsUpdate = true;
    }
  }

  /** After a tone has changed. */
  paint(): void {
    this.stale = true;
  }

  dispose(): void {
    this.mesh.geometry.dispose();
  }

  private grow(least: number): void {
    const [corners, upright] = [this.corners, this.upright];
    const length = Math.max(least, corners.length * 2);
    [this.corners, this.upright] = [new Float32Array(length), new Float32Array(length)];
    this.corners.set(corners);
    this.upright.set(upright);
    this.stale = true;
  }

  // Which corners belong together, and their tones: the same from picture to picture.
  private join(): void {
    const pieces = this.pieces.slice(0, this.count);
    const sides = new Uint32Array(pieces.reduce((sum, p) => sum + p.form.sides.length, 0)), tones = new Float32Array(this.corners.length);
    let [side, first] = [0, 0];
    for (const { form, ink } of pieces) {
      for (let i = 0; i < form.sides.length; i++) sides[side++] = first + form.sides[i]!;
      const corners = form.corners.length / 3;
      for (let i = first; i < first + corners; i++) ink.toArray(tones, i * 3);
      first += corners;
    }

    const joined = new BufferGeometry();
    joined.setAttribute("position", new BufferAttribute(this.corners, 3).setUsage(DynamicDrawUsage));
    joined.setAttribute("normal", new BufferAttribute(this.upright, 3).setUsage(DynamicDrawUsage));
    joined.setAttribute("color", new BufferAttribute(tones, 3));
    joined.setIndex(new BufferAttribute(sides, 1));
    this.mesh.geometry.dispose();
    this.mesh.geometry = joined;
    [this.shown, this.stale] = [this.count, false];
  }
}

const over = (e: readonly number[], i: number): number => 1 / Math.max(1e-12, e[i]! * e[i]! + e[i + 1]! * e[i + 1]! + e[i + 2]! * e[i + 2]!);

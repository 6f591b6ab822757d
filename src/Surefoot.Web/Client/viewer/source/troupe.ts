import { type BufferGeometry, Color, Group, Matrix4, Quaternion, type ShaderMaterial, Vector3 } from "three";
import { Cast, formOf, type Form } from "./cast.ts";
import { sides, type Role } from "./motion.ts";
import { farForms, formsFor, parts, type PartName } from "./forms.ts";
import { heel, measures as m } from "./measures.ts";
import type { Air } from "./air.ts";
import type { Palette } from "./palette.ts";
import type { Skeleton } from "./skeleton.ts";
import { vertexPaint } from "./vertex-paint.ts";
import { ahead, at, mixed, plus, times, type Vector } from "./vectors.ts";

/** All figures of one role, drawn together, so that a full floor is little more work than a couple. */
export class Troupe {
  readonly group = new Group();
  private readonly paints: ShaderMaterial;
  private readonly cast: Cast;
  private readonly forms = new Map<PartName, Form>();
  private readonly cloth = new Color();
  private readonly plain = new Color();
  private readonly leather = new Color();
  private readonly bands = new Color();
  private readonly matrix = new Matrix4();
  private readonly turned = new Quaternion();
  private readonly place = new Vector3();
  private readonly size = new Vector3();

  /** @param far True for a full floor, which is seen from far away. */
  constructor(readonly role: Role, air: Air, far = false) {
    const forms: Partial<Record<PartName, BufferGeometry>> = far ? farForms(role) : formsFor(role);
    for (const part of parts) {
      const form = forms[part];
      if (form) this.forms.set(part, formOf(form));
    }

    this.paints = vertexPaint(air, "lit");
    this.cast = new Cast(this.paints);
    this.group.add(this.cast.mesh);
  }

  paint(palette: Palette): void {
    this.cloth.set(this.role === "follow" ? palette.follow : palette.lead);
    this.plain.set(palette.skin);
    this.leather.set(palette.boot);
    this.bands.set(palette.band);
    this.cast.paint();
  }

  /** Shows them wholly, faintly or not at all. */
  fade(shown: number): void {
    this.group.visible = shown > 0.01;
    this.paints.transparent = shown < 1;
    this.paints.uniforms.opacity!.value = shown;
    this.paints.depthWrite = shown > 0.5;
  }

  /** Puts every figure where its joints are. */
  show(skeletons: readonly Skeleton[]): void {
    this.cast.begin();
    for (const one of skeletons) this.figure(one);
    this.cast.end();
  }

  dispose(): void {
    this.cast.dispose();
    this.paints.dispose();
  }

  private figure(s: Skeleton): void {
    const k = s.stature, front = ahead(s.facing);
    this.level("hips", plus(s.pelvis, at(0, 0, 0.03 * k)), s.facing, 0, 0.115 * k, 0.19 * k, 0.12 * k);
    this.level("belt", plus(s.pelvis, at(0, 0, 0.085 * k)), s.facing, 0, 0.118 * k, 0.178 * k, 0.022 * k);
    const [low, high] = [plus(s.pelvis, at(0, 0, 0.08 * k)), plus(s.chest, at(0, 0, 0.012 * k))];
    this.bone("yoke", s.arms.right.shoulder, s.arms.left.shoulder, 0.038 * k);
    this.level("trunk", mixed(low, high, 0.5), s.facing + s.twist / 2, 0, 0.13 * k, 0.215 * k, high.z - low.z);
    this.bone("neck", plus(s.chest, at(0, 0, -0.01 * k)), s.head, 0.024 * k);
    this.level("head", s.head, s.facing, 0, 0.058 * k, 0.052 * k, m.headRadius * k);
    this.level("hair", plus(plus(s.head, times(front, -0.022 * k)), at(0, 0, 0.018 * k)), s.facing, 0, 0.058 * k, 0.0545 * k, m.headRadius * k);
    this.level("face", plus(plus(s.head, times(front, 0.063 * k)), at(0, 0, -0.006 * k)), s.facing, 0, 0.044 * k, 0.036 * k, 0.04 * k);
    for (const side of sides) {
      const [leg, arm] = [s.legs[side], s.arms[side]];
      this.bone("thigh", leg.knee, leg.hip, 0.044 * k);
      this.bone("shank", leg.ankle, leg.knee, 0.033 * k);
      this.ball("knee", leg.knee, 0.036 * k);
      this.bone("shaft", mixed(leg.ankle, leg.knee, -0.08), mixed(leg.ankle, leg.knee, 0.42), 0.037 * k);
      this.boot(leg.sole, leg.facing, leg.toe, s.foot, k, side === "left");
      this.bone("upperArm", arm.elbow, arm.shoulder, 0.026 * k);
      this.bone("foreArm", arm.hand, arm.elbow, 0.022 * k);
      this.ball("elbow", arm.elbow, 0.024 * k);
      this.level("hand", arm.hand, s.facing, 0, 0.019 * k, 0.019 * k, 0.022 * k);
    }
  }

  // The sole is where the dance has it; the boot stands on it. The left one has a light band: left is left from every side.
  private boot(sole: Vector, facing: number, toe: number, foot: number, k: number, left: boolean): void {
    const long = foot * 1.06, wide = m.footBreadth * 1.2 * k, high = 0.04 * k;
    const on = (forward: number, height: number): Vector => {
      const pitch = (toe * Math.PI) / 180, level = forward * Math.cos(pitch) - height * Math.sin(pitch);
      return plus(plus(sole, times(ahead(facing), level)), at(0, 0, forward * Math.sin(pitch) + height * Math.cos(pitch)));
    };
    // The toe is at the sole's height and the back a heel higher, as boots are.
    this.level("boot", on(0.01 * k, heel * 0.55 + high * 0.5), facing, toe - 5, long, wide, high);
    this.level("bootHeel", on(-0.34 * long, heel * 0.55), facing, toe, 0.27 * long, wide * 0.84, heel * 1.1);
    if (left) this.level("band", on(0.2 * long, heel * 0.42 + high * 0.5), facing, toe - 5, 0.13 * long, wide * 1.05, high * 1.05);
  }

  private bone(part: PartName, from: Vector, to: Vector, thick: number): void {
    const way = new Vector3(to.x - from.x, to.y - from.y, to.z - from.z);
    const far = way.length();
    this.turned.setFromUnitVectors(up, far > 1e-6 ? way.divideScalar(far) : up);
    this.place.set((from.x + to.x) / 2, (from.y + to.y) / 2, (from.z + to.z) / 2);
    this.size.set(thick, thick, far);
    this.put(part);
  }

  private ball(part: PartName, where: Vector, radius: number): void {
    this.turned.identity();
    this.place.set(where.x, where.y, where.z);
    this.size.set(radius, radius, radius);
    this.put(part);
  }

  private level(part: PartName, where: Vector, facing: number, toe: number, deep: number, wide: number, high: number): void {
    this.turned.setFromAxisAngle(up, (facing * Math.PI) / 180).multiply(tipped.setFromAxisAngle(across, (-toe * Math.PI) / 180));
    this.place.set(where.x, where.y, where.z);
    this.size.set(deep, wide, high);
    this.put(part);
  }

  private put(part: PartName): void {
    const form = this.forms.get(part);
    if (form) this.cast.add(form, this.inkOf(part), this.matrix.compose(this.place, this.turned, this.size));
  }

  private inkOf(part: PartName): Color {
    switch (part) {
      case "neck": case "head": case "face": case "hand": return this.plain;
      case "hair": case "boot": case "bootHeel": case "shaft": return this.leather;
      case "band": case "belt": return this.bands;
      default: return this.cloth;
    }
  }
}

const up = new Vector3(0, 0, 1), across = new Vector3(0, 1, 0), tipped = new Quaternion();

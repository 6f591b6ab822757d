import { Color, DynamicDrawUsage, Group, InstancedMesh, Matrix4, MeshLambertMaterial, Quaternion, Vector3 } from "three";
import { sides, type Role } from "./motion.ts";
import { formsFor, parts, type PartName } from "./forms.ts";
import { heel, measures as m } from "./measures.ts";
import type { Palette } from "./palette.ts";
import type { Skeleton } from "./skeleton.ts";
import { ahead, at, mixed, plus, times, type Vector } from "./vectors.ts";

/** All figures of one role: every part is drawn for all of them at once, so that a full floor is no more work than a couple. */
export class Troupe {
  readonly group = new Group();
  private readonly meshes: Record<PartName, InstancedMesh>;
  private readonly cloth = new MeshLambertMaterial();
  private readonly plain = new MeshLambertMaterial();
  private readonly leather = new MeshLambertMaterial();
  private readonly bands = new MeshLambertMaterial();
  private readonly used = new Map<PartName, number>();
  private readonly matrix = new Matrix4();
  private readonly turned = new Quaternion();
  private readonly place = new Vector3();
  private readonly size = new Vector3();

  constructor(readonly role: Role, readonly most: number, far = false) {
    const forms = formsFor(role, far);
    const made = (part: PartName): InstancedMesh => {
      const mesh = new InstancedMesh(forms[part], this.materialOf(part), most * 2);
      mesh.instanceMatrix.setUsage(DynamicDrawUsage);
      mesh.frustumCulled = false;
      this.group.add(mesh);
      return mesh;
    };
    this.meshes = Object.fromEntries(parts.map((p) => [p, made(p)])) as Record<PartName, InstancedMesh>;
  }

  paint(palette: Palette): void {
    this.cloth.color = new Color(this.role === "follow" ? palette.follow : palette.lead);
    this.plain.color = new Color(palette.skin);
    this.leather.color = new Color(palette.boot);
    this.bands.color = new Color(palette.band);
  }

  /** Shows them wholly, faintly or not at all. */
  fade(shown: number): void {
    this.group.visible = shown > 0.01;
    for (const material of [this.cloth, this.plain, this.leather, this.bands]) {
      material.transparent = shown < 1;
      material.opacity = shown;
      material.depthWrite = shown > 0.5;
    }
  }

  /** Puts every figure where its joints are. */
  show(skeletons: readonly Skeleton[]): void {
    this.used.clear();
    for (const one of skeletons) this.figure(one);
    for (const part of parts) {
      const mesh = this.meshes[part];
      mesh.count = this.used.get(part) ?? 0;
      mesh.instanceMatrix.needsUpdate = true;
    }
  }

  dispose(): void {
    for (const mesh of Object.values(this.meshes)) {
      mesh.geometry.dispose();
      mesh.dispose();
    }

    for (const material of [this.cloth, this.plain, this.leather, this.bands]) material.dispose();
  }

  private figure(s: Skeleton): void {
    const k = s.stature, front = ahead(s.facing);
    this.level("hips", plus(s.pelvis, at(0, 0, 0.03 * k)), s.facing, 0, 0.115 * k, 0.19 * k, 0.12 * k);
    this.level("belt", plus(s.pelvis, at(0, 0, 0.085 * k)), s.facing, 0, 0.118 * k, 0.178 * k, 0.022 * k);
    const [low, high] = [plus(s.pelvis, at(0, 0, 0.08 * k)), plus(s.chest, at(0, 0, 0.012 * k))];
    this.bone("yoke", s.arms.right.shoulder, s.arms.left.shoulder, 0.038 * k);
    this.level("trunk", mixed(low, high, 0.5), s.facing, 0, 0.13 * k, 0.215 * k, high.z - low.z);
    this.bone("neck", plus(s.chest, at(0, 0, -0.01 * k)), s.head, 0.024 * k);
    this.level("head", s.head, s.facing, 0, 0.058 * k, 0.052 * k, m.headRadius * k);
    this.level("face", plus(plus(s.head, times(front, 0.062 * k)), at(0, 0, -0.006 * k)), s.facing, 0, 0.036 * k, 0.036 * k, 0.04 * k);
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
    const n = this.used.get(part) ?? 0;
    if (n >= this.most * 2) return;
    this.meshes[part].setMatrixAt(n, this.matrix.compose(this.place, this.turned, this.size));
    this.used.set(part, n + 1);
  }

  private materialOf(part: PartName): MeshLambertMaterial {
    switch (part) {
      case "neck": case "head": case "face": case "hand": return this.plain;
      case "boot": case "bootHeel": case "shaft": return this.leather;
      case "band": case "belt": return this.bands;
      default: return this.cloth;
    }
  }
}

const up = new Vector3(0, 0, 1), across = new Vector3(0, 1, 0), tipped = new Quaternion();

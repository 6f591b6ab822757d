import { type Motion, type Role, type Side, sides } from "./motion.ts";
import { Color, InstancedMesh, Matrix4, MeshBasicMaterial, Shape, ShapeGeometry, Vector3, Quaternion } from "three";
import type { Palette } from "./palette.ts";

/** Where a foot took the weight; `long` is the foot's length in metres. */
interface Trace { at: number; role: Role; side: Side; long: number }

/** Counts for which the trace of a foot stays to be seen. Working value. */
const remembered = 8;

/** Where feet took the weight over the last counts, as prints on the floor that fade. */
export class Traces {
  readonly mesh: InstancedMesh;
  private readonly all: Trace[];
  private readonly ink = new Color();
  private readonly floor = new Color();

  constructor(private readonly motion: Motion) {
    this.all = tracesOf(motion);
    this.mesh = new InstancedMesh(new ShapeGeometry(sole()), new MeshBasicMaterial({ polygonOffset: true, polygonOffsetFactor: -2 }), 160);
    this.mesh.frustumCulled = false;
    this.mesh.count = 0;
  }

  paint(palette: Palette): void {
    this.ink.set(palette.trace);
    this.floor.set(palette.floor);
  }

  show(count: number, roles: readonly Role[]): void {
    let n = 0;
    const { counts } = this.motion;
    const repeat = counts > 0 ? Math.floor(count / counts) : 0;
    for (const trace of this.all) {
      for (const back of [0, 1]) {
        const when = trace.at + (repeat - back) * counts;
        const age = count - when;
        if (repeat - back < 0 || age < 0 || age > remembered || !roles.includes(trace.role) || n >= 160) continue;
        const there = this.motion.onAndOn(when + 1e-4).find((d) => d.role === trace.role)?.feet[trace.side];
        if (!there) continue;
        turned.setFromAxisAngle(up, (there.facing * Math.PI) / 180);
        this.mesh.setMatrixAt(n, matrix.compose(where.set(there.x, there.y, 0.006), turned, size.set(trace.long, trace.long, 1)));
        this.mesh.setColorAt(n, tone.copy(this.ink).lerp(this.floor, age / remembered));
        n++;
      }
    }

    this.mesh.count = n;
    this.mesh.instanceMatrix.needsUpdate = true;
    if (this.mesh.instanceColor) this.mesh.instanceColor.needsUpdate = true;
  }
}

/** Whenever a role's action ends on a foot that did not carry the weight before. */
function tracesOf(motion: Motion): Trace[] {
  const traces: Trace[] = [];
  for (const role of motion.roles) {
    let carries: Side | undefined;
    for (const at of new Set([0, ...motion.file.steps.filter((s) => s.role === role).map((s) => s.at)])) {
      const dancer = motion.at(at).find((d) => d.role === role);
      if (!dancer) continue;
      const now = sides.find((s) => dancer.feet[s].weight > 0.75);
      if (now && now !== carries) traces.push({ at, role, side: now, long: dancer.measures.foot * dancer.stature });
      carries = now;
    }
  }

  return traces;
}

/** A boot's sole of length 1, toe along x: a heel and a forepart that narrows to the toe. */
function sole(): Shape[] {
  const heel = new Shape();
  heel.moveTo(-0.24, -0.15);
  heel.bezierCurveTo(-0.5, -0.19, -0.5, 0.19, -0.24, 0.15);
  heel.lineTo(-0.24, -0.15);
  const fore = new Shape();
  fore.moveTo(-0.14, -0.12);
  fore.bezierCurveTo(0.1, -0.24, 0.34, -0.22, 0.5, 0);
  fore.bezierCurveTo(0.34, 0.22, 0.1, 0.24, -0.14, 0.12);
  fore.lineTo(-0.14, -0.12);
  return [heel, fore];
}

const up = new Vector3(0, 0, 1), turned = new Quaternion(), matrix = new Matrix4(), where = new Vector3(), size = new Vector3(), tone = new Color();

import { type Motion, type Role, type Side, sides } from "./motion.ts";
import { Color, Matrix4, Shape, ShapeGeometry, Vector3, Quaternion } from "three";
import type { Air } from "./air.ts";
import { Cast, formOf } from "./cast.ts";
import type { Palette } from "./palette.ts";
import { vertexPaint } from "./vertex-paint.ts";

/** Where a foot took the weight; `long` is the foot's length in metres. */
interface Trace { at: number; role: Role; side: Side; long: number }

/** Counts for which the trace of a foot stays to be seen, and tones in which it fades. Working values. */
const remembered = 8, tones = 32;

/** Where feet took the weight over the last counts, as prints on the floor that fade. */
export class Traces {
  private readonly all: Trace[];
  private readonly print = formOf(new ShapeGeometry(sole()));
  private readonly inks = Array.from({ length: tones }, () => new Color());
  private readonly cast: Cast;

  constructor(private readonly motion: Motion, air: Air) {
    this.all = tracesOf(motion);
    const paint = vertexPaint(air, "even");
    // What is darkened by a foot is darkened over a print as well.
    [paint.polygonOffset, paint.polygonOffsetFactor, paint.depthWrite] = [true, -2, false];
    this.cast = new Cast(paint);
  }

  get mesh(): Cast["mesh"] {
    return this.cast.mesh;
  }

  paint(palette: Palette): void {
    const floor = new Color(palette.floor);
    this.inks.forEach((ink, i) => ink.set(palette.trace).lerp(floor, i / tones));
    this.cast.paint();
  }

  dispose(): void {
    this.cast.dispose();
  }

  show(count: number, roles: readonly Role[]): void {
    this.cast.begin();
    const { counts } = this.motion;
    const repeat = counts > 0 ? Math.floor(count / counts) : 0;
    for (const trace of this.all) {
      for (const back of [0, 1]) {
        const when = trace.at + (repeat - back) * counts;
        const age = count - when;
        if (repeat - back < 0 || age < 0 || age > remembered || !roles.includes(trace.role)) continue;
        const there = this.motion.onAndOn(when + 1e-4).find((d) => d.role === trace.role)?.feet[trace.side];
        if (!there) continue;
        turned.setFromAxisAngle(up, (there.facing * Math.PI) / 180);
        this.cast.add(this.print, this.inks[Math.min(tones - 1, Math.floor((age / remembered) * tones))]!, matrix.compose(where.set(there.x, there.y, 0.006), turned, size.set(trace.long, trace.long, 1)));
      }
    }

    this.cast.end();
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

const up = new Vector3(0, 0, 1), turned = new Quaternion(), matrix = new Matrix4(), where = new Vector3(), size = new Vector3();

import { BoxGeometry, CapsuleGeometry, ConeGeometry, CylinderGeometry, SphereGeometry, type BufferGeometry } from "three";
import { RoundedBoxGeometry } from "three/examples/jsm/geometries/RoundedBoxGeometry.js";
import type { Role } from "./motion.ts";

/** The parts of a figure that are drawn, each once or twice. */
export const parts = ["hips", "trunk", "neck", "head", "face", "thigh", "shank", "knee", "boot", "bootHeel", "shaft", "band", "yoke", "upperArm", "foreArm", "elbow", "hand", "belt"] as const;
export type PartName = (typeof parts)[number];

/**
 * Shapes of size 1, z along the bone, x ahead. The lead is built of square forms and the follow of round ones, so
 * that they are told apart without any colour.
 * @param far For a full floor seen from far away: with few corners, as all of it may be drawn without a graphics card.
 */
export function formsFor(role: Role, far = false): Record<PartName, BufferGeometry> {
  const square = role === "lead";
  const round = far ? 6 : 12;
  const rounded = (x: number, y: number, z: number, corners: number, radius: number): BufferGeometry => far ? new BoxGeometry(x, y, z) : new RoundedBoxGeometry(x, y, z, corners, radius);
  const bone = (): BufferGeometry => upright(square ? new CylinderGeometry(0.92, 1, 1, 6) : new CylinderGeometry(0.82, 1, 1, round));
  const block = (): BufferGeometry => square ? rounded(1, 1, 1, 2, 0.16) : new SphereGeometry(0.55, round, far ? 5 : 8);
  const ball = (): BufferGeometry => new SphereGeometry(1, far ? 5 : 8, far ? 4 : 6);
  return {
    hips: block(),
    trunk: square ? upright(new CylinderGeometry(0.7, 0.54, 1, 4).rotateY(Math.PI / 4)) : upright(new CylinderGeometry(0.46, 0.4, 1, round)),
    // From shoulder to shoulder.
    yoke: square ? rounded(2, 2, 1.16, 2, 0.35) : upright(new CapsuleGeometry(1, 0.72, far ? 2 : 4, far ? 6 : 10).scale(1, 0.38, 1)),
    shaft: upright(new CylinderGeometry(1.12, 0.92, 1, far ? 6 : 10)),
    neck: upright(new CylinderGeometry(1, 1, 1, far ? 5 : 8)),
    head: square ? rounded(1.75, 1.7, 2.05, 3, 0.62) : new SphereGeometry(1, far ? 8 : 12, far ? 6 : 10),
    face: new ConeGeometry(0.34, 0.9, 4).rotateZ(-Math.PI / 2),
    thigh: bone(), shank: bone(), upperArm: bone(), foreArm: bone(),
    knee: ball(), elbow: ball(),
    boot: rounded(1, 1, 1, 2, 0.32),
    bootHeel: new BoxGeometry(1, 1, 1),
    band: new BoxGeometry(1, 1, 1),
    hand: square ? rounded(1.7, 1.2, 1.9, 2, 0.4) : new SphereGeometry(1, far ? 5 : 8, far ? 4 : 6),
    belt: square ? new BoxGeometry(1, 1, 1) : upright(new CylinderGeometry(0.5, 0.5, 1, round)),
  };
}

// Cylinders stand along y; bones lie along z.
const upright = (form: BufferGeometry): BufferGeometry => form.rotateX(Math.PI / 2);

import { BoxGeometry, CapsuleGeometry, ConeGeometry, CylinderGeometry, IcosahedronGeometry, SphereGeometry, type BufferGeometry } from "three";
import { RoundedBoxGeometry } from "three/examples/jsm/geometries/RoundedBoxGeometry.js";
import { mergeVertices } from "three/examples/jsm/utils/BufferGeometryUtils.js";
import type { Role } from "./motion.ts";

/** The parts of a figure that are drawn, each once or twice. */
export const parts = ["hips", "trunk", "neck", "head", "hair", "face", "thigh", "shank", "knee", "boot", "bootHeel", "shaft", "band", "yoke", "upperArm", "foreArm", "elbow", "hand", "belt"] as const;
export type PartName = (typeof parts)[number];

/**
 * Shapes of size 1, z along the bone, x ahead. The lead is built of square forms and the follow of round ones, so
 * that they are told apart without any colour.
 */
export function formsFor(role: Role): Record<PartName, BufferGeometry> {
  const square = role === "lead";
  const bone = (): BufferGeometry => upright(square ? new CylinderGeometry(0.92, 1, 1, 6) : new CylinderGeometry(0.82, 1, 1, 12));
  const block = (): BufferGeometry => square ? rounded(1, 1, 1, 2, 0.16) : new SphereGeometry(0.55, 12, 8);
  const ball = (): BufferGeometry => new SphereGeometry(1, 8, 6);
  const head = (): BufferGeometry => square ? rounded(1.75, 1.7, 2.05, 3, 0.62) : new SphereGeometry(1, 12, 10);
  return {
    hips: block(),
    trunk: square ? upright(new CylinderGeometry(0.7, 0.54, 1, 4).rotateY(Math.PI / 4)) : upright(new CylinderGeometry(0.46, 0.4, 1, 12)),
    // From shoulder to shoulder.
    yoke: square ? rounded(2, 2, 1.16, 2, 0.35) : upright(new CapsuleGeometry(1, 0.72, 4, 10).scale(1, 0.38, 1)),
    shaft: upright(new CylinderGeometry(1.12, 0.92, 1, 10)),
    neck: upright(new CylinderGeometry(1, 1, 1, 8)),
    head: head(),
    // Leaves the face free: who looks this way and who looks away is seen from far.
    hair: head(),
    face: new ConeGeometry(0.34, 0.9, 4).rotateZ(-Math.PI / 2),
    thigh: bone(), shank: bone(), upperArm: bone(), foreArm: bone(),
    knee: ball(), elbow: ball(),
    boot: rounded(1, 1, 1, 2, 0.32),
    bootHeel: new BoxGeometry(1, 1, 1),
    band: new BoxGeometry(1, 1, 1),
    hand: square ? rounded(1.7, 1.2, 1.9, 2, 0.4) : ball(),
    belt: square ? new BoxGeometry(1, 1, 1) : upright(new CylinderGeometry(0.5, 0.5, 1, 12)),
  };
}

/**
 * The same for a full floor seen from far away: few corners, and none of what is smaller than a point of the picture
 * there, as all of it may be drawn without a graphics card.
 */
export function farForms(role: Role): Partial<Record<PartName, BufferGeometry>> {
  const square = role === "lead";
  // Their ends are inside other parts.
  const tube = (top: number, bottom: number, sides: number): BufferGeometry => upright(new CylinderGeometry(top, bottom, 1, sides, 1, true));
  const bone = (): BufferGeometry => square ? tube(0.92, 1, 4) : tube(0.82, 1, 5);
  const ball = (size: number): BufferGeometry => new IcosahedronGeometry(size, 0);
  return {
    hips: square ? new BoxGeometry(1, 1, 1) : ball(0.55),
    trunk: square ? upright(new CylinderGeometry(0.7, 0.54, 1, 4, 1, true).rotateY(Math.PI / 4)) : tube(0.46, 0.4, 6),
    yoke: square ? new BoxGeometry(2, 2, 1.16) : upright(new CapsuleGeometry(1, 0.72, 1, 6).scale(1, 0.38, 1)),
    head: square ? new BoxGeometry(1.6, 1.55, 1.95) : ball(1.1),
    face: new ConeGeometry(0.34, 0.9, 3, 1, true).rotateZ(-Math.PI / 2),
    thigh: bone(), shank: bone(), upperArm: bone(), foreArm: bone(),
    shaft: tube(1.12, 0.92, square ? 4 : 5),
    boot: new BoxGeometry(1, 1, 1),
    hand: square ? new BoxGeometry(1.7, 1.2, 1.9) : ball(1.1),
  };
}

// Its corners are not shared as it comes: three times as many to work out as are needed.
function rounded(x: number, y: number, z: number, corners: number, radius: number): BufferGeometry {
  const form = new RoundedBoxGeometry(x, y, z, corners, radius);
  form.deleteAttribute("uv");
  return mergeVertices(form);
}

// Cylinders stand along y; bones lie along z.
const upright = (form: BufferGeometry): BufferGeometry => form.rotateX(Math.PI / 2);

import type { Body, Grip, Measures, Side } from "surefoot-viewer/motion.ts";
import type { Tones } from "./tones.ts";

/** An elbow hangs down, and out and back a little. Working values. */
const down = 1, out = 0.6, back = 0.35;

/** Hands so far over a shoulder, in metres, are drawn over the heads; so far below it, / stature, under the trunk. */
const overhead = 0.12, below = 0.14;

export type Level = "waist" | "shoulder" | "overhead";
type Point = { x: number; y: number };
export type ToScreen = (p: Point) => Point;

/** A place beside a body: metres ahead and to the left of its middle. */
function beside(body: Body, ahead: number, left: number): Point {
  const a = (body.facing * Math.PI) / 180;
  return { x: body.x + ahead * Math.cos(a) - left * Math.sin(a), y: body.y + ahead * Math.sin(a) + left * Math.cos(a) };
}

function levelOf(measures: Measures, body: Body, hand: Grip): Level {
  const above = hand.up - measures.shoulderHeight * body.stature;
  return above > overhead ? "overhead" : above < -below * body.stature ? "waist" : "shoulder";
}

/** Where the elbow is: the arm is a triangle of known sides that hangs down, out and back. */
function elbowOf(measures: Measures, body: Body, side: Side, shoulder: Point, hand: Grip): Point {
  const { stature } = body;
  const way = { x: hand.x - shoulder.x, y: hand.y - shoulder.y, z: hand.up - measures.shoulderHeight * stature };
  const far = Math.hypot(way.x, way.y, way.z);
  if (far < 1e-6) return shoulder;
  const upper = measures.upperArm * stature, fore = measures.foreArm * stature;
  const along = Math.min(Math.max((upper * upper - fore * fore + far * far) / (2 * far), -upper), upper);
  const aside = Math.sqrt(Math.max(0, upper * upper - along * along));
  const u = { x: way.x / far, y: way.y / far, z: way.z / far };
  const hang = beside(body, -back, side === "left" ? out : -out);
  const h = { x: hang.x - body.x, y: hang.y - body.y, z: -down };
  const dot = h.x * u.x + h.y * u.y + h.z * u.z;
  const p = { x: h.x - dot * u.x, y: h.y - dot * u.y, z: h.z - dot * u.z };
  const bend = aside / Math.max(Math.hypot(p.x, p.y, p.z), 1e-9);
  return { x: shoulder.x + u.x * along + p.x * bend, y: shoulder.y + u.y * along + p.y * bend };
}

/** Metres of floor tone on each side of an arm, so that of two that cross one is seen to lie over the other. Working value. */
const edge = 0.018;

/** How much of what lies under a trunk is covered: feet shine through and do not compete with arms. Working value. */
const cover = 0.8;

/** Arms whose hands are at one level: the lead's full, the follow's two lines. */
export function drawArms(context: CanvasRenderingContext2D, tones: Tones, measures: Measures, body: Body, level: Level, screen: ToScreen, scale: number): void {
  for (const side of ["left", "right"] as const) {
    const hand = body.hands[side];
    if (levelOf(measures, body, hand) !== level) continue;
    const shoulder = beside(body, 0, (side === "left" ? 1 : -1) * measures.halfShoulders * body.stature);
    const way = [shoulder, elbowOf(measures, body, side, shoulder, hand), hand].map(screen);
    context.lineCap = context.lineJoin = "round";
    context.beginPath();
    way.forEach((p, i) => (i === 0 ? context.moveTo(p.x, p.y) : context.lineTo(p.x, p.y)));
    context.strokeStyle = tones.floor;
    context.lineWidth = (0.042 + 2 * edge) * scale;
    context.stroke();
    context.strokeStyle = tones.ink;
    context.lineWidth = 0.042 * scale;
    context.stroke();
    if (body.role !== "follow") continue;
    context.strokeStyle = tones.paper;
    context.lineWidth = 0.022 * scale;
    context.stroke();
  }
}

export function drawTrunk(context: CanvasRenderingContext2D, tones: Tones, measures: Measures, body: Body, screen: ToScreen, scale: number): void {
  const k = body.stature * scale;
  const wide = measures.halfBreadth * k, deep = measures.halfDepth * k;
  stand(context, body, screen);
  const shape = new Path2D();
  shape.ellipse(0, 0, wide, deep, 0, 0, 2 * Math.PI);
  context.save();
  context.globalAlpha *= cover;
  context.fillStyle = body.role === "follow" ? tones.paper : tones.soft;
  context.fill(shape);
  context.restore();
  context.strokeStyle = tones.ink;
  context.lineWidth = 0.009 * scale;
  context.stroke(shape);
  context.restore();
}

/** A head with a nose that says where the dancer looks: the lead's full, the follow's open. */
export function drawHead(context: CanvasRenderingContext2D, tones: Tones, measures: Measures, body: Body, screen: ToScreen, scale: number): void {
  const rx = measures.headAside * body.stature * scale, ry = measures.headAhead * body.stature * scale;
  stand(context, body, screen);
  context.lineWidth = 0.011 * scale;
  context.lineJoin = "round";
  context.strokeStyle = context.fillStyle = tones.ink;
  context.beginPath();
  context.moveTo(-rx * 0.45, -ry * 0.85);
  context.lineTo(0, -ry * 1.4);
  context.lineTo(rx * 0.45, -ry * 0.85);
  context.closePath();
  context.fill();
  context.stroke();
  context.beginPath();
  context.ellipse(0, 0, rx, ry, 0, 0, 2 * Math.PI);
  context.fillStyle = body.role === "follow" ? tones.paper : tones.ink;
  context.fill();
  context.strokeStyle = body.role === "follow" ? tones.ink : tones.paper;
  context.stroke();
  context.restore();
}

/** Marks where hands are joined; raised ones in a double ring. */
export function drawJoint(context: CanvasRenderingContext2D, tones: Tones, at: Point, raised: boolean, screen: ToScreen, scale: number): void {
  const { x, y } = screen(at);
  context.strokeStyle = tones.ink;
  context.fillStyle = tones.paper;
  context.lineWidth = 0.012 * scale;
  context.beginPath();
  context.arc(x, y, 0.034 * scale, 0, 2 * Math.PI);
  context.fill();
  context.stroke();
  if (!raised) return;
  context.beginPath();
  context.arc(x, y, 0.06 * scale, 0, 2 * Math.PI);
  context.stroke();
}

function stand(context: CanvasRenderingContext2D, body: Body, screen: ToScreen): void {
  const { x, y } = screen(body);
  context.save();
  context.translate(x, y);
  context.rotate((-body.facing * Math.PI) / 180);
}

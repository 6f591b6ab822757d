import type { Foot, Role, Side } from "surefoot-viewer/motion.ts";
import type { Tones } from "./tones.ts";

// Boot soles in two pieces as in the foot pictures: round for everybody, square for the lead, pointed and hatched
// for the follow. Drawn for the right foot, toe up, 100 units long; the left foot is its mirror.
const roundFront = "M-14 11C-20-3-23-17-20-31C-17-43-12-50-5-50C8-50 19-37 22-20C23-8 19 3 15 11C6 15-6 15-14 11Z";
const squareFront = "M-14 11C-20-3-23-17-22-31L-20-46Q-19-50-15-50L0-50Q4-50 7-47L18-32C22-26 23-19 22-13C21-4 18 4 15 11C6 15-6 15-14 11Z";
const pointedFront = "M-13 11C-18-2-21-14-19-25C-17-36-13-46-9-54C-1-49 12-38 18-24C21-12 17 2 13 11C6 14-6 14-13 11Z";
const blockHeel = "M-13 22C-5 25 6 25 14 22L16 36C15 46 9 50 1 50C-8 50-14 46-15 37Z";
const slimHeel = "M-9 23C-4 25 5 25 10 23L12 37C11 46 6 50 1 50C-5 50-10 46-11 37Z";

const shapes: Record<Role, [Path2D, Path2D]> = {
  dancer: [new Path2D(roundFront), new Path2D(blockHeel)],
  lead: [new Path2D(squareFront), new Path2D(blockHeel)],
  follow: [new Path2D(pointedFront), new Path2D(slimHeel)],
};

/** Feet are drawn so much longer than they are, so that a letter fits on them, as in the foot pictures. Working value. */
const larger = 1.35;

/** A foot higher than this, in metres, is in the air; tipped by more degrees than this it stands on heel or toe. Working values. */
const inAir = 0.025, tipped = 10;

type Stroke = "plain" | "dotted";

/** Lines of hatching drawn into a path: they stay with the sole, so they do not swim when it moves. */
function hatch(context: CanvasRenderingContext2D, path: Path2D, tone: string): void {
  context.save();
  context.clip(path);
  context.strokeStyle = tone;
  context.lineWidth = 5.5;
  context.setLineDash([]);
  context.beginPath();
  for (let i = -120; i <= 120; i += 10) {
    context.moveTo(i - 70, 70);
    context.lineTo(i + 70, -70);
  }
  context.stroke();
  context.restore();
}

/**
 * A sole where it is: full where it carries weight, and the fuller the more it carries; dotted in the air; on heel
 * or toe the other piece dotted.
 * @param length Of the foot, in metres.
 */
export function drawSole(context: CanvasRenderingContext2D, tones: Tones, role: Role, side: Side, foot: Foot, length: number, scale: number): void {
  const k = (length * larger * scale) / 100;
  const [front, heel] = shapes[role];
  const air = foot.up > inAir;
  const strokes: [Stroke, Stroke] = air ? ["dotted", "dotted"] : foot.toe > tipped ? ["dotted", "plain"] : foot.toe < -tipped ? ["plain", "dotted"] : ["plain", "plain"];
  context.save();
  context.rotate((-foot.facing * Math.PI) / 180);
  context.scale(k, k);
  context.save();
  if (side === "left") context.scale(-1, 1);
  [front, heel].forEach((path, i) => {
    const dotted = strokes[i] === "dotted";
    context.fillStyle = tones.paper;
    context.fill(path);
    if (foot.weight > 0.02) {
      context.save();
      context.globalAlpha *= Math.min(1, foot.weight * 1.15);
      if (role === "follow") hatch(context, path, tones.ink);
      else {
        context.fillStyle = tones.ink;
        context.fill(path);
      }
      context.restore();
    }
    context.strokeStyle = tones.ink;
    context.lineWidth = dotted ? 4.5 : 5;
    context.lineCap = "round";
    context.setLineDash(dotted ? [0.5, 8] : []);
    context.stroke(path);
  });
  context.setLineDash([]);
  context.restore();
  letter(context, tones, role, side, foot);
  context.restore();
}

/** L or R on the front piece, upright whatever way the foot looks. */
function letter(context: CanvasRenderingContext2D, tones: Tones, role: Role, side: Side, foot: Foot): void {
  const full = foot.weight > 0.45;
  context.translate(0, -18);
  context.rotate((foot.facing * Math.PI) / 180);
  if (full && role === "follow") {
    context.fillStyle = tones.paper;
    context.beginPath();
    context.arc(0, 0, 16, 0, 2 * Math.PI);
    context.fill();
  }
  context.fillStyle = full && role !== "follow" ? tones.paper : tones.ink;
  context.font = "bold 28px system-ui, sans-serif";
  context.textAlign = "center";
  context.textBaseline = "middle";
  context.fillText(side === "left" ? "L" : "R", 0, 1);
}

import type { View } from "./camera.ts";
import type { Tones } from "./tones.ts";
import type { ToScreen } from "./bodies.ts";

/** Metres between the floor's lines, half as long as a walk and a half. Working value. */
const board = 0.5;

/** The floor's boards, which stay while the camera goes along, and which way is which. */
export function drawGround(
  context: CanvasRenderingContext2D, tones: Tones, floor: "track" | "walls", view: View, width: number, height: number, screen: ToScreen, scale: number,
): void {
  context.fillStyle = tones.floor;
  context.fillRect(0, 0, width, height);
  context.strokeStyle = tones.line;
  context.lineWidth = 1;
  context.beginPath();
  const up = height / 2 / scale, aside = width / 2 / scale;
  for (let x = Math.ceil((view.x - up) / board) * board; x <= view.x + up; x += board) {
    const y = Math.round(screen({ x, y: 0 }).y) + 0.5;
    context.moveTo(0, y);
    context.lineTo(width, y);
  }
  for (let y = Math.ceil((view.y - aside) / board) * board; y <= view.y + aside; y += board) {
    const x = Math.round(screen({ x: 0, y }).x) + 0.5;
    context.moveTo(x, 0);
    context.lineTo(x, height);
  }
  context.stroke();
  names(context, tones, floor, width, height);
}

function names(context: CanvasRenderingContext2D, tones: Tones, floor: "track" | "walls", width: number, height: number): void {
  context.fillStyle = tones.quiet;
  context.font = "600 13px system-ui, sans-serif";
  context.textBaseline = "middle";
  // All but one in a row at the top: in the middle of a narrow floor they would lie under the dancers.
  const [top, left, right, bottom] = floor === "track" ? ["↑ line of dance", "← centre", "outside →", ""] : ["↑ 12:00", "← 9:00", "3:00 →", "↓ 6:00"];
  const text = (words: string, x: number, y: number, align: CanvasTextAlign) => {
    context.textAlign = align;
    context.fillText(words, x, y);
  };
  text(top, width / 2, 14, "center");
  text(bottom, width / 2, height - 14, "center");
  text(left, 10, 14, "left");
  text(right, width - 10, 14, "right");
}

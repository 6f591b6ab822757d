import { cameraNames, type CameraName } from "./cameras.ts";
import type { Watching } from "./watching.ts";

/** Keys that play and step also where nothing has the focus; letters do not, as somebody who speaks to the machine would press them unawares (WCAG 2.1.4). */
const always = new Set([" ", "ArrowLeft", "ArrowRight"]);

/**
 * Keys while the picture has the focus; a few of them also while nothing has, so that whoever comes here plays at once.
 * Nothing is taken from what else can be typed into or pressed.
 * @returns What takes the keys away again.
 */
export function listen(element: HTMLElement, watching: Watching): () => void {
  const own = (e: KeyboardEvent): void => press(e, watching);
  const anywhere = (e: KeyboardEvent): void => {
    if (always.has(e.key) && (e.target === document.body || e.target === document.documentElement)) press(e, watching);
  };
  element.addEventListener("keydown", own);
  document.addEventListener("keydown", anywhere);
  return () => {
    element.removeEventListener("keydown", own);
    document.removeEventListener("keydown", anywhere);
  };
}

function press(e: KeyboardEvent, watching: Watching): void {
  const { clock, view } = watching;
  if (e.ctrlKey || e.metaKey || e.altKey) return;
  const camera: Partial<Record<string, CameraName>> = { b: "back", s: "side", a: "above", p: "partner", h: "free" };
  const pressed = camera[e.key.toLowerCase()];
  if (e.key === " ") void watching.toggle();
  else if (e.key === "ArrowRight") watching.step(true);
  else if (e.key === "ArrowLeft") watching.step(false);
  else if (e.key === "Home") watching.seek(0);
  else if (e.key === "ArrowUp") clock.setSpeed(clock.speed + 5);
  else if (e.key === "ArrowDown") clock.setSpeed(clock.speed - 5);
  else if (e.key.toLowerCase() === "m") view.mirror = !view.mirror;
  else if (e.key.toLowerCase() === "f") view.traces = !view.traces;
  else if (pressed && cameraNames.includes(pressed) && (pressed !== "partner" || watching.motion.roles.length > 1)) view.cameras[0] = pressed;
  else return;
  e.preventDefault();
  watching.changed();
}

/** A tap plays and pauses, a pull to the side goes through the counts, two fingers come nearer. */
export function touch(element: HTMLElement, watching: Watching): void {
  const fingers = new Map<number, { x: number; y: number }>();
  let start: { x: number; at: number; moved: boolean } | undefined;
  let apart = 0;
  element.addEventListener("pointerdown", (e) => {
    if (watching.view.cameras[0] === "free") return;
    fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    element.setPointerCapture(e.pointerId);
    if (fingers.size === 1) start = { x: e.clientX, at: watching.clock.now().at, moved: false };
    apart = spread(fingers);
  });
  element.addEventListener("pointermove", (e) => {
    if (!fingers.has(e.pointerId)) return;
    fingers.set(e.pointerId, { x: e.clientX, y: e.clientY });
    if (fingers.size === 2) {
      const now = spread(fingers);
      if (apart > 0 && now > 0) watching.view.near = Math.min(Math.max((watching.view.near * apart) / now, 0.5), 2.5);
      apart = now;
      if (start) start.moved = true;
      watching.changed();
    } else if (start && (start.moved || Math.abs(e.clientX - start.x) > 12)) {
      start.moved = true;
      // The width of the picture is eight counts.
      watching.seek(start.at + ((e.clientX - start.x) / element.clientWidth) * 8);
    }
  });
  const end = (e: PointerEvent): void => {
    if (!fingers.delete(e.pointerId)) return;
    if (fingers.size === 0 && start && !start.moved && e.type === "pointerup") void watching.toggle();
    if (fingers.size === 0) start = undefined;
  };
  element.addEventListener("pointerup", end);
  element.addEventListener("pointercancel", end);
}

function spread(fingers: Map<number, { x: number; y: number }>): number {
  const [a, b] = [...fingers.values()];
  return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
}

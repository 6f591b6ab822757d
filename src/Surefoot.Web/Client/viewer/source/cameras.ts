import { PerspectiveCamera } from "three";
import type { Motion } from "./motion.ts";
import type { Skeleton } from "./skeleton.ts";

export const cameraNames = ["back", "side", "above", "partner", "free"] as const;
export type CameraName = (typeof cameraNames)[number];

/** What a camera looks at: the middle of everybody, evened out so that it glides and never shakes. */
export interface Focus { x: number; y: number }

/** Counts before and after over which the middle is evened out. Working value. */
const even = 3;

/** Metres that the partner's eyes stand back, and the least between them and whom they see: side by side there would be little but a shoulder. Working values. */
const step = 0.75, leastSeen = 1.85;

export function focusOf(motion: Motion, count: number): Focus {
  const focus = { x: 0, y: 0 };
  const looks = 9;
  const [from, to] = motion.unbroken(count);
  let seen = 0;
  for (let i = 0; i < looks; i++) {
    for (const m of motion.onAndOn(Math.min(Math.max(from, count + even * ((2 * i) / (looks - 1) - 1)), to))) {
      focus.x += m.x;
      focus.y += m.y;
      seen++;
    }
  }

  return { x: focus.x / Math.max(seen, 1), y: focus.y / Math.max(seen, 1) };
}

/** Puts a camera where somebody stands who watches. Places in metres beside the focus. */
export function place(camera: PerspectiveCamera, name: CameraName, focus: Focus, near: number, eyes: Skeleton | undefined, seen: Skeleton | undefined): void {
  camera.up.set(0, 0, 1);
  camera.fov = 34;
  switch (name) {
    case "back":
      camera.position.set(focus.x - 4.5 * near, focus.y, 1.75);
      camera.lookAt(focus.x, focus.y, 0.9);
      break;
    case "side":
      camera.position.set(focus.x, focus.y - 4.5 * near, 1.45);
      camera.lookAt(focus.x, focus.y, 0.9);
      break;
    case "above":
      camera.up.set(1, 0, 0);
      camera.position.set(focus.x, focus.y, 5.6 * near);
      camera.lookAt(focus.x, focus.y, 0);
      break;
    case "partner":
      if (!eyes || !seen) return;
      {
        // A little behind the eyes, so that a partner who is close by is still seen whole.
        const [x, y] = [eyes.head.x - seen.chest.x, eyes.head.y - seen.chest.y];
        const far = Math.max(Math.hypot(x, y), 0.05);
        const back = Math.max(step, leastSeen - far) / far;
        camera.fov = 74;
        camera.position.set(eyes.head.x + x * back, eyes.head.y + y * back, eyes.head.z + 0.05);
      }

      camera.lookAt(seen.chest.x, seen.chest.y, (seen.chest.z + seen.pelvis.z) / 2 - 0.2);
      break;
    case "free":
      return;
  }

  camera.updateProjectionMatrix();
}

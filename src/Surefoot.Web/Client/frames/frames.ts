import { cameraNames, type CameraName } from "surefoot-viewer/cameras.ts";
import type { Role } from "surefoot-viewer/motion.ts";
import { dark, dim, light, Viewer, type MotionFile } from "surefoot-viewer";

/** What is asked of the pictures. */
interface Asked { cameras: string[]; focus: string; look: string; traces: boolean }

// A page without a window shows one dance and gives its picture at any count as a PNG file, for whoever asks.
let viewer: Viewer | undefined;
Object.assign(window, {
  show: (file: MotionFile, asked: Asked): void => {
    const host = document.createElement("div");
    document.body.replaceChildren(host);
    viewer = new Viewer(host, file, asked.look === "dim" ? dim : asked.look === "dark" ? dark : light);
    const view = viewer.watching.view;
    view.cameras = asked.cameras.filter((name): name is CameraName => cameraNames.some((known) => known === name));
    view.focus = viewer.motion.roles.find((role): role is Role => role === asked.focus) ?? "both";
    view.others = "hidden";
    view.traces = asked.traces;
    viewer.watching.changed();
  },
  at: (count: number): string => viewer!.pictureAt(count),
});

import { dark, dim, light, Viewer, type MotionFile, type Palette } from "surefoot-viewer";

// The room in which a dance is watched: fetches the motion and hands it to the viewer.
const main = document.querySelector<HTMLElement>("main.watch");
if (main) void open(main);

async function open(room: HTMLElement): Promise<void> {
  const say = room.querySelector<HTMLElement>("[data-say]")!;
  try {
    const answer = await fetch(room.dataset.motion!);
    if (!answer.ok) throw new Error();
    const file = await answer.json() as MotionFile;
    if (file.dancers.length === 0) {
      say.textContent = "There are no steps on this page yet. Write some, and they can be watched here.";
      return;
    }

    const viewer = new Viewer(room.querySelector<HTMLElement>("[data-viewer]")!, file, tones());
    document.addEventListener("surefoot-look", () => viewer.paint(tones()));
    say.hidden = !viewer.plain;
    if (viewer.plain) say.textContent = "This browser draws no spaces, so the dance is shown from above.";
    // Whoever looks for the pictures of a count asks for it here.
    Object.assign(window, { surefootViewer: viewer });
    document.documentElement.dataset.watching = "first";
    await viewer.ready;
    document.documentElement.dataset.watching = "whole";
  } catch {
    say.textContent = "The dance could not be fetched. Is the studio still running? Load this page again.";
  }
}

function tones(): Palette {
  const look = document.documentElement.dataset.look;
  return look === "dim" ? dim : look === "dark" ? dark : light;
}

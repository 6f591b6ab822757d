import { moments } from "../moments.ts";
import { copying } from "./copying.ts";
import { Marks } from "./marks.ts";
import { Player } from "./player.ts";

// The room in which film and page stand side by side: whatever has a time leads the film there, and the film marks what it shows.
moments();
const room = document.querySelector<HTMLElement>("main.film-room");
if (room) open(room);

function open(room: HTMLElement): void {
  copying(room);
  const video = room.querySelector<HTMLVideoElement>('[data-part="film"]');
  if (!video) return;
  const player = new Player(room, video);
  const marks = new Marks(room);
  for (const event of ["timeupdate", "seeking", "loadedmetadata"]) video.addEventListener(event, () => marks.show(video.currentTime, !video.paused));

  room.addEventListener("click", (event) => {
    // A new tab stays a new tab.
    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
    const link = (event.target as Element).closest<HTMLAnchorElement>("a[data-t]");
    if (!link) return;
    event.preventDefault();
    player.goTo(Number(link.dataset.t));
  });
  const asked = /^#t=([\d.]+)$/.exec(location.hash);
  if (asked) player.goTo(Number(asked[1]), false);
}

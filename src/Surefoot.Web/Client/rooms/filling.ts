/** Pixels that no row of the list is lower than; a screen holds fewer rows than its height has of these. */
const row = 48;

let rest: ReturnType<typeof setTimeout> | undefined;

/** Puts a new list into its place: at once what a screen can show, and the rows below it once that was drawn. */
export function fill(place: HTMLElement, html: string): void {
  clearTimeout(rest);
  const made = document.createElement("template");
  // Made by the server, which has turned every word into text.
  made.innerHTML = html;
  const list = made.content.querySelector("ul");
  const below = document.createDocumentFragment();
  if (list) below.append(...[...list.children].slice(Math.ceil(innerHeight / row)));
  place.replaceChildren(made.content);
  if (!list || !below.firstChild) return;
  // Work that is begun in a frame's own comes when the frame is drawn.
  requestAnimationFrame(() => (rest = setTimeout(() => list.append(below))));
}

/** What a page says as it opens is not read out; what comes into a place of its kind later is. */
export function notes(): void {
  const place = document.querySelector<HTMLElement>('[data-part="note"]');
  const note = place?.firstElementChild;
  if (!place || !note) return;
  note.remove();
  // The place is known as empty first, then the note comes in. Milliseconds; a frame is too short for some readers. Working value.
  setTimeout(() => place.append(note), 60);
  // Loaded again or kept as a bookmark the page would say it once more.
  const address = new URL(location.href);
  address.searchParams.delete("note");
  history.replaceState(history.state, "", address);
}

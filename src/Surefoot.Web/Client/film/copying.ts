/** Copies the list of times, and says so. */
export function copying(room: HTMLElement): void {
  const button = room.querySelector<HTMLButtonElement>('[data-part="copy"]');
  const times = room.querySelector<HTMLTextAreaElement>('[data-part="times"]');
  if (!button || !times) return;
  button.hidden = false;
  button.addEventListener("click", () => void copy(times).then((done) => {
    const says = done ? "Copied" : "Marked; copy it with the keys";
    button.textContent = says;
    room.querySelector<HTMLElement>('[data-part="heard"]')!.textContent = says;
  }));
}

async function copy(times: HTMLTextAreaElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(times.value);
    return true;
  } catch {
    // Over an open line or by a careful browser it is refused.
    times.focus();
    times.select();
    return false;
  }
}

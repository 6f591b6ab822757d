import { moment } from "./keep/words.ts";

/** Writes every moment of a page as the reader's own machine would. */
export function moments(): void {
  for (const time of document.querySelectorAll<HTMLElement>("time[data-moment]")) time.textContent = moment(Number(time.dataset.moment));
}

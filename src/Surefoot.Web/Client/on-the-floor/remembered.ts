/** Where she was with a dance on this device, so that a page loaded again goes on there. */
export interface Remembered { bite: number; tempo: number; loop: boolean }

const key = (page: number): string => `surefoot.on-the-floor.${page}`;

export function recall(page: number): Partial<Remembered> {
  try {
    const found = JSON.parse(localStorage.getItem(key(page)) ?? "{}") as unknown;
    return typeof found === "object" && found !== null ? found : {};
  } catch {
    return {}; // A browser may refuse to keep anything.
  }
}

export function remember(page: number, what: Remembered): void {
  try {
    localStorage.setItem(key(page), JSON.stringify(what));
  } catch {
    // Then it begins anew the next time.
  }
}

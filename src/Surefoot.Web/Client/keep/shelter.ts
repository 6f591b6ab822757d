import type { DraftTold } from "./server.ts";

/** The last resort: what the studio has not acknowledged yet, in the browser's own store, for each window of each page. */
export class Shelter {
  private readonly prefix: string;

  constructor(page: number, mark: string, private readonly session: string) {
    this.prefix = `surefoot.draft.${page}.${mark}.`;
  }

  put(draft: Omit<DraftTold, "session">): void {
    try {
      localStorage.setItem(this.prefix + this.session, JSON.stringify(draft));
    } catch {
      // Full, or the browser keeps nothing: then the window itself is the last resort.
    }
  }

  clear(session: string = this.session): void {
    try {
      localStorage.removeItem(this.prefix + session);
    } catch {
      // Nothing was kept either.
    }
  }

  /** What windows that are gone left here, the newest first. */
  left(): DraftTold[] {
    const found: DraftTold[] = [];
    try {
      for (const key of Object.keys(localStorage)) {
        if (!key.startsWith(this.prefix)) continue;
        const session = key.slice(this.prefix.length);
        const { sequence, basedOn, text, at } = JSON.parse(localStorage.getItem(key) ?? "{}") as Partial<DraftTold>;
        if (session !== this.session && typeof text === "string" && typeof sequence === "number" && typeof basedOn === "number" && typeof at === "number") {
          found.push({ session, sequence, basedOn, text, at });
        }
      }
    } catch {
      // What cannot be read is no draft.
    }
    return found.sort((a, b) => b.at - a.at);
  }
}

import type { DraftTold, PageOpened } from "./server.ts";
import type { Shelter } from "./shelter.ts";

/** With what a window begins. */
export interface Beginning {
  /** The page as it is kept. */
  kept: string;
  /** What nobody has kept yet, when there is something. */
  draft?: DraftTold;
}

/** The editor's own ends of lines; whatever else a page was written with. */
export const lines = (text: string) => text.replace(/\r\n?/g, "\n");

/** Chooses between the page, the newest draft the library has, and what a window that died left in this browser. */
export function begin(opened: PageOpened, shelter: Shelter): Beginning {
  const kept = lines(opened.text);
  let draft = opened.draft && lines(opened.draft.text) !== kept ? opened.draft : undefined;
  for (const left of shelter.left()) {
    const known = opened.draft?.session === left.session && opened.draft.sequence >= left.sequence;
    if (known || left.text === kept) shelter.clear(left.session);
    else if (!draft || left.at > draft.at) draft = left;
  }
  return draft ? { kept, draft: { ...draft, text: lines(draft.text) } } : { kept };
}

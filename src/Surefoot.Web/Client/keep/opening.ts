import type { DraftTold, PageOpened } from "./server.ts";
import type { Shelter } from "./shelter.ts";

/** With what a window begins. */
export interface Beginning {
  /** The page as it is kept. */
  kept: string;
  /** What nobody has kept yet, when there is something. */
  draft?: DraftTold;
  /** A draft from before the page was kept last: it is offered, not shown. */
  older?: DraftTold;
}

/** The editor's own ends of lines; whatever else a page was written with. */
export const lines = (text: string) => text.replace(/\r\n?/g, "\n");

/**
 * Chooses between the page, the newest draft the library has, and what a window that died left in this browser.
 * @param asked The draft the address asks for, however old.
 */
export function begin(opened: PageOpened, shelter: Shelter, asked: string | null): Beginning {
  const kept = lines(opened.text);
  let draft = opened.draft && lines(opened.draft.text) !== kept ? opened.draft : undefined;
  for (const left of shelter.left()) {
    const known = opened.draft?.session === left.session && opened.draft.sequence >= left.sequence;
    if (known || left.text === kept) shelter.clear(left.session);
    else if (!draft || left.at > draft.at) draft = left;
  }
  if (!draft) return { kept };
  if (draft === opened.draft && draft.at < opened.current.at && draft.session !== asked) return { kept, older: draft };
  return { kept, draft: { ...draft, text: lines(draft.text) } };
}

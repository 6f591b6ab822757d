import { make } from "../dom.ts";

/** What the keys do on the floor; a key whose deed is missing is left to what has the focus. */
export interface Deeds {
  toggle: () => void;
  step: (by: 1 | -1) => void;
  begin: () => void;
  end: () => void;
  faster: (by: 1 | -1) => void;
  part: () => void;
  who: () => void;
}

export const told = () => make("details", { class: "keys" }, make("summary", {}, "Keys"),
  "Space plays and pauses, ← and → step by count, Home and End go to the ends, + and − change the speed, L takes the next part, W looks at lead, follow or both.");

/** @param own A slider that keeps its arrows and ends to itself. */
export function keys(root: HTMLElement, own: HTMLElement, deeds: Deeds): void {
  root.addEventListener("keydown", (key) => {
    const target = key.target as HTMLElement;
    if (key.ctrlKey || key.metaKey || key.altKey || target.matches("select, input[type=number]")) return;
    const mine = target === own;
    const acts: Record<string, (() => void) | undefined> = {
      " ": target.matches("button, summary") ? undefined : deeds.toggle,
      ArrowLeft: mine ? undefined : () => deeds.step(-1),
      ArrowRight: mine ? undefined : () => deeds.step(1),
      Home: mine ? undefined : deeds.begin,
      End: mine ? undefined : deeds.end,
      "+": () => deeds.faster(1),
      "-": () => deeds.faster(-1),
      l: deeds.part,
      w: deeds.who,
    };
    const act = acts[key.key.length === 1 ? key.key.toLowerCase() : key.key];
    if (!act) return;
    key.preventDefault();
    act();
  });
}

import { button } from "../dom.ts";

const names: Record<string, string> = { text: "Text", floor: "Floor", sheet: "Sheet", problems: "Problems" };

/**
 * Where there is room for one part at a time, these choose it; where there is more room all are seen and these are hidden.
 * @param small What is seen first on a telephone.
 * @returns Tells how many problems there are, which is seen also by who looks at something else.
 */
export function panes(desk: HTMLElement, parent: HTMLElement, small: string): (problems: number) => void {
  const buttons = Object.entries(names).map(([name, words]) => button(words, () => choose(name), { "data-to": name }));
  function choose(name: string): void {
    desk.dataset.pane = name;
    for (const one of buttons) one.setAttribute("aria-pressed", String(one.dataset.to === name));
  }
  parent.append(...buttons);
  // On a telephone a dance is read, not written.
  choose(matchMedia("(max-width: 40rem)").matches ? small : "text");
  const problems = buttons.find((one) => one.dataset.to === "problems")!;
  return (told) => {
    problems.textContent = told > 0 ? `${names.problems} ${told}` : names.problems!;
  };
}

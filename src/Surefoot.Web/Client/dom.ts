/** Makes an element; words only ever become text. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Record<string, string> = {},
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

export function button(label: string, act: () => void, attributes: Record<string, string> = {}): HTMLButtonElement {
  const element = make("button", { type: "button", ...attributes }, label);
  element.addEventListener("click", act);
  return element;
}

/** Small makers of what can be pressed, chosen and pulled; each with a name of its own for those who do not see it. */
export function button(text: string, name: string, press: () => void): HTMLButtonElement {
  const element = document.createElement("button");
  element.type = "button";
  element.textContent = text;
  if (name !== text) element.setAttribute("aria-label", name);
  element.title = name;
  element.addEventListener("click", press);
  return element;
}

export function toggle(text: string, name: string, get: () => boolean, set: (on: boolean) => void): [HTMLButtonElement, () => void] {
  const element = button(text, name, () => set(!get()));
  return [element, () => element.setAttribute("aria-pressed", String(get()))];
}

export function choice(name: string, of: readonly (readonly [value: string, text: string])[], get: () => string, set: (value: string) => void): [HTMLLabelElement, () => void] {
  const label = document.createElement("label");
  const select = document.createElement("select");
  for (const [value, text] of of) select.append(new Option(text, value));
  select.addEventListener("change", () => set(select.value));
  label.append(name, " ", select);
  return [label, () => { select.value = get(); }];
}

export function pull(name: string, least: number, most: number, step: number, get: () => number, set: (value: number) => void, said: (value: number) => string): [HTMLLabelElement, () => void] {
  const label = document.createElement("label");
  const input = document.createElement("input");
  const value = document.createElement("output");
  Object.assign(input, { type: "range", min: String(least), max: String(most), step: String(step) });
  input.addEventListener("input", () => set(Number(input.value)));
  label.append(name, " ", input, " ", value);
  return [label, () => {
    const now = get();
    if (document.activeElement !== input || Math.abs(Number(input.value) - now) > step) input.value = String(now);
    value.textContent = said(now);
    input.setAttribute("aria-valuetext", said(now));
  }];
}

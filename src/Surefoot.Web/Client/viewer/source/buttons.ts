import { mark, put } from "./put.ts";

/** Small makers of what can be pressed, chosen and pulled; each with a name of its own for those who do not see it. */
export function button(text: string, name: string, press: () => void): HTMLButtonElement {
  const element = document.createElement("button");
  element.type = "button";
  element.textContent = text;
  // Whoever speaks to the machine says what stands on the button, so the name has to have that in it.
  if (name !== text) element.setAttribute("aria-label", /\p{L}/u.test(text) && !name.includes(text) ? `${text}: ${name}` : name);
  element.title = name;
  element.addEventListener("click", press);
  return element;
}

export function toggle(text: string, name: string, get: () => boolean, set: (on: boolean) => void): [HTMLButtonElement, () => void] {
  const element = button(text, name, () => set(!get()));
  return [element, () => mark(element, "aria-pressed", String(get()))];
}

export function choice(name: string, of: readonly (readonly [value: string, text: string])[], get: () => string, set: (value: string) => void): [HTMLLabelElement, () => void] {
  const label = document.createElement("label");
  const select = document.createElement("select");
  for (const [value, text] of of) select.append(new Option(text, value));
  select.addEventListener("change", () => set(select.value));
  label.append(name, " ", select);
  return [label, () => { if (select.value !== get()) select.value = get(); }];
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
    put(value, said(now));
    mark(input, "aria-valuetext", said(now));
  }];
}

/** One of many, in groups with names; a group without one stands alone. */
export function grouped(name: string, of: readonly (readonly [group: string, members: readonly (readonly [value: string, text: string])[]])[], get: () => string, set: (value: string) => void): [HTMLLabelElement, () => void] {
  const [label, renew] = choice(name, [], get, set);
  const select = label.querySelector("select")!;
  for (const [group, members] of of) {
    const place = group ? Object.assign(document.createElement("optgroup"), { label: group }) : select;
    for (const [value, text] of members) place.append(new Option(text, value));
    if (place !== select) select.append(place);
  }

  return [label, renew];
}

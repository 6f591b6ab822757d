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

/** A whole number that is typed; what is outside of the bounds is brought inside. */
export function whole(name: string, least: number, most: number, get: () => number, set: (value: number) => void): [HTMLLabelElement, () => void] {
  const label = document.createElement("label");
  const input = document.createElement("input");
  Object.assign(input, { type: "number", min: String(least), max: String(most), step: "1", inputMode: "numeric" });
  input.addEventListener("change", () => {
    const typed = Math.round(Number(input.value));
    set(Number.isFinite(typed) && input.value !== "" ? Math.min(Math.max(typed, least), most) : get());
    input.value = String(get());
  });
  label.append(name, " ", input);
  return [label, () => {
    if (document.activeElement !== input && input.value !== String(get())) input.value = String(get());
  }];
}

/** Writes a text where it is another one. The same text again would be laid out and painted again, sixty times a second. */
export function put(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/** Sets an attribute where it is another one. */
export function mark(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

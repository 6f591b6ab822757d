/** The tones of the picture, taken from the page so that they change with its look. */
export interface Tones { ink: string; soft: string; faint: string; floor: string; line: string; paper: string; quiet: string; accent: string }

export function tonesOf(element: Element): Tones {
  const style = getComputedStyle(element);
  const tone = (name: string) => style.getPropertyValue(`--${name}`).trim() || "#888";
  return {
    ink: tone("ink"), soft: tone("soft"), faint: tone("faint"), floor: tone("floor"),
    line: tone("line"), paper: tone("paper"), quiet: tone("quiet"), accent: tone("accent"),
  };
}

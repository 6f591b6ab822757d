/** "14:03", with the day where it is not today's, as the reader's own machine writes them. */
export function moment(at: number): string {
  const then = new Date(at);
  const today = then.toDateString() === new Date().toDateString();
  return then.toLocaleString([], { hour: "2-digit", minute: "2-digit", ...(today ? {} : { day: "numeric", month: "short" }) });
}

/** What machines call themselves, and what people call them. */
const machines: [string, string][] = [
  ["iPhone", "an iPhone"], ["iPad", "an iPad"], ["Android", "an Android"], ["CrOS", "a Chromebook"],
  ["Macintosh", "a Mac"], ["Windows", "a Windows computer"], ["Linux", "a Linux computer"],
];

/** What this is written on, in a word or two, for the history. */
export function device(): string {
  const said = navigator.userAgent;
  const name = machines.find(([own]) => said.includes(own))?.[1] ?? "";
  return name === "an Android" ? (said.includes("Mobile") ? "an Android phone" : "an Android tablet") : name;
}

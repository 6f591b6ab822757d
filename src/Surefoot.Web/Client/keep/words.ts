/** "14:03", with the day where it is not today's, as the reader's own machine writes them. */
export function moment(at: number): string {
  const then = new Date(at);
  const today = then.toDateString() === new Date().toDateString();
  return then.toLocaleString([], { hour: "2-digit", minute: "2-digit", ...(today ? {} : { day: "numeric", month: "short" }) });
}

/** What this is written on, in a word, for the history. */
export function device(): string {
  const names = ["Android", "iPhone", "iPad", "Windows", "Macintosh", "CrOS", "Linux"];
  return names.find((name) => navigator.userAgent.includes(name)) ?? "";
}

/**
 * What is typed into a text that is kept with its own button would be gone when another button of the room is pressed, or
 * when one goes elsewhere. The button waits and says so; on leaving the browser asks in its own words.
 */
export function unkept(): void {
  const text = document.querySelector<HTMLTextAreaElement>('textarea[name="text"]');
  const own = text?.form;
  if (!text || !own || !own.action.endsWith("/keep")) return;
  const typed = (): boolean => text.value !== text.defaultValue;
  const says = document.createElement("p");
  says.className = "term-says";
  says.setAttribute("role", "alert");
  let sent = false;
  document.addEventListener("submit", (e) => {
    if (e.target === own || !typed()) {
      sent = true;
      return;
    }

    e.preventDefault();
    says.textContent = `What you typed is not kept yet. Press “${own.querySelector("button")?.textContent.trim() ?? "Keep"}” first; then do this again.`;
    if (!says.isConnected) text.closest("label")?.after(says);
    text.focus();
  });
  text.addEventListener("input", () => { if (!typed()) says.remove(); });
  addEventListener("beforeunload", (e) => { if (!sent && typed()) e.preventDefault(); });
  // Back to a page that was left is no page that was sent.
  addEventListener("pageshow", () => { sent = false; });
}

import { shelfName } from "../on-the-floor/shelf.ts";

// A passphrase of several words is hard to type unseen on a tablet: whoever is alone may look at it.
for (const tick of document.querySelectorAll<HTMLLabelElement>('[data-part="show"]')) {
  tick.hidden = false;
  tick.querySelector("input")!.addEventListener("change", (event) => {
    const shown = (event.target as HTMLInputElement).checked;
    for (const field of tick.closest("form")!.querySelectorAll<HTMLInputElement>('[data-part="passphrase"]')) field.type = shown ? "text" : "password";
  });
}
// Whoever is asked to sign in is not signed in: what the screen for the dance floor kept on this device goes with that.
if ("caches" in window) void caches.delete(shelfName).catch(() => false);


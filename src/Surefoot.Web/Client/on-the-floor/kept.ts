import type { Held } from "./shelf.ts";

/** How long the device may take to keep a page, in milliseconds, before it is taken for one that does not. Working value. */
const patience = 15_000;

/** The keeper of this screen for when the studio is out of reach. Says whether the page and all it needs are kept on the device. */
export async function keepHere(): Promise<Held> {
  try {
    if (!("serviceWorker" in navigator)) return "not";
    await navigator.serviceWorker.register("/on-the-floor/keeper.js", { scope: "/on-the-floor/" });
    const ready = await Promise.race([navigator.serviceWorker.ready, new Promise<undefined>((late) => window.setTimeout(late, patience))]);
    if (!ready) return "not";
    const parts = [...document.querySelectorAll<HTMLLinkElement | HTMLScriptElement>("link[href], script[src]")].map((e) => ("href" in e ? e.href : e.src));
    return await new Promise((done) => {
      const { port1, port2 } = new MessageChannel();
      // A keeper from before this page was made says yes or no.
      port1.onmessage = (said: MessageEvent<Held | boolean>) => done(typeof said.data === "string" ? said.data : said.data ? "now" : "not");
      ready.active?.postMessage({ keep: [location.href.split("#")[0], ...parts] }, [port2]);
      window.setTimeout(() => done("not"), patience);
    });
  } catch {
    // A browser refuses it where the line is not one it trusts; the page then works as long as it stays open.
    return "not";
  }
}

// Runs beside the pages under /on-the-floor/ and answers for the studio when it is out of reach. It keeps those pages and the few files
// they are made of, and nothing else; what the studio says itself always comes first.
import { type Held, shelfName } from "./shelf.ts";

interface Waiting extends Event { waitUntil(work: Promise<unknown>): void }
interface Asked extends Waiting { request: Request; respondWith(answer: Promise<Response>): void }
interface Told extends Waiting { data: { keep?: string[] }; ports: MessagePort[] }
interface Keeper {
  location: Location;
  clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: "install" | "activate", act: (event: Waiting) => void): void;
  addEventListener(kind: "fetch", act: (event: Asked) => void): void;
  addEventListener(kind: "message", act: (event: Told) => void): void;
}
declare const self: Keeper;

/** How long the studio may take, in milliseconds, before what is kept is shown: a hall's network may hold on to an answer for ever. Working value. */
const patience = 3000;

/** How long it may take to keep a file, in milliseconds; a little less than the page waits for the answer. Working value. */
const patienceToKeep = 12_000;

const files = ["/dist/on-the-floor.js", "/dist/on-the-floor.css", "/mark.svg"];

/** Pages of this screen and its own files; everything else goes its way as if nobody stood here. */
function isOurs(address: string): boolean {
  const { origin, pathname } = new URL(address);
  if (origin !== self.location.origin) return false;
  return files.includes(pathname) || (pathname.startsWith("/on-the-floor/") && pathname !== "/on-the-floor/keeper.js");
}

self.addEventListener("install", (event) => event.waitUntil(self.skipWaiting()));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));

self.addEventListener("fetch", (event) => {
  if (event.request.method === "GET" && isOurs(event.request.url)) event.respondWith(answer(event.request));
});

self.addEventListener("message", (event) => {
  const wanted = (event.data.keep ?? []).filter(isOurs);
  event.waitUntil(Promise.all(wanted.map((address) => keep(address))).then((all) => event.ports[0]?.postMessage(worst(all)), () => event.ports[0]?.postMessage("not" satisfies Held)));
});

async function answer(request: Request): Promise<Response> {
  const kept = await (await caches.open(shelfName)).match(request, { ignoreVary: true });
  const asked = fetch(request).then(async (response) => {
    await put(request.url, response);
    return response;
  });
  if (!kept) return asked;
  return Promise.race([asked.catch(() => kept), new Promise<Response>((late) => setTimeout(() => late(kept), patience))]);
}

/** What is on the device already stays good when the studio cannot be asked for it again. */
async function keep(address: string): Promise<Held> {
  try {
    const response = await fetch(address, { credentials: "same-origin", redirect: "manual", signal: AbortSignal.timeout(patienceToKeep) });
    if (await put(address, response)) return "now";
    if (response.status < 500) return "not";
  } catch {
    // Out of reach.
  }
  return (await (await caches.open(shelfName)).match(address, { ignoreVary: true })) ? "before" : "not";
}

/** A page is kept only where all its parts are. */
function worst(all: Held[]): Held {
  return all.includes("not") ? "not" : all.includes("before") ? "before" : "now";
}

/** A page that was thrown away, or that nobody here may see any more, is not kept either. */
async function put(address: string, response: Response): Promise<boolean> {
  const shelf = await caches.open(shelfName);
  if (response.status === 200 && response.type === "basic" && !response.redirected) {
    await shelf.put(address, response.clone());
    return true;
  }

  // The studio stumbling is no reason to forget.
  if (response.status < 500) await shelf.delete(address, { ignoreVary: true });
  return false;
}

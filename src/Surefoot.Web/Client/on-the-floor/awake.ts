// Keeps the screen lit while she teaches, where the browser can; it lets go by itself when the page is out of sight.
interface Lock { released: boolean; release(): Promise<void> }
interface Locks { request(kind: "screen"): Promise<Lock> }

let lock: Lock | undefined;
let wanted = false;

export async function stayAwake(): Promise<void> {
  wanted = true;
  const locks = (navigator as { wakeLock?: Locks }).wakeLock;
  if (!locks || document.visibilityState !== "visible" || (lock && !lock.released)) return;
  try {
    lock = await locks.request("screen");
    document.documentElement.dataset.awake = "";
  } catch {
    // A nearly empty battery refuses; the screen then goes dark as it always does.
    delete document.documentElement.dataset.awake;
  }
}

document.addEventListener("visibilitychange", () => {
  if (wanted) void stayAwake();
});

// The screen that lies in her hand while she teaches: one count, one call, and a touch anywhere goes on.
import { stayAwake } from "./awake.ts";
import { Beat } from "./beat.ts";
import { beforeBite, callAt, dancedOn, type Dance } from "./dance.ts";
import { keepHere } from "./kept.ts";
import { recall, remember } from "./remembered.ts";
import type { Held } from "./shelf.ts";
import { tempos, Tools } from "./tools.ts";
import { back, begun, countedIn, following, on, type Walk } from "./walk.ts";

/** What the foot of the screen says of working without the studio. */
const said: Record<Held, string> = {
  now: "Kept on this device: it works without the studio.",
  before: "From this device: the studio is out of reach, and it works without it.",
  not: "It works without the studio as long as it stays open.",
};

/** Letters from which a call is set smaller, so that the count keeps its room. Working value. */
const long = 32;

const dance = JSON.parse(document.querySelector("[data-dance]")!.textContent!) as Dance;
const part = <E extends HTMLElement>(name: string): E | null => document.querySelector<E>(`[data-part="${name}"]`);
const stage = part<HTMLButtonElement>("stage");
if (stage && dance.bites.length > 0) open(stage);
void keepHere().then((held) => {
  part("kept")!.textContent = said[held];
  document.documentElement.dataset.kept = held === "not" ? "open" : "here";
});
document.documentElement.dataset.ready = "";

function open(stage: HTMLButtonElement): void {
  const [count, danced, when, call, heard] = [part("count")!, part("danced")!, part("when")!, part("call")!, part("heard")!];
  const before = recall(dance.page);
  let tempo = within(before.tempo ?? dance.tempo);
  let walk: Walk = begun(dance, asked() ?? before.bite ?? 0, before.loop ?? true);
  const beat = new Beat(() => {
    const next = fresh ? walk : on(dance, walk);
    fresh = false;
    if (next) walk = next;
    show();
    return next !== undefined;
  });
  // The first count after a start is the one that is shown already.
  let fresh = false;

  const tools = new Tools(part("tools")!, dance, {
    bite: (n) => go(() => { walk = begun(dance, n, walk.loop); }),
    faster: (by) => {
      tempo = within(tempo + by);
      beat.change(tempo);
      show();
    },
    loop: () => {
      walk = { ...walk, loop: !walk.loop };
      show();
    },
    play,
  });

  stage.addEventListener("click", () => goOn());
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.target instanceof HTMLSelectElement) return;
    const act = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (!act || (event.target instanceof HTMLElement && event.target !== stage && (event.key === " " || event.key === "Enter") && event.target.closest("button, a"))) return;
    event.preventDefault();
    act();
  });
  // A presenter's clicker sends the page keys.
  const keys: Record<string, () => void> = {
    " ": goOn, Enter: goOn, ArrowRight: goOn, PageDown: goOn, ArrowLeft: goBack, PageUp: goBack,
    ArrowDown: () => { nextBite(1); }, ArrowUp: () => { nextBite(-1); }, p: play, l: () => { walk = { ...walk, loop: !walk.loop }; show(); },
    "+": () => { faster(1); }, "=": () => { faster(1); }, "-": () => { faster(-1); },
  };
  show();

  /** Standing still: the next count. At tempo: the next bite, when this one has come to its end. */
  function goOn(): void {
    void stayAwake();
    if (beat.running) walk = { ...walk, then: following(dance, walk.then ?? walk.bite) };
    else walk = on(dance, walk) ?? begun(dance, following(dance, walk.bite), walk.loop);
    show(true);
  }

  function goBack(): void {
    if (!beat.running) walk = back(dance, walk);
    else walk = { ...walk, then: undefined };
    show(true);
  }

  function nextBite(by: number): void {
    go(() => { walk = begun(dance, (walk.bite + by + dance.bites.length) % dance.bites.length, walk.loop); });
  }

  function go(change: () => void): void {
    const playing = beat.running;
    beat.stop();
    change();
    if (playing) play();
    else show(true);
  }

  function faster(by: number): void {
    tempo = within(tempo + by * tempos.step);
    beat.change(tempo);
    show();
  }

  function play(): void {
    void stayAwake();
    if (beat.running) {
      beat.stop();
      walk = begun(dance, walk.bite, walk.loop);
      show(true);
      return;
    }
    walk = countedIn(dance, walk);
    fresh = true;
    beat.start(tempo);
    heard.textContent = `Counting ${dance.bites[walk.bite]!.name}`;
  }

  function show(say = false): void {
    const bite = dance.bites[walk.bite]!;
    const size = dance.beats === 3 ? 6 : 8;
    const waiting = walk.count < 1;
    const number = waiting ? String(size + walk.count) : dance.counts[walk.count - 1] ?? "";
    const said = waiting ? beforeBite(dance, bite, size, walk.count) : callAt(dance, bite, walk.count, walk.loop && walk.then === undefined);
    put(count, number);
    put(danced, waiting ? "ready" : dancedOn(dance, walk.count).join("  ·  "));
    put(call, walk.then !== undefined && !said ? `then ${dance.bites[walk.then]!.name}` : said ? said.words : "");
    call.dataset.lines = String(said ? said.words.split("\n").length : 1);
    call.dataset.long = String(!!said && said.words.length > long);
    call.dataset.when = !said ? "" : said.now ? "call it now" : `on ${said.on}`;
    stage.dataset.waiting = String(waiting);
    stage.dataset.then = walk.then === undefined ? "" : dance.bites[walk.then]!.name;
    stage.dataset.beat = beat.running ? String(Math.abs(walk.count) % 2) : "";
    tools.show(walk.bite, tempo, walk.loop, beat.running);
    const words = `Count ${number}${waiting ? "" : `, ${dancedOn(dance, walk.count).join(", ")}`}${said ? said.now ? `. Call: ${aloud(said.words)}` : `. Next call: ${aloud(said.words)}, on ${said.on}` : ""}`;
    put(when, !said ? "" : said.now ? "Call:" : `Next call, on ${said.on}:`);
    // At tempo nobody could listen to every count.
    if (say && !beat.running) heard.textContent = words;
    if (say && beat.running && walk.then !== undefined) heard.textContent = `Then ${dance.bites[walk.then]!.name}`;
    remember(dance.page, { bite: walk.bite, tempo, loop: walk.loop });
  }
}

/** The bite a lesson's sheet leads to, by its counts: "#9-16". */
function asked(): number | undefined {
  const [, from, to] = /^#(\d+)-(\d+)$/u.exec(location.hash) ?? [];
  const found = dance.bites.findIndex((b) => b.from === Number(from) && b.to === Number(to));
  return found < 0 ? undefined : found;
}

function within(tempo: number): number {
  return Math.min(tempos.fastest, Math.max(tempos.slowest, Math.round(tempo) || 100));
}

// Each role's words after the other's, as they are heard.
function aloud(words: string): string {
  return words.replaceAll("\n", ", ");
}

function put(place: HTMLElement, words: string): void {
  if (place.textContent !== words) place.textContent = words;
}

import { fill } from "./filling.ts";

/** Milliseconds before the number of dances is read out, so that it is not said for each letter. Working value. */
const quiet = 700;

/** Milliseconds before the address says what is shown: a browser takes longer for that than for the list. Working value. */
const settled = 200;

/** The list follows the form while somebody types or chooses, and open menus close as menus do. */
export function shelf(): void {
  menus();
  const form = document.querySelector<HTMLFormElement>('[data-part="sieve"]');
  const found = document.querySelector<HTMLElement>('[data-part="found"]');
  if (!form || !found) return;
  let saying: ReturnType<typeof setTimeout> | undefined;
  let under: AbortController | undefined;
  let noting: ReturnType<typeof setTimeout> | undefined;
  let asking: string | undefined = answered(form);
  let shown = asking;
  let noted = shown;

  // At once, with each letter; a question that is under way when the next one comes is given up.
  form.addEventListener("input", () => void ask());
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void ask();
  });
  // Whoever goes to a dance comes back to the list it was chosen from.
  document.addEventListener("click", note, true);
  // What was typed before this was here has been heard by nobody.
  void ask();

  function note(): void {
    clearTimeout(noting);
    if (noted === shown) return;
    noted = shown;
    history.replaceState(history.state, "", shown === "" ? "/" : `/${shown}`);
  }

  async function ask(): Promise<void> {
    const now = asked(form!);
    if (now === asking) return;
    asking = now;
    under?.abort();
    under = new AbortController();
    try {
      const answer = await fetch(`/shelf/list${now}`, { signal: under.signal });
      if (!answer.ok) throw new Error(answer.statusText);
      fill(found!, await answer.text());
      shown = now;
      narrowing(form!);
      usually(form!);
      found!.dataset.answered = String(performance.now());
      clearTimeout(noting);
      noting = setTimeout(note, settled);
      clearTimeout(saying);
      saying = setTimeout(() => say(found!.querySelector('[data-part="tally"]')?.textContent ?? ""), quiet);
    } catch (fault) {
      if (fault instanceof DOMException && fault.name === "AbortError") return;
      asking = undefined;
      say("The studio does not answer. Is it still running?");
    }
  }
}

function asked(form: HTMLFormElement): string {
  return question(new FormData(form));
}

/** The question the page came as the answer to: what its address says, in the order of the form. */
function answered(form: HTMLFormElement): string {
  const said = new URLSearchParams(location.search);
  const names = new Set([...form.elements].map((field) => field.getAttribute("name") ?? ""));
  return question([...names].filter((name) => name !== "").flatMap((name) => said.getAll(name).map((value): [string, string] => [name, value])));
}

function question(fields: Iterable<[string, FormDataEntryValue]>): string {
  const words = new URLSearchParams();
  for (const [name, value] of fields) if (typeof value === "string" && value.trim() !== "") words.append(name, value.trim());
  const text = words.toString();
  return text === "" ? "" : `?${text}`;
}

function narrowing(form: HTMLFormElement): void {
  const place = form.querySelector<HTMLElement>('[data-part="narrowing"]');
  if (!place) return;
  const fields = [...form.querySelectorAll<HTMLInputElement | HTMLSelectElement>(".narrows select, .narrows input")].filter((f) => f.value !== "");
  const tempo = fields.filter((f) => f.name === "from" || f.name === "to").length;
  const count = fields.length - (tempo === 2 ? 1 : 0);
  place.textContent = count > 0 ? ` (${count})` : "";
}

/** What the list is sorted by where nothing else is chosen: by title, and once words are looked for by what fits best. */
function usually(form: HTMLFormElement): void {
  const words = form.querySelector<HTMLInputElement>('input[name="q"]');
  const usual = form.querySelector<HTMLOptionElement>('select[name="sort"] option[value=""]');
  if (words && usual) usual.text = (words.value.trim() === "" ? usual.dataset.list : usual.dataset.search) ?? "";
}

function say(words: string): void {
  const heard = document.querySelector<HTMLElement>('[data-part="heard"]');
  if (heard) heard.textContent = words;
}

function menus(): void {
  const closing = "details.more[open], details.new[open]";
  document.addEventListener("click", (event) => {
    for (const menu of document.querySelectorAll<HTMLDetailsElement>(closing)) if (!menu.contains(event.target as Node)) menu.open = false;
  });
  // It goes only to the menu itself, so it is caught on its way down.
  document.addEventListener("toggle", (event) => {
    const menu = event.target;
    if (!(menu instanceof HTMLDetailsElement) || !menu.open || !menu.matches(closing)) return;
    menu.querySelector<HTMLInputElement>('input[name="title"]')?.focus();
    menu.lastElementChild?.scrollIntoView({ block: "nearest" });
  }, true);

  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    for (const menu of document.querySelectorAll<HTMLDetailsElement>(closing)) {
      menu.open = false;
      menu.querySelector("summary")?.focus();
    }
  });
}

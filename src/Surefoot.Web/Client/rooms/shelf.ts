/** Milliseconds without a key before the list is asked for: shorter than two keys of a fast typist. */
const pause = 15;

/** Milliseconds before the number of dances is read out, so that it is not said for each letter. Working value. */
const quiet = 700;

/** The list follows the form while somebody types or chooses, and open menus close as menus do. */
export function shelf(): void {
  menus();
  const form = document.querySelector<HTMLFormElement>('[data-part="sieve"]');
  const found = document.querySelector<HTMLElement>('[data-part="found"]');
  if (!form || !found) return;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let saying: ReturnType<typeof setTimeout> | undefined;
  let under: AbortController | undefined;
  let shown = asked(form);

  form.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void ask(), pause);
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    void ask();
  });

  async function ask(): Promise<void> {
    const now = asked(form!);
    if (now === shown) return;
    under?.abort();
    under = new AbortController();
    try {
      const answer = await fetch(`/shelf/list${now}`, { signal: under.signal });
      if (!answer.ok) throw new Error(answer.statusText);
      // Made by the server, which has turned every word into text.
      found!.innerHTML = await answer.text();
      shown = now;
      history.replaceState(history.state, "", now === "" ? "/" : `/${now}`);
      narrowing(form!);
      found!.dataset.answered = String(performance.now());
      clearTimeout(saying);
      saying = setTimeout(() => say(found!.querySelector('[data-part="tally"]')?.textContent ?? ""), quiet);
    } catch (fault) {
      if (fault instanceof DOMException && fault.name === "AbortError") return;
      say("The studio does not answer. Is it still running?");
    }
  }
}

function asked(form: HTMLFormElement): string {
  const words = new URLSearchParams();
  for (const [name, value] of new FormData(form)) if (typeof value === "string" && value.trim() !== "") words.append(name, value.trim());
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

function say(words: string): void {
  const heard = document.querySelector<HTMLElement>('[data-part="heard"]');
  if (heard) heard.textContent = words;
}

function menus(): void {
  const closing = "details.more[open], details.new[open]";
  document.addEventListener("click", (event) => {
    for (const menu of document.querySelectorAll<HTMLDetailsElement>(closing)) if (!menu.contains(event.target as Node)) menu.open = false;
  });
  document.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    for (const menu of document.querySelectorAll<HTMLDetailsElement>(closing)) {
      menu.open = false;
      menu.querySelector("summary")?.focus();
    }
  });
}

/** Milliseconds between two looks at an import that runs. Working value. */
const between = 400;

interface State {
  ready: boolean;
  done: number;
  pages: number;
}

/** Shows how far an import is, and its report once it is done. */
export function running(): void {
  const part = document.querySelector<HTMLElement>('[data-part="running"]');
  if (!part) return;
  const words = part.querySelector<HTMLElement>('[data-part="how-far"]')!;
  const bar = part.querySelector("progress")!;
  const look = async (): Promise<void> => {
    try {
      const answer = await fetch(part.dataset.state!);
      const state = (await answer.json()) as State;
      if (state.ready) {
        location.reload();
        return;
      }
      if (state.pages > 0) {
        words.textContent = `${state.done} of ${state.pages} pages`;
        bar.max = state.pages;
        bar.value = state.done;
      }
    } catch {
      words.textContent = "The studio does not answer. Is it still running?";
    }
    setTimeout(() => void look(), between);
  };
  setTimeout(() => void look(), between);
}

import { moments } from "../moments.ts";
import { PageServer, Refusal } from "./server.ts";
import { device } from "./words.ts";

// A list of versions: moments in the reader's own way, and the buttons that bring one back.
moments();
const told = document.querySelector<HTMLElement>("[data-told]");
for (const button of document.querySelectorAll<HTMLButtonElement>("button[data-back]")) {
  button.addEventListener("click", () => void back(button));
}

async function back(button: HTMLButtonElement): Promise<void> {
  const page = Number(button.dataset.page);
  button.disabled = true;
  try {
    await new PageServer(page).back(Number(button.dataset.back), device());
    location.assign(`/dance/${page}/history`);
  } catch (fault) {
    button.disabled = false;
    if (!told) return;
    told.className = "trouble";
    told.textContent = fault instanceof Refusal ? fault.message : "That could not be done: the studio does not answer.";
  }
}

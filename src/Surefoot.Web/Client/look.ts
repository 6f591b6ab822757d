// The look that was chosen last, put on before anything is drawn; else the notebook's, else what the machine prefers.
export {};

const looks = ["light", "dark", "dim"];
const key = "surefoot.look";

function kept(): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null; // A browser may refuse to keep anything.
  }
}

function put(look: string): void {
  document.documentElement.dataset.look = look;
  document.dispatchEvent(new CustomEvent("surefoot-look", { detail: look }));
}

const before = [kept(), document.documentElement.dataset.usualLook].find((look) => look && looks.includes(look));
put(before ? before : matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light");

document.addEventListener("DOMContentLoaded", () => {
  const chooser = document.querySelector<HTMLSelectElement>("[data-look-chooser]");
  if (chooser) {
    chooser.value = document.documentElement.dataset.look ?? "light";
    chooser.addEventListener("change", () => {
      put(chooser.value);
      try {
        localStorage.setItem(key, chooser.value);
      } catch {
        // Then it holds for this page only.
      }
    });
  }
  // A page with parts that start later says itself when it is ready.
  if (!document.querySelector("[data-interactive]")) document.documentElement.dataset.ready = "";
});

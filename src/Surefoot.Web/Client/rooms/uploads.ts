/** Says before anything travels when it is more than the form takes, and that it travels. */
export function uploads(): void {
  for (const form of document.querySelectorAll<HTMLFormElement>("form[data-most]")) {
    const chosen = [...form.querySelectorAll<HTMLInputElement>('input[type="file"]')];
    const says = document.createElement("p");
    says.className = "hint chosen";
    says.setAttribute("role", "status");
    form.querySelector("button")!.before(says);

    const look = (): boolean => {
      const files = chosen.flatMap((input) => [...(input.files ?? [])]);
      const bytes = files.reduce((sum, file) => sum + file.size, 0);
      const tooMany = files.length > Number(form.dataset.files ?? 1);
      const tooLarge = bytes > Number(form.dataset.most);
      says.classList.toggle("bad", tooMany || tooLarge);
      says.textContent = tooMany
        ? `These are ${files.length} files, more than can be sent at once. Pack them into a zip, or send a part.`
        : tooLarge
          ? `This is ${size(bytes)}, more than can be sent at once.`
          : files.length > 0
            ? `${files.length === 1 ? files[0]!.name : `${files.length} files`}, ${size(bytes)}`
            : "";
      return files.length > 0 && !tooMany && !tooLarge;
    };

    form.addEventListener("input", look);
    // Chosen before this was here, or kept by the browser when it came back to the page.
    look();
    form.addEventListener("submit", (event) => {
      if (!look()) {
        event.preventDefault();
        if (says.textContent === "") says.textContent = "Choose something first.";
        return;
      }
      form.querySelector("button")!.setAttribute("aria-disabled", "true");
      says.textContent += " … on its way";
    });
  }
}

function size(bytes: number): string {
  return bytes < 1 << 20 ? `${Math.max(1, Math.round(bytes / 1024))} kB` : `${(bytes / (1 << 20)).toFixed(1).replace(".", document.documentElement.dataset.mark ?? ".")} MB`;
}

// The line above a sheet that is printed: what is chosen is shown at once, and one button prints.
export {};

const form = document.querySelector<HTMLFormElement>(".print-bar form");
form?.addEventListener("change", () => {
  // Fields left as they usually are stay out of the address.
  for (const select of form.querySelectorAll("select")) select.disabled = select.value === "";
  form.submit();
});
const print = document.querySelector<HTMLButtonElement>("[data-print]");
print?.addEventListener("click", () => window.print());
print?.focus();
document.querySelector<HTMLElement>("[data-show]")?.setAttribute("hidden", "");
// On a narrow screen a picture is moved sideways; the keyboard has to reach it for that.
for (const figure of document.querySelectorAll<HTMLElement>("figure")) {
  if (figure.scrollWidth > figure.clientWidth) figure.tabIndex = 0;
}

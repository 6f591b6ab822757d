import { make } from "../dom.ts";
import type { Standing } from "./keeper.ts";
import { moment } from "./words.ts";

/** Letters of a note; the library takes as many. */
const longestNote = 4000;

/** The quiet line that says how it stands, and the button that keeps a version. */
export class Bar {
  readonly notices = make("div", { class: "notices", role: "status" });
  private readonly standing = make("p", { class: "standing", "data-standing": "" });
  private stood: Standing | undefined;
  private unanswered = false;
  private readonly note = make("input", { type: "text", maxlength: String(longestNote), autocomplete: "off", placeholder: "what is new in it" });

  /**
   * @param watch Where what is in the window is watched.
   * @param floor Where it is called on the floor.
   * @param print Where its sheet is printed.
   * @param compare Where it is laid beside another dance or version.
   */
  constructor(parent: HTMLElement, page: number, keep: (note: string) => void, watch: () => string, floor: () => string, print: () => string, compare: () => string) {
    const form = make("form", { class: "keep" },
      make("label", {}, make("span", {}, "Note"), this.note),
      make("button", { type: "submit", class: "primary", title: "Ctrl+S", "aria-keyshortcuts": "Control+S" }, "Keep this version"));
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      keep(this.note.value);
    });
    const watching = leading("Watch", `/dance/${page}/watch`, watch);
    const printing = leading("Print", `/dance/${page}/print`, print);
    const comparing = leading("Compare", `/compare?a=${page}`, compare);
    parent.append(
      make("div", { class: "keeping-line" }, this.standing, form, make("nav", { class: "ways", "aria-label": "This dance" }, watching, make("a", { href: `/dance/${page}/film` }, "Film"), make("a", { href: `/details/${page}` }, "Details"), make("a", { href: `/dance/${page}/history` }, "History"), comparing, make("a", { href: `/dance/${page}/like` }, "Like this one"), make("a", { href: `/dance/${page}/learn` }, "To learn"), leading("On the floor", `/on-the-floor/${page}`, floor), printing)),
      this.notices,
    );
  }

  get noted(): string {
    return this.note.value;
  }

  /** The note belongs to what was kept with it. */
  clearNote(): void {
    this.note.value = "";
  }

  stands(standing: Standing): void {
    this.stood = standing;
    this.draw();
  }

  /** The studio answers nothing just now; said once, here, whoever asked in vain. */
  away(away: boolean): void {
    this.unanswered = away;
    this.draw();
  }

  private draw(): void {
    if (!this.stood) return;
    // What is not kept yet is the more important thing to know.
    const away = this.unanswered && this.stood.kind !== "lost" && this.stood.kind !== "signed-out";
    const kind = away ? "lost" : this.stood.kind;
    // Told again and again while it is tried; the way to sign in must not move under a finger.
    if (kind === "signed-out" && this.standing.dataset.standing === kind) return;
    this.standing.dataset.standing = kind;
    this.standing.textContent = away ? "The studio does not answer. Is it still running? What is written here stays in this window." : said(this.stood);
    // Beside this window, so that what is in it stays where it is.
    if (kind === "signed-out") this.standing.append(" ", make("a", { href: "/sign-in", target: "_blank" }, "Sign in"));
  }
}

/** A link to where it has to lead just when it is followed. */
function leading(words: string, usual: string, to: () => string): HTMLAnchorElement {
  const link = make("a", { href: usual }, words);
  for (const event of ["pointerdown", "focus", "click"]) link.addEventListener(event, () => (link.href = to()));
  return link;
}

function said(standing: Standing): string {
  switch (standing.kind) {
    case "kept":
      return standing.at > 0 ? `Kept as version ${standing.version}, ${moment(standing.at)}` : `As kept in version ${standing.version}`;
    case "writing":
      return "Writing …";
    case "draft":
      return `Kept as a draft ${moment(standing.at)}`;
    case "lost":
      return "Not kept yet: the studio does not answer. It stays in this window, and is checked and kept when the studio is back.";
    case "signed-out":
      return "Not kept yet: this device is not signed in any more. It stays in this window and is sent once you have signed in.";
    case "refused":
      return `Not kept: ${standing.why}`;
  }
}

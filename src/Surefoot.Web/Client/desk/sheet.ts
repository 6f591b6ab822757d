import { make } from "../dom.ts";

/** The sheet as the server makes it, in a frame that can do nothing but show it. */
export class Sheet {
  private readonly frame = make("iframe", { title: "The sheet of this dance", sandbox: "", class: "sheet-frame", tabindex: "0" });
  private address = "";
  private part = 0;
  private errors = 0;

  constructor(parent: HTMLElement) {
    parent.append(this.frame);
    document.addEventListener("surefoot-look", this.load);
  }

  /** Shows the sheet of the text that the server read last. */
  show(address: string): void {
    this.address = address;
    this.load();
  }

  /** How many errors the page has, which the sheet says of itself. */
  doubts(errors: number, now: boolean): void {
    if (errors === this.errors) return;
    this.errors = errors;
    if (now) this.load();
  }

  /** Goes where a part stands; the first one is where the sheet begins. */
  at(part: number): void {
    if (part === this.part) return;
    this.part = part;
    this.load();
  }

  close(): void {
    document.removeEventListener("surefoot-look", this.load);
  }

  private readonly load = () => {
    if (this.address) this.frame.src = `${this.address}&doubts=${this.errors}&look=${document.documentElement.dataset.look ?? "light"}${this.part > 0 ? `#part-${this.part}` : "#"}`;
  };
}

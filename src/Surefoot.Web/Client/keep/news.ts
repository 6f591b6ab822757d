import type { PageServer, PageState } from "./server.ts";

/** Milliseconds between two questions whether somebody else kept something; each takes the studio a millisecond or two. Working value. */
const every = 3000;

/** Asks now and then how the page stands, while the window is looked at. */
export class News {
  private readonly timer: ReturnType<typeof setInterval>;

  constructor(
    private readonly server: PageServer,
    private readonly heard: (state: PageState) => void,
  ) {
    this.timer = setInterval(() => void this.ask(), every);
    document.addEventListener("visibilitychange", this.ask);
  }

  close(): void {
    clearInterval(this.timer);
    document.removeEventListener("visibilitychange", this.ask);
  }

  private readonly ask = async () => {
    if (document.visibilityState === "hidden") return;
    try {
      this.heard(await this.server.state());
    } catch {
      // The next time, then.
    }
  };
}

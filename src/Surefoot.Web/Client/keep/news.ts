import { Refusal, type PageServer, type PageState } from "./server.ts";

/** Milliseconds between two questions whether somebody else kept something; each takes the studio a millisecond or two. Working value. */
const every = 3000;

/** Asks now and then how the page stands, while the window is looked at. */
export class News {
  private readonly timer: ReturnType<typeof setInterval>;

  constructor(
    private readonly server: PageServer,
    private readonly heard: (state: PageState) => void,
    private readonly lost: (lost: boolean) => void,
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
      const state = await this.server.state();
      this.lost(false);
      this.heard(state);
    } catch (fault) {
      // The next time, then. A page that was put into the bin is an answer too.
      this.lost(!(fault instanceof Refusal));
    }
  };
}

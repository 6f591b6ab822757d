import { Refusal, SignedOut, type DraftTold, type PageServer, type VersionKept, type Written } from "./server.ts";
import type { Shelter } from "./shelter.ts";
import { device } from "./words.ts";

/** Milliseconds without a key before a draft goes. Working value: a breath between two words. */
const pause = 400;

/** Milliseconds after which it goes although somebody types on. */
const longest = 1000;

/** Milliseconds before it is tried again when the studio did not answer; a studio that is not there says so at once and costs nothing. Working value. */
const again = 500;

/** How it stands with what is in the window. */
export type Standing =
  | { kind: "kept"; version: number; at: number }
  | { kind: "writing" }
  | { kind: "draft"; at: number }
  | { kind: "lost" }
  | { kind: "signed-out" }
  | { kind: "refused"; why: string };

/**
 * Keeps what is in the window: drafts by itself on each pause, versions when asked. One thing is under way at a
 * time, so that nothing overtakes anything; what is not acknowledged yet stands in the window and in the shelter.
 */
export class Keeper {
  readonly session: string;
  /** Versions this window made. */
  readonly own = new Set<number>();
  basedOn: number;
  private sequence = 0;
  private text: string;
  /** The text that is kept, and as which version: the page, or what stands beside it. */
  private kept: string;
  private keptAs: number;
  private acknowledged: string;
  private onServer = false;
  private adopted: { session: string; sequence: number } | undefined;
  private line: Promise<unknown> = Promise.resolve();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private since: number | undefined;
  private closed = false;

  constructor(
    private readonly server: PageServer,
    private readonly shelter: Shelter,
    session: string,
    version: { number: number; at: number },
    kept: string,
    draft: DraftTold | undefined,
    private readonly stands: (standing: Standing) => void,
  ) {
    this.session = session;
    this.kept = this.acknowledged = kept;
    this.text = draft?.text ?? kept;
    this.keptAs = version.number;
    this.basedOn = draft?.basedOn ?? version.number;
    if (draft) {
      this.adopted = { session: draft.session, sequence: draft.sequence };
      stands({ kind: "draft", at: draft.at });
      // A window's own copy again at once: the one it came from may be this browser's only.
      this.plan(0);
    } else {
      stands({ kind: "kept", version: version.number, at: version.at });
    }
    addEventListener("pagehide", this.parting);
    document.addEventListener("visibilitychange", this.hidden);
  }

  /** True when nothing is in the window that the page does not have. */
  get clean(): boolean {
    return this.text === this.kept;
  }

  changed(text: string): void {
    this.text = text;
    this.since ??= performance.now();
    this.plan(Math.max(0, Math.min(pause, this.since + longest - performance.now())));
  }

  /** Keeps a version. Nothing is lost when this fails: the draft stays what it was. */
  keep(note: string): Promise<VersionKept> {
    return this.after(async () => {
      const { text } = this;
      const answer = await this.server.version(this.written(text, note));
      this.settle(text);
      this.own.add(answer.number);
      this.keptAs = answer.number;
      if (answer.theirs === undefined) this.basedOn = answer.number;
      this.stands({ kind: "kept", version: answer.number, at: answer.at });
      if (this.text !== text) this.plan(pause);
      return answer;
    });
  }

  /** Makes a version of this window the page. */
  back(version: number): Promise<VersionKept> {
    return this.after(async () => {
      const answer = await this.server.back(version, device());
      this.own.add(answer.number);
      this.basedOn = this.keptAs = answer.number;
      return answer;
    });
  }

  /** The window goes over to a version: what was in it is no draft any more. */
  goOver(version: { number: number; at: number }, text: string): void {
    this.basedOn = this.keptAs = version.number;
    this.kept = text;
    this.text = text;
    void this.after(() => this.forget()).catch(() => undefined);
    this.stands({ kind: "kept", version: version.number, at: version.at });
  }

  close(): void {
    this.parting();
    this.closed = true;
    clearTimeout(this.timer);
    removeEventListener("pagehide", this.parting);
    document.removeEventListener("visibilitychange", this.hidden);
  }

  private plan(wait: number): void {
    clearTimeout(this.timer);
    if (!this.closed) this.timer = setTimeout(() => void this.after(() => this.draft()), wait);
  }

  private async draft(): Promise<void> {
    this.since = undefined;
    const { text } = this;
    if (text === this.acknowledged) return;
    try {
      if (text === this.kept) {
        await this.forget();
      } else {
        const written = this.written(text);
        this.shelter.put({ sequence: written.sequence, basedOn: written.basedOn, text, at: Date.now() });
        // Before it is known: an answer may be lost on its way.
        this.onServer = true;
        const { at } = await this.server.draft(written);
        this.settle(text, false);
        this.stands(this.text === text ? { kind: "draft", at } : { kind: "writing" });
      }
    } catch (fault) {
      if (fault instanceof Refusal) {
        this.stands({ kind: "refused", why: fault.message });
        return;
      }
      this.stands({ kind: fault instanceof SignedOut ? "signed-out" : "lost" });
      this.plan(again);
      return;
    }
    if (this.text !== text) this.plan(pause);
  }

  private async forget(): Promise<void> {
    if (this.onServer) await this.server.forget(this.session, this.sequence);
    if (this.adopted) await this.server.forget(this.adopted.session, this.adopted.sequence);
    const { adopted } = this;
    this.onServer = false;
    this.adopted = undefined;
    this.acknowledged = this.kept;
    this.shelter.clear();
    if (adopted) this.shelter.clear(adopted.session);
    if (this.text === this.kept) this.stands({ kind: "kept", version: this.keptAs, at: 0 });
  }

  private settle(text: string, version = true): void {
    this.acknowledged = text;
    this.onServer = !version;
    if (version) this.kept = text;
    this.shelter.clear();
    if (this.adopted) this.shelter.clear(this.adopted.session);
    this.adopted = undefined;
  }

  private written(text: string, note?: string): Written {
    const { session, basedOn, adopted } = this;
    return { session, sequence: ++this.sequence, basedOn, text, ...(note === undefined ? {} : { note, device: device() }), ...(adopted ? { adopted } : {}) };
  }

  /** One thing after the other; a fault is its own's affair. */
  private after<T>(act: () => Promise<T>): Promise<T> {
    const next = this.line.then(act, act);
    this.line = next.catch(() => undefined);
    return next;
  }

  private readonly parting = () => {
    if (this.closed || this.text === this.acknowledged) return;
    const written = this.written(this.text);
    this.shelter.put({ sequence: written.sequence, basedOn: written.basedOn, text: this.text, at: Date.now() });
    this.server.parting(written);
  };

  private readonly hidden = () => {
    if (document.visibilityState === "hidden" && this.text !== this.acknowledged) this.plan(0);
  };
}

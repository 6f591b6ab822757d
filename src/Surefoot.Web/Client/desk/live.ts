/** What the server knows of a text; places are UTF-16 characters from its top. */
export interface Known {
  number: number;
  title: string;
  facts: string;
  problems: Problem[];
  figures: { name: string; means: string }[];
  /** Where each part begins. */
  parts: number[];
  places: Place[];
}

export interface Span {
  from: number;
  to: number;
}

/** "unwritten" is no word of the server's: what is wrong only when the writer is done, while the cursor stands where it would be written. */
export type Severity = "error" | "warning" | "hint" | "unwritten";

export interface Problem extends Span {
  name: string;
  severity: Severity;
  place: string;
  message: string;
  reason: string;
  /**
   * Where what is missing would be written, and how it reads while somebody writes there: wherever the cursor was left
   * ("stated"), while it takes keys ("open"), right after a key ("typed").
   */
  unfinished?: Span & { says: string; while: "stated" | "open" | "typed" };
  related: (Span & { says: string })[];
  fixes: Fix[];
}

export interface Fix {
  title: string;
  edits: (Span & { text: string })[];
}

/** Words that are danced on a count; by: the line that has them danced again. */
export interface Place extends Span {
  role: string;
  at: number;
  by?: Span;
}

/**
 * Sends the text with each key and hands on what the server says of it. One text is under way at a time; what was
 * typed meanwhile goes at once when the answer is there, so answers come in order and none is of an older text.
 */
export class Live {
  readonly address: string;
  private number = 0;
  private sent = -1;
  private text = "";
  private waiting: ReturnType<typeof setTimeout> | undefined;
  private under = false;
  private closed = false;

  constructor(
    private readonly notebook: number,
    private readonly known: (known: Known, text: string) => void,
    private readonly lost: (lost: boolean) => void,
  ) {
    this.address = `/live/${crypto.randomUUID()}`;
  }

  changed(text: string): void {
    this.text = text;
    this.number++;
    // One key may change the text twice, as closing brackets do: it travels once that is done. A timer would wait for the next picture.
    queueMicrotask(() => {
      if (this.number !== this.sent) void this.send();
    });
  }

  /** Now, not once the key is done. */
  async send(): Promise<void> {
    clearTimeout(this.waiting);
    if (this.under || this.closed) return;
    this.under = true;
    const { number, text } = this;
    this.sent = number;
    try {
      const answer = await this.post(number, text);
      if (!answer.ok) throw new Error(answer.statusText);
      const known = (await answer.json()) as Known;
      if (this.closed) return;
      this.lost(false);
      if (number === this.number) this.known(known, text);
    } catch {
      if (this.closed) return;
      this.lost(true);
      this.waiting = setTimeout(() => void this.send(), 2000);
      return;
    } finally {
      this.under = false;
    }
    if (number !== this.number) void this.send();
  }

  async ask<T>(what: string): Promise<T | undefined> {
    try {
      let answer = await fetch(`${this.address}/${what}`);
      if (answer.status === 404) {
        // The server started again or forgot this window: it gets the text once more.
        await this.post(this.number, this.text);
        answer = await fetch(`${this.address}/${what}`);
      }
      return answer.ok ? ((await answer.json()) as T) : undefined;
    } catch {
      return undefined;
    }
  }

  private post(number: number, text: string): Promise<Response> {
    return fetch(`${this.address}?number=${number}&notebook=${this.notebook}`, { method: "POST", body: text });
  }

  close(): void {
    this.closed = true;
    clearTimeout(this.waiting);
  }
}

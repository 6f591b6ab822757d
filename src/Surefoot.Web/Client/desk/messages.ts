/** What the parts of a desk tell each other; none of them knows another. */
export interface Messages {
  /** Somebody went to a count of the repeat, or writes on it; where, so that nobody answers himself. */
  count: { at: number; by: "text" | "writing" | "floor" };
  /** The cursor stands at another place of the text. */
  cursor: number;
  /** Keys go elsewhere than into the text. */
  left: undefined;
  /** A stretch of the text is to be looked at. */
  show: { from: number; to: number };
  /** The whole text gives way to another version. */
  replace: string;
  /** Whether what was written could not be read because the studio does not answer. */
  lost: boolean;
  /** A sentence for those who listen to the page. */
  say: string;
  /** What somebody's key or press on the text came to, to be heard and for a moment to be seen. */
  answer: string;
}

type Hears<K extends keyof Messages> = (message: Messages[K]) => void;

export class Post {
  private readonly ears = new Map<keyof Messages, Set<(message: never) => void>>();

  on<K extends keyof Messages>(kind: K, hears: Hears<K>): void {
    const ears = this.ears.get(kind) ?? new Set();
    ears.add(hears as (message: never) => void);
    this.ears.set(kind, ears);
  }

  tell<K extends keyof Messages>(kind: K, message: Messages[K]): void {
    for (const hears of this.ears.get(kind) ?? []) (hears as Hears<K>)(message);
  }
}

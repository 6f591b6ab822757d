/** A version in few words; moments are milliseconds since 1970. */
export interface VersionTold {
  number: number;
  at: number;
  note: string;
  by: string;
  /** The version that stood in its place already. */
  besideOf: number | null;
}

export interface PageState {
  current: VersionTold;
  latest: VersionTold;
}

export interface DraftTold {
  session: string;
  sequence: number;
  basedOn: number;
  text: string;
  at: number;
}

/** A page when it is opened. mark: tells this page from one of the same number in another library. */
export interface PageOpened extends PageState {
  mark: string;
  text: string;
  draft: DraftTold | null;
  otherDrafts: number;
}

export interface Written {
  session: string;
  sequence: number;
  basedOn: number;
  text: string;
  note?: string;
  device?: string;
  adopted?: { session: string; sequence: number };
}

/** theirs: somebody else's version that stays the page; number is kept beside it then. */
export interface VersionKept {
  number: number;
  new: boolean;
  at: number;
  theirs?: number;
  /** A note came with nothing new; it stands with the version. */
  noted: boolean;
}

/** The studio answered, and said why not. */
export class Refusal extends Error {}

/** The studio is open to the network and asks who is there: it has not looked at what was sent. */
export class SignedOut extends Error {}

/** Milliseconds until a question counts as lost; on this machine an answer takes a few. Working value. */
const patience = 8000;

/** Bytes a browser still sends while its window goes away; the standard for fetch says 64 KiB for all together. */
const lastWords = 60_000;

async function ask<T>(address: string, init: RequestInit = {}): Promise<T> {
  const answer = await fetch(address, { cache: "no-store", signal: AbortSignal.timeout(patience), ...init });
  if (answer.status === 401) throw new SignedOut();
  if (answer.status === 404 || answer.status === 422) throw new Refusal(((await answer.json()) as { why: string }).why);
  if (answer.status === 400) throw new Refusal("There are signs in it that cannot be kept.");
  if (answer.status === 413) throw new Refusal("This page is longer than a page may be.");
  if (!answer.ok) throw new Error(answer.statusText);
  return (answer.status === 204 ? undefined : await answer.json()) as T;
}

function send<T>(address: string, body: unknown): Promise<T> {
  return ask<T>(address, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });
}

/** One page of the library, as the studio answers about it. */
export class PageServer {
  private readonly address: string;

  constructor(page: number) {
    this.address = `/keep/${page}`;
  }

  opened(draft: string | null): Promise<PageOpened> {
    return ask(`${this.address}/opened${draft ? `?draft=${encodeURIComponent(draft)}` : ""}`);
  }

  state(): Promise<PageState> {
    return ask(this.address);
  }

  async text(version: number): Promise<string> {
    return (await ask<{ text: string }>(`${this.address}/text?version=${version}`)).text;
  }

  draft(written: Written): Promise<{ at: number }> {
    return send(`${this.address}/draft`, written);
  }

  /** While the window goes away: nobody hears an answer. */
  parting(written: Written): void {
    const body = JSON.stringify(written);
    if (body.length > lastWords) return;
    fetch(`${this.address}/draft`, { method: "POST", headers: { "Content-Type": "application/json" }, body, keepalive: true }).catch(() => undefined);
  }

  version(written: Written): Promise<VersionKept> {
    return send(`${this.address}/version`, written);
  }

  forget(session: string, sequence: number): Promise<void> {
    return send(`${this.address}/forget`, { session, sequence });
  }

  back(version: number, device: string): Promise<VersionKept> {
    return send(`${this.address}/back`, { version, device });
  }
}

import type { Post } from "../desk/messages.ts";
import { Bar } from "./bar.ts";
import { Keeper } from "./keeper.ts";
import { News } from "./news.ts";
import { Notices } from "./notices.ts";
import { begin, lines } from "./opening.ts";
import { PageServer, Refusal, SignedOut, type PageState, type VersionTold } from "./server.ts";
import { Shelter } from "./shelter.ts";
import { moment } from "./words.ts";

const signedOut = "That was not done: this device is not signed in any more. Nothing is lost; sign in in another window and do it once more.";

export interface Keeping {
  /** With what the editor begins. */
  text: string;
  /** Tells what stands in the window now. */
  changed(text: string): void;
  close(): void;
}

/** Joins a window to its page: begins with the right text, keeps what is written, and tells what others did. */
export async function openKeeping(parent: HTMLElement, page: number, post: Post): Promise<Keeping> {
  const server = new PageServer(page);
  const asked = new URLSearchParams(location.search).get("draft");
  const opened = await server.opened(asked);
  const session = crypto.randomUUID();
  const shelter = new Shelter(page, opened.mark, session);
  const { kept, draft, older } = begin(opened, shelter, asked);
  const drafted = (path: string) => () => `${path}${keeper.clean ? "" : `?draft=${session}`}`;
  const beside = (what: string) => drafted(`/dance/${page}/${what}`);
  const bar = new Bar(parent, page, (note) => void keep(note), beside("watch"), drafted(`/on-the-floor/${page}`), beside("print"), () => `/compare?a=${keeper.clean ? page : `${version(told.current.number)}&b=${mine()}`}`);
  const notices = new Notices(bar.notices);
  // Whoever asks the studio in vain says so here: one line tells it, once. Whoever is answered knows that it is back.
  let unanswered = false;
  const away = (lost: boolean) => {
    if (lost === unanswered) return;
    unanswered = lost;
    bar.away(lost);
    post.tell("say", lost ? "The studio does not answer." : "The studio answers again.");
  };
  post.on("lost", away);
  let unkept = false;
  const keeper = new Keeper(server, shelter, session, opened.current, kept, draft, (standing) => {
    bar.stands(standing);
    if (standing.kind === "lost" || unkept) away(standing.kind === "lost");
    if (unkept && standing.kind !== "lost") notices.drop("trouble");
    unkept = standing.kind === "lost";
  });
  let told: PageState = opened;
  const news = new News(server, heard, away);
  const mine = () => `${page}.draft.${session}`;
  const version = (number: number) => `${page}.${number}`;
  const compare = (a: () => string, b: () => string) => () => `/compare?a=${a()}&b=${b()}`;

  const others = opened.otherDrafts > 0 ? ` There are more drafts; the history lists them all.` : "";
  if (older) {
    const address = encodeURIComponent(older.session);
    notices.show("older", `There is a draft of ${moment(older.at)} that nobody kept; the page was kept since.${others}`,
      { words: "Go on with the draft", to: () => `/dance/${page}?draft=${address}` },
      { words: "See what is different", to: compare(() => version(told.current.number), () => `${page}.draft.${address}`) });
  }
  if (draft) {
    notices.show("draft", `This is a draft that was not kept as a version yet.${others}`,
      { words: "Go back to the kept version", act: () => void goOver(told.current, "draft") },
      { words: "See what is different", to: compare(() => version(told.current.number), mine) });
    if (draft.basedOn !== opened.current.number) moved(opened.current);
  }

  async function keep(note: string): Promise<void> {
    try {
      const answer = await keeper.keep(note);
      bar.clearNote();
      notices.drop("draft");
      notices.drop("trouble");
      if (answer.theirs === undefined) {
        notices.drop("moved");
        post.tell("say", answer.new ? `Kept as version ${answer.number}.` : answer.noted ? `The note stands with version ${answer.number}; nothing else is new.` : `Nothing is new since version ${answer.number}.`);
        return;
      }
      const { theirs } = answer;
      notices.drop("moved");
      notices.show("beside", `Somebody else kept version ${theirs} while you were writing. It stays the page; yours is kept beside it as version ${answer.number}. Nothing is lost.`,
        { words: "See what is different", to: compare(() => version(theirs), () => version(answer.number)) },
        { words: "Make mine the page", act: () => void makeMine(answer.number) },
        { words: "Go over to theirs", act: () => void goOver({ number: theirs, at: 0 }, "beside") });
    } catch (fault) {
      trouble(fault, "It is not kept as a version yet: the studio does not answer. Nothing is lost; keep it again when the studio is back.");
    }
  }

  async function makeMine(number: number): Promise<void> {
    try {
      const answer = await keeper.back(number);
      notices.drop("beside");
      post.tell("say", `Yours is the page now, as version ${answer.number}. Theirs stays in the history.`);
    } catch (fault) {
      trouble(fault, "That could not be done: the studio does not answer.");
    }
  }

  async function goOver(to: { number: number; at: number }, notice: string): Promise<void> {
    try {
      const text = lines(await server.text(to.number));
      keeper.goOver(to, text);
      post.tell("replace", text);
      notices.drop(notice);
      notices.drop("moved");
      post.tell("say", `This is version ${to.number} now. One step back brings your own words again.`);
    } catch (fault) {
      trouble(fault, "That could not be done: the studio does not answer.");
    }
  }

  function heard(state: PageState): void {
    const before = told;
    told = state;
    const { current, latest } = state;
    if (current.number !== before.current.number && !keeper.own.has(current.number)) moved(current);
    if (latest.number > before.latest.number && latest.besideOf !== null && !keeper.own.has(latest.number)) {
      const { number, besideOf } = latest;
      const whose = keeper.own.has(besideOf) ? "yours, which stays the page" : `version ${besideOf}, which stays the page`;
      notices.show("other-beside", `Somebody was writing at the same time: version ${number} was kept beside ${whose}. Nothing is lost.`,
        { words: "See what is different", to: compare(() => version(besideOf), () => version(number)) });
    }
  }

  function moved(now: VersionTold): void {
    const note = now.note ? ` Their note: ${now.note}` : "";
    const then = keeper.clean ? "" : " What you keep now is kept beside it; neither is lost.";
    notices.show("moved", `Somebody else kept version ${now.number}, ${moment(now.at)}; you have version ${keeper.basedOn} before you.${then}${note}`,
      { words: "See what is different", to: compare(() => (keeper.clean ? version(keeper.basedOn) : mine()), () => version(now.number)) },
      { words: "Go over to theirs", act: () => void goOver(told.current, "draft") });
  }

  function trouble(fault: unknown, words: string): void {
    notices.show("trouble", fault instanceof Refusal ? fault.message : fault instanceof SignedOut ? signedOut : words);
  }

  const pressed = (event: KeyboardEvent) => {
    if (event.key.toLowerCase() !== "s" || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
    event.preventDefault();
    void keep(bar.noted);
  };
  document.addEventListener("keydown", pressed);
  return {
    text: draft?.text ?? kept,
    changed(now) {
      keeper.changed(now);
      // Whoever writes on has answered what the notice asks, and needs its place; Compare and the history still lead to the kept version.
      notices.drop("draft");
    },
    close() {
      document.removeEventListener("keydown", pressed);
      news.close();
      keeper.close();
    },
  };
}

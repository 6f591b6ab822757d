/** Seconds by which a film may end before its captions do. Working value. */
const shorter = 2;

/** What of the name of a file chosen last is kept on this device, so that it is found again. */
const lastKey = (page: string): string => `surefoot.film.${page}`;

/** The film: a file of this device, which goes nowhere, or what lies at an address. */
export class Player {
  private readonly says: HTMLElement;
  private readonly place: HTMLElement;
  private readonly own: HTMLInputElement;
  private url: string | undefined;
  /** Where to go once there is a film. */
  private waiting: number | undefined;

  constructor(private readonly room: HTMLElement, private readonly video: HTMLVideoElement) {
    this.place = room.querySelector<HTMLElement>('[data-part="film-place"]')!;
    this.says = room.querySelector<HTMLElement>('[data-part="film-says"]')!;
    this.own = room.querySelector<HTMLInputElement>('[data-part="film-file"]')!;
    room.querySelector<HTMLElement>('[data-part="choose"]')!.hidden = false;
    this.own.addEventListener("change", () => this.chosen());
    video.addEventListener("error", () => this.failed());
    video.addEventListener("loadedmetadata", () => this.loaded());
    // It may have failed before this script was here.
    if (video.error || (video.hasAttribute("src") && video.networkState === HTMLMediaElement.NETWORK_NO_SOURCE)) this.failed();
    else if (video.readyState > 0) this.loaded();
    this.captions();
    this.remembered();
  }

  get there(): boolean {
    return this.video.hasAttribute("src");
  }

  /** Takes the film to a moment, in seconds; without a film it is remembered until there is one. */
  goTo(seconds: number, play = true): void {
    if (!this.there) {
      this.waiting = seconds;
      this.say("Choose the film first; it then goes there at once.");
      this.own.focus();
      return;
    }
    this.video.currentTime = seconds;
    // A browser may refuse to play what nobody pressed; the film stands where it was asked for all the same.
    if (play) void this.video.play().catch(() => undefined);
    // On a telephone the list may lie far below the film.
    const box = this.place.getBoundingClientRect();
    if (box.bottom < 40 || box.top > innerHeight - 40) this.place.scrollIntoView({ block: "start" });
  }

  private chosen(): void {
    const file = this.own.files?.[0];
    if (!file) return;
    if (this.url) URL.revokeObjectURL(this.url);
    this.url = URL.createObjectURL(file);
    this.say("");
    this.video.src = this.url;
    this.video.hidden = false;
    this.keep(file.name);
  }

  private loaded(): void {
    this.place.dataset.playing = "";
    if (this.waiting !== undefined) this.video.currentTime = this.waiting;
    this.waiting = undefined;
    const ends = Number(this.room.dataset.ends ?? 0);
    const long = this.video.duration;
    if (Number.isFinite(long) && ends > long + shorter) this.say(`This film ends at ${clock(long)}, its captions at ${clock(ends)}. Do they belong together?`);
    else this.say("");
  }

  private failed(): void {
    delete this.place.dataset.playing;
    if (!this.there) return;
    this.say(this.url ? "This browser cannot play that file. Films that telephones make (.mp4) and .webm are played nearly everywhere." : this.says.dataset.unplayable!);
    this.video.hidden = this.url === undefined;
  }

  private captions(): void {
    const tick = this.room.querySelector<HTMLElement>('[data-part="film-captions"]');
    const track = this.video.querySelector("track")?.track;
    if (!tick || !track) return;
    tick.hidden = false;
    const box = tick.querySelector("input")!;
    track.mode = "showing";
    box.checked = true;
    box.addEventListener("change", () => (track.mode = box.checked ? "showing" : "hidden"));
    // The browser has a switch of its own on the film.
    this.video.textTracks.addEventListener("change", () => (box.checked = track.mode === "showing"));
  }

  private remembered(): void {
    try {
      const name = localStorage.getItem(lastKey(this.room.dataset.filmOf!));
      if (name) this.room.querySelector<HTMLElement>('[data-part="film-last"]')!.textContent = `The last time it was “${name}”.`;
    } catch {
      // A browser may refuse to keep anything.
    }
  }

  private keep(name: string): void {
    try {
      localStorage.setItem(lastKey(this.room.dataset.filmOf!), name);
    } catch {
      // Then she remembers it herself.
    }
  }

  private say(words: string): void {
    if (this.says.textContent !== words) this.says.textContent = words;
  }
}

/** Seconds as people write them: "1:02". */
function clock(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

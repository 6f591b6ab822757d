import { back, carried, fading, first, leadsInto, next, settling, type Onward } from "./onward.ts";

/** A motion file as docs/motion.schema.json describes it: all that is known here of a dance. */
export interface MotionFile {
  motion: string;
  title: string;
  floor: "track" | "walls";
  meter: string;
  counts: number;
  tempo: number;
  rate: number;
  samples: number;
  fields: string[];
  parts: Part[];
  steps: Step[];
  holds: { from: number; hold: string }[];
  hands: Hand[];
  calls: Call[];
  /** Measures of a body / stature. */
  body: Measures;
  dancers: { role: Role; called: string; stature: number; values: number[] }[];
}

/** Of a body, / stature: half widths from above, heights over the floor, lengths of bones. */
export interface Measures {
  shoulderHeight: number;
  halfShoulders: number;
  halfBreadth: number;
  halfDepth: number;
  headAside: number;
  headAhead: number;
  upperArm: number;
  foreArm: number;
  foot: number;
}

export type Role = "lead" | "follow" | "dancer";
export interface Part { from: number; counts: number; label: string; name: string; mirrored: boolean }
export interface Step { role: Role; at: number; count: string; words: string; figure?: string }
export interface Hand { from: number; lead: Side; follow: Side; are: "apart" | "low" | "at the shoulder" | "raised" }
/** What is called on `counts` counts from count `from` on, before the step it names; counts up to 0 lie before the dance. */
export interface Call { from: number; counts: number; step: number; role?: Role; words: string; says: string }
export type Side = "left" | "right";
export const sides: readonly Side[] = ["left", "right"];

export interface Foot { x: number; y: number; up: number; facing: number; toe: number; weight: number }
export interface Grip { x: number; y: number; up: number }
/** A dancer at a moment: metres and degrees to the left of the floor's first direction. */
export interface Body {
  role: Role;
  stature: number;
  /** Of bodies as the file has them, / stature. */
  measures: Measures;
  x: number;
  y: number;
  facing: number;
  feet: Record<Side, Foot>;
  hands: Record<Side, Grip>;
}

/** Counts that are so near are the same: a hundredth of the shortest written, a sixteenth. */
const same = 1e-6;

/** In counts. */
interface Span { from: number; to: number }

/** A foot that moves by less than this, in metres, stands. */
const still = 0.002;

/** Whether a call is for somebody. */
export const meant = (call: Call, focus: Role | "both"): boolean => focus === "both" || call.role === undefined || call.role === focus;

/** Where in a moment's values each of them lies. */
type FootPlaces = Record<keyof Foot, number>;
type GripPlaces = Record<keyof Grip, number>;
interface Places { x: number; y: number; facing: number; feet: Record<Side, FootPlaces>; hands: Record<Side, GripPlaces> }

function placesOf(fields: string[]): Places {
  const of = (field: string): number => Math.max(0, fields.indexOf(field));
  const foot = (side: Side): FootPlaces => ({
    x: of(`${side}.x`), y: of(`${side}.y`), up: of(`${side}.up`), facing: of(`${side}.facing`), toe: of(`${side}.toe`), weight: of(`${side}.weight`),
  });
  const hand = (side: Side): GripPlaces => ({ x: of(`${side}Hand.x`), y: of(`${side}Hand.y`), up: of(`${side}Hand.up`) });
  return {
    x: of("x"), y: of("y"), facing: of("facing"),
    feet: { left: foot("left"), right: foot("right") }, hands: { left: hand("left"), right: hand("right") },
  };
}

interface Values { role: Role; stature: number; values: Float64Array }

/** A dance that can be asked for any moment. */
export class Motion {
  private readonly dancers: Values[];
  private readonly place: Places;
  private readonly width: number;
  /** Every count on which somebody does something, in order; 0 is the start. */
  readonly stops: number[];
  /** Where the next repeat begins, seen from where this one does; nothing when the dance does not lead back into its start. */
  readonly onward: Onward | undefined;
  private firstSteps_: Record<Side, Span>[] | undefined;

  constructor(readonly file: MotionFile) {
    if (file.motion !== "surefoot 1") throw new Error("This is not a motion file that can be shown.");
    this.width = file.fields.length;
    this.place = placesOf(file.fields);
    this.dancers = file.dancers.map((d) => ({ role: d.role, stature: d.stature, values: Float64Array.from(d.values) }));
    this.stops = [...new Set([0, ...file.steps.map((s) => s.at)])].sort((a, b) => a - b);
    this.onward = file.counts > 0 ? leadsInto(this.at(0), this.at(file.counts)) : undefined;
  }

  /** What the hall calls a role. */
  called(role: Role): string {
    return this.file.dancers.find((d) => d.role === role)?.called ?? role;
  }

  get counts(): number {
    return this.file.counts;
  }

  get roles(): Role[] {
    return this.dancers.map((d) => d.role);
  }

  /** Where everybody is at a count. */
  at(count: number): Body[] {
    const sample = Math.min(Math.max((count * 60 * this.file.rate) / this.file.tempo, 0), this.file.samples - 1);
    const first = Math.floor(sample);
    const part = sample - first;
    const next = Math.min(first + 1, this.file.samples - 1);
    return this.dancers.map(({ role, stature, values }) => {
      const value = (at: number): number => {
        const a = values[first * this.width + at] ?? 0;
        const b = values[next * this.width + at] ?? a;
        return a + (b - a) * part;
      };
      const foot = ({ x, y, up, facing, toe, weight }: FootPlaces): Foot =>
        ({ x: value(x), y: value(y), up: value(up), facing: value(facing), toe: value(toe), weight: value(weight) });
      const hand = ({ x, y, up }: GripPlaces): Grip => ({ x: value(x), y: value(y), up: value(up) });
      const { x, y, facing, feet, hands } = this.place;
      return {
        role, stature, measures: this.file.body, x: value(x), y: value(y), facing: value(facing),
        feet: { left: foot(feet.left), right: foot(feet.right) }, hands: { left: hand(hands.left), right: hand(hands.right) },
      };
    });
  }

  /** Where everybody is in a repeat that follows another one: they set out from where that one has left them. */
  again(count: number): Body[] {
    const now = this.at(count);
    if (!this.onward) return now;
    const steps = this.firstSteps_ ??= this.firstSteps();
    if (count >= 1 && steps.every((s) => count >= s.left.to && count >= s.right.to)) return now;
    const [start, end, home] = [this.at(0), this.at(this.file.counts), back(this.onward)];
    const left = (foot: Span): number => fading((count - foot.from) / (foot.to - foot.from));
    return now.map((body, i) => settling(body, carried(end[i]!, home), start[i]!, fading(count), { left: left(steps[i]!.left), right: left(steps[i]!.right) }));
  }

  // When each foot leaves its place for the first time in a repeat, and when it has arrived.
  private firstSteps(): Record<Side, Span>[] {
    const count = (sample: number): number => (sample * this.file.tempo) / (60 * this.file.rate);
    const moments = Array.from({ length: this.file.samples }, (_, i) => this.at(count(i)));
    const away = (p: Foot, q: Foot): number => Math.hypot(p.x - q.x, p.y - q.y, p.up - q.up);
    return this.dancers.map((_, dancer) => {
      const span = (side: Side): Span => {
        const foot = moments.map((m) => m[dancer]!.feet[side]);
        const goes = foot.findIndex((f) => away(f, foot[0]!) > still);
        if (goes < 0) return { from: this.file.counts, to: this.file.counts + 1 };
        const stands = foot.findIndex((f, i) => i > goes && f.up < still && i + 1 < foot.length && away(f, foot[i + 1]!) < still / 10);
        return { from: count(goes - 1), to: count(stands < 0 ? foot.length : stands) };
      };
      return { left: span("left"), right: span("right") };
    });
  }

  /** Where everybody is so many counts after the very beginning: the repeats follow each other. */
  onAndOn(count: number): Body[] {
    const { counts } = this.file;
    const times = counts > 0 ? Math.max(0, Math.floor(count / counts)) : 0;
    const within = count - times * counts;
    // Where a repeat does not lead into the next they begin anew from where they began.
    if (times === 0 || !this.onward) return this.at(within);
    let by: Onward = first;
    for (let i = 0; i < times; i++) by = next(by, this.onward);
    return this.again(within).map((body) => carried(body, by));
  }

  /** The counts around one of them over which nobody jumps: all that follow, or the repeat it is in. */
  unbroken(count: number): [from: number, to: number] {
    const { counts } = this.file;
    if (this.onward || counts <= 0) return [0, Infinity];
    const from = Math.max(0, Math.floor(count / counts)) * counts;
    return [from, from + counts * (1 - 1e-9)];
  }

  /** A role's last action at or before a count of the repeat. */
  stepOf(role: Role, count: number): Step | undefined {
    return this.file.steps.findLast((s) => s.role === role && s.at <= count + same);
  }

  /** A role's actions after a count of the repeat, in order. */
  after(role: Role, count: number): Step[] {
    return this.file.steps.filter((s) => s.role === role && s.at > count + same);
  }

  /** Each role's last action at or before a count. */
  stepsAt(count: number): Step[] {
    const now = new Map<Role, Step>();
    for (const step of this.file.steps) {
      const best = now.get(step.role);
      if (step.at <= count + same && (!best || step.at >= best.at)) now.set(step.role, step);
    }
    return this.roles.flatMap((role) => now.get(role) ?? []);
  }

  /** What has been called, or is being called, and has not begun at a count; for one role or for all. */
  callsAt(focus: Role | "both", count: number): Call[] {
    return this.file.calls.filter((c) => c.from <= count + same && count < c.step - same && meant(c, focus));
  }

  partAt(count: number): Part | undefined {
    return this.file.parts.findLast((p) => p.from <= count + same);
  }

  holdAt(count: number): string {
    return this.file.holds.findLast((h) => h.from <= count + same)?.hold ?? "";
  }

  /** What they have of each other at a count: a hold that has a name, else the hands that are joined; empty for dancers without a partner. */
  heldAt(count: number): string {
    const hold = this.holdAt(count);
    if (hold) return `${hold} hold`;
    const joined = this.joinedAt(count);
    const [one] = joined;
    if (!one) return this.roles.length > 1 ? "hands free" : "";
    if (joined.length > 1) return joined.every((h) => h.lead === h.follow) ? "right hands and left hands joined" : "two hands joined";
    return one.lead === one.follow ? `${one.lead} hands joined` : `${this.called("lead")}’s ${one.lead} and ${this.called("follow")}’s ${one.follow} hand joined`;
  }

  /** Joined hands at a count, each pair once. */
  joinedAt(count: number): Hand[] {
    const now = new Map<string, Hand>();
    for (const hand of this.file.hands) if (hand.from <= count + same || hand.from <= 1) {
      // Before count 1 they hold what they begin with.
      if (hand.from <= count + same || !now.has(hand.lead + hand.follow)) now.set(hand.lead + hand.follow, hand);
    }
    return [...now.values()].filter((h) => h.are !== "apart");
  }

  /** The next moment at which somebody does something. */
  next(count: number): number {
    return this.stops.find((s) => s > count + same) ?? this.file.counts;
  }

  previous(count: number): number {
    return this.stops.findLast((s) => s < count - same) ?? 0;
  }
}

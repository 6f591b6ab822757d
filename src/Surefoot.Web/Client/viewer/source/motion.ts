import type { Hand, MotionFile, Part, Role, Side, Step } from "./file.ts";

export interface Foot { x: number; y: number; up: number; facing: number; toe: number; weight: number }
export interface Grip { x: number; y: number; up: number }

/** A dancer at a moment: metres, and degrees to the left of the floor's x. */
export interface Moment {
  role: Role;
  stature: number;
  x: number;
  y: number;
  facing: number;
  feet: Record<Side, Foot>;
  hands: Record<Side, Grip>;
}

/** Where a repeat ends, seen from where it began: what the next repeat is turned and moved by. */
export interface Shift { x: number; y: number; turned: number }

/** Counts that are so near are the same. */
const same = 1e-6;

interface Values { role: Role; stature: number; values: Float64Array }

/** A dance that can be asked for any count, also of the repeats to come: each begins where the one before ended. */
export class Motion {
  private readonly dancers: Values[];
  private readonly place: Record<string, number>;
  private readonly width: number;
  /** What one repeat moves everybody by. */
  readonly shift: Shift;

  constructor(readonly file: MotionFile) {
    if (file.motion !== "surefoot 1") throw new Error("This is not a motion file that can be shown.");
    this.width = file.fields.length;
    this.place = Object.fromEntries(file.fields.map((f, i) => [f, i]));
    this.dancers = file.dancers.map((d) => ({ role: d.role, stature: d.stature, values: Float64Array.from(d.values) }));
    this.shift = this.shiftOf();
  }

  get roles(): Role[] {
    return this.dancers.map((d) => d.role);
  }

  get counts(): number {
    return this.file.counts;
  }

  /** Where everybody is at a count. Counts beyond the repeat belong to the repeats after it. */
  at(count: number): Moment[] {
    const repeat = this.file.counts > 0 ? Math.max(0, Math.floor(count / this.file.counts)) : 0;
    const moments = this.within(count - repeat * this.file.counts);
    return repeat === 0 ? moments : moments.map((m) => moved(m, this.shift, repeat));
  }

  /** Each role's last action at or before a count of the repeat. */
  stepOf(role: Role, count: number): Step | undefined {
    return this.file.steps.findLast((s) => s.role === role && s.at <= count + same);
  }

  /** Each role's actions after a count of the repeat, in order. */
  after(role: Role, count: number): Step[] {
    return this.file.steps.filter((s) => s.role === role && s.at > count + same);
  }

  partAt(count: number): Part | undefined {
    return this.file.parts.findLast((p) => p.from <= count + same) ?? this.file.parts[0];
  }

  holdAt(count: number): string {
    return this.file.holds.findLast((h) => h.from <= count + same)?.hold ?? "";
  }

  /** Hands joined at a count of the repeat, each pair once. Before count 1 they hold what they begin with. */
  joinedAt(count: number): Hand[] {
    const now = new Map<string, Hand>();
    for (const hand of this.file.hands) {
      const pair = hand.lead + hand.follow;
      if (hand.from <= count + same || (hand.from <= 1 && !now.has(pair))) now.set(pair, hand);
    }

    return [...now.values()].filter((h) => h.are !== "apart");
  }

  private within(count: number): Moment[] {
    const sample = Math.min(Math.max((count * 60 * this.file.rate) / this.file.tempo, 0), this.file.samples - 1);
    const first = Math.floor(sample);
    const part = sample - first;
    const next = Math.min(first + 1, this.file.samples - 1);
    return this.dancers.map((dancer) => {
      const value = (field: string): number => {
        const column = this.place[field] ?? 0;
        const a = dancer.values[first * this.width + column] ?? 0;
        const b = dancer.values[next * this.width + column] ?? a;
        return a + (b - a) * part;
      };
      const foot = (side: Side): Foot => ({
        x: value(`${side}.x`), y: value(`${side}.y`), up: value(`${side}.up`),
        facing: value(`${side}.facing`), toe: value(`${side}.toe`), weight: value(`${side}.weight`),
      });
      const hand = (side: Side): Grip => ({ x: value(`${side}Hand.x`), y: value(`${side}Hand.y`), up: value(`${side}Hand.up`) });
      return {
        role: dancer.role, stature: dancer.stature, x: value("x"), y: value("y"), facing: value("facing"),
        feet: { left: foot("left"), right: foot("right") }, hands: { left: hand("left"), right: hand("right") },
      };
    });
  }

  // The last sample is where count 1 comes again, so the count that ends the repeat is the whole repeat itself.
  private shiftOf(): Shift {
    const [from] = this.within(0), [to] = this.within(this.file.counts);
    if (!from || !to) return { x: 0, y: 0, turned: 0 };
    const turned = Math.round((to.facing - from.facing) / 45) * 45;
    const start = turn(from.x, from.y, turned);
    return { x: to.x - start.x, y: to.y - start.y, turned };
  }
}

function turn(x: number, y: number, degrees: number): { x: number; y: number } {
  const a = (degrees * Math.PI) / 180;
  return { x: x * Math.cos(a) - y * Math.sin(a), y: x * Math.sin(a) + y * Math.cos(a) };
}

/** A moment some repeats later. */
function moved(moment: Moment, shift: Shift, repeats: number): Moment {
  let next = moment;
  for (let i = 0; i < repeats; i++) {
    const place = <T extends { x: number; y: number }>(p: T): T => {
      const t = turn(p.x, p.y, shift.turned);
      return { ...p, x: t.x + shift.x, y: t.y + shift.y };
    };
    const foot = (f: Foot): Foot => ({ ...place(f), facing: f.facing + shift.turned });
    next = {
      ...place(next), facing: next.facing + shift.turned,
      feet: { left: foot(next.feet.left), right: foot(next.feet.right) },
      hands: { left: place(next.hands.left), right: place(next.hands.right) },
    };
  }

  return next;
}

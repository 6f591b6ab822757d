import { Elbows } from "./elbows.ts";
import { Levels } from "./levels.ts";
import type { Body, Motion } from "./motion.ts";
import { Shoulders } from "./shoulders.ts";
import { skeletonOf, type Skeleton } from "./skeleton.ts";
import { Twists } from "./twists.ts";

/**
 * What the whole repeat says of a moment: how high hips are, how far shoulders turn, which way they yield and elbows bend, so that nothing
 * jerks. To look at a long dance takes longer than to draw it, so that is done a part at a time; until all is seen
 * everybody stands as the moment alone would have it.
 */
export class Poses {
  private levels: Levels | undefined;
  private twists: Twists | undefined;
  private shoulders: Shoulders | undefined;
  private elbows: Elbows | undefined;

  constructor(private readonly motion: Motion) {}

  get seen(): boolean {
    return this.elbows !== undefined;
  }

  /** Looks at the next part, unless all is seen. */
  look(): void {
    if (!this.levels) this.levels = new Levels(this.motion);
    else if (!this.twists) this.twists = new Twists(this.motion, this.levels);
    else if (!this.shoulders) this.shoulders = new Shoulders(this.motion, this.twists);
    else this.elbows ??= new Elbows(this.motion, this.levels, this.twists, this.shoulders);
  }

  /** Looks at all that has not been seen. */
  lookThrough(): void {
    while (!this.seen) this.look();
  }

  /** @param dancer The number of the dancer whose body it is, wherever it was carried. */
  of(body: Body, dancer: number, count: number): Skeleton {
    if (!this.elbows) return skeletonOf(body);
    return skeletonOf(body, {
      level: this.levels!.at(dancer, count), twist: this.twists!.at(dancer, count),
      yields: this.shoulders!.at(dancer, count), bends: this.elbows.at(dancer, count),
    });
  }
}

import { Elbows } from "./elbows.ts";
import { Levels } from "./levels.ts";
import type { Body, Motion } from "./motion.ts";
import { Shoulders } from "./shoulders.ts";
import { skeletonOf, type Skeleton } from "./skeleton.ts";

/** What the whole repeat says of a moment: how high hips are, which way shoulders yield and elbows bend, so that nothing jerks. */
export class Poses {
  private readonly levels: Levels;
  private readonly shoulders: Shoulders;
  private readonly elbows: Elbows;

  constructor(motion: Motion) {
    this.levels = new Levels(motion);
    this.shoulders = new Shoulders(motion);
    this.elbows = new Elbows(motion, this.shoulders);
  }

  /** @param dancer The number of the dancer whose body it is, wherever it was carried. */
  of(body: Body, dancer: number, count: number): Skeleton {
    return skeletonOf(body, this.levels.at(dancer, count), this.shoulders.at(dancer, count), this.elbows.at(dancer, count));
  }
}

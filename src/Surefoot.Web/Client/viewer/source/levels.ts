import type { Motion } from "./motion.ts";
import { placeOf } from "./repeat.ts";
import { highestHips } from "./skeleton.ts";

/** Moments in a count at which the hips' height is looked at, and how many before and after one are evened out. Working values. */
export const fine = 16;
const even = 7;

/**
 * How high everybody's hips are through a repeat. At each moment the legs set a limit; the hips glide below it and
 * never jerk along it.
 */
export class Levels {
  /** In metres, how high the legs of each dancer let the hips be at each moment. */
  readonly limits: Float64Array[];
  private readonly heights: Float64Array[];

  constructor(private readonly motion: Motion) {
    const moments = Math.max(1, Math.round(motion.counts * fine));
    this.limits = motion.roles.map(() => new Float64Array(moments));
    for (let i = 0; i < moments; i++) motion.at(i / fine).forEach((body, d) => { this.limits[d]![i] = highestHips(body); });
    this.heights = this.limits.map((limit) => evened(lowest(limit)));
  }

  /** In metres, of the dancer of that number. */
  at(dancer: number, count: number): number {
    const heights = this.heights[dancer]!;
    const place = placeOf(count, this.motion.counts, fine);
    const first = Math.floor(place), part = place - first;
    const [a, b] = [heights[first % heights.length]!, heights[(first + 1) % heights.length]!];
    return a + (b - a) * part;
  }
}

// The repeat comes round again, so its end lies beside its beginning.
const round = (values: Float64Array, i: number): number => values[((i % values.length) + values.length) % values.length]!;

function lowest(values: Float64Array): Float64Array {
  return values.map((_, i) => {
    let least = Infinity;
    for (let k = -even; k <= even; k++) least = Math.min(least, round(values, i + k));
    return least;
  });
}

// Never above the limit: every value that goes into a mean was the least of a stretch that reaches to here.
function evened(values: Float64Array): Float64Array {
  return values.map((_, i) => {
    let [sum, weights] = [0, 0];
    for (let k = -even; k <= even; k++) {
      const weight = 1 + Math.cos((Math.PI * k) / (even + 1));
      sum += weight * round(values, i + k);
      weights += weight;
    }

    return sum / weights;
  });
}

/** Where in so many moments of a repeat a count is; counts beyond the repeat lie in it again. */
export const placeOf = (count: number, counts: number, moments: number): number => (counts > 0 ? (((count % counts) + counts) % counts) * moments : 0);

/** A mean of values around one of them, the nearer the heavier, so that no value jumps to the next. */
export function evened(values: Float64Array, i: number, reach: number): number {
  let [sum, weights] = [0, 0];
  for (let k = -reach; k <= reach; k++) {
    const value = values[i + k];
    if (value === undefined) continue;
    const weight = 1 + Math.cos((Math.PI * k) / (reach + 1));
    sum += weight * value;
    weights += weight;
  }

  return sum / weights;
}

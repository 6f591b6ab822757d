/**
 * Measures of a figure as shares of its stature that the motion file has no need of: legs and hips by Drillis and
 * Contini 1966, from memory; what is only there to be looked at are working values.
 */
export const measures = {
  thigh: 0.245, shank: 0.246, ankle: 0.039, halfHips: 0.052,
  footBreadth: 0.0575,
  neck: 0.052, head: 0.93, headRadius: 0.062,
} as const;

/** A boot's heel, in metres: everybody stands so much higher. Working value. */
export const heel = 0.03;

/** Legs are never drawn quite straight, in shares of their length: straight knees look locked. Working value. */
export const straightest = 0.992;

/** From the middle of the sole back to below the ankle, as a share of the foot's length. Working value. */
export const ankleBack = 0.2;

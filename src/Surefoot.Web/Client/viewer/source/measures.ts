/**
 * Measures of a figure as shares of its stature. Arms, shoulders and feet are those the dance was worked out with
 * (ANSUR II, Gordon et al. 2014, mean of the men's and the women's column); legs and hips are Drillis and Contini
 * 1966, from memory; the head and what is only there to be looked at are working values.
 */
export const measures = {
  thigh: 0.245, shank: 0.246, ankle: 0.039, halfHips: 0.052,
  shoulders: 0.82, halfShoulders: 0.115, upperArm: 0.191, foreArm: 0.197,
  foot: 0.1525, footBreadth: 0.0575,
  neck: 0.052, head: 0.93, headRadius: 0.062,
} as const;

/** A boot's heel, in metres: everybody stands so much higher. Working value. */
export const heel = 0.03;

/** Legs are never drawn quite straight, in shares of their length: straight knees look locked. Working value. */
export const straightest = 0.992;

/** From the middle of the sole back to below the ankle, as a share of the foot's length. Working value. */
export const ankleBack = 0.2;

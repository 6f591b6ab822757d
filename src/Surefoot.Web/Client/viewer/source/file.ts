/** A motion file as docs/motion.schema.json describes it: all that the viewer knows of a dance. */
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
  dancers: { role: Role; stature: number; values: number[] }[];
}

export type Role = "lead" | "follow" | "dancer";
export type Side = "left" | "right";
export const sides: readonly Side[] = ["left", "right"];

export interface Part { from: number; counts: number; label: string; name: string; mirrored: boolean }
export interface Step { role: Role; at: number; count: string; words: string; figure?: string }
export interface Hand { from: number; lead: Side; follow: Side; are: "apart" | "low" | "at the shoulder" | "raised" }

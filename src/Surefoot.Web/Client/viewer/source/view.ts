import type { CameraName } from "./cameras.ts";
import type { Role } from "./motion.ts";

/** What is shown of a dance, and from where. */
export interface View {
  /** One camera, or two beside each other. */
  cameras: CameraName[];
  /** Whose words are said and who is looked at; the others are only kept in sight. */
  focus: Role | "both";
  /** What becomes of the others: faint, or not there at all. */
  others: "faint" | "hidden";
  mirror: boolean;
  traces: boolean;
  /** The whole floor full of them. */
  crowd: boolean;
  /** Times as far away as usual. */
  near: number;
}

export const usualView = (): View => ({ cameras: ["back"], focus: "both", others: "faint", mirror: false, traces: true, crowd: false, near: 1 });

export const shownOf = (view: View, role: Role): number =>
  view.focus === "both" || view.focus === role ? 1 : view.others === "faint" ? 0.22 : 0;

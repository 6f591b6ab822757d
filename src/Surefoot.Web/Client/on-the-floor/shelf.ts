/** The name under which a browser keeps the screen for the dance floor; the door throws it away from a device that is signed out. */
export const shelfName = "surefoot-on-the-floor";

/** How a page is kept on the device: just now, from an earlier visit while the studio is out of reach, or not. */
export type Held = "now" | "before" | "not";

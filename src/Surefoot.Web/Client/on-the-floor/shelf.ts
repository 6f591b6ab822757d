/** The name under which a browser keeps the screen for the dance floor; the door throws it away from a device that is signed out. */
export const shelfName = "surefoot-on-the-floor";

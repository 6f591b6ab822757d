// Makes what the browser loads: one script for each entry, what they share apart, and the style sheets.
import { rmSync } from "node:fs";
import { build } from "esbuild";

const out = "../wwwroot/dist";
rmSync(out, { recursive: true, force: true });
const common = { bundle: true, minify: true, target: "es2022", legalComments: "none", logLevel: "warning" };
// Runs before the page is drawn, so it may not wait as modules do.
await build({ ...common, entryPoints: { look: "look.ts" }, format: "iife", outdir: out });
await build({ ...common, entryPoints: { desk: "desk/desk.ts", floor: "floor/floor.ts", rooms: "rooms/rooms.ts", door: "rooms/door.ts", history: "keep/history.ts", print: "print.ts", watch: "watch/watch.ts", film: "film/film.ts" }, format: "esm", splitting: true, outdir: out, chunkNames: "[name]-[hash]" });
// Kept on a tablet without the studio: one file each, that ask for no other.
await build({ ...common, entryPoints: { "on-the-floor": "on-the-floor/screen.ts", "floor-keeper": "on-the-floor/keeper.ts" }, format: "iife", outdir: out });
await build({ ...common, entryPoints: { studio: "styles/studio.css", print: "styles/print.css", "on-the-floor": "styles/on-the-floor.css" }, outdir: out });
// For pictures without a window: the whole viewer as one script that a blank page can hold.
await build({ ...common, entryPoints: { frames: "frames/frames.ts" }, format: "iife", outdir: "../../Surefoot.Frames/obj/viewer" });

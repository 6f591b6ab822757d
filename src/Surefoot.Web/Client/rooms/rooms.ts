import { moments } from "../moments.ts";
import { notes } from "./notes.ts";
import { running } from "./running.ts";
import { shelf } from "./shelf.ts";
import { unkept } from "./unkept.ts";
import { uploads } from "./uploads.ts";

// Every room works without these; they make it quicker and say more.
moments();
notes();
shelf();
uploads();
unkept();
running();

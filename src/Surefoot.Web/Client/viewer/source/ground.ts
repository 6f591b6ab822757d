import { type BufferGeometry, CanvasTexture, CircleGeometry, Color, DoubleSide, Float32BufferAttribute, Group, Mesh, MeshBasicMaterial, PlaneGeometry, RingGeometry, Shape, ShapeGeometry, Sprite, SpriteMaterial, SRGBColorSpace } from "three";
import type { Air } from "./air.ts";
import { Boards } from "./boards.ts";
import type { CameraName } from "./cameras.ts";
import { ringRadius } from "./crowd.ts";
import type { Palette } from "./palette.ts";
import { vertexPaint } from "./vertex-paint.ts";

/** Metres of floor that are drawn, each way, and pieces into which it is cut, so that it pales evenly. */
const extent = 80, pieces = 20;

/** So far from the middle the walls' numbers lie, in metres; the one behind the dancers lies aside, the one before them near enough to be in the picture. Working values. */
const out = 1.5, aside = 0.7, near = 0.9;

/** So much larger and farther out the walls' numbers lie round a whole floor of dancers. Working value. */
const round = 3.4;

/** So far inside the ring of couples the arrows along the line of dance lie, in metres; how many, and how much of the ring each takes. Working values. */
const inside = 2.1, arrows = 3, taken = 0.6;

/** Where a number lies as a camera sees it: it is never behind the dancer in the middle, and not under the lower edge. */
export function wallPlace(ahead: number, left: number, from: CameraName): { x: number; y: number } {
  if (from === "back" && ahead !== 0) return ahead > 0 ? { x: out, y: aside } : { x: -near, y: 0 };
  if (from === "side" && left !== 0) return left > 0 ? { x: -aside, y: out } : { x: 0, y: -near };
  return { x: ahead * out, y: left * out };
}

/** The floor under the dancers: boards a metre long that show how far they go, and what says where they look. */
export class Ground {
  readonly group = new Group();
  private readonly floor: Mesh;
  private readonly boards: Boards;
  /** Beside the couple or the dancer that is looked at. */
  private readonly marks = new Group();
  /** In the middle of a whole floor of couples. */
  private readonly ring = new Group();
  private readonly mark = new MeshBasicMaterial({ side: DoubleSide });
  private walls: { sprite: Sprite; ahead: number; left: number }[] = [];

  constructor(private readonly kind: "track" | "walls", air: Air) {
    const wood = vertexPaint(air, "even");
    wood.depthWrite = false;
    this.floor = new Mesh(new PlaneGeometry(extent, extent, pieces, pieces), wood);
    this.boards = new Boards(air);
    // Everything else stands on it, so it comes first and hides nothing.
    this.floor.renderOrder = -2;
    this.group.add(this.floor, this.boards.mesh, this.marks, this.ring);
  }

  paint(palette: Palette): void {
    const form = this.floor.geometry, tone = new Color(palette.floor);
    form.setAttribute("color", new Float32BufferAttribute(Array.from({ length: form.getAttribute("position").count }, () => tone.toArray()).flat(), 3));
    this.boards.paint(palette);
    this.mark.color = new Color(palette.mark);
    this.marks.clear();
    this.ring.clear();
    if (this.kind === "track") {
      // Near enough to be in the picture from above as well, and beside where hands are.
      this.arrow(0.75, -1.55);
      this.word("line of dance", 1.4, -1.55, palette.mark);
      this.word("centre", 1.2, 1.55, palette.mark);
      this.roundArrows(palette);
    } else this.walls = ([["12", 1, 0], ["3", 0, -1], ["6", -1, 0], ["9", 0, 1]] as const).map(([word, ahead, left]) => ({ sprite: this.word(word, ahead * out, left * out, palette.mark), ahead, left }));
  }

  /** Before a camera looks: the walls' numbers go where it can see them. */
  seenBy(camera: CameraName): void {
    for (const { sprite, ahead, left } of this.walls) {
      const { x, y } = wallPlace(ahead, left, camera);
      sprite.position.set(x, y, sprite.position.z);
    }
  }

  /**
   * Keeps the floor under whoever is looked at; its boards lie still in the room.
   * @param far True for a whole floor full of couples: from there single boards are not seen.
   */
  follow(x: number, y: number, mirror: boolean, far: boolean): void {
    // Seen in a mirror, words would read backwards.
    for (const mark of [...this.marks.children, ...this.ring.children]) if (mark instanceof Sprite) mark.scale.x = mirror ? -Math.abs(mark.scale.x) : Math.abs(mark.scale.x);
    this.floor.position.set(x, y, 0);
    this.floor.scale.setScalar(far ? 3 : 1);
    this.boards.follow(x, y);
    this.boards.mesh.visible = !far;
    // Line of dance and walls are directions: they go along.
    this.marks.position.set(x, y, 0.004);
    this.marks.scale.setScalar(far ? round : 1);
    this.marks.visible = !far || this.kind === "walls";
    // The ring of couples stays where it is while they go round it.
    this.ring.position.set(0, ringRadius, 0.004);
    this.ring.visible = far && this.kind === "track";
  }

  // The line of dance runs against the clock.
  private roundArrows(palette: Palette): void {
    const radius = ringRadius - inside, each = (2 * Math.PI) / arrows;
    const head = new Shape();
    head.moveTo(0.55, 0);
    head.lineTo(-0.35, 0.45);
    head.lineTo(-0.35, -0.45);
    for (let n = 0; n < arrows; n++) {
      const from = n * each - Math.PI / 2, to = from + each * taken;
      this.ring.add(new Mesh(new RingGeometry(radius - 0.12, radius + 0.12, 48, 1, from, to - from), this.mark));
      const tip = new Mesh(new ShapeGeometry(head), this.mark);
      tip.position.set(radius * Math.cos(to), radius * Math.sin(to), 0);
      tip.rotation.z = to + Math.PI / 2;
      this.ring.add(tip);
    }

    const word = this.word("line of dance", 0, 0, palette.mark);
    word.scale.multiplyScalar(round);
    this.ring.add(word);
  }

  private arrow(x: number, y: number): void {
    const shape = new Shape();
    shape.moveTo(0.34, 0);
    shape.lineTo(0.06, 0.15);
    shape.lineTo(0.06, 0.05);
    shape.lineTo(-0.5, 0.05);
    shape.lineTo(-0.5, -0.05);
    shape.lineTo(0.06, -0.05);
    shape.lineTo(0.06, -0.15);
    const mesh = new Mesh(new ShapeGeometry(shape), this.mark);
    mesh.position.set(x, y, 0);
    this.marks.add(mesh);
  }

  private word(text: string, x: number, y: number, tone: number): Sprite {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [512, 96];
    const context = canvas.getContext("2d")!;
    context.font = "600 64px system-ui, sans-serif";
    context.textAlign = "center";
    context.textBaseline = "middle";
    context.fillStyle = css(tone);
    context.fillText(text, 256, 48);
    const label = new CanvasTexture(canvas);
    label.colorSpace = SRGBColorSpace;
    const sprite = new Sprite(new SpriteMaterial({ side: DoubleSide, map: label, depthWrite: false, transparent: true }));
    sprite.scale.set(1.1, 0.206, 1);
    sprite.position.set(x, y, 0.06);
    this.marks.add(sprite);
    return sprite;
  }
}

const css = (tone: number): string => `#${tone.toString(16).padStart(6, "0")}`;

/** A soft dark spot under a foot or a body, for those who look from the side. */
export const spotForm = (): BufferGeometry => new CircleGeometry(1, 20);

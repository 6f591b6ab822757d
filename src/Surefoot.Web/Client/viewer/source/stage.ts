import type { Body, Motion, Role } from "./motion.ts";
import { Color, Matrix4, PerspectiveCamera, Scene, WebGLRenderer } from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";
import { Air } from "./air.ts";
import { focusOf, place, type CameraName } from "./cameras.ts";
import { Cast, formOf } from "./cast.ts";
import { crowdOf, ringRadius } from "./crowd.ts";
import { Ground, spotForm } from "./ground.ts";
import type { Palette } from "./palette.ts";
import type { Poses } from "./poses.ts";
import type { Skeleton } from "./skeleton.ts";
import { Traces } from "./traces.ts";
import { Troupe } from "./troupe.ts";
import { vertexPaint } from "./vertex-paint.ts";
import { shownOf, type View } from "./view.ts";

/** Draws a moment of a dance. Knows nothing of time, sound or buttons. */
export class Stage {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly air = new Air();
  private readonly ground: Ground;
  private readonly troupes: Troupe[];
  /** The full floor's, made when it is first asked for. */
  private crowd: Troupe[] | undefined;
  private palette: Palette | undefined;
  private readonly traces: Traces;
  private readonly spots: Cast;
  private readonly spot = formOf(spotForm());
  private readonly cameras = [new PerspectiveCamera(34, 1, 0.1, 80), new PerspectiveCamera(34, 1, 0.1, 80)];
  private readonly hand: OrbitControls;
  private freed = false;
  /** True where edges are smoothed as they are drawn. Without a graphics card that takes longer than all the rest. */
  readonly smooth: boolean;

  /** @throws Where the browser has no WebGL 2. */
  constructor(canvas: HTMLCanvasElement, private readonly motion: Motion, private readonly poses: Poses) {
    this.smooth = !drawsInSoftware();
    this.renderer = new WebGLRenderer({ canvas, antialias: this.smooth, powerPreference: "low-power", preserveDrawingBuffer: false });
    this.ground = new Ground(motion.file.floor, this.air);
    this.troupes = motion.roles.map((role) => new Troupe(role, this.air));
    this.traces = new Traces(motion, this.air);
    const shadow = vertexPaint(this.air, "even");
    [shadow.transparent, shadow.depthWrite, shadow.uniforms.opacity!.value] = [true, false, 0.2];
    this.spots = new Cast(shadow);
    this.scene.fog = this.air.fog;
    this.scene.add(this.ground.group, this.traces.mesh, this.spots.mesh, ...this.troupes.map((t) => t.group));
    this.hand = new OrbitControls(this.cameras[0]!, canvas);
    this.hand.enabled = false;
    this.hand.maxPolarAngle = Math.PI * 0.49;
    this.hand.minDistance = 1.5;
    this.hand.maxDistance = 30;
  }

  paint(palette: Palette): void {
    this.scene.background = new Color(palette.sky);
    this.air.paint(palette.sky);
    this.ground.paint(palette);
    this.traces.paint(palette);
    for (const troupe of [...this.troupes, ...this.crowd ?? []]) troupe.paint(palette);
    this.palette = palette;
  }

  /** In pixels of the page. */
  resize(width: number, height: number, density: number): void {
    this.renderer.setPixelRatio(density);
    this.renderer.setSize(width, height, false);
  }

  draw(count: number, view: View): void {
    const moments = this.motion.onAndOn(count);
    const focus = focusOf(this.motion, count);
    const skeletons = moments.map((m, i) => this.poses.of(m, i, count));
    const all = view.crowd ? crowdOf(moments, this.motion.file.floor) : moments;
    for (const troupe of this.troupes) {
      if (!view.crowd) troupe.show(skeletons.filter((_, i) => moments[i]!.role === troupe.role));
      troupe.fade(view.crowd ? 0 : shownOf(view, troupe.role));
    }

    for (const troupe of view.crowd ? this.full() : this.crowd ?? []) {
      if (view.crowd) troupe.show(all.filter((m) => m.role === troupe.role).map((m) => this.poses.of(m, moments.findIndex((one) => one.role === m.role), count)));
      troupe.fade(view.crowd ? shownOf(view, troupe.role) : 0);
    }

    this.traces.mesh.visible = view.traces && !view.crowd;
    if (this.traces.mesh.visible) this.traces.show(count, this.motion.roles.filter((r) => shownOf(view, r) === 1));
    this.shade(all.filter((m) => shownOf(view, m.role) > 0.01));
    this.ground.follow(focus.x, focus.y, view.mirror, view.crowd);
    this.air.reach(view.crowd);
    this.hand.enabled = view.cameras.includes("free");
    this.through(view, focus, moments, skeletons);
  }

  dispose(): void {
    this.hand.dispose();
    for (const troupe of [...this.troupes, ...this.crowd ?? []]) troupe.dispose();
    this.traces.dispose();
    this.spots.dispose();
    this.renderer.dispose();
  }

  private full(): Troupe[] {
    if (this.crowd) return this.crowd;
    this.crowd = this.motion.roles.map((role) => new Troupe(role, this.air, true));
    for (const troupe of this.crowd) {
      if (this.palette) troupe.paint(this.palette);
      this.scene.add(troupe.group);
    }

    return this.crowd;
  }

  private through(view: View, focus: { x: number; y: number }, moments: readonly Body[], skeletons: readonly Skeleton[]): void {
    const { width, height } = this.renderer.domElement;
    const ratio = this.renderer.getPixelRatio();
    const share = width / ratio / view.cameras.length;
    this.renderer.setScissorTest(view.cameras.length > 1);
    view.cameras.forEach((name, i) => {
      const camera = this.cameras[i]!;
      camera.aspect = (share * ratio) / height;
      const [seen, eyes] = lookers(view, moments, skeletons);
      this.put(camera, name, view, focus, eyes, seen);
      this.ground.seenBy(view.crowd ? "above" : name);
      this.renderer.setViewport(i * share, 0, share, height / ratio);
      this.renderer.setScissor(i * share, 0, share, height / ratio);
      // Nobody sees the own head from inside.
      const own = name === "partner" ? (view.crowd ? this.full() : this.troupes).find((t) => t.role !== this.roleSeen(view)) : undefined;
      const visible = own?.group.visible ?? false;
      if (own) own.group.visible = false;
      this.renderer.render(this.scene, camera);
      if (own) own.group.visible = visible;
    });
  }

  private put(camera: PerspectiveCamera, name: CameraName, view: View, focus: { x: number; y: number }, eyes: Skeleton | undefined, seen: Skeleton | undefined): void {
    // A narrow picture needs more room to the sides.
    const near = view.near * Math.max(1, 1.15 / camera.aspect);
    if (name === "free") {
      if (!this.freed) place(camera, "back", focus, near, eyes, seen);
      const [x, y] = [focus.x - this.hand.target.x, focus.y - this.hand.target.y];
      if (this.freed) camera.position.set(camera.position.x + x, camera.position.y + y, camera.position.z);
      this.hand.target.set(focus.x, focus.y, 0.86);
      this.hand.update();
      this.freed = true;
      camera.updateProjectionMatrix();
      return;
    }

    if (view.cameras[0] !== "free") this.freed = false;
    if (view.crowd && name !== "partner") this.overall(camera, name, view.near);
    else place(camera, name, focus, near, eyes, seen);
  }

  // The whole floor: the ring lies to the left of its first couple, and is as wide as the picture allows.
  private overall(camera: PerspectiveCamera, name: CameraName, asked: number): void {
    const track = this.motion.file.floor === "track";
    const [middle, aslant, above] = track ? [ringRadius, ringRadius * 2.2, ringRadius * 3.3] : [0, 13, 15];
    const near = asked * Math.max(1, (name === "above" || !track ? 1.15 : 1.6) / camera.aspect);
    const far = name === "above" ? above : aslant;
    camera.fov = 40;
    camera.up.set(0, 0, 1);
    if (name === "above") {
      camera.up.set(1, 0, 0);
      camera.position.set(0, middle, far * near);
    } else if (name === "side") camera.position.set(0, middle - far * near, far * 0.42 * near);
    else camera.position.set(-far * near, middle, far * 0.42 * near);
    camera.lookAt(0, middle, 0);
    camera.updateProjectionMatrix();
  }

  private roleSeen(view: View): Role {
    return view.focus === "both" ? this.motion.roles[0]! : view.focus;
  }

  private shade(moments: readonly Body[]): void {
    this.spots.begin();
    for (const m of moments) {
      for (const foot of [m.feet.left, m.feet.right]) {
        const r = 0.1 * m.stature * Math.max(0.35, 1 - foot.up * 2.5);
        this.spots.add(this.spot, black, matrix.makeScale(r, r, 1).setPosition(foot.x, foot.y, 0.008));
      }
    }

    this.spots.end();
  }
}

function lookers(view: View, moments: readonly Body[], skeletons: readonly Skeleton[]): [Skeleton | undefined, Skeleton | undefined] {
  const seen = view.focus === "both" ? 0 : Math.max(0, moments.findIndex((m) => m.role === view.focus));
  return [skeletons[seen], skeletons.find((_, i) => i !== seen)];
}

const matrix = new Matrix4(), black = new Color(0);

// Such machines say so in the name of what draws.
function drawsInSoftware(): boolean {
  const gl = document.createElement("canvas").getContext("webgl2");
  const says = gl?.getExtension("WEBGL_debug_renderer_info");
  const name = says ? String(gl!.getParameter(says.UNMASKED_RENDERER_WEBGL)) : "";
  gl?.getExtension("WEBGL_lose_context")?.loseContext();
  return /swiftshader|llvmpipe|softpipe|software|basic render/i.test(name);
}

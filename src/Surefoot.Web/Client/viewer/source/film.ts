import type { Shown } from "./strip.ts";

/** Films the picture as a browser can: one WebM file, kept with whoever watches, with count and words in it. */
export class Film {
  private recorder: MediaRecorder | undefined;
  private readonly pieces: Blob[] = [];
  /** What is filmed: as large as the picture was when it began, whatever becomes of that. */
  private readonly tape = document.createElement("canvas");

  constructor(private readonly picture: HTMLCanvasElement, private readonly title: string) {}

  static get possible(): boolean {
    return typeof MediaRecorder !== "undefined" && "captureStream" in HTMLCanvasElement.prototype;
  }

  get running(): boolean {
    return this.recorder?.state === "recording";
  }

  start(): void {
    // As large as it is seen, however finely it is drawn just now; video is made of squares of two points.
    [this.tape.width, this.tape.height] = [this.picture.clientWidth & ~1, this.picture.clientHeight & ~1];
    const stream = this.tape.captureStream(60);
    const type = ["video/webm;codecs=vp9", "video/webm;codecs=vp8", "video/webm"].find((t) => MediaRecorder.isTypeSupported(t));
    this.pieces.length = 0;
    this.recorder = new MediaRecorder(stream, { ...(type ? { mimeType: type } : {}), videoBitsPerSecond: 8_000_000 });
    this.recorder.ondataavailable = (e) => this.pieces.push(e.data);
    this.recorder.onstop = () => {
      for (const track of stream.getTracks()) track.stop();
      this.hand();
    };
    this.recorder.start(1000);
  }

  stop(): void {
    this.recorder?.stop();
  }

  /** Takes the picture as it stands now onto the film; nothing while none is made. */
  take(mirror: boolean, said: Shown): void {
    if (!this.running) return;
    const { width, height } = this.tape;
    const pen = this.tape.getContext("2d")!;
    pen.setTransform(mirror ? -1 : 1, 0, 0, 1, mirror ? width : 0, 0);
    pen.drawImage(this.picture, 0, 0, width, height);
    pen.setTransform(1, 0, 0, 1, 0, 0);
    const size = height / 14;
    pen.fillStyle = "rgb(20 18 16 / .62)";
    pen.fillRect(0, height - size * 1.7, width, size * 1.7);
    pen.fillStyle = "#fff";
    pen.textBaseline = "middle";
    pen.font = `600 ${size * 1.1}px Georgia, serif`;
    pen.fillText(said.count, size * 0.6, height - size * 0.85, size * 2.4);
    pen.font = `${size * 0.62}px system-ui, sans-serif`;
    pen.fillText(said.step, size * 3.4, height - size * 0.85, width - size * 4);
  }

  private hand(): void {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob(this.pieces, { type: "video/webm" }));
    link.download = `${this.title.replace(/[^\p{L}\p{N} -]/gu, "").trim() || "dance"}.webm`;
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }
}

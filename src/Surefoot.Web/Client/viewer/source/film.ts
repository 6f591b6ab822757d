/** Films the picture as a browser can: one WebM file, kept with whoever watches. */
export class Film {
  private recorder: MediaRecorder | undefined;
  private readonly pieces: Blob[] = [];

  constructor(private readonly canvas: HTMLCanvasElement, private readonly title: string) {}

  static get possible(): boolean {
    return typeof MediaRecorder !== "undefined" && "captureStream" in HTMLCanvasElement.prototype;
  }

  get running(): boolean {
    return this.recorder?.state === "recording";
  }

  start(): void {
    const stream = this.canvas.captureStream(60);
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

  private hand(): void {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob(this.pieces, { type: "video/webm" }));
    link.download = `${this.title.replace(/[^\p{L}\p{N} -]/gu, "").trim() || "dance"}.webm`;
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }
}

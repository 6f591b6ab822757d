import { Color, Fog } from "three";

/** Metres from which things begin to pale into the background, and where they are gone; further for a full floor. Working values. */
const begins = 13, gone = 34, goneFar = 90;

/** What lies between the eye and the dancers: things far off pale into the background. */
export class Air {
  /** For materials that come with the library. */
  readonly fog = new Fog(0, begins, gone);
  /** For those that are coloured corner by corner, shared by all of them; the tone as a screen takes it. */
  readonly uniforms = { sky: { value: new Color() }, begins: { value: begins }, gone: { value: gone } };

  paint(sky: number): void {
    this.fog.color.set(sky);
    this.uniforms.sky.value.set(sky).convertLinearToSRGB();
  }

  /** @param far True for a full floor. */
  reach(far: boolean): void {
    this.fog.far = this.uniforms.gone.value = far ? goneFar : gone;
  }
}

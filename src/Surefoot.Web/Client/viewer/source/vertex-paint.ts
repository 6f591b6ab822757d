import { ShaderMaterial } from "three";
import type { Air } from "./air.ts";

/**
 * Colours a form corner by corner: light, air and the screen's own scale of tones are worked out where its corners are,
 * and only mixed between them. Without a graphics card every point of the picture costs, and corners are few.
 * Every form has the tones of its corners.
 * @param light Lit from above, or of one tone from all sides.
 */
export function vertexPaint(air: Air, light: "lit" | "even"): ShaderMaterial {
  return new ShaderMaterial({
    defines: light === "lit" ? { LIT: "" } : {},
    uniforms: { ...air.uniforms, opacity: { value: 1 } },
    vertexShader: corner,
    fragmentShader: point,
    vertexColors: true,
  });
}

// Light is taken as it comes from a surface that scatters it evenly (Lambert): a bright sky over a warm floor, and one lamp.
const corner = /* glsl */ `
uniform vec3 sky;
uniform float begins, gone;
varying vec3 tone;
const vec3 above = vec3(2.1), below = vec3(0.53, 0.44, 0.34), lamp = vec3(-0.2857, -0.4286, 0.8571);

vec3 onScreen(vec3 c) {
  // IEC 61966-2-1, sRGB.
  c = clamp(c, 0.0, 1.0);
  return mix(c * 12.92, 1.055 * pow(c, vec3(1.0 / 2.4)) - 0.055, step(0.0031308, c));
}

void main() {
  vec4 seen = modelViewMatrix * vec4(position, 1.0);
  gl_Position = projectionMatrix * seen;
  vec3 own = color;
#ifdef LIT
  vec3 upright = normalize(mat3(modelMatrix) * normal);
  own *= (mix(below, above, 0.5 + 0.5 * upright.z) + 1.5 * max(0.0, dot(upright, lamp))) * 0.31830989;
#endif
  tone = mix(onScreen(own), sky, smoothstep(begins, gone, -seen.z));
}`;

const point = /* glsl */ `
uniform float opacity;
varying vec3 tone;

void main() {
  gl_FragColor = vec4(tone, opacity);
}`;

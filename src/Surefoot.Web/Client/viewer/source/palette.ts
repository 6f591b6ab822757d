/** The tones of a picture, as numbers of red, green and blue. */
export interface Palette {
  sky: number;
  floor: number;
  line: number;
  mark: number;
  lead: number;
  follow: number;
  skin: number;
  boot: number;
  band: number;
  trace: number;
}

export const light: Palette = {
  sky: 0xf4f0e8, floor: 0xe2d6c3, line: 0xcdbda4, mark: 0x7b6a52,
  lead: 0x2f5d73, follow: 0xb4632f, skin: 0xe8d3b4, boot: 0x4a382b, band: 0xf3e6c8, trace: 0x8a7a64,
};

export const dark: Palette = {
  sky: 0x1b1d22, floor: 0x34312d, line: 0x484239, mark: 0xa89a84,
  lead: 0x7fb6cf, follow: 0xe09a63, skin: 0xdcc8ab, boot: 0x8b7159, band: 0xfff2d2, trace: 0x8f826e,
};

/** For a dim hall: nothing bright but what moves. */
export const dim: Palette = {
  sky: 0x0d0b09, floor: 0x1c1713, line: 0x2a221b, mark: 0x8a7350,
  lead: 0x6f9fb3, follow: 0xc9853f, skin: 0xbfa684, boot: 0x7a6248, band: 0xe0cfa4, trace: 0x6f5f48,
};

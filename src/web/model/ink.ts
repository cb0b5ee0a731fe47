import { Color, GreaterDepth, LessEqualDepth, ShaderMaterial, Vector2 } from "three";
import { fragmentShader, vertexShader } from "./ink-shader.ts";
import type { Tones } from "./tones.ts";
import type { Size } from "./view.ts";

/** The pens of a picture. Hidden edges are dashed, as on any drawing, and only a lifted part has them. */
export type Ink = {
  readonly edge: ShaderMaterial;
  readonly lifted: ShaderMaterial;
  readonly hidden: ShaderMaterial;
  /** @param pixel  pixels of the screen in one of the page */
  readonly paint: (tones: Tones, size: Size, pixel: number) => void;
  readonly dispose: () => void;
};

/** Widths, and a dash with its gap [px]. */
export const EDGE = 1.3;
const LIFTED = 2.6;
const HIDDEN = 1.1;
const DASH = [5, 3.5] as const;

export function createInk(): Ink {
  const edge = pen();
  const lifted = pen();
  // In front of ink that runs along the same edge.
  lifted.polygonOffset = true;
  lifted.polygonOffsetUnits = -8;
  const hidden = pen();
  hidden.depthFunc = GreaterDepth;
  return {
    edge,
    lifted,
    hidden,
    paint: ({ line, blue }, size, pixel) => {
      dip(edge, line, EDGE, size, pixel);
      dip(lifted, blue, LIFTED, size, pixel);
      dip(hidden, blue, HIDDEN, size, pixel);
      hidden.uniforms.uDash?.value.set(DASH[0] * pixel, DASH[1] * pixel);
    },
    dispose: () => {
      for (const each of [edge, lifted, hidden]) each.dispose();
    },
  };
}

const pen = () =>
  new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms: {
      uColor: { value: new Color() },
      uHalf: { value: new Vector2(1, 1) },
      uReach: { value: 0.5 },
      uPixel: { value: 1 },
      uDash: { value: new Vector2(0, 0) },
    },
    transparent: true,
    depthFunc: LessEqualDepth,
    depthWrite: false,
  });

function dip(material: ShaderMaterial, color: Color, width: number, size: Size, pixel: number) {
  const { uColor, uHalf, uReach, uPixel } = material.uniforms;
  uColor?.value.copy(color);
  uHalf?.value.set((size.width * pixel) / 2, (size.height * pixel) / 2);
  if (uReach) uReach.value = (width * pixel) / 2;
  if (uPixel) uPixel.value = pixel;
}

import {
  Color,
  DataTexture,
  FloatType,
  type IUniform,
  NearestFilter,
  RGBAFormat,
  ShaderMaterial,
} from "three";
import type { DrawnPart } from "../../workup/index.ts";
import type { Tones } from "./tones.ts";
import { fragmentShader, vertexShader } from "./wood-shader.ts";

/** What all wood of a picture shares: one object, so that a change of theme is told once. */
export type WoodTones = {
  readonly uWood: IUniform<Color>;
  readonly uWood2: IUniform<Color>;
  readonly uWood3: IUniform<Color>;
  readonly uRing: IUniform<Color>;
  readonly uWash: IUniform<Color>;
  /** pixels of the screen in one of the page */
  readonly uPixel: IUniform<number>;
};

export const woodTones = (): WoodTones => ({
  uWood: { value: new Color() },
  uWood2: { value: new Color() },
  uWood3: { value: new Color() },
  uRing: { value: new Color() },
  uWash: { value: new Color() },
  uPixel: { value: 1 },
});

export function paintWood(shared: WoodTones, tones: Tones, pixel: number): void {
  shared.uWood.value.copy(tones.wood);
  shared.uWood2.value.copy(tones.wood2);
  shared.uWood3.value.copy(tones.wood3);
  shared.uRing.value.copy(tones.ring);
  shared.uWash.value.copy(tones.wash);
  shared.uPixel.value = pixel;
}

/** The wood of one part, whose strips and lift can change. */
export type Wood = {
  readonly material: ShaderMaterial;
  readonly grow: (part: DrawnPart) => void;
  readonly lift: (isLifted: boolean) => void;
  /** @param factor  of the faces' slope in depth, for each pixel of the screen */
  readonly sink: (factor: number) => void;
  readonly dispose: () => void;
};

export function createWood(shared: WoodTones): Wood {
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms: {
      ...shared,
      uStrips: { value: null },
      uCount: { value: 0 },
      uTurned: { value: 0 },
      uLift: { value: 0 },
    },
    // Behind its own edges; how far is set for each view.
    polygonOffset: true,
    polygonOffsetUnits: 2,
  });
  const set = (name: string, value: unknown) => {
    (material.uniforms[name] as IUniform).value = value;
  };
  let strips: DataTexture | undefined;
  return {
    material,
    grow: (part) => {
      strips?.dispose();
      strips = stripTexture(part);
      set("uStrips", strips);
      set("uCount", part.strips.length);
      // Strips are told in the pattern; mirrored wood counts y from its other edge.
      set("uTurned", part.isMirrored ? part.blank.width : 0);
    },
    lift: (isLifted) => set("uLift", isLifted ? 1 : 0),
    sink: (factor) => {
      material.polygonOffsetFactor = factor;
    },
    dispose: () => {
      strips?.dispose();
      material.dispose();
    },
  };
}

/** A texel a strip: where it starts, and its pith in y and z. */
function stripTexture({ strips }: DrawnPart): DataTexture {
  const texels = strips.flatMap(({ from, pith }) => [from, pith[0], pith[1], 0]);
  const texture = new DataTexture(
    Float32Array.from(texels),
    strips.length,
    1,
    RGBAFormat,
    FloatType,
  );
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
}
